package fusetale.desk.bars;

import fusetale.explore.Words;
import fusetale.report.Figures;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The scale of the bars: shares of the healthy reading from 0 to 200 %, evenly, and beside it a lane each for what is below 0,
 * what is more, and OL; lanes only where a row needs them.
 *
 * @param below whether there is a lane for what is below 0
 * @param more whether there is a lane for what is above 200 %
 * @param over whether there is a lane for OL
 */
public record ShareModel(boolean below, boolean more, boolean over) {
    /** Upper end of the even part. */
    public static final double MOST_RATIO = 2;

    private static final Words WORDS = Words.of(ShareModel.class);
    private static final double LANE = 0.26;

    /** The scale that some rows need. */
    public static ShareModel of(List<BarRow> rows) {
        boolean below = false;
        boolean more = false;
        boolean over = false;
        for (BarRow row : rows) {
            for (double share : new double[] {row.supposedRatio(), row.builtRatio()}) {
                below |= share < 0;
                more |= share > MOST_RATIO && !Double.isInfinite(share);
                over |= Double.isInfinite(share);
            }
        }
        return new ShareModel(below, more, over);
    }

    /** Lower end of the scale. */
    public double low() {
        return below ? -1.6 * LANE : -0.05;
    }

    /** Upper end of the scale. */
    public double high() {
        return MOST_RATIO + 0.05 + (more ? 1.2 * LANE : 0) + (over ? 1.2 * LANE : 0);
    }

    /** Where a share stands on the scale; a finite one is never in the lane of OL. */
    public double at(double share) {
        if (Double.isInfinite(share)) {
            return over ? MOST_RATIO + LANE * (more ? 2.1 : 1) : MOST_RATIO;
        }
        if (share > MOST_RATIO) {
            return more ? MOST_RATIO + LANE : MOST_RATIO;
        }
        return share < 0 ? (below ? -LANE : 0) : share;
    }

    /** What is written where. */
    public Map<Double, String> marks() {
        Map<Double, String> marks = new TreeMap<>();
        if (below) {
            marks.put(at(-1), WORDS.say("below"));
        }
        for (int k = 0; k <= 4; k++) {
            double share = k * MOST_RATIO / 4;
            marks.put(share, WORDS.say("per-cent", Figures.plain(100 * share)));
        }
        if (more) {
            marks.put(at(Double.MAX_VALUE), WORDS.say("more"));
        }
        if (over) {
            marks.put(at(Double.POSITIVE_INFINITY), WORDS.say("over"));
        }
        return marks;
    }
}
