/** Who sits where, found in the picture. */
package tuttarco.seating;
