package fusetale.sentence;

import fusetale.bench.Check;
import fusetale.circuit.Circuit;
import fusetale.circuit.MeterFunction;
import fusetale.quantity.Notation;
import fusetale.quantity.NotationException;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Reads what somebody read off a meter:
 *
 * <pre>
 * tp2 32.4 dc        tp2 0,61 ac        tp1-tp3 OL ohms        tp6 3k3        32.4
 * </pre>
 *
 * <p>Where, how much, and on which function; the point against which a test point is measured goes without saying. What is
 * missing is taken from the check that is being made and the meter's setting. Decimal point or comma, prefixes with or
 * without their unit. Immutable.
 */
public final class MeasuredParser {
    private static final Set<String> OVER = Set.of("ol", "0l", "o.l", "0.l", "over", "overload", "inf", "∞", "1...");
    private static final Set<String> SOUNDS = Set.of("beeps", "beep", "sounds", "buzzes");
    private static final Set<String> SILENT = Set.of("silent", "silence", "quiet");
    private static final Set<String> BETWEEN = Set.of("to", "against", "and", "-");
    private static final Pattern GLUED = Pattern.compile("(?i)([+-]?[\\d.,]+)(v?dc|v?ac|dt|dcv|acv)");
    private static final Pattern BARE = Pattern.compile("[+-]?[.,]?\\d[\\d.,]*(?:[eE][+-]?\\d+)?");
    private static final Pattern PREFIXED = Pattern.compile("([+-]?[.,]?\\d[\\d.,]*) ?([muµμ])");
    /** A comma in a reading is the decimal point: no meter parts thousands. */
    private static final Pattern DECIMAL_COMMA = Pattern.compile("^([+-]?\\d*),(\\d+)(?=$|[^\\d.,])");

    private static final int NEAR = 3;
    private static final List<Unit> UNITS = List.of(Unit.OHM, Unit.VOLT, Unit.AMPERE);

    private final Names names;
    private final Points points;

    /** A parser for readings on one circuit. */
    public MeasuredParser(Circuit circuit) {
        this.names = new Names(circuit);
        this.points = new Points(circuit, names);
    }

    /**
     * One reading.
     *
     * @param focused the check that is being made, whose points are taken where none are typed; null for none
     * @param setting the meter's function, taken where none is typed and the unit tells of no other
     * @throws SentenceException where the point, the figure or its unit is not understood, with what to change
     */
    public Measured parse(String typed, @Nullable Check focused, MeterFunction setting) throws SentenceException {
        List<String> words = words(typed);
        Where where = where(words);
        List<String> rest = words.subList(where.words(), words.size());
        Leads leads = where.leads();
        MeterFunction usual = setting;
        if (leads == null) {
            if (focused == null) {
                throw rest.isEmpty() || isValue(rest.get(0))
                        ? SentenceException.near(typed.strip(), Texts.say("measured.nowhere"), List.of())
                        : unknownPoint(rest.get(0));
            }
            leads = new Leads(focused.from(), focused.to());
            usual = focused.function();
        }
        Shown shown = shown(rest, usual);
        Check check = new Check(leads.red(), leads.black(), shown.function());
        Unit unit = shown.function().unit();
        return new Measured(check, text(check, shown), shown.value(), shown.over(), unit);
    }

    /** The function of a meter that is called so: in full, shortly as {@code dc}, or by an unmistakable beginning. */
    public static Optional<MeterFunction> function(String words) {
        return MeterWords.function(words);
    }

    /**
     * Where the leads are held, the names as the circuit spells them.
     *
     * @param red point under the red lead, in any capitals
     * @param black point under the black lead; empty for the one that its schematic says, or ground
     * @throws SentenceException where one of them is no point of this circuit, with what comes near
     */
    public Check check(String red, String black, MeterFunction function) throws SentenceException {
        Leads usual = points.against(held(red));
        return new Check(usual.red(), black.isBlank() ? usual.black() : held(black), function);
    }

