package fusetale.desk.match;

import org.jspecify.annotations.Nullable;

/**
 * One reading of the fit grid.
 *
 * @param place where: {@code TP2}, {@code TP1 to TP3}, {@code F201}
 * @param setting what the meter was set to, or what was looked at
 * @param bench how the bench was set where that is not plain power on or off; may be empty
 * @param shown what was read: {@code 32.4 V}, {@code OL}, {@code wire gone}
 * @param at where it stands on its axis, 0 to 1
 * @param scale its axis; null where it is no figure
 * @param suspect whether it does not fit the rest and should be measured again
 * @param confirmed whether it was repeated with the same result
 * @param decidesNothing whether it fits everything that is listed
 * @param fresh which parts were replaced before it: {@code new: R2}; empty for none
 */
record FitColumn(
        String place,
        String setting,
        String bench,
        String shown,
        double at,
        @Nullable FitScale scale,
        boolean suspect,
        boolean confirmed,
        boolean decidesNothing,
        String fresh) {}
