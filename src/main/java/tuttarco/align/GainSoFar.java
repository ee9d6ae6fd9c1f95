package tuttarco.align;

/**
 * What a guide gains by fitting a recording as well as it can, summed up from the recording's start on.
 *
 * @param sums by frames
 * @param startS when the first frame begins, seconds
 * @param stepS from one frame to the next, seconds
 */
record GainSoFar(float[] sums, double startS, double stepS) {
    /** What is gained from one time to another. */
    double between(double fromS, double toS) {
        return until(toS) - until(fromS);
    }

    private double until(double timeS) {
        int frame = (int) Math.min(sums.length, Math.round((timeS - startS) / stepS));
        return frame <= 0 ? 0 : sums[frame - 1];
    }
}
