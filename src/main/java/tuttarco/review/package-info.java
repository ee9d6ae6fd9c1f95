/**
 * What the window shows and does, without a window: the take being set up, what is chosen, what goes on behind. It asks
 * {@code analysis} for what has to be computed and computes nothing itself; a test holds it to that.
 */
package tuttarco.review;
