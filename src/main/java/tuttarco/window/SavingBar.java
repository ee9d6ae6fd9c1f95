package tuttarco.window;

import com.formdev.flatlaf.util.UIScale;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import tuttarco.review.Saving;
import tuttarco.review.Session;

/** Under the steps while what was done is not saved: why, and what to choose between. Otherwise it is not there. */
final class SavingBar extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Session session;
    private final JTextArea sentence = Labels.text("saving-sentence", "");
    private final JButton theirs;
    private final JButton mine;
    private final JButton again;

    SavingBar(Session session) {
        super(new MigLayout("insets 8 16 8 16, fillx, hidemode 3", "[grow, fill][][]", ""));
        this.session = session;
        setName("saving");
        theirs = Labels.button("saving-theirs", "Take what the file holds", 'H', session::takeTheirs);
        mine = Labels.button("saving-mine", "Save mine under another name", 'M', session::keepMine);
        again = Labels.button("saving-again", "Try again", 'Y', session::saveAgain);
        add(sentence, "growx, wmin 0");
        add(theirs);
        add(mine);
        add(again);
        session.onSaving().add(this::look);
        look();
    }

    /** The line below has the colour of the theme that is worn now. */
    @Override
    public void updateUI() {
        super.updateUI();
        if (again != null) {
            look();
        }
    }

    private void look() {
        Saving saving = session.saving();
        boolean elsewhere = saving instanceof Saving.ChangedElsewhere;
        sentence.setText(saving.sentence());
        theirs.setVisible(elsewhere);
        mine.setVisible(elsewhere);
        again.setVisible(saving instanceof Saving.Failed);
        setBorder(BorderFactory.createMatteBorder(
                0, 0, UIScale.scale(2), 0, Theme.worn().palette().accent()));
        setVisible(!(saving instanceof Saving.Saved));
    }
}
