package fusetale.mna;

import java.util.List;

/**
 * Value of an independent source over time, in V or A.
 */
public sealed interface SourceShape permits SourceShape.Constant, SourceShape.Sine, SourceShape.Corners {
    /** Value at a time [s]. */
    double at(double seconds);

    /** Mean value, used for the operating point. */
    double mean();

    /**
     * Steady value.
     *
     * @param value V or A
     */
    record Constant(double value) implements SourceShape {
        @Override
        public double at(double seconds) {
            return value;
        }

        @Override
        public double mean() {
            return value;
        }
    }

    /**
     * offset + peak·sin(2π·hertz·t + phase).
     *
     * @param offset V or A
     * @param peak V or A
     * @param hertz frequency [Hz], above 0
     * @param phaseRadians phase at t = 0
     */
    record Sine(double offset, double peak, double hertz, double phaseRadians) implements SourceShape {
        @Override
        public double at(double seconds) {
            return offset + peak * Math.sin(2 * Math.PI * hertz * seconds + phaseRadians);
        }

        @Override
        public double mean() {
            return offset;
        }
    }

    /**
     * Straight lines between corners; before the first and after the last it stays.
     *
     * @param seconds times of the corners [s], rising
     * @param values value at each corner
     */
    record Corners(List<Double> seconds, List<Double> values) implements SourceShape {
        /** Copies and checks. */
        public Corners {
            seconds = List.copyOf(seconds);
            values = List.copyOf(values);
            if (seconds.isEmpty() || seconds.size() != values.size()) {
                throw new IllegalArgumentException("a source with corners needs as many times as values, at least one");
            }
            for (int i = 1; i < seconds.size(); i++) {
                if (!(seconds.get(i) > seconds.get(i - 1))) {
                    throw new IllegalArgumentException("corner times must rise");
                }
            }
        }

        @Override
        public double at(double t) {
            if (t <= seconds.get(0)) {
                return values.get(0);
            }
            for (int i = 1; i < seconds.size(); i++) {
                if (t <= seconds.get(i)) {
                    double part = (t - seconds.get(i - 1)) / (seconds.get(i) - seconds.get(i - 1));
                    return values.get(i - 1) + part * (values.get(i) - values.get(i - 1));
                }
            }
            return values.get(values.size() - 1);
        }

        @Override
        public double mean() {
            return values.get(0);
        }
    }
}
