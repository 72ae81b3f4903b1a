package fusetale.studies;

import fusetale.bench.Arrangement;
import fusetale.bench.Bench;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.bench.MeterRange;
import fusetale.bench.Reading;
import fusetale.bench.Seen;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.BenchSetting;
import fusetale.circuit.Capacitor;
import fusetale.circuit.Circuit;
import fusetale.circuit.MeterFunction;
import fusetale.circuit.Part;
import fusetale.circuit.Resistor;
import fusetale.circuit.TestPoint;
import fusetale.quantity.Toleranced;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * How often readings of the Sallen-Key band-pass name the right one of the nine fault classes of the literature (references
 * in {@code src/site/markdown/studies/filter-benchmark.md}): nothing wrong, and C1, C2, R2, R3 each too large or too small.
 * All other parts are drawn evenly within their tolerance; truths and what guesses learn from are drawn from different
 * seeds. Readings are a.c. volts at the output in every arrangement of the circuit's file, once exact, as in the
 * literature, and once with the error and the digits of a meter.
 */
public final class FilterBenchmark {
    private static final int READ_AGAIN = 7919;
    private static final double AXIS_VOLTS = 0.05;

    private final Circuit circuit;
    private final List<Arrangement> arrangements;
    private final Meter meter = Meter.trueRms4000();
    private final Check check;

    private FilterBenchmark(Circuit circuit) throws UnfitArrangement {
        this.circuit = circuit;
        this.arrangements = new ArrayList<>();
        for (BenchSetting setting : circuit.settings()) {
            arrangements.add(Arrangement.of(circuit, setting));
        }
        TestPoint out = circuit.points().get(circuit.points().size() - 1);
        this.check = new Check(out.name(), out.against().name(), MeterFunction.AC_VOLTS);
    }

    /**
     * A class of faults.
     *
     * @param name {@code C1 up}; of the first, {@code nothing wrong}
     * @param part whose value is off; empty for none
     * @param low lowest ratio of its value to nominal
     * @param high highest ratio
     */
    record FaultClass(String name, String part, double low, double high) {}

    /** One drawn circuit. */
    static final class Truth {
        private final int of;
        private final double[] volts;

        /**
         * A circuit of a class.
         *
         * @param of index of its class
         * @param volts at every frequency [V]. Kept.
         */
        Truth(int of, double[] volts) {
            this.of = of;
            this.volts = volts;
        }

        /** Index of its class. */
        int of() {
            return of;
        }

        /** At every frequency [V]. Not to be modified. */
        double[] volts() {
            return volts;
        }

        /** The same at some of the frequencies only. */
        Truth at(int... kept) {
            return new Truth(of, Arrays.stream(kept).mapToDouble(k -> volts[k]).toArray());
        }
    }

    /** Names a class from readings. */
    interface Guess {
        /** What to call it in the table. */
        String name();

        /**
         * The index of the class; -1 for none of them.
         *
         * @param volts as read at every frequency [V]. Not modified.
         * @param sigmas standard deviation of what the meter adds [V]. Not modified.
         */
        int of(double[] volts, double[] sigmas);
    }

    /**
     * Prints hit rates.
     *
     * @param args circuit file; truths a class; draws a class to learn from; seed of the truths; how many of the truths of
     *     a class are put to the program's own matcher
     * @throws UnfitArrangement where an arrangement of the file does not fit its circuit
     */
    public static void main(String... args) throws UnfitArrangement {
        String file = args.length > 0 ? args[0] : "benchmarks/sallen-key-a.yaml";
        int truths = args.length > 1 ? Integer.parseInt(args[1]) : 100;
        int draws = args.length > 2 ? Integer.parseInt(args[2]) : 128;
        long seed = args.length > 3 ? Long.parseLong(args[3]) : 1;
        int matched = args.length > 4 ? Integer.parseInt(args[4]) : 0;
        FilterBenchmark study = new FilterBenchmark(Shipped.read(file));
        System.out.printf(
                Locale.ROOT,
                "%s: %d truths and %d draws a class, %d frequencies, seed %d%n",
                study.circuit.name(),
                truths,
                draws,
                study.arrangements.size(),
                seed);
        study.set("classical: ±50 %", classes(0.5, 0.5, 1.5, 1.5), truths, draws, seed, matched);
        study.set("wide: +50..+100 %, -50..-80 %", classes(0.2, 0.5, 1.5, 2), truths, draws, seed, matched);
    }

