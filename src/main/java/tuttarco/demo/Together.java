package tuttarco.demo;

import java.util.Arrays;
import java.util.List;

/** Several things heard at once. */
record Together(List<Soundtrack> tracks) implements Soundtrack {
    Together {
        tracks = List.copyOf(tracks);
    }

    @Override
    public void fill(long first, float[] block) {
        Arrays.fill(block, 0);
        float[] one = new float[block.length];
        for (Soundtrack track : tracks) {
            track.fill(first, one);
            for (int i = 0; i < block.length; i++) {
                block[i] += one[i];
            }
        }
    }
}
