/** Pictures of a take that are given out: stills, and the take as a video with its signs. */
package tuttarco.film;
