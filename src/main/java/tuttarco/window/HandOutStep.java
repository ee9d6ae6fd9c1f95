package tuttarco.window;

import java.awt.CardLayout;
import java.awt.Desktop;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
import tuttarco.faces.Faces;
import tuttarco.report.Outputs;
import tuttarco.review.HandingOut;
import tuttarco.review.HandingOut.State;
import tuttarco.review.Session;
import tuttarco.seats.Names;
import tuttarco.seats.Player;

/** Writes what is handed out of the take to a folder the leader chooses. */
final class HandOutStep implements Step {
    private static final String FIRST = "first";
    private static final String WORK = "work";

    /** A constraint of the layout: here begins something else. */
    private static final String BEGINS = "grow 0, gaptop 10";

    /** What there is to write, in the order in which it is offered: the report first. */
    private static final List<Outputs.Kind> OFFERED = List.of(
            Outputs.Kind.REPORT, Outputs.Kind.SHEETS, Outputs.Kind.CAPTIONS, Outputs.Kind.VIDEO, Outputs.Kind.DATA);

    private final Session session;
    private final HandingOut handing;
    private final CardLayout cards = new CardLayout();
    private final JPanel view = new JPanel(cards);
    private final FirstThis first;
    private final JTextField folder = new JTextField();
    private final Map<Outputs.Kind, JCheckBox> kinds = new EnumMap<>(Map.of(
            Outputs.Kind.REPORT, box("report", "The report: a page with its charts", true),
            Outputs.Kind.SHEETS, box("sheets", "A sheet for each player, to read and to print", true),
            Outputs.Kind.CAPTIONS,
                    box("captions", "Captions and chapters: the spots and the bars, for any video player", true),
            Outputs.Kind.VIDEO,
                    box("video", "The video with the bow signs on the players; takes about as long as it plays", false),
            Outputs.Kind.DATA, box("data", "The data: tables (CSV), and the results in one file (JSON)", false)));
    private final JCheckBox names = box("names", "Call players by their names", false);
    private final JCheckBox faces = box("faces", "Show faces", false);
    private final Sentence privacy = new Sentence("hand-out-privacy");
    private final JCheckBox every =
            box("every", "With a sign on every stroke, not only where a reader needs one", false);
    private final JPanel players = new JPanel(new MigLayout("insets 0, gap 8 2, wrap 4", "", ""));
    private final Map<String, JCheckBox> marked = new LinkedHashMap<>();
    private final JLabel noPart =
            new JLabel("Bowing can only be written into a MusicXML part, and this take has none.");
    private final JButton write = Labels.button("hand-out-write", "Write", 'W', this::begin);
    private final JButton stop;
    private final JProgressBar going = new JProgressBar();
    private final Sentence outcome = new Sentence("hand-out-outcome");
    private final JButton open = Labels.button("hand-out-open", "Open the folder", 'O', this::open);
    private List<Player> offered = List.of();

    HandOutStep(Session session, HandingOut handing) {
        this.session = session;
        this.handing = handing;
        stop = Labels.button("hand-out-stop", "Stop", 'T', handing::stop);
        first = new FirstThis(key(), session);
        view.setName(key());
        view.add(first, FIRST);
        view.add(work(), WORK);
        handing.onState().add(this::refresh);
        session.onDraft().add(this::another);
        session.onAnalysed().add(this::refresh);
        refresh();
    }

    private static JLabel strong(String words) {
        JLabel label = new JLabel(words);
        label.setFont(Labels.scaled(Type.strong()));
        return label;
    }

    private static JPanel among(Collection<JCheckBox> boxes, String wrapped) {
        JPanel panel = new JPanel(new MigLayout("insets 0, gap 16 2, " + wrapped, "", ""));
        boxes.forEach(panel::add);
        return panel;
    }

    private static JCheckBox box(String name, String text, boolean ticked) {
        JCheckBox box = new JCheckBox(text, ticked);
        box.putClientProperty("html.disable", true);
        box.setName("hand-out-" + name);
        return box;
    }

    private JComponent work() {
        JPanel work =
                new Tall(new MigLayout("insets 24 32 16 32, fillx, wrap 1, hidemode 3, gapy 4", "[grow, fill]", ""));
        work.add(Labels.heading("Hand out"));
        JLabel where = strong("To this folder");
        where.setLabelFor(folder);
        where.setDisplayedMnemonic('F');
        work.add(where, BEGINS);
        folder.setName("hand-out-folder");
        folder.getAccessibleContext().setAccessibleName("Folder to write to");
        JPanel place = new JPanel(new MigLayout("insets 0", "[200:640:640, fill][]", ""));
        place.add(folder);
        place.add(Labels.button("hand-out-choose", "Choose...", 'C', this::choose));
        work.add(place);
        work.add(strong("What to write"), BEGINS);
        work.add(among(OFFERED.stream().map(kinds::get).toList(), "wrap 1"));
        work.add(strong("The part, with the bowing as played by"), BEGINS);
        JScrollPane all = new JScrollPane(players);
        all.setBorder(null);
        work.add(all, "wmin 0, hmax 160");
        work.add(every, "grow 0");
        noPart.setName("hand-out-no-part");
        work.add(noPart);
        work.add(strong("Who is known by it"), BEGINS);
        work.add(among(List.of(names, faces), ""));
        work.add(privacy);
        names.addActionListener(e -> sayPrivacy());
        faces.addActionListener(e -> sayPrivacy());
        sayPrivacy();
        going.setName("hand-out-bar");
        going.getAccessibleContext().setAccessibleName("Writing");
        JPanel writing = new JPanel(new MigLayout("insets 0, hidemode 3, gapx 8", "[][][][360:360]", ""));
        writing.add(write);
        writing.add(stop);
        writing.add(open);
        writing.add(going, "growx, h 12!");
        work.add(writing, BEGINS);
        work.add(outcome);
        JScrollPane pane = new JScrollPane(work);
        pane.setBorder(null);
        return pane;
    }

    private void begin() {
        handing.begin(
                folder.getText(),
                Set.copyOf(ticked(kinds)),
                ticked(marked),
                every.isSelected(),
                shownNames(),
                shownFaces());
    }

    private static <K> List<K> ticked(Map<K, JCheckBox> boxes) {
        return boxes.entrySet().stream()
                .filter(e -> e.getValue().isSelected())
                .map(Map.Entry::getKey)
                .toList();
    }

    private Names shownNames() {
        return names.isSelected() ? Names.SHOWN : Names.BY_DESK;
    }

    private Faces shownFaces() {
        return faces.isSelected() ? Faces.SHOWN : Faces.BLURRED;
    }

    private void sayPrivacy() {
        privacy.say(handing.privacy(shownNames(), shownFaces()));
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
        stop.setVisible(state instanceof State.Going);
        double share = state instanceof State.Going drawing ? drawing.share() : 0;
        going.setVisible(state instanceof State.Going);
        going.setIndeterminate(share == 0);
        going.setValue((int) Math.round(100 * share));
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
