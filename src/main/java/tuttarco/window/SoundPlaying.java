package tuttarco.window;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleSupplier;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import tuttarco.beats.Beat;
import tuttarco.review.Draft;
import tuttarco.review.Playing;
import tuttarco.review.Session;

/** Plays the take's sound from the cursor, with the beats ticked over it. It is opened when it is first asked for. */
final class SoundPlaying {
    /** Speeds offered; the pitch stays. */
    private enum Speed {
        WHOLE("100 %", 1),
        THREE_QUARTERS("75 %", 0.75),
        HALF("50 %", 0.5),
        QUARTER("25 %", 0.25);

        private final String words;
        private final double factor;

        Speed(String words, double factor) {
            this.words = words;
            this.factor = factor;
        }

        @Override
        public String toString() {
            return words;
        }
    }

    private final Session session;
    private final Playing.Opening opening;
    private final DoubleSupplier cursorS;
    private final Supplier<List<Beat>> beats;
    private final Runnable changed;
    private final JButton play;
    private final JCheckBox ticked = Controls.dress(
            new JCheckBox("tick the beats"), "music-ticks", 'K', "Tick the beats over the sound, bars higher");
    private final JComboBox<Speed> speed = new JComboBox<>(Speed.values());
    private Optional<Playing> sound = Optional.empty();
    private Optional<Draft> opened = Optional.empty();
    private boolean openingNow;
    private boolean quiet;

    /**
     * @param beats what is ticked
     * @param changed is told when playing begins or ends
     */
    SoundPlaying(
            Session session,
            Playing.Opening opening,
            DoubleSupplier cursorS,
            Supplier<List<Beat>> beats,
            Runnable changed) {
        this.session = session;
        this.opening = opening;
        this.cursorS = cursorS;
        this.beats = beats;
        this.changed = changed;
        play = Controls.button(
                "music-play", "Play", 'Y', "Play from the cursor; Space in the sound", this::playOrPause);
        ticked.setSelected(true);
        ticked.addActionListener(e -> ticks());
        speed.setName("music-speed");
        speed.setToolTipText("How fast; the pitch stays");
        speed.getAccessibleContext().setAccessibleName("Speed");
        speed.addActionListener(e -> sound.ifPresent(s -> s.speed(factor())));
        session.onDraft().add(this::letGoOfAnother);
    }

    JComponent controls(SoundView view) {
        JPanel controls = new JPanel(new MigLayout("insets 0", "[]8[]8[]push[]4[]", ""));
        controls.add(play);
        controls.add(speed);
        controls.add(ticked);
        controls.add(
                Controls.button("music-closer", "Closer", (char) 0, "See less of the sound, larger; +", view::closer));
        controls.add(Controls.button("music-wider", "Wider", (char) 0, "See more of the sound; -", view::wider));
        return controls;
    }

    private double factor() {
        return ((Speed) speed.getSelectedItem()).factor;
    }

    boolean playing() {
        return sound.filter(Playing::playing).isPresent();
    }

    /** Where the sound is, seconds of the clip. */
    double soundS() {
        return sound.map(Playing::soundS).orElse(cursorS.getAsDouble());
    }

    /** Where the sound was so many milliseconds ago. */
    double soundS(long agoMs) {
        return soundS() - agoMs / 1000.0 * factor();
    }

    void playOrPause() {
        if (playing()) {
            pause();
        } else {
            quiet = false;
            play();
        }
    }

    /** Plays or pauses without ticks, which would lead the taps. */
    void playToTap() {
        if (playing()) {
            pause();
        } else {
            quiet = true;
            play();
        }
    }

    void pause() {
        sound.ifPresent(Playing::pause);
        showState();
    }

    private void play() {
        Optional<Draft> draft = session.draft();
        if (sound.isPresent()) {
            begin(sound.get());
        } else if (draft.isPresent() && !openingNow) {
            openingNow = true;
            session.background()
                    .run(
                            () -> opening.open(
                                    draft.get().video(),
                                    () -> session.background().tell(this::showState)),
                            ready -> {
                                openingNow = false;
                                opened = draft;
                                sound = Optional.of(ready);
                                begin(ready);
                            },
                            sentence -> {
                                openingNow = false;
                                session.trouble(sentence);
                            });
        }
    }

    private void begin(Playing ready) {
        ready.speed(factor());
        ticks();
        ready.seek(Math.max(0, cursorS.getAsDouble()));
        ready.play();
        showState();
    }

    /** Has the beats ticked as they are now. */
    void ticks() {
        boolean heard = ticked.isSelected() && !quiet;
        sound.ifPresent(s -> s.ticks(heard ? beats.get() : List.of()));
    }

    private void showState() {
        play.setText(playing() ? "Pause" : "Play");
        changed.run();
    }

    private void letGoOfAnother() {
        if (!opened.map(Draft::video).equals(session.draft().map(Draft::video))) {
            close();
        }
    }

    void close() {
        sound.ifPresent(Playing::close);
        sound = Optional.empty();
        opened = Optional.empty();
        showState();
    }
}
