package fusetale.sentence;

import fusetale.bench.Meter;
import fusetale.circuit.Circuit;
import fusetale.fault.AmountRange;
import fusetale.fault.Fault;
import fusetale.fault.Supposition;
import fusetale.fault.Swap;
import fusetale.fault.UnfitSupposition;
import fusetale.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The whole state of the bench as one line, written and read:
 *
 * <pre>
 * Suppose D1 is shorted and F1 holds a 25 A fuse. Power on, F202 pulled, a 100 W lamp in series, meter on a.c. volts.
 * </pre>
 *
 * <p>What goes without saying is not said: nominal mains, switches as drawn, the usual meter, its ranges where it picks them
 * by itself. What is written reads back as the same state. Failures are read by {@link SentenceParser}, and written by
 * {@link SentencePrinter}. Immutable; for one circuit, whose names it looks up once.
 */
public final class Sentences {
    private final Circuit circuit;
    private final SentencePrinter printer;
    private final MeterWords meters;
    private final Names names;
    private final LineReader reader;
    private final Completions completions;

    /** Sentences about one circuit. */
    public Sentences(Circuit circuit) {
        this.circuit = circuit;
        this.printer = new SentencePrinter(circuit);
        this.meters = new MeterWords(Meter.builtIn());
        this.names = new Names(circuit);
        this.reader = new LineReader(circuit, names, meters);
        this.completions = new Completions(circuit, this, reader, names, meters);
    }

    /** The words that a line about the bench may begin with. */
    public static List<String> verbs() {
        return Verbs.all();
    }

    /** The circuit they are about. */
    public Circuit circuit() {
        return circuit;
    }

    /** The state as this circuit's sentences say it: mains that are off at nominal, switches as drawn not told. */
    public Sentence settled(Sentence state) {
        return state.withArrangement(BenchDraft.settled(circuit, state.arrangement()));
    }

    /**
     * The sentence.
     *
     * @throws IllegalArgumentException where it supposes what this circuit cannot have
     */
    public String text(Sentence state) {
        return pieces(state).stream().map(Piece::text).collect(Collectors.joining());
    }

    /** The sentence as a screen reader should say it: units and signs in words. */
    public String spoken(Sentence state) {
        return pieces(state).stream()
                .map(p -> p.kind() == Piece.Kind.WORDS ? p.text() : Spoken.words(p.text()))
                .collect(Collectors.joining());
    }

    /**
     * The sentence without its meter: where several functions are read, or none.
     *
     * @throws IllegalArgumentException as {@link #text}
     */
    public String textWithoutMeter(Sentence state) {
        String text = pieces(state).stream()
                .takeWhile(p -> p.kind() != Piece.Kind.METER)
                .map(Piece::text)
                .collect(Collectors.joining());
        return text.substring(0, text.length() - ", ".length()) + ".";
    }

    /**
     * The sentence cut into its pieces, the words between them included.
     *
     * @throws IllegalArgumentException as {@link #text}
     */
    public List<Piece> pieces(Sentence state) {
        Line line = new Line();
        suppositions(line, state.supposition());
        List<Piece> bench = BenchPieces.of(
                BenchDraft.settled(circuit, state.arrangement()),
                circuit.mains().volts().si());
        for (int i = 0; i < bench.size(); i++) {
            line.words(i == 0 ? "" : ", ");
            line.pieces.add(bench.get(i));
        }
        setting(line, state.setting());
        line.words(".");
        return List.copyOf(line.pieces);
    }

    private void suppositions(Line line, Supposition supposition) {
        List<Piece> clauses = new ArrayList<>();
        List<Swap> swaps = supposition.swaps();
        for (int i = 0; i < swaps.size(); i++) {
            Swap swap = swaps.get(i);
            clauses.add(new Piece(Piece.Kind.SWAP, SwapWords.clause(swap), SwapWords.compact(swap), i));
        }
        List<Fault> faults = supposition.faults();
        for (int i = 0; i < faults.size(); i++) {
            Fault fault = faults.get(i);
            clauses.add(new Piece(Piece.Kind.FAULT, clause(fault), SentencePrinter.compact(fault), i));
        }
        line.words(clauses.isEmpty() ? "Suppose nothing" : "Suppose ");
        for (int i = 0; i < clauses.size(); i++) {
            line.words(i == 0 ? "" : " and ");
            line.pieces.add(clauses.get(i));
        }
        line.words(". ");
    }

    private String clause(Fault fault) {
        try {
            return printer.clause(fault);
        } catch (UnfitSupposition unfit) {
            throw new IllegalArgumentException(unfit);
        }
    }

    private void setting(Line line, Setting setting) {
        Meter meter = setting.meter();
        String name = meters.usual(meter) ? "meter" : meter.name() + " meter";
        line.words(", ");
        line.add(Piece.Kind.METER, name, "meter " + meter.name());
        line.words(" on ");
        String function = setting.function().words();
        line.add(Piece.Kind.FUNCTION, function, function);
        Quantity range = Draft.rangeOf(meter);
        if (range != null) {
            line.words(", ");
            line.add(Piece.Kind.RANGE, "range " + SentencePrinter.said(range), "range " + SentencePrinter.said(range));
        }
        Leads leads = setting.leads();
        if (leads != null) {
            line.words(", ");
            line.add(
                    Piece.Kind.LEADS,
                    "red lead on " + leads.red() + ", black lead on " + leads.black(),
                    leads.red() + " to " + leads.black());
        }
    }

