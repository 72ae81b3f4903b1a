package fusetale.match;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.circuit.MeterFunction;
import fusetale.explore.Words;
import fusetale.quantity.Notation;
import fusetale.quantity.NotationException;
import fusetale.quantity.Spelling;
import fusetale.sentence.Measured;
import fusetale.sentence.MeasuredParser;
import fusetale.sentence.SentenceException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Cells of a row that tell what a meter showed. */
record MeteredReader(BenchWords benches, MeasuredParser parser) {
    private static final Words WORDS = Words.of(MeteredReader.class);
    private static final Pattern BARE = Pattern.compile("[+-]?[.,]?\\d[\\d.,]*(?:[eE][+-]?\\d+)?");
    private static final Pattern KIND_BEHIND = Pattern.compile("(?i)\\s*(?:(?<dc>dc|d\\.c\\.)|(?<ac>ac|a\\.c\\.))$");

    /**
     * How the bench was set.
     *
     * @param powerOn what holds where the cell does not tell of the power
     */
    Arrangement arrangement(String cell, boolean powerOn) throws RowException {
        try {
            return benches.read(cell, powerOn);
        } catch (SentenceException unclear) {
            throw new RowException(
                    Column.ARRANGEMENT,
                    WORDS.say("no-arrangement", cell, withoutPoint(unclear)),
                    String.join("; ", benches.names()) + "; " + WORDS.say("arrangement.allowed"),
                    Spelling.nearestIfAny(cell, benches.names()));
        }
    }

    /** The arrangement, if a check can be made on it. */
    Arrangement able(Arrangement arrangement, Check check, Meter meter) throws RowException {
        String refusal = benches.refusal(arrangement, check, meter).orElse("");
        if (!refusal.isEmpty()) {
            throw new RowException(meter.has(check.function()) ? Column.ARRANGEMENT : Column.METER, refusal);
        }
        return arrangement;
    }

    /** Where the leads were. */
    Check check(String red, String black, MeterFunction function) throws RowException {
        if (red.isEmpty()) {
            throw new RowException(Column.FROM, WORDS.say("no-point"));
        }
        try {
            // the red lead alone first, so that the message names the right column
            parser.check(red, "", function);
        } catch (SentenceException unknown) {
            throw new RowException(Column.FROM, withoutPoint(unknown));
        }
        try {
            return parser.check(red, black, function);
        } catch (SentenceException unknown) {
            throw new RowException(Column.TO, withoutPoint(unknown));
        }
    }

    /**
     * What came of it.
     *
     * @param check as asked; a figure on the buzzer's function is one of ohms
     */
    record Displayed(Check check, Shown shown) {}

    /** What the meter showed. */
    Displayed displayed(Check asked, String value, String unit) throws RowException {
        MeterFunction function = asked.function();
        Matcher kind = KIND_BEHIND.matcher(unit);
        String bare = unit;
        if (kind.find()) {
            checkKind(kind, unit, function);
            bare = kind.replaceFirst("");
        }
        double prefix = bare.isEmpty() ? 1 : prefix(bare, unit, function);
        String typed = !bare.isEmpty() && BARE.matcher(value).matches() ? value + " " + bare : value;
        Measured measured;
        try {
            measured = parser.parse(typed, asked, function);
        } catch (SentenceException unclear) {
            throw new RowException(Column.VALUE, withoutPoint(unclear), allowed(function), "");
        }
        // a value with a unit of its own takes that once more, or the plain one, beside it: 12.4 mV, mV
        if (!measured.overRange() && typed.equals(value) && prefix != 1 && !value.endsWith(bare)) {
            throw new RowException(Column.UNIT, WORDS.say("unit.twice", unit, value), WORDS.say("unit.once"), "");
        }
        Check check = measured.check();
        boolean buzzer = function == MeterFunction.CONTINUITY && check.function() == MeterFunction.OHMS;
        if (!check.equals(asked) && !buzzer) {
            throw new RowException(
                    Column.VALUE, WORDS.say("value.other", value, function.words()), allowed(function), "");
        }
        return new Displayed(check, measured.overRange() ? new Shown.Over() : new Shown.Figure(measured.value()));
    }

    private static String allowed(MeterFunction function) {
        return function == MeterFunction.CONTINUITY
                ? WORDS.say("value.buzzer")
                : WORDS.say("value.figure", function.unit().symbol());
    }

    /** What a unit stands for: 0.001 of millivolts. */
    private static double prefix(String bare, String unit, MeterFunction function) throws RowException {
        try {
            return Notation.parse("1 " + bare, function.unit()).si();
        } catch (NotationException notThis) {
            throw new RowException(
                    Column.UNIT,
                    WORDS.say("no-unit", unit, function.words()),
                    WORDS.say("unit.allowed", function.unit().symbol()),
                    "");
        }
    }

    private static void checkKind(Matcher kind, String unit, MeterFunction function) throws RowException {
        boolean direct = kind.group("dc") != null;
        boolean fits = direct
                ? function == MeterFunction.DC_VOLTS || function == MeterFunction.DC_AMPS
                : function == MeterFunction.AC_VOLTS;
        if (!fits) {
            throw new RowException(
                    Column.UNIT,
                    WORDS.say("unit.kind", unit, function.words()),
                    WORDS.say("unit.allowed", function.unit().symbol()),
                    "");
        }
    }

    /** A message that goes on; the sentence it becomes part of has its own point. */
    private static String withoutPoint(SentenceException problem) {
        return String.valueOf(problem.getMessage()).replaceFirst("\\.$", "");
    }
}
