package fusetale.circuit;

import fusetale.quantity.Spelling;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A part: {@code is} says its kind, the kind says the other keys. */
final class PartForm implements Form<Part> {
    @Override
    public @Nullable Part read(Located item, Spot spot) {
        if (!(item instanceof Located.Table table)) {
            spot.error(
                    item.place(), item.what() + " stands where a part is described by keys", "{is: resistor, ...}", "");
            return null;
        }
        Located is = table.entries().stream()
                .filter(e -> e.key().text().equals(PartKind.IS_NAME))
                .map(Located.Entry::value)
                .findFirst()
                .orElse(null);
        if (is == null) {
            List<String> keys =
                    table.entries().stream().map(e -> e.key().text()).toList();
            spot.error(
                    spot.place(),
                    "key 'is' is missing: the kind of part",
                    kinds(),
                    keys.contains("kind") || keys.contains("type") ? PartKind.IS_NAME : "");
            return null;
        }
        String word = is instanceof Located.Text text ? text.text() : "";
        for (PartKind<?> kind : PartKinds.ALL) {
            if (kind.word().equals(word)) {
                return kind.shape().read(table, spot);
            }
        }
        List<String> words = PartKinds.ALL.stream().map(k -> k.word()).toList();
        spot.error(is.place(), is.what() + " is not a kind of part", kinds(), Spelling.nearestIfAny(word, words));
        return null;
    }

    private static String kinds() {
        return String.join(", ", PartKinds.ALL.stream().map(k -> k.word()).toList());
    }

    @Override
    public Json schema(Dialect dialect) {
        List<Object> words = new ArrayList<>();
        List<Object> branches = new ArrayList<>();
        for (PartKind<?> kind : PartKinds.ALL) {
            words.add(kind.word());
            Json is = Json.of("properties", Json.of(PartKind.IS_NAME, Json.of("const", kind.word())))
                    .with("required", List.of(PartKind.IS_NAME));
            branches.add(Json.of("if", is).with("then", Json.of("$ref", "#/$defs/" + kind.schemaName())));
        }
        return Json.of("type", "object")
                .with("required", List.of(PartKind.IS_NAME))
                .with("properties", Json.of(PartKind.IS_NAME, Json.of("enum", words)))
                .with("allOf", branches);
    }
}
