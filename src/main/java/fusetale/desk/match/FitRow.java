package fusetale.desk.match;

import fusetale.fault.Supposition;
import java.util.List;

/**
 * One row of the fit grid, ready to be shown.
 *
 * @param name the candidate in words
 * @param share of 100 boards that read like this, in words
 * @param fits {@code fits 3 of 4}
 * @param notes what belongs below: victims, what would part look-alikes
 * @param cells one a reading
 * @param supposition what is supposed when the row is taken
 * @param spoken the row as a screen reader says it
 */
record FitRow(
        String name,
        String share,
        String fits,
        List<String> notes,
        List<FitCell> cells,
        Supposition supposition,
        String spoken) {
    FitRow {
        notes = List.copyOf(notes);
        cells = List.copyOf(cells);
    }
}
