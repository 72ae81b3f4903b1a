package fusetale.explore;

import fusetale.aftermath.Surge;
import fusetale.bench.Arrangement;
import fusetale.bench.Bench;
import fusetale.bench.Seen;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.Bridge;
import fusetale.circuit.Circuit;
import fusetale.circuit.Mounting;
import fusetale.circuit.Part;
import fusetale.fault.Catalogue;
import fusetale.fault.Fitting;
import fusetale.fault.Supposition;
import fusetale.fault.Swap;
import fusetale.fault.UnfitSupposition;
import fusetale.mna.Solved;
import fusetale.quantity.Notation;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
        Map<String, Surge> asBuilt = surges(Supposition.NOTHING, currents, stopped);
        Map<String, Surge> asSupposed = mountedOnly() ? asBuilt : surges(question.supposition(), currents, stopped);
        SwapSide built = new SwapSide(baseline.settled().seen(), question.healthy(), asBuilt);
        SwapSide side = new SwapSide(supposed.seen(), drawn, asSupposed);
        Optional<SwapSide> builtHigh = atHighestMains(baseline.settled(), question.healthy(), stopped);
        Optional<SwapSide> sideHigh = atHighestMains(supposed, drawn, stopped);
        for (String name : touched) {
            rows(name, built.of(name, builtHigh), side.of(name, sideHigh));
        }
        return new SwapChanges(rows, assumptions(touched, built.wasIdle() || side.wasIdle()));
    }

    /** Whether no current can differ. */
    private boolean mountedOnly() {
        Supposition supposition = question.supposition();
        return supposition.faults().isEmpty()
                && supposition.swaps().stream().allMatch(s -> s.fitting() instanceof Fitting.Mounted);
    }

    /** What stands the voltages of today has to stand those of a good day of the mains; not asked where others were set. */
    private Optional<SwapSide> atHighestMains(Settled settled, Circuit circuit, BooleanSupplier stopped)
            throws UnfitArrangement {
        Arrangement bare = settled.machine().bare();
        if (!mainsAsStated(bare)) {
            return Optional.empty();
        }
        Arrangement high = bare.withMainsVolts(highestVolts());
        Bench bench =
                Bench.of(settled.machine().arranged(), high, question.meter()).shown();
        Solved<Seen> look = bench.look(List.of(), settled.seen(), stopped);
        return look instanceof Solved.Found<Seen> found
                ? Optional.of(new SwapSide(found.value(), circuit, Map.of()))
                : Optional.empty();
    }

    private boolean mainsAsStated(Arrangement arrangement) {
        double stated = question.healthy().mains().volts().si();
        return arrangement.mainsVolts() == stated && highestVolts() > stated;
    }

    private double highestVolts() {
        return question.healthy().mains().highestVolts().si();
    }

    private Map<String, Surge> surges(Supposition supposition, List<String> currents, BooleanSupplier stopped)
            throws UnfitArrangement, UnfitSupposition {
        Machine machine = Machine.of(question.healthy(), question.arrangement(), supposition);
        return SwitchOn.of(machine, currents, stopped);
    }

    private void rows(String name, Map<SwapFigure, SwapSide.Figure> built, Map<SwapFigure, SwapSide.Figure> supposed) {
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
        boolean bridge = touched.stream().anyMatch(t -> drawn.part(t).orElse(null) instanceof Bridge);
        if (has(SwapFigure.CONDUCTION_ANGLE)) {
            said.add(WORDS.say(bridge ? "swap.leg" : "swap.angle"));
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
        boolean voltages = rows.stream().anyMatch(r -> r.figure().voltage());
        if (voltages && mainsAsStated(question.arrangement())) {
            said.add(WORDS.say(
                    "swap.mains",
                    Notation.format(question.healthy().mains().volts(), 3),
                    Notation.format(new Quantity(highestVolts(), Unit.VOLT), 3)));
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

    private static boolean sunk(Circuit circuit, String name) {
        Part part = circuit.part(name).orElse(null);
        return part != null && Mounting.of(part.about()).sunk();
    }

    private Set<String> onPlate(Set<String> touched) {
        Set<String> plated = new TreeSet<>();
        for (SwapChange row : rows) {
            boolean sunk = sunk(drawn, row.part()) || sunk(question.healthy(), row.part());
            if (sunk && row.figure() == SwapFigure.JUNCTION_TEMPERATURE && touched.contains(row.part())) {
                plated.add(row.part());
            }
        }
        return plated;
    }
}
