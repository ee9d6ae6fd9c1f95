package tuttarco.analysis;

import java.nio.file.Path;
import tuttarco.bow.Instrument;
import tuttarco.files.InputBytes;
import tuttarco.files.InputException;
import tuttarco.pose.PoseModel;
import tuttarco.seating.SeatFinder;
import tuttarco.seats.LeaderSide;
import tuttarco.seats.Proposal;

/** Looks for a section's players in a clip, so that nobody has to draw boxes. */
public final class SeatSearch {
    private SeatSearch() {}

    /** What to tell the user where nobody clearly bows. */
    public static String nobody(Path video, Proposal found) {
        int unsure = found.unsure().size();
        return "Nobody in " + InputBytes.name(video) + " clearly bows"
                + (unsure == 0 ? "" : ", though " + unsure + " may")
                + "; check that the picture is upright and the bow arms are seen over the whole clip, or draw the seats by hand.";
    }

    /**
     * Who seems to sit where; maybe nobody.
     *
     * @param instrument what all of them play
     * @throws InputException if the clip can't be opened
     * @throws NothingSeenException if the pose model is missing or not a single frame could be decoded
     * @throws InterruptedException if the thread was interrupted
     */
    public static Proposal in(Path video, Instrument instrument, LeaderSide leaderSide, SectionReader.Progress progress)
            throws InputException, NothingSeenException, InterruptedException {
        PoseModel model = PoseModel.installed()
                .orElseThrow(() -> new NothingSeenException("Seats can't be found without the pose model, and this"
                        + " program was built without it; draw the seats by hand, or build again with npm at hand."));
        return new SeatFinder(model)
                .in(video, instrument, leaderSide, progress::reached)
                .orElseThrow(() -> new NothingSeenException("Not a single picture of " + InputBytes.name(video)
                        + " can be read; it may be damaged, so copy it from the camera again."));
    }
}
