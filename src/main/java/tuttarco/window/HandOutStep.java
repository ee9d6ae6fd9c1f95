package tuttarco.window;

import java.awt.CardLayout;
import java.awt.Desktop;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import tuttarco.chart.Type;
import tuttarco.chart.Words;
import tuttarco.review.HandingOut;
import tuttarco.review.HandingOut.State;
import tuttarco.review.Session;
import tuttarco.seats.Player;

/** Writes the report, the data and parts with somebody's bowing to a folder the leader chooses. */
final class HandOutStep implements Step {
    private static final String FIRST = "first";
    private static final String WORK = "work";

    private final Session session;
    private final HandingOut handing;
    private final CardLayout cards = new CardLayout();
    private final JPanel view = new JPanel(cards);
    private final FirstThis first;
    private final JTextField folder = new JTextField();
    private final JCheckBox report = box("report", "The report: a page with its charts", true);
    private final JCheckBox data = box("data", "The data: tables (CSV), and the results in one file (JSON)", false);
    private final JCheckBox byDesk = box("by-desk", "Call players by desk and place, not by their names", true);
    private final JCheckBox every =
            box("every", "With a sign on every stroke, not only where a reader needs one", false);
    private final JPanel players = new JPanel(new MigLayout("insets 0, gap 8 2, wrap 3", "", ""));
    private final Map<String, JCheckBox> marked = new LinkedHashMap<>();
    private final JLabel noPart =
            new JLabel("Bowing can only be written into a MusicXML part, and this take has none.");
    private final JButton write = new JButton("Write");
    private final JProgressBar going = new JProgressBar();
    private final Sentence outcome = new Sentence("hand-out-outcome");
    private final JButton open = new JButton("Open the folder");
    private List<Player> offered = List.of();

    HandOutStep(Session session, HandingOut handing) {
        this.session = session;
        this.handing = handing;
        first = new FirstThis(key(), session);
        view.setName(key());
        view.add(first, FIRST);
        view.add(work(), WORK);
        handing.onState().add(this::refresh);
        session.onDraft().add(this::another);
        session.onAnalysed().add(this::refresh);
        refresh();
    }

    private static JCheckBox box(String name, String text, boolean ticked) {
        JCheckBox box = new JCheckBox(text, ticked);
        box.putClientProperty("html.disable", true);
        box.setName("hand-out-" + name);
        return box;
    }

    private JComponent work() {
        JPanel work = new Tall(new MigLayout(
                "insets 24 32 24 32, fillx, wrap 1, hidemode 3",
                "[grow, fill]",
                "[]16[]4[]16[]4[][]16[]4[][][]16[][]16[][][]"));
        JLabel heading = new JLabel("Hand out");
        heading.setFont(Labels.scaled(Type.heading()));
        work.add(heading);
        JLabel where = new JLabel("To this folder");
        where.setFont(Labels.scaled(Type.strong()));
        where.setLabelFor(folder);
        where.setDisplayedMnemonic('F');
        work.add(where);
        folder.setName("hand-out-folder");
        folder.getAccessibleContext().setAccessibleName("Folder to write to");
        JButton choose = new JButton("Choose...");
        choose.setName("hand-out-choose");
        choose.setMnemonic('C');
        choose.addActionListener(e -> choose());
        JPanel place = new JPanel(new MigLayout("insets 0", "[200:640:640, fill][]", ""));
        place.add(folder);
        place.add(choose);
        work.add(place);
        JLabel what = new JLabel("What to write");
        what.setFont(Labels.scaled(Type.strong()));
        work.add(what);
        work.add(report, "grow 0");
        work.add(data, "grow 0");
        JLabel whose = new JLabel("The part, with the bowing as played by");
        whose.setFont(Labels.scaled(Type.strong()));
        work.add(whose);
        JScrollPane all = new JScrollPane(players);
        all.setBorder(null);
        work.add(all, "wmin 0, hmax 160");
        work.add(every, "grow 0");
        noPart.setName("hand-out-no-part");
        work.add(noPart);
        work.add(byDesk, "grow 0");
        Sentence privacy = new Sentence("hand-out-privacy");
        privacy.say(
                "What is written holds no pictures of the players. The title of the take and the names of its files stay"
                        + " as they are.");
        work.add(privacy);
        write.setName("hand-out-write");
        write.setMnemonic('W');
        write.addActionListener(e -> begin());
        work.add(write, "grow 0");
        going.setName("hand-out-bar");
        going.getAccessibleContext().setAccessibleName("Writing");
        going.setIndeterminate(true);
        work.add(going, "h 12!, wmax 360");
        work.add(outcome);
        open.setName("hand-out-open");
        open.setMnemonic('O');
        open.addActionListener(e -> open());
        work.add(open, "grow 0");
        JScrollPane pane = new JScrollPane(work);
        pane.setBorder(null);
        return pane;
    }

    private void begin() {
        handing.begin(
                folder.getText(),
                report.isSelected(),
                data.isSelected(),
                marked.entrySet().stream()
                        .filter(e -> e.getValue().isSelected())
                        .map(Map.Entry::getKey)
                        .toList(),
                every.isSelected(),
                byDesk.isSelected());
    }

    private void choose() {
        JFileChooser chooser = new JFileChooser(folder.getText());
        chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
        chooser.setDialogTitle("Choose a folder");
        chooser.setName("hand-out-chooser");
        if (chooser.showDialog(view, "Choose") == JFileChooser.APPROVE_OPTION) {
            folder.setText(chooser.getSelectedFile().getPath());
        }
    }

    /** Another take goes to another folder. */
    private void another() {
        handing.usualFolder().ifPresent(usual -> folder.setText(usual.toString()));
        refresh();
    }

    private void refresh() {
        handing.first().ifPresent(first::say);
        cards.show(view, handing.first().isPresent() ? FIRST : WORK);
        offer(handing.markable());
        State state = handing.state();
        write.setEnabled(!(state instanceof State.Going));
        going.setVisible(state instanceof State.Going);
        outcome.say(handing.spoken());
        open.setVisible(state instanceof State.Done && canOpen());
    }

    private void offer(List<Player> now) {
        if (now.equals(offered)) {
            return;
        }
        offered = now;
        players.removeAll();
        marked.clear();
        for (Player player : now) {
            JCheckBox box = box(
                    "marked-" + (marked.size() + 1),
                    Words.plain(player.label()) + (player.leader() ? " (leads)" : ""),
                    false);
            marked.put(player.label(), box);
            players.add(box);
        }
        noPart.setVisible(now.isEmpty());
        every.setVisible(!now.isEmpty());
        players.revalidate();
        players.repaint();
    }

    private static boolean canOpen() {
        return Desktop.isDesktopSupported() && Desktop.getDesktop().isSupported(Desktop.Action.OPEN);
    }

    private void open() {
        Optional.of(handing.state())
                .filter(State.Done.class::isInstance)
                .map(s -> ((State.Done) s).folder())
                .ifPresent(done -> session.background()
                        .run(
                                () -> {
                                    Desktop.getDesktop().open(done.toFile());
                                    return done;
                                },
                                opened -> {},
                                sentence ->
                                        session.trouble("The folder can't be opened from here; it is " + done + ".")));
    }

    @Override
    public String title() {
        return "Hand out";
    }

    @Override
    public String key() {
        return "hand-out";
    }

    @Override
    public JComponent view() {
        return view;
    }

    @Override
    public void shown() {
        folder.requestFocusInWindow();
    }
}
