package fusetale.circuit;

import org.jspecify.annotations.Nullable;

/**
 * One key of a table.
 *
 * @param name as written in the file
 * @param form what may stand behind it
 * @param required whether it must be there
 * @param fallback what is taken when it is not there, as one would write it; null for nothing
 * @param doc what it means, for authors
 * @param unless another key of the table that stands in for this one; null for none
 * @param <T> what its value becomes
 */
record Key<T>(
        String name,
        Form<T> form,
        boolean required,
        @Nullable String fallback,
        String doc,
        @Nullable String unless) {
    /** The key that names a part model. */
    static final String MODEL_NAME = "model";

    static <T> Key<T> required(String name, Form<T> form, String doc) {
        return new Key<>(name, form, true, null, doc, null);
    }

    static <T> Key<T> optional(String name, Form<T> form, String doc) {
        return new Key<>(name, form, false, null, doc, null);
    }

    static <T> Key<T> defaulted(String name, Form<T> form, String fallback, String doc) {
        return new Key<>(name, form, false, fallback, doc, null);
    }

    /** Required where the key {@code model} does not name a part model that says it. */
    static <T> Key<T> orModel(String name, Form<T> form, String doc) {
        return new Key<>(name, form, false, null, doc, MODEL_NAME);
    }
}
