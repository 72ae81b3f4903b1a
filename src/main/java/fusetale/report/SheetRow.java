package fusetale.report;

import fusetale.bench.Reading;
import fusetale.circuit.MeterFunction;
import fusetale.circuit.TestPoint;
import fusetale.explore.Compared;
import fusetale.explore.Outcome;
import fusetale.explore.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * One line of a bench sheet.
 *
 * @param where the point, or the two
 * @param label what the circuit file calls it; may be empty
 * @param meterOn what the meter is set to
 * @param healthy what healthy machines show
 * @param supposed what this one would show as supposed
 * @param moving how the display behaves while one waits; empty where it stands still
 * @param told whether it moved further than healthy machines stray
 */
record SheetRow(
        String where, String label, String meterOn, String healthy, String supposed, String moving, boolean told) {
    private static final Words WORDS = Words.of(SheetRow.class);

    /**
     * The lines of an outcome: point by point in the order of the circuit file, at each the readings that moved most; where
     * none did, the one that a repairer would take there. What was asked for besides comes behind.
     *
     * @param mostAtAPoint how many readings a point may have
     */
    static List<SheetRow> of(Outcome outcome, int mostAtAPoint) {
        List<SheetRow> rows = new ArrayList<>();
        Set<Compared> left = new LinkedHashSet<>(outcome.readings());
        for (TestPoint point : outcome.question().healthy().points()) {
            List<Compared> here = left.stream().filter(r -> isAt(point, r)).toList();
            here.forEach(left::remove);
            chosen(point, here, mostAtAPoint).forEach(r -> rows.add(row(r, outcome)));
        }
        left.forEach(r -> rows.add(row(r, outcome)));
        return rows;
    }

    private static boolean isAt(TestPoint point, Compared row) {
        String red = row.check().from();
        String black = row.check().to();
        String ground = point.against().name();
        return (red.equals(point.name()) && black.equals(ground)) || (red.equals(ground) && black.equals(point.name()));
    }

    private static List<Compared> chosen(TestPoint point, List<Compared> here, int most) {
        List<Compared> moved = here.stream()
                .filter(r -> !r.tooCloseToTell())
                .sorted(Comparator.comparingDouble(Compared::moved).reversed())
                .limit(most)
                .toList();
        return moved.isEmpty()
                ? here.stream().min(Comparator.comparingInt(r -> preference(point, r, here))).stream()
                        .toList()
                : moved;
    }

    /** What a repairer would take first, lowest first: ohms or volts, red on the point; what is OL everywhere tells least. */
    private static int preference(TestPoint point, Compared row, List<Compared> here) {
        int over = Double.isInfinite(row.healthy().low()) ? 100 : 0;
        int lead = row.check().from().equals(point.name()) ? 0 : 10;
        int function = switch (row.check().function()) {
            case DC_VOLTS -> mostlyAlternating(here) ? 2 : 0;
            case AC_VOLTS -> 1;
            case OHMS -> 0;
            case DIODE_TEST -> 1;
            default -> 3;
        };
        return over + lead + function;
    }

    private static boolean mostlyAlternating(List<Compared> here) {
        return size(here, MeterFunction.AC_VOLTS) > size(here, MeterFunction.DC_VOLTS);
    }

    private static double size(List<Compared> here, MeterFunction function) {
        return here.stream()
                .filter(r -> r.check().function() == function)
                .mapToDouble(r -> Math.abs(r.asBuilt().value()))
                .max()
                .orElse(0);
    }

    private static SheetRow row(Compared row, Outcome outcome) {
        return new SheetRow(
                Pairs.name(outcome.question().healthy(), row.check()),
                label(row, outcome),
                row.check().function().words(),
                Figures.range(row),
                row.asSupposed().shows(),
                moving(row.asSupposed()),
                !row.tooCloseToTell());
    }

    /** What the file calls the point; with the leads exchanged, which goes where, since that is easily overlooked. */
    private static String label(Compared row, Outcome outcome) {
        boolean exchanged = outcome.question()
                .healthy()
                .point(row.check().to())
                .filter(p -> isAt(p, row))
                .isPresent();
        return exchanged
                ? WORDS.say("sheet.exchanged", row.check().from(), row.check().to())
                : outcome.label(row);
    }

    private static String moving(Reading reading) {
        return reading.climbing() == null
                ? ""
                : WORDS.say(reading.climbing().falling() ? "sheet.falls" : "sheet.climbs");
    }

    /** As cells of a table. */
    List<String> cells() {
        return List.of(where, meterOn, healthy, supposed);
    }
}
