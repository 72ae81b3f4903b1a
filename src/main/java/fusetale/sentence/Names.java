package fusetale.sentence;

import fusetale.bench.Driven;
import fusetale.circuit.Capacitor;
import fusetale.circuit.Circuit;
import fusetale.circuit.Connector;
import fusetale.circuit.Electrolytic;
import fusetale.circuit.Fuse;
import fusetale.circuit.Net;
import fusetale.circuit.Part;
import fusetale.circuit.Switch;
import fusetale.circuit.TestPoint;
import fusetale.fault.Catalogue;
import fusetale.quantity.Spelling;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The names of one circuit that a line may use; capitals do not matter. Immutable. */
final class Names {
    /** How many near names an answer lists. */
    static final int NEAR = 5;

    private final Map<Kind, Map<String, String>> bySpelling = new EnumMap<>(Kind.class);

    /** What a name may be of. */
    enum Kind {
        /** Whatever can fail. */
        SUBJECT("kind.subject"),
        FUSE("kind.fuse"),
        CONNECTOR("kind.connector"),
        /** {@code PART.pin}, of parts and connectors. */
        PIN("kind.pin"),
        /** Where a lead can be held or clipped. */
        POINT("kind.point"),
        /** What can be held on. */
        DRIVEN("kind.driven"),
        SWITCH("kind.switch"),
        CAPACITOR("kind.capacitor");

        private final String key;

        Kind(String key) {
            this.key = key;
        }

        /** {@code fuse}. */
        String words() {
            return Texts.say(key);
        }
    }

    Names(Circuit circuit) {
        List<String> pins = new ArrayList<>();
        for (Part part : circuit.parts()) {
            part.pins().forEach(pin -> pins.add(part.name() + "." + pin.name()));
        }
        for (Connector connector : circuit.connectors()) {
            connector.pins().forEach(pin -> pins.add(connector.name() + "." + pin.label()));
        }
        put(Kind.SUBJECT, Catalogue.designators(circuit).stream());
        put(Kind.FUSE, parts(circuit, Fuse.class));
        put(Kind.CONNECTOR, circuit.connectors().stream().map(Connector::name));
        put(Kind.PIN, pins.stream());
        put(
                Kind.POINT,
                Stream.of(
                                circuit.points().stream().map(TestPoint::name),
                                circuit.nets().stream().map(Net::name),
                                pins.stream())
                        .flatMap(names -> names));
        put(Kind.DRIVEN, Driven.names(circuit).stream());
        put(Kind.SWITCH, parts(circuit, Switch.class));
        put(Kind.CAPACITOR, Stream.concat(parts(circuit, Electrolytic.class), parts(circuit, Capacitor.class)));
    }

    private static Stream<String> parts(Circuit circuit, Class<? extends Part> kind) {
        return circuit.parts().stream().filter(kind::isInstance).map(Part::name);
    }

    private void put(Kind kind, Stream<String> names) {
        Map<String, String> spellings = new LinkedHashMap<>();
        names.forEach(name -> spellings.putIfAbsent(small(name), name));
        // where two names differ by capitals alone, each is found by its own
        bySpelling.put(kind, spellings);
    }

    /** All of a kind, in the circuit's order. */
    Collection<String> all(Kind kind) {
        return bySpelling.getOrDefault(kind, Map.of()).values();
    }

    /** The name that is spelt so, capitals ignored; a pin may be written with a space, {@code br201 ac1}. */
    Optional<String> exact(Kind kind, String text) {
        Map<String, String> spellings = bySpelling.getOrDefault(kind, Map.of());
        String spelling = small(text);
        String name = spellings.get(spelling);
        boolean pinned = name == null && (kind == Kind.PIN || kind == Kind.POINT);
        return Optional.ofNullable(pinned ? spellings.get(spelling.replaceFirst("\\s+(?:pin\\s+)?", ".")) : name);
    }

    /** Whether a kind has this name. */
    boolean has(Kind kind, String text) {
        return exact(kind, text).isPresent();
    }

    /** Names of a kind that begin so, in the order in which one counts. */
    List<String> beginning(Kind kind, String text) {
        String spelling = small(text);
        return bySpelling.getOrDefault(kind, Map.of()).entrySet().stream()
                .filter(e -> e.getKey().startsWith(spelling))
                .map(Map.Entry::getValue)
                .sorted(NaturalOrder.NAMES)
                .toList();
    }

    /**
     * The name that is spelt so, or the only one that begins so.
     *
     * @throws SentenceException where there is none, or several begin so; told with what comes near
     */
    String find(Kind kind, String text) throws SentenceException {
        Optional<String> exact = exact(kind, text);
        if (exact.isPresent()) {
            return exact.get();
        }
        String written = text.strip();
        List<String> beginning = written.isEmpty() ? List.of() : beginning(kind, written);
        if (beginning.size() == 1) {
            return beginning.get(0);
        }
        if (beginning.size() > 1) {
            List<String> few = beginning.subList(0, Math.min(NEAR, beginning.size()));
            throw SentenceException.near(
                    written, Texts.say("name.several", written, kind.words(), String.join(", ", few)), few);
        }
        throw unknown(kind, written);
    }

    /** What to say of a name that is none. */
    SentenceException unknown(Kind kind, String written) {
        Collection<String> all = all(kind);
        if (all.isEmpty()) {
            return SentenceException.near(written, Texts.say("name.no-such-kind", kind.words()), List.of());
        }
        List<String> near = Spelling.nearestFew(written, all, NEAR);
        if (near.isEmpty()) {
            near = all.stream().limit(NEAR).toList();
        }
        List<String> counted = near.stream().sorted(NaturalOrder.NAMES).toList();
        return SentenceException.near(
                written,
                written.isEmpty()
                        ? Texts.say("name.missing", kind.words(), String.join(", ", counted))
                        : Texts.say("name.unknown", written, kind.words(), String.join(", ", counted)),
                near);
    }

    private static String small(String text) {
        return text.strip().toLowerCase(Locale.ROOT);
    }
}
