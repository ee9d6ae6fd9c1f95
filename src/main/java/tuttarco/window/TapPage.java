package tuttarco.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;
import tuttarco.beats.TappedBeats.Every;
import tuttarco.chart.Type;
import tuttarco.review.MusicModel;
import tuttarco.review.Session;
import tuttarco.review.Tapping;

/** Taps along with the sound: from which bar, what each is for, and what becomes of them. */
final class TapPage extends JPanel {
    private static final long serialVersionUID = 1L;

    /** Taps are at most so late or early, milliseconds (chosen). */
    private static final int MOST_LATE_MS = 500;

    private static final int LATE_STEP_MS = 5;

    private final transient Session session;
    private final transient Tapping tapping;
    private final transient SoundPlaying playing;
    private final JComboBox<String> bar = new JComboBox<>();
    private final JComboBox<String> every = new JComboBox<>(new String[] {"for every beat", "for every bar"});
    private final JLabel pad = Controls.words("music-tap-pad");
    private final JSpinner late = new JSpinner(new SpinnerNumberModel(0, -MOST_LATE_MS, MOST_LATE_MS, LATE_STEP_MS));
    private final JButton measure;
    private final JButton asList;
    private final JButton asAnchors;
    private final JButton forget;
    private boolean showing;

    TapPage(Session session, MusicModel model, SoundPlaying playing) {
        super(new MigLayout("insets 8 0 0 0, fillx", "[grow, fill]", ""));
        this.session = session;
        this.tapping = model.tapping();
        this.playing = playing;
        setName("music-taps");
        measure = Controls.button(
                "music-late-measure",
                "Measure",
                (char) 0,
                "How late these taps are against the beats as they are known, by the median",
                this::measure);
        asList = Controls.button(
                "music-taps-list",
                "Make them the beats",
                (char) 0,
                "The taps become the take's list of beats, in a file beside it",
                tapping::keepAsList);
        asAnchors = Controls.button(
                "music-taps-anchors",
                "Hold beats by them",
                (char) 0,
                "The beats stay as they were heard and are held at the taps",
                tapping::keepAsAnchors);
        forget = Controls.button("music-taps-forget", "Forget them", (char) 0, "Begin tapping anew", tapping::clear);
        layOut();
        listen(model);
        refresh();
    }

    private void layOut() {
        JPanel first = new JPanel(new MigLayout("insets 0, fillx", "[]4[]8[]8[grow, fill]", ""));
        first.add(Controls.label("Tap from bar", 'B', bar));
        first.add(bar, "wmin " + 70);
        first.add(every);
        first.add(pad, "wmin 0");
        JPanel second = new JPanel(new MigLayout("insets 4 0 0 0", "[]4[]4[]4[]push[]4[]4[]", ""));
        second.add(Controls.label("Taps come late by", 'W', late));
        second.add(late);
        second.add(new JLabel("ms"));
        second.add(measure);
        second.add(asList);
        second.add(asAnchors);
        second.add(forget);
        add(first, "growx, wrap");
        add(second, "growx");
        bar.setName("music-tap-from");
        every.setName("music-tap-every");
        every.getAccessibleContext().setAccessibleName("What a tap is given for");
        late.setName("music-late");
        late.setToolTipText("This is taken off every tap; below 0 if taps come early");
        pad.setFocusable(true);
        pad.setFont(Type.strong().deriveFont(pad.getFont().getSize2D()));
        pad.getAccessibleContext().setAccessibleName("Tap here");
        pad.setToolTipText("Space or any letter taps, Backspace takes the last tap back, Enter plays or pauses");
        border(false);
    }

    /** A heavy edge says that taps are taken. */
    private void border(boolean focus) {
        int widthPx = UIScale.scale(focus ? 2 : 1);
        int insetPx = UIScale.scale(8) - widthPx;
        pad.setBorder(BorderFactory.createCompoundBorder(
                BorderFactory.createLineBorder(
                        focus
                                ? Theme.worn().palette().accent()
                                : Theme.worn().palette().secondary(),
                        widthPx),
                BorderFactory.createEmptyBorder(insetPx, insetPx, insetPx, insetPx)));
    }

