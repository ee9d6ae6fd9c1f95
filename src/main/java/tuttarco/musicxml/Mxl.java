package tuttarco.musicxml;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import tuttarco.files.InputException;
import tuttarco.files.Plain;
import tuttarco.score.PartReader;

/**
 * Compressed MusicXML: a ZIP archive whose {@code META-INF/container.xml} names the score among its files (W3C, MusicXML
 * 4.0, Compressed .MXL Files). It is unpacked in memory only, and only so far as a score can be large. Another score can be
 * put in its place, with all else kept.
 */
final class Mxl {
    private static final String CONTAINER = "META-INF/container.xml";

    /** Most files of an archive; a score has three or four, and a few pictures. */
    private static final int MOST_FILES = 1000;

    /** Most bytes unpacked from each byte packed; scores shrink about 10 to 60 times, a bomb 1000 times. */
    private static final int MOST_UNPACKED_SHARE = 200;

    /** Bytes that may be unpacked whatever the archive's size. */
    private static final long FREE_BYTES = 1 << 16;

    private static final int CHUNK_BYTES = 1 << 14;

    private static final Pattern OUTSIDE = Pattern.compile("^/|^[A-Za-z]:|\\\\|(^|/)\\.\\.(/|$)");

    private final byte[] archive;
    private final String file;
    private final String path;
    private final byte[] score;
    private long unpackedBytes;

    private Mxl(byte[] archive, String file) throws InputException {
        this.archive = archive;
        this.file = file;
        byte[] container = entry(CONTAINER)
                .orElseThrow(() -> wrong("it has no " + CONTAINER + " that names its score; export the part again"));
        path = scorePath(container, file + " (" + CONTAINER + ")")
                .orElseThrow(() -> wrong("its " + CONTAINER + " names no score; export the part again"));
        requireInside(path);
        score = entry(path)
                .orElseThrow(() -> wrong("its score " + Plain.text(path) + " is missing; export the part again"));
    }

    static boolean isArchive(byte[] content) {
        return content.length > 1 && content[0] == 'P' && content[1] == 'K';
    }

    /**
     * Unpacks the score.
     *
     * @throws InputException if the archive is damaged, names no score, or holds what no score does
     */
    static Mxl open(byte[] archive, String file) throws InputException {
        return new Mxl(archive, file);
    }

    /** The score document in the archive. */
    byte[] score() {
        return score;
    }

    /**
     * The archive with another score, and with all its other files as they lie in it.
     *
     * @throws InputException if the archive's directory does not fit what it holds
     */
    byte[] with(byte[] otherScore) throws InputException {
        if (Arrays.equals(score, otherScore)) {
            return archive;
        }
        try {
            byte[] changed = ZipEdit.with(archive, path, otherScore);
            if (Arrays.equals(open(changed, file).score, otherScore)) {
                return changed;
            }
        } catch (IOException e) {
            throw new InputException(unwritable().getMessage(), e);
        }
        throw unwritable();
    }

    private InputException unwritable() {
        return wrong("nothing can be written into the archive, for its directory is damaged or unusual; export the part"
                + " as uncompressed MusicXML (.musicxml)");
    }

    private static Optional<String> scorePath(byte[] container, String file) throws InputException {
        XmlCursor xml = XmlCursor.open(container, file);
        StringBuilder path = new StringBuilder();
        xml.children(list -> xml.children(root -> {
            if (root.equals("rootfile") && path.isEmpty()) {
                path.append(xml.attribute("full-path").orElse(""));
            }
        }));
        return Optional.of(path.toString()).filter(text -> !text.isEmpty());
    }

    private Optional<byte[]> entry(String path) throws InputException {
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(archive))) {
            int files = 0;
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                if (++files > MOST_FILES) {
                    throw wrong("it holds more than " + MOST_FILES + " files; export the part again");
                }
                requireInside(entry.getName());
                byte[] content = unpacked(zip);
                if (entry.getName().equals(path)) {
                    return Optional.of(content);
                }
            }
            return Optional.empty();
        } catch (IOException | IllegalArgumentException e) {
            throw new InputException(
                    wrong("the archive is broken or cut off; export the part again")
                            .getMessage(),
                    e);
        }
    }

    private byte[] unpacked(ZipInputStream zip) throws IOException, InputException {
        ByteArrayOutputStream content = new ByteArrayOutputStream();
        byte[] chunk = new byte[CHUNK_BYTES];
        for (int count = zip.read(chunk); count >= 0; count = zip.read(chunk)) {
            unpackedBytes += count;
            content.write(chunk, 0, count);
            if (content.size() > PartReader.MOST_BYTES) {
                throw wrong("unpacked it is larger than " + PartReader.MOST_BYTES / 1024
                        + " KiB, too large for a part; check that it is the right file");
            }
            if (unpackedBytes
                    > Math.min(FREE_BYTES + MOST_UNPACKED_SHARE * (long) archive.length, 4L * PartReader.MOST_BYTES)) {
                throw wrong("it is packed more densely than any score, as only made-up archives are; export the part"
                        + " again");
            }
        }
        return content.toByteArray();
    }

    private void requireInside(String path) throws InputException {
        if (OUTSIDE.matcher(path).find()) {
            throw wrong("it names " + Plain.text(path) + ", which lies outside the archive; export the part again");
        }
    }

    private InputException wrong(String what) {
        return new InputException(file + ": " + what);
    }
}
