/** What a bow can do and on what it is played: the words everything else shares. */
package tuttarco.bow;
