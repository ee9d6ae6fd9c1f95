/** Pictures of what was compared; computes nothing new. */
package tuttarco.chart;
