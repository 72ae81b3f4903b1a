package fusetale.explore;

import java.util.List;
import java.util.Optional;

/**
 * A machine switched on stage by stage.
 *
 * @param stages in order, at least one; the last one is the arrangement that was asked for
 */
public record StagedStart(List<Stage> stages) {
    /** Copies the list. */
    public StagedStart {
        stages = List.copyOf(stages);
    }

    /**
     * One stage.
     *
     * @param name what the circuit file calls it
     * @param in fuses and connectors that go in at this stage
     * @param asBuilt a healthy machine at this stage
     * @param outcome the machine as supposed at this stage
     * @param telling readings that come up at this stage on a healthy machine, or have moved, those that moved most first
     * @param reasons why to stop here, the gravest first; empty where one goes on
     */
    public record Stage(
            String name,
            List<String> in,
            Outcome asBuilt,
            Outcome outcome,
            List<Compared> telling,
            List<String> reasons) {
        /** Copies the lists. */
        public Stage {
            in = List.copyOf(in);
            telling = List.copyOf(telling);
            reasons = List.copyOf(reasons);
        }

        /** Whether nothing speaks against the next stage. */
        public boolean goOn() {
            return reasons.isEmpty();
        }
    }

    /** Number of the first stage at which the supposition shows, 1 for the first; empty where none shows it. */
    public Optional<Integer> firstShown() {
        for (int k = 0; k < stages.size(); k++) {
            if (!stages.get(k).goOn()) {
                return Optional.of(k + 1);
            }
        }
        return Optional.empty();
    }

    /** The stage with everything in. */
    public Stage last() {
        return stages.get(stages.size() - 1);
    }
}
