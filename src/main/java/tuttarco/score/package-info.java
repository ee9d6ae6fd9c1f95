/** The part: bars, strokes and notes in the order played, and how its bowing is completed. */
package tuttarco.score;
