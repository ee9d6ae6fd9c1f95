/** What is saved about one playing of a passage. */
package tuttarco.take;
