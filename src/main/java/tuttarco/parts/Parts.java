package tuttarco.parts;

import java.nio.file.Path;
import java.util.List;
import tuttarco.bow.Instrument;
import tuttarco.bowtext.BowOver;
import tuttarco.bowtext.BowTextReader;
import tuttarco.bowtext.BowTextWriter;
import tuttarco.files.InputBytes;
import tuttarco.files.InputException;
import tuttarco.files.Plain;
import tuttarco.musicxml.MusicXmlPartReader;
import tuttarco.score.Part;
import tuttarco.score.PartChoice;
import tuttarco.score.PartReader;
import tuttarco.score.Practice;
import tuttarco.score.Typed;

/** Reads a part in whichever form it comes. */
public final class Parts {
    private static final List<PartReader> READERS = List.of(new MusicXmlPartReader(), new BowTextReader());

    private Parts() {}

    /** Reads a part without a choice made. */
    public static Part read(Path file, Instrument instrument) throws InputException {
        return read(file, instrument, PartChoice.DEFAULT);
    }

    /**
     * Reads a part; the ending of the file's name says its form: {@code .musicxml}, {@code .xml} or, compressed, {@code .mxl}
     * for MusicXML, {@code .bowing.txt} for bow text.
     *
     * @param instrument whose part it is; decides which way its strong beats go
     * @throws InputException if the file can't be read or is not a part, or if the choice does not fit it
     */
    public static Part read(Path file, Instrument instrument, PartChoice choice) throws InputException {
        String name = InputBytes.name(file);
        for (PartReader reader : READERS) {
            if (reader.reads(name)) {
                return reader.read(InputBytes.read(file, PartReader.MOST_BYTES), name, instrument, choice);
            }
        }
        throw new InputException(
                name + " is not a kind of part that is read; give a MusicXML file (.musicxml, .xml or .mxl) or bow text"
                        + " (.bowing.txt)");
    }

    /**
     * The part with the bars of a bow text written over it, and completed anew.
     *
     * @param bowText bow text of some of the part's bars; the others are left out
     * @throws InputException if the bow text can't be read or doesn't fit the part
     */
    public static Part over(Part part, Path bowText, Practice practice) throws InputException {
        return BowOver.over(part, InputBytes.read(bowText, PartReader.MOST_BYTES), InputBytes.name(bowText), practice);
    }

    /** Bow text of a part as it is typed. */
    public static Typed typed(String bowText, Instrument instrument) {
        return BowTextReader.typed(bowText, instrument);
    }

    /** The part with bow text written over it as it is typed. */
    public static Typed typedOver(Part part, String bowText, Practice practice) {
        return BowOver.typed(part, bowText, practice);
    }

    /**
     * The part as bow text to be edited, with its marks only.
     *
     * @throws InputException if a bar's number or a length can't be written as bow text
     */
    public static String bowText(Part part) throws InputException {
        try {
            return BowTextWriter.textToEdit(part, false);
        } catch (IllegalArgumentException e) {
            throw new InputException(
                    Plain.text(part.name()) + " can't be written as bow text: " + e.getMessage() + ".", e);
        }
    }

    /**
     * What the parts in a file are called, each in a way that chooses it alone; nothing where a file of its kind holds one.
     *
     * @throws InputException if the file can't be read or is not a part
     */
    public static List<String> names(Path file) throws InputException {
        String name = InputBytes.name(file);
        MusicXmlPartReader reader = new MusicXmlPartReader();
        return reader.reads(name) ? reader.names(InputBytes.read(file, PartReader.MOST_BYTES), name) : List.of();
    }
}
