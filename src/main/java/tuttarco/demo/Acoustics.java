package tuttarco.demo;

/**
 * What a room adds to what is played in it.
 *
 * @param echoesS how long its echoes take to die away by 60 dB, seconds; 0 is the open air
 * @param noiseDb how loud it is by itself, decibels against the loudest that a recording holds
 */
record Acoustics(double echoesS, double noiseDb) {
    /** Nothing at all. */
    static final Acoustics OPEN_AIR = new Acoustics(0, Double.NEGATIVE_INFINITY);

    /** A furnished room for rehearsals and a phone's own noise (common practice, no source). */
    static final Acoustics QUIET_ROOM = new Acoustics(0.5, -50);

    /** A hall (common practice: 1.5 to 2 s, no source). */
    static final Acoustics HALL = new Acoustics(1.6, -45);

    Acoustics {
        if (!(echoesS >= 0 && echoesS <= 10) || !(noiseDb <= 0)) {
            throw new IllegalArgumentException(
                    "no room has echoes of " + echoesS + " s and a noise of " + noiseDb + " dB");
        }
    }

    Acoustics noisy(double newNoiseDb) {
        return new Acoustics(echoesS, newNoiseDb);
    }
}
