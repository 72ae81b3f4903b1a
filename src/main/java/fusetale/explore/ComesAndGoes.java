package fusetale.explore;

import fusetale.bench.Bench;
import fusetale.bench.Check;
import fusetale.bench.Reading;
import fusetale.bench.Seen;
import fusetale.bench.UnfitArrangement;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import fusetale.fault.Supposition;
import fusetale.fault.UnfitSupposition;
import fusetale.mna.Solved;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;

/**
 * A reading that comes and goes with a contact that sometimes touches: a loose clip, a loose pin, a cracked joint.
 *
 * @param good while the contact is good
 * @param bad while it is as bad as supposed
 */
public record ComesAndGoes(Reading good, Reading bad) {
    private static final Set<FailureMode> CONTACTS = EnumSet.of(FailureMode.LOOSE, FailureMode.CRACKED_JOINT);

    /** What was measured. */
    public Check check() {
        return good.check();
    }

    private static boolean isContact(Fault fault) {
        return CONTACTS.contains(fault.mode());
    }

    /**
     * Every reading of a question that differs between a contact that is good and one that is as supposed; none where the
     * supposition has no such contact. Faults that do not come and go hold in both, and so do swaps.
     *
     * @param bad readings as supposed, in the order of the checks
     */
    static Solved<List<ComesAndGoes>> of(
            Question question, Baseline baseline, List<Reading> bad, BooleanSupplier stopped)
            throws UnfitArrangement, UnfitSupposition {
        List<Fault> faults = question.supposition().faults();
        if (faults.stream().noneMatch(ComesAndGoes::isContact)) {
            return new Solved.Found<>(List.of());
        }
        List<Fault> steady = faults.stream().filter(f -> !isContact(f)).toList();
        Supposition rest = new Supposition(steady, question.supposition().swaps());
        Solved<List<Reading>> touching = rest.isNothing()
                ? new Solved.Found<>(baseline.seen().readings())
                : readings(question.supposing(rest), baseline, stopped);
        if (!(touching instanceof Solved.Found<List<Reading>> good)) {
            return new Solved.Failed<>(Baseline.reason(touching));
        }
        List<ComesAndGoes> moving = new ArrayList<>();
        for (int k = 0; k < bad.size(); k++) {
            Reading one = good.value().get(k).of(bad.get(k).check());
            if (!one.alike(bad.get(k))) {
                moving.add(new ComesAndGoes(one, bad.get(k)));
            }
        }
        return new Solved.Found<>(moving);
    }

    private static Solved<List<Reading>> readings(Question question, Baseline baseline, BooleanSupplier stopped)
            throws UnfitArrangement, UnfitSupposition {
        Machine machine = Machine.of(question.healthy(), question.arrangement(), question.supposition());
        Set<String> open = Fates.openFromTheStart(question.arrangement(), question.supposition());
        Solved<Settled> settling = Settled.shown(machine, question.meter(), baseline.near(), open, stopped);
        if (!(settling instanceof Solved.Found<Settled> found)) {
            return new Solved.Failed<>(Baseline.reason(settling));
        }
        Bench bench = found.value().bench();
        List<Check> here = found.value().machine().checksHere(question.checks(), baseline.asArranged());
        Solved<Seen> looking = bench.read(found.value().seen(), here, stopped);
        if (!(looking instanceof Solved.Found<Seen> seen)) {
            return new Solved.Failed<>(Baseline.reason(looking));
        }
        return new Solved.Found<>(seen.value().readings());
    }
}
