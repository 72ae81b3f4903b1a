package fusetale.circuit;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Values in a row.
 *
 * @param what what one of them is, for messages: {@code a net}
 * @param item form of each
 * @param fewest at least so many
 * @param most at most so many
 * @param <T> what each becomes
 */
record ListForm<T>(String what, Form<T> item, int fewest, int most) implements Form<List<T>> {
    @Override
    public @Nullable List<T> read(Located located, Spot spot) {
        if (!(located instanceof Located.Row row)) {
            spot.error(located.place(), located.what() + " stands where a list belongs", allowed(), "");
            return null;
        }
        List<T> read = new ArrayList<>();
        for (Located each : row.items()) {
            T value = item.read(each, spot);
            if (value != null) {
                read.add(value);
            }
        }
        int count = row.items().size();
        if (count < fewest || count > most) {
            spot.error(row.place(), "the list has " + count + (count == 1 ? " entry" : " entries"), allowed(), "");
            return null;
        }
        return read.size() == count ? List.copyOf(read) : null;
    }

    private String allowed() {
        String count = most == fewest ? String.valueOf(fewest) : most < Integer.MAX_VALUE ? fewest + " to " + most : "";
        String atLeast = fewest == 0 ? "any number" : fewest + " or more";
        return "[" + what + ", ...], " + (count.isEmpty() ? atLeast : count) + " in square brackets";
    }

    @Override
    public Json schema(Dialect dialect) {
        Json schema = Json.of("type", "array").with("items", item.schema(dialect));
        if (fewest > 0) {
            schema.with("minItems", fewest);
        }
        return most < Integer.MAX_VALUE ? schema.with("maxItems", most) : schema;
    }
}
