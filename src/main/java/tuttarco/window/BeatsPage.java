package tuttarco.window;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.JScrollBar;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;
import tuttarco.beats.Beat;
import tuttarco.files.InputBytes;
import tuttarco.review.BeatsModel;
import tuttarco.review.BeatsModel.State;
import tuttarco.review.Draft;
import tuttarco.review.MusicModel;
import tuttarco.review.Playing;
import tuttarco.review.Session;
import tuttarco.review.SoundStretch;
import tuttarco.take.BeatsGiven;

/** The beats: how they are given, heard, tapped, and set right over the sound. */
final class BeatsPage extends JPanel {
    private static final long serialVersionUID = 1L;

    private static final AskFile.Kind LIST_FILE = new AskFile.Kind("Choose the list of beats", "Lists (CSV)", "csv");
    private static final AskFile.Kind TAKE_FILE =
            new AskFile.Kind("Choose the take whose beats are taken over", "Takes", "json");

    /** How often what changes by itself is drawn anew, milliseconds: thirty times a second. */
    private static final int TICK_MS = 33;

    /** Steps of the scroll bar for the whole sound. */
    private static final int SCROLL_STEPS = 10_000;

    /** A first tempo to be corrected, beats a minute (chosen). */
    private static final double FIRST_TEMPO_BPM = 90;

    /** The ways in which beats can be given, in the words of the page. */
    private enum Way {
        PART("heard in the sound, by the part"),
        CLICKS("clicks heard in the sound"),
        LIST("a list, or taps"),
        TEMPO("a steady tempo"),
        TAKE("as in another take");

        private final String words;

        Way(String words) {
            this.words = words;
        }

        static Way of(BeatsGiven given) {
            if (given instanceof BeatsGiven.HeardClicks) {
                return CLICKS;
            }
            if (given instanceof BeatsGiven.Listed) {
                return LIST;
            }
            if (given instanceof BeatsGiven.Steady) {
                return TEMPO;
            }
            return given instanceof BeatsGiven.Carried ? TAKE : PART;
        }

        @Override
        public String toString() {
            return words;
        }
    }

    private final transient Session session;
    private final transient MusicModel model;
    private final transient BeatsModel beats;
    private final transient AskFile ask;
    private final transient SoundPlaying playing;

    private final JComboBox<Way> way = new JComboBox<>(Way.values());
    private final Map<Way, JComponent> fields = new EnumMap<>(Way.class);
    private final JTextField firstBar = new JTextField(4);
    private final JTextField tempo = new JTextField(5);
    private final JTextField start = new JTextField(5);
    private final JLabel listName = Controls.words("music-list-name");
    private final JLabel takeName = Controls.words("music-take-name");
    private final JButton hear;
    private final JButton stop;
    private final JProgressBar hearing = new JProgressBar();
    private final Sentence heard = new Sentence("music-beats-told");
    private final DefaultListModel<String> anchors = new DefaultListModel<>();
    private final JList<String> anchorList = new JList<>(anchors);
    private final JButton remove;
    private final JButton undo;
    private final JButton redo;
    private final SoundView sound;
    private final JScrollBar scroll = new JScrollBar(JScrollBar.HORIZONTAL);
    private final Sentence chosen = new Sentence("music-chosen");
    private final TapPage taps;
    private final Timer ticking = new Timer(TICK_MS, e -> tick());
    private transient List<Beat> anchorsShown = List.of();
    private boolean showing;

    BeatsPage(Session session, MusicModel model, AskFile ask, Playing.Opening opening) {
        super(new MigLayout(
                "insets 12 16 8 16, fill", "[" + 264 + "!, fill]" + 16 + "[grow, fill]", "[grow, fill]0[][][][]"));
        this.session = session;
        this.model = model;
        this.ask = ask;
        beats = model.beats();
        setName("music-beats-page");
        sound = new SoundView("music-sound", model);
        playing = new SoundPlaying(session, opening, sound::cursorS, this::heardBeats, this::playingChanged);
        taps = new TapPage(session, model, playing);
        hear = Controls.button(
                "music-hear",
                "Hear the beats",
                'H',
                "Listen to the sound for the beats; this takes a while",
                beats::hear);
        stop = Controls.button("music-stop", "Stop", 'S', "Stop listening", beats::stop);
        remove = Controls.button(
                "music-anchor-remove",
                "Let go",
                'L',
                "The beat goes back to where it was heard or listed",
                this::removeAnchor);
        undo = Controls.button("music-undo", "Undo", 'U', "Control Z", beats::undo);
        redo = Controls.button("music-redo", "Redo", 'R', "Control Y", beats::redo);
        add(controls(), "cell 0 0 1 5, grow, hmin 0");
        add(sound, "cell 1 0, grow, wmin 0, hmin " + 90);
        add(scroll, "cell 1 1, growx");
        add(chosen, "cell 1 2, " + Controls.sentenceRoom(chosen));
        add(playing.controls(sound), "cell 1 3, growx, wmin 0");
        add(taps, "cell 1 4, growx, wmin 0");
        dress();
        listen();
        refresh();
    }

