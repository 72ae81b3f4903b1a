package fusetale.model;

import fusetale.circuit.LogicOutput;

/**
 * A logic output that leaves its level at rest for a while.
 *
 * @param output its designator
 * @param working its level meanwhile
 * @param fromSeconds when it leaves [s], above 0; 0 is a zero of the mains, rising
 * @param toSeconds when it comes back [s], above {@code fromSeconds}
 */
public record TimedOutput(String output, LogicOutput.State working, double fromSeconds, double toSeconds) {
    /** Refuses times that do not rise. */
    public TimedOutput {
        if (!(fromSeconds > 0 && toSeconds > fromSeconds && toSeconds < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(output + " works from " + fromSeconds + " s to " + toSeconds + " s");
        }
    }
}
