package fusetale.mna;

import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * Follows a machine from cycle to cycle in strides of many cycles, for those that Newton's method does not find from rest: a
 * lamp that warms, a core that drifts and a large capacitor that fills all at once. From cycle to cycle the state obeys
 * dx/dn = P(x) − x; its linearly implicit Euler steps (1/τ + 1 − M)·δ = P(x) − x are plain cycles for τ = 1 and Newton's for
 * infinite τ (pseudo-transient continuation: C. T. Kelley and D. E. Keyes, SIAM J. Numer. Anal. 35(2), 508-523, 1998). τ grows
 * while a stride leads to where it was meant to: for a linear machine the next cycle then misses by δ/τ.
 */
final class PseudoTransient {
    /** Strides in all. */
    private static final int MOST_STRIDES = 120;

    private static final double FIRST_STRIDE_CYCLES = 4;
    /** A stride that misses what it was meant to lead to by less than this ratio may be followed by a longer one. */
    private static final double STRAIGHT = 0.3;

    private static final double LONGER = 3;
    /** One that misses it by more is followed by a shorter one. */
    private static final double BENT = 0.8;
    /** One after which a cycle misses by so many times more than before is taken back. */
    private static final double ASTRAY = 4;
    /** Newton takes over where it would go no further than this ratio of full scale. */
    private static final double NEAR = 0.01;

    private final PeriodMap map;
    private final BooleanSupplier stopped;

    PseudoTransient(PeriodMap map, BooleanSupplier stopped) {
        this.map = map;
        this.stopped = stopped;
    }

    /**
     * Walks from the present state to where Newton's method should find the answer.
     *
     * @return the steps of the cycle there; null where it was not reached
     */
    @Nullable
    Mesh approach() {
        PeriodMap.Keep good = new PeriodMap.Keep(map.stepper);
        PeriodMatrix matrix = null;
        double[] residual = new double[0];
        double[] stride = new double[0];
        double tau = FIRST_STRIDE_CYCLES;
        double before = Double.POSITIVE_INFINITY;
        for (int k = 0; k < MOST_STRIDES && !stopped.getAsBoolean(); k++) {
            Mesh mesh = cycle();
            double[] missed = mesh == null ? new double[0] : map.residual();
            double norm = mesh == null ? Double.POSITIVE_INFINITY : map.norm(missed);
            if (mesh != null && norm <= ASTRAY * before) {
                tau *= stride.length == 0 ? 1 : growth(missed, stride, tau, norm);
                good.copy(map.start);
                matrix = PeriodMatrix.of(map.stepper);
                residual = missed;
                before = norm;
                double[] newton = matrix.step(residual, Double.POSITIVE_INFINITY);
                if (newton.length > 0 && map.norm(newton) < NEAR) {
                    map.restore(good);
                    return mesh;
                }
            } else {
                tau /= LONGER * LONGER;
            }
            if (matrix == null) {
                return null;
            }
            stride = matrix.step(residual, tau);
            if (stride.length == 0) {
                return null;
            }
            map.restore(good);
            stride = map.move(good, stride, 1);
        }
        return null;
    }

    /** A cycle with its sensitivities, on steps of its own; null where it failed. */
    private @Nullable Mesh cycle() {
        map.save(map.start);
        Mesh mesh = map.roughCycle();
        map.restore(map.start);
        return mesh != null && map.fixedCycle(mesh, true) ? mesh : null;
    }

    /** How much longer the next stride may be, from where the last one led. */
    private double growth(double[] missed, double[] stride, double tau, double norm) {
        double[] off = new double[missed.length];
        double[] meant = new double[missed.length];
        for (int j = 0; j < off.length; j++) {
            meant[j] = stride[j] / tau;
            off[j] = missed[j] - meant[j];
        }
        double ratio = map.norm(off) / Math.max(norm, map.norm(meant));
        return ratio < STRAIGHT ? LONGER : ratio < BENT ? 1 : 1 / LONGER;
    }
}
