package fusetale.match;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Where all seems told: what to ask to be sure. */
final class Refuting {
    /** A reading across a part, or one contact of several, is told from a healthy one's where it lies apart by this much. */
    private static final double OWN_APART = 0.2;
    /** Where the leader shows, it has mostly shown already: so much less than what stands beside it. */
    private static final double REDUNDANT = 0.5;

    /** What the others still likely would refute, beside what is not in the list. */
    private static final double FURTHER = 0.1;

    private final Workbench bench;
    private final Survivors alive;
    private final Case findings;

    Refuting(Workbench bench, Survivors alive, Case findings) {
        this.bench = bench;
        this.alive = alive;
        this.findings = findings;
    }

    /**
     * What would show that the leader is not it. Best is a reading across its own part, since what looks like it may lie anywhere else
     * and be no supposition of the list; else across what stands beside it, or one where it looks most unlike a machine with
     * nothing wrong; else one that parts it from the others. Null where nothing is left to ask.
     */
    @Nullable
    Scored best(List<Scored> scored) {
        if (scored.isEmpty() || alive.groups().isEmpty()) {
            return scored.isEmpty() ? null : scored.get(0);
        }
        List<String> leading = alive.groups().get(alive.leader()).parts();
        Set<Check> own = new HashSet<>();
        leading.forEach(part -> own.addAll(bench.asks().across(part)));
        Map<Check, Double> beside = bench.beside().of(leading, taken());
        Scored best = scored.get(0);
        double most = 0;
        for (Scored s : scored) {
            double apart = alive.leaderApart(s.ask());
            double refutes = REDUNDANT * apart;
            if (s.ask() instanceof Ask.Metered m) {
                refutes += own.contains(m.check()) && apart >= OWN_APART ? 2 : 0;
                if (m.arrangement().equals(Arrangement.unpowered())) {
                    refutes = Math.max(refutes, beside.getOrDefault(m.check(), 0.0));
                }
            }
            refutes += FURTHER * refutes(s.lumped());
            if (refutes > most) {
                most = refutes;
                best = s;
            }
        }
        return best;
    }

    /** What was measured with the power off. */
    private Set<Check> taken() {
        Set<Check> taken = new HashSet<>();
        for (Evidence e : findings.evidence()) {
            if (e.ask() instanceof Ask.Metered m && m.arrangement().equals(Arrangement.unpowered())) {
                taken.add(m.check());
            }
        }
        return taken;
    }

    /** How likely an ask is to refute the leader: how likely the others are, and how differently they look there. */
    private double refutes(Foresight foresight) {
        int leader = foresight.place(alive.groups().get(alive.leader()));
        double most = 0;
        for (int g = 0; g < foresight.groups().size(); g++) {
            if (g != leader) {
                double share = Arrays.stream(foresight.joint()[g]).sum();
                most += share * foresight.apart(leader, g);
            }
        }
        return most;
    }
}
