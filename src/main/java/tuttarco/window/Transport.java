package tuttarco.window;

import java.awt.Component;
import java.awt.Insets;
import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.AbstractAction;
import javax.swing.AbstractButton;
import javax.swing.Action;
import javax.swing.ButtonGroup;
import javax.swing.Icon;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSlider;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import javax.swing.text.JTextComponent;
import net.miginfocom.swing.MigLayout;
import tuttarco.playback.ClipPlayer;
import tuttarco.playback.Loop;

/**
 * The bar below a picture: play and pause, one picture back or on, speed, loop, and where the clip stands. Its keys, space,
 * comma and full stop, work wherever the focus is in the step it stands in, unless what has the focus takes them itself.
 */
public final class Transport extends JPanel {
    private static final long serialVersionUID = 1L;

    private static final List<Integer> SPEEDS_PERCENT = List.of(25, 50, 75, 100);

    /** Size of a button that bears a sign, before scaling; pixels. */
    private static final int SIGN_WIDTH = 44;

    private static final int SIGN_HEIGHT = 28;

    /** Speeds stand close, so that all have room in the least window; pixels before scaling. */
    private static final Insets SPEED_MARGIN = new Insets(2, 8, 2, 8);

    /** The slider's steps. */
    private static final int TENTHS = 10;

    private final PictureView view;
    private final JButton play = new JButton();
    private final JToggleButton loop = new JToggleButton(TransportIcon.LOOP);
    private final JSlider position = new JSlider(0, 0, 0);
    private final JLabel time = new JLabel(" ");
    private final List<JToggleButton> speeds = new ArrayList<>();
    /** Set while the bar shows what the player does, so that this is no order. */
    private boolean showing;

    /**
     * @param stepKey begins the names of the controls
     * @param stretch what is looped when the user asks for it: the bar at the place where the clip stands, say; the whole
     *     clip if empty
     */
    public Transport(String stepKey, PictureView view, Supplier<Optional<Loop>> stretch) {
        super(new MigLayout(
                "insets 6 12 6 12, gap 4 2, fillx", "[][][]12:push[]0[]0[]0[]12:push[]", "[center][center]"));
        this.view = view;
        setName(stepKey + "-transport");
        getAccessibleContext().setAccessibleName("Playing the take");
        addPosition(stepKey);
        button(new JButton(TransportIcon.BACK), stepKey + "-back", "One picture back", "comma", p -> p.step(-1));
        button(play, stepKey + "-play", "Play", "space", Transport::playOrPause);
        button(new JButton(TransportIcon.ON), stepKey + "-on", "One picture on", "full stop", p -> p.step(1));
        addSpeeds(stepKey);
        button(
                loop,
                stepKey + "-loop",
                "Again and again",
                "",
                p -> p.loop(loop.isSelected() ? stretch.get().or(() -> whole(p)) : Optional.empty()));
        key(
                ' ',
                "play",
                () -> !takesSpace(
                        KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner()),
                Transport::playOrPause);
        key(',', "back", () -> true, p -> p.step(-1));
        key('.', "on", () -> true, p -> p.step(1));
        view.onChange().add(this::refresh);
        refresh();
    }

    private static Optional<Loop> whole(ClipPlayer player) {
        return player.facts().durationS().filter(s -> s >= Loop.SHORTEST_S).map(s -> new Loop(0, s));
    }

    private static void playOrPause(ClipPlayer player) {
        if (player.playing()) {
            player.pause();
        } else {
            player.play();
        }
    }

    private void button(AbstractButton button, String name, String what, String key, Consumer<ClipPlayer> order) {
        button.setName(name);
        button.setToolTipText(key.isEmpty() ? what : what + " (" + key + ")");
        button.getAccessibleContext().setAccessibleName(what);
        button.addActionListener(e -> order(order));
        boolean sign = button.getText().isEmpty();
        add(button, sign ? "w " + SIGN_WIDTH + "!, h " + SIGN_HEIGHT + "!" : "");
    }

    private void addPosition(String stepKey) {
        position.setName(stepKey + "-position");
        position.getAccessibleContext().setAccessibleName("Where the take stands");
        position.addChangeListener(e -> {
            if (!showing) {
                view.player().ifPresent(p -> p.seek((double) position.getValue() / TENTHS));
            }
        });
        add(position, "span, split 2, growx, wmin 80");
        time.setName(stepKey + "-time");
        time.getAccessibleContext().setAccessibleName("Time");
        add(time, "wrap");
    }

    private void addSpeeds(String stepKey) {
        ButtonGroup group = new ButtonGroup();
        for (int percent : SPEEDS_PERCENT) {
            JToggleButton speed = new JToggleButton(percent + " %");
            speed.setMargin(SPEED_MARGIN);
            group.add(speed);
            speeds.add(speed);
            button(
                    speed,
                    stepKey + "-speed-" + percent,
                    "Speed " + percent + " percent",
                    "",
                    p -> p.speed(percent / 100.0));
        }
    }

    /** A key as it is typed, so that a text field that has the focus keeps it. */
    private void key(char typed, String name, Supplier<Boolean> free, Consumer<ClipPlayer> order) {
        getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).put(KeyStroke.getKeyStroke(typed), name);
        Action action = new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent e) {
                if (free.get()) {
                    order(order);
                }
            }
        };
        getActionMap().put(name, action);
    }

    private static boolean takesSpace(Component focused) {
        return focused instanceof AbstractButton
                || focused instanceof JComboBox<?>
                || focused instanceof JTextComponent;
    }

    private void order(Consumer<ClipPlayer> order) {
        view.player().ifPresent(order);
        refresh();
    }

    /** Shows what the player does. */
    private void refresh() {
        showing = true;
        Optional<ClipPlayer> player = view.player();
        for (Component control : getComponents()) {
            control.setEnabled(player.isPresent());
        }
        boolean playing = player.filter(ClipPlayer::playing).isPresent();
        Icon icon = playing ? TransportIcon.PAUSE : TransportIcon.PLAY;
        if (play.getIcon() != icon) {
            play.setIcon(icon);
            play.setToolTipText((playing ? "Pause" : "Play") + " (space)");
            play.getAccessibleContext().setAccessibleName(playing ? "Pause" : "Play");
        }
        loop.setSelected(player.flatMap(ClipPlayer::loop).isPresent());
        int percent = (int) Math.round(100 * player.map(ClipPlayer::speed).orElse(1.0));
        int speed = SPEEDS_PERCENT.indexOf(percent);
        if (speed >= 0) {
            speeds.get(speed).setSelected(true);
        }
        double lengthS = player.flatMap(p -> p.facts().durationS()).orElse(0.0);
        position.setMaximum((int) Math.ceil(lengthS * TENTHS));
        if (!position.getValueIsAdjusting()) {
            position.setValue((int) Math.round(view.timeS() * TENTHS));
        }
        String told = text(view.timeS()) + " / " + text(lengthS);
        if (!told.equals(time.getText())) {
            time.setText(told);
        }
        showing = false;
    }

    /** Minutes, seconds and tenths begun. */
    static String text(double timeS) {
        long tenths = (long) Math.floor(timeS * TENTHS + 1e-6);
        return String.format(Locale.ROOT, "%d:%02d.%d", tenths / (60 * TENTHS), tenths / TENTHS % 60, tenths % TENTHS);
    }
}
