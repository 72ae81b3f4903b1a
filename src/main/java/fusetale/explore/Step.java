package fusetale.explore;

import fusetale.aftermath.Event;
import fusetale.aftermath.Story;
import fusetale.circuit.Circuit;
import fusetale.fault.Catalogue;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import fusetale.fault.Fitting;
import fusetale.fault.Supposition;
import fusetale.fault.Swap;
import fusetale.fault.UnfitSupposition;
import java.util.ArrayList;
import java.util.List;

/**
 * One step of a story: something that happens, and the machine from then on.
 *
 * @param what what happens, events alike told as one
 * @param after what is supposed of the machine once it has happened
 */
public record Step(Happening what, Supposition after) {
    /**
     * The steps of a story in their order. Before the first the machine is as the question supposes it.
     *
     * @param question whose aftermath the story is from
     */
    public static List<Step> of(Question question, Story story) {
        List<Step> steps = new ArrayList<>();
        Supposition supposed = question.supposition();
        for (List<Event> alike : Happening.alike(story.steps())) {
            List<Fault> happened = new ArrayList<>();
            for (Event event : alike) {
                Fault consequence = event.consequence();
                if (consequence != null) {
                    happened.add(consequence);
                }
            }
            supposed = after(question.healthy(), supposed, happened);
            steps.add(new Step(Happening.told(question.healthy(), alike), supposed));
        }
        return steps;
    }

    /**
     * What was supposed and what happened since. What happens to a part takes the place of what it contradicts there, unless
     * that is as bad already; what contradicts something elsewhere too changes nothing.
     *
     * @param healthy the machine as built
     * @param happened in this order
     */
    static Supposition after(Circuit healthy, Supposition supposed, List<Fault> happened) {
        Supposition all = supposed;
        for (Fault next : happened) {
            all = after(healthy, all, next);
        }
        return all;
    }

    private static Supposition after(Circuit healthy, Supposition all, Fault next) {
        List<Swap> swaps = all.swaps().stream().filter(s -> !fellOut(s, next)).toList();
        Supposition added = with(all.faults(), next, swaps);
        if (fits(healthy, added)) {
            return added;
        }
        Severity severity = new Severity(healthy);
        List<Fault> kept = new ArrayList<>();
        Fault worst = next;
        for (Fault there : all.faults()) {
            if (there.target().equals(next.target()) && !fits(healthy, with(List.of(there), next, swaps))) {
                worst = severity.worse(there, worst);
            } else {
                kept.add(there);
            }
        }
        if (all.faults().contains(worst)) {
            return all;
        }
        Supposition instead = with(kept, worst, swaps);
        return fits(healthy, instead) ? instead : all;
    }

    private static Supposition with(List<Fault> faults, Fault next, List<Swap> swaps) {
        List<Fault> more = new ArrayList<>(faults);
        more.add(next);
        return new Supposition(more, swaps);
    }

    /** A link that has left its clips is in them no more, whichever it was. */
    private static boolean fellOut(Swap swap, Fault next) {
        return next.mode() == FailureMode.MISSING
                && swap.part().equals(next.part())
                && swap.fitting() instanceof Fitting.Link;
    }

    /** Whether a machine can be as supposed. */
    static boolean fits(Circuit healthy, Supposition supposition) {
        try {
            Catalogue.check(healthy, supposition);
            return true;
        } catch (UnfitSupposition e) {
            return false;
        }
    }
}
