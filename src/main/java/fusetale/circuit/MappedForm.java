package fusetale.circuit;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A form whose value is made into another.
 *
 * @param form what stands in the file
 * @param made makes the value
 * @param <S> what the file's form becomes
 * @param <T> what that becomes
 */
record MappedForm<S, T>(Form<S> form, Function<S, T> made) implements Form<T> {
    @Override
    public @Nullable T read(Located item, Spot spot) {
        S read = form.read(item, spot);
        return read == null ? null : made.apply(read);
    }

    @Override
    public Json schema(Dialect dialect) {
        return form.schema(dialect);
    }
}
