package fusetale.desk.state;

import fusetale.explore.Answer;
import fusetale.explore.Explorer;
import fusetale.explore.Preparation;
import fusetale.explore.Prepared;
import fusetale.explore.Progress;
import fusetale.explore.Question;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.function.BooleanSupplier;

/**
 * Keeps the healthy sides of the last few benches, so that going back to one costs nothing. May be used by several threads; the
 * same bench asked for by two at once is worked out twice.
 */
final class Benches {
    private static final int MOST = 6;

    private final Explorer explorer = new Explorer(1);
    private final Deque<Prepared> known = new ArrayDeque<>();

    /** The healthy side of a question. */
    Preparation of(Question question, Progress progress, BooleanSupplier stopped) {
        synchronized (known) {
            for (Prepared prepared : known) {
                if (same(prepared.question(), question)) {
                    known.remove(prepared);
                    known.addFirst(prepared);
                    return new Preparation.Ready(prepared);
                }
            }
        }
        Preparation preparation = explorer.prepare(question, progress, stopped);
        if (preparation instanceof Preparation.Ready ready) {
            synchronized (known) {
                known.addFirst(ready.prepared());
                if (known.size() > MOST) {
                    known.removeLast();
                }
            }
        }
        return preparation;
    }

    private static boolean same(Question one, Question two) {
        return one.healthy().equals(two.healthy())
                && one.arrangement().equals(two.arrangement())
                && one.meter().equals(two.meter())
                && one.checks().equals(two.checks())
                && one.options().equals(two.options());
    }

    /** Whether a refusal only says that somebody stopped it. */
    static boolean onRequest(Answer.Unanswered refusal) {
        return refusal.why() == Answer.Why.STOPPED;
    }
}
