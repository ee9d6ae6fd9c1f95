package tuttarco.score;

import java.nio.file.Path;
import java.util.List;
import tuttarco.bow.Instrument;
import tuttarco.files.InputBytes;
import tuttarco.files.InputException;

/** Reads a part in whichever form it comes. */
public final class Parts {
    /** Largest part file, bytes: 64 MiB, a few times the largest full score. */
    static final int MOST_BYTES = 64 << 20;

    private static final List<PartReader> READERS = List.of(new MusicXmlPartReader(), new BowTextReader());

    private Parts() {}

    /**
     * Reads a part; the ending of the file's name says its form: {@code .musicxml} or {@code .xml} for MusicXML,
     * {@code .bowing.txt} for bow text.
     *
     * @param instrument whose part it is; decides the direction of a first stroke without a mark
     * @throws InputException if the file can't be read or is not a part
     */
    public static Part read(Path file, Instrument instrument) throws InputException {
        String name = InputBytes.name(file);
        for (PartReader reader : READERS) {
            if (reader.reads(name)) {
                return reader.read(InputBytes.read(file, MOST_BYTES), name, instrument);
            }
        }
        throw new InputException(
                name + " is not a kind of part that is read; give a MusicXML file (.musicxml) or bow text"
                        + " (.bowing.txt)");
    }
}
