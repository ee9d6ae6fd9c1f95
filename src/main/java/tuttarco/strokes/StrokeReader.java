package tuttarco.strokes;

import tuttarco.tracks.ArmTrack;

/** Infers strokes from the motion of one bow arm. A reader sees the motion only, never the marking. */
public interface StrokeReader {
    /** Returns a reading that covers the track from its start to its end without gaps. */
    Reading read(ArmTrack track);
}
