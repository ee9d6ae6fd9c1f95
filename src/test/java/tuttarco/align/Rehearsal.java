package tuttarco.align;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Enumeration;
import java.util.Iterator;
import java.util.List;
import java.util.Random;
import tuttarco.beats.Beat;
import tuttarco.beats.BeatMap;
import tuttarco.score.Part;

/**
 * A rehearsal of a part in 4/4 without a pickup: passages of it from any bar on, with talking between them.
 *
 * @param playings in the order of time, none before the other has ended
 */
record Rehearsal(Part part, List<Playing> playings, double lengthS) {
    /** Longest talk between two passages, seconds; the shortest is a third of it. */
    private static final double TALK_S = 9;

    /** Around the talk nobody does anything, seconds. */
    private static final double STILL_S = 0.5;

    /** A passage as it was played; bars by index, the last one not played any more. */
    record Playing(int fromBar, int toBar, double startS, double quarterS) {
        double timeS(double quarters) {
            return startS + quarterS * (quarters - 4 * fromBar);
        }

        double endS() {
            return timeS(4 * toBar);
        }
    }

    /** Passages of 8 to 60 bars from anywhere, each at a tempo of its own between 72 and 120 quarter notes a minute. */
    static Rehearsal random(long seed, Part part, double lengthS) {
        Random random = new Random(seed);
        List<Playing> playings = new ArrayList<>();
        double atS = 2;
        while (true) {
            int bars = 8 + random.nextInt(53);
            int from = random.nextInt(part.bars().size() - bars + 1);
            Playing next = new Playing(from, from + bars, atS, 60 / (72 + 48 * random.nextDouble()));
            if (next.endS() > lengthS - 2) {
                return new Rehearsal(part, playings, lengthS);
            }
            playings.add(next);
            atS = next.endS() + TALK_S * (1 + 2 * random.nextDouble()) / 3;
        }
    }

    /** Plays it into a file, passage by passage. */
    void write(Section section, Path wav) throws IOException {
        Iterator<Playing> rest = playings.iterator();
        Enumeration<InputStream> pieces = new Enumeration<>() {
            private double fromS;

            @Override
            public boolean hasMoreElements() {
                return rest.hasNext();
            }

            @Override
            public InputStream nextElement() {
                Playing playing = rest.next();
                double toS = rest.hasNext() ? playing.endS() + STILL_S : lengthS;
                InputStream piece = piece(section, playing, fromS, toS);
                fromS = toS;
                return piece;
            }
        };
        Section.write(new SequenceInputStream(pieces), sample(lengthS), wav);
    }

    /** The talk before a passage, and the passage. */
    private InputStream piece(Section section, Playing playing, double fromS, double toS) {
        float[] samples = new float[(int) (sample(toS) - sample(fromS))];
        section.play(part, playing.fromBar(), playing.toBar(), q -> playing.timeS(q) - fromS, samples);
        section.talk(samples, 0, playing.startS() - fromS - STILL_S);
        section.noise(samples, -30);
        return new ByteArrayInputStream(Section.pcm(samples));
    }

    private static long sample(double timeS) {
        return Math.round(timeS * Section.RATE);
    }

    /** Every beat where it was played. */
    BeatMap beats() {
        List<List<Beat>> stretches = new ArrayList<>();
        for (Playing playing : playings) {
            List<Beat> beats = new ArrayList<>();
            for (int i = 4 * playing.fromBar(); i < 4 * playing.toBar(); i++) {
                beats.add(new Beat(Integer.toString(i / 4 + 1), i % 4 + 1, playing.timeS(i)));
            }
            stretches.add(beats);
        }
        return BeatMap.ofStretches(stretches);
    }

    int beatsPlayed() {
        return playings.stream().mapToInt(p -> 4 * (p.toBar() - p.fromBar())).sum();
    }

    /** Beats that were played, and where they are said to be, to a quarter of a second. */
    long right(List<Beat> beats) {
        return beats.stream().filter(this::played).count();
    }

    private boolean played(Beat beat) {
        double quarters = 4 * (Integer.parseInt(beat.bar()) - 1) + beat.beat() - 1;
        return playings.stream()
                .anyMatch(p -> quarters >= 4 * p.fromBar()
                        && quarters < 4 * p.toBar()
                        && Math.abs(p.timeS(quarters) - beat.timeS()) <= 0.25);
    }
}
