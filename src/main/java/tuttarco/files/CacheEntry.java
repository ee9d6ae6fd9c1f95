package tuttarco.files;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.security.DigestInputStream;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.time.Instant;
import java.util.Arrays;
import java.util.Optional;

/**
 * An entry of a cache: its key, its content, and the checksum of both, so that nothing damaged or foreign is read. It is
 * written whole or not at all; of two programs that write it at the same time the last one wins. Unlike an output it may
 * still be written while the program is being ended.
 */
public final class CacheEntry {
    private static final String FORMAT = "tuttarco cache 1";

    /** Bytes read or written at a time. */
    private static final int PIECE = 1 << 16;

    private final Cache cache;
    private final byte[] head;
    private final Path file;

    CacheEntry(Cache cache, String key, Path file) {
        this.cache = cache;
        this.file = file;
        head = (FORMAT + "\n" + key + "\n").getBytes(StandardCharsets.US_ASCII);
    }

    /** Writes the content. */
    @FunctionalInterface
    public interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    /** The content, to be closed by the caller; empty if there is none that is whole. */
    public Optional<InputStream> open() {
        try {
            if (!Files.isRegularFile(file) || !isWhole()) {
                return Optional.empty();
            }
            Files.setLastModifiedTime(file, FileTime.from(Instant.now()));
            InputStream in = new BufferedInputStream(Files.newInputStream(file));
            in.skipNBytes(head.length);
            return Optional.of(in);
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    private boolean isWhole() throws IOException {
        MessageDigest digest = Sha256.digest();
        long left = Files.size(file) - head.length - digest.getDigestLength();
        try (DigestInputStream in =
                new DigestInputStream(new BufferedInputStream(Files.newInputStream(file)), digest)) {
            if (left < 0 || !Arrays.equals(head, in.readNBytes(head.length))) {
                return false;
            }
            byte[] piece = new byte[PIECE];
            while (left > 0) {
                int read = in.readNBytes(piece, 0, (int) Math.min(left, PIECE));
                if (read == 0) {
                    return false;
                }
                left -= read;
            }
            byte[] computed = digest.digest();
            return Arrays.equals(computed, in.readAllBytes());
        }
    }

    /**
     * Writes the entry anew and makes room for it in its cache.
     *
     * @throws OutputException if that can't be done; what was there before is then still there
     */
    public void write(Content content) throws OutputException {
        try {
            cache.makeFolder();
            Path unfinished = Files.createTempFile(cache.folder(), Cache.UNFINISHED, "");
            try {
                fill(unfinished, content);
                Files.move(unfinished, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(unfinished);
            }
            cache.makeRoom(file);
        } catch (IOException e) {
            throw Refusal.of(cache.folder(), e);
        }
    }

    private void fill(Path unfinished, Content content) throws IOException {
        MessageDigest digest = Sha256.digest();
        // not through a channel, which closes under a thread that was told to stop
        try (OutputStream plain = new FileOutputStream(unfinished.toFile())) {
            OutputStream out = new BufferedOutputStream(new DigestOutputStream(plain, digest), PIECE);
            out.write(head);
            content.writeTo(out);
            out.flush();
            plain.write(digest.digest());
        }
    }

    /** Takes the entry away where that can be done: its content can't be used after all. */
    public void drop() {
        Cache.remove(file);
    }
}
