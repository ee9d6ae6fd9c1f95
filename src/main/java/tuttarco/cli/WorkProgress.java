package tuttarco.cli;

import java.io.PrintWriter;
import java.util.Locale;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;

/** Shows how far a piece of work has come, counted in seconds of the clip. */
interface WorkProgress extends AutoCloseable {
    /**
     * @param doneS seconds done
     * @param totalS seconds in all; zero where that is not known
     */
    void reached(double doneS, double totalS);

    @Override
    void close();

    /** Says nothing. */
    final class Silent implements WorkProgress {
        @Override
        public void reached(double doneS, double totalS) {}

        @Override
        public void close() {}
    }

    /** A bar that redraws itself, for a terminal. */
    final class Bar implements WorkProgress {
        private static final int STEPS_PER_S = 10;
        private static final int REDRAW_MS = 200;
        private final ProgressBar bar;

        Bar(String task) {
            bar = new ProgressBarBuilder()
                    .setTaskName(task)
                    .setUnit(" s", STEPS_PER_S)
                    .setStyle(ProgressBarStyle.ASCII)
                    .setUpdateIntervalMillis(REDRAW_MS)
                    .build();
        }

        @Override
        public void reached(double doneS, double totalS) {
            bar.maxHint(totalS > 0 ? Math.round(totalS * STEPS_PER_S) : -1);
            bar.stepTo(Math.round(doneS * STEPS_PER_S));
        }

        @Override
        public void close() {
            bar.close();
        }
    }

    /** A plain line whenever another quarter is done, or another minute where the length is not known. */
    final class Lines implements WorkProgress {
        private static final double LEAST_STEP_S = 5;
        private static final double UNKNOWN_STEP_S = 60;
        private final PrintWriter err;
        private final String task;
        private double saidS;

        Lines(PrintWriter err, String task) {
            this.err = err;
            this.task = task;
        }

        @Override
        public void reached(double doneS, double totalS) {
            double stepS = totalS > 0 ? Math.max(totalS / 4, LEAST_STEP_S) : UNKNOWN_STEP_S;
            if (doneS < saidS + stepS) {
                return;
            }
            saidS = doneS;
            String ofAll = totalS > 0 ? String.format(Locale.ROOT, " of %.0f s", totalS) : "";
            err.println(String.format(Locale.ROOT, "%s: %.0f s", task, doneS) + ofAll);
            err.flush();
        }

        @Override
        public void close() {}
    }
}
