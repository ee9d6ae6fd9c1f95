/** How loud a sound is, from its samples: numbers in, numbers out. */
package tuttarco.sound;