    private String held(String point) throws SentenceException {
        if (point.isBlank()) {
            throw names.unknown(Names.Kind.POINT, "");
        }
        return names.exact(Names.Kind.POINT, point).orElseThrow(() -> unknownPoint(point.strip()));
    }

    private static List<String> words(String typed) {
        List<String> words = new ArrayList<>();
        for (String word : typed.replace('=', ' ').strip().split("\\s+", -1)) {
            String bare = word.replaceFirst("[,:;]+$", "");
            Matcher glued = GLUED.matcher(bare);
            if (glued.matches()) {
                words.add(glued.group(1));
                words.add(glued.group(2));
            } else if (!bare.isEmpty()) {
                words.add(bare);
            }
        }
        return words;
    }

    /**
     * Where the leads were.
     *
     * @param leads null where it was not typed
     * @param words how many words it took
     */
    private record Where(@Nullable Leads leads, int words) {}

    private Where where(List<String> words) throws SentenceException {
        int first = pointAt(words, 0);
        if (first == 0) {
            Optional<Leads> glued = words.isEmpty() ? Optional.empty() : points.pairOrTestPoint(words.get(0));
            if (glued.isPresent()) {
                return new Where(glued.get(), 1);
            }
            boolean name = words.size() > 1 && !isValue(words.get(0)) && isValue(words.get(1));
            if (name) {
                throw unknownPoint(words.get(0));
            }
            return new Where(null, 0);
        }
        String red = point(words, 0, first);
        if (first < words.size() && BETWEEN.contains(words.get(first).toLowerCase(Locale.ROOT))) {
            int second = pointAt(words, first + 1);
            if (second == 0) {
                throw unknownPoint(first + 1 < words.size() ? words.get(first + 1) : "");
            }
            return new Where(new Leads(red, point(words, first + 1, second)), first + 1 + second);
        }
        int second = pointAt(words, first);
        return second > 0
                ? new Where(new Leads(red, point(words, first, second)), first + second)
                : new Where(points.against(red), first);
    }

    /** How many words from here on name a point and leave something to be read; 0 for none. */
    private int pointAt(List<String> words, int from) {
        boolean two =
                from + 2 < words.size() && names.has(Names.Kind.POINT, words.get(from) + " " + words.get(from + 1));
        if (two) {
            return 2;
        }
        return from + 1 < words.size() && names.has(Names.Kind.POINT, words.get(from)) ? 1 : 0;
    }

    private String point(List<String> words, int from, int count) throws SentenceException {
        return names.find(Names.Kind.POINT, String.join(" ", words.subList(from, from + count)));
    }

    private SentenceException unknownPoint(String word) {
        SentenceException unknown = names.unknown(Names.Kind.POINT, word);
        List<String> near = unknown.allowed().stream()
                .limit(NEAR)
                .sorted(NaturalOrder.NAMES)
                .toList();
        return SentenceException.near(word, Texts.say("measured.no-point", word, String.join(", ", near)), near);
    }

    private static boolean isValue(String word) {
        String small = word.toLowerCase(Locale.ROOT);
        return Character.isDigit(small.charAt(0))
                || "+-.,".indexOf(small.charAt(0)) >= 0
                || OVER.contains(small)
                || SOUNDS.contains(small)
                || SILENT.contains(small)
                || MeterWords.exactFunction(small).isPresent();
    }

    /**
     * What the meter showed.
     *
     * @param value SI
     */
    private record Shown(MeterFunction function, double value, boolean over) {}

