package tuttarco.review;

/** Part and beats: what is on the stand, and when it sounds. */
public final class MusicModel {
    private final PartModel part;
    private final BowTyping typing;
    private final BeatsModel beats;
    private final Tapping tapping;
    private final SoundModel sound;

    public MusicModel(Session session) {
        part = new PartModel(session);
        typing = new BowTyping(session, part);
        beats = new BeatsModel(session, part);
        tapping = new Tapping(session, part, beats);
        sound = new SoundModel(session);
    }

    /** It comes into sight: what takes a while to read is read from now on. */
    public void shown() {
        sound.want();
    }

    /** It goes out of sight: nothing typed waits for being saved. */
    public void hidden() {
        typing.save();
    }

    public PartModel part() {
        return part;
    }

    public BowTyping typing() {
        return typing;
    }

    public BeatsModel beats() {
        return beats;
    }

    public Tapping tapping() {
        return tapping;
    }

    public SoundModel sound() {
        return sound;
    }
}
