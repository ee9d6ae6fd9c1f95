/** What a player did, as bow signs for the part. */
package tuttarco.mark;
