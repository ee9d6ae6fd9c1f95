/** Spans of down, up, still, unsure and unseen, from the motion of an arm. Knows nothing of the marking. */
package tuttarco.strokes;
