package tuttarco.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import tuttarco.playback.ClipPlayer;
import tuttarco.playback.Loop;
import tuttarco.review.ByHand;
import tuttarco.review.Correcting;
import tuttarco.review.Draft;
import tuttarco.review.Following;
import tuttarco.review.Judged;
import tuttarco.review.Judged.ToRehearse;
import tuttarco.review.Reviewing;
import tuttarco.review.Session;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;

/**
 * The picture with what was read on each player; beside it the section by beat and what to rehearse; below, the chosen
 * player's bow. Whatever is chosen in one is chosen in all, and playing moves through all.
 */
final class ReviewStep implements Step {
    /** How long a picture is seen where the clip doesn't say, seconds: at 25 a second. */
    private static final double USUAL_PICTURE_S = 0.04;

    /** Sides of the split window at least, pixels before scaling; all together fit the least window. */
    private static final int LEAST_WIDTH_PX = 240;

    private static final int LEAST_PX = 96;
    private static final int LEAST_BELOW_PX = 180;

    private static final String FIRST = "first";
    private static final String WORK = "work";

    private final Session session;
    private final Reviewing reviewing;
    private final Correcting correcting;
    private final CardLayout cards = new CardLayout();
    private final JPanel view = new JPanel(cards);
    private final FirstThis first;
    private final PictureView picture = new PictureView();
    private final SectionView section;
    private final ToldList<ToRehearse> spots;
    private final Sentence noSpots = new Sentence("review-no-spots");
    private final ToldList<String> history;
    private Optional<ClipPlayer> player = Optional.empty();
    private Following following = new Following(USUAL_PICTURE_S);
    private double clipS;
    private boolean wasPlaying;
    private boolean inSight;
    private boolean telling;
    private List<ToRehearse> told = List.of();

