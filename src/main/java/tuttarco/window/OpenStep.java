package tuttarco.window;

import java.awt.CardLayout;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.DefaultListCellRenderer;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.ListSelectionModel;
import javax.swing.TransferHandler;
import javax.swing.filechooser.FileNameExtensionFilter;
import net.miginfocom.swing.MigLayout;
import tuttarco.files.InputBytes;
import tuttarco.files.Plain;
import tuttarco.files.UserFolders;
import tuttarco.review.Draft;
import tuttarco.review.Opening;
import tuttarco.review.Remembered;
import tuttarco.review.Session;
import tuttarco.video.ClipFacts;

/** Open: a video, a take, one that was open lately, or a sample; and what is to be known before filming. */
final class OpenStep implements Step {
    private static final String NOTE = "note";
    private static final String CHOICES = "choices";

    private static final String BEFORE_FILMING = """
            Ask everybody who will be in the picture. For players under age their parents or guardians must agree, and your \
            venue's rules for safeguarding children and for data protection hold: ask there before you film. Tuttarco's page \
            "Filming minors" says what to think of.

            Nothing leaves this machine. Videos, seats and readings stay in files on it; delete them when you no longer need \
            them.

            A reading is evidence, not a verdict. Look at the picture before you speak to a player, and never grade, choose \
            or dismiss anybody by a reading.""";

    private final Opening opening;
    private final Session session;
    private final CardLayout cards = new CardLayout();
    private final JPanel view = new JPanel(cards);
    private final JPanel busy = new JPanel(new MigLayout("insets 0, fillx, hidemode 3", "[grow][]", ""));
    private final JTextArea busyWords = Labels.text("open-busy", "");
    private final JProgressBar progress = new JProgressBar(0, 100);
    private final JButton stop;
    private final JButton elsewhere;
    private final JTextArea open = Labels.text("open-now", "");
    private final JButton goOn;
    private final JButton read;
    private final JButton choose;
    private boolean noteShown;
    private final DefaultListModel<Remembered.Recent> recent = new DefaultListModel<>();
    private final JList<Remembered.Recent> recentList = new JList<>(recent);
    private final JButton reopen;
    private final JButton forget;

    OpenStep(Session session, Opening opening, Runnable onward) {
        this.session = session;
        this.opening = opening;
        stop = Labels.button("open-stop", "Stop", 'T', opening::stop);
        elsewhere = Labels.button(
                "open-elsewhere",
                "Choose another folder\u2026",
                'F',
                () -> folder("Copy it to this folder").ifPresent(opening::copyTo));
        goOn = Labels.button("open-go-on", "On to the seats", 'O', onward);
        read = Labels.button("open-note-read", "I have read this", 'I', opening::readNote);
        choose = Labels.button("open-choose", "Choose a video or a take\u2026", 'C', this::choose);
        reopen = Labels.button("open-recent-open", "Open", 'P', this::openChosen);
        forget = Labels.button("open-recent-forget", "Take off the list", 'K', this::forgetChosen);
        view.setName(key());
        view.add(note(), NOTE);
        view.add(choices(), CHOICES);
        opening.onChange().add(this::show);
        show();
    }

    @Override
    public String title() {
        return "Open";
    }

    @Override
    public String key() {
        return "open";
    }

    @Override
    public JComponent view() {
        return view;
    }

    private JPanel note() {
        JPanel note = new JPanel(new MigLayout("insets 32, wrap 1, gapy 12", "[grow, fill, 640!]push", ""));
        JTextArea words = Labels.text("open-note", BEFORE_FILMING);
        words.setFocusable(true);
        words.getAccessibleContext().setAccessibleName("Before you film");
        note.add(Labels.heading("Before you film"));
        note.add(words, "wmin 0");
        note.add(read, "growx 0");
        return note;
    }

    private JPanel choices() {
        JPanel panel = new JPanel(new MigLayout(
                "insets 24, fill, gapx 32", "[grow 55, fill, sg half][grow 45, fill, sg half]", "[top, grow]"));
        panel.add(left(), "grow, wmin 0");
        panel.add(lately(), "grow, wmin 0");
        return panel;
    }

