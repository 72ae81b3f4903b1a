package fusetale.match;

import fusetale.fault.Supposition;
import java.util.List;

/**
 * Parts to change, with all that points to them.
 *
 * @param repair what to change
 * @param share its probability, 0 to 1, if the fault is in the list and the schematic is right
 * @param suppositions those that ask for this repair, likeliest first; the amounts are the likeliest. Empty faults: nothing
 *     is wrong
 * @param evidence every reading beside what the likeliest of them lets expect, in the order read
 * @param consequences designators of parts that the simulation lets die of it, the fuse that melts first; they need a new
 *     one too, and are victims, not the cause
 */
public record Candidate(
        Repair repair, double share, List<Likely> suppositions, List<Weighed> evidence, List<String> consequences) {
    /** Copies the lists. */
    public Candidate {
        suppositions = List.copyOf(suppositions);
        evidence = List.copyOf(evidence);
        consequences = List.copyOf(consequences);
    }

    /**
     * A supposition and its part of the whole.
     *
     * @param share probability, 0 to 1
     */
    public record Likely(Supposition supposition, double share) {}

    /** How many readings fit the likeliest supposition. */
    public int fits() {
        return (int) evidence.stream().filter(Weighed::fits).count();
    }
}
