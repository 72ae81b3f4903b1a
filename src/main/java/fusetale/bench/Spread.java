package fusetale.bench;

import fusetale.circuit.Circuit;
import fusetale.circuit.Mains;
import fusetale.mna.NotSolved;
import fusetale.mna.Solved;
import fusetale.mna.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;
import org.jspecify.annotations.Nullable;

/**
 * What a healthy machine may show: for each check the range from low to high.
 *
 * <p>Three causes, two ways of adding them. The mains is one number common to all readings and known to sit anywhere in its
 * range: it counts at its worst, so the machine is solved at the low end, at nominal and at the high end of it. The
 * tolerances of the parts are many and independent: {@link Settings#draws} machines are drawn, each value uniform within
 * its tolerance, and the standard deviation s of each reading is taken, at nominal mains. The meter's own accuracy w is one
 * more independent cause. Together, with m over the three mains voltages,
 *
 * <pre>low = min m − √((2s)² + w²)      high = max m + √((2s)² + w²)</pre>
 *
 * 2s because about 95 of 100 machines lie within it (root sum of squares: JCGM 100:2008, 5.1.2; mains at its limits: a worst
 * case). With 24 draws s is known to about ±15 %.
 *
 * <p>All looks run side by side on the machine's cores. Cost: draws + 3 looks, each starting from the nominal state. What the
 * meter's load takes away is worked out for the nominal machine only, and taken off the others in the same proportion. With
 * the power off there is no mains to vary: draws + 1 looks.
 *
 * @param nominal what the machine shows with every value as printed and the mains at the arrangement's voltage
 * @param ranges one a check, in their order
 */
public record Spread(Seen nominal, List<Range> ranges) {
    /** Copies the list. */
    public Spread {
        ranges = List.copyOf(ranges);
    }

    /** Whether a healthy machine makes the meter show OL. */
    public enum Over {
        /** No healthy machine does. */
        NEVER,
        /** Some do, some do not. */
        SOMETIMES,
        /** All do. */
        ALWAYS
    }

    /**
     * Where a healthy machine's reading lies.
     *
     * @param check what is measured
     * @param low lower end, SI; 0 where all are OL
     * @param high upper end, SI; 0 where all are OL
     * @param over whether OL is among them
     */
    public record Range(Check check, double low, double high, Over over) {
        /** Whether a reading is one that a healthy machine may show. */
        public boolean holds(Reading reading) {
            if (reading.overRange()) {
                return over != Over.NEVER;
            }
            return over != Over.ALWAYS && reading.value() >= low && reading.value() <= high;
        }
    }

    /**
     * How many machines to draw, and from which seed.
     *
     * @param draws number of machines, 2 or more
     * @param seed the same seed gives the same machines
     */
    public record Settings(int draws, long seed) {
        /** 24 draws: a standard deviation to about ±15 %. */
        public static final Settings USUAL = new Settings(24, 1);

        /** Refuses too few draws for a standard deviation. */
        public Settings {
            if (draws < 2) {
                throw new IllegalArgumentException(draws + " draws; a spread needs 2 or more");
            }
        }
    }

    /**
     * Computes the spread.
     *
     * @param circuit the healthy machine
     * @param bench the same on the bench; belongs to the calling thread
     * @param near a look at the same or a neighbouring machine to start from
     * @param checks what to measure; none that {@link Bench#refusal} refuses
     * @param progress told from 0 to 1, never less than before, from several threads but never from two at once
     * @param stopped asked now and then; true ends the work with {@link NotSolved.Kind#STOPPED}
     * @throws UnfitArrangement where the arrangement names what the circuit does not have
     */
    public static Solved<Spread> of(
            Circuit circuit,
            Bench bench,
            @Nullable Seen near,
            List<Check> checks,
            Settings settings,
            DoubleConsumer progress,
            BooleanSupplier stopped)
            throws UnfitArrangement {
        Solved<Seen> nominal = bench.look(checks, near, stopped);
        if (!(nominal instanceof Solved.Found<Seen> found)) {
            return new Solved.Failed<>(((Solved.Failed<Seen>) nominal).reason());
        }
        Seen loaded = found.value();
        Solved<Seen> plain =
                bench.arrangement().powerOn() ? bench.glance(loaded, checks, stopped) : new Solved.Found<>(loaded);
        if (!(plain instanceof Solved.Found<Seen> bare)) {
            return new Solved.Failed<>(((Solved.Failed<Seen>) plain).reason());
        }
        return new Drawing(circuit, bench, loaded, progress, stopped).spread(settings, bare.value());
    }

    /** The work in hand. */
    private static final class Drawing {
        private final Circuit circuit;
        private final Bench bench;
        private final Seen nominal;
        private final DoubleConsumer progress;
        private final BooleanSupplier stopped;
        private final List<Sample> samples = new ArrayList<>();

        Drawing(Circuit circuit, Bench bench, Seen nominal, DoubleConsumer progress, BooleanSupplier stopped) {
            this.circuit = circuit;
            this.bench = bench;
            this.nominal = nominal;
            this.progress = progress;
            this.stopped = stopped;
        }