    private JPanel left() {
        JPanel left = new JPanel(new MigLayout("insets 0, wrap 1, gapy 8, hidemode 3", "[grow, fill]", ""));
        JButton sample = Labels.button(
                "open-sample",
                "Draw a sample to try\u2026",
                'S',
                () -> folder("Put the sample in this folder").ifPresent(opening::sample));
        sample.setToolTipText("A made-up section of eight violins, drawn on this machine");
        left.add(Labels.heading("A video or a take"));
        left.add(choose, "growx 0");
        left.add(
                Labels.text(
                        "open-hint",
                        "Or drop the file on this window. What you do is saved beside the video as you go; the video itself is"
                                + " never changed."),
                "wmin 0");
        left.add(sample, "growx 0");
        busy.add(busyWords, "growx, wmin 0, wrap");
        progress.setName("open-progress");
        progress.getAccessibleContext().setAccessibleName("How much of the sample is drawn");
        busy.add(progress, "growx");
        busy.add(stop);
        busy.add(elsewhere, "newline");
        left.add(busy, "gaptop 8, wmin 0");
        left.add(open, "gaptop 16, wmin 0");
        left.add(goOn, "growx 0");
        left.add(
                Labels.button("open-note-again", "Read what to know before filming", 'R', opening::showNote),
                "growx 0, gaptop push");
        return left;
    }

