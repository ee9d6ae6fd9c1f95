/** Frames with presentation times, read and written; the only room that knows FFmpeg. */
package tuttarco.video;