    /** Pieces being strung. */
    private static final class Line {
        private final List<Piece> pieces = new ArrayList<>();
        private int gaps;

        void words(String words) {
            if (!words.isEmpty()) {
                pieces.add(new Piece(Piece.Kind.WORDS, words, "", gaps++));
            }
        }

        void add(Piece.Kind kind, String text, String compact) {
            pieces.add(new Piece(kind, text, compact, 0));
        }
    }

    /** The fault that a piece is about; empty where it is about none. */
    public Optional<Fault> fault(Piece piece) {
        if (piece.kind() != Piece.Kind.FAULT) {
            return Optional.empty();
        }
        try {
            return Optional.of(reader.parser().fault(piece.compact()));
        } catch (SentenceException ofAnotherCircuit) {
            return Optional.empty();
        }
    }

    /** What the amount in a piece may be, and usually is; empty where it has none. */
    public Optional<AmountRange> range(Piece piece) {
        return PieceChange.range(circuit, fault(piece), piece.kind());
    }

    /** The amount of a piece of a state; empty where it has none, or the state no longer has the piece. */
    public Optional<Quantity> amount(Sentence state, Piece piece) {
        return present(state, piece).flatMap(p -> PieceChange.amount(circuit, state, p));
    }

    /** Where the piece stands now: the state may have changed since. */
    private Optional<Piece> present(Sentence state, Piece piece) {
        return pieces(state).stream()
                .filter(p -> p.kind() == piece.kind() && p.text().equals(piece.text()))
                .findFirst();
    }

    /**
     * The same without one piece: a part put back, a fuse put in, a connector plugged in, the plug put in again, the usual
     * meter on the function that the power asks for. Words between the pieces change nothing, nor does a piece that the state
     * no longer has.
     */
    public Sentence without(Sentence state, Piece piece) {
        return settled(present(state, piece)
                .map(p -> PieceChange.without(circuit, state, p))
                .orElse(state));
    }

    /**
     * The same with another amount in one piece.
     *
     * @param amount within {@link #range(Piece)}
     * @throws IllegalArgumentException where the piece has no amount, may not have this one, or is none of the state's
     */
    public Sentence withAmount(Sentence state, Piece piece, Quantity amount) {
        Piece there = present(state, piece)
                .orElseThrow(() -> new IllegalArgumentException("no " + piece.text() + " in this state"));
        return PieceChange.withAmount(circuit, state, there, amount);
    }

    /**
     * The state after one typed line. Failures are added to those supposed; another failure of the same place replaces it. A
     * line that begins with "suppose" replaces all that is supposed, and where a sentence about the bench follows the bench
     * and the meter too.
     *
     * @throws SentenceException where it cannot be understood, with what to change
     */
    public Sentence apply(Sentence now, String line) throws SentenceException {
        return reader.read(now, line);
    }

    /**
     * What some lines say that hold together, as from a command line: each is read as if "suppose" stood before it.
     *
     * @throws SentenceException where one cannot be understood, or they contradict each other
     */
    public Told supposing(Sentence now, List<String> lines) throws SentenceException {
        return reader.supposing(now, lines);
    }

    /**
     * What some lines about the bench say that hold together.
     *
     * @throws SentenceException as {@link #supposing}
     */
    public Told arranging(Sentence now, List<String> lines) throws SentenceException {
        return reader.arranging(now, lines);
    }

    /**
     * A whole sentence. What it does not say goes without saying; one that tells nothing of the bench leaves it as at first.
     *
     * @throws SentenceException where it cannot be understood
     */
    public Sentence parse(String text) throws SentenceException {
        return reader.read(Sentence.atFirst(circuit), text);
    }

    /** What a typed line would do. Whatever is typed, there is an answer. */
    public Understood understood(Sentence now, String line) {
        try {
            Sentence after = apply(now, line);
            return new Understood.Means(after, changed(now, after));
        } catch (SentenceException unclear) {
            return new Understood.Unclear(
                    String.valueOf(unclear.getMessage()),
                    unclear.allowed().stream().limit(Names.NEAR).toList());
        }
    }

    /** The pieces that one state has and another had not; or what is gone. */
    private String changed(Sentence now, Sentence after) {
        String fresh = differing(after, now);
        if (!fresh.isEmpty()) {
            return fresh;
        }
        String gone = differing(now, after);
        return gone.isEmpty() ? Texts.say("understood.nothing") : Texts.say("understood.gone", gone);
    }

    private String differing(Sentence of, Sentence from) {
        Set<String> known = pieces(from).stream().map(Piece::text).collect(Collectors.toSet());
        return pieces(of).stream()
                .filter(p -> p.kind() != Piece.Kind.WORDS && !known.contains(p.text()))
                .map(p -> switch (p.kind()) {
                    case FUNCTION -> Texts.say("understood.function", p.text());
                    case METER -> p.text().equals("meter") ? Texts.say("understood.usual-meter") : p.text();
                    default -> p.text();
                })
                .collect(Collectors.joining(", "));
    }

    /** How a line that is being typed may go on, the likeliest first, twelve at most. */
    public List<Completion> completions(Sentence now, String line) {
        return completions.of(now, line);
    }
}
