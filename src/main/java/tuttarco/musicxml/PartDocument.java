package tuttarco.musicxml;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import tuttarco.bow.Instrument;
import tuttarco.files.InputBytes;
import tuttarco.files.InputException;
import tuttarco.files.Plain;
import tuttarco.score.PartChoice;
import tuttarco.score.PartReader;

/** A MusicXML document, plain or compressed, into which bow signs can be written, with all its other bytes kept. */
public final class PartDocument {
    private final String fileName;
    private final Optional<Mxl> container;
    private final Charset charset;
    private final String text;

    private PartDocument(String fileName, Optional<Mxl> container, Charset charset, String text) {
        this.fileName = fileName;
        this.container = container;
        this.charset = charset;
        this.text = text;
    }

    /**
     * Reads the document.
     *
     * @throws InputException if the file can't be read or nothing can be written into it
     */
    public static PartDocument read(Path file) throws InputException {
        String name = InputBytes.name(file);
        if (!new MusicXmlPartReader().reads(name)) {
            throw new InputException(name + " is not a part that bow signs can be written into; export it as"
                    + " MusicXML (.musicxml or .mxl)");
        }
        return of(InputBytes.read(file, PartReader.MOST_BYTES), name);
    }

    /**
     * The document of a file's bytes.
     *
     * @param fileName what the file is called in messages, without its folder
     * @throws InputException if this is no readable document, or one in an encoding that can't be written again as it was
     */
    public static PartDocument of(byte[] content, String fileName) throws InputException {
        String file = Plain.text(fileName);
        Optional<Mxl> container = Mxl.isArchive(content) ? Optional.of(Mxl.open(content, file)) : Optional.empty();
        byte[] score = container.map(Mxl::score).orElse(content);
        XmlCursor.open(score, file).children(child -> {});
        Charset charset = charset(score, file);
        String text = new String(score, charset);
        if (!Arrays.equals(text.getBytes(charset), score)) {
            throw new InputException(
                    file + " can't be written again byte for byte in " + charset.name() + "; export the part in UTF-8");
        }
        return new PartDocument(file, container, charset, text);
    }

    /** The byte order mark, if there is one, stays part of the text. */
    private static Charset charset(byte[] content, String file) throws InputException {
        Charset charset = XmlText.charset(content, file);
        if (!charset.equals(StandardCharsets.UTF_16)) {
            return charset;
        }
        return content[0] == (byte) 0xfe ? StandardCharsets.UTF_16BE : StandardCharsets.UTF_16LE;
    }

    /**
     * The place of a part among those of the document, from 0, as reading chooses it.
     *
     * @throws InputException if it is not clear which part is meant
     */
    public int place(PartChoice choice, Instrument instrument) throws InputException {
        PartList parts = PartList.read(MusicXmlPartReader.open(text.getBytes(charset), fileName), fileName);
        return parts.place(parts.chosen(choice.part(), instrument));
    }

    /**
     * The file's bytes with the marks: the bow signs of the strokes given are replaced, all others stay.
     *
     * @param part place of the part among those of the document, from 0
     * @throws InputException if the document does not hold the notes
     */
    public byte[] marked(int part, List<StrokeMark> marks) throws InputException {
        byte[] marked = MusicXmlMarks.write(text, fileName, part, marks).getBytes(charset);
        return container.isPresent() ? container.get().with(marked) : marked;
    }
}
