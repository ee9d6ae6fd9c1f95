/** A clip played: picture and sound together, at a speed, round a loop, with clicks over it. It knows no window. */
package tuttarco.playback;