    private static List<FaultClass> classes(double lowest, double low, double high, double highest) {
        List<FaultClass> all = new ArrayList<>();
        all.add(new FaultClass("nothing wrong", "", 1, 1));
        for (String part : List.of("C1", "C2", "R2", "R3")) {
            all.add(new FaultClass(part + " up", part, high, highest));
            all.add(new FaultClass(part + " down", part, lowest, low));
        }
        return all;
    }

    private void set(String name, List<FaultClass> classes, int truths, int draws, long seed, int matched) {
        long begun = System.nanoTime();
        List<Truth> asked = draw(classes, truths, new Random(seed));
        List<Truth> known = draw(classes, draws, new Random(seed + READ_AGAIN));
        List<double[]> nominal = new ArrayList<>();
        for (FaultClass each : classes) {
            nominal.add(volts(with(each, Math.sqrt(each.low() * each.high()), circuit)));
        }
        System.out.printf(
                Locale.ROOT,
                "%n%s (%d circuits solved in %.0f s)%n",
                name,
                asked.size() + known.size() + nominal.size(),
                (System.nanoTime() - begun) * 1e-9);
        match(classes, asked, truths, seed, matched);
        int all = arrangements.size();
        for (int[] kept :
                List.of(IntStream.range(0, all).toArray(), new int[] {1, all / 2, all - 2}, new int[] {all / 2})) {
            System.out.println("read "
                    + String.join(
                            ", ",
                            Arrays.stream(kept)
                                    .mapToObj(k -> arrangements.get(k).name())
                                    .toList()));
            List<double[]> table =
                    nominal.stream().map(v -> new Truth(0, v).at(kept).volts()).toList();
            List<Truth> learnt = known.stream().map(t -> t.at(kept)).toList();
            List<Truth> read = asked.stream().map(t -> t.at(kept)).toList();
            for (Guess guess : List.of(new NearestNominal(table), GaussianOfDraws.of(learnt, classes.size()))) {
                tell(guess, classes, read, null);
                tell(guess, classes, read, new Random(seed));
            }
        }
    }

    /** The first {@code matched} truths of each class. */
    private void match(List<FaultClass> classes, List<Truth> asked, int truths, long seed, int matched) {
        if (matched == 0) {
            return;
        }
        long begun = System.nanoTime();
        List<Truth> some = IntStream.range(0, asked.size())
                .filter(k -> k % truths < matched)
                .mapToObj(asked::get)
                .toList();
        tell(new MatcherGuess(circuit, meter, arrangements, check, classes), classes, some, new Random(seed));
        System.out.printf(
                Locale.ROOT, "    %d truths matched in %.0f s%n", some.size(), (System.nanoTime() - begun) * 1e-9);
    }

    /** {@code misreading}: draws the meter's error; null for readings without any. */
    private void tell(Guess guess, List<FaultClass> classes, List<Truth> asked, @Nullable Random misreading) {
        int none = classes.size();
        int[][] confusion = new int[none][none + 1];
        int parts = 0;
        for (Truth truth : asked) {
            double[] sigmas = new double[truth.volts().length];
            double[] read = truth.volts().clone();
            for (int k = 0; k < read.length && misreading != null; k++) {
                Shown shown = shown(read[k], misreading);
                read[k] = shown.volts();
                sigmas[k] = shown.sigma();
            }
            int guessed = guess.of(read, sigmas);
            confusion[truth.of()][guessed < 0 ? none : guessed]++;
            parts += guessed >= 0
                            && classes.get(truth.of())
                                    .part()
                                    .equals(classes.get(guessed).part())
                    ? 1
                    : 0;
        }
        int hits = 0;
        for (int k = 0; k < classes.size(); k++) {
            hits += confusion[k][k];
        }
        System.out.printf(
                Locale.ROOT,
                "%-28s %-16s class %6.2f %%  part %6.2f %%%n",
                guess.name(),
                misreading == null ? "exact readings" : "with a meter",
                100.0 * hits / asked.size(),
                100.0 * parts / asked.size());
        for (int k = 0; k < classes.size(); k++) {
            StringBuilder missed = new StringBuilder();
            for (int g = 0; g <= none; g++) {
                if (g != k && confusion[k][g] > 0) {
                    missed.append(missed.isEmpty() ? "" : ", ")
                            .append(g == none ? "none of them" : classes.get(g).name())
                            .append(' ')
                            .append(confusion[k][g]);
                }
            }
            if (!missed.isEmpty()) {
                System.out.println("    " + classes.get(k).name() + " taken for: " + missed);
            }
        }
    }

