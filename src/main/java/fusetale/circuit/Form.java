package fusetale.circuit;

import org.jspecify.annotations.Nullable;

/**
 * What may stand behind a key: reads it, and describes itself as JSON Schema, so that reader and schema are one
 * description.
 *
 * @param <T> what it becomes
 */
interface Form<T> {
    /** What stands there, or null where a problem was reported. */
    @Nullable
    T read(Located item, Spot spot);

    /**
     * The same as JSON Schema (draft 2020-12).
     *
     * @param dialect whether {@code <parameters>} may stand in the place of values
     */
    Json schema(Dialect dialect);

    /** Which files a schema is for. */
    enum Dialect {
        /** Circuits and part models. */
        PLAIN,
        /** Shared blocks, where {@code <n>} may stand in any text. */
        BLOCK
    }
}
