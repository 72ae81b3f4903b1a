package fusetale.sentence;

import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Printed words as a voice should say them: units, signs and dots in words. */
public final class Spoken {
    private static final Map<String, List<String>> UNITS = Map.ofEntries(
            Map.entry("V", List.of("volt", "volts")),
            Map.entry("A", List.of("amp", "amps")),
            Map.entry("ohm", List.of("ohm", "ohms")),
            Map.entry("Ω", List.of("ohm", "ohms")),
            Map.entry("F", List.of("farad", "farads")),
            Map.entry("H", List.of("henry", "henries")),
            Map.entry("W", List.of("watt", "watts")),
            Map.entry("Hz", List.of("hertz", "hertz")),
            Map.entry("s", List.of("second", "seconds")),
            Map.entry("°C", List.of("degree Celsius", "degrees Celsius")));

    private static final Map<String, String> PREFIXES = Map.of(
            "p", "pico", "n", "nano", "μ", "micro", "u", "micro", "m", "milli", "k", "kilo", "M", "mega", "G", "giga");

    private static final Pattern AMOUNT = Pattern.compile(
            "(?<![\\p{L}\\p{N}.])(-?)(\\d+(?:\\.\\d+)?(?:e-?\\d+)?) ([pnμumkMG]?)(V|A|ohm|Ω|F|Hz|H|W|s|°C)(?![\\p{L}\\p{N}])"
                    + "( (?:fuse|bulb|lamp|link|slow|quick)\\b)?");

    private static final Pattern TIMES = Pattern.compile("(?:× ?|\\bx)(\\d+(?:\\.\\d+)?)( of)?");
    private static final Pattern PER_CENT = Pattern.compile("(\\d) ?%");
    private static final Pattern PIN = Pattern.compile("\\b(\\p{L}[\\p{L}\\p{N}-]*)\\.([\\p{L}\\p{N}]+)\\b");

    private Spoken() {}

    /** "14.8 V" is "14.8 volts", "BR201.ac1" "BR201 pin ac1", "d.c. volts" "DC volts", "× 1.5 of" "1.5 times". */
    public static String words(String printed) {
        String text = printed.replace("d.c.", "DC")
                .replace("a.c.", "AC")
                .replace("3½", "three and a half")
                .replace("4½", "four and a half")
                .replace("½", "a half")
                .replace("kΩ", "kilohms")
                .replace("per V", "per volt");
        text = AMOUNT.matcher(text).replaceAll(Spoken::amount);
        text = TIMES.matcher(text).replaceAll("$1 times");
        text = PER_CENT.matcher(text).replaceAll("$1 per cent");
        text = PIN.matcher(text).replaceAll("$1 pin $2");
        return text.replace("±", "plus or minus ").replace("∞", "infinity");
    }

    private static String amount(MatchResult amount) {
        String noun = amount.group(5) == null ? "" : amount.group(5);
        List<String> unit = UNITS.getOrDefault(amount.group(4), List.of("", ""));
        boolean single = !noun.isEmpty() || amount.group(2).equals("1");
        String name = PREFIXES.getOrDefault(amount.group(3), "") + unit.get(single ? 0 : 1);
        String sign = amount.group(1).isEmpty() ? "" : "minus ";
        return Matcher.quoteReplacement(
                sign + amount.group(2) + " " + name.replace("kiloohm", "kilohm").replace("megaohm", "megohm") + noun);
    }
}
