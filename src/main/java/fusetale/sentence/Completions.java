package fusetale.sentence;

import fusetale.bench.Meter;
import fusetale.bench.MeterRange;
import fusetale.circuit.BenchSetting;
import fusetale.circuit.Circuit;
import fusetale.circuit.MeterFunction;
import fusetale.circuit.TestPoint;
import fusetale.fault.Catalogue;
import fusetale.fault.FaultForm;
import fusetale.fault.UnfitSupposition;
import fusetale.quantity.Notation;
import fusetale.quantity.Quantity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** How a line that is being typed may go on. Immutable. */
final class Completions {
    private static final int MOST = 12;
    private static final int MOST_PARTS = 7;

    /** What is done most at the bench, for an empty line. */
    private static final List<String> USUAL =
            List.of("power off", "ohms", "diode test", "d.c. volts", "a.c. volts", "lamp 100 W", "put back", "nothing");

    private final Circuit circuit;
    private final Sentences sentences;
    private final LineReader reader;
    private final Names names;
    private final MeterWords meters;
    private final SentencePrinter printer;

    /** Failures by part, the most common first; parts in the order of their likeliest failure. */
    private final Map<String, List<FaultForm>> failures;

    Completions(Circuit circuit, Sentences sentences, LineReader reader, Names names, MeterWords meters) {
        this.circuit = circuit;
        this.sentences = sentences;
        this.reader = reader;
        this.names = names;
        this.meters = meters;
        this.printer = new SentencePrinter(circuit);
        this.failures = byPart(circuit);
    }

    private static Map<String, List<FaultForm>> byPart(Circuit circuit) {
        Map<String, List<FaultForm>> found = new HashMap<>();
        for (FaultForm form : Catalogue.possible(circuit)) {
            found.computeIfAbsent(form.part(), part -> new ArrayList<>()).add(form);
        }
        found.values()
                .forEach(forms -> forms.sort(
                        Comparator.comparingDouble(FaultForm::priorRatio).reversed()));
        Map<String, List<FaultForm>> ordered = new LinkedHashMap<>();
        found.entrySet().stream()
                .sorted(Comparator.comparingDouble((Map.Entry<String, List<FaultForm>> e) ->
                                e.getValue().get(0).priorRatio())
                        .reversed()
                        .thenComparing(Map.Entry::getKey, NaturalOrder.NAMES))
                .forEach(e -> ordered.put(e.getKey(), List.copyOf(e.getValue())));
        return ordered;
    }

    List<Completion> of(Sentence now, String line) {
        Tail tail = tail(line);
        List<Completion> all = new ArrayList<>();
        if (tail.text().isEmpty()) {
            atFirst(all, now, tail);
        } else {
            String[] words = tail.text().split("\\s+", 2);
            boolean begun = words.length > 1 || line.endsWith(" ");
            String rest = words.length > 1 ? words[1] : "";
            if (begun && names.has(Names.Kind.SUBJECT, words[0])) {
                ofPart(all, tail, names.exact(Names.Kind.SUBJECT, words[0]).orElse(words[0]), rest);
            } else if (begun) {
                behindVerb(all, now, tail, words[0], rest);
            } else {
                firstWord(all, tail, words[0]);
            }
        }
        return all.stream().distinct().limit(MOST).toList();
    }

    /**
     * The clause that is being typed.
     *
     * @param before the line before it
     * @param text of it, as far as typed
     */
    private record Tail(String before, String text) {
        Completion complete(String clause, String words) {
            return new Completion(before + clause, words);
        }
    }

    private static Tail tail(String line) {
        String small = line.toLowerCase(Locale.ROOT);
        int start =
                Math.max(Math.max(end(small, " and "), end(small, ", ")), Math.max(end(small, "; "), end(small, ". ")));
        String before = line.substring(0, start);
        String text = line.substring(start);
        if (text.strip().toLowerCase(Locale.ROOT).startsWith("suppose ")) {
            int cut = text.toLowerCase(Locale.ROOT).indexOf("suppose ") + "suppose ".length();
            before += text.substring(0, cut);
            text = text.substring(cut);
        }
        return new Tail(before, text.strip());
    }

    private static int end(String line, String mark) {
        int at = line.lastIndexOf(mark);
        return at < 0 ? 0 : at + mark.length();
    }

    private void atFirst(List<Completion> all, Sentence now, Tail tail) {
        failures.keySet().stream().limit(MOST_PARTS).forEach(part -> all.add(part(tail, part)));
        for (String usual : USUAL) {
            meaning(now, tail, usual).ifPresent(all::add);
        }
    }

