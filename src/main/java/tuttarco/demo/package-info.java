/** A rendered section whose every stroke is known. */
package tuttarco.demo;
