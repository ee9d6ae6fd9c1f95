package tuttarco.pose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

class PoseNetsTest {
    @Test
    void aNetIsLentToOneBorrowerAtATimeAndThenAgain() {
        try (PoseNets nets = new PoseNets(PackedModel.orSkip())) {
            PoseNet first = nets.with(net -> net);
            assertSame(first, nets.with(net -> net));
            PoseNet second = nets.with(outer -> {
                assertSame(first, outer);
                return nets.with(inner -> inner);
            });
            assertNotSame(first, second);
            assertTrue(Set.of(first, second).contains(nets.with(net -> net)));
        }
    }

    @Test
    void aNetComesBackFromWorkThatFails() {
        try (PoseNets nets = new PoseNets(PackedModel.orSkip())) {
            PoseNet first = nets.with(net -> net);
            assertThrows(
                    IllegalStateException.class,
                    () -> nets.with(net -> {
                        throw new IllegalStateException("fails on purpose");
                    }));
            assertSame(first, nets.with(net -> net));
        }
    }

    @Test
    void threadsAtWorkTogetherHaveNetsOfTheirOwnAndNoMoreAreMade() throws Exception {
        int threads = 3;
        int rounds = 200;
        Set<PoseNet> inUse = ConcurrentHashMap.newKeySet();
        Set<PoseNet> ever = ConcurrentHashMap.newKeySet();
        CyclicBarrier allHaveOne = new CyclicBarrier(threads);
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try (PoseNets nets = new PoseNets(PackedModel.orSkip())) {
            List<Future<Integer>> running = new ArrayList<>();
            for (int i = 0; i < threads; i++) {
                running.add(pool.submit(() -> {
                    int alone = 0;
                    for (int round = 0; round < rounds; round++) {
                        boolean together = round == 0;
                        alone += nets.with(net -> {
                            boolean mine = inUse.add(net);
                            ever.add(net);
                            if (together) {
                                await(allHaveOne);
                            }
                            inUse.remove(net);
                            return mine ? 1 : 0;
                        });
                    }
                    return alone;
                }));
            }
            for (Future<Integer> each : running) {
                assertEquals(rounds, each.get(1, TimeUnit.MINUTES), "turns with a net nobody else had");
            }
            assertEquals(threads, ever.size());
        } finally {
            pool.shutdownNow();
        }
    }

    private static void await(CyclicBarrier barrier) {
        try {
            barrier.await(1, TimeUnit.MINUTES);
        } catch (Exception e) {
            throw new IllegalStateException("not all threads got a net at a time", e);
        }
    }
}
