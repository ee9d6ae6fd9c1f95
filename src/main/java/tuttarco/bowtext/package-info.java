/** Parts as bow text typed by hand: read, written to edit, and laid over another part. */
package tuttarco.bowtext;
