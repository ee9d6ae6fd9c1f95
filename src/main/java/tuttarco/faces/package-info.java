/** Where faces are in a clip, and how they are blurred. */
package tuttarco.faces;
