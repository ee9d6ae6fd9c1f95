/** Intervals and summaries: numbers in, numbers out. */
package tuttarco.stats;
