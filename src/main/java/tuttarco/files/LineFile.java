package tuttarco.files;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * A file that only grows, line by line. A line is written in one go and forced to the disk; if the program or the machine
 * dies in between, part of a line may be left, which the next one is never glued to. Several programs may write and read at
 * the same time: each waits for the others.
 */
public final class LineFile {
    private static final int LINE_FEED = '\n';

    private LineFile() {}

    /** Takes one line after the other. */
    @FunctionalInterface
    public interface Reader {
        /**
         * A line without its line feed.
         *
         * @param number counted from 1
         */
        void line(int number, byte[] line) throws InputException;
    }

    /**
     * Adds a line; the file and its missing parent folders are made.
     *
     * @param line without line feeds
     * @throws OutputException if it can't be written
     */
    public static synchronized void append(Path file, byte[] line) throws OutputException {
        Path target = file.toAbsolutePath().normalize();
        if (Files.isDirectory(target)) {
            throw Refusal.because(target, "it is a folder, name a file instead");
        }
        try {
            Files.createDirectories(target.getParent());
            // not through a channel, which closes under a thread that was told to stop
            try (RandomAccessFile out = new RandomAccessFile(target.toFile(), "rw");
                    FileLock lock = out.getChannel().lock()) {
                boolean torn = endsAmidLine(out);
                ByteArrayOutputStream bytes = new ByteArrayOutputStream(line.length + 2);
                if (torn) {
                    bytes.write(LINE_FEED);
                }
                bytes.writeBytes(line);
                bytes.write(LINE_FEED);
                out.seek(out.length());
                out.write(bytes.toByteArray());
                out.getFD().sync();
            }
        } catch (IOException e) {
            throw Refusal.of(target, e);
        }
    }

    /** Whether a line says nothing. */
    public static boolean blank(byte[] line) {
        for (byte letter : line) {
            if (letter != ' ' && letter != '\t' && letter != '\r') {
                return false;
            }
        }
        return true;
    }

    private static boolean endsAmidLine(RandomAccessFile file) throws IOException {
        if (file.length() == 0) {
            return false;
        }
        file.seek(file.length() - 1);
        return file.read() != LINE_FEED;
    }

    /**
     * Reads line by line, the last one also where its line feed is missing.
     *
     * @param most the most bytes a line may have
     * @throws InputException if the file can't be read, a line is longer, or the reader refuses one
     */
    public static synchronized void read(Path file, int most, Reader reader) throws InputException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ);
                FileLock lock = channel.lock(0, Long.MAX_VALUE, true)) {
            InputStream in = new BufferedInputStream(Channels.newInputStream(channel));
            int number = 1;
            ByteArrayOutputStream line = new ByteArrayOutputStream();
            for (int next = in.read(); next >= 0; next = in.read()) {
                if (next == LINE_FEED) {
                    reader.line(number++, line.toByteArray());
                    line.reset();
                } else if (line.size() == most) {
                    throw new InputException(InputBytes.name(file) + ": line " + number + " is longer than "
                            + most / 1024 + " KiB, too long for this kind of file; check that it is the right one");
                } else {
                    line.write(next);
                }
            }
            if (line.size() > 0) {
                reader.line(number, line.toByteArray());
            }
        } catch (IOException e) {
            throw new InputException(
                    Plain.text(file.toString()) + " can't be read; check that it is a file and that you may open it",
                    e);
        }
    }
}
