/**
 * Spans of down, up, still, unsure and unseen, from the motion of an arm; how sure their times are, how much bow they took
 * and where. Knows nothing of the marking.
 */
package tuttarco.strokes;
