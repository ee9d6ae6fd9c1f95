package tuttarco.bowtext;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import tuttarco.bow.Instrument;
import tuttarco.files.InputException;
import tuttarco.files.Plain;
import tuttarco.score.Part;
import tuttarco.score.PartChoice;
import tuttarco.score.PartReader;
import tuttarco.score.Typed;

/**
 * Reads bow text: what is pencilled in the part, typed bar by bar.
 *
 * <pre>{@code
 * # the bowing as marked by the leader
 * part Violin I
 * metre 4/4
 * pickup: u
 * 1: d u d u
 * 2: d2 .1/2x4
 * 3-4: as 1-2
 * 5: d4~
 * 6: ~2 -2
 * }</pre>
 *
 * <p>Grammar (EBNF; a blank is one or more spaces or tabs, and stands freely at both ends of a line):
 *
 * <pre>{@code
 * text    = { [ header | bars ] [ comment ] newline } ;
 * header  = "part" blank name | "metre" blank integer "/" integer ;
 * bars    = label ":" blank content ;
 * label   = "pickup" | number [ "-" number ] [ blank ( "pickup" | "short" | "long" ) ] ;
 * content = "as" blank number [ "-" number ] | entry { blank entry } ;
 * entry   = sign [ length ] [ "x" count ] | stroke [ length ] "~" | "~" [ length ] [ "~" ] ;
 * sign    = stroke | "-" ;
 * stroke  = "d" | "u" | "." | "=" | U+1D1AA | U+1D1AB ;
 * length  = integer | integer "/" integer | integer "." digits ;
 * comment = "#" anything ;
 * }</pre>
 *
 * <p>{@code d} is a down-bow, {@code u} an up-bow, {@code .} a stroke without a mark, {@code =} one
 * in the same bow as the stroke before but separated from it (hooked), {@code -} a rest; each lasts one beat
 * of the metre unless a length in beats follows. {@code x4} says it four times. A stroke that goes on in the next bar ends
 * with {@code ~}, and there the next bar begins with {@code ~}. A bar fills its metre exactly; a {@code pickup} bar is
 * shorter and ends on the bar line, a {@code short} one is shorter and begins on it, a {@code long} one is longer. A bare
 * {@code pickup} is bar 0. Bars stand in the order of the part with none left out; {@code 3-4:} gives each of these bars the
 * same content, {@code as} repeats the content of earlier bars. The text is UTF-8.
 */
public final class BowTextReader implements PartReader {
    @Override
    public boolean reads(String fileName) {
        return fileName.toLowerCase(Locale.ROOT).endsWith(".bowing.txt");
    }

    @Override
    public Part read(byte[] content, String fileName, Instrument instrument, PartChoice choice) throws InputException {
        if (!choice.equals(PartChoice.DEFAULT)) {
            throw new InputException(Plain.text(fileName)
                    + " holds one part as it is played; take the choice of a part, a voice, a line or repeats away");
        }
        return read(content, fileName, new BowTextParser(instrument, Optional.empty()));
    }

    /** Some bars to be written over a part, in its metre unless they say another; the others are left out. */
    static Part readOver(byte[] content, String fileName, Instrument instrument, Part part) throws InputException {
        return read(content, fileName, new BowTextParser(instrument, Optional.of(part)));
    }

    /** Reads a part as it is typed. */
    public static Typed typed(String text, Instrument instrument) {
        return typed(text, new BowTextParser(instrument, Optional.empty()));
    }

    /** Some bars as they are typed to be written over a part; see {@link #readOver}. */
    static Typed typedOver(String text, Instrument instrument, Part part) {
        return typed(text, new BowTextParser(instrument, Optional.of(part)));
    }

    private static Part read(byte[] content, String fileName, BowTextParser parser) throws InputException {
        String file = Plain.text(fileName);
        return typed(text(content, file), parser).orThrow(file);
    }

    private static Typed typed(String text, BowTextParser parser) {
        String[] lines = text.split("\r\n|\r|\n", -1);
        for (int i = 0; i < lines.length; i++) {
            try {
                parser.line(BowTextLine.of(lines[i]));
            } catch (BowTextLine.Wrong e) {
                return new Typed.Wrong(Optional.of(new Typed.Place(i + 1, e.column())), e.getMessage());
            }
        }
        try {
            return new Typed.Read(parser.finish());
        } catch (InputException e) {
            return new Typed.Wrong(Optional.empty(), e.getMessage());
        }
    }

    private static String text(byte[] content, String file) throws InputException {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(content))
                    .toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw new InputException(file + " is not text in UTF-8; save it as plain text in UTF-8", e);
        }
    }
}
