package fusetale.desk.strip;

import fusetale.explore.HealthyRange;
import fusetale.explore.Words;
import fusetale.report.Figures;
import java.util.ArrayList;
import java.util.List;

/**
 * The broken scale of the strip: linear up to what cannot be told (1), logarithmic from there on. The linear part keeps its
 * width whatever the scale ends at, so that it stands still while values change.
 *
 * @param end the figure at the right end of the scale
 */
public record MovedModel(double end) {
    /** Part of the width that the linear part takes. */
    public static final double CANT_TELL_RATIO = 0.28;

    private static final Words WORDS = Words.of(MovedModel.class);

    /** Room beyond the last mark, so that a sign there is whole. */
    private static final double ROOM = 1.5;

    private static final double[] FINE = {3, 10, 30, 100};
    private static final double[] COARSE = {10, 100, 1000};
    private static final double[] COARSEST = {10, 100, 1000, HealthyRange.TO_OR_FROM_OVER_RANGE};

    /** The scale for figures up to {@code most}: it ends at one of three figures, so that it seldom changes. */
    public static MovedModel upTo(double most) {
        double last = most <= FINE[FINE.length - 1] * ROOM
                ? FINE[FINE.length - 1]
                : most <= COARSE[COARSE.length - 1] * ROOM ? COARSE[COARSE.length - 1] : COARSEST[COARSEST.length - 1];
        return new MovedModel(last * ROOM);
    }

    /**
     * A mark on the scale.
     *
     * @param share where, 0 to 1 of the width
     * @param text what it is
     */
    public record Mark(double share, String text) {}

    /** Where a figure stands, 0 to 1 of the width. */
    public double share(double moved) {
        double within = Math.max(0, Math.min(end, moved));
        return within <= 1
                ? CANT_TELL_RATIO * within
                : CANT_TELL_RATIO + (1 - CANT_TELL_RATIO) * Math.log10(within) / Math.log10(end);
    }

    /** The marks from left to right; the edge of the linear part is none of them. */
    public List<Mark> marks() {
        double[] figures = end <= FINE[FINE.length - 1] * ROOM
                ? FINE
                : end <= COARSE[COARSE.length - 1] * ROOM ? COARSE : COARSEST;
        List<Mark> marks = new ArrayList<>();
        for (double at : figures) {
            boolean over = at >= HealthyRange.TO_OR_FROM_OVER_RANGE;
            marks.add(new Mark(share(at), over ? WORDS.say("over") : WORDS.say("times", Figures.plain(at))));
        }
        return marks;
    }
}
