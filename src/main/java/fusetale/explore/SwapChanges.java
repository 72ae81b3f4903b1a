package fusetale.explore;

import java.util.List;

/**
 * What swaps change, besides readings.
 *
 * @param rows part by part, swapped ones first
 * @param assumptions what the figures rest on, one plain sentence each
 */
public record SwapChanges(List<SwapChange> rows, List<String> assumptions) {
    /** Of a supposition without swaps. */
    public static final SwapChanges NONE = new SwapChanges(List.of(), List.of());

    /** Copies the lists. */
    public SwapChanges {
        rows = List.copyOf(rows);
        assumptions = List.copyOf(assumptions);
    }
}
