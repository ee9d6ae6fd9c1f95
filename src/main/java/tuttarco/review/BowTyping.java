package tuttarco.review;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import tuttarco.analysis.Music;
import tuttarco.bow.Instrument;
import tuttarco.files.InputBytes;
import tuttarco.files.OutputException;
import tuttarco.files.WholeFile;
import tuttarco.review.PartModel.Use;
import tuttarco.score.Part;
import tuttarco.score.Typed;

/**
 * Bow text while it is typed: saved as it stands whenever the typing pauses, and read at the same time. The take names it
 * once it can be read.
 */
public final class BowTyping {
    /** What bow text of a part ends in, beside the take. */
    static final String PART_ENDING = ".bowing.txt";

    static final String OVER_ENDING = ".over.bowing.txt";

    /** So long nothing was typed before the text is read; milliseconds (chosen: shorter than one looks up). */
    private static final long PAUSE_MS = 250;

    private static final int MOST_BYTES = 16 << 20;

    private static final String PART_BEGUN = "metre 4/4\n1: d u d u\n";

    /** What is being typed. */
    public record Sheet(Use use, Path file) {
        /** Its name for the user. */
        public String name() {
            return InputBytes.name(file);
        }
    }

    private final Session session;
    private final PartModel part;
    private final Listeners onChange = new Listeners();
    private final AtomicLong version = new AtomicLong();
    private final Object saving = new Object();
    private Optional<Sheet> sheet = Optional.empty();
    private String text = "";
    private Optional<Typed> typed = Optional.empty();
    private boolean unsaved;
    private Background.Going going = new Background.Going();

    BowTyping(Session session, PartModel part) {
        this.session = session;
        this.part = part;
    }

    public Listeners onChange() {
        return onChange;
    }

    /** The text that is open, if one is. */
    public Optional<Sheet> sheet() {
        return sheet;
    }

    /** As it was when it was opened, or typed last. */
    public String text() {
        return text;
    }

    /** What is wrong with the text as it stands; empty while it is read, or right. */
    public Optional<Typed.Wrong> wrong() {
        return typed.filter(Typed.Wrong.class::isInstance).map(Typed.Wrong.class::cast);
    }

    /** Opens bow text to be typed: what lies beside the take already, or else the part as it is, or a beginning. */
    public void open(Use use) {
        Draft draft = session.draft().orElseThrow();
        Path file = file(use, draft);
        Optional<Part> current = part.under();
        Instrument instrument = draft.instrument();
        Optional<Part> under = use == Use.OVER ? current : Optional.empty();
        session.background()
                .run(
                        () -> {
                            String begun = begun(use, file, current);
                            return new Begun(
                                    begun,
                                    Files.exists(file)
                                            ? Optional.of(Music.typed(begun, instrument, under))
                                            : Optional.empty());
                        },
                        begun -> {
                            sheet = Optional.of(new Sheet(use, file));
                            text = begun.text();
                            typed = begun.typed();
                            unsaved = false;
                            onChange.tell();
                        },
                        session::trouble);
    }

    /** Nothing is said yet of a text that nobody has typed in. */
    private record Begun(String text, Optional<Typed> typed) {}

    private static Path file(Use use, Draft draft) {
        Optional<Path> named =
                use == Use.PART ? draft.part().filter(file -> file.toString().endsWith(PART_ENDING)) : draft.over();
        return named.orElseGet(() -> draft.beside(use == Use.PART ? PART_ENDING : OVER_ENDING));
    }

    private static String begun(Use use, Path file, Optional<Part> current) throws Exception {
        if (Files.exists(file)) {
            return new String(InputBytes.read(file, MOST_BYTES), StandardCharsets.UTF_8);
        }
        if (use == Use.PART) {
            return current.isPresent() ? Music.bowText(current.get()) : PART_BEGUN;
        }
        return current.map(under -> "# bars to be bowed in another way than in the part, such as\n# "
                        + under.bars().get(0).number() + ": d u d u\n")
                .orElse("");
    }

    /** Takes the text as it stands now; it is saved and read when the typing pauses. */
    public void type(String now) {
        if (now.equals(text)) {
            return;
        }
        text = now;
        unsaved = true;
        going.stop();
        Path file = sheet.orElseThrow().file();
        long mine = version.incrementAndGet();
        going = begin(() -> {
            Thread.sleep(PAUSE_MS);
            save(file, now, mine);
        });
    }

    /** Saves at once what the pause has not saved yet; the window may be about to close. */
    public void save() {
        if (unsaved) {
            going.stop();
            try {
                save(sheet.orElseThrow().file(), text, version.incrementAndGet());
            } catch (OutputException e) {
                session.trouble(e.getMessage());
                return;
            }
            going = begin(() -> {});
        }
    }

    /** Closes the text, which stays saved. */
    public void close() {
        save();
        sheet = Optional.empty();
        onChange.tell();
    }

    /** What comes before the text is read. */
    @FunctionalInterface
    private interface Before {
        void done() throws Exception;
    }

    private Background.Going begin(Before before) {
        Sheet open = sheet.orElseThrow();
        String now = text;
        Instrument instrument = session.draft().orElseThrow().instrument();
        Optional<Part> under = open.use() == Use.OVER ? part.under() : Optional.empty();
        return session.background()
                .run(
                        () -> {
                            before.done();
                            return Music.typed(now, instrument, under);
                        },
                        read -> {
                            unsaved = false;
                            took(open, read);
                        },
                        session::trouble);
    }

    /** Only the last text is saved, whichever thread comes first. */
    private void save(Path file, String now, long mine) throws OutputException {
        synchronized (saving) {
            if (mine == version.get()) {
                WholeFile.write(file, now.getBytes(StandardCharsets.UTF_8));
            }
        }
    }

    private void took(Sheet open, Typed read) {
        typed = Optional.of(read);
        if (read instanceof Typed.Read right) {
            part.typed(open.use(), open.file(), right.part());
        } else {
            part.wrong(open.use(), open.file(), (Typed.Wrong) read);
        }
        onChange.tell();
    }
}
