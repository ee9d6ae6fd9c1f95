package tuttarco.musicxml;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;

/**
 * Puts other content into one file of a ZIP archive (PKWARE, APPNOTE 6.3) and leaves every other byte as it is, save the
 * lengths, checksum and places that tell of that file and of those behind it.
 */
final class ZipEdit {
    /** Flag of a file whose lengths stand behind it. */
    private static final int LENGTHS_BEHIND = 1 << 3;

    private final ByteBuffer zip;
    private final int end;
    private final int directory;
    /** Places of the directory's entries, in its order. */
    private final List<Integer> entries = new ArrayList<>();

    private ZipEdit(byte[] archive) throws ZipException {
        zip = buffer(archive);
        end = end();
        directory = number(zip, end + ZipEntry.ENDOFF);
        int at = directory;
        for (int i = 0; i < shortNumber(end + ZipEntry.ENDTOT); i++) {
            require(at, ZipEntry.CENSIG);
            entries.add(at);
            at += ZipEntry.CENHDR
                    + shortNumber(at + ZipEntry.CENNAM)
                    + shortNumber(at + ZipEntry.CENEXT)
                    + shortNumber(at + ZipEntry.CENCOM);
        }
    }

    /**
     * The archive with the content in the first file of that name, packed as it was.
     *
     * @throws IOException if the archive's directory is damaged or larger than 32 bits tell
     */
    static byte[] with(byte[] archive, String path, byte[] content) throws IOException {
        try {
            return new ZipEdit(archive).with(path, content);
        } catch (IndexOutOfBoundsException | IllegalArgumentException e) {
            throw new IOException("the archive's directory is damaged", e);
        }
    }

    private byte[] with(String path, byte[] content) throws IOException {
        int entry = entries.stream()
                .filter(at -> name(at).equals(path))
                .min(Comparator.comparing(at -> zip.getInt(at + ZipEntry.CENOFF)))
                .orElseThrow(() -> new ZipException("no entry of that name"));
        int start = number(zip, entry + ZipEntry.CENOFF);
        require(start, ZipEntry.LOCSIG);
        int headerBytes = ZipEntry.LOCHDR + shortNumber(start + ZipEntry.LOCNAM) + shortNumber(start + ZipEntry.LOCEXT);
        int next = directory;
        for (int other : entries) {
            int offset = number(zip, other + ZipEntry.CENOFF);
            next = offset > start ? Math.min(next, offset) : next;
        }
        byte[] packed = shortNumber(entry + ZipEntry.CENHOW) == ZipEntry.STORED ? content : deflated(content);

        int longer = start + headerBytes + packed.length - next;
        ByteBuffer changed = buffer(new byte[zip.capacity() + longer]);
        changed.put(zip.array(), 0, start + headerBytes);
        changed.put(packed);
        changed.put(zip.array(), next, zip.capacity() - next);
        tell(changed, start + ZipEntry.LOCFLG, start + ZipEntry.LOCCRC, packed.length, content);
        tell(changed, entry + longer + ZipEntry.CENFLG, entry + longer + ZipEntry.CENCRC, packed.length, content);
        for (int other : entries) {
            int place = other + longer + ZipEntry.CENOFF;
            int offset = number(changed, place);
            changed.putInt(place, offset > start ? offset + longer : offset);
        }
        changed.putInt(end + longer + ZipEntry.ENDOFF, directory + longer);
        return changed.array();
    }

    /** Checksum, packed and unpacked length follow each other in both kinds of header. */
    private static void tell(ByteBuffer zip, int flags, int checksum, int packedBytes, byte[] content) {
        CRC32 crc = new CRC32();
        crc.update(content);
        zip.putShort(flags, (short) (zip.getShort(flags) & ~LENGTHS_BEHIND));
        zip.putInt(checksum, (int) crc.getValue());
        zip.putInt(checksum + Integer.BYTES, packedBytes);
        zip.putInt(checksum + 2 * Integer.BYTES, content.length);
    }

    private static byte[] deflated(byte[] content) throws IOException {
        Deflater deflater = new Deflater(Deflater.DEFAULT_COMPRESSION, true);
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (DeflaterOutputStream out = new DeflaterOutputStream(packed, deflater)) {
            out.write(content);
        } finally {
            deflater.end();
        }
        return packed.toByteArray();
    }

    /** Where the record lies that ends the archive, with the comment behind it. */
    private int end() throws ZipException {
        for (int at = zip.capacity() - ZipEntry.ENDHDR; at >= 0; at--) {
            if (zip.getInt(at) == (int) ZipEntry.ENDSIG
                    && at + ZipEntry.ENDHDR + shortNumber(at + ZipEntry.ENDCOM) == zip.capacity()) {
                return at;
            }
        }
        throw new ZipException("no end of the directory");
    }

    private String name(int entry) {
        int bytes = shortNumber(entry + ZipEntry.CENNAM);
        return new String(zip.array(), entry + ZipEntry.CENHDR, bytes, StandardCharsets.UTF_8);
    }

    private void require(int at, long signature) throws ZipException {
        if (zip.getInt(at) != (int) signature) {
            throw new ZipException("a header is missing");
        }
    }

    private int shortNumber(int at) {
        return Short.toUnsignedInt(zip.getShort(at));
    }

    private static int number(ByteBuffer zip, int at) throws ZipException {
        int number = zip.getInt(at);
        if (number < 0) {
            throw new ZipException("too large for 32 bits");
        }
        return number;
    }

    private static ByteBuffer buffer(byte[] bytes) {
        return ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    }
}
