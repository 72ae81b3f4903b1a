package fusetale.desk.match;

import fusetale.circuit.MeterFunction;
import fusetale.desk.state.Found;
import fusetale.explore.Words;
import fusetale.quantity.Notation;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import fusetale.report.Figures;
import fusetale.sentence.Measured;
import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Pattern;

/** What was found, in as few words as a line has room for. */
final class FoundWords {
    private static final Words WORDS = Words.of(FoundWords.class);
    /** What a keyboard has for the sign of ohms. */
    private static final Pattern OHM = Pattern.compile("\\b([kMGm]?)ohm\\b");

    private FoundWords() {}

    /** {@code TP2 32.4 V d.c.}, {@code F201 wire gone}, {@code new: R2}. */
    static String piece(Found found) {
        if (found instanceof Found.Replaced) {
            return fresh(List.of(parts(found)));
        }
        Measured measured = found.measured();
        if (measured == null) {
            return found.text();
        }
        MeterFunction function = measured.check().function();
        String words = function.words();
        String text = OHM.matcher(found.text()).replaceFirst("$1Ω");
        String where = text.endsWith(" " + words) ? text.substring(0, text.length() - words.length() - 1) : text;
        String setting = WORDS.say("function." + function);
        return setting.isEmpty() || !text.endsWith(" " + words) ? where : where + " " + setting;
    }

    /** {@code R2, F1}: what was replaced; empty for all else. */
    static String parts(Found found) {
        return found instanceof Found.Replaced replaced ? String.join(", ", replaced.parts()) : "";
    }

    /** {@code new: R2, F1}. */
    static String fresh(List<String> parts) {
        return WORDS.say("new", String.join(", ", parts));
    }

    /** {@code 32.4 V}, {@code OL}, {@code beeps}. */
    static String figure(Measured measured) {
        if (measured.check().function() == MeterFunction.CONTINUITY) {
            return WORDS.say(measured.overRange() ? "silent" : "beeps");
        }
        if (measured.overRange()) {
            return Figures.OVER_RANGE;
        }
        double size = Math.abs(measured.value());
        return measured.unit() == Unit.VOLT && size >= 0.01 && size < 1
                ? new BigDecimal(Double.toString(measured.value())).toPlainString() + " V"
                : Notation.format(new Quantity(measured.value(), measured.unit()));
    }

    /** A display without its unit, where the one beside it ends in the same. */
    static String bare(String display, String beside) {
        int space = display.lastIndexOf(' ');
        return space > 0 && beside.endsWith(display.substring(space)) ? display.substring(0, space) : display;
    }
}
