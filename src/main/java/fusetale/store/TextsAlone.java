package fusetale.store;

import java.util.HashMap;
import java.util.Map;
import org.snakeyaml.engine.v2.api.ConstructNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.Tag;
import org.snakeyaml.engine.v2.schema.FailsafeSchema;

/** YAML whose every value is a text, even where it looks like a number; and a document may hold nothing at all. */
final class TextsAlone extends FailsafeSchema {
    @Override
    public Map<Tag, ConstructNode> getSchemaTagConstructors() {
        Map<Tag, ConstructNode> constructors = new HashMap<>(super.getSchemaTagConstructors());
        constructors.put(Tag.NULL, new Nothing());
        return constructors;
    }

    private static final class Nothing implements ConstructNode {
        @Override
        public Object construct(Node node) {
            return "";
        }
    }
}
