/** Pages and data files; computes nothing new. */
package tuttarco.report;
