package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The wrapper of EJML: known systems, and the traps it must not fall into. */
class LinearSystemTest {
    private static double[] solve(double[] matrix, double... right) {
        LinearSystem.Factored f = LinearSystem.factor(matrix.clone(), right.length);
        assertThat(f.ok()).isTrue();
        double[] x = right.clone();
        f.system().solve(x);
        return x;
    }

    // Golub and Van Loan, Matrix Computations, ch. 3 (citation from memory, numbers derived again): (−1/3, 1/3, 0).
    @Test
    void textbookSystemWithoutExchanges() {
        double[] x = solve(new double[] {1, 4, 7, 2, 5, 8, 3, 6, 10}, 1, 1, 1);
        assertThat(x).containsExactly(new double[] {-1.0 / 3, 1.0 / 3, 0}, within(1e-14));
    }

    // Golub and Van Loan § 3.4 (citation from memory, numbers derived again): rows in the order 3, 1, 2.
    @Test
    void textbookSystemWithExchanges() {
        double[] x = solve(new double[] {3, 17, 10, 2, 4, -2, 6, 18, -12}, 1, 1, 1);
        assertThat(x).containsExactly(new double[] {1.0347222, -0.2013889, 0.1319444}, within(1e-7));
    }

    // The pivot trap of every numerics book: naive elimination gives (0, 1).
    @Test
    void tinyPivotIsPassedOver() {
        assertThat(solve(new double[] {1e-20, 1, 1, 1}, 1, 2)).containsExactly(new double[] {1, 1}, within(1e-12));
    }

    // Hilbert matrix of order 4, condition 1.55137e4 (any numerics book): x of ones comes back to about cond·2^-53.
    @Test
    void hilbertMatrixLosesOnlyItsCondition() {
        double[] a = new double[16];
        double[] b = new double[4];
        for (int r = 0; r < 4; r++) {
            for (int c = 0; c < 4; c++) {
                a[4 * r + c] = 1.0 / (r + c + 1);
                b[r] += a[4 * r + c];
            }
        }
        assertThat(solve(a, b)).containsExactly(new double[] {1, 1, 1, 1}, within(1e-11));
    }

    // Closed form, the sums at each node carrying its leaks: of an ampere into a node that two leaks of 10 pS hold,
    // half
    // leaves through either. Behind the first stand 10 S and 4 S in series, behind the other 1 S: 0.05 + 0.125 V and
    // 0.5 V, less some 1e-12 that the leaks shunt. With rows scaled alone the first was 6.6e-6 V off, 19 uA of the sum.
    @Test
    void nodeOnLeakageDoesNotSpoilItsNeighbours() {
        double leak = 1e-11;
        double[] x = solve(
                new double[] {2 * leak, -leak, 0, -leak, -leak, 10 + leak, -10, 0, 0, -10, 14, 0, -leak, 0, 0, 1 + leak
                },
                1,
                0,
                0,
                0);
        assertThat(x[1]).isCloseTo(0.5 / 10 + 0.5 / 4, within(1e-9));
        assertThat(x[3]).isCloseTo(0.5, within(1e-9));
        // Kirchhoff at the second node
        assertThat(10 * (x[1] - x[2]) - leak * (x[0] - x[1])).isCloseTo(0, within(1e-13));
    }

    @Test
    void exactlySingularIsSaidSo() {
        assertThat(LinearSystem.factor(new double[] {1, -1, -1, 1}, 2).ok()).isFalse();
    }

    @Test
    void notANumberIsSaidSo() {
        assertThat(LinearSystem.factor(new double[] {1, Double.NaN, 0, 1}, 2).ok())
                .isFalse();
    }

    @Test
    void megaSiemensBesideNanoSiemensAreTold() {
        // two nodes behind 1e-9 S each, tied together by 1e6 S: x = b summed over 2e-9
        double[] x = solve(new double[] {1e6 + 1e-9, -1e6, -1e6, 1e6 + 1e-9}, 1e-9, 1e-9);
        assertThat(x[0]).isCloseTo(1, within(0.2));
    }

