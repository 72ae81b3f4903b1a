package fusetale.bench;

import fusetale.mna.Norton;
import fusetale.mna.OperatingPoint;
import fusetale.mna.Solved;
import fusetale.mna.Solver;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Whether a meter's input resistance would change a reading: the resistance between two points with the machine at rest,
 * found by feeding in {@link #TEST_AMPS}, against 0.02 % of the input resistance (R/(R + 10 MΩ) of the reading is lost).
 */
final class Loading {
    private static final double TEST_AMPS = 1e-9;
    private static final double MATTERS_RATIO = 2e-4;

    private final Solver solver;
    private final double inputOhms;
    private final Map<Long, Boolean> known = new HashMap<>();
    private @Nullable OperatingPoint rest;
    private boolean asked;

    Loading(Solver solver, double inputOhms) {
        this.solver = solver;
        this.inputOhms = inputOhms;
    }

    /** Whether the meter must be taken into the circuit for a reading between two nodes. */
    boolean matters(int one, int two) {
        if (one == two) {
            return false;
        }
        long pair = (long) Math.min(one, two) << 32 | Math.max(one, two);
        return known.computeIfAbsent(pair, k -> measured(one, two));
    }

    private boolean measured(int one, int two) {
        if (!asked) {
            asked = true;
            rest = solver.operatingPoint(null).orElse(failure -> null);
        }
        OperatingPoint before = rest;
        if (before == null) {
            return true;
        }
        Solved<OperatingPoint> fed =
                solver.with(new Norton(one, two, 0, TEST_AMPS)).operatingPoint(before);
        if (!(fed instanceof Solved.Found<OperatingPoint> found)) {
            return true;
        }
        double ohms = (found.value().volts(one, two) - before.volts(one, two)) / TEST_AMPS;
        return !(Math.abs(ohms) < MATTERS_RATIO * inputOhms);
    }
}
