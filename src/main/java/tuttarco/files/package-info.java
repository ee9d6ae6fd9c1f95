/** Files written whole or not at all, and what to say when something given can't be used. */
package tuttarco.files;