    // Reference: the definition of a solution, A·x = b, for more right sides than are taken at once, and for no others.
    @Test
    void severalRightSidesAreSolvedTogether() {
        Random random = new Random(346);
        int n = 7;
        double[] a = random.doubles(49, -1, 1).toArray();
        double[][] right = IntStream.range(0, 8)
                .mapToObj(j -> random.doubles(n, -1, 1).toArray())
                .toArray(double[][]::new);
        double[][] x = java.util.Arrays.stream(right).map(double[]::clone).toArray(double[][]::new);
        LinearSystem.factor(a.clone(), n).system().solve(x, 1, 7);
        assertThat(x[0]).isEqualTo(right[0]);
        assertThat(x[7]).isEqualTo(right[7]);
        for (int j = 1; j < 7; j++) {
            for (int r = 0; r < n; r++) {
                double sum = 0;
                for (int c = 0; c < n; c++) {
                    sum += a[r * n + c] * x[j][c];
                }
                assertThat(sum).isCloseTo(right[j][r], within(1e-12));
            }
        }
    }

    @Test
    void smallPivotingAgreesWithTheWrapperOnRandomSystems() {
        Random random = new Random(345);
        for (int n = 1; n < 12; n++) {
            double[] a = new double[n * n];
            double[] b = new double[n];
            for (int k = 0; k < a.length; k++) {
                a[k] = random.nextGaussian();
            }
            for (int k = 0; k < n; k++) {
                b[k] = random.nextGaussian();
            }
            double[] expected = solve(a, b);
            int[] pivots = new int[n];
            double[] byColumn = new double[n * n];
            for (int k = 0; k < a.length; k++) {
                byColumn[k % n * n + k / n] = a[k];
            }
            assertThat(DensePivoting.factor(byColumn, n, pivots)).isTrue();
            DensePivoting.solve(byColumn, n, pivots, b);
            assertThat(b).containsExactly(expected, within(1e-9));
        }
    }

    /** Reference: the same system, factored from its dense matrix. */
    @Test
    void patternAtAnyStepSizeSolvesWhatTheDenseMatrixSolves() {
        Random random = new Random(99);
        int n = 30;
        double[] g = new double[n * n];
        double[] c = new double[n * n];
        for (int k = 0; k < 150; k++) {
            g[random.nextInt(n * n)] = random.nextGaussian();
            c[random.nextInt(n * n)] = 1e-6 * random.nextGaussian();
        }
        for (int k = 0; k < n; k++) {
            g[k * n + k] += 10;
        }
        SparsePattern pattern = new SparsePattern(g, c, n);
        for (double perSecond : new double[] {0, 1e3, 1e5}) {
            double[] dense = new double[n * n];
            double[] right = new double[n];
            for (int k = 0; k < dense.length; k++) {
                dense[k] = g[k] + c[k] * perSecond;
            }
            right[3] = 1;
            double[] solved = right.clone();
            LinearSystem.factor(pattern, perSecond).system().solve(solved);
            assertThat(solved).containsExactly(solve(dense, right), within(1e-12));
        }
    }

    @Test
    void notANumberInThePartThatGoesWithTheStepIsTold() {
        SparsePattern pattern = new SparsePattern(new double[] {1, 0, 0, 1}, new double[] {0, 0, 0, Double.NaN}, 2);
        assertThat(LinearSystem.factor(pattern, 1).brokenUnknown()).isEqualTo(1);
    }

    /** Reference: one thread's answers, bit for bit. */
    @Test
    void severalThreadsMaySolveAtOnce() {
        int n = 40;
        double[] a = new double[n * n];
        Random random = new Random(7);
        for (int k = 0; k < n; k++) {
            a[k * n + k] = 5;
            a[k * n + random.nextInt(n)] += 1;
            a[random.nextInt(n) * n + k] += 1;
        }
        LinearSystem system = LinearSystem.factor(a, n).system();
        List<double[]> alone =
                IntStream.range(0, n).mapToObj(k -> unit(system, n, k)).toList();
        List<double[]> together = IntStream.range(0, 2000)
                .parallel()
                .mapToObj(k -> unit(system, n, k % n))
                .toList();
        for (int k = 0; k < together.size(); k++) {
            assertThat(together.get(k)).isEqualTo(alone.get(k % n));
        }
    }

    private static double[] unit(LinearSystem system, int n, int k) {
        double[] b = new double[n];
        b[k] = 1;
        system.solve(b);
        return b;
    }
}
