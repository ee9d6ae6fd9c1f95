package tuttarco.align;

import java.util.List;

/**
 * What a recording is listened to by: sounds along a line of places. A part's notes lie along it in quarter notes, what
 * another recording holds in its seconds.
 */
interface Guide {
    /** The sound that fits anything, no better and no worse than chance: a rest. */
    int REST = 0;

    /** A stretch of the line that may be played through; from one to the next nobody plays on. */
    record Piece(double from, double to) {}

    /** The pieces, in the order of the line, at least one. */
    List<Piece> pieces();

    /** Tempi to try, places a second; each reaches from half of it to twice. */
    double[] tempi();

    /** The number of the sound at a place of a piece. */
    int soundAt(double place);

    /** The number of the stretch that holds a place, rising along the line; a stretch is played whole or not at all. */
    int stretchAt(double place);

    /** The shape of each sound as the bands of the recording would show it, the rest among them; each of length one or zero. */
    float[][] expected(SemitoneBands bands);

    /** How much of the line each sound takes up, as shares of all that isn't rest. */
    double[] shares();

    /** What it costs to begin between two places of a piece, in seconds of fitting well; infinite where nobody begins. */
    double beginning(double from, double to);

    /** What a step costs that does not go on evenly, so that a long sound is not stretched at will; as a fit. */
    float uneven();

    /** The same in another key. */
    Guide transposed(int semitones);
}
