package tuttarco.demo;

/** What a rendered take sounds like. */
enum Sound {
    NONE,
    /** A click on each beat, the first of a bar higher. */
    CLICKS,
    /** Bowed tones that follow the strokes. */
    TONES
}
