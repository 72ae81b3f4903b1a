package fusetale.circuit;

import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A name.
 *
 * @param words what it is, for messages: {@code a part's name}
 * @param like what it is made of, with an example, for messages
 * @param pattern what it must match as a whole
 */
record NameForm(String words, String like, Pattern pattern) implements Form<String> {
    /** Reference designators, test points, connectors: a point's name is cut at the dot. */
    static final NameForm PART = new NameForm(
            "a part's name",
            "letters, digits and hyphens, a letter first, such as R204",
            compiled("\\p{L}[\\p{L}\\p{N}-]*"));

    /** What stands on the drawing: a part, a test point, a connector's pin. */
    static final NameForm DRAWN = new NameForm(
            "a name on the drawing",
            "a part, a test point or a connector's pin, such as R204, TP3 or J1.4",
            compiled("\\p{L}[\\p{L}\\p{N}-]*(\\.[\\p{L}\\p{N}]+)?"));

    static final NameForm NET = new NameForm(
            "a net's name",
            "letters, digits, + - and _ with a letter among them, such as raw or 5V",
            compiled("[\\p{L}\\p{N}+_-]*\\p{L}[\\p{L}\\p{N}+_-]*"));
    static final NameForm WINDING = new NameForm("a winding's name", PART.like(), PART.pattern());
    static final NameForm CONTACT =
            new NameForm("a pin's label", "a number or letters, such as 4", compiled("[\\p{L}\\p{N}]+"));
    static final NameForm MODEL = new NameForm(
            "a model's name",
            "letters, digits, hyphens and dots, such as 1N4004 or bridge-4A",
            compiled("[\\p{L}\\p{N}][\\p{L}\\p{N}.-]*"));
    static final NameForm FUSES = new NameForm(
            "a family's name",
            "letters, digits, spaces and dots, such as slow 6.3x32",
            compiled("\\p{L}[\\p{L}\\p{N} .-]*"));
    static final NameForm METER = new NameForm(
            "a meter's name",
            "letters, digits, spaces and hyphens, such as true rms 4000-count",
            compiled("\\p{L}[\\p{L}\\p{N} .-]*"));
    static final NameForm PARAMETER = new NameForm(
            "a parameter's name",
            "letters, digits, spaces and hyphens, a letter first, such as n",
            compiled("\\p{L}[\\p{L}\\p{N} -]*"));
    static final NameForm ARRANGEMENT = new NameForm(
            "an arrangement's name",
            "letters, digits, spaces and hyphens, such as bench default",
            compiled("\\p{L}[\\p{L}\\p{N} .,+-]*"));

    /** Longer names fit no drawing. */
    private static final int LONGEST = 48;

    private static Pattern compiled(String regex) {
        return Pattern.compile("^" + regex + "$");
    }

    @Override
    public @Nullable String read(Located item, Spot spot) {
        if (item instanceof Located.Text text
                && text.text().length() <= LONGEST
                && pattern.matcher(text.text()).matches()) {
            return text.text();
        }
        spot.error(item.place(), item.what() + " cannot be " + words, like, "");
        return null;
    }

    @Override
    public Json schema(Dialect dialect) {
        Json plain =
                Json.of("type", "string").with("pattern", pattern.pattern()).with("maxLength", LONGEST);
        return new ScalarForm<>(words, plain, (text, spot) -> text.text()).schema(dialect);
    }
}
