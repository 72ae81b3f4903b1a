package fusetale.match;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Observation;

/** One thing one can ask of a machine: with a meter, or with eyes, ears and a finger. */
public sealed interface Ask {
    /** How the bench is set for it. */
    Arrangement arrangement();

    /** {@code TP4 to gnd, d.c. volts} or {@code F201, fuse}; without the arrangement. */
    String words();

    /** A check with a meter. */
    record Metered(Arrangement arrangement, Check check) implements Ask {
        @Override
        public String words() {
            return check.words();
        }
    }

    /**
     * Something to look at, listen to or touch.
     *
     * @param part designator, or {@code J3.4}
     */
    record Noticed(Arrangement arrangement, String part, Observation.Aspect aspect) implements Ask {
        @Override
        public String words() {
            return part + ", " + aspect.words();
        }
    }
}
