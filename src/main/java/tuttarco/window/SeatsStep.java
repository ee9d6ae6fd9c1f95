package tuttarco.window;

import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.AbstractAction;
import javax.swing.InputMap;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.JSlider;
import javax.swing.JTextArea;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import tuttarco.bow.Instrument;
import tuttarco.review.SeatsModel;
import tuttarco.review.SeatsModel.Pick;
import tuttarco.seats.LeaderSide;

/** Seats: who sits where in the picture, found or drawn, numbered by desk. */
final class SeatsStep implements Step {
    /** The slider's steps a second of the clip. */
    private static final int STEPS_PER_S = 10;

    /** Steps of the arrow keys across the picture's width: fine, and coarse with Control. */
    private static final int FINE = 400;

    private static final int COARSE = 40;

    private final SeatsModel model;
    private final JPanel view =
            new JPanel(new MigLayout("insets 12, fill, gap 12", "[grow, fill][400!, fill]", "[grow, fill]"));
    private final SeatsView picture;
    private final SeatsTable table;
    private final JSlider time = new JSlider();
    private final JLabel clock = new JLabel(" ");
    private final JComboBox<Instrument> instrument = new JComboBox<>(Instrument.values());
    private final JComboBox<LeaderSide> side = new JComboBox<>(LeaderSide.values());
    private final JButton search;
    private final JProgressBar searched = new JProgressBar(0, 100);
    private final JButton stop;
    private final JButton undo;
    private final JButton redo;
    private final JButton remove;
    private final JButton takeAll;
    private final JToggleButton numbering = new JToggleButton("Number by clicking");
    private final JButton byPlace;
    private final JTextArea troubles = Labels.text("seats-troubles", "");
    private boolean showing;

    SeatsStep(SeatsModel model) {
        this.model = model;
        picture = new SeatsView(model);
        table = new SeatsTable(model);
        search = Labels.button("seats-search", "Look for the players", 'L', model::search);
        stop = Labels.button("seats-search-stop", "Stop", 'T', model::stopSearch);
        undo = Labels.button("seats-undo", "Undo", 'U', model::undo);
        redo = Labels.button("seats-redo", "Redo", 'R', model::redo);
        remove = Labels.button("seats-remove", "Take away", 'W', model::remove);
        takeAll = Labels.button("seats-take-all", "All doubtful play", 'D', model::takeAll);
        byPlace = Labels.button("seats-by-place", "Number by place", 'B', model::numberByPlace);
        view.setName(key());
        view.add(left(), "grow, wmin 0, hmin 0");
        view.add(right(), "grow, wmin 0, hmin 0");
        keys();
        model.onChange().add(this::show);
        show();
    }

    @Override
    public String title() {
        return "Seats";
    }

    @Override
    public String key() {
        return "seats";
    }

    @Override
    public JComponent view() {
        return view;
    }

    @Override
    public void shown() {
        model.look();
        if (model.seats().players().isEmpty()) {
            search.requestFocusInWindow();
        } else {
            picture.requestFocusInWindow();
        }
    }

    private JPanel left() {
        JPanel left = new JPanel(new MigLayout("insets 0, fill, gap 8", "[grow, fill][]", "[grow, fill][]"));
        time.setName("seats-time");
        time.setValue(0);
        time.setToolTipText("Another picture of the clip");
        time.getAccessibleContext().setAccessibleName("Time of the picture");
        time.addChangeListener(e -> {
            if (!showing) {
                model.look(time.getValue() / (double) STEPS_PER_S);
            }
        });
        clock.setName("seats-clock");
        left.add(picture, "span, grow, push, wmin 0, hmin 0");
        left.add(time, "span, split 2, growx, pushx, wmin 0");
        left.add(clock);
        return left;
    }

