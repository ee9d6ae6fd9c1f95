package tuttarco.musicxml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tuttarco.files.InputException;
import tuttarco.files.Mutations;
import tuttarco.musicxml.Signs.Jump;
import tuttarco.musicxml.Signs.Label;
import tuttarco.musicxml.Signs.Mark;
import tuttarco.musicxml.Signs.RepeatEnd;
import tuttarco.musicxml.Signs.Way;

/**
 * Measures are written as letters with their signs: {@code |:A} and {@code A:|} (three times: {@code A:|3}, again after a
 * jump: {@code A:|!}) for repeats, {@code 12A} for endings, {@code $A} and {@code @A} for segno and coda, {@code A>DC},
 * {@code A>DS}, {@code A>TO} and {@code A>FINE} for jumps, a name or, after {@code =}, times following.
 */
class UnfoldingTest {
    private static final Pattern MEASURE =
            Pattern.compile("(\\|:)?([1-9]*)((?:[$@][a-z]*)*)([A-Z])(:\\|[2-9]?!?)?((?:>[A-Z]+[a-z]*(?:=[0-9]+)?)*)");
    private static final Pattern LABEL = Pattern.compile("([$@])([a-z]*)");
    private static final Pattern JUMP = Pattern.compile(">([A-Z]+)([a-z]*)(?:=([0-9]+))?");

    private static Signs signs(String measure) {
        Matcher m = MEASURE.matcher(measure);
        assertTrue(m.matches(), measure);
        Optional<RepeatEnd> end = Optional.ofNullable(m.group(5)).map(text -> {
            String times = text.replaceAll("[^2-9]", "");
            return new RepeatEnd(times.isEmpty() ? 2 : Integer.parseInt(times), text.endsWith("!"));
        });
        List<Label> labels = LABEL.matcher(m.group(3))
                .results()
                .map(l -> new Label(l.group(1).equals("$") ? Mark.SEGNO : Mark.CODA, l.group(2)))
                .toList();
        List<Jump> jumps = JUMP.matcher(m.group(6))
                .results()
                .map(j -> new Jump(way(j.group(1)), j.group(2), digits(j.group(3) == null ? "" : j.group(3))))
                .toList();
        return new Signs(m.group(1) != null, end, digits(m.group(2)), labels, jumps);
    }

    private static Way way(String text) {
        return switch (text) {
            case "DC" -> Way.DA_CAPO;
            case "DS" -> Way.DAL_SEGNO;
            case "TO" -> Way.TO_CODA;
            case "FINE" -> Way.FINE;
            default -> throw new IllegalArgumentException(text);
        };
    }

    private static List<Integer> digits(String text) {
        return text.chars().map(c -> c - '0').boxed().toList();
    }

    private static String played(String written, boolean repeats) throws InputException {
        String[] measures = written.split(" ", -1);
        List<Signs> signs = new ArrayList<>();
        for (String measure : measures) {
            signs.add(signs(measure));
        }
        return Unfolding.order(signs, repeats).stream()
                .map(i -> measures[i].replaceAll(">.*|[^A-Z]", ""))
                .collect(Collectors.joining());
    }

    /** The documentation of repeat, ending and sound in the schema of MusicXML 4.0 (W3C). */
    @ParameterizedTest
    @CsvSource(textBlock = """
            A B C,                               ABC,            ABC
            |:A B:| C,                           ABABC,          ABC
            |:A B:|3 C,                          ABABABC,        ABC
            |:A 1B:| 2C D,                       ABACD,          ACD
            |:A 12B:| 3C,                        ABABAC,         AC
            A B>FINE C D>DC,                     ABCDAB,         ABCDAB
            A $B C>DS,                           ABCBC,          ABCBC
            A $B C>TO D>DS @E,                   ABCDBCE,        ABCDBCE
            $aA B>TOx C>DSa $bD E>TOy F>DSb @xG @yH, ABCABGH,    ABCABGH
            |:A:| B>FINE |:C:| D>DC,             AABCCDAB,       ABCDAB
            |:A:|! B>FINE C>DC,                  AABCAAB,        ABCAB
            |:A B:| C>DC=1 D,                    ABABCABCD,      ABCABCD
            """)
    void asMusicXmlDocumentsIt(String written, String withRepeats, String withoutRepeats) throws InputException {
        assertEquals(withRepeats, played(written, true), written);
        assertEquals(withoutRepeats, played(written, false), written);
    }

    /** Common practice, no source. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            A B:| C:| D,                         ABABCCD,        ABCD
            A B:| |:C D:| E,                     ABABCDCDE,      ABCDE
            |:A 1B:| C,                          ABAC,           AC
            |:A 1B 1C:| 2D 2E F,                 ABCADEF,        ADEF
            |:A 1B:| 2C:| D,                     ABACD,          ACD
            |:A 1B:| 2C |:D 1E:| 2F,             ABACDEDF,       ACDF
            |:A 1B:| |:2C D:| E,                 ABACDCDE,        ACDE
            |:A:| |:B:|>FINE |:C:| |:D:|>DC,     AABBCCDDAB,     ABCDAB
            |:A 1B:| 2C>FINE D>DC,               ABACDAC,        ACDAC
            A 1B>DC 2C,                          ABAC,           ABAC
            $A B>TO |:C:|>DS |:@D:|,             ABCCABDD,       ABCABD
            A>FINE B C>DC D,                     ABCA,           ABCA
            |:A>TO B:| @C,                       ABAC,           ABC
            |:A>FINE B:|,                        ABA,            AB
            A @B C>DC @D,                        ABCABD,         ABCABD
            A>DC B>DC,                           AABAB,          AABAB
            """)
    void asIsCommonPractice(String written, String withRepeats, String withoutRepeats) throws InputException {
        assertEquals(withRepeats, played(written, true), written);
        assertEquals(withoutRepeats, played(written, false), written);
    }

    @Test
    void aJumpThatLeadsNowhereIsSaid() {
        for (String written : List.of("A B>DS", "A B>DS $C", "$A B>TO C>DS D")) {
            InputException e = assertThrows(InputException.class, () -> played(written, true), written);
            Mutations.assertOneSentence(e);
            assertTrue(e.getMessage().contains("measure 2 of the file leads"), e.getMessage());
        }
    }

    @Test
    void moreThanAPartCanHoldIsRefused() {
        List<Signs> all = Collections.nCopies(1000, signs("|:A:|9"));
        List<Signs> much = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            much.addAll(all);
        }
        InputException e = assertThrows(InputException.class, () -> Unfolding.order(much, true));
        Mutations.assertOneSentence(e);
    }

    /** Whatever the signs, playing ends. */
    @Test
    void anySignsComeToAnEnd() {
        Random random = new Random(20_261_125);
        String[] before = {"", "", "|:", "1", "2", "12", "$", "@", "$a", "|:1"};
        String[] after = {"", "", ":|", ":|3", ":|!", ">DC", ">DS", ">TO", ">FINE", ">DSa", ">DC=2", ":|>DC"};
        int ended = 0;
        for (int i = 0; i < 5000; i++) {
            StringBuilder written = new StringBuilder();
            for (int k = 0; k < 1 + random.nextInt(12); k++) {
                written.append(k == 0 ? "" : " ")
                        .append(before[random.nextInt(before.length)])
                        .append((char) ('A' + k))
                        .append(after[random.nextInt(after.length)]);
            }
            try {
                assertTrue(played(written.toString(), true).length() < 1000, written.toString());
                ended++;
            } catch (InputException e) {
                Mutations.assertOneSentence(e);
            }
        }
        assertTrue(ended > 1000, "only " + ended + " were played");
    }
}
