package tuttarco.video;

/**
 * A stretch of a clip that the camera took in one go, or a dissolve from one such stretch into the next.
 *
 * @param startS time of its first frame, seconds from the clip's start
 */
public record Shot(double startS, View view) {
    /** What a clip starts with. */
    public static final Shot FIRST = new Shot(0, View.FIRST);

    /** What a shot shows. */
    public enum View {
        /** What the clip shows at its start. */
        FIRST,
        /** Something else. */
        OTHER,
        /** Two pictures mixed. */
        DISSOLVE
    }
}