    /** What a meter shows, and the standard deviation of an even error within its accuracy (GUM, type B). */
    private record Shown(double volts, double sigma) {}

    private Shown shown(double volts, Random random) {
        MeterRange range = meter.alternatingRanges().stream()
                .filter(r -> r.holds(volts))
                .findFirst()
                .orElse(meter.alternatingRanges().get(meter.alternatingRanges().size() - 1));
        double off = volts + range.halfWidth(volts) * (2 * random.nextDouble() - 1);
        double read = Math.rint(off / range.resolution()) * range.resolution();
        return new Shown(read, range.halfWidth(read) / Math.sqrt(3));
    }

    private List<Truth> draw(List<FaultClass> classes, int each, Random random) {
        List<Truth> truths = new ArrayList<>();
        for (int k = 0; k < classes.size(); k++) {
            FaultClass of = classes.get(k);
            for (int i = 0; i < each; i++) {
                double ratio = of.low() + (of.high() - of.low()) * random.nextDouble();
                truths.add(new Truth(k, volts(with(of, ratio, drawn(random)))));
            }
        }
        return truths;
    }

    private Circuit drawn(Random random) {
        List<Part> parts = new ArrayList<>();
        for (Part part : circuit.parts()) {
            if (part instanceof Resistor r) {
                parts.add(with(r, ratio(r.ohms(), random)));
            } else if (part instanceof Capacitor c) {
                parts.add(with(c, ratio(c.farads(), random)));
            } else {
                parts.add(part);
            }
        }
        return circuit.withParts(parts);
    }

    private static double ratio(Toleranced value, Random random) {
        double low = value.tolerance().lowRatio();
        return 1 + low + (value.tolerance().highRatio() - low) * random.nextDouble();
    }

    private static Part with(Resistor r, double ratio) {
        return new Resistor(r.name(), r.one(), r.two(), r.ohms().times(ratio), r.ratedWatts(), r.about());
    }

    private static Part with(Capacitor c, double ratio) {
        return new Capacitor(c.name(), c.one(), c.two(), c.farads().times(ratio), c.ratedVolts(), c.about());
    }

    /** A drawn circuit with one part's value at so many times nominal. */
    private Circuit with(FaultClass of, double ratio, Circuit drawn) {
        if (of.part().isEmpty()) {
            return drawn;
        }
        Part nominal = circuit.part(of.part()).orElseThrow();
        return drawn.with(nominal instanceof Resistor r ? with(r, ratio) : with((Capacitor) nominal, ratio));
    }

    private double[] volts(Circuit supposed) {
        double[] volts = new double[arrangements.size()];
        for (int k = 0; k < volts.length; k++) {
            try {
                Bench bench = Bench.of(supposed, arrangements.get(k), meter);
                Seen seen = bench.look(List.of(check), null, () -> false).orElse(reason -> {
                    throw new IllegalStateException(reason.detail());
                });
                Reading reading = seen.readings().get(0);
                volts[k] = reading.value();
            } catch (UnfitArrangement e) {
                throw new IllegalStateException(e);
            }
        }
        return volts;
    }

    /** Volts on an axis on which a share counts alike everywhere: asinh(V/50 mV). */
    static double axis(double volts) {
        double x = volts / AXIS_VOLTS;
        return Math.log(x + Math.sqrt(x * x + 1));
    }

    /** Standard deviation on that axis. */
    static double axisSigma(double volts, double sigma) {
        return sigma / Math.hypot(volts, AXIS_VOLTS);
    }

    /** The class whose nominal circuit comes nearest; what a table of faults made from nominal values can do. */
    private static final class NearestNominal implements Guess {
        private final List<double[]> nominal;

        NearestNominal(List<double[]> nominal) {
            this.nominal = nominal;
        }

        @Override
        public String name() {
            return "nearest nominal";
        }

        @Override
        public int of(double[] volts, double[] sigmas) {
            int best = 0;
            double least = Double.POSITIVE_INFINITY;
            for (int k = 0; k < nominal.size(); k++) {
                double sum = 0;
                for (int j = 0; j < volts.length; j++) {
                    double d = axis(volts[j]) - axis(nominal.get(k)[j]);
                    sum += d * d;
                }
                if (sum < least) {
                    least = sum;
                    best = k;
                }
            }
            return best;
        }
    }
}
