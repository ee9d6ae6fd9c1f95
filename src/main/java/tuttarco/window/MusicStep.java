package tuttarco.window;

import java.awt.event.KeyEvent;
import javax.swing.JComponent;
import javax.swing.JTabbedPane;
import tuttarco.review.MusicModel;
import tuttarco.review.Playing;
import tuttarco.review.Session;

/** Part and beats. */
final class MusicStep implements Step {
    private final JTabbedPane view = new JTabbedPane();
    private final MusicModel model;
    private final BeatsPage beats;

    MusicStep(Session session) {
        this(session, AskFile::inDialog, ClipSound::open);
    }

    MusicStep(Session session, AskFile ask, Playing.Opening opening) {
        model = new MusicModel(session);
        beats = new BeatsPage(session, model, ask, opening);
        view.setName(key());
        view.addTab("Part", new PartPage(session, model, ask, () -> view.setSelectedIndex(1)));
        view.addTab("Beats", beats);
        view.setMnemonicAt(0, KeyEvent.VK_1);
        view.setMnemonicAt(1, KeyEvent.VK_2);
        view.setToolTipTextAt(0, "What is on the stand; Alt 1");
        view.setToolTipTextAt(1, "When it sounds; Alt 2");
        view.addChangeListener(e -> beats.leave());
    }

    @Override
    public String title() {
        return "Part and beats";
    }

    @Override
    public String key() {
        return "music";
    }

    @Override
    public JComponent view() {
        return view;
    }

    @Override
    public void shown() {
        model.shown();
    }

    @Override
    public void hidden() {
        model.hidden();
        beats.close();
    }

    MusicModel model() {
        return model;
    }
}
