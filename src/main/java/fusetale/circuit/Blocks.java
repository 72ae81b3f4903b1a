package fusetale.circuit;

import fusetale.quantity.Spelling;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Fills the parameters of a shared block in: {@code <n>} anywhere in its keys and texts. */
final class Blocks {
    /** A parameter in a text. */
    static final Pattern PARAMETER = Pattern.compile("<(\\p{L}[\\p{L}\\p{N} -]*)>");

    private final Map<String, String> values;
    private final Place include;
    private final Findings findings;
    private final Set<String> used = new LinkedHashSet<>();

    /**
     * For one use of a block.
     *
     * @param values text of each parameter
     * @param include where the block is asked for
     * @param findings where problems go. Modified.
     */
    Blocks(Map<String, String> values, Place include, Findings findings) {
        this.values = values;
        this.include = include;
        this.findings = findings;
    }

    /** Parameters met so far. */
    Set<String> used() {
        return used;
    }

    Located filled(Located item) {
        if (item instanceof Located.Text text) {
            return filled(text);
        }
        if (item instanceof Located.Row row) {
            return new Located.Row(row.items().stream().map(this::filled).toList(), row.place());
        }
        Located.Table table = (Located.Table) item;
        Map<String, Located.Entry> entries = new LinkedHashMap<>();
        for (Located.Entry entry : table.entries()) {
            Located.Text key = filled(entry.key());
            Located.Entry earlier = entries.putIfAbsent(key.text(), new Located.Entry(key, filled(entry.value())));
            if (earlier != null) {
                findings.error(
                        key.place(),
                        key.text(),
                        "filled in, this key is the same as the one on line "
                                + earlier.key().place().line());
            }
        }
        return new Located.Table(List.copyOf(entries.values()), table.place());
    }

    private Located.Text filled(Located.Text text) {
        Matcher matcher = PARAMETER.matcher(text.text());
        StringBuilder filled = new StringBuilder();
        boolean any = false;
        while (matcher.find()) {
            String name = matcher.group(1);
            String value = values.get(name);
            any = true;
            used.add(name);
            if (value == null) {
                findings.error(
                        text.place(),
                        "",
                        "'<" + name + ">' is not among the parameters of this block",
                        values.isEmpty() ? "none are declared" : String.join(", ", values.keySet()),
                        Spelling.nearestIfAny(name, values.keySet()));
            }
            matcher.appendReplacement(filled, Matcher.quoteReplacement(value == null ? "" : value));
        }
        if (!any) {
            return text;
        }
        matcher.appendTail(filled);
        return new Located.Text(filled.toString(), text.written(), text.place().filledInBy(include));
    }
}
