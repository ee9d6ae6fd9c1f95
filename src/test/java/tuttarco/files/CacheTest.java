package tuttarco.files;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CacheTest {
    private static final String ONE = Sha256.of(new byte[] {1});
    private static final String OTHER = Sha256.of(new byte[] {2});
    private static final String THIRD = Sha256.of(new byte[] {3});
    private static final String CONTENT = "what was seen";

    @TempDir
    private Path root;

    private Path folder;
    private Cache cache;

    @BeforeEach
    void open() {
        folder = root.resolve("made/when/needed");
        cache = new Cache(folder);
    }

    private static void write(CacheEntry entry, String content) throws OutputException {
        entry.write(out -> out.write(content.getBytes(UTF_8)));
    }

    /** The first so many bytes of an entry. */
    private static Optional<String> read(CacheEntry entry, int bytes) throws IOException {
        Optional<InputStream> content = entry.open();
        if (content.isEmpty()) {
            return Optional.empty();
        }
        try (InputStream in = content.get()) {
            return Optional.of(new String(in.readNBytes(bytes), UTF_8));
        }
    }

    private static Optional<String> read(CacheEntry entry) throws IOException {
        return read(entry, CONTENT.length());
    }

    private Path file(String key) {
        return folder.resolve(key + ".entry");
    }

    private void lastUsed(String key, Duration ago) throws IOException {
        Files.setLastModifiedTime(file(key), FileTime.from(Instant.now().minus(ago)));
    }

    @Test
    void whatIsWrittenIsReadAndNothingElse() throws Exception {
        assertEquals(Optional.empty(), read(cache.entry(ONE)));
        assertEquals(List.of(), Trees.below(root), "looking makes no folder");
        write(cache.entry(ONE), CONTENT);
        assertEquals(Optional.of(CONTENT), read(new Cache(folder).entry(ONE)));
        assertEquals(Optional.empty(), read(cache.entry(OTHER)));
        write(cache.entry(ONE), "what is new..");
        assertEquals(Optional.of("what is new.."), read(cache.entry(ONE)));
        assertEquals(List.of(ONE + ".entry"), Trees.below(folder));
        cache.entry(ONE).drop();
        assertEquals(Optional.empty(), read(cache.entry(ONE)));
    }

    @Test
    void anythingDamagedIsNotReadAndIsOverwritten() throws Exception {
        write(cache.entry(ONE), CONTENT);
        byte[] whole = Files.readAllBytes(file(ONE));
        assertTrue(whole.length > CONTENT.length() + 32, "content and checksum");
        for (int i = 0; i < whole.length; i++) {
            Files.write(file(ONE), Arrays.copyOf(whole, i));
            assertEquals(Optional.empty(), read(cache.entry(ONE)), "cut off after " + i);
            byte[] changed = whole.clone();
            changed[i] ^= 1;
            Files.write(file(ONE), changed);
            assertEquals(Optional.empty(), read(cache.entry(ONE)), "changed at " + i);
        }
        Files.write(file(ONE), Arrays.copyOf(whole, whole.length + 1));
        assertEquals(Optional.empty(), read(cache.entry(ONE)), "too long");
        write(cache.entry(ONE), CONTENT);
        assertEquals(Optional.of(CONTENT), read(cache.entry(ONE)));
    }

    @Test
    void anEntryUnderAnotherNameIsForeign() throws Exception {
        write(cache.entry(ONE), CONTENT);
        Files.move(file(ONE), file(OTHER));
        assertEquals(Optional.empty(), read(cache.entry(OTHER)));
    }

    @Test
    void aWritingThatFailsLeavesWhatWasThere() throws Exception {
        write(cache.entry(ONE), CONTENT);
        OutputException e = assertThrows(
                OutputException.class,
                () -> cache.entry(ONE).write(out -> {
                    out.write(1);
                    throw new IOException("the disk is full");
                }));
        assertTrue(e.getMessage().endsWith("the disk is full."), e.getMessage());
        assertEquals(Optional.of(CONTENT), read(cache.entry(ONE)));
        assertEquals(List.of(ONE + ".entry"), Trees.below(folder));
    }

    @Test
    void aFileInPlaceOfTheFolderIsAnOutputThatCantBeWritten() throws IOException {
        Path plain = Files.writeString(root.resolve("plain"), "kept");
        CacheEntry entry = new Cache(plain.resolve("below")).entry(ONE);
        assertThrows(OutputException.class, () -> write(entry, CONTENT));
        assertEquals(Optional.empty(), entry.open());
        assertEquals("kept", Files.readString(plain));
    }

    /** An interrupted thread still keeps what it has: so the work that was stopped goes on later. */
    @Test
    void anInterruptedThreadCanStillWrite() throws Exception {
        Thread.currentThread().interrupt();
        write(cache.entry(ONE), CONTENT);
        assertTrue(Thread.interrupted());
        assertEquals(Optional.of(CONTENT), read(cache.entry(ONE)));
    }

    @Test
    void whatWasLongestNotUsedMakesRoom() throws Exception {
        write(cache.entry(ONE), CONTENT);
        long bytes = Files.size(file(ONE));
        Cache small = new Cache(folder, 2 * bytes);
        write(small.entry(OTHER), CONTENT);
        lastUsed(ONE, Duration.ofMinutes(2));
        lastUsed(OTHER, Duration.ofMinutes(1));
        assertEquals(Optional.of(CONTENT), read(small.entry(ONE)), "used again just now");
        write(small.entry(THIRD), CONTENT);
        assertEquals(Optional.of(CONTENT), read(small.entry(ONE)));
        assertEquals(Optional.empty(), read(small.entry(OTHER)));
        assertEquals(Optional.of(CONTENT), read(small.entry(THIRD)));
    }

    @Test
    void whatWasJustWrittenStaysHoweverLarge() throws Exception {
        Cache small = new Cache(folder, 1);
        write(small.entry(ONE), CONTENT);
        write(small.entry(OTHER), CONTENT);
        assertEquals(Optional.empty(), read(small.entry(ONE)));
        assertEquals(Optional.of(CONTENT), read(small.entry(OTHER)));
    }

    @Test
    void onlyOwnFilesAreTakenAwayAndWhatAnotherProgramIsWritingStays() throws Exception {
        Files.createDirectories(folder);
        Path foreign = Files.writeString(folder.resolve("thesis.entry"), "mine");
        Path young = Files.writeString(folder.resolve(".unfinished-1"), "half");
        Path old = Files.writeString(folder.resolve(".unfinished-2"), "half");
        for (Path file : List.of(foreign, old)) {
            Files.setLastModifiedTime(file, FileTime.from(Instant.now().minus(Duration.ofDays(2))));
        }
        write(new Cache(folder, 1).entry(ONE), CONTENT);
        assertEquals(List.of(".unfinished-1", ONE + ".entry", "thesis.entry"), Trees.below(folder));
        assertEquals("half", Files.readString(young));
    }

    @Test
    void onlyTheOwnerMayLook() throws Exception {
        assumeTrue(root.getFileSystem().supportedFileAttributeViews().contains("posix"), "no owners here");
        write(cache.entry(ONE), CONTENT);
        assertEquals("rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(folder)));
        assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file(ONE))));
    }

    @Test
    void aKeyIsAFingerprintAndNoPath() {
        assertThrows(IllegalArgumentException.class, () -> cache.entry("../" + ONE));
        assertThrows(IllegalArgumentException.class, () -> cache.entry(""));
    }
}
