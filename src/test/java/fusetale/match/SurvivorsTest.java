package fusetale.match;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.bench.Observation;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.circuit.MeterFunction;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * What is still likely once it was read whether a fuse melted that may melt or hold: a fuse that is too big, with a leg of the bridge
 * shorted behind it. The judge is logic: a reading taken with its leads the other way round says nothing new of a wire.
 */
class SurvivorsTest {
    private static final Circuit BOARD = Objects.requireNonNull(CircuitReader.withShippedParts()
            .read(Path.of("circuits/first-light.yaml"))
            .circuit());

    private Workbench bench;

    @BeforeEach
    void layOut() {
        List<Hypothesis> all = Hypotheses.of(BOARD);
        List<Hypothesis> some = all.stream()
                .filter(h -> h.usual().isNothing() || isBlown(h) || isTooBigBeforeAShort(h))
                .toList();
        bench = new Workbench(BOARD, Meter.trueRms4000(), 2, 4, 1, some);
    }

    private static boolean isBlown(Hypothesis h) {
        List<Fault> faults = h.usual().faults();
        return faults.size() == 1 && faults.get(0).mode() == FailureMode.BLOWN;
    }

    private static boolean isTooBigBeforeAShort(Hypothesis h) {
        List<Fault> faults = h.usual().faults();
        return faults.size() == 2
                && faults.get(0).mode() == FailureMode.WRONG_RATING
                && faults.get(1).mode() == FailureMode.SHORT
                && faults.get(1).part().equals("BR1");
    }

    /** Twice the same: no slip. */
    private static List<Evidence> acrossTheFuse(Shown shown) {
        Evidence once = new Evidence(across("F1.one", "F1.two"), shown);
        return List.of(once, once);
    }

    private static Ask across(String from, String to) {
        return new Ask.Metered(Arrangement.unpowered(), new Check(from, to, MeterFunction.OHMS));
    }

    private Survivors after(List<Evidence> found) throws Exception {
        Case all = Case.of(Findings.of(found));
        bench.dictionary()
                .prepare(
                        Arrangement.unpowered(),
                        List.of(
                                new Check("F1.one", "F1.two", MeterFunction.OHMS),
                                new Check("F1.two", "F1.one", MeterFunction.OHMS)),
                        () -> false);
        List<Arrangement> arrangements = bench.prepare(all, () -> false);
        bench.work(bench.boards().list(), List.of(Arrangement.unpowered()), all, () -> false);
        bench.work(bench.boards().list(), arrangements, all, () -> false);
        return new Survivors(bench, bench.weigh(all));
    }

    private static double again(Survivors alive) {
        return alive.lumped(across("F1.two", "F1.one")).gain();
    }

    @Test
    void aFuseThatMayHaveMeltedIsAskedForUntilItWasRead() throws Exception {
        Survivors before = after(List.of());

        assertThat(before.places())
                .anyMatch(p -> p.way() == Way.OTHERWISE && p.share() > 0.01)
                .anyMatch(p -> p.way() == Way.AS_TAKEN && p.share() > 0.01);
        assertThat(again(before)).isGreaterThan(0.5);
    }

    /** The 39.7 kohm past the melted wire are the program's own. */
    @Test
    void aFuseThatWasReadAsMeltedIsNotAskedForAgain() throws Exception {
        Survivors gone = after(acrossTheFuse(new Shown.Figure(39.7e3)));

        assertThat(share(gone, /* otherwise= */ true)).isGreaterThan(0.9);
        assertThat(again(gone)).isLessThan(Planner.LEAST_BITS);
    }

    /** The short behind the wire leaves a tenth of an ohm of difference. */
    @Test
    void aFuseThatWasReadAsWholeIsNotAskedForAgain() throws Exception {
        Survivors whole = after(acrossTheFuse(new Shown.Figure(0.1)));

        assertThat(share(whole, /* otherwise= */ true)).isLessThan(0.01);
        assertThat(share(whole, /* otherwise= */ false)).isGreaterThan(0.5);
        assertThat(again(whole)).isLessThan(again(after(List.of())) / 4);
    }

    private double share(Survivors alive, boolean otherwise) {
        return alive.places().stream()
                .filter(p -> !bench.blownOtherwise(p.board()).isEmpty() && (p.way() != Way.AS_TAKEN) == otherwise)
                .mapToDouble(Survivors.Place::share)
                .sum();
    }

    /**
     * Two windings feed one lamp rail, each through a fuse of the same kind and a diode. Either diode the wrong way round shorts both
     * windings through both fuses: whichever melts first saves the other, and which it is nobody can say. So one that is gone speaks for
     * either diode alike.
     */
    @Test
    void ofTwoFusesInOneLoopEitherMayHaveMelted() throws Exception {
        Circuit ferry = Objects.requireNonNull(CircuitReader.withShippedParts()
                .read(Path.of("circuits/night-ferry.yaml"))
                .circuit());
        List<Hypothesis> some = Hypotheses.of(ferry).stream()
                .filter(h -> h.usual().isNothing() || isReversed("D301", h) || isReversed("D302", h))
                .toList();
        Workbench of = new Workbench(ferry, Meter.trueRms4000(), 2, 2, 1, some);
        Case gone = Case.of(Findings.of(List.of(new Evidence(
                new Ask.Noticed(Arrangement.powered(ferry), "F301", Observation.Aspect.FUSE),
                new Shown.Seen(Observation.Sight.WIRE_GONE)))));
        of.work(of.boards().list(), of.prepare(gone, () -> false), gone, () -> false);

        Map<Repair, Double> repairs = of.weigh(gone).posterior().repairs(of.boards());

        double one = repairs.getOrDefault(new Repair(List.of("D301")), 0.0);
        double other = repairs.getOrDefault(new Repair(List.of("D302")), 0.0);
        assertThat(one + other).isGreaterThan(0.5);
        assertThat(one / other).isBetween(0.8, 1.25);
    }

    private static boolean isReversed(String part, Hypothesis h) {
        List<Fault> faults = h.usual().faults();
        return faults.size() == 1
                && faults.get(0).part().equals(part)
                && faults.get(0).mode() == FailureMode.REVERSED;
    }
}
