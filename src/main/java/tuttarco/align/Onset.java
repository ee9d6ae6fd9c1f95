package tuttarco.align;

/**
 * A note's beginning, found in the recording.
 *
 * @param quarters where the part has it
 * @param timeS seconds from the clip's start
 * @param stderrS its standard error
 */
record Onset(double quarters, double timeS, double stderrS) {}
