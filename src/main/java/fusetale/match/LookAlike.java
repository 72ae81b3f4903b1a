package fusetale.match;

import java.util.List;

/**
 * Repairs that no permitted reading tells apart.
 *
 * @param repairs two or more, likeliest first
 * @param share probability of all together, 0 to 1
 * @param partedBy what would part them, best first: lift a lead, unplug, pull; may be empty
 */
public record LookAlike(List<Repair> repairs, double share, List<Advice> partedBy) {
    /** Copies the lists. */
    public LookAlike {
        repairs = List.copyOf(repairs);
        partedBy = List.copyOf(partedBy);
    }
}
