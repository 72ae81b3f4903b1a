package fusetale.circuit;

import java.util.ArrayList;
import java.util.List;

/**
 * How one kind of part is written: the one place that reader, JSON Schema and authors' guide are made from.
 *
 * @param word what stands behind {@code is:}
 * @param type the part it becomes
 * @param shape its keys
 * @param <P> the part it becomes
 */
record PartKind<P extends Part>(String word, Class<P> type, Shape<P> shape) {
    static final String IS_NAME = "is";

    /** What to know about the part. */
    static final Key<String> NOTE =
            Key.defaulted("note", new NothingSaid(Forms.TEXT), "", "where it sits, what to look out for");

    /** Where its heat goes. */
    static final Key<String> MOUNTING = Key.defaulted(
            "mounting",
            new NothingSaid(Forms.words("on chassis", "standing clear", "free air")),
            "",
            "where its heat goes");

    static <P extends Part> PartKind<P> of(
            String word, Class<P> type, String doc, List<Key<?>> keys, Shape.Build<P> build) {
        List<Key<?>> all = new ArrayList<>();
        all.add(Key.required(IS_NAME, Forms.words(word), "the kind of part"));
        all.addAll(keys);
        all.add(NOTE);
        all.add(MOUNTING);
        String article = "aeiou".indexOf(word.charAt(0)) >= 0 ? "an " : "a ";
        return new PartKind<>(word, type, new Shape<>(article + word, doc, all, build));
    }

    /** Its name among the definitions of a schema, where a reference must be a URI. */
    String schemaName() {
        return word.replace(' ', '-');
    }

    /** A text that is empty where nothing is said. */
    private record NothingSaid(Form<String> form) implements Form<String> {
        @Override
        public String read(Located item, Spot spot) {
            if (item instanceof Located.Text text && text.text().isEmpty()) {
                return "";
            }
            String read = form.read(item, spot);
            return read == null ? "" : read;
        }

        @Override
        public Json schema(Dialect dialect) {
            return form.schema(dialect);
        }
    }
}