    private JPanel lately() {
        JPanel lately = new JPanel(new MigLayout("insets 0, wrap 1, gapy 8", "[grow, fill]", "[][grow, fill][]"));
        recentList.setName("open-recent");
        recentList.getAccessibleContext().setAccessibleName("Open lately");
        recentList.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        recentList.setCellRenderer(new RecentLine());
        recentList.addListSelectionListener(e -> showChosen());
        recentList.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                if (e.getClickCount() == 2) {
                    openChosen();
                }
            }
        });
        Keys.bind(recentList, JComponent.WHEN_FOCUSED, "ENTER", this::openChosen);
        Keys.bind(recentList, JComponent.WHEN_FOCUSED, "DELETE", this::forgetChosen);
        lately.add(Labels.heading("Open lately"));
        lately.add(new JScrollPane(recentList), "grow, hmin 0");
        JPanel buttons = new JPanel(new MigLayout("insets 0", "", ""));
        buttons.add(reopen);
        buttons.add(forget);
        lately.add(buttons);
        return lately;
    }

    @Override
    public void shown() {
        focusWhatComesNext();
    }

    private void focusWhatComesNext() {
        JButton next = !opening.noteRead() ? read : session.draft().isPresent() ? goOn : choose;
        next.requestFocusInWindow();
    }

    private void show() {
        boolean note = !opening.noteRead();
        boolean turned = note != noteShown;
        noteShown = note;
        cards.show(view, note ? NOTE : CHOICES);
        Opening.State state = opening.state();
        busy.setVisible(!(state instanceof Opening.State.Waiting));
        busyWords.setText(words(state));
        progress.setVisible(!(state instanceof Opening.State.NeedsPlace));
        progress.setIndeterminate(!(state instanceof Opening.State.Drawing));
        if (state instanceof Opening.State.Drawing drawing) {
            progress.setValue(drawing.percent());
        }
        stop.setVisible(progress.isVisible());
        elsewhere.setVisible(state instanceof Opening.State.NeedsPlace);
        open.setText(session.draft().map(this::words).orElse(""));
        boolean opened = session.draft().isPresent() && !goOn.isVisible();
        goOn.setVisible(session.draft().isPresent());
        showRecent();
        if ((turned || opened) && view.isShowing()) {
            focusWhatComesNext();
        }
    }

    private static String words(Opening.State state) {
        if (state instanceof Opening.State.Looking looking) {
            return "Looking at " + InputBytes.name(looking.file());
        }
        if (state instanceof Opening.State.Drawing) {
            return "Drawing the sample";
        }
        if (state instanceof Opening.State.Copying) {
            return "Copying";
        }
        return state instanceof Opening.State.NeedsPlace needed ? needed.sentence() : "";
    }

    /** What is open, in lines. */
    private String words(Draft draft) {
        StringBuilder words = new StringBuilder("Open now: " + Plain.text(draft.title()));
        opening.found().ifPresent(found -> {
            ClipFacts facts = found.facts();
            words.append(String.format(
                    Locale.ROOT,
                    "\n%s, %d by %d pixels, ",
                    InputBytes.name(draft.video()),
                    facts.widthPx(),
                    facts.heightPx()));
            facts.durationS().ifPresent(s -> words.append(clock(s)).append(" long, "));
            words.append(facts.hasSound() ? "with sound" : "without sound");
            found.notes().forEach(note -> words.append("\n\n").append(note));
        });
        int players = draft.players().size();
        words.append("\n\n")
                .append(
                        players == 0
                                ? "Nobody's seat is known yet."
                                : players + (players == 1 ? " player" : " players") + " set up");
        return words.toString();
    }

    /** Minutes and seconds. */
    static String clock(double seconds) {
        Duration length = Duration.ofSeconds(Math.round(seconds));
        return String.format(Locale.ROOT, "%d:%02d", length.toMinutes(), length.toSecondsPart());
    }

    private void showRecent() {
        List<Remembered.Recent> now = opening.recent();
        Remembered.Recent chosen = recentList.getSelectedValue();
        recent.clear();
        now.forEach(recent::addElement);
        recentList.setSelectedValue(chosen, true);
        showChosen();
    }

    private void showChosen() {
        Remembered.Recent chosen = recentList.getSelectedValue();
        reopen.setEnabled(chosen != null && chosen.there());
        forget.setEnabled(chosen != null);
    }

    private void openChosen() {
        Optional.ofNullable(recentList.getSelectedValue()).ifPresent(r -> opening.open(r.file()));
    }

    private void forgetChosen() {
        Optional.ofNullable(recentList.getSelectedValue()).ifPresent(r -> opening.forget(r.file()));
    }

    private void choose() {
        JFileChooser chooser = new JFileChooser();
        chooser.setName("open-chooser");
        chooser.setDialogTitle("A video or a take");
        chooser.setFileFilter(new FileNameExtensionFilter(
                "Videos and takes", "json", "mp4", "mov", "m4v", "mkv", "webm", "avi", "mts", "3gp", "mpg"));
        latest().ifPresent(chooser::setCurrentDirectory);
        if (chooser.showOpenDialog(view) == JFileChooser.APPROVE_OPTION) {
            opening.open(chooser.getSelectedFile().toPath());
        }
    }

    private Optional<Path> folder(String yes) {
        JFileChooser chooser = new JFileChooser();
        chooser.setName("open-folder-chooser");
        chooser.setDialogTitle("A folder");
        chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
        UserFolders.documents().map(Path::toFile).ifPresent(chooser::setCurrentDirectory);
        return chooser.showDialog(view, yes) == JFileChooser.APPROVE_OPTION
                ? Optional.of(chooser.getSelectedFile().toPath())
                : Optional.empty();
    }

    /** The folder of what was open last. */
    private Optional<File> latest() {
        return opening.recent().stream()
                .findFirst()
                .map(r -> r.file().getParent().toFile())
                .filter(File::isDirectory);
    }

    /** Takes a file that is dropped anywhere on the window, and comes into sight. */
    TransferHandler dropped(Runnable here) {
        return new Dropped(here);
    }

    private final class Dropped extends TransferHandler {
        private static final long serialVersionUID = 1L;

        private final transient Runnable here;

        Dropped(Runnable here) {
            this.here = here;
        }

        @Override
        public boolean canImport(TransferSupport support) {
            return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
        }

        @Override
        public boolean importData(TransferSupport support) {
            try {
                List<?> files = (List<?>) support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
                if (files.size() != 1) {
                    session.trouble("Drop one file at a time: a video, or a take.");
                    return false;
                }
                here.run();
                opening.open(((File) files.get(0)).toPath());
                return true;
            } catch (UnsupportedFlavorException | IOException e) {
                session.trouble("What was dropped can't be read; choose the file instead.");
                return false;
            }
        }
    }

    /** The file's name and its folder; one that is gone says so. */
    private static final class RecentLine extends DefaultListCellRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public java.awt.Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean selected, boolean focused) {
            Remembered.Recent recent = (Remembered.Recent) value;
            String name = InputBytes.name(recent.file()) + (recent.there() ? "" : " (no longer there)");
            String text = name + "   " + Plain.text(recent.file().getParent().toString());
            super.getListCellRendererComponent(list, "", index, selected, focused);
            putClientProperty("html.disable", true);
            setText(text);
            setToolTipText(text);
            if (!recent.there() && !selected) {
                setForeground(Theme.worn().palette().secondary());
            }
            return this;
        }
    }
}
