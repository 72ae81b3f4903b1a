package fusetale.explore;

import fusetale.aftermath.Surge;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.Circuit;
import fusetale.circuit.Mounting;
import fusetale.circuit.Part;
import fusetale.fault.Catalogue;
import fusetale.fault.Supposition;
import fusetale.fault.Swap;
import fusetale.fault.UnfitSupposition;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;

/** Sets the figures of swapped parts, and of what works together with them, side by side. */
final class SwapEffects {
    private static final Words WORDS = Words.of(SwapEffects.class);

    private final Question question;
    private final Circuit drawn;
    private final List<SwapChange> rows = new ArrayList<>();

    private SwapEffects(Question question, Circuit drawn) {
        this.question = question;
        this.drawn = drawn;
    }

    /**
     * Of a question with the power on; nothing where it swaps nothing.
     *
     * @param supposed the machine as supposed, settled
     */
    static SwapChanges of(Question question, Baseline baseline, Settled supposed, BooleanSupplier stopped)
            throws UnfitArrangement, UnfitSupposition {
        List<Swap> swaps = question.supposition().swaps();
        if (swaps.isEmpty() || !question.arrangement().powerOn()) {
            return SwapChanges.NONE;
        }
        Circuit drawn = Catalogue.apply(question.healthy(), new Supposition(List.of(), swaps));
        return new SwapEffects(question, drawn).changes(baseline, supposed, stopped);
    }

    private SwapChanges changes(Baseline baseline, Settled supposed, BooleanSupplier stopped)
            throws UnfitArrangement, UnfitSupposition {
        Set<String> touched = new Feeding(drawn).touched(question.supposition().swaps());
        List<String> currents = new ArrayList<>();
        for (String name : touched) {
            drawn.part(name).map(SwapSide::surging).ifPresent(currents::addAll);
        }
        SwapSide built = new SwapSide(
                baseline.settled().seen(), question.healthy(), surges(Supposition.NOTHING, currents, stopped));
        SwapSide side = new SwapSide(supposed.seen(), drawn, surges(question.supposition(), currents, stopped));
        for (String name : touched) {
            rows(name, built.of(name), side.of(name));
        }
        return new SwapChanges(rows, assumptions(touched, built.wasIdle() || side.wasIdle()));
    }

    private Map<String, Surge> surges(Supposition supposition, List<String> currents, BooleanSupplier stopped)
            throws UnfitArrangement, UnfitSupposition {
        Machine machine = Machine.of(question.healthy(), question.arrangement(), supposition);
        return SwitchOn.of(machine, currents, stopped);
    }

    private void rows(
            String name, Map<SwapFigure, SwapSide.Figure> built, Map<SwapFigure, SwapSide.Figure> supposed) {
        for (SwapFigure figure : SwapFigure.values()) {
            SwapSide.Figure before = built.get(figure);
            SwapSide.Figure after = supposed.get(figure);
            if (before != null || after != null) {
                rows.add(new SwapChange(
                        name,
                        figure,
                        before == null ? null : before.band(),
                        after == null ? null : after.band(),
                        after == null ? Double.POSITIVE_INFINITY : after.rating()));
            }
        }
    }

    private List<String> assumptions(Set<String> touched, boolean idle) {
        List<String> said = new ArrayList<>();
        if (has(SwapFigure.CONDUCTION_ANGLE)) {
            said.add(WORDS.say("swap.leg"));
        }
        if (has(SwapFigure.SURGE_CURRENT)) {
            said.add(WORDS.say("swap.surge"));
        }
        if (has(SwapFigure.JUNCTION_TEMPERATURE)) {
            said.add(WORDS.say("swap.junction"));
            if (!onPlate(touched).isEmpty()) {
                said.add(WORDS.say("swap.plate", String.join(", ", onPlate(touched))));
            }
        }
        if (has(SwapFigure.SAFE_CURRENT)) {
            said.add(WORDS.say("swap.safe"));
        }
        if (idle) {
            said.add(WORDS.say("swap.idle"));
        }
        return said;
    }

    private boolean has(SwapFigure figure) {
        return rows.stream().anyMatch(r -> r.figure() == figure);
    }

    private Set<String> onPlate(Set<String> touched) {
        Set<String> plated = new TreeSet<>();
        for (SwapChange row : rows) {
            Part part = drawn.part(row.part()).orElse(null);
            boolean sunk = part != null && Mounting.of(part.about()).sunk();
            if (sunk && row.figure() == SwapFigure.JUNCTION_TEMPERATURE && touched.contains(row.part())) {
                plated.add(row.part());
            }
        }
        return plated;
    }
}
