/** The whole way from a take to its findings, on one screen. */
package tuttarco.analysis;
