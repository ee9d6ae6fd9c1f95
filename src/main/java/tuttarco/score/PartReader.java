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
    /** Whether a file of this name is this reader's to read; only the ending counts, in either case. */
    boolean reads(String fileName);

    /**
     * Reads the part.
     *
     * @param content the whole file
     * @param fileName what the file is called in messages, without its folder
     * @param instrument whose part it is; decides which way its strong beats go
     * @throws InputException if the content is not a part, with the place in the file
     */
    Part read(byte[] content, String fileName, Instrument instrument) throws InputException;
}
