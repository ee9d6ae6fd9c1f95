package tuttarco.musicxml;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import tuttarco.files.Plain;
import tuttarco.musicxml.WrittenNote.Joins;
import tuttarco.score.PartChoice;
import tuttarco.score.PartChoice.Line;

/**
 * Sorts a measure's notes by voice, and chooses the voice and the line of chords that are read. Notes of one voice on two
 * staves are two voices; what a grace note begins, the next note of its voice goes on with.
 */
final class Voices {
    private final Optional<String> wanted;
    private final Optional<Line> line;
    private final Map<String, List<WrittenNote>> voices = new LinkedHashMap<>();
    private final Set<String> seen = new HashSet<>();
    private final Map<String, String> staves = new HashMap<>();
    private final Map<String, Joins> graces = new HashMap<>();

    Voices(PartChoice choice) {
        wanted = choice.voice().map(String::strip);
        line = choice.line();
    }

    void beginMeasure() {
        voices.clear();
    }

    /** The voice as it is called here: by its own name on the staff on which it is first seen. */
    String voice(NoteElement note) {
        String first = staves.computeIfAbsent(note.voice, voice -> note.staff);
        return first.equals(note.staff) ? note.voice : note.voice + " on staff " + note.staff;
    }

    void addGrace(String voice, Joins grace) {
        graces.merge(voice, grace, Joins::intoNext);
    }

    void add(String voice, WrittenNote note) {
        seen.add(voice);
        Joins grace = graces.getOrDefault(voice, Joins.NONE);
        graces.remove(voice);
        voices.computeIfAbsent(voice, name -> new ArrayList<>()).add(note.with(grace.intoNext(note.joins())));
    }

    /** Adds a note to the chord of the voice's last one. */
    void addToChord(String voice, WrittenNote note) {
        List<WrittenNote> notes = voices.getOrDefault(voice, List.of());
        if (!notes.isEmpty()) {
            int last = notes.size() - 1;
            notes.set(last, notes.get(last).withChord(note, line));
        }
    }

    /** The voice wanted, or the first where it is not written. */
    List<WrittenNote> chosen() {
        return wanted.map(voices::get)
                .or(() -> voices.values().stream().findFirst())
                .map(List::copyOf)
                .orElse(List.of());
    }

    /** What to say if the voice wanted was never there. */
    Optional<String> missing() {
        return wanted.filter(voice -> !seen.contains(voice))
                .map(voice -> "no voice '" + Plain.text(voice) + "' is in the part; its voices are "
                        + Plain.text(String.join(", ", new TreeSet<>(seen))));
    }
}
