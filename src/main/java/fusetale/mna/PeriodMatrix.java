package fusetale.mna;

/** 1 − M of a period map with sensitivities M, at one state. */
final class PeriodMatrix {
    private final double[] rows;
    private final int size;

    private PeriodMatrix(double[] rows, int size) {
        this.rows = rows;
        this.size = size;
    }

    /** From the sensitivities that a stepper has carried over a whole period. */
    static PeriodMatrix of(Stepper stepper) {
        int n = stepper.carried();
        double[] a = new double[n * n];
        for (int j = 0; j < n; j++) {
            for (int k = 0; k < n; k++) {
                a[j * n + k] = (j == k ? 1 : 0) - stepper.sensitivity(j, k);
            }
        }
        return new PeriodMatrix(a, n);
    }

    /** Factors 1/cycles + 1 − M. */
    LinearSystem.Factored factor(double cycles) {
        double[] a = rows.clone();
        for (int j = 0; j < size; j++) {
            a[j * size + j] += 1 / cycles;
        }
        return LinearSystem.factor(a, size);
    }

    /** The step δ of (1/cycles + 1 − M)·δ = residual; empty where that is singular. {@code residual}: Not modified. */
    double[] step(double[] residual, double cycles) {
        LinearSystem.Factored f = factor(cycles);
        if (!f.ok()) {
            return new double[0];
        }
        double[] step = residual.clone();
        f.system().solve(step);
        return step;
    }

    int size() {
        return size;
    }
}
