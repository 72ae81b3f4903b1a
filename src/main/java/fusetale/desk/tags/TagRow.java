package fusetale.desk.tags;

import fusetale.bench.Check;
import fusetale.circuit.Circuit;
import fusetale.circuit.TestPoint;
import fusetale.desk.state.BenchState;
import fusetale.desk.state.DeskModel;
import fusetale.desk.state.DeskModel.Freshness;
import fusetale.desk.state.Shown;
import fusetale.explore.Compared;
import fusetale.explore.Words;
import fusetale.quantity.Notation;
import fusetale.quantity.Quantity;
import fusetale.sentence.Measured;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Makes the figures of all tags from what the model shows. */
public final class TagRow {
    private static final Words WORDS = Words.of(TagRow.class);

    private TagRow() {}

    /** One tag a check, in their order. */
    public static List<TagFigures> of(DeskModel model) {
        Map<Check, Compared> readings = new HashMap<>();
        boolean follows = model.glancedProperty().get().isPresent();
        model.shownProperty()
                .get()
                .map(Shown::outcome)
                .ifPresent(o -> o.readings().forEach(r -> readings.put(r.check(), r)));
        model.glancedProperty().get().ifPresent(g -> g.readings().forEach(r -> readings.put(r.check(), r)));
        // while a hand moves the bench itself nothing follows before it lets go
        boolean waits = model.moving() && !model.follows();
        Freshness freshness = waits ? Freshness.WORKING : follows ? Freshness.FRESH : model.freshness();
        List<TagFigures> tags = new ArrayList<>();
        for (Check check : model.tags()) {
            tags.add(tag(model.state(), check, Optional.ofNullable(readings.get(check)), freshness));
        }
        return tags;
    }

    private static TagFigures tag(BenchState state, Check check, Optional<Compared> found, Freshness freshness) {
        Circuit board = state.board();
        Optional<TestPoint> point = board.point(check.from());
        boolean usual = point.map(p -> p.against().name().equals(check.to())).orElse(false);
        String name = usual ? check.from() : WORDS.say("pair", check.from(), check.to());
        String place = point.map(TestPoint::label).orElse("");
        Measured measured = state.measured().get(check);
        String read = measured == null ? "" : said(measured);
        String shows = found.map(r -> r.asSupposed().shows()).orElse("");
        String healthy = found.map(r -> r.asBuilt().shows()).orElse("");
        double moved = found.map(Compared::moved).orElse(0.0);
        TagFigures.State how = how(state, check, found, freshness);
        TagFigures figures = new TagFigures(check, name, place, how, shows, healthy, read, moved, "");
        return figures.saying(spoken(figures));
    }

    private static String said(Measured measured) {
        return measured.overRange()
                ? WORDS.say("over-range")
                : Notation.typed(new Quantity(measured.value(), measured.unit()));
    }

    private static TagFigures.State how(BenchState state, Check check, Optional<Compared> found, Freshness freshness) {
        if (state.outOfReach().contains(check.from())) {
            return TagFigures.State.OUT_OF_REACH;
        }
        if (freshness == Freshness.WORKING) {
            return TagFigures.State.WORKING;
        }
        if (found.isEmpty()) {
            return TagFigures.State.UNKNOWN;
        }
        if (freshness == Freshness.OUT_OF_DATE) {
            return TagFigures.State.OUT_OF_DATE;
        }
        if (!found.get().tooCloseToTell()) {
            return TagFigures.State.MOVED;
        }
        boolean same =
                found.get().asBuilt().shows().equals(found.get().asSupposed().shows());
        return same ? TagFigures.State.AS_HEALTHY : TagFigures.State.TOO_CLOSE;
    }

    private static String spoken(TagFigures tag) {
        String function = tag.check().function().words();
        List<String> said = new ArrayList<>();
        said.add(
                tag.place().isEmpty()
                        ? WORDS.say("spoken.point", tag.name(), function)
                        : WORDS.say("spoken.place", tag.name(), tag.place(), function));
        said.add(
                switch (tag.state()) {
                    case AS_HEALTHY -> WORDS.say("spoken.healthy", tag.shows());
                    case TOO_CLOSE -> WORDS.say("spoken.too-close", tag.shows(), tag.healthy());
                    case MOVED -> WORDS.say("spoken.moved", tag.shows(), tag.healthy(), times(tag.moved()));
                    case OUT_OF_REACH -> WORDS.say("spoken.out-of-reach");
                    case WORKING -> WORDS.say("spoken.working");
                    case OUT_OF_DATE -> WORDS.say("spoken.out-of-date", tag.shows());
                    case UNKNOWN -> WORDS.say("spoken.unknown");
                });
        said.add(tag.read().isEmpty() ? WORDS.say("spoken.not-read") : WORDS.say("spoken.read", tag.read()));
        return String.join(" ", said);
    }

    /** How many times what may vary, in words; a reading that goes over range has no figure. */
    private static String times(double moved) {
        return moved >= 1000
                ? WORDS.say("spoken.times.far")
                : WORDS.say("spoken.times", String.format(Locale.ROOT, moved < 10 ? "%.1f" : "%.0f", moved));
    }
}
