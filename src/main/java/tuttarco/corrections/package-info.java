/**
 * What a person sets right in what was read: logged beside the take, line by line, and laid over the readings and the beats.
 */
package tuttarco.corrections;
