package fusetale.circuit;

import fusetale.quantity.Spelling;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/** The plain values that stand behind keys: words, numbers, nets, squares. Amounts with a unit are in {@link Amounts}. */
final class Forms {
    /** A net by its name. */
    static final Form<Net> NET = new MappedForm<>(NameForm.NET, Net::new);

    /** Control characters, and those that turn the direction of writing; line ends and tabs are none here. */
    private static final Pattern UNSHOWN =
            Pattern.compile("[\\p{Cc}\\u061C\\u200E\\u200F\\u202A-\\u202E\\u2066-\\u2069&&[^\\n\\t]]");

    /** Any text. */
    static final Form<String> TEXT =
            new ScalarForm<>("a text", Json.of("type", List.of("string", "number", "boolean")), (text, spot) -> {
                // a terminal would obey them instead of showing them
                if (UNSHOWN.matcher(text.text()).find()) {
                    throw Unfit.saying("a character that cannot be shown stands in this text");
                }
                return text.text().strip();
            });

    /** Any single value, left as it is. */
    static final Form<Located.Text> RAW = new ScalarForm<>(
            "a single value", Json.of("type", List.of("string", "number", "boolean")), (text, spot) -> text);

    /** {@code true} or {@code false}. */
    static final Form<Boolean> TRUTH = new ScalarForm<>("true, false", Json.of("type", "boolean"), (text, spot) -> {
        if (!List.of("true", "false").contains(text.text())) {
            throw new Unfit("is neither true nor false", Spelling.nearestIfAny(text.text(), List.of("true", "false")));
        }
        return "true".equals(text.text());
    });

    /** A place on the drawing: {@code [column, row]}. */
    static final Form<Square> SQUARE = new MappedForm<>(
            new ListForm<>("column or row", integer(0, 999), 2, 2), at -> new Square(at.get(0), at.get(1)));

    private static final Pattern WHOLE = Pattern.compile("\\d{1,9}");
    private static final Pattern PLAIN_NUMBER = Pattern.compile("\\d{1,15}(\\.\\d{1,15})?");

    private Forms() {}

    /** A whole number. */
    static Form<Integer> integer(int least, int most) {
        String words = "a whole number from " + least + " to " + most;
        Json json = Json.of("type", "integer").with("minimum", least).with("maximum", most);
        return new ScalarForm<>(words, json, (text, spot) -> {
            if (!WHOLE.matcher(text.text()).matches()) {
                throw new Unfit("is not a whole number");
            }
            int number = Integer.parseInt(text.text());
            if (number < least || number > most) {
                throw new Unfit("is out of range");
            }
            return number;
        });
    }

    /** A number without unit, within bounds above zero. */
    static Form<Double> number(String words, double lowest, double highest) {
        String bounds = "from " + plain(lowest) + " to " + plain(highest);
        Json json = Json.of("type", "number").with("minimum", plain(lowest)).with("maximum", plain(highest));
        return new ScalarForm<>(words + ", " + bounds, json, (text, spot) -> {
            if (!PLAIN_NUMBER.matcher(text.text()).matches()) {
                throw new Unfit("is not a plain number");
            }
            double number = Double.parseDouble(text.text());
            if (!(number >= lowest && number <= highest)) {
                throw new Unfit("is out of bounds");
            }
            return number;
        });
    }

    private static BigDecimal plain(double number) {
        return new BigDecimal(BigDecimal.valueOf(number).stripTrailingZeros().toPlainString());
    }

    /** One of a few words, each standing for a value. */
    static <T> Form<T> choice(Map<String, T> values) {
        List<String> words = List.copyOf(values.keySet());
        return new ScalarForm<>(
                String.join(", ", words), Json.of("type", "string").with("enum", words), (text, spot) -> {
                    T value = values.get(text.text());
                    if (value == null) {
                        throw new Unfit(
                                "is not one of the words known here", Spelling.nearestIfAny(text.text(), words));
                    }
                    return value;
                });
    }

    /** One of the constants of an enumeration, written in small letters with spaces. */
    static <E extends Enum<E>> Form<E> choice(Class<E> type) {
        Map<String, E> values = new LinkedHashMap<>();
        Arrays.stream(type.getEnumConstants())
                .forEach(c -> values.put(c.name().toLowerCase(Locale.ROOT).replace('_', ' '), c));
        return choice(values);
    }

    /** One of a few words, taken as it is; the empty text for nothing said. */
    static Form<String> words(String... words) {
        Map<String, String> values = new LinkedHashMap<>();
        Arrays.stream(words).forEach(w -> values.put(w, w));
        return choice(values);
    }

    /** Nets in a row. */
    static Form<List<Net>> nets(int fewest, int most) {
        return new ListForm<>("a net", NET, fewest, most);
    }

    /** Names in a row. */
    static Form<List<String>> names(String what) {
        return new ListForm<>(what, TEXT, 0, Integer.MAX_VALUE);
    }
}
