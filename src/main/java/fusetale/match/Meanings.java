package fusetale.match;

import fusetale.circuit.MeterFunction;
import java.util.ArrayList;
import java.util.List;

/** What each outcome of an ask would mean: outcomes side by side that lead to the same repair are one. */
final class Meanings {
    private static final double LEAST_CHANCE = 0.02;
    private static final int MOST = 5;
    private static final fusetale.explore.Words WORDS = fusetale.explore.Words.of(Meanings.class);

    private final Foresight foresight;
    private final Ask ask;

    Meanings(Foresight foresight, Ask ask) {
        this.foresight = foresight;
        this.ask = ask;
    }

    List<Advice.Meaning> all() {
        List<Run> runs = new ArrayList<>();
        for (int b = 0; b < foresight.outcomes().size(); b++) {
            double[] column = new double[foresight.groups().size()];
            double sum = 0;
            int best = 0;
            for (int g = 0; g < column.length; g++) {
                column[g] = foresight.joint()[g][b];
                sum += column[g];
                best = column[g] > column[best] ? g : best;
            }
            if (sum < LEAST_CHANCE / 10) {
                continue;
            }
            Run last = runs.isEmpty() ? null : runs.get(runs.size() - 1);
            boolean goesOn = last != null
                    && last.leader == best
                    && foresight.outcomes().get(b).figure()
                    && foresight.outcomes().get(last.to).figure()
                    && last.to == b - 1;
            if (goesOn && last != null) {
                last.to = b;
                last.chance += sum;
                last.ofLeader += column[best];
            } else {
                runs.add(new Run(b, best, sum, column[best]));
            }
        }
        return runs.stream()
                .filter(r -> r.chance >= LEAST_CHANCE)
                .limit(MOST)
                .map(r -> new Advice.Meaning(
                        shows(r),
                        Math.min(1, r.chance),
                        foresight.groups().get(r.leader),
                        false,
                        Math.min(1, r.ofLeader / r.chance)))
                .toList();
    }

    /** Of resistance and alternating voltage there is no less than nothing. */
    private static double least(Ask.Metered m, double low) {
        return m.check().function() == MeterFunction.DC_VOLTS ? low : Math.max(0, low);
    }

    /** Outcomes one after the other that one repair leads. */
    private static final class Run {
        final int from;
        final int leader;
        int to;
        double chance;
        double ofLeader;

        Run(int from, int leader, double chance, double ofLeader) {
            this.from = from;
            this.to = from;
            this.leader = leader;
            this.chance = chance;
            this.ofLeader = ofLeader;
        }
    }

    private String shows(Run run) {
        Foresight.Outcome first = foresight.outcomes().get(run.from);
        if (!first.figure() || !(ask instanceof Ask.Metered m)) {
            return first.seen().isEmpty() ? WORDS.say("over") : first.seen();
        }
        Foresight.Outcome last = foresight.outcomes().get(run.to);
        String low = Explanation.figure(m.check(), least(m, first.low()));
        String high = Explanation.figure(m.check(), last.high());
        return low.equals(high) ? low : WORDS.say("range", low, high);
    }
}
