package tuttarco.align;

/**
 * A passage of the part that was played through: places of the part against times of the recording, both rising.
 *
 * @param gain how much better it fits than chance, summed over the frames
 */
record Passage(double[] quarters, double[] timesS, double gain) {
    double timeS(double at) {
        return Lines.at(quarters, timesS, at);
    }

    double quartersAt(double timeS) {
        return Lines.at(timesS, quarters, timeS);
    }

    /** The passage with its tempo evened out: each point the mean of those within so long a stretch around it. */
    Passage smooth(double stretchS) {
        double[] even = new double[quarters.length];
        for (int i = 0; i < even.length; i++) {
            double halfS = Math.min(stretchS / 2, Math.min(timesS[i] - startS(), endS() - timesS[i]));
            int steps = 20;
            for (int k = -steps; k <= steps; k++) {
                even[i] += quartersAt(timesS[i] + halfS * k / steps) / (2 * steps + 1);
            }
        }
        return new Passage(even, timesS, gain);
    }

    double startS() {
        return timesS[0];
    }

    double endS() {
        return timesS[timesS.length - 1];
    }
}
