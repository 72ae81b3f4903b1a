package fusetale.desk.strip;

import fusetale.bench.Check;
import fusetale.circuit.Circuit;
import fusetale.explore.Compared;
import fusetale.explore.HealthyRange;
import fusetale.explore.Words;
import fusetale.report.Figures;
import fusetale.report.Pairs;

/**
 * One row of the strip, ready to be shown.
 *
 * @param check what is measured
 * @param point {@code TP2}, or {@code TP2 to TP4}
 * @param function what the meter is set to
 * @param moved how far it moved, a pure number as {@link HealthyRange#moved}
 * @param built what a healthy machine shows, without its unit where the other has the same
 * @param supposed what the meter shows as supposed
 * @param spoken the row as a screen reader says it
 */
public record StripRow(
        Check check, String point, String function, double moved, String built, String supposed, String spoken) {
    private static final Words WORDS = Words.of(StripRow.class);

    /** The row of one reading of a circuit. */
    public static StripRow of(Circuit circuit, Compared reading) {
        Check check = reading.check();
        String point = Pairs.name(circuit, check);
        String function = check.function().words();
        String built = Figures.display(reading.asBuilt());
        String supposed = Figures.display(reading.asSupposed());
        String key = reading.tooCloseToTell()
                ? "spoken.close"
                : reading.moved() >= HealthyRange.TO_OR_FROM_OVER_RANGE ? "spoken.over" : "spoken.moved";
        String spoken = WORDS.say(key, point, function, built, supposed, Figures.plain(reading.movedInTwoFigures()));
        String beside = Figures.shortDisplay(reading.asSupposed());
        return new StripRow(
                check,
                point,
                function,
                reading.moved(),
                bare(Figures.shortDisplay(reading.asBuilt()), beside),
                beside,
                spoken);
    }

    /** Whether the difference is lost in what healthy machines and the meter stray. */
    public boolean tooCloseToTell() {
        return moved < 1;
    }

    /** A display without its unit, where the one beside it ends in the same. */
    private static String bare(String display, String beside) {
        int space = display.lastIndexOf(' ');
        return space > 0 && beside.endsWith(display.substring(space)) ? display.substring(0, space) : display;
    }
}
