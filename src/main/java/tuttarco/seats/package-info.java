/** Who sits where. */
package tuttarco.seats;
