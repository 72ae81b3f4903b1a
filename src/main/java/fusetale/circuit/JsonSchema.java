package fusetale.circuit;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The formats of our files as JSON Schema (draft 2020-12, json-schema.org), made from the same description that the reader
 * uses. A schema sees one file; what one place of a file says of another is the reader's to check.
 */
public final class JsonSchema {
    private static final String DRAFT = "https://json-schema.org/draft/2020-12/schema";

    private JsonSchema() {}

    /** Every schema by its file name under {@code shared/reference/schema}. */
    public static Map<String, String> files() {
        Map<String, String> files = new LinkedHashMap<>();
        files.put("circuit.schema.json", machine("A circuit", MachineForms.CIRCUIT, Form.Dialect.PLAIN));
        files.put("block.schema.json", machine("A shared block of circuits", MachineForms.BLOCK, Form.Dialect.BLOCK));
        files.put(
                "part-models.schema.json",
                head("Part models", PartFiles.SHAPE, Form.Dialect.PLAIN).text());
        return files;
    }

    private static String machine(String title, Shape<?> shape, Form.Dialect dialect) {
        Json kinds = Json.object();
        for (PartKind<?> kind : PartKinds.ALL) {
            kinds.with(kind.schemaName(), kind.shape().schema(dialect));
        }
        return head(title, shape, dialect).with("$defs", kinds).text();
    }

    private static Json head(String title, Shape<?> shape, Form.Dialect dialect) {
        return Json.of("$schema", DRAFT).with("title", title).withAll(shape.schema(dialect));
    }
}
