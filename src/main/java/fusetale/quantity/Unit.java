package fusetale.quantity;

import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The units a repairer writes; every {@link Quantity} is held in the SI unit of its kind. */
public enum Unit {
    /** Electric potential. */
    VOLT("V", "volts", "V", "numk", "V", "V|volt|volts"),
    /** Electric current. */
    AMPERE("A", "amps", "A", "fpnumk", "A", "A|amp|amps|ampere|amperes"),
    /** Resistance. */
    OHM("ohm", "ohms", "ohm", "umkMGT", "RkMGT", "ohm|ohms"),
    /** Capacitance. */
    FARAD("F", "farads", "uF", "pnum", "pnumF", "F|farad|farads"),
    /** Inductance. */
    HENRY("H", "henries", "mH", "num", "numH", "H|henry|henries|henrys"),
    /** Power. */
    WATT("W", "watts", "W", "numkM", "", "W|watt|watts"),
    /** Frequency. */
    HERTZ("Hz", "hertz", "Hz", "kMG", "", "Hz|hertz"),
    /** Time. */
    SECOND("s", "seconds", "s", "pnum", "", "s|sec|second|seconds"),
    /** Temperature on the Celsius scale, the one exception to SI: workshops speak of degrees Celsius. */
    CELSIUS("°C", "degrees Celsius", "°C", "", "", "°C|C|° C|℃"),
    /** Thermal resistance. Data sheets of the time print °C/W, which is the same number. */
    KELVIN_PER_WATT("K/W", "kelvins per watt", "K/W", "", "", "K/W|°C/W|C/W"),
    /**
     * Pulse let-through of a fuse or a junction. Takes no prefix: a prefix would bind to the ampere and be squared (SI
     * Brochure, 9th edition, section 3), which hardly anybody means.
     */
    AMPERE_SQUARED_SECOND("A²s", "ampere-squared seconds", "A²s", "", "", "A²s|A2s|A\\^2s|A²·s|A²\\*s|A\\^2\\*s"),
    /** Energy, as of an avalanche or a charged capacitor. */
    JOULE("J", "joules", "J", "umkM", "", "J|joule|joules"),
    /** Heat capacity. */
    JOULE_PER_KELVIN("J/K", "joules per kelvin", "J/K", "m", "", "J/K|J/°C|J/C"),
    /** Mass in grams, not the kilograms of SI: what a winding's copper is weighed in. */
    GRAM("g", "grams", "g", "mk", "", "g|gram|grams"),
    /** Length. */
    METRE("m", "metres", "mm", "umk", "", "m|metre|metres|meter|meters"),
    /** Cross-section of a conductor in mm², not the m² of SI: wires are sold so (IEC 60228). Takes no prefix. */
    SQUARE_MILLIMETRE("mm²", "square millimetres", "mm²", "", "", "mm²|mm2|mm\\^2|sq mm"),
    /** A level as 20·log10 of a ratio of voltages; see {@link Quantity#voltageRatio}. */
    DECIBEL("dB", "decibels", "dB", "", "", "dB"),
    /** A pure number; written as a per cent or as × k. */
    RATIO("", "a ratio", "%", "", "", "%|percent|per cent");

    private final String symbol;
    private final String words;
    private final String habit;
    private final String prefixes;
    private final String codeLetters;
    private final Pattern spellings;

    Unit(String symbol, String words, String habit, String prefixes, String codeLetters, String spellings) {
        this.symbol = symbol;
        this.words = words;
        this.habit = habit;
        this.prefixes = prefixes;
        this.codeLetters = codeLetters;
        this.spellings = Pattern.compile("(.*?) ?(?:" + spellings + ")", Pattern.CASE_INSENSITIVE);
    }

    /**
     * The unit a symbol without prefix stands for: {@code V}, {@code ohm}, {@code Ω}, {@code %}. A {@code K} is not a
     * unit here.
     *
     * @throws NotationException where no unit is written so
     */
    public static Unit parse(String text) throws NotationException {
        String plain = Lettering.plain(text);
        for (Unit unit : values()) {
            if (!plain.isEmpty() && Objects.equals(unit.prefixExponent(plain), 0)) {
                return unit;
            }
        }
        throw new NotationException(
                NotationException.Kind.UNKNOWN_UNIT,
                text,
                "'" + text.strip()
                        + "' is no unit known here; known are V, A, ohm, F, H, W, Hz, s, °C, K/W, A²s, J, J/K, g, m, mm²,"
                        + " dB, %");
    }

    /** The symbol as typed behind a number, without prefix: ASCII for the ohm. */
    public String symbol() {
        return symbol;
    }

    /** The unit in the plural, for messages: {@code ohms}. */
    public String words() {
        return words;
    }

    /** The unit, with its prefix, that parts of the bench usually have. */
    String habit() {
        return habit;
    }

    /** Prefix letters this unit takes, smallest first; {@code u} stands for micro. */
    String prefixes() {
        return prefixes;
    }

    /** Letters that may stand for the decimal point, {@link Lettering#plain}; after IEC 60062 for ohms and farads. */
    String codeLetters() {
        return codeLetters;
    }

    /** Whether the letter stands for this unit itself, as R does for ohms, and is not a prefix. */
    boolean onlyCodeLetter(String letter) {
        return codeLetters.contains(letter) && !Lettering.isPrefix(letter);
    }

    /**
     * The power of ten that a prefix before this unit means.
     *
     * @param plain unit text out of {@link Lettering#plain}
     * @return null where the text is not this unit
     */
    @Nullable
    Integer prefixExponent(String plain) {
        Matcher matcher = spellings.matcher(plain);
        return matcher.matches() ? Lettering.prefixExponent(matcher.group(1), prefixes) : null;
    }
}
