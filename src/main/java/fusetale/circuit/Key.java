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
 * @param <T> what its value becomes
 */
record Key<T>(
        String name,
        Form<T> form,
        boolean required,
        @Nullable String fallback,
        String doc) {
    static <T> Key<T> required(String name, Form<T> form, String doc) {
        return new Key<>(name, form, true, null, doc);
    }

    static <T> Key<T> optional(String name, Form<T> form, String doc) {
        return new Key<>(name, form, false, null, doc);
    }

    static <T> Key<T> defaulted(String name, Form<T> form, String fallback, String doc) {
        return new Key<>(name, form, false, fallback, doc);
    }
}
