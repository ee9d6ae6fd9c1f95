/** Finds where the places of a part sound in a recording. */
package tuttarco.align;
