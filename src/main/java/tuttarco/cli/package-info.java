/** The command line. */
package tuttarco.cli;
