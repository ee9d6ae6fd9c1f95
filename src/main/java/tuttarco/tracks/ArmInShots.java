package tuttarco.tracks;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import tuttarco.seats.Player;
import tuttarco.video.Frame;
import tuttarco.video.Shot;

/**
 * Follows one bow arm shot by shot, each anew: nothing seen in one bears on another. Where the clip does not show what it
 * started with, the seat is somewhere else in the picture, if anywhere, and nothing is followed.
 */
final class ArmInShots implements ArmTracker {
    private record Part(Shot shot, ArmTracker tracker) {}

    private final Player player;
    private final Function<Shot, ArmTracker> trackers;
    private final List<Part> parts = new ArrayList<>();

    /**
     * @param trackers makes the tracker for a shot of the first view
     */
    ArmInShots(Player player, Function<Shot, ArmTracker> trackers) {
        this.player = player;
        this.trackers = trackers;
    }

    @Override
    public void accept(Frame frame) {
        if (parts.isEmpty() || !last().shot().equals(frame.shot())) {
            close();
            parts.add(new Part(frame.shot(), tracker(frame.shot())));
        }
        last().tracker().accept(frame);
    }

    @Override
    public void recall(Frame frame) {
        if (last().shot().equals(frame.shot())) {
            last().tracker().recall(frame);
        }
    }

    @Override
    public void note(Memo memo) throws IOException {
        List<Shot> shots = new ArrayList<>(parts.stream().map(Part::shot).toList());
        memo.list(Shot.class, shots);
        for (Shot shot : shots.subList(parts.size(), shots.size())) {
            close();
            parts.add(new Part(shot, tracker(shot)));
        }
        for (Part part : parts) {
            part.tracker().note(memo);
        }
    }

    private Part last() {
        return parts.get(parts.size() - 1);
    }

    private ArmTracker tracker(Shot shot) {
        return shot.view() == Shot.View.FIRST ? trackers.apply(shot) : new NoArm(player);
    }

    @Override
    public void settle() {
        parts.forEach(part -> part.tracker().settle());
    }

    @Override
    public ArmTrack finish(double endS) {
        List<ArmTrack> tracks = new ArrayList<>();
        List<ArmSample> samples = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            ArmTrack track = part.tracker()
                    .finish(i + 1 < parts.size() ? parts.get(i + 1).shot().startS() : endS);
            tracks.add(track);
            samples.addAll(track.samples());
            if (track.samples().isEmpty()) {
                samples.add(new ArmSample.Lost(part.shot().startS(), ArmSample.Reason.TOO_FEW_FRAMES));
            }
        }
        Optional<Body> body = tracks.stream()
                .filter(track -> track.body().isPresent())
                .max(Comparator.comparingInt(track -> track.samples().size()))
                .flatMap(ArmTrack::body);
        return new ArmTrack(
                player, 0, endS, samples, body, parts.stream().map(Part::shot).toList());
    }

    @Override
    public void close() {
        if (!parts.isEmpty()) {
            last().tracker().close();
        }
    }

    /** The arm in another view: it is not there. */
    private static final class NoArm implements ArmTracker {
        private final Player player;
        private final List<ArmSample.Lost> lost = new ArrayList<>();

        NoArm(Player player) {
            this.player = player;
        }

        @Override
        public void accept(Frame frame) {
            lost.add(new ArmSample.Lost(frame.timeS(), ArmSample.Reason.OTHER_VIEW));
        }

        @Override
        public void recall(Frame frame) {
            // no picture is needed
        }

        @Override
        public void note(Memo memo) throws IOException {
            memo.list(ArmSample.Lost.class, lost);
        }

        @Override
        public ArmTrack finish(double endS) {
            return new ArmTrack(player, 0, endS, List.copyOf(lost));
        }

        @Override
        public void close() {
            // no picture is kept
        }
    }
}
