package fusetale.circuit;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A table whose keys are names the author chooses.
 *
 * @param name what a name looks like
 * @param value form of what each name stands for
 * @param alone whether messages name the thing alone, without what is around it
 * @param <T> what each becomes
 */
record NamedForm<T>(NameForm name, Form<T> value, boolean alone) implements Form<List<Declared<T>>> {
    @Override
    public @Nullable List<Declared<T>> read(Located item, Spot spot) {
        if (!(item instanceof Located.Table table)) {
            spot.error(
                    item.place(),
                    item.what() + " stands here",
                    "a table, each line beginning with " + name.words() + " and a colon",
                    "");
            return null;
        }
        List<Declared<T>> all = new ArrayList<>();
        for (Located.Entry entry : table.entries()) {
            Located.Text key = entry.key();
            String said = name.read(key, spot);
            Spot inside = alone ? spot.intoAlone(key) : spot.into(key);
            T read = value.read(entry.value(), inside);
            if (said != null) {
                all.add(new Declared<>(said, key.place(), read));
            }
        }
        return List.copyOf(all);
    }

    /** The values alone, or null where one of them could not be read. */
    static <T> @Nullable List<T> values(List<Declared<T>> all) {
        List<T> values = new ArrayList<>();
        for (Declared<T> each : all) {
            T value = each.value();
            if (value == null) {
                return null;
            }
            values.add(value);
        }
        return values;
    }

    @Override
    public Json schema(Dialect dialect) {
        return Json.of("type", "object")
                .with("propertyNames", name.schema(dialect))
                .with("additionalProperties", value.schema(dialect));
    }
}
