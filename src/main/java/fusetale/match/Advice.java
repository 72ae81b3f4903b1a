package fusetale.match;

import java.util.List;

/**
 * What to measure or look at next.
 *
 * @param ask what
 * @param deeds what to do to the bench first, in words: {@code power off}, {@code take F201 out}; may be empty
 * @param minutes about how long it takes, what has to be done first included
 * @param bits how much it is expected to tell about which parts to change
 * @param meanings what each outcome would mean, in the order of the display; outcomes that hardly come are left out
 * @param cautions what to beware of
 */
public record Advice(
        Ask ask, List<String> deeds, double minutes, double bits, List<Meaning> meanings, List<String> cautions) {
    /** Copies the lists. */
    public Advice {
        deeds = List.copyOf(deeds);
        meanings = List.copyOf(meanings);
        cautions = List.copyOf(cautions);
    }

    /**
     * An outcome and what would follow.
     *
     * @param shows as the display would show it: {@code 0.00 to 0.05 V}, {@code OL}, {@code dark}
     * @param chance how likely the outcome is, 0 to 1
     * @param repair what would then lead
     * @param somethingElse whether something not in the list would lead instead
     * @param share probability it would then have, 0 to 1
     */
    public record Meaning(String shows, double chance, Repair repair, boolean somethingElse, double share) {}
}
