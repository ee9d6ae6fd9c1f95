package tuttarco.corrections;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import tuttarco.bow.Instrument;
import tuttarco.seats.Place;
import tuttarco.seats.Player;
import tuttarco.seats.SeatBox;
import tuttarco.strokes.Reading;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

/** Entries of a log, and readings to correct. */
final class Logged {
    private Logged() {}

    static Instant at(int minute) {
        return Instant.parse("2026-11-26T07:00:00Z").plusSeconds(60L * minute);
    }

    static UUID id(int number) {
        return new UUID(7, number);
    }

    static LogEntry.Done done(int number, Correction correction) {
        return new LogEntry.Done(id(number), at(number), correction, Map.of());
    }

    static LogEntry.Undone undone(int number, int of) {
        return new LogEntry.Undone(id(number), at(number), id(of));
    }

    static LogEntry.Redone redone(int number, int of) {
        return new LogEntry.Redone(id(number), at(number), id(of));
    }

    /** Everything in force, numbered from 0. */
    static Corrections all(Correction... corrections) {
        return Corrections.of(IntStream.range(0, corrections.length)
                .<LogEntry>mapToObj(i -> done(i, corrections[i]))
                .toList());
    }

    static Player player(String label, int desk) {
        return new Player(
                label, desk, Place.OUTSIDE, Instrument.VIOLIN, new SeatBox(0, 0, 100, 100), Optional.empty(), false);
    }

    /** Strokes of one second each as letters say: d, u, t, s, ? and - for down, up, tremolo, still, unsure and unseen. */
    static Reading reading(String label, String seconds) {
        List<Stroke> strokes = new ArrayList<>();
        for (int i = 0; i < seconds.length(); i++) {
            strokes.add(new Stroke(i, i + 1, kind(seconds.charAt(i)), 0.9));
        }
        return new Reading(player(label, 1), strokes);
    }

    static StrokeKind kind(char letter) {
        return switch (letter) {
            case 'd' -> StrokeKind.DOWN;
            case 'u' -> StrokeKind.UP;
            case 't' -> StrokeKind.TREMOLO;
            case 's' -> StrokeKind.STILL;
            case '?' -> StrokeKind.UNSURE;
            default -> StrokeKind.UNSEEN;
        };
    }
}
