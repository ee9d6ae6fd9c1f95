package tuttarco.review;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import tuttarco.analysis.Stand;
import tuttarco.bow.Instrument;
import tuttarco.corrections.CorrectionLog;
import tuttarco.files.Plain;
import tuttarco.score.PartChoice;
import tuttarco.seats.Player;
import tuttarco.take.BeatsGiven;
import tuttarco.take.Bowing;
import tuttarco.take.Take;

/**
 * A take while it is set up: a take but for its players, of whom there may be none yet.
 *
 * @param file the take file it is saved in
 */
public record Draft(
        Path file,
        String title,
        Path video,
        List<Player> players,
        Optional<Path> part,
        PartChoice partChoice,
        Optional<Path> over,
        BeatsGiven beats,
        Bowing bowing,
        Optional<LocalDate> day) {
    /** What take files end in. */
    public static final String ENDING = ".take.json";

    public Draft {
        players = List.copyOf(players);
    }

    /** A video of which nothing is known yet; its take lies beside it and is called as it is. */
    public static Draft ofVideo(Path video) {
        Path real = video.toAbsolutePath().normalize();
        return new Draft(
                takeOf(real),
                Plain.text(name(real)),
                real,
                List.of(),
                Optional.empty(),
                PartChoice.DEFAULT,
                Optional.empty(),
                new BeatsGiven.Missing(),
                Bowing.UNIFIED,
                Optional.empty());
    }

    /** Where the take of a video lies: beside it, called as it is. */
    public static Path takeOf(Path video) {
        return video.resolveSibling(name(video) + ENDING);
    }

    /** The name of a take or video without its ending. */
    private static String name(Path file) {
        String name = file.getFileName().toString();
        if (name.endsWith(ENDING)) {
            return name.substring(0, name.length() - ENDING.length());
        }
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }

    public static Draft of(Take take) {
        return new Draft(
                take.file().toAbsolutePath().normalize(),
                take.title(),
                take.video(),
                take.players(),
                take.part(),
                take.partChoice(),
                take.over(),
                take.beats(),
                take.bowing(),
                take.day());
    }

    /**
     * The take it makes, empty while nobody sits in it.
     *
     * @throws IllegalArgumentException if two players lead or bear one label
     */
    public Optional<Take> take() {
        return players.isEmpty()
                ? Optional.empty()
                : Optional.of(new Take(file, title, video, players, part, partChoice, over, beats, bowing, day));
    }

    /** What was on the stand, and when; a violin part while nobody sits there. */
    public Stand stand() {
        return new Stand(file, video, part, partChoice, over, beats, instrument());
    }

    /** Whose part it is: the leader's instrument, or else the first player's. */
    public Instrument instrument() {
        return players.stream()
                .filter(Player::leader)
                .findFirst()
                .or(() -> players.stream().findFirst())
                .map(Player::instrument)
                .orElse(Instrument.VIOLIN);
    }

    /** A file beside the take that is called as the take is, with another ending. */
    public Path beside(String ending) {
        String name = file.getFileName().toString();
        String bare = name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
        return file.resolveSibling(bare + ending);
    }

    /** Whether a take file may name the other file. */
    public boolean mayName(Path other) {
        return other.toAbsolutePath().normalize().startsWith(file.getParent());
    }

    /** The same take in a file beside its own, of which nothing exists yet: {@code NAME 2}, {@code NAME 3} and so on. */
    Draft numbered() {
        int number = 2;
        while (Files.exists(numbered(number)) || Files.exists(CorrectionLog.beside(numbered(number)))) {
            number++;
        }
        return in(numbered(number), video, part, over, beats);
    }

    private Path numbered(int number) {
        return file.resolveSibling(name(file) + " " + number + ENDING);
    }

    /** The same take in another file, with the files it names elsewhere too. */
    Draft in(Path otherFile, Path otherVideo, Optional<Path> otherPart, Optional<Path> otherOver, BeatsGiven others) {
        return new Draft(otherFile, title, otherVideo, players, otherPart, partChoice, otherOver, others, bowing, day);
    }

    public Draft withPlayers(List<Player> others) {
        return new Draft(file, title, video, others, part, partChoice, over, beats, bowing, day);
    }

    public Draft withPart(Optional<Path> other, PartChoice choice, Optional<Path> written) {
        return new Draft(file, title, video, players, other, choice, written, beats, bowing, day);
    }

    public Draft withBeats(BeatsGiven others) {
        return new Draft(file, title, video, players, part, partChoice, over, others, bowing, day);
    }

    public Draft withBowing(Bowing other) {
        return new Draft(file, title, video, players, part, partChoice, over, beats, other, day);
    }
}
