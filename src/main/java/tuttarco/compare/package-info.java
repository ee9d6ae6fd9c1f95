/** Readings against the marking and against the leader. */
package tuttarco.compare;
