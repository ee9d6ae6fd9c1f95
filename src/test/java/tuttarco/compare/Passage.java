package tuttarco.compare;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.beats.TimedSpan;
import tuttarco.bow.BowDirection;
import tuttarco.score.PartSpan;
import tuttarco.score.PartSpan.MarkedStroke;
import tuttarco.score.PartSpan.Position;
import tuttarco.score.PartSpan.Rest;
import tuttarco.score.Reason;
import tuttarco.strokes.Stroke;
import tuttarco.strokes.StrokeKind;

/**
 * A passage in 4/4 whose strokes alternate, with the first beat at {@link #START_S} and a still second after the end.
 *
 * @param lengthsS strokes and, where negative, rests, seconds
 */
public record Passage(double beatS, List<Double> lengthsS) {
    public static final double START_S = 2;

    public static Passage steady(double strokeS, double beatS, int strokes) {
        return new Passage(beatS, Collections.nCopies(strokes, strokeS));
    }

    /** Strokes of a quarter second to two seconds in random order, seldom a rest, about 30 s. */
    public static Passage random(Random random) {
        double beatS = List.of(0.5, 0.6, 0.8, 1.0).get(random.nextInt(4));
        List<Double> lengthsS = new ArrayList<>();
        double totalS = 0;
        while (totalS < 30) {
            double lengthS = beatS * List.of(0.5, 0.5, 1.0, 1.0, 1.5, 2.0).get(random.nextInt(6));
            boolean rest = random.nextDouble() < 0.03;
            lengthsS.add(rest ? -lengthS : Math.max(0.25, lengthS));
            totalS += lengthS;
        }
        return new Passage(beatS, lengthsS);
    }

    public double endS() {
        return START_S + lengthsS.stream().mapToDouble(Math::abs).sum();
    }

    public BeatMap beats() {
        List<Beat> beats = new ArrayList<>();
        int count = Math.max(2, (int) Math.floor((endS() - START_S) / beatS + 1e-6));
        for (int i = 0; i < count; i++) {
            beats.add(new Beat(Integer.toString(1 + i / 4), 1 + i % 4, START_S + i * beatS));
        }
        return new BeatMap(beats);
    }

    public List<TimedSpan> marking() {
        Position somewhere = new Position(0, 1);
        List<TimedSpan> spans = new ArrayList<>();
        BowDirection direction = BowDirection.DOWN;
        double timeS = START_S;
        for (double lengthS : lengthsS) {
            double endS = timeS + Math.abs(lengthS);
            PartSpan span = lengthS < 0
                    ? new Rest(somewhere, somewhere)
                    : new MarkedStroke(somewhere, somewhere, direction, new Reason.StrongBeat(true));
            spans.add(new TimedSpan(timeS, endS, span));
            direction = lengthS < 0 ? direction : direction.opposite();
            timeS = endS;
        }
        return spans;
    }

    /** What a player does who keeps to the marking, from 0 to a second after the end. */
    public List<Stroke> asMarked() {
        List<Stroke> strokes = new ArrayList<>();
        strokes.add(new Stroke(0, START_S, StrokeKind.STILL, 1));
        for (TimedSpan span : marking()) {
            StrokeKind kind = span.span() instanceof MarkedStroke m ? StrokeKind.of(m.direction()) : StrokeKind.STILL;
            strokes.add(new Stroke(span.startS(), span.endS(), kind, 0.95));
        }
        strokes.add(new Stroke(endS(), endS() + 1, StrokeKind.STILL, 1));
        return strokes;
    }

    public double beatStartS(int index) {
        return START_S + index * beatS;
    }

    /** Whether every moment of the beats from {@code first} to {@code last} is bowed. */
    public boolean bowed(int first, int last) {
        return marking().stream()
                .filter(s -> s.span() instanceof Rest)
                .allMatch(s -> Spans.overlapS(s.startS(), s.endS(), beatStartS(first), beatStartS(last + 1)) == 0);
    }
}
