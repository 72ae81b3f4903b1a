package fusetale.sentence;

import fusetale.circuit.Circuit;
import fusetale.fault.AmountRange;
import fusetale.fault.Catalogue;
import fusetale.fault.Fault;
import fusetale.fault.FaultForm;
import fusetale.fault.Replacements;
import fusetale.fault.Supposition;
import fusetale.fault.Swap;
import fusetale.fault.UnfitSupposition;
import fusetale.quantity.Notation;
import fusetale.quantity.NotationException;
import fusetale.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Reads suppositions, said or written compactly, mixed as one likes:
 *
 * <pre>
 * Suppose BR201 leg 1 is shorted and F201 holds a 25 A fuse.
 * BR201.leg1=short F201=wrong-rating:25A
 * d1 s
 * BR201 is a bridge-35A and C101=10000uF
 * </pre>
 *
 * A line is clauses joined by "and", a comma or a semicolon. A clause names a part (capitals do not matter), where it has
 * several places the place, then the failure, of which any beginning will do that is not also another's, then perhaps an
 * amount, which says what there is now; or it names what is fitted instead of the part ({@link SwapWords}). Immutable.
 */
public final class SentenceParser {
    /** Where an amount starts: a figure, perhaps with a sign or a × before it. */
    private static final Pattern AMOUNT =
            Pattern.compile("(?<![\\p{L}\\d])(?:[×x*]\\s*)?[+-]?[.,]?\\d.*", Pattern.DOTALL);

    private static final Pattern BEHIND_AMOUNT =
            Pattern.compile("(?i)[\\s,]*\\b(?:left|of nominal|nominal|fuse|bulb|lamp|link|now|of it)$");
    private static final Pattern VERB = Pattern.compile("(?i)^(.*?)\\b(?:is|are|has|have|holds|draws)\\b.*");

    private final Circuit circuit;

    /** A parser for the parts of one circuit. */
    public SentenceParser(Circuit circuit) {
        this.circuit = circuit;
    }

    /**
     * Several lines that hold together, as from a command line.
     *
     * @throws SentenceException as {@link #parse(String)}
     */
    public Supposition parse(List<String> lines) throws SentenceException {
        List<Fault> faults = new ArrayList<>();
        List<Swap> swaps = new ArrayList<>();
        for (String line : lines) {
            read(line, faults, swaps);
        }
        return fitting(String.join(" and ", lines), new Supposition(faults, swaps));
    }

    /**
     * One line.
     *
     * @throws SentenceException where a part, a place, a failure or an amount is not understood, where a word could mean
     *     several failures, or where the faults contradict each other
     */
    public Supposition parse(String line) throws SentenceException {
        return parse(List.of(line));
    }

    private Supposition fitting(String line, Supposition supposition) throws SentenceException {
        try {
            Catalogue.check(circuit, supposition);
            return supposition;
        } catch (UnfitSupposition unfit) {
            throw new SentenceException(line, String.valueOf(unfit.getMessage()));
        }
    }

    private void read(String line, List<Fault> faults, List<Swap> swaps) throws SentenceException {
        String text = line.strip().replaceFirst("(?i)^suppose\\b:?", "").strip();
        text = text.endsWith(".") ? text.substring(0, text.length() - 1).strip() : text;
        if (text.isEmpty() || text.equalsIgnoreCase("nothing")) {
            return;
        }
        for (String clause : Clauses.of(text, rest -> Target.begins(circuit, rest))) {
            List<Swap> swapped = swaps(clause);
            swaps.addAll(swapped);
            if (swapped.isEmpty()) {
                faults.add(fault(clause));
            }
        }
    }

    /** What a clause swaps; empty where it tells of a fault. Not checked. */
    List<Swap> swaps(String clause) throws SentenceException {
        Target target = Target.find(circuit, clause);
        String rest = target.rest();
        if (target.place() != null) {
            return List.of();
        }
        boolean compact = rest.startsWith("=");
        return SwapWords.read(circuit, target.part(), compact ? rest.substring(1) : rest, compact);
    }

    /**
     * The failures that a clause's words are the beginning of, by their own names; empty where it names no part, or says
     * nothing of it.
     */
    List<FaultForm> begun(String clause) {
        try {
            Target target = Target.find(circuit, clause);
            String words = ModeWords.plain(target.rest());
            List<FaultForm> begun = words.isEmpty()
                    ? List.of()
                    : forms(target).stream()
                            .filter(f -> ModeWords.ownNames(f).stream().anyMatch(n -> n.startsWith(words)))
                            .toList();
            return whole(target, begun).map(List::of).orElse(begun);
        } catch (SentenceException noPart) {
            return List.of();
        }
    }

    /** The fault that one clause tells of; not checked. */
    Fault fault(String clause) throws SentenceException {
        Target target = Target.find(circuit, clause);
        String rest = target.rest();
        int equals = rest.indexOf('=');
        return equals >= 0 ? compact(target, rest, equals) : said(target, rest);
    }

