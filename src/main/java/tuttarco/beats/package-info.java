/** Where bars and beats lie in the recording. */
package tuttarco.beats;
