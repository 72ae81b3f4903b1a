package fusetale.explore;

import fusetale.bench.Check;
import fusetale.bench.Reading;
import fusetale.bench.Seen;
import fusetale.bench.UnfitArrangement;
import fusetale.fault.Supposition;
import fusetale.fault.UnfitSupposition;
import fusetale.mna.Solved;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * Readings that follow a hand: one supposition after another, each near the one before. Fuses melt as in a whole answer; the
 * meter's load is left out, and so is everything but readings. Each starts from where the one before settled. Belongs to one
 * thread.
 */
public final class Glances {
    private final Prepared prepared;
    private @Nullable Seen last;

    /** Glances at the machine of a prepared question. */
    public Glances(Prepared prepared) {
        this.prepared = prepared;
    }

    /** What was prepared. */
    public Prepared prepared() {
        return prepared;
    }

    /**
     * The readings with one supposition, as built beside as supposed, in the order of the prepared question's checks.
     *
     * @param wanted which of the prepared question's checks; others are left out
     * @param stopped asked now and then; true ends the work
     * @return empty where it was stopped, or there are none at a glance
     */
    public Optional<Glance> at(Supposition supposition, Set<Check> wanted, BooleanSupplier stopped) {
        Question question = prepared.question().supposing(supposition);
        Baseline baseline = prepared.baseline();
        List<Integer> places = new ArrayList<>();
        List<Check> checks = new ArrayList<>();
        for (int k = 0; k < question.checks().size(); k++) {
            if (wanted.contains(question.checks().get(k))) {
                places.add(k);
                checks.add(question.checks().get(k));
            }
        }
        try {
            Machine machine = Machine.of(question.healthy(), question.arrangement(), supposition);
            Set<String> open = Fates.openFromTheStart(question.arrangement(), supposition);
            Seen near = last == null ? baseline.near() : last;
            if (!(Settled.of(machine, question.meter(), near, open, stopped) instanceof Solved.Found<Settled> found)) {
                return Optional.empty();
            }
            Settled settled = found.value();
            last = settled.seen();
            List<Check> here = settled.machine().checksHere(checks, baseline.asArranged());
            if (!(settled.bench().glance(settled.seen(), here, stopped) instanceof Solved.Found<Seen> seen)) {
                return Optional.empty();
            }
            List<Reading> readings = Readings.of(checks, seen.value()).readings();
            List<Compared> compared = new ArrayList<>();
            for (int k = 0; k < checks.size(); k++) {
                int place = places.get(k);
                compared.add(Compared.of(
                        baseline.seen().readings().get(place),
                        readings.get(k),
                        HealthyRange.of(baseline.spread().ranges().get(place))));
            }
            return Optional.of(new Glance(supposition, compared));
        } catch (UnfitArrangement | UnfitSupposition e) {
            return Optional.empty();
        }
    }
}
