package fusetale.match;

import java.util.List;

/**
 * Parts to change.
 *
 * @param parts designators in the order of the circuit; empty where nothing is to be changed
 */
public record Repair(List<String> parts) {
    /** Healthy, or a fault that the readings cannot show. */
    public static final Repair NOTHING = new Repair(List.of());

    /** Copies the list. */
    public Repair {
        parts = List.copyOf(parts);
    }

    /** Whether nothing is to be changed. */
    public boolean isNothing() {
        return parts.isEmpty();
    }

    /** {@code BR201 and F201}; empty for nothing. */
    public String words() {
        return String.join(" and ", parts);
    }
}
