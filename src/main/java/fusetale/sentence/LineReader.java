package fusetale.sentence;

import fusetale.bench.Arrangement;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.BenchSetting;
import fusetale.circuit.Circuit;
import fusetale.fault.FaultForm;
import fusetale.fault.Swap;
import fusetale.quantity.Spelling;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Reads whole lines. Behind "suppose" a clause tells of a failure where it can, of the bench otherwise; in other lines it is
 * the other way round: "f202 pulled" is done at the bench, "suppose f202 pulled" is a fuse missing. Immutable.
 */
final class LineReader {
    /** Nobody types more; what is longer was not meant as a line. */
    private static final int LONGEST = 4000;

    private static final int SHORTEST_ARRANGEMENT = 3;
    private static final Pattern SUPPOSE = Pattern.compile("(?i)^suppose\\b:?\\s*");
    private static final Pattern NOTHING = Pattern.compile("(?i)nothing(?: (?:yet|else|wrong))?");
    private static final Pattern ARRANGEMENT = Pattern.compile("(?i)arrangement(?: called)?:?\\s+(.+)");
    private static final Pattern LAMP = Pattern.compile("(?i)(?:an?|the)\\s.*\\blamp\\b.*");
    private static final Pattern CLIP = Pattern.compile("(?i)(?:an?|the)\\s+clip\\b.*");

    private final Circuit circuit;
    private final SentenceParser parser;
    private final Names names;
    private final Points points;
    private final MeterWords meters;

    LineReader(Circuit circuit, Names names, MeterWords meters) {
        this.circuit = circuit;
        this.parser = new SentenceParser(circuit);
        this.names = names;
        this.points = new Points(circuit, names);
        this.meters = meters;
    }

    Points points() {
        return points;
    }

    SentenceParser parser() {
        return parser;
    }

    /**
     * The state that a line makes of another.
     *
     * @throws SentenceException where it cannot be understood
     */
    Sentence read(Sentence now, String line) throws SentenceException {
        try {
            Draft draft = new Draft(circuit, now);
            read(draft, line, false);
            return draft.done();
        } catch (SentenceException unclear) {
            Optional<BenchSetting> named = SUPPOSE.matcher(line).find() ? Optional.empty() : arrangement(line);
            if (named.isEmpty()) {
                throw unclear;
            }
            Draft draft = new Draft(circuit, now);
            arrange(draft, named.get());
            return draft.done();
        }
    }

    /**
     * What some lines behind "suppose" say together.
     *
     * @throws SentenceException where one cannot be understood, or they contradict each other
     */
    Told supposing(Sentence now, List<String> lines) throws SentenceException {
        Draft draft = new Draft(circuit, now);
        draft.supposeNothing();
        draft.collect();
        return told(draft, lines, true);
    }

    /**
     * What some lines about the bench say together.
     *
     * @throws SentenceException where one cannot be understood, or they contradict each other
     */
    Told arranging(Sentence now, List<String> lines) throws SentenceException {
        return told(new Draft(circuit, now), lines, false);
    }

    private Told told(Draft draft, List<String> lines, boolean supposing) throws SentenceException {
        for (String line : lines) {
            read(draft, line, supposing);
        }
        Sentence done = draft.done();
        return new Told(done, draft.functionSaid(), draft.powerSaid());
    }

    private void read(Draft draft, String line, boolean supposing) throws SentenceException {
        if (line.length() > LONGEST) {
            throw SentenceException.near("", Texts.say("line.long", LONGEST), List.of());
        }
        boolean begunAnew = false;
        boolean benchAnew = false;
        for (String sentence : Clauses.sentences(line)) {
            Matcher suppose = SUPPOSE.matcher(sentence);
            boolean first = suppose.find();
            if (first && !supposing && !begunAnew) {
                draft.supposeNothing();
                draft.collect();
            }
            begunAnew |= first;
            if (begunAnew && !first && !benchAnew) {
                draft.setBenchAnew();
                benchAnew = true;
            }
            boolean ofFailures = first || (supposing && !benchAnew);
            sentence(draft, first ? sentence.substring(suppose.end()) : sentence, ofFailures);
        }
    }

    private void sentence(Draft draft, String sentence, boolean ofFailures) throws SentenceException {
        Matcher named = ARRANGEMENT.matcher(sentence);
        if (named.matches()) {
            arrange(draft, arrangement(named.group(1)).orElseThrow(() -> noArrangement(named.group(1))));
            return;
        }
        String verb = "";
        for (String clause : Clauses.of(sentence, this::begins)) {
            // "pull f201 and f202": a name alone is another of the same
            boolean another = !verb.isEmpty() && clause.indexOf(' ') < 0 && clause.indexOf('=') < 0 && isName(clause);
            String text = another ? verb + " " + clause : clause;
            clause(draft, text, ofFailures);
            String word = text.split("\\s+", 2)[0];
            verb = Verbs.has(word) ? word : "";
        }
    }

    private boolean isName(String word) {
        return names.has(Names.Kind.SUBJECT, word) || names.has(Names.Kind.PIN, word);
    }

