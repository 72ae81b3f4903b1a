package fusetale.desk.state;

import fusetale.bench.Arrangement;
import fusetale.bench.Observation.Aspect;
import fusetale.bench.Observation.Sight;
import fusetale.circuit.Circuit;
import fusetale.circuit.Coil;
import fusetale.circuit.Controller;
import fusetale.circuit.DualCoil;
import fusetale.circuit.Electrolytic;
import fusetale.circuit.Fuse;
import fusetale.circuit.Lamp;
import fusetale.circuit.Part;
import fusetale.circuit.Relay;
import fusetale.explore.Words;
import fusetale.match.Ask;
import fusetale.match.Evidence;
import fusetale.match.Intake;
import fusetale.match.Shown;
import fusetale.sentence.Sentence;
import fusetale.sentence.SentenceException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** What can be seen, heard and felt of a board's parts, and the words for it. */
public final class Sights {
    private static final Words WORDS = Words.of(Sights.class);
    private static final Pattern COUNT = Pattern.compile("(.*?)\\s*(\\d+)\\b.*");

    private final Circuit board;

    Sights(Circuit board) {
        this.board = board;
    }

    /**
     * Something that may be seen.
     *
     * @param words in words: {@code wire gone}, {@code stops at 2 of 4}
     * @param shown as the matcher takes it
     */
    public record Choice(String words, Shown.Seen shown) {}

    /** What is noticed before any meter is at hand; fuses with the plug out. */
    public List<Ask.Noticed> intake() {
        return Intake.of(board).stream()
                .map(a -> new Ask.Noticed(
                        Sentence.named(ofFuse(a.aspect()) ? Arrangement.unpowered() : a.arrangement()),
                        a.part(),
                        a.aspect()))
                .toList();
    }

    private static boolean ofFuse(Aspect aspect) {
        return aspect == Aspect.FUSE || aspect == Aspect.RATING;
    }

    /** Whether a driver commands a part, so that what it does depends on who asks for it. */
    public boolean commanded(String part) {
        return Intake.commands(board).containsKey(part);
    }

    /** When something is noticed. */
    public enum Occasion {
        /** As the machine came, plug out or in. */
        AS_FOUND,
        /** While the machine calls for the part. */
        CALLED,
        /** While nothing calls for it. */
        AT_REST,
        /** By ear. */
        BY_EAR
    }

    /** When something is noticed. */
    public Occasion occasion(Ask.Noticed ask) {
        if (ask.aspect() == Aspect.HUM) {
            return Occasion.BY_EAR;
        }
        if (ask.arrangement().heldOn().contains(ask.part())) {
            return Occasion.CALLED;
        }
        return ofDriven(ask) ? Occasion.AT_REST : Occasion.AS_FOUND;
    }

    private boolean ofDriven(Ask.Noticed ask) {
        return (ask.aspect() == Aspect.LAMP || ask.aspect() == Aspect.COIL) && commanded(ask.part());
    }

    /**
     * What shows that a part does as it should. A driver that is at rest holds its coil or lamp off, that is what commanding it
     * means; of what no driver commands it depends on the machine: empty.
     */
    public Optional<Shown.Seen> sound(Ask.Noticed ask) {
        boolean called = occasion(ask) == Occasion.CALLED;
        Sight sight = switch (ask.aspect()) {
            case FUSE -> Sight.WIRE_WHOLE;
            case RATING -> Sight.RIGHT_RATING;
            case START_UP -> Sight.STARTS;
            case HEAT -> Sight.NOT_HOT;
            case HUM -> Sight.QUIET;
            case LAMP -> called ? Sight.LIT : Sight.DARK;
            case COIL -> called ? Sight.PULLS_IN : Sight.STILL;
        };
        boolean plain = called || ofDriven(ask) || (ask.aspect() != Aspect.LAMP && ask.aspect() != Aspect.COIL);
        return plain ? Optional.of(new Shown.Seen(sight)) : Optional.empty();
    }

    /** What may be noticed of a part; heat of any. */
    private static List<Aspect> aspects(Part part) {
        List<Aspect> all = new ArrayList<>();
        if (part instanceof Fuse) {
            all.add(Aspect.FUSE);
            all.add(Aspect.RATING);
        } else if (part instanceof Lamp) {
            all.add(Aspect.LAMP);
        } else if (part instanceof Coil || part instanceof Relay || part instanceof DualCoil) {
            all.add(Aspect.COIL);
        } else if (part instanceof Controller) {
            all.add(Aspect.START_UP);
        } else if (part instanceof Electrolytic) {
            all.add(Aspect.HUM);
        }
        all.add(Aspect.HEAT);
        return all;
    }

    /** Fuses are looked at with the plug out, what a driver commands while it is commanded, the rest with the plug in. */
    private Ask.Noticed ask(String part, Aspect aspect, Arrangement bench) {
        Arrangement on = bench.powerOn() ? bench : Arrangement.powered(board);
        boolean driven = commanded(part);
        return new Ask.Noticed(
                Sentence.named(
                        switch (aspect) {
                            case FUSE, RATING -> Arrangement.unpowered();
                            case COIL, LAMP -> driven && !on.heldOn().contains(part) ? on.withHeldOn(part) : on;
                            default -> on;
                        }),
                part,
                aspect);
    }

