package tuttarco.align;

import java.nio.file.Path;
import java.util.*;
import java.util.function.DoubleUnaryOperator;
import tuttarco.beats.*;
import tuttarco.score.Part;

class CarryTrial {
    public static void main(String[] args) throws Exception {
        Path dir = Path.of(args[0]);
        int[][] set = {{1, 1}, {12, 12}, {1, 12}, {12, 1}, {6, 6}, {3, 8}};
        double[][] noise = {{-30, -30}, {-30, -10}, {-10, -10}, {0, -20}, {-5, -5}, {-20, 0}};
        double[] tempo = {0.6, 0.5, 0.8, 0.45, 0.7, 1.0};
        double[] a4 = {440, 431, 447, 443, 440, 436};
        List<Double> all = new ArrayList<>(), ratio = new ArrayList<>();
        for (int k = 0; k < set.length; k++) {
            Part part = Section.tune(900 + k, 20);
            DoubleUnaryOperator ta = Section.swaying(2, 0.6);
            double q = tempo[k];
            int kk = k;
            DoubleUnaryOperator tb = x -> 3 + q * (x + 1.5 * Math.sin(x / 6 + kk));
            Path a = dir.resolve("a" + k + ".wav"), b = dir.resolve("b" + k + ".wav");
            if (!a.toFile().exists()) {
            write(part, ta, set[k][0], 440, noise[k][0], 50 + k, a);
            write(part, tb, set[k][1], a4[k], noise[k][1], 150 + k, b); }
            List<Beat> known = new ArrayList<>();
            for (int i = 0; i < 80; i++)
                known.add(new Beat("" + (i / 4 + 1), i % 4 + 1, ta.applyAsDouble(i) + 0.025, OptionalDouble.of(0), "list"));
            long t = System.nanoTime();
            try {
            Listening.Heard h = new CarriedBeats(() -> new BeatMap(known), a, b).heard();
            double[] e = h.beats().beats().stream().mapToDouble(x -> x.timeS() - tb.applyAsDouble(4 * (Integer.parseInt(x.bar()) - 1) + x.beat() - 1) - 0.025).toArray();
            double[] r = new double[e.length];
            for (int i = 0; i < e.length; i++) { r[i] = Math.abs(e[i]) / h.beats().beats().get(i).stderrS().getAsDouble(); ratio.add(r[i]); all.add(1000*Math.abs(e[i])); }
            double bias = Arrays.stream(e).average().orElse(0) * 1000;
            double[] s = Arrays.stream(e).map(x -> 1000 * Math.abs(x)).sorted().toArray();
            System.out.printf("%s n=%d median %.0f 90%% %.0f max %.0f bias %.0f within2 %.2f %s %s %.1fs%n", Arrays.toString(set[k]), s.length, s[s.length / 2], s[s.length * 9 / 10], s[s.length - 1], bias, Arrays.stream(r).filter(x -> x <= 2).count() / (double) r.length, h.passages(), h.leftOut(), (System.nanoTime() - t) / 1e9);
            } catch (tuttarco.files.InputException e) { System.out.println(k + " " + e.getMessage()); }
        }
        Collections.sort(all); Collections.sort(ratio);
        int n = all.size();
        System.out.printf("ALL n=%d median %.1f 90%% %.1f 97%% %.1f  ratio68 %.2f ratio95 %.2f%n", n, all.get(n/2), all.get(n*9/10), all.get(n*97/100), ratio.get(n*68/100), ratio.get(n*95/100));
    }

    static void write(Part part, DoubleUnaryOperator t, int players, double a4, double noiseDb, long seed, Path to) throws Exception {
        float[] rec = new float[(int) ((t.applyAsDouble(80) + 2) * Section.RATE)];
        Section s = new Section(seed, players, a4);
        s.play(part, 0, 20, t, rec);
        s.noise(rec, noiseDb);
        Section.write(rec, to);
    }
}
