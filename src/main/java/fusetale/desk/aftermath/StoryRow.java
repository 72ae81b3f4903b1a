package fusetale.desk.aftermath;

import fusetale.aftermath.Story;
import fusetale.explore.Happening;
import fusetale.explore.Question;
import fusetale.explore.Step;
import fusetale.explore.Words;
import fusetale.fault.Supposition;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * One order of events, to be walked step by step.
 *
 * @param start what is supposed at switch-on
 * @param share in how many machines it goes this way
 * @param steps what happens, in this order
 * @param end how it ends, in words
 */
public record StoryRow(Supposition start, String share, List<Step> steps, String end) {
    private static final Words WORDS = Words.of(StoryRow.class);

    /** Copies the list. */
    public StoryRow {
        steps = List.copyOf(steps);
    }

    /**
     * A story of a question's aftermath.
     *
     * @param machines how many were drawn
     */
    static StoryRow of(Question question, Story story, int machines) {
        String share = story.count() == machines
                ? WORDS.say("story.all")
                : WORDS.say("story.share", Happening.share(story.count(), machines));
        String end = WORDS.say("end." + story.end().name().toLowerCase(Locale.ROOT));
        return new StoryRow(question.supposition(), share, Step.of(question, story), end);
    }

    /** All of it in words. */
    public String words() {
        if (steps.isEmpty()) {
            return WORDS.say("story.unchanged");
        }
        List<String> parts = new ArrayList<>();
        for (Step step : steps) {
            parts.add(WORDS.say("story.step", step.what().words(), step.what().when()));
        }
        return String.join(WORDS.say("story.then"), parts) + ",  " + end;
    }

    /** The story as a screen reader says it. */
    public String spoken() {
        return WORDS.say("spoken.story", share, words());
    }

    /**
     * Where one stands in the story.
     *
     * @param after how many steps have happened; 0 at switch-on, {@link #steps} of them at its end
     */
    public Moment at(int after) {
        if (after == 0) {
            return new Moment(0, steps.size(), start, WORDS.say("step.start"));
        }
        Step step = steps.get(after - 1);
        String said = WORDS.say(
                "step.after",
                after,
                steps.size(),
                step.what().words(),
                step.what().when());
        return new Moment(after, steps.size(), step.after(), said);
    }

    /**
     * A place in a story: what is supposed of the machine there.
     *
     * @param after how many steps have happened
     * @param of how many steps there are
     * @param supposition what is supposed of the machine now
     * @param words where one stands: {@code After step 1 of 2: F201: melts (0.5 to 14 s)}
     */
    public record Moment(int after, int of, Supposition supposition, String words) {}
}