    private JComponent controls() {
        JPanel controls = new JPanel(new MigLayout("insets 0, fill, hidemode 3", "[grow, fill]", ""));
        String across = "growx, wmin 0, wrap";
        controls.add(Controls.heading("The beats are"), across);
        controls.add(way, across);
        fields.put(Way.CLICKS, row("They begin with bar", 'B', firstBar));
        fields.put(Way.LIST, chooser(listName, "music-list-choose", LIST_FILE));
        fields.put(Way.TEMPO, tempoFields());
        fields.put(Way.TAKE, chooser(takeName, "music-take-choose", TAKE_FILE));
        fields.values().forEach(row -> controls.add(row, across));
        controls.add(hear, "split 2, growx");
        controls.add(stop, "wrap, growx");
        controls.add(hearing, across);
        controls.add(heard, across);
        controls.add(Controls.label("Beats held by hand", 'E', anchorList), across + ", gaptop 8");
        controls.add(new JScrollPane(anchorList), "grow, push, wmin 0, hmin " + 40 + ", wrap");
        controls.add(remove, "split 3");
        controls.add(undo, "");
        controls.add(redo, "");
        return controls;
    }

    private static JComponent row(String label, char mnemonic, JComponent field) {
        JPanel row = new JPanel(new MigLayout("insets 0", "[]8[]", ""));
        row.add(Controls.label(label, mnemonic, field));
        row.add(field);
        return row;
    }

    private JComponent tempoFields() {
        JPanel rows = new JPanel(new MigLayout("insets 0", "[]8[]4[]", ""));
        rows.add(Controls.label("Beats a minute", 'M', tempo));
        rows.add(tempo, "wrap");
        rows.add(Controls.label("The part begins at", 'G', start));
        rows.add(start);
        rows.add(new JLabel("s"));
        return rows;
    }

    private JComponent chooser(JLabel name, String key, AskFile.Kind kind) {
        JPanel row = new JPanel(new MigLayout("insets 0, fillx", "[grow, fill][]", ""));
        row.add(name, "wmin 0");
        row.add(Controls.button(key, "Choose\u2026", (char) 0, kind.title(), () -> choose(kind)));
        return row;
    }

    private void dress() {
        way.setName("music-way");
        way.getAccessibleContext().setAccessibleName("How the beats are given");
        firstBar.setName("music-first-bar");
        tempo.setName("music-tempo");
        start.setName("music-start");
        hearing.setName("music-hearing");
        hearing.setIndeterminate(true);
        hearing.setStringPainted(true);
        anchorList.setName("music-anchors");
        anchorList.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        anchorList.setToolTipText("A beat moved on the sound is held there; Delete lets it go");
        scroll.setName("music-scroll");
        scroll.setFocusable(false);
        scroll.setMaximum(SCROLL_STEPS);
        scroll.getAccessibleContext().setAccessibleName("SoundStretch of the sound that is seen");
    }

    private void listen() {
        beats.onChange().add(this::refresh);
        session.onDraft().add(this::refresh);
        model.tapping().onChange().add(playing::ticks);
        way.addActionListener(e -> give());
        firstBar.addActionListener(e -> give());
        tempo.addActionListener(e -> give());
        start.addActionListener(e -> give());
        anchorList.addListSelectionListener(e -> showAnchor());
        Keys.bind(anchorList, WHEN_FOCUSED, "DELETE", this::removeAnchor);
        Keys.bind(this, WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, "ctrl Z", beats::undo);
        Keys.bind(this, WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, "ctrl Y", beats::redo);
        Keys.bind(sound, WHEN_FOCUSED, "SPACE", playing::playOrPause);
        sound.onMoved(this::showStretch);
        scroll.addAdjustmentListener(e -> scrolled());
    }

    /** Leaves the page: playing stops. */
    void leave() {
        playing.pause();
    }

    /** Lets go of the sound, which other steps play too. */
    void close() {
        playing.close();
    }

    private List<Beat> heardBeats() {
        return model.tapping().tapped().or(beats::beats).map(map -> map.beats()).orElse(List.of());
    }

