/** The part: bars, strokes and their marked directions. */
package tuttarco.score;
