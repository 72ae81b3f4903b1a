package fusetale.circuit;

import fusetale.quantity.Toleranced;
import java.util.Map;

/**
 * A place where the schematic tells one to measure.
 *
 * @param name {@code TP2}
 * @param at where the red lead goes
 * @param against where the black lead goes
 * @param label what it is
 * @param access effort to reach it
 * @param expect what the schematic says a meter shows there, by function
 */
public record TestPoint(
        String name, Net at, Net against, String label, Access access, Map<MeterFunction, Toleranced> expect) {
    /** Copies the map. */
    public TestPoint {
        expect = Map.copyOf(expect);
    }

    /** Effort to reach a point. */
    public enum Access {
        /** On the open bench. */
        BENCH_TOP,
        /** Behind the coin door. */
        BEHIND_THE_DOOR,
        /** Under the table, on one's back. */
        UNDER_THE_TABLE
    }
}
