package tuttarco.window;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.Shape;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.BadLocationException;
import javax.swing.text.DefaultHighlighter;
import javax.swing.text.Highlighter;
import javax.swing.text.JTextComponent;
import net.miginfocom.swing.MigLayout;
import tuttarco.review.BowTyping;
import tuttarco.review.PartModel.Use;
import tuttarco.score.Typed;

/** Bow text while it is typed, with what is wrong under it. */
final class TextPage extends JPanel {
    private static final long serialVersionUID = 1L;

    /** Lines seen at first (chosen). */
    private static final int LINES = 6;

    /** The text keeps so much height in a low window: two lines. */
    private static final int LEAST_PX = 44;

    private final transient BowTyping typing;
    private final JTextArea text = new JTextArea(LINES, 0);
    private final JLabel title = Controls.heading("");
    private final Sentence trouble = new Sentence("music-text-trouble");
    private final JButton there;
    private transient Optional<BowTyping.Sheet> shown = Optional.empty();
    private boolean showing;

    TextPage(BowTyping typing) {
        super(new MigLayout("insets 0, fill", "[grow, fill][]", "[][grow, fill][]"));
        this.typing = typing;
        text.setName("music-text");
        text.getAccessibleContext().setAccessibleName("Bow text");
        text.setFont(new Font(Font.MONOSPACED, Font.PLAIN, text.getFont().getSize()));
        // the look's own highlighter would be another one after a change of theme
        text.setHighlighter(new DefaultHighlighter());
        title.putClientProperty("html.disable", true);
        there = Controls.button(
                "music-text-there", "Go there", 'G', "Put the cursor where the text is wrong", this::goThere);
        add(title, "growx, wmin 0");
        add(
                Controls.button(
                        "music-text-done", "Done", 'N', "Close the text; it is saved as you type", typing::close),
                "growx, wrap");
        add(new JScrollPane(text), "span, grow, hmin " + LEAST_PX + ", wrap");
        add(trouble, Controls.sentenceRoom(trouble));
        add(there, "aligny top");
        text.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent e) {
                typed();
            }

            @Override
            public void removeUpdate(DocumentEvent e) {
                typed();
            }

            @Override
            public void changedUpdate(DocumentEvent e) {
                typed();
            }
        });
        typing.onChange().add(this::refresh);
        refresh();
    }

    private void typed() {
        if (!showing) {
            typing.type(text.getText());
        }
    }

    private void refresh() {
        Optional<BowTyping.Sheet> sheet = typing.sheet();
        if (!sheet.equals(shown) && sheet.isPresent()) {
            showing = true;
            text.setText(typing.text());
            text.setCaretPosition(0);
            showing = false;
            title.setText((sheet.get().use() == Use.PART ? "The part's bowing, " : "Bars written over the part, ")
                    + sheet.get().name());
            text.requestFocusInWindow();
        }
        shown = sheet;
        Optional<Typed.Wrong> wrong = typing.wrong();
        trouble.say(wrong.map(w -> "Please note, " + w.spoken() + ".")
                .orElse("d down, u up, . unmarked, = hooked, - rest; d2 lasts two beats, .1/2x4 is four half beats,"
                        + " d4~ goes on as ~2 in the next bar. Saved as you type."));
        trouble.setForeground(
                wrong.isPresent()
                        ? Theme.worn().palette().accent()
                        : Theme.worn().palette().ink());
        there.setEnabled(place().isPresent());
        mark();
    }

    /** Colours of words are those of the theme that is worn now. */
    @Override
    public void updateUI() {
        super.updateUI();
        if (there != null) {
            refresh();
        }
    }

    private Optional<Typed.Place> place() {
        return typing.wrong().flatMap(Typed.Wrong::place);
    }

    private void goThere() {
        place().ifPresent(place -> {
            text.setCaretPosition(offset(place));
            text.requestFocusInWindow();
        });
    }

    /** Where a place lies in the text as it stands now. */
    private int offset(Typed.Place place) {
        int line = Math.min(place.line(), text.getLineCount()) - 1;
        try {
            int from = text.getLineStartOffset(line);
            String words = text.getText(from, text.getLineEndOffset(line) - from);
            int column = Math.min(place.column() - 1, words.codePointCount(0, words.length()));
            return from + words.offsetByCodePoints(0, column);
        } catch (BadLocationException e) {
            throw new IllegalStateException("a line of the text has a beginning and an end", e);
        }
    }

    /** Underlines the word that is wrong. */
    private void mark() {
        text.getHighlighter().removeAllHighlights();
        place().ifPresent(place -> {
            int from = offset(place);
            int to = from;
            String all = text.getText();
            while (to < all.length() && !Character.isWhitespace(all.charAt(to))) {
                to++;
            }
            try {
                text.getHighlighter().addHighlight(from, Math.max(to, from + 1), new Underline());
            } catch (BadLocationException atTheEnd) {
                // nothing stands there to be underlined; the sentence says where it is
                text.getHighlighter().removeAllHighlights();
            }
        });
    }

    /** A heavy line under a word. */
    private static final class Underline implements Highlighter.HighlightPainter {
        @Override
        public void paint(Graphics graphics, int from, int to, Shape bounds, JTextComponent text) {
            try {
                Rectangle first = text.modelToView2D(from).getBounds();
                Rectangle last = text.modelToView2D(to).getBounds();
                Graphics2D g = (Graphics2D) graphics.create();
                g.setColor(Theme.worn().palette().accent());
                g.setStroke(new BasicStroke(UIScale.scale(2f)));
                int y = first.y + first.height - UIScale.scale(1);
                int end = last.y == first.y ? Math.max(last.x, first.x + UIScale.scale(6)) : first.x + UIScale.scale(6);
                g.drawLine(first.x, y, end, y);
                g.dispose();
            } catch (BadLocationException gone) {
                // the text has changed; it will be marked anew
                return;
            }
        }
    }
}
