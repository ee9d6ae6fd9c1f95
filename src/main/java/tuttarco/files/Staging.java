package tuttarco.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * A hidden place where something is written before it is put in place. Closing removes it, and the folders made for it
 * unless it was kept; so does the end of the program when a signal comes first.
 */
final class Staging implements AutoCloseable {
    /** How long the writer may take to clean up itself when the program is being ended, milliseconds. */
    private static final long PATIENCE_MS = 3_000;

    /** How often a removal is tried while the writer is still at work after that. */
    private static final int REMOVALS = 5;

    private static final String ENDING = "the program is being ended";

    /** Puts what was staged in its place. */
    @FunctionalInterface
    interface Move {
        void run() throws IOException;
    }

    private final Path path;
    private final Deque<Path> madeParents;
    private final Thread atExit = new Thread(this::abandon, "removes half-written output");
    private boolean ending;
    private boolean over;

    private Staging(Path path, Deque<Path> madeParents) throws IOException {
        this.path = path;
        this.madeParents = madeParents;
        try {
            Runtime.getRuntime().addShutdownHook(atExit);
        } catch (IllegalStateException ending) {
            throw new IOException(ENDING, ending);
        }
    }

    /** A place beside {@code target}, on the same disk so that it can be moved in one step; parents are made. */
    static Staging besides(Path target) throws IOException {
        Path parent = target.getParent();
        if (parent == null) {
            throw new IOException("it is no name of a file or folder");
        }
        return new Staging(hidden(parent), makeFolders(parent));
    }

    /** A place within the folder {@code target}, which may be a disk of its own. */
    static Staging within(Path target) throws IOException {
        return new Staging(hidden(target), new ArrayDeque<>());
    }

    /** Nothing exists here yet. */
    Path path() {
        return path;
    }

    /** Puts what was staged in place; the end of the program waits for it. */
    synchronized void keep(Move move) throws IOException {
        if (ending || over) {
            throw new IOException(ENDING);
        }
        move.run();
        madeParents.clear();
    }

    @Override
    public synchronized void close() throws IOException {
        if (!over) {
            over = true;
            takeHookBack();
            notifyAll();
            remove();
        }
    }

    private void takeHookBack() {
        try {
            Runtime.getRuntime().removeShutdownHook(atExit);
        } catch (IllegalStateException ending) {
            // the hook is running already and finds nothing left to do
            return;
        }
    }

    private synchronized void abandon() {
        ending = true;
        long untilNs = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(PATIENCE_MS);
        try {
            for (long leftNs = untilNs - System.nanoTime(); !over && leftNs > 0; leftNs = untilNs - System.nanoTime()) {
                TimeUnit.NANOSECONDS.timedWait(this, leftNs);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        boolean removed = over;
        over = true;
        for (int i = 0; i < REMOVALS && !removed; i++) {
            removed = removedNow();
        }
    }

    private boolean removedNow() {
        try {
            remove();
            return true;
        } catch (IOException stillBeingWritten) {
            return false;
        }
    }

    private void remove() throws IOException {
        removeTree(path);
        while (!madeParents.isEmpty()) {
            Files.deleteIfExists(madeParents.pop());
        }
    }

    private static Path hidden(Path folder) {
        return folder.resolve(".unfinished-" + UUID.randomUUID());
    }

    /** Makes the missing folders down to {@code folder}; returns those made, deepest first. */
    static Deque<Path> makeFolders(Path folder) throws IOException {
        Deque<Path> missing = new ArrayDeque<>();
        for (Path p = folder; p != null && !Files.exists(p); p = p.getParent()) {
            missing.addLast(p);
        }
        Files.createDirectories(folder);
        return missing;
    }

    private static void removeTree(Path root) throws IOException {
        List<Path> deepestFirst;
        try (Stream<Path> walk = Files.walk(root)) {
            deepestFirst = walk.sorted(Comparator.reverseOrder()).toList();
        } catch (NoSuchFileException alreadyMoved) {
            return;
        } catch (UncheckedIOException stillBeingWritten) {
            throw stillBeingWritten.getCause();
        }
        for (Path p : deepestFirst) {
            Files.deleteIfExists(p);
        }
    }
}