    private static Shown shown(List<String> words, MeterFunction usual) throws SentenceException {
        List<String> left = new ArrayList<>(words);
        MeterFunction said = takeFunction(left);
        String value = DECIMAL_COMMA.matcher(String.join(" ", left)).replaceFirst("$1.$2");
        String small = value.toLowerCase(Locale.ROOT);
        if (value.isEmpty()) {
            throw SentenceException.near("", Texts.say("measured.no-figure"), List.of());
        }
        if (SOUNDS.contains(small)) {
            return new Shown(MeterFunction.CONTINUITY, 0, false);
        }
        if (SILENT.contains(small)) {
            return new Shown(MeterFunction.CONTINUITY, Double.POSITIVE_INFINITY, true);
        }
        if (OVER.contains(small)) {
            return new Shown(said == null ? usual : said, Double.POSITIVE_INFINITY, true);
        }
        Shown figure = said == null
                ? withoutFunction(value, usual)
                : new Shown(said, quantity(value, said.unit()).si(), false);
        // the buzzer's function shows ohms beside its sound, if anything
        return figure.function() == MeterFunction.CONTINUITY
                ? new Shown(MeterFunction.OHMS, figure.value(), false)
                : figure;
    }

    /** A figure whose unit may tell that the meter was on another function than it is now. */
    private static Shown withoutFunction(String value, MeterFunction usual) throws SentenceException {
        try {
            return new Shown(usual, quantity(value, usual.unit()).si(), false);
        } catch (SentenceException notThis) {
            for (Unit unit : UNITS) {
                try {
                    double si = Notation.parse(value, unit).si();
                    return new Shown(of(unit), si, false);
                } catch (NotationException norThis) {
                    // the next, then
                }
            }
            throw notThis;
        }
    }

    private static MeterFunction of(Unit unit) {
        return switch (unit) {
            case OHM -> MeterFunction.OHMS;
            case AMPERE -> MeterFunction.DC_AMPS;
            default -> MeterFunction.DC_VOLTS;
        };
    }

    private static Quantity quantity(String value, Unit unit) throws SentenceException {
        Matcher prefixed = PREFIXED.matcher(value);
        boolean bare = BARE.matcher(value).matches();
        // of ohms a lone letter is the decimal point's place, and a lone m could be either
        String whole = bare || (prefixed.matches() && unit != Unit.OHM) ? value + unit.symbol() : value;
        String spaced = bare ? value + " " + unit.symbol() : whole;
        try {
            return Notation.parse(spaced, unit);
        } catch (NotationException unreadable) {
            throw SentenceException.near(value, String.valueOf(unreadable.getMessage()), List.of());
        }
    }

    /** Takes the function's words out of what is left: they stand behind the figure, or before it. */
    private static @Nullable MeterFunction takeFunction(List<String> left) {
        for (int count = Math.min(2, left.size() - 1); count > 0; count--) {
            int last = left.size() - count;
            Optional<MeterFunction> behind =
                    MeterWords.exactFunction(String.join(" ", left.subList(last, left.size())));
            if (behind.isPresent()) {
                left.subList(last, left.size()).clear();
                return behind.get();
            }
            Optional<MeterFunction> before = MeterWords.exactFunction(String.join(" ", left.subList(0, count)));
            if (before.isPresent()) {
                left.subList(0, count).clear();
                return before.get();
            }
        }
        return null;
    }

    private String text(Check check, Shown shown) {
        boolean usual = points.against(check.from()).black().equals(check.to());
        String where = usual ? check.from() : check.from() + " to " + check.to();
        if (shown.function() == MeterFunction.CONTINUITY) {
            return where + (shown.over() ? " silent" : " beeps");
        }
        if (shown.over()) {
            return where + " OL " + shown.function().words();
        }
        Unit unit = shown.function().unit();
        // ohms and amperes tell the function by themselves
        return where + " " + figure(shown.value(), unit)
                + (unit == Unit.VOLT ? " " + shown.function().words() : "");
    }

    /** Tenths and hundredths of a volt are read as volts: 0.61 V. */
    private static String figure(double value, Unit unit) {
        double size = Math.abs(value);
        return unit == Unit.VOLT && size >= 0.01 && size < 1
                ? new BigDecimal(Double.toString(value)).toPlainString() + " V"
                : SentencePrinter.said(new Quantity(value, unit));
    }
}
