package fusetale.report.drawing;

import fusetale.aftermath.Strain;
import fusetale.aftermath.Stress;
import fusetale.explore.FuseFate;
import fusetale.explore.Outcome;
import fusetale.explore.Times;
import fusetale.explore.Words;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Marks of what came of a supposition: fuses that melt, parts above their rating. */
final class OutcomeMarks {
    private static final Words WORDS = Words.of(OutcomeMarks.class);

    private final MarkSketch sketch;
    private final Outcome outcome;
    private final Set<String> figured = new LinkedHashSet<>();

    OutcomeMarks(MarkSketch sketch, Outcome outcome) {
        this.sketch = sketch;
        this.outcome = outcome;
    }

    void draw() {
        outcome.fuses().forEach(this::fuse);
        Map<String, Stress> worst = new LinkedHashMap<>();
        // a healthy machine is drawn without them: what its designers took past a rating is in the table of stresses
        if (outcome.question().supposition().isNothing()) {
            return;
        }
        for (Stress stress : outcome.stresses()) {
            if (stress.strain() != Strain.TEMPERATURE) {
                worst.putIfAbsent(stress.part() + "." + stress.place(), stress);
                figured.add(name(stress));
            }
        }
        // heat is told of what has no other figure, once
        for (Stress stress : outcome.stresses()) {
            if (stress.strain() == Strain.TEMPERATURE && figured.add(name(stress))) {
                worst.put(stress.part() + "." + stress.place(), stress);
            }
        }
        worst.values().forEach(this::hatched);
    }

    /** Designator of the symbol that a figure belongs to. */
    private static String name(Stress stress) {
        int dot = stress.part().indexOf('.');
        return dot < 0 ? stress.part() : stress.part().substring(0, dot);
    }

    private void fuse(FuseFate fuse) {
        FuseFate.Between seconds = fuse.seconds();
        boolean melts = fuse.state() == FuseFate.State.MELTS;
        if (seconds == null || (!melts && fuse.state() != FuseFate.State.MAY_MELT)) {
            return;
        }
        sketch.symbol(fuse.part()).ifPresent(part -> {
            Leg leg = part.leg("");
            List<MarkSketch.Line> lines = new ArrayList<>();
            if (melts) {
                sketch.blown(leg);
            }
            String within = Double.isInfinite(seconds.most())
                    ? WORDS.say("may-hold")
                    : WORDS.say(melts ? "melts" : "may-melt", Times.between(seconds.least(), seconds.most()));
            lines.add(new MarkSketch.Line(within, MarkSketch.Ground.PLAIN));
            lines.add(new MarkSketch.Line(
                    Symbols.value(new Quantity(fuse.amps(), Unit.AMPERE)), MarkSketch.Ground.HATCHED));
            sketch.caption(part, leg, lines);
            figured.add(part.name());
        });
    }

    /** A leg's figures are told of {@code BR201.leg2}, a contact's of connector and pin. */
    private void hatched(Stress stress) {
        String figure = stress.strain() == Strain.TEMPERATURE
                ? WORDS.say("past", Symbols.value(new Quantity(stress.limit(), Unit.CELSIUS)))
                : Symbols.value(new Quantity(stress.value(), stress.strain().unit()));
        MarkSketch.Line line = new MarkSketch.Line(figure, MarkSketch.Ground.HATCHED);
        int dot = stress.part().indexOf('.');
        String place = dot < 0 ? stress.place() : stress.part().substring(dot + 1);
        sketch.symbol(name(stress))
                .or(() -> sketch.symbol(stress.part() + "." + stress.place()))
                .ifPresent(part -> sketch.caption(part, part.leg(place), List.of(line)));
    }
}
