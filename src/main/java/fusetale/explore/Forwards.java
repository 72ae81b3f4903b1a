package fusetale.explore;

import fusetale.aftermath.Aftermath;
import fusetale.aftermath.Event;
import fusetale.fault.Supposition;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * A machine as supposed played forward, beside the machine as built.
 *
 * @param aftermath what follows as supposed; null where nothing was played
 * @param losses what takes parts past their damage limit within {@link FuseFate#CERTAIN_SECONDS} and would not do so as built,
 *     soonest first
 */
record Forwards(@Nullable Aftermath aftermath, List<Happening> losses) {
    /** Nothing played. */
    static final Forwards NOTHING = new Forwards(null, List.of());

    /** Copies the list. */
    Forwards {
        losses = List.copyOf(losses);
    }

    /**
     * Plays a machine forward where its question asks for it and the power is on. As built it is played only where something is
     * lost as supposed.
     */
    static Forwards of(Question question, Machine machine, Baseline baseline, BooleanSupplier stopped) {
        Aftermath.Settings settings = question.options().aftermath();
        if (settings == null || !question.arrangement().powerOn()) {
            return NOTHING;
        }
        Aftermath supposed =
                Aftermath.of(new Forward(question, machine.arranged(), baseline.near(), stopped), settings);
        List<Event> lost = supposed.damageWithin(FuseFate.CERTAIN_SECONDS);
        if (lost.isEmpty()) {
            return new Forwards(supposed, List.of());
        }
        Question asBuilt = question.supposing(Supposition.NOTHING);
        Aftermath built = Aftermath.of(new Forward(asBuilt, baseline.asArranged(), baseline.near(), stopped), settings);
        List<Event> anyway = built.damageWithin(FuseFate.CERTAIN_SECONDS);
        List<Event> losses = lost.stream()
                .filter(e -> anyway.stream().noneMatch(b -> b.target().equals(e.target()) && b.harm() == e.harm()))
                .toList();
        return new Forwards(supposed, Happening.of(question.healthy(), losses));
    }
}
