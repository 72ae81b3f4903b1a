package fusetale.match;

import fusetale.bench.Observation;

/** What was read or seen. */
public sealed interface Shown {
    /** A figure on the display, SI. */
    record Figure(double si) implements Shown {
        /** Refuses what no display shows. */
        public Figure {
            if (!Double.isFinite(si)) {
                throw new IllegalArgumentException(si + " is no figure; what is over range is Over");
            }
        }
    }

    /** OL; of a needle, no deflection or off the scale; of the buzzer, silence. */
    record Over() implements Shown {}

    /**
     * What was seen, heard or felt.
     *
     * @param counted checks the controller's lamps counted before it stopped; -1 where nothing is counted
     */
    record Seen(Observation.Sight sight, int counted) implements Shown {
        /** Something that counts nothing. */
        public Seen(Observation.Sight sight) {
            this(sight, -1);
        }
    }
}