    private JPanel right() {
        JPanel right = new JPanel(new MigLayout("insets 0, fill, wrap 1, gapy 8, hidemode 3", "[grow, fill]", ""));
        right.add(Labels.heading("Who sits where"));
        right.add(finding(), "wmin 0");
        right.add(troubles, "wmin 0");
        right.add(table.view(), "grow, push, hmin 90");
        right.add(buttons(), "wmin 0");
        right.add(new SeatForm(model).view(), "wmin 0");
        return right;
    }

    private JPanel finding() {
        JPanel finding = new JPanel(new MigLayout("insets 0, hidemode 3, gap 8", "[][grow, fill][][grow, fill]", ""));
        instrument.setName("seats-instrument");
        instrument.setRenderer(new WordRenderer<>(Instrument::word));
        instrument.addActionListener(e -> {
            if (!showing) {
                model.allPlay((Instrument) instrument.getSelectedItem());
            }
        });
        side.setName("seats-leader-side");
        side.setRenderer(new WordRenderer<>(s -> s == LeaderSide.LEFT ? "on the left" : "on the right"));
        side.addActionListener(e -> {
            if (!showing) {
                model.leaderSits((LeaderSide) side.getSelectedItem());
            }
        });
        searched.setName("seats-searched");
        searched.getAccessibleContext().setAccessibleName("How much of the clip was searched");
        finding.add(Labels.of("All play", instrument));
        finding.add(instrument);
        finding.add(Labels.of("Leader sits", side));
        finding.add(side, "wrap");
        finding.add(search, "span, growx 0, split 3");
        finding.add(searched, "growx");
        finding.add(stop);
        return finding;
    }

    private JPanel buttons() {
        JPanel buttons =
                new JPanel(new MigLayout("insets 0, gap 6, wrap 2, fillx", "[grow, fill, sg][grow, fill, sg]", ""));
        JButton add = Labels.button("seats-add", "Add a player", 'A', () -> {
            model.add();
            picture.requestFocusInWindow();
        });
        add.setToolTipText("Insert; or draw a seat in the picture, over others with Control held");
        remove.setToolTipText("Delete");
        undo.setToolTipText("Control Z");
        redo.setToolTipText("Control Y");
        byPlace.setToolTipText("From the row in front and the leader's side on");
        numbering.setName("seats-numbering");
        numbering.setMnemonic('N');
        numbering.setToolTipText("Click the players in the order of the desks, the leader first");
        numbering.addActionListener(e -> {
            if (numbering.isSelected()) {
                model.startNumbering();
                picture.requestFocusInWindow();
            } else {
                model.endNumbering();
            }
        });
        buttons.add(add);
        buttons.add(remove);
        buttons.add(takeAll);
        buttons.add(undo, "split 2, sg undo");
        buttons.add(redo, "sg undo");
        buttons.add(numbering);
        buttons.add(byPlace);
        return buttons;
    }

    private void show() {
        showing = true;
        model.still().ifPresent(still -> {
            double lengthS = still.facts().durationS().orElse(0.0);
            time.setMaximum((int) Math.floor(lengthS * STEPS_PER_S));
            clock.setText(OpenStep.clock(still.timeS()) + " of " + OpenStep.clock(lengthS));
            if (!time.getValueIsAdjusting()) {
                time.setValue((int) Math.round(model.wantedS() * STEPS_PER_S));
            }
        });
        time.setEnabled(model.still().isPresent());
        instrument.setSelectedItem(model.instrument());
        side.setSelectedItem(model.side());
        boolean searching = model.searched().isPresent();
        search.setEnabled(!searching && model.still().isPresent());
        searched.setVisible(searching);
        stop.setVisible(searching);
        model.searched().ifPresent(share -> {
            searched.setIndeterminate(share == 0);
            searched.setValue((int) Math.round(100 * share));
        });
        undo.setEnabled(model.canUndo());
        redo.setEnabled(model.canRedo());
        remove.setEnabled(!(model.pick() instanceof Pick.Nobody));
        takeAll.setEnabled(!model.seats().doubtful().isEmpty());
        numbering.setSelected(model.numbering().isPresent());
        numbering.setEnabled(!model.seats().players().isEmpty());
        byPlace.setEnabled(!model.seats().players().isEmpty());
        String told = String.join("\n", model.troubles());
        troubles.setText(told);
        troubles.setVisible(!told.isEmpty());
        showing = false;
    }

