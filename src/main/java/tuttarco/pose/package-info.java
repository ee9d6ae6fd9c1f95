/** Where a person's joints are in a picture, by a trained model. */
package tuttarco.pose;