    ReviewStep(Session session, Correcting correcting) {
        this.session = session;
        this.correcting = correcting;
        reviewing = new Reviewing(session);
        first = new FirstThis(key(), session);
        section = new SectionView(reviewing);
        spots = new ToldList<>("review-spots", "What to rehearse", ToRehearse::heading, ToRehearse::words);
        history = new ToldList<>("review-history", "What was set by hand", s -> "", s -> s);
        view.setName(key());
        view.add(first, FIRST);
        view.add(work(), WORK);
        reviewing.onChange().add(this::changed);
        session.onDraft().add(this::reopen);
        correcting.onChange().add(() -> history.tell(correcting.history()));
        picture.onChange().add(this::seen);
        picture.addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent e) {
                picture.inPicture(e.getPoint())
                        .flatMap(ReviewStep.this::playerAt)
                        .ifPresent(p -> reviewing.choosePlayer(p.label()));
            }
        });
        spots.addListSelectionListener(e -> goToSpot());
        spots.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                goToSpot();
            }
        });
        changed();
    }

    private JComponent work() {
        ByHand byHand = new ByHand(reviewing, correcting::apply);
        JPanel seen = new JPanel(new BorderLayout());
        picture.setMinimumSize(new Dimension(UIScale.scale(240), UIScale.scale(160)));
        seen.add(picture, BorderLayout.CENTER);
        seen.add(
                new Transport(key(), picture, () -> reviewing.bars().map(s -> new Loop(s.fromS(), s.toS()))),
                BorderLayout.SOUTH);
        JTabbedPane lists = new JTabbedPane();
        lists.setName("review-lists");
        JPanel toRehearse = new JPanel(new BorderLayout());
        noSpots.setBorder(BorderFactory.createEmptyBorder(
                UIScale.scale(6), UIScale.scale(10), UIScale.scale(6), UIScale.scale(10)));
        toRehearse.add(noSpots, BorderLayout.NORTH);
        toRehearse.add(scrolled(spots), BorderLayout.CENTER);
        lists.addTab("Rehearse", toRehearse);
        lists.addTab("Set by hand", scrolled(history));
        lists.addTab("What the signs mean", scrolled(new SignsPage()));
        JSplitPane beside =
                split(JSplitPane.VERTICAL_SPLIT, section.scrolled(), lists, LEAST_PX, 0.8, "review-split-lists");
        JSplitPane above = split(JSplitPane.HORIZONTAL_SPLIT, seen, beside, LEAST_PX, 0.55, "review-split-section");
        JPanel below = new JPanel(new BorderLayout());
        below.add(new HandBar(view, reviewing, byHand, correcting), BorderLayout.NORTH);
        below.add(new BowCurve(reviewing, byHand), BorderLayout.CENTER);
        return split(JSplitPane.VERTICAL_SPLIT, above, below, LEAST_BELOW_PX, 0.9, "review-split-bow");
    }

    private static JScrollPane scrolled(JComponent list) {
        JScrollPane pane = new JScrollPane(list);
        pane.setBorder(null);
        return pane;
    }

    /** @param leastPx height of the second side at least */
    private static JSplitPane split(int way, JComponent one, JComponent other, int leastPx, double share, String name) {
        JSplitPane split = new JSplitPane(way, true, one, other);
        split.setName(name);
        split.setResizeWeight(share);
        split.setBorder(null);
        // what both would like is left aside, so that all the room is shared by the weight
        least(one, LEAST_PX);
        least(other, leastPx);
        return split;
    }

    private static void least(JComponent side, int heightPx) {
        Dimension least = new Dimension(UIScale.scale(LEAST_WIDTH_PX), UIScale.scale(heightPx));
        side.setMinimumSize(least);
        side.setPreferredSize(least);
    }

    private void goToSpot() {
        if (!telling && spots.getSelectedValue() != null) {
            reviewing.chooseSpot(spots.getSelectedValue());
        }
    }

    /** Where seats overlap, the one whose middle is nearest. */
    private Optional<Player> playerAt(Point2D at) {
        return reviewing.judged().stream()
                .flatMap(j -> j.table().players().stream())
                .filter(p -> box(p.seat()).contains(at))
                .min(Comparator.comparingDouble(p ->
                        at.distance(box(p.seat()).getCenterX(), box(p.seat()).getCenterY())));
    }

    private static Rectangle2D box(SeatBox seat) {
        return new Rectangle2D.Double(seat.xPx(), seat.yPx(), seat.widthPx(), seat.heightPx());
    }

    private void changed() {
        reviewing.first().ifPresent(first::say);
        cards.show(view, reviewing.first().isPresent() ? FIRST : WORK);
        List<ToRehearse> now = reviewing.judged().map(Judged::spots).orElse(List.of());
        if (now != told) {
            telling = true;
            told = now;
            spots.tell(now);
            noSpots.say(reviewing
                    .judged()
                    .filter(j -> now.isEmpty())
                    .map(Judged::noSpots)
                    .orElse(""));
            noSpots.setVisible(!noSpots.getText().isEmpty());
            telling = false;
        }
        double chosenS = session.choice().timeS();
        if (chosenS != clipS) {
            clipS = chosenS;
            following.sought(chosenS);
            player.ifPresent(p -> p.seek(chosenS));
        }
        picture.repaint();
    }

    /** Another picture is seen, or playing began or ended. */
    private void seen() {
        boolean playing = player.map(ClipPlayer::playing).orElse(false);
        if (playing != wasPlaying) {
            wasPlaying = playing;
            following.begins();
        }
        following.seen(picture.timeS(), playing).ifPresent(timeS -> {
            clipS = timeS;
            reviewing.chooseTime(timeS);
        });
    }

    /** The clip of another take is opened when it is looked at. */
    private void reopen() {
        close();
        open();
    }

    private void open() {
        Optional<Draft> draft = session.draft();
        if (!inSight || draft.isEmpty() || player.isPresent()) {
            return;
        }
        Draft of = draft.get();
        session.background()
                .run(() -> ClipPlayer.open(of.video(), picture), opened -> watch(of, opened), session::trouble);
    }

    private void watch(Draft of, ClipPlayer opened) {
        boolean wanted = inSight
                && player.isEmpty()
                && session.draft().filter(d -> d.video().equals(of.video())).isPresent();
        if (!wanted) {
            opened.close();
            return;
        }
        player = Optional.of(opened);
        double perS = opened.facts().framesPerS();
        following = new Following(perS > 0 ? 1 / perS : USUAL_PICTURE_S);
        picture.overlay(new PlayerSigns(reviewing, following, picture::getWidth));
        picture.watch(player);
        opened.note().ifPresent(session::say);
        following.sought(session.choice().timeS());
        opened.seek(session.choice().timeS());
    }

    private void close() {
        picture.watch(Optional.empty());
        player.ifPresent(ClipPlayer::close);
        player = Optional.empty();
    }

    @Override
    public String title() {
        return "Review";
    }

    @Override
    public String key() {
        return "review";
    }

    @Override
    public JComponent view() {
        return view;
    }

    @Override
    public void shown() {
        inSight = true;
        history.tell(correcting.history());
        open();
        section.requestFocusInWindow();
    }

    @Override
    public void hidden() {
        inSight = false;
        close();
    }
}
