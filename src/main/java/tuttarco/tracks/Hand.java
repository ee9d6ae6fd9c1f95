package tuttarco.tracks;

/** A hand of the player's own left or right, as a picture shows it: a mirrored picture swaps the two. */
public enum Hand {
    LEFT,
    RIGHT;

    Hand other() {
        return this == LEFT ? RIGHT : LEFT;
    }
}
