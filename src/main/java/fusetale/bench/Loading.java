package fusetale.bench;

import fusetale.mna.Norton;
import fusetale.mna.OperatingPoint;
import fusetale.mna.Solved;
import fusetale.mna.Solver;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * How much of a reading a meter's input resistance takes away, at most: R/(R + input) with R the resistance between the two
 * points with the machine at rest, found by feeding in {@link #TEST_AMPS}.
 */
final class Loading {
    private static final double TEST_AMPS = 1e-9;

    private final Solver solver;
    private final Map<Long, Double> knownOhms = new HashMap<>();
    private @Nullable OperatingPoint rest;
    private boolean asked;

    Loading(Solver solver) {
        this.solver = solver;
    }

    /** Share of a reading between two nodes that is lost to an input of so many ohms, 0 to 1; 1 where it cannot be told. */
    double lostRatio(int one, int two, double inputOhms) {
        if (one == two) {
            return 0;
        }
        long pair = (long) Math.min(one, two) << 32 | Math.max(one, two);
        double ohms = knownOhms.computeIfAbsent(pair, k -> measuredOhms(one, two));
        return Double.isInfinite(ohms) ? 1 : ohms / (ohms + inputOhms);
    }

    private double measuredOhms(int one, int two) {
        if (!asked) {
            asked = true;
            rest = solver.operatingPoint(null).orElse(failure -> null);
        }
        OperatingPoint before = rest;
        if (before == null) {
            return Double.POSITIVE_INFINITY;
        }
        Solved<OperatingPoint> fed =
                solver.with(new Norton(one, two, 0, TEST_AMPS)).operatingPoint(before);
        if (!(fed instanceof Solved.Found<OperatingPoint> found)) {
            return Double.POSITIVE_INFINITY;
        }
        return Math.abs(found.value().volts(one, two) - before.volts(one, two)) / TEST_AMPS;
    }
}
