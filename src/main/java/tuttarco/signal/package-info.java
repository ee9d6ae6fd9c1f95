/** Filters and axes: numbers in, numbers out. */
package tuttarco.signal;
