package tuttarco.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import javax.swing.ButtonGroup;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import tuttarco.chart.LaidStrip;
import tuttarco.chart.Type;
import tuttarco.files.InputBytes;
import tuttarco.review.Draft;
import tuttarco.review.MusicModel;
import tuttarco.review.PartModel;
import tuttarco.review.PartModel.State;
import tuttarco.review.PartModel.Use;
import tuttarco.review.Session;
import tuttarco.score.Awkward;
import tuttarco.score.Part;
import tuttarco.score.PartChoice;
import tuttarco.take.Bowing;

/** The part: chosen or typed, and its bowing as it comes out. */
final class PartPage extends JPanel {
    private static final long serialVersionUID = 1L;

    private static final AskFile.Kind PART_FILE =
            new AskFile.Kind("Choose the part", "Parts (MusicXML, bow text)", "musicxml", "xml", "mxl", "txt");
    private static final AskFile.Kind OVER_FILE =
            new AskFile.Kind("Choose the bowing to write over", "Bow text (.bowing.txt)", "txt");

    private static final String ONLY_PART = "the only one";
    private static final String FIRST_VOICE = "first in each bar";
    private static final String ALL_NOTES = "all notes";

    /** Bow text that is typed takes this share of what a taller window gives. */
    private static final double TEXT_SHARE = 0.4;

    /** The strip keeps so much height in a low window, before scaling: one system. */
    private static final int STRIP_LEAST_PX = 96;

    /** Awkward places seen without scrolling (chosen). */
    private static final int AWKWARD_ROWS = 3;

    /** Voices that can be picked without typing (common practice: at most four on a staff). */
    private static final List<String> VOICES = List.of(FIRST_VOICE, "1", "2", "3", "4");

    private final transient Session session;
    private final transient MusicModel model;
    private final transient AskFile ask;

    private final JLabel partName = Controls.words("music-part-name");
    private final JLabel overName = Controls.words("music-over-name");
    private final JComboBox<String> which = new JComboBox<>();
    private final JComboBox<String> voice = new JComboBox<>(VOICES.toArray(String[]::new));
    private final JComboBox<String> line = new JComboBox<>(new String[] {ALL_NOTES, "upper line", "lower line"});
    private final JCheckBox repeats = Controls.dress(
            new JCheckBox("Repeats are played"), "music-repeats", 'R', "Whether repeat signs in the part are obeyed");
    private final JRadioButton alike =
            Controls.dress(new JRadioButton("all alike"), "music-alike", 'A', "The section was meant to bow as one");
    private final JRadioButton free = Controls.dress(
            new JRadioButton("each freely"),
            "music-free",
            'F',
            "Everybody was meant to change where he or she likes, so that no change is heard");
    private final JPanel offer = new JPanel(new MigLayout("insets 8, fillx", "[grow]", ""));
    private final Sentence offered = new Sentence("music-offer");
    private final Sentence trouble = new Sentence("music-part-trouble");
    private final Sentence told = new Sentence("music-stroke");
    private final StripView strip = new StripView("music-strip", this::tell);
    private final JLabel awkwardHeading = Controls.heading("Awkward places");
    private final DefaultListModel<String> awkward = new DefaultListModel<>();
    private final JList<String> awkwardList = new JList<>(awkward);
    private final JButton overChoose;
    private final JButton overType;
    private final JButton overAway;
    private final JButton partAway;
    private final TextPage text;
    private final JSplitPane split;
    private String stroke = "";
    private boolean showing;

    /** @param onward goes on to the beats */
    PartPage(Session session, MusicModel model, AskFile ask, Runnable onward) {
        super(new MigLayout(
                "insets 12 16 8 16, fill",
                "[" + 264 + "!, fill]" + 16 + "[grow, fill]",
                "[][grow 60, fill][][]" + 4 + "[grow 12, fill]"));
        this.session = session;
        this.model = model;
        this.ask = ask;
        setName("music-part-page");
        text = new TextPage(model.typing());
        overChoose = Controls.button(
                "music-over-choose", "Choose\u2026", (char) 0, OVER_FILE.title(), () -> choose(Use.OVER, OVER_FILE));
        overType = Controls.button(
                "music-over-type",
                "Type\u2026",
                'V',
                "Type the bowing of some bars, which takes the place of the part's there",
                () -> model.typing().open(Use.OVER));
        overAway = Controls.button(
                "music-over-away",
                "None",
                (char) 0,
                "Take the part's own bowing everywhere; the file stays",
                () -> model.part().takeAway(Use.OVER));
        partAway = Controls.button(
                "music-part-away",
                "None",
                (char) 0,
                "Go by the leader's strokes instead of a part; the file stays",
                () -> model.part().takeAway(Use.PART));
        add(controls(onward), "cell 0 0 1 5, growy, aligny top");
        add(offer, "cell 1 0, hidemode 3");
        JScrollPane scrolled = new JScrollPane(strip);
        scrolled.getVerticalScrollBar().setUnitIncrement(UIScale.scale(40));
        scrolled.setMinimumSize(new Dimension(0, UIScale.scale(STRIP_LEAST_PX)));
        split = new JSplitPane(JSplitPane.VERTICAL_SPLIT, text, scrolled);
        split.setResizeWeight(TEXT_SHARE);
        split.setBorder(null);
        add(split, "cell 1 1, grow, wmin 0, hmin 0");
        add(told, "cell 1 2, " + Controls.sentenceRoom(told));
        add(awkwardHeading, "cell 1 3");
        add(new JScrollPane(awkwardList), "cell 1 4, grow, hmin " + 52);
        dressLists();
        layOutOffer();
        listen();
        refresh();
    }