    private void listen(MusicModel model) {
        tapping.onChange().add(this::refresh);
        model.part().onChange().add(this::refresh);
        bar.addActionListener(e -> {
            if (!showing && bar.getSelectedIndex() >= 0) {
                tapping.from(bar.getSelectedIndex());
            }
        });
        every.addActionListener(e -> {
            if (!showing) {
                tapping.every(Every.values()[every.getSelectedIndex()]);
            }
        });
        late.addChangeListener(e -> {
            if (!showing) {
                tapping.lateS(((Number) late.getValue()).intValue() / 1000.0);
            }
        });
        pad.addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                border(true);
            }

            @Override
            public void focusLost(FocusEvent e) {
                border(false);
            }
        });
        pad.addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent e) {
                pad.requestFocusInWindow();
                if (playing.playing()) {
                    tap(e.getWhen());
                } else {
                    playing.playToTap();
                }
            }
        });
        pad.addKeyListener(new KeyAdapter() {
            @Override
            public void keyPressed(KeyEvent e) {
                pressed(e);
            }
        });
    }

    private void pressed(KeyEvent e) {
        if (e.getModifiersEx() != 0) {
            return;
        }
        int code = e.getKeyCode();
        if (code == KeyEvent.VK_BACK_SPACE) {
            tapping.takeBack();
        } else if (code == KeyEvent.VK_ENTER) {
            playing.playToTap();
        } else if (code == KeyEvent.VK_SPACE || Character.isLetter(e.getKeyChar())) {
            tap(e.getWhen());
        }
    }

    private void tap(long whenMs) {
        if (playing.playing()) {
            tapping.tap(playing.soundS(Math.max(0, System.currentTimeMillis() - whenMs)));
        } else {
            session.say("Press Enter to play, and tap along.");
        }
    }

    /** Colours of the edge are those of the theme that is worn now. */
    @Override
    public void updateUI() {
        super.updateUI();
        if (forget != null) {
            border(pad.isFocusOwner());
        }
    }

    private void measure() {
        OptionalDouble lateS = tapping.measuredLateS();
        if (lateS.isPresent()) {
            tapping.lateS(lateS.getAsDouble());
            session.say("These taps come late by " + Math.round(1000 * lateS.getAsDouble())
                    + " ms in the middle; that is now taken off.");
        } else {
            session.trouble(
                    "Too few of these taps lie near beats known from elsewhere; hear the beats first, or tap more.");
        }
    }

    private void refresh() {
        showing = true;
        List<String> bars = tapping.bars();
        List<String> shown = new ArrayList<>();
        for (int i = 0; i < bar.getItemCount(); i++) {
            shown.add(bar.getItemAt(i));
        }
        if (!shown.equals(bars)) {
            bar.removeAllItems();
            bars.forEach(bar::addItem);
        }
        if (tapping.fromBar() < bar.getItemCount()) {
            bar.setSelectedIndex(tapping.fromBar());
        }
        every.setSelectedIndex(tapping.every().ordinal());
        late.setValue((int) Math.round(tapping.lateS() * 1000));
        boolean some = !tapping.tapsS().isEmpty();
        for (JButton button : List.of(measure, asList, asAnchors, forget)) {
            button.setEnabled(some);
        }
        pad.setEnabled(!bars.isEmpty());
        pad.setText(padWords(bars));
        showing = false;
    }

    private String padWords(List<String> bars) {
        if (bars.isEmpty()) {
            return "Tapping needs a part, whose bars are counted.";
        }
        int taps = tapping.tapsS().size();
        String next = tapping.next().map(place -> "next: " + place).orElse("the part is at its end");
        return taps == 0 ? "Tap here along with the sound; " + next : taps + (taps == 1 ? " tap, " : " taps, ") + next;
    }
}
