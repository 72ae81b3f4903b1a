package fusetale.circuit;

import fusetale.quantity.Notation;
import fusetale.quantity.NotationException;
import fusetale.quantity.Quantity;
import fusetale.quantity.Span;
import fusetale.quantity.Tolerance;
import fusetale.quantity.Toleranced;
import fusetale.quantity.Unit;

/** Amounts with their units, as written on the bench. */
final class Amounts {
    private static final String TOLERANCE_TOO = ", a tolerance may follow: ±10 %";

    /** A tolerance: {@code ±5 %}, {@code -20..+50 %}. */
    static final Form<Tolerance> TOLERANCE = new ScalarForm<>(
            "a tolerance such as ±5 % or -20..+50 %",
            pattern(AmountPattern.tolerance()), (text, spot) -> read(text, Notation::parseTolerance));

    /** A ratio of voltages said in decibels (20·log10 of it, IEC 60027-3), as the ratio. */
    static final Form<Double> DECIBEL_RATIO =
            new MappedForm<>(within(Unit.DECIBEL, 6, 140), decibels -> Math.pow(10, decibels.si() / 20));

    /** Longer texts are no amounts; patterns are not let loose on them. */
    private static final int LONGEST = 64;

    private Amounts() {}

    /** Reads one text in bench notation. */
    @FunctionalInterface
    private interface Reading<T> {
        T read(String text) throws NotationException;
    }

    private static <T> T read(Located.Text text, Reading<T> reading) throws Unfit {
        if (text.text().length() > LONGEST) {
            throw new Unfit("is too long for an amount");
        }
        try {
            return reading.read(text.text());
        } catch (NotationException e) {
            throw Unfit.saying(String.valueOf(e.getMessage()));
        }
    }

    private static Json pattern(String pattern) {
        return Json.of("type", "string").with("pattern", pattern).with("maxLength", LONGEST);
    }

    /** Above zero. */
    static Form<Quantity> positive(Unit unit) {
        return new ScalarForm<>(words(unit), pattern(AmountPattern.amount(unit, false)), (text, spot) -> {
            Quantity quantity = read(text, t -> Notation.parse(t, unit));
            if (quantity.si() <= 0) {
                throw new Unfit("is not above zero");
            }
            return quantity;
        });
    }

    /** Within bounds above zero, said in the same words in every message: {@code from 0.1 K/W to 1000 K/W}. */
    static Form<Quantity> within(Unit unit, double lowest, double highest) {
        String bounds = bounds(unit, lowest, highest);
        return new ScalarForm<>(
                words(unit) + ", " + bounds, pattern(AmountPattern.amount(unit, false)), (text, spot) -> {
                    Quantity quantity = read(text, t -> Notation.parse(t, unit));
                    refuseOutside(quantity, lowest, highest);
                    return quantity;
                });
    }

    /** Of either sign. */
    static Form<Quantity> signed(Unit unit) {
        return new ScalarForm<>(
                words(unit),
                pattern(AmountPattern.amount(unit, true)),
                (text, spot) -> read(text, t -> Notation.parse(t, unit)));
    }

    /** Of either sign, and no more than so much either way. */
    static Form<Quantity> signed(Unit unit, double most) {
        return new ScalarForm<>(
                words(unit) + ", at most " + Notation.typed(new Quantity(most, unit)) + " either way",
                pattern(AmountPattern.amount(unit, true)),
                (text, spot) -> {
                    Quantity quantity = read(text, t -> Notation.parse(t, unit));
                    refuseOutside(quantity, -most, most);
                    return quantity;
                });
    }

    /** Above zero, perhaps with a tolerance behind it. */
    static Form<Stated> stated(Unit unit) {
        Json json = pattern(AmountPattern.amountWithTolerance(unit, false));
        return new ScalarForm<>(words(unit) + TOLERANCE_TOO, json, (text, spot) -> {
            Stated stated = read(text, t -> parseStated(t, unit));
            if (stated.nominal().si() <= 0) {
                throw new Unfit("is not above zero");
            }
            return stated;
        });
    }