    private JComponent controls(Runnable onward) {
        JPanel controls = new JPanel(new MigLayout("insets 0, fillx, hidemode 3", "[][grow, fill]", ""));
        String across = "span, growx, wmin 0, wrap";
        controls.add(Controls.heading("On the stand"), across);
        controls.add(partName, across);
        controls.add(
                Controls.button(
                        "music-part-choose",
                        "Choose\u2026",
                        'C',
                        "A part as MusicXML or bow text; it can also lie elsewhere and be copied beside the take",
                        () -> choose(Use.PART, PART_FILE)),
                "span, split 3");
        controls.add(
                Controls.button(
                        "music-part-type",
                        "Type\u2026",
                        'T',
                        "Type the bowing bar by bar; begins with what the part says now. Beats can't be heard by it, as it"
                                + " has no notes",
                        () -> model.typing().open(Use.PART)),
                "");
        controls.add(partAway, "wrap");
        controls.add(trouble, across);
        controls.add(Controls.label("Part in the file", 'P', which), "");
        controls.add(which, "growx, wmin 0, wrap");
        controls.add(Controls.label("Voice", 'O', voice), "");
        controls.add(voice, "growx, wmin 0, wrap");
        controls.add(Controls.label("Divided", 'D', line), "");
        controls.add(line, "growx, wmin 0, wrap");
        controls.add(repeats, across);
        controls.add(Controls.heading("Written over some bars"), across + ", gaptop 12");
        controls.add(overName, across);
        controls.add(overChoose, "span, split 3");
        controls.add(overType, "");
        controls.add(overAway, "wrap");
        controls.add(Controls.heading("Meant to be bowed"), across + ", gaptop 12");
        controls.add(alike, "span, split 2");
        controls.add(free, "wrap");
        controls.add(
                Controls.button("music-to-beats", "On to the beats", 'B', "When it sounds; Alt 2", onward),
                "span, gaptop 16, wrap");
        ButtonGroup bowing = new ButtonGroup();
        bowing.add(alike);
        bowing.add(free);
        return controls;
    }

    private void dressLists() {
        which.setName("music-which");
        voice.setName("music-voice");
        voice.setEditable(true);
        line.setName("music-line");
        which.setToolTipText("Which of the parts in the file");
        voice.setToolTipText("Which voice is bowed, where a staff has several");
        line.setToolTipText("Which note of a chord, where players divide");
        awkwardList.setName("music-awkward");
        awkwardList.setVisibleRowCount(AWKWARD_ROWS);
        awkwardList.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        awkwardList.getAccessibleContext().setAccessibleName("Awkward places of the bowing");
        awkwardList.setToolTipText("Choose one to see it in the bowing above");
        awkwardHeading.setLabelFor(awkwardList);
        offer.setName("music-offer-box");
    }

    private void layOutOffer() {
        offer.add(offered, "growx, wmin 0, wrap");
        offer.add(
                Controls.button(
                        "music-offer-copy",
                        "Copy it beside the take",
                        'Y',
                        "The file stays where it is, too",
                        model.part()::copyOffered),
                "split 2");
        offer.add(Controls.button(
                "music-offer-leave", "Leave it", 'L', "Go on with the part as it was", model.part()::declineOffer));
    }

    private void listen() {
        model.part().onChange().add(this::refresh);
        model.typing().onChange().add(this::refresh);
        session.onDraft().add(this::refresh);
        which.addActionListener(e -> chooseAnew());
        voice.addActionListener(e -> chooseAnew());
        line.addActionListener(e -> chooseAnew());
        repeats.addActionListener(e -> chooseAnew());
        alike.addActionListener(e -> model.part().bowing(Bowing.UNIFIED));
        free.addActionListener(e -> model.part().bowing(Bowing.FREE));
        awkwardList.addListSelectionListener(e -> {
            int index = awkwardList.getSelectedIndex();
            if (!showing && !e.getValueIsAdjusting() && index >= 0) {
                model.part()
                        .part()
                        .filter(part -> index < part.awkward().size())
                        .ifPresent(
                                part -> strip.choose(part.awkward().get(index).at()));
            }
        });
    }

    private void choose(Use use, AskFile.Kind kind) {
        Optional<Draft> draft = session.draft();
        if (draft.isPresent()) {
            ask.ask(this, kind, draft.map(d -> d.file().getParent()))
                    .ifPresent(file -> model.part().choose(use, file));
        } else {
            session.trouble("Open a video or a take first.");
        }
    }

