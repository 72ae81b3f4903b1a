package fusetale.explore;

import fusetale.bench.Arrangement;
import fusetale.bench.Bench;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.bench.Observation;
import fusetale.bench.Observations;
import fusetale.bench.Seen;
import fusetale.bench.UnfitArrangement;
import fusetale.fault.Supposition;
import fusetale.fault.UnfitSupposition;
import fusetale.mna.Solved;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What one faulty machine shows, solved whole, with the meter's load as it is: none of the short cuts by which {@link
 * Foretelling} fills a dictionary.
 */
public final class Simulated {
    private final Specimen specimen;
    private final Meter meter;
    private @Nullable Seen near;

    /** A machine. */
    public Simulated(Specimen specimen, Meter meter) {
        this.specimen = specimen;
        this.meter = meter;
    }

    /** What it shows; empty where it has no steady state, or the supposition does not fit it. */
    public Optional<Foretold> under(Supposition now, Arrangement plain, List<Check> checks) {
        try {
            Arrangement arrangement = specimen.fed(plain);
            Machine machine = Machine.of(specimen.circuit(), arrangement, now);
            List<Check> here = machine.checksHere(checks, arrangement.appliedTo(specimen.circuit()));
            if (!arrangement.powerOn()) {
                Seen seen = Bench.of(machine.arranged(), machine.bare(), meter)
                        .look(here, null, () -> false)
                        .orElse(reason -> null);
                return Optional.ofNullable(seen).map(s -> told(s, List.of(), arrangement, now, checks));
            }
            Seen from = near;
            Set<String> open = Fates.openFromTheStart(arrangement, now);
            double seconds = Settled.secondsIn(arrangement);
            if (!(Settled.of(machine, meter, from, open, seconds, () -> false)
                    instanceof Solved.Found<Settled> settled)) {
                return Optional.empty();
            }
            near = from == null ? settled.value().seen() : from;
            List<String> melted =
                    settled.value().melted().stream().map(c -> c.fuse().name()).toList();
            List<Check> left = settled.value().machine().checksHere(checks, arrangement.appliedTo(specimen.circuit()));
            return settled.value().bench().read(settled.value().seen(), left, () -> false)
                            instanceof Solved.Found<Seen> read
                    ? Optional.of(told(read.value(), melted, arrangement, now, checks))
                    : Optional.empty();
        } catch (UnfitArrangement | UnfitSupposition e) {
            return Optional.empty();
        }
    }

    private Foretold told(
            Seen seen, List<String> melted, Arrangement arrangement, Supposition now, List<Check> checks) {
        Set<String> absent = Fates.absent(arrangement, now);
        List<Observation> noticed = new ArrayList<>(Observations.of(specimen.circuit(), seen, absent, s -> Map.of()));
        noticed.addAll(Observations.ratings(seen.circuit(), specimen.circuit(), absent));
        return new Foretold(
                Readings.of(checks, seen).readings(),
                noticed,
                melted,
                List.of(),
                List.of(),
                List.of(),
                /* untouched= */ false,
                Set.of());
    }
}