    /** Whether a text begins with what a clause may begin with. */
    private boolean begins(String text) {
        String bare = text.strip();
        String[] words = bare.split("\\s+", 2);
        boolean verb = Verbs.has(words[0])
                || (words[0].length() > 2
                        && words.length > 1
                        && !Verbs.beginning(words[0]).isEmpty());
        boolean alone = words.length == 1;
        boolean position = words[0].equalsIgnoreCase("open") || words[0].equalsIgnoreCase("close");
        return (verb && !(alone && position))
                || Target.begins(circuit, bare)
                || names.has(Names.Kind.POINT, words[0])
                || LAMP.matcher(bare).matches()
                || CLIP.matcher(bare).matches()
                || MeterWords.exactFunction(bare).isPresent()
                || (bare.toLowerCase(Locale.ROOT).contains(" meter")
                        && meters.meter(bare.substring(
                                        0, bare.toLowerCase(Locale.ROOT).indexOf(" meter")))
                                .isPresent());
    }

    private void clause(Draft draft, String clause, boolean ofFailures) throws SentenceException {
        if (NOTHING.matcher(clause).matches()) {
            draft.supposeNothing();
            return;
        }
        if (clause.indexOf('=') >= 0) {
            failure(draft, clause);
            return;
        }
        BenchClause bench = new BenchClause(
                draft, names, points, meters, circuit.mains().volts().si());
        SubjectClause subject = new SubjectClause(draft, names);
        if (ofFailures) {
            SentenceException unclear = tryFailure(draft, clause);
            if (unclear != null && !atTheBench(bench, subject, clause)) {
                throw unclear;
            }
            return;
        }
        if (!atTheBench(bench, subject, clause) && !begun(subject, clause)) {
            SentenceException unclear = tryFailure(draft, clause);
            if (unclear != null && !bench.read(Verbs.spelledOut(clause))) {
                throw Target.begins(circuit, clause) ? unclear : unknown(clause);
            }
        }
    }

    /** A clause that begins with nothing known: what comes near its first word. */
    private SentenceException unknown(String clause) {
        String word = clause.split("\\s+", 2)[0];
        Set<String> known = new LinkedHashSet<>(names.all(Names.Kind.SUBJECT));
        known.addAll(Verbs.all());
        circuit.points().forEach(p -> known.add(p.name()));
        List<String> near = Spelling.nearestFew(word, known, Names.NEAR).stream()
                .sorted(NaturalOrder.NAMES)
                .toList();
        return SentenceException.near(
                word,
                near.isEmpty()
                        ? Texts.say("line.unknown", word)
                        : Texts.say("line.unknown-near", word, String.join(", ", near)),
                near);
    }

    private static boolean atTheBench(BenchClause bench, SubjectClause subject, String clause)
            throws SentenceException {
        return subject.read(clause) || bench.read(clause);
    }

    /** Reads the beginning of what is done to a part, where no failure of it begins so. */
    private boolean begun(SubjectClause subject, String clause) throws SentenceException {
        Set<String> deeds = subject.begun(clause);
        List<FaultForm> failures = parser.begun(clause);
        if (deeds.isEmpty() || failures.size() == 1) {
            return false;
        }
        if (failures.isEmpty() && deeds.size() == 1) {
            subject.readBegun(clause);
            return true;
        }
        List<String> all = new ArrayList<>();
        failures.forEach(f -> all.add(f.target() + "=" + f.mode().compact()));
        all.addAll(deeds);
        throw SentenceException.near(clause, Texts.say("verb.several", clause, String.join(", ", all)), all);
    }

    private @Nullable SentenceException tryFailure(Draft draft, String clause) {
        try {
            failure(draft, clause);
            return null;
        } catch (SentenceException unclear) {
            return unclear;
        }
    }

    private void failure(Draft draft, String clause) throws SentenceException {
        List<Swap> swaps = parser.swaps(clause);
        if (swaps.isEmpty()) {
            draft.suppose(parser.fault(clause));
        } else {
            swaps.forEach(draft::suppose);
        }
    }

    /** The arrangement of the file that is called so, or the only one whose name begins so. */
    private Optional<BenchSetting> arrangement(String text) {
        String wanted = text.strip().toLowerCase(Locale.ROOT);
        Optional<BenchSetting> exact = circuit.settings().stream()
                .filter(s -> s.name().toLowerCase(Locale.ROOT).equals(wanted))
                .findFirst();
        if (exact.isPresent() || wanted.length() < SHORTEST_ARRANGEMENT) {
            return exact;
        }
        List<BenchSetting> begun = circuit.settings().stream()
                .filter(s -> s.name().toLowerCase(Locale.ROOT).startsWith(wanted))
                .toList();
        return begun.size() == 1 ? Optional.of(begun.get(0)) : Optional.empty();
    }

    private SentenceException noArrangement(String found) {
        List<String> all = circuit.settings().stream().map(BenchSetting::name).toList();
        return SentenceException.near(found, Texts.say("arrangement.unknown", found, String.join("; ", all)), all);
    }

    private void arrange(Draft draft, BenchSetting setting) throws SentenceException {
        try {
            draft.arrange(Arrangement.of(circuit, setting));
        } catch (UnfitArrangement unfit) {
            throw SentenceException.near(setting.name(), String.valueOf(unfit.getMessage()), List.of());
        }
    }
}
