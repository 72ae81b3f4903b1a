package fusetale.circuit;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A single value.
 *
 * @param allowed what may stand there, for messages
 * @param json the same as JSON Schema
 * @param parsing how the text is understood
 * @param <T> what it becomes
 */
record ScalarForm<T>(String allowed, Json json, Parsing<T> parsing) implements Form<T> {
    /** Understands one text. */
    @FunctionalInterface
    interface Parsing<T> {
        /**
         * The value.
         *
         * @throws Unfit where the text is not of this form
         */
        T parse(Located.Text text, Spot spot) throws Unfit;
    }

    @Override
    public @Nullable T read(Located item, Spot spot) {
        if (!(item instanceof Located.Text text) || text.isNothing()) {
            spot.error(item.place(), item.what() + " stands here", allowed, "");
            return null;
        }
        try {
            return parsing.parse(text, spot);
        } catch (Unfit unfit) {
            spot.error(text.place(), unfit.clause(text), allowed, unfit.nearest());
            return null;
        }
    }

    @Override
    public Json schema(Dialect dialect) {
        if (dialect == Dialect.PLAIN) {
            return json;
        }
        return Json.of("anyOf", List.of(json, Json.of("type", "string").with("pattern", Blocks.PARAMETER.pattern())));
    }
}
