/** Takes beside each other: what is kept of one, what changed between them, how a season went. */
package tuttarco.season;