    /** Everything that may be seen where something is asked, in the order of getting worse. */
    public List<Choice> choices(Ask.Noticed ask) {
        List<Choice> all = new ArrayList<>();
        for (Sight sight : Sight.values()) {
            if (sight.aspect() != ask.aspect()) {
                continue;
            }
            if (sight == Sight.STOPS) {
                int checks = board.part(ask.part())
                        .filter(Controller.class::isInstance)
                        .map(p -> ((Controller) p).checks().size())
                        .orElse(0);
                for (int k = 0; k < checks; k++) {
                    all.add(new Choice(WORDS.say("stops", k, checks), new Shown.Seen(sight, k)));
                }
            } else {
                all.add(new Choice(sight.words(), new Shown.Seen(sight)));
            }
        }
        return all;
    }

    /** What was seen where something was asked. */
    public Found.Noted found(Ask.Noticed ask, Shown.Seen seen) {
        String words = choices(ask).stream()
                .filter(c -> c.shown().equals(seen))
                .map(Choice::words)
                .findFirst()
                .orElseGet(() -> seen.sight().words());
        return new Found.Noted(ask.part() + " " + words, new Evidence(ask, seen), null);
    }

    /**
     * A line that begins with a part's name and says what it does; empty where it is none. Where something is asked, the name
     * may be left out, and a number chooses.
     *
     * @param benchSaid whether the bench was said, so that nothing goes without saying
     */
    Optional<Found.Noted> read(String typed, Ask.@Nullable Noticed asked, Arrangement bench, boolean benchSaid)
            throws SentenceException {
        String line = typed.strip();
        int blank = line.indexOf(' ');
        String first = blank < 0 ? line : line.substring(0, blank);
        Optional<String> part = part(first);
        if (part.isEmpty()) {
            if (asked == null) {
                return Optional.empty();
            }
            Optional<Shown.Seen> seen = chosen(line, choices(asked));
            if (seen.isEmpty() && blank < 0) {
                List<String> words = choices(asked).stream().map(Choice::words).toList();
                throw SentenceException.near(line, WORDS.say("choose", String.join(", ", words)), words);
            }
            return seen.map(s -> found(asked, s));
        }
        if (blank < 0) {
            return Optional.empty();
        }
        String rest = line.substring(blank + 1).strip().toLowerCase(Locale.ROOT);
        String atRest = WORDS.say("at-rest");
        boolean resting = rest.endsWith(atRest);
        String does =
                resting ? rest.substring(0, rest.length() - atRest.length()).strip() : rest;
        for (Aspect aspect : aspects(board, part.get())) {
            Ask.Noticed ask = benchSaid || resting
                    ? new Ask.Noticed(Sentence.named(bench), part.get(), aspect)
                    : ask(part.get(), aspect, bench);
            Optional<Shown.Seen> seen = seen(does, choices(ask));
            if (seen.isPresent()) {
                return Optional.of(found(ask, seen.get()));
            }
        }
        return Optional.empty();
    }

    private static List<Aspect> aspects(Circuit board, String part) {
        return board.part(part).map(Sights::aspects).orElse(List.of(Aspect.HEAT));
    }

    /** A part by its name, or the controller by what it is noticed for. */
    private Optional<String> part(String word) {
        if (word.equalsIgnoreCase(Aspect.START_UP.words())) {
            return board.parts().stream()
                    .filter(Controller.class::isInstance)
                    .map(Part::name)
                    .findFirst();
        }
        return board.parts().stream()
                .map(Part::name)
                .filter(word::equalsIgnoreCase)
                .findFirst();
    }

    private static Optional<Shown.Seen> chosen(String line, List<Choice> choices) {
        if (line.matches("\\d{1,2}")) {
            int number = Integer.parseInt(line);
            if (number >= 1 && number <= choices.size()) {
                return Optional.of(choices.get(number - 1).shown());
            }
        }
        return seen(line.toLowerCase(Locale.ROOT), choices);
    }

    /** What is meant: the beginning of its words, or of another word for it; the first that fits. */
    private static Optional<Shown.Seen> seen(String does, List<Choice> choices) {
        Matcher counting = COUNT.matcher(does);
        boolean counts = counting.matches();
        String bare = counts ? counting.group(1).replaceFirst(" at$", "") : does;
        if (bare.isEmpty()) {
            return Optional.empty();
        }
        int count = counts ? Integer.parseInt(counting.group(2)) : -1;
        return choices.stream()
                .filter(c -> c.shown().counted() < 0 || c.shown().counted() == count)
                .filter(c -> names(c.shown().sight()).stream().anyMatch(n -> n.startsWith(bare) || bare.equals(n)))
                .map(Choice::shown)
                .findFirst();
    }

    private static List<String> names(Sight sight) {
        List<String> names = new ArrayList<>(List.of(sight.words()));
        Arrays.stream(WORDS.say("sight." + sight).split(",", -1))
                .map(String::strip)
                .filter(s -> !s.isEmpty())
                .forEach(names::add);
        return names;
    }
}
