package fusetale.sentence;

import fusetale.circuit.Circuit;
import fusetale.circuit.TestPoint;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Where leads can be held, and what a pair of such points may be written like. Immutable. */
final class Points {
    /** What may stand between two points, the clearest first; a hyphen also stands in names, and so comes last. */
    private static final Pattern BETWEEN =
            Pattern.compile("(?i)\\s+to\\s+|\\s+and\\s+|\\s+against\\s+|\\s*,\\s*|\\s*/\\s*|\\s+-\\s+|\\s+|-");

    private static final Pattern CLEARLY_TWO =
            Pattern.compile("(?i)(.+?)(?:\\s+(?:to|and|against|-)\\s+|\\s*[,/]\\s*|\\s+)(.+)");

    private final Circuit circuit;
    private final Names names;

    Points(Circuit circuit, Names names) {
        this.circuit = circuit;
        this.names = names;
    }

    /**
     * Two points, or one, measured against the point that its schematic says, or ground.
     *
     * @throws SentenceException where one of them is none
     */
    Leads pair(String text) throws SentenceException {
        Optional<Leads> exact = exactPair(text);
        if (exact.isPresent()) {
            return exact.get();
        }
        if (names.has(Names.Kind.POINT, text)) {
            return against(names.find(Names.Kind.POINT, text));
        }
        Matcher two = CLEARLY_TWO.matcher(text.strip());
        if (two.matches()) {
            String one = names.find(Names.Kind.POINT, two.group(1));
            return new Leads(one, names.find(Names.Kind.POINT, two.group(2)));
        }
        return against(names.find(Names.Kind.POINT, text));
    }

    /** Two points that are both spelt in full, or a test point. */
    Optional<Leads> pairOrTestPoint(String text) {
        return exactPair(text)
                .or(() -> names.exact(Names.Kind.POINT, text)
                        .filter(p -> circuit.point(p).isPresent())
                        .map(this::against));
    }

    private Optional<Leads> exactPair(String text) {
        String bare = text.strip();
        Matcher between = BETWEEN.matcher(bare);
        while (between.find()) {
            Optional<String> one = names.exact(Names.Kind.POINT, bare.substring(0, between.start()));
            Optional<String> other = names.exact(Names.Kind.POINT, bare.substring(between.end()));
            if (one.isPresent() && other.isPresent()) {
                return Optional.of(new Leads(one.get(), other.get()));
            }
        }
        return Optional.empty();
    }

    /**
     * A part, or a place of it: {@code BR201 leg 1} is {@code BR201.leg1}.
     *
     * @throws SentenceException where there is none
     */
    String target(String text) throws SentenceException {
        if (!Target.begins(circuit, text)) {
            return names.find(Names.Kind.SUBJECT, text);
        }
        Target target = Target.find(circuit, text);
        if (!target.rest().isEmpty()) {
            throw names.unknown(Names.Kind.SUBJECT, text);
        }
        return target.place() == null ? target.part() : target.part() + "." + target.place();
    }

    /** The red lead at a point, the black lead where its schematic says, or at ground. */
    Leads against(String point) {
        String black = circuit.point(point)
                .map(TestPoint::against)
                .orElse(circuit.ground())
                .name();
        return new Leads(point, black);
    }
}