    /** A clause in full, where it changes something. */
    private Optional<Completion> meaning(Sentence now, Tail tail, String clause) {
        return sentences.understood(now, clause) instanceof Understood.Means means
                        && !means.after().equals(now)
                ? Optional.of(tail.complete(clause, means.words()))
                : Optional.empty();
    }

    private Completion part(Tail tail, String part) {
        List<FaultForm> forms = failures.getOrDefault(part, List.of());
        String first = forms.stream()
                .map(f -> f.mode().compact())
                .distinct()
                .limit(3)
                .reduce((a, b) -> a + ", " + b)
                .orElse("");
        return tail.complete(part + " ", Texts.say("completion.part", part, first));
    }

    private void ofPart(List<Completion> all, Tail tail, String part, String rest) {
        SubjectClause subject = new SubjectClause(new Draft(circuit, Sentence.atFirst(circuit)), names);
        String wanted = ModeWords.plain(rest);
        String small = rest.toLowerCase(Locale.ROOT);
        for (FaultForm form : failures.getOrDefault(part, List.of())) {
            String place = form.placeWords().toLowerCase(Locale.ROOT);
            boolean fits = wanted.isEmpty()
                    || ModeWords.names(form).stream().anyMatch(n -> n.startsWith(wanted))
                    || (!place.isEmpty() && (place + " ").startsWith(small))
                    || (!place.isEmpty()
                            && small.startsWith(place + " ")
                            && ModeWords.names(form).stream()
                                    .anyMatch(n -> n.startsWith(ModeWords.plain(small.substring(place.length())))));
            if (fits) {
                all.add(tail.complete(clause(form), clause(form)));
            }
        }
        int failing = Math.min(all.size(), MOST - 3);
        List<Completion> deeds = subject.deeds(part).stream()
                .filter(d -> d.startsWith(small))
                .map(d -> tail.complete(part + " " + d, part + " " + d))
                .toList();
        all.addAll(Math.min(all.size(), failing), deeds);
    }

    private String clause(FaultForm form) {
        try {
            return printer.clause(form.usual());
        } catch (UnfitSupposition own) {
            throw new IllegalStateException(own);
        }
    }

    private void firstWord(List<Completion> all, Tail tail, String word) {
        String small = word.toLowerCase(Locale.ROOT);
        if (names.has(Names.Kind.SUBJECT, word)) {
            ofPart(all, tail, names.exact(Names.Kind.SUBJECT, word).orElse(word), "");
        }
        failures.keySet().stream()
                .filter(p -> p.toLowerCase(Locale.ROOT).startsWith(small) && !p.equalsIgnoreCase(word))
                .sorted(NaturalOrder.NAMES)
                .limit(MOST_PARTS)
                .forEach(p -> all.add(part(tail, p)));
        for (String verb : Verbs.beginning(word)) {
            all.add(tail.complete(verb, Texts.say("verb." + verb)));
        }
        circuit.points().stream()
                .map(p -> reader.points().against(p.name()))
                .filter(l -> l.red().toLowerCase(Locale.ROOT).startsWith(small))
                .map(l ->
                        tail.complete(l.red() + " to " + l.black(), Texts.say("completion.leads", l.red(), l.black())))
                .forEach(all::add);
        circuit.settings().stream()
                .map(BenchSetting::name)
                .filter(n ->
                        tail.before().isBlank() && n.toLowerCase(Locale.ROOT).startsWith(small))
                .map(n -> tail.complete("arrangement " + n, Texts.say("completion.arrangement", n)))
                .forEach(all::add);
    }

    private void behindVerb(List<Completion> all, Sentence now, Tail tail, String typed, String rest) {
        List<String> verbs = Verbs.beginning(typed);
        String verb = verbs.size() == 1 || Verbs.has(typed) ? verbs.get(0) : typed;
        verb = Verbs.has(typed) ? typed.toLowerCase(Locale.ROOT) : verb;
        String small = rest.toLowerCase(Locale.ROOT);
        for (String object : objects(now, verb, rest)) {
            String clause = verb + " " + object;
            if (object.toLowerCase(Locale.ROOT).startsWith(small)) {
                meaning(now, tail, clause).ifPresent(all::add);
            }
            if (all.size() >= MOST) {
                return;
            }
        }
    }

