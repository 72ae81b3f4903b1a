package fusetale.mna;

import java.util.List;

/**
 * Why a network has no solution to show.
 *
 * @param kind what went wrong
 * @param names nodes and elements concerned
 * @param detail one plain sentence
 */
public record NotSolved(Kind kind, List<String> names, String detail) {
    /** Copies the list. */
    public NotSolved {
        names = List.copyOf(names);
    }

    /** What can go wrong. */
    public enum Kind {
        /** Nodes that nothing joins to the reference. */
        FLOATING,
        /** Voltage sources (and, at rest, inductors) in a ring. */
        SOURCE_LOOP,
        /** Nodes fed through current sources or inductors only. */
        CUT_SET,
        /** A value that is zero, negative or not finite. */
        BAD_VALUE,
        /** The linear system is singular to working accuracy. */
        SINGULAR,
        /** Newton found no operating point. */
        NO_OPERATING_POINT,
        /** No periodic state within the limits. */
        NO_PERIODIC_STATE,
        /** Stepping could not go on. */
        STEP_TOO_SMALL,
        /** The caller asked to stop. */
        STOPPED
    }
}