    private void playingChanged() {
        if (playing.playing()) {
            ticking.start();
        } else if (!(beats.state() instanceof State.Telling)) {
            ticking.stop();
        }
        sound.playhead(playing.playing() ? OptionalDouble.of(playing.soundS()) : OptionalDouble.empty());
    }

    private void tick() {
        if (beats.state() instanceof State.Telling telling) {
            long s = (System.currentTimeMillis() - telling.sinceMs()) / 1000;
            hearing.setString(String.format(Locale.ROOT, "%d:%02d", s / 60, s % 60));
        }
        if (playing.playing()) {
            sound.playhead(OptionalDouble.of(playing.soundS()));
        } else if (!(beats.state() instanceof State.Telling)) {
            ticking.stop();
        }
    }

    /** Gives the beats as the fields say, as far as they say it. */
    private void give() {
        if (showing) {
            return;
        }
        Way chosenWay = (Way) way.getSelectedItem();
        showFields(chosenWay);
        switch (chosenWay) {
            case PART -> beats.give(new BeatsGiven.HeardByPart());
            case CLICKS -> beats.give(new BeatsGiven.HeardClicks(Optional.of(firstBarTyped())));
            case TEMPO -> giveTempo();
            case LIST, TAKE -> {
                if (Way.of(beats.source()) != chosenWay) {
                    heard.say(
                            chosenWay == Way.LIST
                                    ? "Choose a list, or tap the beats below."
                                    : "Choose the take; it lies in this take's folder.");
                }
            }
        }
    }

    private String firstBarTyped() {
        String typed = firstBar.getText().strip();
        return typed.isEmpty() ? model.tapping().bars().stream().findFirst().orElse("1") : typed;
    }

    private void giveTempo() {
        try {
            double tempoBpm = tempo.getText().isBlank()
                    ? FIRST_TEMPO_BPM
                    : Double.parseDouble(tempo.getText().strip());
            double startS = start.getText().isBlank()
                    ? sound.cursorS()
                    : Double.parseDouble(start.getText().strip());
            beats.give(new BeatsGiven.Steady(tempoBpm, Math.round(startS * 1000) / 1000.0));
        } catch (IllegalArgumentException e) {
            session.trouble("A tempo lies between 10 and 1000 beats a minute, and the part begins at a time in seconds,"
                    + " such as 92 and 1.84.");
        }
    }

    private void choose(AskFile.Kind kind) {
        Optional<Draft> draft = session.draft();
        ask.ask(this, kind, draft.map(d -> d.file().getParent())).ifPresent(file -> {
            if (draft.filter(d -> d.mayName(file)).isEmpty()) {
                session.trouble(
                        InputBytes.name(file)
                                + " lies outside the take's folder, where a take can't name it; copy it beside the take first.");
            } else if (kind == LIST_FILE) {
                beats.give(new BeatsGiven.Listed(file.toAbsolutePath().normalize()));
            } else {
                beats.give(new BeatsGiven.Carried(file.toAbsolutePath().normalize()));
            }
        });
    }

    private void showAnchor() {
        int index = anchorList.getSelectedIndex();
        if (!showing && index >= 0 && index < anchorsShown.size()) {
            Beat anchor = anchorsShown.get(index);
            beats.beats().ifPresent(map -> {
                for (int i = 0; i < map.beats().size(); i++) {
                    if (BeatsModel.holds(anchor, map.beats().get(i))) {
                        beats.choose(i);
                    }
                }
            });
        }
    }

    private void removeAnchor() {
        int index = anchorList.getSelectedIndex();
        if (index >= 0 && index < anchorsShown.size()) {
            beats.removeAnchor(anchorsShown.get(index));
        }
    }

    private void refresh() {
        showing = true;
        State state = beats.state();
        BeatsGiven source = beats.source();
        showGiven(source);
        boolean telling = state instanceof State.Telling;
        hear.setEnabled(state instanceof State.Unheard || state instanceof State.Wrong);
        stop.setEnabled(telling);
        hearing.setVisible(telling);
        if (telling) {
            ticking.start();
        }
        heard.say(spoken(state));
        heard.setForeground(
                state instanceof State.Wrong
                        ? Theme.worn().palette().accent()
                        : Theme.worn().palette().ink());
        showAnchors();
        undo.setEnabled(beats.canUndo());
        redo.setEnabled(beats.canRedo());
        chosen.say(chosenSpoken());
        playing.ticks();
        showing = false;
        revalidate();
        repaint();
    }