        Solved<Spread> spread(Settings settings, Seen bare) throws UnfitArrangement {
            for (int k = 0; k < nominal.readings().size(); k++) {
                samples.add(
                        new Sample(nominal.readings().get(k), bare.readings().get(k)));
            }
            List<Variant> variants = variants(settings);
            Told told = new Told(progress, variants.size() + 1);
            // each look stands alone and is added in its own turn: any number of threads gives the same figures
            List<Solved<Seen>> looks = variants.parallelStream()
                    .map(variant -> {
                        Solved<Seen> look = look(variant);
                        told.oneMore();
                        return look;
                    })
                    .toList();
            for (int v = 0; v < variants.size(); v++) {
                if (!(looks.get(v) instanceof Solved.Found<Seen> found)) {
                    return new Solved.Failed<>(((Solved.Failed<Seen>) looks.get(v)).reason());
                }
                for (int k = 0; k < samples.size(); k++) {
                    samples.get(k)
                            .add(
                                    found.value().readings().get(k),
                                    bench.meter(),
                                    variants.get(v).worstCase());
                }
            }
            return new Solved.Found<>(
                    new Spread(nominal, samples.stream().map(Sample::range).toList()));
        }

        /** A machine to look at: another mains voltage counts at its worst, other parts as one draw of many. */
        private record Variant(Bench bench, boolean worstCase) {}

        private List<Variant> variants(Settings settings) throws UnfitArrangement {
            List<Variant> variants = new ArrayList<>();
            for (double volts : mainsEnds()) {
                Arrangement end = bench.arrangement().withMainsVolts(volts);
                variants.add(new Variant(Bench.of(circuit, end, bench.meter()), true));
            }
            SplittableRandom seeds = new SplittableRandom(settings.seed());
            for (int k = 0; k < settings.draws(); k++) {
                Circuit drawn = new Drawn(seeds.split()).circuit(circuit);
                variants.add(new Variant(Bench.of(drawn, bench.arrangement(), bench.meter()), false));
            }
            return variants;
        }

        private Solved<Seen> look(Variant variant) {
            List<Check> checks = nominal.readings().stream().map(Reading::check).toList();
            return variant.bench().lookWithoutLoad(checks, nominal, stopped);
        }

        /** The ends of the mains range, moved with the arrangement's voltage where that is not the nominal one. */
        private List<Double> mainsEnds() {
            if (!bench.arrangement().powerOn()) {
                return List.of();
            }
            Mains mains = circuit.mains();
            double moved = bench.arrangement().mainsVolts() / mains.volts().si();
            return List.of(
                    mains.lowestVolts().si() * moved, mains.highestVolts().si() * moved);
        }
    }

    /** All that was seen of one check. */
    private static final class Sample {
        private final Reading nominal;
        private final double kept;
        private double lowest = Double.POSITIVE_INFINITY;
        private double highest = Double.NEGATIVE_INFINITY;
        private int draws;
        private double mean;
        private double squares;
        private boolean someOver;
        private boolean someShown;

        Sample(Reading nominal, Reading bare) {
            this.nominal = nominal;
            this.kept = bare.value() == 0 ? 1 : nominal.value() / bare.value();
            take(nominal, true);
        }

        /** A reading of another machine without the meter's load, which then takes its share. */
        void add(Reading reading, Meter meter, boolean worstCase) {
            boolean volts = reading.check().function().ofVolts();
            take(volts ? meter.voltsReading(reading.check(), reading.value() * kept) : reading, worstCase);
        }

        private void take(Reading reading, boolean worstCase) {
            if (reading.overRange()) {
                someOver = true;
                return;
            }
            someShown = true;
            double value = reading.value();
            if (worstCase) {
                lowest = Math.min(lowest, value);
                highest = Math.max(highest, value);
                return;
            }
            // running mean and sum of squares (B. P. Welford, Technometrics 4(3), 1962)
            draws++;
            double off = value - mean;
            mean += off / draws;
            squares += off * (value - mean);
        }

        Range range() {
            if (!someShown) {
                return new Range(nominal.check(), 0, 0, Over.ALWAYS);
            }
            double deviation = draws < 2 ? 0 : Math.sqrt(squares / (draws - 1));
            double half = Math.hypot(2 * deviation, nominal.halfWidth());
            // where only drawn machines gave a figure, theirs is the middle
            double low = lowest <= highest ? lowest : mean;
            double high = lowest <= highest ? highest : mean;
            return new Range(nominal.check(), low - half, high + half, someOver ? Over.SOMETIMES : Over.NEVER);
        }
    }

    /** Cost and quality of the nominal state. */
    public Work work() {
        return nominal.work();
    }

    /** Counts looks and tells of each in turn. */
    private static final class Told {
        private final DoubleConsumer progress;
        private final int of;
        private int done = 1;

        Told(DoubleConsumer progress, int of) {
            this.progress = progress;
            this.of = of;
        }

        synchronized void oneMore() {
            progress.accept((double) ++done / of);
        }
    }
}
