package fusetale.explore;

import fusetale.aftermath.FuseBand;
import fusetale.aftermath.Melting;
import fusetale.bench.Arrangement;
import fusetale.bench.Bench;
import fusetale.bench.Meter;
import fusetale.bench.Seen;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.Fuse;
import fusetale.circuit.Part;
import fusetale.mna.NotSolved;
import fusetale.mna.Solved;
import fusetale.signal.Waveform;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * A machine after the fuses that melt for certain have melted.
 *
 * <p>The rule: solve; of the fuses whose band ends within {@link FuseFate#CERTAIN_SECONDS} at their r.m.s. current, the one
 * that ends first opens; solve again; until none is left. Fuses that only may melt stay.
 *
 * @param machine with the melted fuses open
 * @param bench on which it was looked at last; belongs to the thread that let it settle
 * @param seen a look at it without readings
 * @param melted fuses that melted, in that order, with the current that melted them
 * @param held what fuses still in place carry and how long they may
 * @param race fuses that may have melted before one that was taken to melt first
 * @param solves solves in all
 * @param first the look before anything melted
 */
record Settled(
        Machine machine,
        Bench bench,
        Seen seen,
        List<Carrying> melted,
        List<Carrying> held,
        Set<String> race,
        long solves,
        Seen first) {
    /**
     * A driver is commanded for as long as a look or a reading takes (judgement): nobody waits with a coil held on until a fuse
     * that is a little overloaded melts.
     */
    private static final double COMMAND_SECONDS = 10;

    /** Copies the lists. */
    Settled {
        melted = List.copyOf(melted);
        held = List.copyOf(held);
        race = Set.copyOf(race);
    }

    /**
     * A fuse and its current.
     *
     * @param fuse as fitted
     * @param amps current over a cycle [A]
     * @param melting when it melts at that
     */
    record Carrying(Fuse fuse, Waveform amps, Melting melting) {
        static Carrying of(Fuse fuse, Waveform amps) {
            return new Carrying(fuse, amps, FuseBand.of(fuse.fitted()).melting(amps.rms()));
        }

        private boolean meltsWithin(double seconds, double share) {
            return FuseBand.of(fuse.fitted()).melting(share * amps.rms()).surelyMeltedAfter(seconds);
        }
    }

    /** The fuse still in place that carries most for what its marking asks for. */
    Optional<Carrying> mostOverloaded() {
        return held.stream()
                .max(Comparator.comparingDouble(
                        c -> c.amps().rms() / c.fuse().marked().ratedAmps().si()));
    }

    /** How long a machine is taken to stay in an arrangement before somebody looks or measures [s]. */
    static double secondsIn(Arrangement arrangement) {
        return arrangement.heldOn().isEmpty() ? FuseFate.CERTAIN_SECONDS : COMMAND_SECONDS;
    }

    /**
     * Lets a machine settle: what is left after {@link FuseFate#CERTAIN_SECONDS}.
     *
     * @param near a neighbouring look to start from
     * @param open fuses that are open from the start
     */
    static Solved<Settled> of(
            Machine start, Meter meter, @Nullable Seen near, Set<String> open, BooleanSupplier stopped)
            throws UnfitArrangement {
        return of(start, meter, near, open, FuseFate.CERTAIN_SECONDS, stopped);
    }

    /**
     * The same, what is left as it is {@link #shown(BooleanSupplier) shown}.
     *
     * @param near a neighbouring look to start from
     * @param open fuses that are open from the start
     */
    static Solved<Settled> shown(
            Machine start, Meter meter, @Nullable Seen near, Set<String> open, BooleanSupplier stopped)
            throws UnfitArrangement {
        Solved<Settled> settling = of(start, meter, near, open, stopped);
        return settling instanceof Solved.Found<Settled> found ? found.value().shown(stopped) : settling;
    }

    /**
     * The same after another time.
     *
     * @param seconds a fuse that melts for certain within these has melted [s]
     */
    static Solved<Settled> of(
            Machine start, Meter meter, @Nullable Seen near, Set<String> open, double seconds, BooleanSupplier stopped)
            throws UnfitArrangement {
        return of(start, meter, near, open, seconds, 1, stopped);
    }

    /**
     * The same where one machine stands for many: what hardly melts in it holds in others.
     *
     * @param seconds a fuse that melts for certain within these has melted [s]
     * @param share of its current, at which it has to melt as well to have melted, over 0 to 1
     */
    static Solved<Settled> of(
            Machine start,
            Meter meter,
            @Nullable Seen near,
            Set<String> open,
            double seconds,
            double share,
            BooleanSupplier stopped)
            throws UnfitArrangement {
        Machine machine = start;
        Seen from = near;
        List<Carrying> melted = new ArrayList<>();
        Set<String> gone = new TreeSet<>(open);
        Set<String> race = new TreeSet<>();
        long solves = 0;
        Seen first = null;
        while (true) {
            Bench bench = Bench.of(machine.arranged(), machine.bare(), meter);
            Solved<Seen> solved = bench.look(List.of(), from, stopped);
            if (!(solved instanceof Solved.Found<Seen> found)) {
                return new Solved.Failed<>(((Solved.Failed<Seen>) solved).reason());
            }
            Seen seen = found.value();
            solves += seen.work().solves();
            first = first == null ? seen : first;
            List<Carrying> carrying = carrying(machine, seen, gone);
            Carrying soonest = carrying.stream()
                    .filter(c -> c.meltsWithin(seconds, share))
                    .min(Comparator.comparingDouble((Carrying c) -> c.melting().maxSeconds())
                            .thenComparing(c -> c.fuse().name()))
                    .orElse(null);
            if (soonest == null) {
                return new Solved.Found<>(new Settled(machine, bench, seen, melted, carrying, race, solves, first));
            }
            for (Carrying other : carrying) {
                if (!other.fuse().name().equals(soonest.fuse().name())
                        && other.melting().minSeconds() < soonest.melting().maxSeconds()) {
                    race.add(other.fuse().name());
                }
            }
            melted.add(soonest);
            gone.add(soonest.fuse().name());
            machine = machine.withBlown(soonest.fuse().name());
            from = seen;
        }
    }

    /**
     * The same with what is left solved once more in the finer steps of figures that are shown; as it is with the power off, and
     * where finer steps lead nowhere.
     *
     * @param stopped asked now and then; true ends the work
     */
    Solved<Settled> shown(BooleanSupplier stopped) {
        if (!bench.arrangement().powerOn()) {
            return new Solved.Found<>(this);
        }
        Bench finer = bench.shown();
        Solved<Seen> solved = finer.look(List.of(), seen, stopped);
        if (!(solved instanceof Solved.Found<Seen> found)) {
            NotSolved reason = ((Solved.Failed<Seen>) solved).reason();
            return reason.kind() == NotSolved.Kind.STOPPED ? new Solved.Failed<>(reason) : new Solved.Found<>(this);
        }
        Seen fine = found.value();
        List<Carrying> carrying = held.stream()
                .map(c -> Carrying.of(c.fuse(), fine.amps(c.fuse().name())))
                .toList();
        return new Solved.Found<>(new Settled(
                machine,
                finer,
                fine,
                melted,
                carrying,
                race,
                solves + fine.work().solves(),
                melted.isEmpty() ? fine : first));
    }

    private static List<Carrying> carrying(Machine machine, Seen seen, Set<String> gone) {
        List<Carrying> carrying = new ArrayList<>();
        for (Part part : machine.arranged().parts()) {
            if (part instanceof Fuse fuse && !gone.contains(fuse.name())) {
                carrying.add(Carrying.of(fuse, seen.amps(fuse.name())));
            }
        }
        return carrying;
    }
}
