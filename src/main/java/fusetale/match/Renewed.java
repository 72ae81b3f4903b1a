package fusetale.match;

import java.util.Set;

/**
 * What had been done to the machine by the time something was read.
 *
 * @param parts parts that were new by then
 * @param switchedOn whether it has been on since: a new fuse is whole until then, whatever melted the old one
 */
record Renewed(Set<String> parts, boolean switchedOn) {
    /** Nothing was replaced. */
    static final Renewed NOTHING = new Renewed(Set.of(), true);

    /** Copies the set. */
    Renewed {
        parts = Set.copyOf(parts);
    }

    boolean isNothing() {
        return parts.isEmpty();
    }
}
