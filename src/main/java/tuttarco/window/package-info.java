/** The window: what {@code review} holds, drawn with Swing. It computes nothing and never keeps its thread waiting. */
package tuttarco.window;
