package tuttarco.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What every output keeps to. */
abstract class OutputContract {
    @TempDir
    Path folder;

    abstract Output output();

    static Stream<AnalysedTake> takes() {
        return Stream.of(
                Fixtures.unified(),
                Fixtures.free(),
                Fixtures.withoutLeader(),
                Fixtures.withoutPart(),
                Fixtures.nothingSeen(),
                Fixtures.withoutFacing(),
                Fixtures.named("\u202E<script>\uD83C\uDFBB=1"));
    }

    @ParameterizedTest
    @MethodSource("takes")
    void writesWhatItIsNamedAfterAndNothingElse(AnalysedTake take) throws Exception {
        output().write(take, folder);
        try (Stream<Path> written = Files.list(folder)) {
            assertEquals(
                    List.of(output().name()),
                    written.map(p -> p.getFileName().toString()).toList());
        }
        List<Path> files = files(folder);
        assertFalse(files.isEmpty());
        for (Path file : files) {
            assertTrue(Files.size(file) > 0, file.toString());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "ar-EG"})
    void isTheSameInEveryLocale(String tag) throws Exception {
        Path here = Files.createDirectory(folder.resolve("here"));
        Path there = Files.createDirectory(folder.resolve("there"));
        output().write(Fixtures.unified(), here);
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(tag));
            output().write(Fixtures.unified(), there);
        } finally {
            Locale.setDefault(before);
        }
        assertFalse(files(here).isEmpty());
        for (Path file : files(here)) {
            assertArrayEquals(
                    Files.readAllBytes(file),
                    Files.readAllBytes(there.resolve(here.relativize(file))),
                    file.toString());
        }
    }

    String written(AnalysedTake take) throws Exception {
        output().write(take, folder);
        return Files.readString(folder.resolve(output().name()));
    }

    static List<Path> files(Path folder) throws Exception {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).sorted().toList();
        }
    }
}
