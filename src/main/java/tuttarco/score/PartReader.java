package tuttarco.score;

import tuttarco.bow.Instrument;
import tuttarco.files.InputException;

/**
 * Reads one kind of part file.
 *
 * <p>Strokes without a mark of their own are completed ({@link Completing}). In the part that comes out, spans follow each
 * other without gaps from the beginning of the first bar to the end of the last; rests that follow each other are one
 * rest; a span begins inside a bar, and one that ends on a bar line ends at the end of the earlier bar.
 */
public interface PartReader {
    /** Largest part file, also unpacked, bytes: 64 MiB, a few times the largest full score. */
    int MOST_BYTES = 64 << 20;

    /** Whether a file of this name is this reader's to read; only the ending counts, in either case. */
    boolean reads(String fileName);

    /**
     * Reads the part.
     *
     * @param content the whole file
     * @param fileName what the file is called in messages, without its folder
     * @param instrument whose part it is; decides which way its strong beats go
     * @param choice which of the parts in the file, and how it is played
     * @throws InputException if the content is not a part, with the place in the file, or if the choice does not fit it
     */
    Part read(byte[] content, String fileName, Instrument instrument, PartChoice choice) throws InputException;

    /** Reads the part without a choice made. */
    default Part read(byte[] content, String fileName, Instrument instrument) throws InputException {
        return read(content, fileName, instrument, PartChoice.DEFAULT);
    }
}
