package fusetale.circuit;

import fusetale.quantity.Spelling;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A table with known keys.
 *
 * @param what what it describes, for messages: {@code a winding}
 * @param doc what it means, for authors
 * @param keys its keys
 * @param build makes the value of the keys; null where it reported a problem
 * @param <T> what it becomes
 */
record Shape<T>(String what, String doc, List<Key<?>> keys, Build<T> build) implements Form<T> {
    /** Makes a value of the keys of a table. */
    @FunctionalInterface
    interface Build<T> {
        @Nullable
        T from(Values values);
    }

    Shape {
        keys = List.copyOf(keys);
    }

    @Override
    public @Nullable T read(Located item, Spot spot) {
        if (!(item instanceof Located.Table table)) {
            spot.error(item.place(), item.what() + " stands where " + what + " is described by keys", keyNames(), "");
            return null;
        }
        Values values = readValues(table, spot);
        return complete(values) ? build.from(values) : null;
    }

    private boolean complete(Values values) {
        for (Key<?> key : keys) {
            boolean missing = values.find(key) == null;
            if (missing && (needed(key, values) || key.fallback() != null || values.written(key))) {
                return false;
            }
        }
        return true;
    }

    /** Reads every key there is and reports what is wrong; keys that could not be read are left out. */
    Values readValues(Located.Table table, Spot spot) {
        Values values = new Values(spot, table.place());
        for (Located.Entry entry : table.entries()) {
            Key<?> key = key(entry.key().text());
            if (key == null) {
                unknown(entry, spot);
            } else {
                values.stands(key, entry.value().place());
                readInto(values, key, entry.value(), spot);
            }
        }
        for (Key<?> key : keys) {
            if (values.written(key)) {
                continue;
            }
            if (needed(key, values)) {
                String instead = key.unless() == null ? "" : "; or the key '" + key.unless() + "' in its place";
                spot.error(spotOr(spot, table), "key '" + key.name() + "' is missing: " + key.doc() + instead);
            } else if (key.fallback() != null) {
                readInto(values, key, Located.Text.of(key.fallback(), table.place()), spot);
            }
        }
        return values;
    }

    private boolean needed(Key<?> key, Values values) {
        String unless = key.unless();
        Key<?> instead = unless == null ? null : key(unless);
        return key.required() || (instead != null && !values.written(instead));
    }

    private void unknown(Located.Entry entry, Spot spot) {
        if (spot.findings().full()) {
            return;
        }
        String shown = entry.key().shown();
        boolean afterComma = entry.value() instanceof Located.Text text
                && text.text().isEmpty()
                && Character.isDigit(shown.isEmpty() ? ' ' : shown.charAt(0));
        if (afterComma) {
            spot.error(
                    entry.key().place(),
                    "the comma before '" + shown
                            + "' ends the value; write a decimal point, or quotes around the value");
            return;
        }
        spot.error(
                entry.key().place(),
                "key '" + shown + "' is not known here",
                keyNames(),
                Spelling.nearestIfAny(entry.key().text(), names()));
    }

    private static Place spotOr(Spot spot, Located.Table table) {
        return spot.name().isEmpty() ? table.place() : spot.place();
    }

    private static <V> void readInto(Values values, Key<V> key, Located item, Spot spot) {
        V value = key.form().read(item, spot.under(key.name()));
        if (value != null) {
            values.put(key, value);
        }
    }

    private @Nullable Key<?> key(String name) {
        return keys.stream().filter(k -> k.name().equals(name)).findFirst().orElse(null);
    }

    private List<String> names() {
        return keys.stream().map(k -> k.name()).toList();
    }

    private String keyNames() {
        return String.join(", ", names());
    }

    @Override
    public Json schema(Dialect dialect) {
        Json properties = Json.object();
        List<Object> required = new ArrayList<>();
        List<Object> eithers = new ArrayList<>();
        for (Key<?> key : keys) {
            Json property = key.form().schema(dialect).copy().with("description", key.doc());
            if (key.fallback() != null && !key.fallback().isEmpty()) {
                property.withDefault(key.fallback());
            }
            properties.with(key.name(), property);
            if (key.required()) {
                required.add(key.name());
            }
            if (key.unless() != null) {
                eithers.add(Json.of(
                        "anyOf",
                        List.of(Json.of("required", List.of(key.name())), Json.of("required", List.of(key.unless())))));
            }
        }
        Json schema = Json.of("type", "object").with("description", doc).with("properties", properties);
        if (!required.isEmpty()) {
            schema.with("required", required);
        }
        if (!eithers.isEmpty()) {
            schema.with("allOf", eithers);
        }
        return schema.with("additionalProperties", false);
    }
}
