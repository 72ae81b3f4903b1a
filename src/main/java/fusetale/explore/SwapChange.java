package fusetale.explore;

import org.jspecify.annotations.Nullable;

/**
 * One figure of a part that was swapped, or that works together with one.
 *
 * @param part designator
 * @param figure which figure; of a bridge with a leg's current, of the leg that carries most
 * @param asBuilt what it is; null where it has none there
 * @param asSupposed what it would be; null where it has none there
 * @param rating what the part as supposed stands, in the figure's unit; infinite where that is not known
 */
public record SwapChange(
        String part,
        SwapFigure figure,
        @Nullable Band asBuilt,
        @Nullable Band asSupposed,
        double rating) {
    /**
     * A figure, or the range it lies in, in the unit of its {@link SwapFigure}.
     *
     * @param low lower end
     * @param high upper end; equal to the lower one where the figure is one
     */
    public record Band(double low, double high) {
        /** One figure. */
        static Band at(double value) {
            return new Band(value, value);
        }

        /** Whether it is one figure. */
        public boolean single() {
            return low == high;
        }
    }

    /** Whether, at its worst, what the part stands is passed as supposed. */
    public boolean over() {
        Band band = asSupposed;
        return band != null && figure != SwapFigure.SAFE_CURRENT && band.high() > rating;
    }
}