    private void chooseAnew() {
        if (showing) {
            return;
        }
        model.part()
                .choice(new PartChoice(
                        chosen(which, ONLY_PART),
                        chosen(voice, FIRST_VOICE),
                        line.getSelectedIndex() <= 0
                                ? Optional.empty()
                                : Optional.of(PartChoice.Line.values()[line.getSelectedIndex() - 1]),
                        repeats.isSelected()));
    }

    private static Optional<String> chosen(JComboBox<String> box, String none) {
        return Optional.ofNullable(box.getSelectedItem())
                .map(Object::toString)
                .map(String::strip)
                .filter(item -> !item.isEmpty() && !item.equals(none));
    }

    private void tell(String sentence) {
        stroke = sentence;
        told.say(sentence.isEmpty() ? hint() : sentence);
    }

    private String hint() {
        return part().map(p ->
                        "Point at a stroke, or go from one to the next with the arrow keys, to read why it goes that"
                                + " way.  " + LaidStrip.KEY.replaceAll(" {2,}", ",  "))
                .orElse(
                        "Choose the part the section plays from, or type its bowing. Without a part the section is compared"
                                + " with its leader.");
    }

    private Optional<Part> part() {
        return model.part().part();
    }

    private void refresh() {
        showing = true;
        Optional<Draft> draft = session.draft();
        State state = model.part().state();
        boolean file = draft.flatMap(Draft::part).isPresent();
        boolean over = draft.flatMap(Draft::over).isPresent();
        partName.setText(draft.flatMap(Draft::part).map(InputBytes::name).orElse("no part"));
        partName.setFont(Type.body().deriveFont(partName.getFont().getSize2D()));
        overName.setText(draft.flatMap(Draft::over).map(InputBytes::name).orElse("nothing"));
        offer.setVisible(model.part().offer().isPresent());
        offered.say(model.part().offer().map(PartModel.Offer::sentence).orElse(""));
        trouble.say(
                model.part().trouble().isPresent()
                        ? "Please note: " + model.part().trouble().get()
                        : state instanceof State.Reading ? "Reading the part\u2026" : "");
        trouble.setForeground(
                state instanceof State.Wrong
                        ? Theme.worn().palette().accent()
                        : Theme.worn().palette().ink());
        trouble.setVisible(!trouble.getText().isEmpty());
        showChoice(draft, file && !isBowText(draft));
        partAway.setEnabled(file);
        overChoose.setEnabled(file);
        overType.setEnabled(file && model.part().part().isPresent());
        overAway.setEnabled(over);
        alike.setSelected(draft.filter(d -> d.bowing() == Bowing.UNIFIED).isPresent());
        free.setSelected(draft.filter(d -> d.bowing() == Bowing.FREE).isPresent());
        strip.showPart(part());
        showAwkward();
        showText(model.typing().sheet().isPresent());
        tell(stroke);
        showing = false;
        revalidate();
        repaint();
    }

    /** The text takes its place above the strip, or leaves it. */
    private void showText(boolean open) {
        if (open != text.isVisible()) {
            text.setVisible(open);
            split.resetToPreferredSizes();
        }
    }

    private static boolean isBowText(Optional<Draft> draft) {
        return draft.flatMap(Draft::part)
                .filter(path -> path.toString().endsWith(".txt"))
                .isPresent();
    }

    private void showChoice(Optional<Draft> draft, boolean open) {
        PartChoice choice = draft.map(Draft::partChoice).orElse(PartChoice.DEFAULT);
        List<String> names = new ArrayList<>(List.of(ONLY_PART));
        names.addAll(model.part().names());
        choice.part().filter(name -> !names.contains(name)).ifPresent(names::add);
        which.removeAllItems();
        names.forEach(which::addItem);
        which.setSelectedItem(choice.part().orElse(ONLY_PART));
        voice.setSelectedItem(choice.voice().orElse(FIRST_VOICE));
        line.setSelectedIndex(choice.line().map(l -> l.ordinal() + 1).orElse(0));
        repeats.setSelected(choice.repeats());
        for (JComponent control : List.of(which, voice, line, repeats)) {
            control.setEnabled(open);
        }
    }

    private void showAwkward() {
        List<String> sentences = new ArrayList<>();
        part().ifPresent(p -> {
            for (Awkward place : p.awkward()) {
                sentences.add((sentences.size() + 1) + "  " + place.spoken(p.bars()));
            }
        });
        if (!sentences.equals(Collections.list(awkward.elements()))) {
            awkward.clear();
            sentences.forEach(awkward::addElement);
        }
        awkwardHeading.setText(
                part().isEmpty()
                        ? "Awkward places"
                        : sentences.isEmpty()
                                ? "Nothing in this bowing is awkward or contradicts itself"
                                : "Awkward places: " + sentences.size());
    }

    /** Colours of words are those of the theme that is worn now. */
    @Override
    public void updateUI() {
        super.updateUI();
        if (text != null) {
            refresh();
        }
    }
}
