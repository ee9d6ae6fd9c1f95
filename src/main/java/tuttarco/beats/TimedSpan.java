package tuttarco.beats;

import tuttarco.score.PartSpan;

/** A span of the part at the time it sounded, seconds from the clip's start. */
public record TimedSpan(double startS, double endS, PartSpan span) {}
