/** Part files of whichever kind. */
package tuttarco.parts;
