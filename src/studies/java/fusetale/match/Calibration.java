package fusetale.match;

import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * How well shares that were told agree with how often they were right: the mean difference over six classes of shares above a fiftieth,
 * weighted by how many there are (expected calibration error; M. P. Naeini, G. F. Cooper and M. Hauskrecht, AAAI 2015).
 */
final class Calibration {
    private static final int CLASSES = 6;
    private static final double LEAST_SHARE = 0.02;
    private static final int DRAWS = 2000;

    private final double[] said = new double[CLASSES];
    private final int[] were = new int[CLASSES];
    private final int[] count = new int[CLASSES];

    private Calibration() {}

    /** What was told of one case: shares of all repairs, and the place of the right one among them, −1 where it is not. */
    static final class Told {
        private final double[] shares;
        private final int right;

        Told(double[] shares, int right) {
            this.shares = shares;
            this.right = right;
        }

        /** The same, the right one drawn as the shares say. */
        private Told drawn(SplittableRandom random) {
            double at = random.nextDouble();
            int k = 0;
            while (k < shares.length && at >= shares[k]) {
                at -= shares[k++];
            }
            return new Told(shares, k < shares.length ? k : -1);
        }
    }

    static Calibration of(List<Told> cases) {
        Calibration c = new Calibration();
        for (Told told : cases) {
            for (int k = 0; k < told.shares.length; k++) {
                if (told.shares[k] > LEAST_SHARE) {
                    int at = (int) Math.min(CLASSES - 1, told.shares[k] * CLASSES);
                    c.said[at] += told.shares[k];
                    c.were[at] += k == told.right ? 1 : 0;
                    c.count[at]++;
                }
            }
        }
        return c;
    }

    /** The error that so few cases show on average where every share is exactly right: two thousand draws, seed 1. */
    static double ofAPerfectTeller(List<Told> cases) {
        SplittableRandom random = new SplittableRandom(1);
        double sum = 0;
        for (int draw = 0; draw < DRAWS; draw++) {
            sum += of(cases.stream().map(t -> t.drawn(random)).toList()).error();
        }
        return sum / DRAWS;
    }

    double error() {
        double off = 0;
        int all = 0;
        for (int k = 0; k < CLASSES; k++) {
            off += Math.abs(said[k] - were[k]);
            all += count[k];
        }
        return off / Math.max(1, all);
    }

    /** Each class: said, were, how many. */
    String words() {
        StringBuilder table = new StringBuilder();
        for (int k = 0; k < CLASSES; k++) {
            if (count[k] > 0) {
                table.append(String.format(
                        Locale.ROOT, " %.2f->%.2f (%d)", said[k] / count[k], (double) were[k] / count[k], count[k]));
            }
        }
        return table.toString();
    }
}
