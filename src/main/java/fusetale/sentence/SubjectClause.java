package fusetale.sentence;

import fusetale.quantity.Unit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads clauses that begin with what something is done to: {@code f202 pulled}, {@code l201 on}, {@code s201 open}. */
final class SubjectClause {
    private static final List<Row> ROWS = List.of(
            row(Names.Kind.FUSE, (d, n) -> d.bench.pulled.add(n), "pulled", "out", "off", "taken out"),
            row(Names.Kind.FUSE, (d, n) -> d.bench.pulled.remove(n), "in", "back in"),
            row(Names.Kind.CONNECTOR, (d, n) -> d.bench.unplugged.add(n), "unplugged", "off", "out", "pulled"),
            row(Names.Kind.CONNECTOR, (d, n) -> d.bench.unplugged.remove(n), "plugged in", "in", "on", "back on"),
            row(Names.Kind.PIN, (d, n) -> d.bench.lifted.add(n), "lifted", "unsoldered"),
            row(Names.Kind.PIN, (d, n) -> d.bench.lifted.remove(n), "soldered", "down", "back", "put back"),
            row(Names.Kind.DRIVEN, Draft::hold, "held on", "on", "held", "hold on"),
            row(Names.Kind.DRIVEN, Draft::release, "released", "off", "let go"),
            row(Names.Kind.SWITCH, (d, n) -> d.bench.switches.put(n, false), "open"),
            row(Names.Kind.SWITCH, (d, n) -> d.bench.switches.put(n, true), "closed"),
            row(Names.Kind.CAPACITOR, (d, n) -> d.bench.charged.remove(n), "discharged", "empty"),
            row(Names.Kind.SUBJECT, Draft::putBack, "back", "put back", "as drawn"));

    /** A name of one to three words, {@code BR201 pin ac1}, and what is said of it. */
    private static final List<Pattern> NAMED = Stream.of("\\S+", "\\S+ \\S+", "\\S+ pin \\S+")
            .map(name -> Pattern.compile("(?i)(" + name + ") (?:is |are )?(.+)"))
            .toList();

    private static final Pattern PULSED = Pattern.compile("(?i)(\\S+) (?:is )?(?:pulsed?|on)(?: for)? ([\\d.,].*)");
    private static final Pattern CHARGED =
            Pattern.compile("(?i)(\\S+) (?:is )?(?:charged?(?: to)?|at) ([+-]?[\\d.,].*)");

    private final Draft draft;
    private final Names names;

    SubjectClause(Draft draft, Names names) {
        this.draft = draft;
        this.names = names;
    }

    /** What is done to one of a kind. */
    @FunctionalInterface
    interface Deed {
        void to(Draft draft, String name);
    }

    /**
     * One thing that can be done to one of a kind.
     *
     * @param words what it may be called, the sentence's own first
     */
    record Row(Names.Kind kind, Deed deed, List<String> words) {}

    private static Row row(Names.Kind kind, Deed deed, String... words) {
        return new Row(kind, deed, List.of(words));
    }

    /** Does what a clause says in full; returns whether it is such a clause. */
    boolean read(String clause) throws SentenceException {
        Matcher pulsed = PULSED.matcher(clause);
        if (pulsed.matches() && names.has(Names.Kind.DRIVEN, pulsed.group(1))) {
            String driven = names.find(Names.Kind.DRIVEN, pulsed.group(1));
            draft.pulse(driven, BenchClause.amount("pulse " + driven + " 40 ms", pulsed.group(2), Unit.SECOND));
            return true;
        }
        Matcher charged = CHARGED.matcher(clause);
        if (charged.matches() && names.has(Names.Kind.CAPACITOR, charged.group(1))) {
            String capacitor = names.find(Names.Kind.CAPACITOR, charged.group(1));
            draft.charge(capacitor, BenchClause.amount("charge " + capacitor + " 8 V", charged.group(2), Unit.VOLT));
            return true;
        }
        Optional<Match> exact = matches(clause).stream().filter(Match::whole).findFirst();
        exact.ifPresent(this::act);
        return exact.isPresent();
    }

    /** The deeds that a clause may be the beginning of. */
    Set<String> begun(String clause) {
        Set<String> deeds = new LinkedHashSet<>();
        matches(clause).forEach(m -> deeds.add(m.row().words().get(0)));
        return deeds;
    }

    /** Does the only thing that a clause is the beginning of. */
    void readBegun(String clause) {
        act(matches(clause).get(0));
    }

    /**
     * A way to read a clause.
     *
     * @param whole whether it is said in full
     */
    private record Match(Row row, String name, boolean whole) {}

    private void act(Match match) {
        match.row().deed().to(draft, match.name());
    }

    private List<Match> matches(String clause) {
        List<Match> matches = new ArrayList<>();
        for (Pattern named : NAMED) {
            Matcher cut = named.matcher(clause);
            if (!cut.matches()) {
                continue;
            }
            String rest = cut.group(2).toLowerCase(Locale.ROOT).strip();
            for (Row row : ROWS) {
                Optional<String> name = names.exact(row.kind(), cut.group(1));
                boolean whole = row.words().contains(rest);
                // "put back" is short enough to be typed, and begins like "pulled"
                boolean begun =
                        row.kind() != Names.Kind.SUBJECT && row.words().stream().anyMatch(w -> w.startsWith(rest));
                if (name.isPresent() && (whole || begun)) {
                    matches.add(new Match(row, name.get(), whole));
                }
            }
        }
        return matches;
    }

    /** What can be done to one of a name, in the sentence's words. */
    List<String> deeds(String name) {
        return ROWS.stream()
                .filter(r -> r.kind() != Names.Kind.SUBJECT && names.has(r.kind(), name))
                .map(r -> r.words().get(0))
                .toList();
    }
}