    /** Above zero, with the tolerance behind it or else this one. */
    static Form<Toleranced> toleranced(Unit unit, String fallback) {
        Tolerance usual = usual(fallback);
        return new MappedForm<>(stated(unit), stated -> stated.or(usual));
    }

    /** Within bounds, with the tolerance behind it or else this one. */
    static Form<Toleranced> toleranced(Unit unit, String fallback, double lowest, double highest) {
        Form<Stated> stated = stated(unit, lowest, highest);
        Tolerance usual = usual(fallback);
        return new MappedForm<>(stated, s -> s.or(usual));
    }

    private static Form<Stated> stated(Unit unit, double lowest, double highest) {
        String bounds = bounds(unit, lowest, highest);
        Json json = pattern(AmountPattern.amountWithTolerance(unit, false));
        return new ScalarForm<>(words(unit) + ", " + bounds + TOLERANCE_TOO, json, (text, spot) -> {
            Stated stated = read(text, t -> parseStated(t, unit));
            refuseOutside(stated.nominal(), lowest, highest);
            return stated;
        });
    }

    private static String bounds(Unit unit, double lowest, double highest) {
        return "from " + Notation.typed(new Quantity(lowest, unit)) + " to "
                + Notation.typed(new Quantity(highest, unit));
    }

    private static void refuseOutside(Quantity quantity, double lowest, double highest) throws Unfit {
        if (!(quantity.si() >= lowest && quantity.si() <= highest)) {
            throw new Unfit("is out of bounds");
        }
    }

    /** What a meter is expected to show, of either sign, with the tolerance behind it or else this one. */
    static Form<Toleranced> expected(Unit unit, String fallback) {
        Tolerance usual = usual(fallback);
        return new ScalarForm<>(
                words(unit) + TOLERANCE_TOO,
                pattern(AmountPattern.amountWithTolerance(unit, true)),
                (text, spot) -> read(text, t -> parseStated(t, unit)).or(usual));
    }

    /** From one amount to another: {@code 110..126 V}. */
    static Form<Span> span(Unit unit) {
        return new ScalarForm<>(
                "a range such as 110..126 V",
                pattern(AmountPattern.span(unit)),
                (text, spot) -> read(text, t -> Notation.parseSpan(t, unit)));
    }

    private static Tolerance usual(String tolerance) {
        try {
            return Notation.parseTolerance(tolerance);
        } catch (NotationException e) {
            throw new IllegalArgumentException(tolerance, e);
        }
    }

    private static Stated parseStated(String text, Unit unit) throws NotationException {
        // two fallbacks tell a tolerance that is written from one that is not
        Toleranced exact = Notation.parseToleranced(text, unit, Tolerance.EXACT);
        Toleranced wide = Notation.parseToleranced(text, unit, new Tolerance(-1, 1));
        boolean written = exact.tolerance().equals(wide.tolerance());
        return new Stated(exact.nominal(), written ? exact.tolerance() : null);
    }

    /** What may be written for a unit, with examples, for messages. */
    static String words(Unit unit) {
        return switch (unit) {
            case VOLT -> "a voltage such as 12.6 V or 350 mV";
            case AMPERE -> "a current such as 0.2 A or 20 mA";
            case OHM -> "a resistance such as 4k7, 0R47 or 0.47 ohm";
            case FARAD -> "a capacitance such as 4700 uF or 100 nF";
            case HENRY -> "an inductance such as 25 mH";
            case WATT -> "a power such as 0.5 W";
            case HERTZ -> "a frequency such as 60 Hz";
            case SECOND -> "a time such as 20 ms";
            case CELSIUS -> "a temperature such as 25 °C";
            case KELVIN_PER_WATT -> "a thermal resistance such as 50 K/W";
            case AMPERE_SQUARED_SECOND -> "a pulse such as 3.75 A²s";
            case JOULE -> "an energy such as 30 mJ";
            case JOULE_PER_KELVIN -> "a heat capacity such as 1.2 J/K";
            case GRAM -> "a mass such as 60 g";
            case METRE -> "a length such as 2.5 mm or 1.2 m";
            case SQUARE_MILLIMETRE -> "a cross-section such as 0.82 mm²";
            case DECIBEL -> "decibels such as 62 dB";
            case RATIO -> "a share such as 12 %";
        };
    }
}
