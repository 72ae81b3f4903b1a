package fusetale.sentence;

import fusetale.bench.Meter;
import fusetale.circuit.MeterFunction;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What meters and their functions are called. Immutable. */
final class MeterWords {
    private static final Map<String, MeterFunction> FUNCTIONS = functions();

    private final List<Meter> meters;

    /** For some meters, the usual one first. */
    MeterWords(List<Meter> meters) {
        this.meters = List.copyOf(meters);
    }

    private static Map<String, MeterFunction> functions() {
        Map<String, MeterFunction> words = new LinkedHashMap<>();
        for (MeterFunction function : MeterFunction.values()) {
            words.put(plain(function.words()), function);
        }
        for (String also : List.of("volts", "dc", "dcv", "volts dc", "vdc", "v dc")) {
            words.put(also, MeterFunction.DC_VOLTS);
        }
        for (String also : List.of("ac", "acv", "volts ac", "vac", "v ac")) {
            words.put(also, MeterFunction.AC_VOLTS);
        }
        for (String also : List.of("ohm", "ω", "resistance")) {
            words.put(also, MeterFunction.OHMS);
        }
        for (String also : List.of("diode", "dt")) {
            words.put(also, MeterFunction.DIODE_TEST);
        }
        for (String also : List.of("buzzer", "beeper")) {
            words.put(also, MeterFunction.CONTINUITY);
        }
        for (String also : List.of("amps", "amperes", "dc amperes", "dca", "current")) {
            words.put(also, MeterFunction.DC_AMPS);
        }
        return Map.copyOf(words);
    }

    /** The meters, the usual one first. */
    List<Meter> meters() {
        return meters;
    }

    /** Whether this is the meter that goes without saying. */
    boolean usual(Meter meter) {
        return meter.name().equals(meters.get(0).name());
    }

    /** The function that is called so, or the only one whose name begins so. */
    static Optional<MeterFunction> function(String text) {
        String plain = plain(text);
        MeterFunction exact = FUNCTIONS.get(plain);
        if (exact != null) {
            return Optional.of(exact);
        }
        List<MeterFunction> begun = FUNCTIONS.entrySet().stream()
                .filter(e -> plain.length() > 1 && e.getKey().startsWith(plain))
                .map(Map.Entry::getValue)
                .distinct()
                .toList();
        return begun.size() == 1 ? Optional.of(begun.get(0)) : Optional.empty();
    }

    /** The function that is called exactly so. */
    static Optional<MeterFunction> exactFunction(String text) {
        return Optional.ofNullable(FUNCTIONS.get(plain(text)));
    }

    /** The first meter whose name begins so; "usual" is the usual one. */
    Optional<Meter> meter(String text) {
        String wanted = text.strip().toLowerCase(Locale.ROOT);
        if (wanted.equals("usual")) {
            return Optional.of(meters.get(0));
        }
        return meters.stream()
                .filter(m -> !wanted.isEmpty() && spellings(m.name()).stream().anyMatch(s -> s.startsWith(wanted)))
                .findFirst();
    }

    /** A name as printed, and as a keyboard has it. */
    private static List<String> spellings(String name) {
        String small = name.toLowerCase(Locale.ROOT);
        return List.of(
                small,
                small.replace("½", "1/2").replace("ω", "ohm"),
                small.replace("½", " 1/2").replace("ω", "ohm"));
    }

    private static String plain(String words) {
        return words.toLowerCase(Locale.ROOT)
                .replace(".", "")
                .strip()
                .replaceAll("[\\s-]+", " ")
                .replaceFirst("^the ", "");
    }
}
