/** One bow arm over time, from the picture. Knows nothing of the marking. */
package tuttarco.tracks;
