/** Parts as MusicXML files: read in the order played, written, and marked with bow signs. */
package tuttarco.musicxml;
