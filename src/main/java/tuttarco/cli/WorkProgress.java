package tuttarco.cli;

import java.io.PrintWriter;
import java.util.Locale;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;
import tuttarco.analysis.SectionReader;

/** Shows how far a piece of work has come, counted in seconds of the clip or in percent. */
interface WorkProgress extends AutoCloseable {
    /**
     * @param done how much is done
     * @param total how much there is in all; zero where that is not known
     */
    void reached(double done, double total);

    /** Says a sentence amid the work. */
    void said(String sentence);

    /** This progress, told by the reading of a section. */
    default SectionReader.Progress ofReading() {
        return new SectionReader.Progress() {
            @Override
            public void reached(double clipTimeS, double lengthS) {
                WorkProgress.this.reached(clipTimeS, lengthS);
            }

            @Override
            public void said(String sentence) {
                WorkProgress.this.said(sentence);
            }
        };
    }

    @Override
    void close();

    /** Says nothing. */
    final class Silent implements WorkProgress {
        @Override
        public void reached(double done, double total) {}

        @Override
        public void said(String sentence) {}

        @Override
        public void close() {}
    }

    /** A bar that redraws itself, for a terminal. */
    final class Bar implements WorkProgress {
        private static final int STEPS_PER_UNIT = 10;
        private static final int REDRAW_MS = 200;
        private final ProgressBar bar;

        Bar(String task, String unit) {
            bar = new ProgressBarBuilder()
                    .setTaskName(task)
                    .setUnit(" " + unit, STEPS_PER_UNIT)
                    .setStyle(ProgressBarStyle.ASCII)
                    .setUpdateIntervalMillis(REDRAW_MS)
                    .build();
        }

        @Override
        public void reached(double done, double total) {
            bar.maxHint(total > 0 ? Math.round(total * STEPS_PER_UNIT) : -1);
            bar.stepTo(Math.round(done * STEPS_PER_UNIT));
        }

        @Override
        public void said(String sentence) {
            bar.setExtraMessage(sentence);
        }

        @Override
        public void close() {
            bar.close();
        }
    }

    /** A plain line whenever another quarter is done, or another minute where the length is not known. */
    final class Lines implements WorkProgress {
        private static final double LEAST_STEP = 5;
        private static final double UNKNOWN_STEP = 60;
        private final PrintWriter err;
        private final String task;
        private final String unit;
        private double said;

        Lines(PrintWriter err, String task, String unit) {
            this.err = err;
            this.task = task;
            this.unit = unit;
        }

        @Override
        public void reached(double done, double total) {
            double step = total > 0 ? Math.max(total / 4, LEAST_STEP) : UNKNOWN_STEP;
            if (done < said + step) {
                return;
            }
            said = done;
            String ofAll = total > 0 ? String.format(Locale.ROOT, " of %.0f %s", total, unit) : "";
            err.println(String.format(Locale.ROOT, "%s: %.0f", task, done) + (total > 0 ? ofAll : " " + unit));
            err.flush();
        }

        @Override
        public void said(String sentence) {
            err.println(sentence);
            err.flush();
        }

        @Override
        public void close() {}
    }
}