    private void showGiven(BeatsGiven source) {
        Way now = Way.of(source);
        way.setSelectedItem(now);
        showFields(now);
        if (source instanceof BeatsGiven.HeardClicks clicks) {
            firstBar.setText(clicks.firstBar().orElse(""));
        } else if (source instanceof BeatsGiven.Steady steady) {
            tempo.setText(Double.toString(steady.tempoBpm()));
            start.setText(Double.toString(steady.startS()));
        }
        listName.setText(source instanceof BeatsGiven.Listed l ? InputBytes.name(l.list()) : "none yet");
        takeName.setText(source instanceof BeatsGiven.Carried c ? InputBytes.name(c.take()) : "none yet");
    }

    private void showFields(Way shown) {
        fields.forEach((of, row) -> row.setVisible(of == shown));
        boolean listens = shown != Way.LIST && shown != Way.TEMPO && shown == Way.of(beats.source());
        hear.setVisible(listens);
        stop.setVisible(listens);
        revalidate();
    }

    /** Colours of words are those of the theme that is worn now. */
    @Override
    public void updateUI() {
        super.updateUI();
        if (ticking != null) {
            refresh();
        }
    }

    private static String spoken(State state) {
        if (state instanceof State.None none) {
            return none.sentence();
        }
        if (state instanceof State.Unheard) {
            return "Not heard yet: Hear the beats listens for them. Or tap them, on the right.";
        }
        if (state instanceof State.Telling telling) {
            return telling.listening() ? "Listening\u2026" : "Reading\u2026";
        }
        if (state instanceof State.Wrong wrong) {
            return "Please note: " + wrong.sentence();
        }
        State.Told told = (State.Told) state;
        String count =
                told.beats().bars().size() + " bars, " + told.beats().beats().size() + " beats.";
        return told.notes().isEmpty()
                ? count
                : count + " " + String.join(" ", told.notes()) + " Play ticks them: listen whether they fit.";
    }

    private void showAnchors() {
        List<Beat> now = beats.anchors();
        if (!now.equals(anchorsShown)) {
            anchorsShown = now;
            anchors.clear();
            now.forEach(anchor -> anchors.addElement(anchor.spoken() + " at " + clock(anchor.timeS())));
        }
        remove.setEnabled(!now.isEmpty());
    }

    private String chosenSpoken() {
        if (beats.beats().isEmpty()) {
            return "Click into the sound to say from where Play plays.";
        }
        if (beats.chosen().isEmpty()) {
            return "Drag a line, or go to one with the up and down arrows and move it with left and right: 10 ms, with Shift"
                    + " 1 ms. Shade is where a beat lies with 95 % confidence; a diamond holds a beat moved by hand.";
        }
        Beat beat = beats.beats().get().beats().get(beats.chosen().getAsInt());
        boolean held = beats.anchors().stream().anyMatch(anchor -> BeatsModel.holds(anchor, beat));
        String error = beat.stderrS().isPresent()
                ? String.format(
                        Locale.ROOT,
                        ", good to about %.0f ms",
                        1000 * beat.stderrS().getAsDouble())
                : "";
        String spoken = beat.spoken();
        return "B" + spoken.substring(1) + " at " + clock(beat.timeS()) + error
                + (held
                        ? ", held by hand; Delete lets it go."
                        : BeatsModel.movedInReview(beat) ? ", moved by hand in Review." : ".");
    }

    /** {@code 0:04.217}. */
    private static String clock(double timeS) {
        long ms = Math.round(timeS * 1000);
        return String.format(Locale.ROOT, "%d:%02d.%03d", ms / 60_000, ms / 1000 % 60, ms % 1000);
    }

    private void showStretch() {
        SoundStretch seen = sound.seen();
        showing = true;
        double wholeS = seen.wholeToS() - seen.wholeFromS();
        int extent = (int) Math.max(1, Math.round(seen.lengthS() / wholeS * SCROLL_STEPS));
        int value = (int) Math.round((seen.fromS() - seen.wholeFromS()) / wholeS * SCROLL_STEPS);
        scroll.setValues(Math.min(value, SCROLL_STEPS - extent), extent, 0, SCROLL_STEPS);
        showing = false;
    }

    private void scrolled() {
        if (!showing) {
            SoundStretch seen = sound.seen();
            double wholeS = seen.wholeToS() - seen.wholeFromS();
            double fromS = seen.wholeFromS() + (double) scroll.getValue() / SCROLL_STEPS * wholeS;
            sound.see(seen.scrolled((fromS - seen.fromS()) / seen.lengthS()));
        }
    }
}
