package tuttarco.align;

/** The stretch of a row of worths whose sum is largest: from an index on, and up to another, which is no part of it. */
record BestStretch(int from, int to) {
    /** Empty if no worth is positive (J. Bentley, Programming pearls: algorithm design techniques, CACM 27, 1984). */
    static BestStretch of(double[] worths) {
        BestStretch best = new BestStretch(0, 0);
        double most = 0;
        double sum = 0;
        int from = 0;
        for (int i = 0; i < worths.length; i++) {
            if (sum < 0) {
                sum = 0;
                from = i;
            }
            sum += worths[i];
            if (sum > most) {
                most = sum;
                best = new BestStretch(from, i + 1);
            }
        }
        return best;
    }
}
