package tuttarco.beats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tuttarco.files.InputException;
import tuttarco.files.Mutations;

class BeatListTest extends BeatSourceContract {
    private static final String SIX = "bar,beat,time_s\n1,1,3\n1,2,3.5\n1,3,4.0\n1,4,4.5\n2,1,5\n2,2,5.5\n";

    @TempDir
    Path folder;

    @Override
    BeatSource sixBeats() throws IOException {
        return list(SIX);
    }

    private BeatList list(String csv) throws IOException {
        return list(csv.getBytes(StandardCharsets.UTF_8));
    }

    private BeatList list(byte[] csv) throws IOException {
        return new BeatList(Files.write(folder.resolve("tap.csv"), csv));
    }

    private String refusal(BeatList list) {
        InputException e = assertThrows(InputException.class, list::beats);
        Mutations.assertOneSentence(e);
        return e.getMessage();
    }

    @Test
    void otherColumnsOrdersAndLineEndsAreRead() throws Exception {
        String other =
                "\uFEFFtime_s, beat, bar,stderr_s,source,why\r\n\r\n3,1,12a,0.01,pedal,x\r\n 3.5,2 ,\"12a\",,\r\n\r\n";
        assertEquals(
                List.of(
                        new Beat("12a", 1, 3, OptionalDouble.of(0.01), "pedal"),
                        new Beat("12a", 2, 3.5, OptionalDouble.of(Beat.TAPPED_S), Beat.LIST)),
                list(other).beats().beats());
    }

    @Test
    void beatsMayGoBackAndAnEmptyLineIsAStop() throws Exception {
        BeatMap map = list("bar,beat,time_s\n3,1,0\n3,2,1\n\n3,1,9\n3,2,10\n3,1,11\n3,2,12\n,,\n \n1,1,20\n1,2,21\n")
                .beats();
        assertEquals(8, map.beats().size());
        assertEquals(List.of(new Run(0, 1), new Run(2, 5), new Run(6, 7)), map.runs());
    }

    @Test
    void whatIsWrittenIsReadAgain() throws Exception {
        BeatMap map = BeatMap.ofStretches(List.of(
                List.of(
                        new Beat("0", 4, -0.125, OptionalDouble.of(0), "by hand"),
                        new Beat("1", 1, 0.333333, OptionalDouble.of(0.012346), Beat.SOUND)),
                List.of(new Beat("a,\"b", 1, 7), new Beat("a,\"b", 2, 86_400))));
        assertEquals(map, list(BeatList.csv(map)).beats());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            bar,time_s;1,3                            | line 1: there is no column beat
            bar,beat,time_s                           | lists no beats
            bar,beat,time_s;1,1,3                     | lists bar 1 beat 1 alone
            bar,beat,time_s;1,1,3;1,2,4;;2,1,9        | lists bar 2 beat 1 alone
            bar,beat,time_s,stderr_s;1,1,3,-1;1,2,4,0 | line 2: a standard error is not negative, as -1
            bar,beat,time_s,stderr_s;1,1,3,x;1,2,4,0  | line 2: a time is a number of seconds, at most a day, not 'x'
            bar,beat,time_s,source;1,1,3,abcdefghijklmnopqrstu | line 2: a source is a word
            bar,beat,time_s;1,1,3;1,2,NaN             | line 3: a time is a number of seconds, at most a day, not 'NaN'
            bar,beat,time_s;1,1,3;1,2,Infinity        | line 3: a time
            bar,beat,time_s;1,1,3;1,2,1e99            | line 3: a time
            bar,beat,time_s;1,1,3;1,2,9999999999999   | line 3: a time
            bar,beat,time_s;1,1,3;1,2,3,5             | line 3: bar 1 beat 2 does not come after bar 1 beat 1 in time
            bar,beat,time_s;1,1,3;1,2,2.9             | line 3: bar 1 beat 2 does not come after
            bar,beat,time_s;1,0,3;1,2,4               | line 2: a beat is a whole number from 1, not '0'
            bar,beat,time_s;1,1.5,3;1,2,4             | line 2: a beat is a whole number
            bar,beat,time_s;1,1,3;1,2                 | line 3: the line has no time_s
            bar,beat,time_s;,1,3;1,2,4                | line 2: a bar number has
            bar,bar,beat,time_s;1,1,1,3;1,1,2,4       | no CSV file that can be read
            bar,beat,time_s;1,1,3;"1,2,4              | no CSV file that can be read
            """)
    void mistakesAreNamedWithTheirLine(String csv, String expected) throws IOException {
        String message = refusal(list(csv.replace(';', '\n')));
        assertTrue(message.startsWith("tap.csv") && message.contains(expected), message);
    }

    @Test
    void somethingElseIsRefused() throws IOException {
        refusal(list(""));
        refusal(list(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10, 0}));
        refusal(list("bar,beat,time_s\n\u001b[2J,1,3\n1,2,4\n"));
        refusal(new BeatList(folder.resolve("none.csv")));
        refusal(new BeatList(folder));
    }

    @Test
    void damagedListsAreReadOrRefused() {
        Mutations.onlyInputExceptions(
                SIX.getBytes(StandardCharsets.UTF_8),
                300,
                damaged -> list(damaged).beats());
    }
}
