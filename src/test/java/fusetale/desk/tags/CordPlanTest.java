package fusetale.desk.tags;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Tags in a row. */
class CordPlanTest {
    private static final double GAP = 10;

    private static List<Double> random(Random random, int count, double low, double high) {
        List<Double> numbers = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            numbers.add(low + random.nextDouble() * (high - low));
        }
        return numbers;
    }

    @Test
    void neverOverlapAndNeverLeaveTheRow() {
        Random random = new Random(1);
        for (int trial = 0; trial < 20_000; trial++) {
            int count = 1 + random.nextInt(25);
            List<Double> widths = random(random, count, 20, 40);
            List<Double> wanted =
                    random(random, count, -100, 1400).stream().sorted().toList();
            List<Double> lefts = CordPlan.lefts(wanted, widths, GAP, 0, 1280);
            for (int k = 0; k < count; k++) {
                assertThat(lefts.get(k)).isGreaterThan(-1e-9);
                assertThat(lefts.get(k) + widths.get(k)).isLessThan(1280 + 1e-9);
                if (k > 0) {
                    assertThat(lefts.get(k) - lefts.get(k - 1) - widths.get(k - 1))
                            .isGreaterThan(GAP - 1e-9);
                }
            }
        }
    }

    /**
     * A least-squares solution under such constraints is known by the conditions of Karush, Kuhn and Tucker: where nothing hits an end
     * the shifts of a touching block add up to nothing, and no leading piece of it would rather lie further right.
     */
    @Test
    void isTheLeastSquaresSolution() {
        Random random = new Random(2);
        for (int trial = 0; trial < 5_000; trial++) {
            int count = 2 + random.nextInt(12);
            List<Double> widths = random(random, count, 20, 60);
            List<Double> wanted =
                    random(random, count, 2000, 2600).stream().sorted().toList();
            List<Double> lefts = CordPlan.lefts(wanted, widths, GAP, 0, 10_000);
            int from = 0;
            for (int k = 1; k <= count; k++) {
                boolean touching = k < count
                        && lefts.get(k) - lefts.get(k - 1) - widths.get(k - 1) < GAP + 1e-6;
                if (touching) {
                    continue;
                }
                double pull = 0;
                for (int i = from; i < k; i++) {
                    pull += wanted.get(i) - (lefts.get(i) + widths.get(i) / 2);
                    // what lies left of a gap that is closed is pushed left, never pulled
                    assertThat(pull).isGreaterThan(-1e-6);
                }
                assertThat(pull).isCloseTo(0, within(1e-6));
                from = k;
            }
        }
    }

    @Test
    void oneThatHasRoomHangsAboveItsPoint() {
        assertThat(CordPlan.lefts(List.of(300.0, 900.0), List.of(100.0, 60.0), GAP, 0, 1280))
                .containsExactly(250.0, 870.0);
    }
}