    private Fault compact(Target target, String rest, int equals) throws SentenceException {
        String stray = rest.substring(0, equals).strip();
        if (!stray.isEmpty()) {
            throw noPlace(target, stray);
        }
        String written = rest.substring(equals + 1);
        int colon = written.indexOf(':');
        if (colon >= 0 && written.substring(colon + 1).isBlank()) {
            throw new SentenceException(
                    written,
                    "'" + written + "' ends before its amount; write it behind the colon, or leave the colon out");
        }
        return fault(
                target,
                colon < 0 ? written : written.substring(0, colon),
                colon < 0 ? "" : written.substring(colon + 1));
    }

    private Fault said(Target target, String rest) throws SentenceException {
        Matcher verb = VERB.matcher(rest);
        if (verb.matches() && !verb.group(1).isBlank()) {
            throw noPlace(target, verb.group(1).strip());
        }
        Matcher amount = AMOUNT.matcher(rest);
        // a figure may belong to the words: "is swapped with pin 5"
        boolean measured = amount.find() && !isNamed(target, ModeWords.plain(rest));
        String failure = measured ? rest.substring(0, amount.start()) : rest;
        return fault(target, failure, measured ? amount.group() : "");
    }

    private boolean isNamed(Target target, String words) {
        return forms(target).stream().anyMatch(f -> ModeWords.names(f).contains(words));
    }

    private Fault fault(Target target, String failure, String amount) throws SentenceException {
        String words = ModeWords.withoutTrailingTo(ModeWords.plain(failure));
        FaultForm form = form(target, words);
        return new Fault(form.part(), form.place(), form.mode(), amount(form, amount));
    }

    private FaultForm form(Target target, String words) throws SentenceException {
        List<FaultForm> forms = forms(target);
        if (words.isEmpty()) {
            throw new SentenceException("", "say what " + named(target) + " does wrong", modes(target));
        }
        List<FaultForm> matching = ModeWords.matching(words, forms);
        if (matching.size() == 1) {
            return matching.get(0);
        }
        if (matching.size() > 1) {
            return whole(target, matching).orElseThrow(() -> severalMeant(target, words, matching));
        }
        List<FaultForm> elsewhere = ModeWords.matching(words, Catalogue.possible(circuit, target.part()));
        if (elsewhere.isEmpty() || target.place() != null) {
            throw new SentenceException(
                    words, "'" + words + "' is nothing that " + named(target) + " can be", allowed(target));
        }
        if (elsewhere.size() == 1) {
            return elsewhere.get(0);
        }
        throw severalMeant(target, words, elsewhere);
    }

    /** Where no place was said, a failure of the whole part comes before that of a place. */
    private static Optional<FaultForm> whole(Target target, List<FaultForm> matching) {
        List<FaultForm> whole =
                matching.stream().filter(f -> f.place().isEmpty()).toList();
        return target.place() == null && whole.size() == 1 ? Optional.of(whole.get(0)) : Optional.empty();
    }

    /** What can be meant by a target: its place's forms, or without a place those that need none said. */
    private List<FaultForm> forms(Target target) {
        List<FaultForm> all = Catalogue.possible(circuit, target.part());
        String place = target.place();
        List<FaultForm> meant = all.stream()
                .filter(f ->
                        place == null ? f.placeWords().isEmpty() : f.place().equals(place))
                .toList();
        return meant.isEmpty() ? all : meant;
    }

    private SentenceException severalMeant(Target target, String words, List<FaultForm> meant) {
        List<String> all =
                meant.stream().map(f -> f.target() + "=" + f.mode().compact()).toList();
        return new SentenceException(words, "'" + words + "' on " + named(target) + " could be several", all);
    }

    private SentenceException noPlace(Target target, String found) {
        List<String> places = Catalogue.possible(circuit, target.part()).stream()
                .map(f -> f.placeWords().isEmpty() ? f.place() : f.placeWords())
                .filter(p -> !p.isEmpty())
                .distinct()
                .toList();
        return places.isEmpty()
                ? new SentenceException(found, named(target) + " has no places, and so no '" + found + "'")
                : new SentenceException(found, target.part() + " has no '" + found + "'", places);
    }

    /** Where no place was said, those of its places too: what could be several is asked for next. */
    private List<String> modes(Target target) {
        List<FaultForm> meant = target.place() == null ? Catalogue.possible(circuit, target.part()) : forms(target);
        return meant.stream().map(f -> f.mode().compact()).distinct().toList();
    }

    /** Failures, and where the whole part is meant what may be fitted instead of it. */
    private List<String> allowed(Target target) {
        List<String> allowed = new ArrayList<>(modes(target));
        if (target.place() == null) {
            Replacements.of(circuit, target.part()).ifPresent(r -> allowed.addAll(r.words()));
        }
        return allowed;
    }

    private static String named(Target target) {
        return target.place() == null ? target.part() : target.part() + "." + target.place();
    }

    private static @Nullable Quantity amount(FaultForm form, String text) throws SentenceException {
        String bare = BEHIND_AMOUNT.matcher(text.strip()).replaceFirst("").strip();
        AmountRange range = form.amount();
        if (bare.isEmpty()) {
            return null;
        }
        String what = form.target() + "=" + form.mode().compact();
        if (range == null) {
            throw new SentenceException(bare, what + " takes no amount, not '" + bare + "'");
        }
        try {
            return Notation.parse(bare, range.unit());
        } catch (NotationException unreadable) {
            throw new SentenceException(bare, what + ": " + unreadable.getMessage());
        }
    }
}