    /** What may stand behind a verb. */
    private List<String> objects(Sentence now, String verb, String rest) {
        return switch (verb) {
            case "pull" -> names.beginning(Names.Kind.FUSE, rest);
            case "take" -> prefixed("out ", names.beginning(Names.Kind.FUSE, rest.replaceFirst("(?i)^out\\s*", "")));
            case "unplug" -> names.beginning(Names.Kind.CONNECTOR, rest);
            case "plug" -> prefixed("in ", now.arrangement().unplugged());
            case "lift" -> names.beginning(Names.Kind.PIN, rest);
            case "solder" -> now.arrangement().liftedPins();
            case "hold" -> names.beginning(Names.Kind.DRIVEN, rest);
            case "release" ->
                Stream.concat(now.arrangement().heldOn().stream(), now.arrangement().pulsedSeconds().keySet().stream())
                        .sorted(NaturalOrder.NAMES)
                        .toList();
            case "pulse" ->
                names.beginning(Names.Kind.DRIVEN, rest.split("\\s+", 2)[0]).stream()
                        .map(n -> n + " 40 ms")
                        .toList();
            case "charge" ->
                names.beginning(Names.Kind.CAPACITOR, rest.split("\\s+", 2)[0]).stream()
                        .map(n -> n + " 10 V")
                        .toList();
            case "discharge" -> List.copyOf(now.arrangement().charged().keySet());
            case "open", "close" -> names.beginning(Names.Kind.SWITCH, rest);
            case "meter" -> meterWords();
            case "range" -> ranges(now);
            case "leads", "red", "black", "clip" -> points(verb, rest);
            case "lamp" -> List.of("40 W", "60 W", "100 W", "150 W");
            case "mains" -> mains();
            case "arrangement" ->
                circuit.settings().stream().map(BenchSetting::name).toList();
            case "put" -> putBack(now);
            default -> Verbs.seconds(verb);
        };
    }

    private static List<String> prefixed(String prefix, List<String> all) {
        return all.stream().map(n -> prefix + n).toList();
    }

    private List<String> meterWords() {
        return Stream.concat(
                        meters.meters().stream().map(Meter::name),
                        Stream.of(MeterFunction.values()).map(f -> "on " + f.words()))
                .toList();
    }

    private static List<String> ranges(Sentence now) {
        Setting setting = now.setting();
        Meter whole = Meter.of(setting.meter().model());
        List<String> ranges = new ArrayList<>(List.of("auto"));
        for (MeterRange range : Draft.ranges(whole, setting.function())) {
            ranges.add(SentencePrinter.said(
                    new Quantity(range.fullScale(), setting.function().unit())));
        }
        return ranges;
    }

    /** Test points first; a clip and a pair of leads go against ground where nothing else is said. */
    private List<String> points(String verb, String rest) {
        if (verb.equals("red") || verb.equals("black")) {
            String before = rest.toLowerCase(Locale.ROOT).startsWith("l") ? "lead on " : "";
            return prefixed(before, pointsFrom(rest.replaceFirst("(?i)^lead(?: on)?\\s*", "")));
        }
        String[] two = rest.split("(?i)\\s+(?:to\\s+)?", 2);
        return two.length < 2
                ? pointsFrom(rest).stream().map(this::pair).toList()
                : prefixed(rest.substring(0, rest.length() - two[1].length()), pointsFrom(two[1]));
    }

    private List<String> pointsFrom(String beginning) {
        String small = beginning.toLowerCase(Locale.ROOT);
        return Stream.concat(
                        circuit.points().stream().map(TestPoint::name),
                        names.beginning(Names.Kind.POINT, small).stream())
                .filter(p -> p.toLowerCase(Locale.ROOT).startsWith(small))
                .distinct()
                .toList();
    }

    private String pair(String point) {
        Leads leads = reader.points().against(point);
        return leads.red() + " to " + leads.black();
    }

    private List<String> mains() {
        return Stream.of(
                        circuit.mains().lowestVolts(),
                        circuit.mains().volts(),
                        circuit.mains().highestVolts())
                .map(Notation::format)
                .toList();
    }

    private static List<String> putBack(Sentence now) {
        return Stream.of(
                        Stream.of("back"),
                        now.supposition().faults().stream().map(f -> "back " + f.part()),
                        now.supposition().swaps().stream().map(s -> "back " + s.part()),
                        now.arrangement().pulledFuses().stream().map(f -> "back " + f),
                        now.arrangement().unplugged().stream().map(c -> "back " + c),
                        now.arrangement().liftedPins().stream().map(p -> "back " + p))
                .flatMap(all -> all)
                .distinct()
                .toList();
    }
}
