package tuttarco.align;

/**
 * A passage that was played through: places of the guide against times of the recording, both rising.
 *
 * @param gain how much better it fits than chance, summed over the frames, less what it costs to begin
 */
record Passage(double[] places, double[] timesS, double gain) {
    double timeS(double at) {
        return Lines.at(places, timesS, at);
    }

    double placeAt(double timeS) {
        return Lines.at(timesS, places, timeS);
    }

    /** The passage with its tempo evened out: at every time that of so long a stretch around it. */
    Passage smooth(double stretchS) {
        double[] even = new double[places.length];
        double drift = 0;
        for (int i = 1; i < even.length; i++) {
            double fromS = Math.max(startS(), timesS[i] - stretchS / 2);
            double toS = Math.min(endS(), timesS[i] + stretchS / 2);
            double tempo = (placeAt(toS) - placeAt(fromS)) / (toS - fromS);
            even[i] = even[i - 1] + tempo * (timesS[i] - timesS[i - 1]);
            drift += (places[i] - even[i]) / (even.length - 1);
        }
        for (int i = 0; i < even.length; i++) {
            even[i] += drift;
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
