package tuttarco.pose;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.function.Function;

/** As many nets as threads ask for at a time, each used by one thread at a time; made when first needed. */
public final class PoseNets implements AutoCloseable {
    private final PoseModel model;
    private final Deque<PoseNet> idle = new ArrayDeque<>();

    public PoseNets(PoseModel model) {
        this.model = model;
    }

    /** Lends a net for the time of the work. */
    public <T> T with(Function<PoseNet, T> work) {
        PoseNet net = take();
        try {
            return work.apply(net);
        } finally {
            giveBack(net);
        }
    }

    private PoseNet take() {
        synchronized (idle) {
            if (!idle.isEmpty()) {
                return idle.pop();
            }
        }
        return model.net();
    }

    private void giveBack(PoseNet net) {
        synchronized (idle) {
            idle.push(net);
        }
    }

    /** Closes all nets; none may be in use. */
    @Override
    public void close() {
        synchronized (idle) {
            idle.forEach(PoseNet::close);
            idle.clear();
        }
    }
}
