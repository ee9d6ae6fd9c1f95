package tuttarco.strokes;

/** One span of a reading with what else is known of it: how sure its ends are, how much bow it took and where. */
public record Bow(Stroke stroke, Edge start, Edge end, BowUse use) {}
