package tuttarco.align;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import tuttarco.beats.PartRuler;
import tuttarco.score.Note;
import tuttarco.score.Part;
import tuttarco.score.PartSpan.Position;

/**
 * What sounds when in a part, along its {@linkplain PartRuler ruler}.
 *
 * @param chords the different sets of pitches that occur; the first is the empty one, a rest
 * @param startQuarters where each stretch begins, in order, the first at 0
 * @param chordOf which chord sounds in each stretch
 * @param onsets whether a note begins at the start of each stretch
 * @param barStarts where the bars begin
 * @param lengthQuarters the part's length
 */
record PartChords(
        List<List<Integer>> chords,
        double[] startQuarters,
        int[] chordOf,
        boolean[] onsets,
        double[] barStarts,
        double lengthQuarters)
        implements Guide {
    /** Quarter notes a second (common practice: 35 to 350 a minute). */
    private static final double[] TEMPI = {50 / 60.0, 85 / 60.0, 145 / 60.0, 240 / 60.0};

    /** Places nearer than this are the same but for rounding, quarter notes. */
    private static final double NEXT_TO = 1e-6;

    /** What beginning at a bar costs that isn't the first, seconds of fitting well (chosen; not yet measured). */
    static final double AT_A_BAR_S = 0.25;

    /** What beginning elsewhere costs, seconds of fitting well (chosen; not yet measured). */
    static final double IN_MID_BAR_S = 0.75;

    /** Chosen; 0.02 to 0.1 made little difference. */
    private static final float UNEVEN = 0.05f;

    static PartChords of(Part part) {
        PartRuler ruler = new PartRuler(part);
        TreeMap<Double, List<Note>> starts = new TreeMap<>();
        TreeMap<Double, List<Note>> ends = new TreeMap<>();
        starts.put(0.0, new ArrayList<>());
        for (Note note : part.notes()) {
            double start = ruler.quarters(note.start());
            double end = ruler.quarters(note.end());
            if (end > start) {
                starts.computeIfAbsent(start, s -> new ArrayList<>()).add(note);
                ends.computeIfAbsent(end, s -> new ArrayList<>()).add(note);
            }
        }
        TreeSet<Double> places = new TreeSet<>(starts.keySet());
        places.addAll(ends.keySet());
        places.removeIf(place -> place >= ruler.lengthQuarters());
        Map<List<Integer>, Integer> numbers = new HashMap<>(Map.of(List.of(), REST));
        List<List<Integer>> chords = new ArrayList<>(List.of(List.of()));
        List<Note> sounding = new ArrayList<>();
        double[] startQuarters = new double[places.size()];
        int[] chordOf = new int[places.size()];
        boolean[] onsets = new boolean[places.size()];
        int at = 0;
        for (double place : places) {
            sounding.removeAll(ends.getOrDefault(place, List.of()));
            List<Note> begun = starts.getOrDefault(place, List.of());
            sounding.addAll(begun);
            List<Integer> chord = sounding.stream()
                    .flatMap(note -> note.pitches().stream())
                    .distinct()
                    .sorted()
                    .toList();
            chordOf[at] = numbers.computeIfAbsent(chord, c -> {
                chords.add(c);
                return chords.size() - 1;
            });
            onsets[at] = !begun.isEmpty();
            startQuarters[at++] = place;
        }
        return new PartChords(
                List.copyOf(chords), startQuarters, chordOf, onsets, barStarts(part, ruler), ruler.lengthQuarters());
    }

    @Override
    public List<Piece> pieces() {
        return List.of(new Piece(0, lengthQuarters));
    }

    @Override
    public double[] tempi() {
        return TEMPI.clone();
    }

    @Override
    public float uneven() {
        return UNEVEN;
    }

    @Override
    public int soundAt(double quarters) {
        return chordOf[stretchAt(quarters)];
    }

    @Override
    public float[][] expected(SemitoneBands bands) {
        return chords.stream().map(bands::expected).toArray(float[][]::new);
    }

    @Override
    public PartChords transposed(int semitones) {
        List<List<Integer>> moved = chords.stream()
                .map(chord -> chord.stream().map(pitch -> pitch + semitones).toList())
                .toList();
        return new PartChords(moved, startQuarters, chordOf, onsets, barStarts, lengthQuarters);
    }

    private static double[] barStarts(Part part, PartRuler ruler) {
        return IntStream.range(0, part.bars().size())
                .mapToDouble(
                        i -> ruler.quarters(new Position(i, part.bars().get(i).firstBeat())))
                .toArray();
    }

    /** Players begin on a note, and where the eye finds its way back, at the start of a bar, rather than elsewhere. */
    @Override
    public double beginning(double from, double to) {
        if (from <= NEXT_TO) {
            return 0;
        }
        if (holds(barStarts, from, to)) {
            return AT_A_BAR_S;
        }
        for (int s = stretchAt(from); s < startQuarters.length && startQuarters[s] < to; s++) {
            if (onsets[s] && startQuarters[s] >= from) {
                return IN_MID_BAR_S;
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    private static boolean holds(double[] rising, double from, double to) {
        int found = Arrays.binarySearch(rising, from);
        int next = found >= 0 ? found : -found - 1;
        return next < rising.length && rising[next] < to;
    }

    @Override
    public int stretchAt(double quarters) {
        int found = Arrays.binarySearch(startQuarters, quarters);
        return Math.max(0, found >= 0 ? found : -found - 2);
    }

    double endQuarters(int stretch) {
        return stretch + 1 < startQuarters.length ? startQuarters[stretch + 1] : lengthQuarters;
    }

    @Override
    public double[] shares() {
        double[] shares = new double[chords.size()];
        double all = 0;
        for (int i = 0; i < startQuarters.length; i++) {
            if (chordOf[i] != REST) {
                double length = endQuarters(i) - startQuarters[i];
                shares[chordOf[i]] += length;
                all += length;
            }
        }
        for (int c = 0; c < shares.length; c++) {
            shares[c] /= Math.max(all, Double.MIN_NORMAL);
        }
        return shares;
    }
}
