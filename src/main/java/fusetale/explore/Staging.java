package fusetale.explore;

import fusetale.aftermath.Stress;
import fusetale.bench.Reading;
import fusetale.circuit.StartStage;
import fusetale.fault.Supposition;
import fusetale.quantity.Notation;
import fusetale.quantity.Quantity;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/** Answers a question once a stage of the machine's staged start-up, and says at each whether to go on. */
public final class Staging {
    private static final Words WORDS = Words.of(Staging.class);

    /** A figure past its rating that the healthy machine has too, by no more than this less, is not the supposition's. */
    private static final double WORSE_RATIO = 1.2;

    /** What comes up by less is stray voltage that nobody goes by. */
    private static final double LEAST_CHANGE_VOLTS = 0.05;

    private Staging() {}

    /** The stages, or the reason why a stage has no answer. */
    public sealed interface Result {
        /**
         * All stages have an answer.
         *
         * @param start the stages
         */
        record Done(StagedStart start) implements Result {}

        /**
         * A stage has none.
         *
         * @param stage its name
         * @param reason why
         */
        record None(String stage, Answer.Unanswered reason) implements Result {}
    }

    /**
     * Asks.
     *
     * @param question with the arrangement of the last stage, power on
     * @param progress told how many stages are answered
     * @param stopped asked now and then; true ends the work
     */
    public static Result of(Explorer explorer, Question question, Progress progress, BooleanSupplier stopped) {
        StartPlan plan = StartPlan.of(question.healthy());
        int count = plan.stages().size();
        List<StagedStart.Stage> stages = new ArrayList<>();
        Outcome before = null;
        for (int k = 0; k < count; k++) {
            StartStage stage = plan.stages().get(k);
            Question here = question.arranged(plan.at(k, question.arrangement()));
            List<Answer> answers = explorer.answerAll(
                    here, List.of(Supposition.NOTHING, question.supposition()), (done, of) -> {}, stopped);
            for (Answer answer : answers) {
                if (answer instanceof Answer.Unanswered none) {
                    return new Result.None(stage.name(), none);
                }
            }
            Outcome healthy = ((Answer.Answered) answers.get(0)).outcome();
            Outcome supposed = ((Answer.Answered) answers.get(1)).outcome();
            List<String> in = new ArrayList<>(stage.fusesIn());
            in.addAll(stage.pluggedIn());
            stages.add(new StagedStart.Stage(
                    stage.name(), in, healthy, supposed, telling(before, supposed), reasons(healthy, supposed)));
            before = healthy;
            progress.at(k + 1, count);
        }
        return new Result.Done(new StagedStart(stages));
    }

    private static List<Compared> telling(@Nullable Outcome before, Outcome now) {
        Map<Object, Reading> earlier = new HashMap<>();
        if (before != null) {
            before.readings().forEach(row -> earlier.put(row.check(), row.asBuilt()));
        }
        return now.readings().stream()
                .filter(row -> !row.tooCloseToTell() || comesUp(earlier.get(row.check()), row))
                .toList();
    }

    /** Whether a healthy machine reads something else here than at the stage before, or at the first stage anything at all. */
    private static boolean comesUp(@Nullable Reading before, Compared row) {
        Reading now = row.asBuilt();
        double change = Math.abs(now.value() - (before == null ? 0 : before.value()));
        if (change < LEAST_CHANGE_VOLTS) {
            return false;
        }
        if (before != null) {
            return row.healthy().moved(now, before) >= 1;
        }
        double half = (row.healthy().high() - row.healthy().low()) / 2;
        return !now.overRange() && Math.abs(now.value()) > 2 * Math.max(half, now.halfWidth());
    }

    private static List<String> reasons(Outcome healthy, Outcome supposed) {
        List<String> reasons = new ArrayList<>();
        if (!healthy.doNotPowerUp()) {
            supposed.doubts().stream()
                    .filter(d -> d.severity() == Doubt.Severity.DANGER)
                    .forEach(d -> reasons.add(WORDS.say("stage.danger", withoutStop(d.text()))));
        }
        fuses(healthy, supposed, reasons);
        lamp(supposed.bench().seriesLamp()).ifPresent(reasons::add);
        List<Compared> moved = supposed.moved();
        if (!moved.isEmpty()) {
            Compared first = moved.get(0);
            reasons.add(WORDS.say(
                    "stage.moved",
                    moved.size(),
                    supposed.readings().size(),
                    first.check().from(),
                    first.check().function().words(),
                    first.asSupposed().shows(),
                    first.asBuilt().shows()));
        }
        supposed.stresses().stream()
                .filter(s -> s.ratio() > WORSE_RATIO * asBuilt(healthy, s))
                .findFirst()
                .ifPresent(s -> reasons.add(WORDS.say(
                        "stage.stress",
                        s.part(),
                        s.strain().words(),
                        Notation.format(new Quantity(s.value(), s.strain().unit()), 2),
                        Notation.format(new Quantity(s.limit(), s.strain().unit()), 3))));
        return reasons;
    }

    private static String withoutStop(String sentence) {
        return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    }

    /** How far past its rating the same figure is as built; 1 where it is not. */
    private static double asBuilt(Outcome healthy, Stress stress) {
        return healthy.stresses().stream()
                .filter(s -> s.part().equals(stress.part())
                        && s.place().equals(stress.place())
                        && s.strain() == stress.strain())
                .mapToDouble(Stress::ratio)
                .findFirst()
                .orElse(1 / WORSE_RATIO);
    }

    private static void fuses(Outcome healthy, Outcome supposed, List<String> reasons) {
        for (int k = 0; k < supposed.fuses().size(); k++) {
            FuseFate fate = supposed.fuses().get(k);
            FuseFate.Between seconds = fate.seconds();
            if (seconds != null && healthy.fuses().get(k).seconds() == null) {
                reasons.add(WORDS.say(
                        "stage.fuse-melts",
                        fate.part(),
                        fate.state().words(),
                        Double.isInfinite(seconds.most())
                                ? WORDS.say("stage.from", Times.of(seconds.least()))
                                : Times.between(seconds.least(), seconds.most())));
            }
        }
    }

    private static Optional<String> lamp(@Nullable SeriesLamp lamp) {
        return lamp == null || lamp.asBuilt().brightness() == lamp.asSupposed().brightness()
                ? Optional.empty()
                : Optional.of(WORDS.say(
                        "stage.lamp",
                        lamp.asSupposed().brightness().words(),
                        lamp.asBuilt().brightness().words()));
    }
}
