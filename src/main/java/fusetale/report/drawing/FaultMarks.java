package fusetale.report.drawing;

import fusetale.circuit.Circuit;
import fusetale.circuit.Fuse;
import fusetale.explore.Question;
import fusetale.explore.Words;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import fusetale.fault.Supposition;
import fusetale.fault.Swap;
import fusetale.fault.UnfitSupposition;
import fusetale.quantity.Quantity;
import fusetale.sentence.SentencePrinter;
import java.util.ArrayList;
import java.util.List;

/** Marks of what is supposed. */
final class FaultMarks {
    private static final Words WORDS = Words.of(FaultMarks.class);

    private final MarkSketch sketch;
    private final Circuit circuit;
    private final Supposition supposition;
    private final SentencePrinter printer;

    FaultMarks(MarkSketch sketch, Question question) {
        this.sketch = sketch;
        this.circuit = question.healthy();
        this.supposition = question.supposition();
        this.printer = new SentencePrinter(circuit);
    }

    void draw() {
        supposition.swaps().forEach(this::swap);
        supposition.faults().forEach(this::fault);
    }

    private void swap(Swap swap) {
        sketch.symbol(swap.part()).ifPresent(part -> {
            Leg leg = part.leg("");
            sketch.swipe(leg);
            sketch.caption(part, leg, List.of(swiped(words(new Supposition(List.of(), List.of(swap)), swap.part()))));
        });
    }

    private void fault(Fault fault) {
        for (DrawnPart part : symbols(fault)) {
            Leg leg = part.legs().containsKey(fault.place()) ? part.leg(fault.place()) : part.leg("");
            sketch.swipe(leg);
            sign(fault.mode(), leg);
            sketch.caption(part, leg, lines(fault));
        }
    }

    /** A fault of a connector's pin is marked at that pin, one of the connector at its first. */
    private List<DrawnPart> symbols(Fault fault) {
        if (circuit.connector(fault.part()).isEmpty()) {
            return sketch.symbol(fault.part()).stream().toList();
        }
        return sketch.plan().connectors().stream()
                .filter(c -> c.name().equals(fault.part()))
                .flatMap(c -> c.contacts().stream())
                .filter(c -> fault.place().isEmpty() || c.name().equals(fault.target()))
                .limit(1)
                .toList();
    }

    private void sign(FailureMode mode, Leg leg) {
        switch (mode) {
            case SHORT, STUCK_ON -> sketch.strap(leg, false);
            case LEAKY -> sketch.strap(leg, true);
            case OPEN, CRACKED_JOINT, STUCK_OFF -> sketch.slashes(leg, Tone.MARKER_LINE);
            case BLOWN -> sketch.blown(leg);
            case MISSING -> sketch.absent(leg);
            default -> {
                // the caption tells it, with its amount
            }
        }
    }

    private List<MarkSketch.Line> lines(Fault fault) {
        Quantity amount = fault.amount();
        if (fault.mode() == FailureMode.WRONG_RATING
                && amount != null
                && circuit.part(fault.part()).orElse(null) instanceof Fuse fuse) {
            return List.of(
                    swiped(WORDS.say("fitted", Symbols.value(amount))),
                    new MarkSketch.Line(
                            WORDS.say(
                                    "drawing-says", Symbols.value(fuse.marked().ratedAmps())),
                            MarkSketch.Ground.PLAIN));
        }
        List<MarkSketch.Line> lines = new ArrayList<>();
        lines.add(swiped(words(new Supposition(List.of(fault)), fault.part())));
        return lines;
    }

    private static MarkSketch.Line swiped(String text) {
        return new MarkSketch.Line(text, MarkSketch.Ground.SWIPED);
    }

    /** The clause of a supposition without the part's name: {@code leg 1 is shorted}, {@code shorted}. */
    private String words(Supposition one, String part) {
        try {
            String clause = printer.clauses(one).get(0);
            String rest =
                    clause.startsWith(part) ? clause.substring(part.length()).strip() : clause;
            return rest.replaceFirst("(^| )(is|has|holds) ", "$1");
        } catch (UnfitSupposition e) {
            // what cannot be asked is told where it is asked
            return part;
        }
    }
}
