package fusetale.circuit;

import org.jspecify.annotations.Nullable;

/**
 * A named thing of a file: its name counts as used even when its description could not be read.
 *
 * @param name its name
 * @param place where it begins
 * @param value what it is, null where a problem was reported
 * @param <T> kind of thing
 */
record Declared<T>(String name, Place place, @Nullable T value) {}
