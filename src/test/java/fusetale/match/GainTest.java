package fusetale.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The worked example of J. de Kleer, B. C. Williams, Diagnosing multiple faults, Artificial Intelligence 32(1), 97-130,
 * 1987 (the polybox; X = A·C, Y = B·D, Z = C·E, F = X + Y, G = Y + Z; A 3, B 2, C 2, D 3, E 3; F is 10 where 12 was
 * expected, G is 12), by enumeration of its 32 sets of broken parts; figures worked out from the definitions by hand. The
 * code under test is the one that ranks the next reading.
 */
class GainTest {
    private static final double FAILS = 0.01;
    private static final int M1 = 1;
    private static final int M2 = 2;
    private static final int M3 = 4;
    private static final int A1 = 8;
    private static final int A2 = 16;

    /** Whether a set of broken parts can explain F = 10 and G = 12: what is whole obeys its law. */
    private static boolean consistent(int broken) {
        List<Double> free = List.of(0.0, 4.0, 6.0, 8.0, -1.5);
        boolean whole1 = (broken & M1) == 0;
        boolean whole2 = (broken & M2) == 0;
        boolean whole3 = (broken & M3) == 0;
        // a broken multiplier may give anything; four values and one odd one are enough to meet both sums
        for (double x : whole1 ? List.of(6.0) : free) {
            for (double y : whole2 ? List.of(6.0) : free) {
                for (double z : whole3 ? List.of(6.0) : free) {
                    boolean f = (broken & A1) != 0 || x + y == 10;
                    boolean g = (broken & A2) != 0 || y + z == 12;
                    if (f && g) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private static List<Integer> consistentSets() {
        List<Integer> sets = new ArrayList<>();
        for (int broken = 0; broken < 32; broken++) {
            if (consistent(broken)) {
                sets.add(broken);
            }
        }
        return sets;
    }

    private static double weight(int broken) {
        int n = Integer.bitCount(broken);
        return Math.pow(FAILS, n) * Math.pow(1 - FAILS, 5 - n);
    }

    private static List<Integer> minimal() {
        List<Integer> sets = consistentSets();
        return sets.stream()
                .filter(s -> sets.stream().noneMatch(o -> !o.equals(s) && (o & s) == o))
                .sorted(Comparator.comparingDouble((Integer s) -> -weight(s)))
                .toList();
    }

    private static double[] posterior(List<Integer> sets) {
        double sum = sets.stream().mapToDouble(GainTest::weight).sum();
        return sets.stream().mapToDouble(s -> weight(s) / sum).toArray();
    }

    @Test
    void entropyOfTheMinimalCandidates() {
        List<Integer> sets = minimal();
        assertThat(sets).containsExactlyInAnyOrder(A1, M1, M2 | M3, M2 | A2);
        double[] p = posterior(sets);
        for (int k = 0; k < p.length; k++) {
            boolean single = Integer.bitCount(sets.get(k)) == 1;
            assertThat(p[k]).isCloseTo(single ? 0.4950 : 0.0050, within(5e-5));
        }
        assertThat(Gain.entropy(p)).isCloseTo(1.08079, within(5e-6));
    }

    /** Of one, two, three, four and five broken parts 2, 9, 10, 5 and 1 sets are consistent: summed up by hand, 1.35945 bit. */
    @Test
    void entropyOfAllConsistentSets() {
        List<Integer> sets = consistentSets();
        double[] p = posterior(sets);
        assertThat(sets).hasSize(27);
        assertThat(p[sets.indexOf(A1)]).isCloseTo(0.47803, within(5e-6));
        assertThat(p[sets.indexOf(M1)]).isCloseTo(0.47803, within(5e-6));
        assertThat(p[sets.indexOf(M2 | M3)]).isCloseTo(0.00483, within(5e-6));
        assertThat(Gain.entropy(p)).isCloseTo(1.35945, within(5e-6));
    }

    /** Outcome of a probe under each minimal candidate: a value, as the paper's table of predictions has it. */
    private static int outcome(char probe, int broken) {
        return switch (probe) {
            case 'X' -> broken == M1 ? 4 : 6;
            case 'Y' -> broken == A1 || broken == M1 ? 6 : 4;
            default -> broken == (M2 | M3) ? 8 : 6;
        };
    }

    private static double[][] joint(char probe) {
        List<Integer> sets = minimal();
        double[] p = posterior(sets);
        double[][] joint = new double[p.length][9];
        for (int k = 0; k < p.length; k++) {
            joint[k][outcome(probe, sets.get(k))] = p[k];
        }
        return joint;
    }

    @Test
    void expectedEntropiesOfTheThreeProbes() {
        assertThat(Gain.left(joint('X'))).isCloseTo(0.08087, within(5e-6));
        assertThat(Gain.left(joint('Y'))).isCloseTo(1.00000, within(5e-6));
        assertThat(Gain.left(joint('Z'))).isCloseTo(1.03538, within(5e-6));
        assertThat(Gain.expected(joint('X'))).isCloseTo(0.99993, within(1e-5));
        assertThat(Gain.expected(joint('Y'))).isCloseTo(0.08079, within(1e-5));
        assertThat(Gain.expected(joint('Z'))).isCloseTo(0.04541, within(1e-5));
    }

    /** The paper's score, which needs no diagnosis after the probe: He(x) = H + Σ p(x=v)·log p(x=v), where all predict. */
    @Test
    void thePapersScoreIsTheSame() {
        for (char probe : new char[] {'X', 'Y', 'Z'}) {
            double[][] joint = joint(probe);
            double score = Gain.entropy(posterior(minimal()));
            for (int b = 0; b < 9; b++) {
                double p = 0;
                for (double[] row : joint) {
                    p += row[b];
                }
                score += p > 0 ? p * Math.log(p) / Math.log(2) : 0;
            }
            assertThat(Gain.left(joint)).isCloseTo(score, within(1e-12));
        }
    }

    /** A chain of equal stages, good at its input and bad at its output: the middle tells most (same paper, closed form). */
    @Test
    void chainIsHalvedInItsMiddle() {
        assertThat(chain(3, 1)).isCloseTo(0.66667, within(5e-6));
        assertThat(chain(3, 2)).isCloseTo(0.66667, within(5e-6));
        assertThat(chain(4, 1)).isCloseTo(1.18872, within(5e-6));
        assertThat(chain(4, 2)).isCloseTo(1.0, within(1e-12));
        assertThat(chain(4, 3)).isCloseTo(1.18872, within(5e-6));
    }

    private static double chain(int stages, int after) {
        double[][] joint = new double[stages][2];
        for (int k = 0; k < stages; k++) {
            joint[k][k < after ? 1 : 0] = 1.0 / stages;
        }
        return Gain.left(joint);
    }
}