    // keys

    private void keys() {
        InputMap moving = picture.getInputMap();
        for (boolean coarse : new boolean[] {false, true}) {
            for (boolean growing : new boolean[] {false, true}) {
                int held = (coarse ? InputEvent.CTRL_DOWN_MASK : 0) | (growing ? InputEvent.SHIFT_DOWN_MASK : 0);
                arrow(moving, KeyEvent.VK_LEFT, held, -1, 0, coarse, growing);
                arrow(moving, KeyEvent.VK_RIGHT, held, 1, 0, coarse, growing);
                arrow(moving, KeyEvent.VK_UP, held, 0, -1, coarse, growing);
                arrow(moving, KeyEvent.VK_DOWN, held, 0, 1, coarse, growing);
            }
        }
        onKey(moving, picture, KeyEvent.VK_TAB, 0, () -> onward(1));
        onKey(moving, picture, KeyEvent.VK_TAB, InputEvent.SHIFT_DOWN_MASK, () -> onward(-1));
        onKey(moving, picture, KeyEvent.VK_SPACE, 0, this::enter);
        for (JComponent place : new JComponent[] {picture, table.table()}) {
            InputMap keys = place.getInputMap();
            onKey(keys, place, KeyEvent.VK_ENTER, 0, this::enter);
            onKey(keys, place, KeyEvent.VK_DELETE, 0, model::remove);
            onKey(keys, place, KeyEvent.VK_BACK_SPACE, 0, model::remove);
            onKey(keys, place, KeyEvent.VK_INSERT, 0, model::add);
            onKey(keys, place, KeyEvent.VK_L, 0, () -> model.lead(true));
            onKey(keys, place, KeyEvent.VK_ESCAPE, 0, this::escape);
        }
        InputMap everywhere = view.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
        onKey(everywhere, view, KeyEvent.VK_Z, InputEvent.CTRL_DOWN_MASK, model::undo);
        onKey(everywhere, view, KeyEvent.VK_Y, InputEvent.CTRL_DOWN_MASK, model::redo);
        onKey(everywhere, view, KeyEvent.VK_Z, InputEvent.CTRL_DOWN_MASK | InputEvent.SHIFT_DOWN_MASK, model::redo);
    }

    private void arrow(InputMap keys, int key, int held, int across, int down, boolean coarse, boolean growing) {
        onKey(
                keys,
                picture,
                key,
                held,
                () -> model.still().ifPresent(still -> {
                    int step = Math.max(1, still.facts().widthPx() / (coarse ? COARSE : FINE));
                    if (growing) {
                        model.grow(across * step, down * step);
                    } else {
                        model.nudge(across * step, down * step);
                    }
                }));
    }

    /** To the next seat, and after the last one out of the picture. */
    private void onward(int step) {
        model.chooseNext(step);
        if (model.pick() instanceof Pick.Nobody) {
            if (step > 0) {
                picture.transferFocus();
            } else {
                picture.transferFocusBackward();
            }
        }
    }

    /** Takes who is doubtful; while players are numbered, gives the next number. */
    private void enter() {
        if (model.numbering().isPresent()) {
            model.chosenPlayer().ifPresent(model::numberNext);
        } else {
            model.takeChosen();
        }
    }

    private void escape() {
        if (model.numbering().isPresent()) {
            model.endNumbering();
        } else {
            model.choose(new Pick.Nobody());
        }
    }

    private static void onKey(InputMap keys, JComponent place, int key, int held, Runnable done) {
        KeyStroke stroke = KeyStroke.getKeyStroke(key, held);
        keys.put(stroke, stroke.toString());
        place.getActionMap().put(stroke.toString(), new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent e) {
                done.run();
            }
        });
    }
}
