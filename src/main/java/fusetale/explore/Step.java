package fusetale.explore;

import fusetale.aftermath.Event;
import fusetale.aftermath.Story;
import fusetale.circuit.Circuit;
import fusetale.fault.Catalogue;
import fusetale.fault.Fault;
import fusetale.fault.Supposition;
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
     * What was supposed and what happened since. What happens to a part takes the place of what it contradicts there; what
     * contradicts something elsewhere too changes nothing.
     *
     * @param healthy the machine as built
     * @param happened in this order
     */
    static Supposition after(Circuit healthy, Supposition supposed, List<Fault> happened) {
        Supposition all = supposed;
        for (Fault next : happened) {
            List<Fault> added = new ArrayList<>(all.faults());
            added.add(next);
            List<Fault> instead = new ArrayList<>(all.faults().stream()
                    .filter(f -> !f.target().equals(next.target()))
                    .toList());
            instead.add(next);
            if (fits(healthy, added)) {
                all = new Supposition(added, supposed.swaps());
            } else if (fits(healthy, instead)) {
                all = new Supposition(instead, supposed.swaps());
            }
        }
        return all;
    }

    /** Whether a machine can have some faults together. */
    static boolean fits(Circuit healthy, List<Fault> faults) {
        try {
            Catalogue.check(healthy, new Supposition(faults));
            return true;
        } catch (UnfitSupposition e) {
            return false;
        }
    }
}
