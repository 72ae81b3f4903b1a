package fusetale.circuit;

import fusetale.quantity.Tolerance;
import fusetale.quantity.Toleranced;
import java.util.IdentityHashMap;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** The values of one table by their keys, as far as they could be read. */
final class Values {
    private final IdentityHashMap<Key<?>, Object> read = new IdentityHashMap<>();
    private final IdentityHashMap<Key<?>, Place> places = new IdentityHashMap<>();
    private final Spot spot;
    private final Place place;

    Values(Spot spot, Place place) {
        this.spot = spot;
        this.place = place;
    }

    <T> void put(Key<T> key, T value) {
        read.put(key, value);
    }

    void stands(Key<?> key, Place at) {
        places.put(key, at);
    }

    /** The value of a key that is required or has a default. */
    <T> T get(Key<T> key) {
        return Objects.requireNonNull(find(key), key.name());
    }

    /** The value of a key, or null where it was left out or could not be read. */
    @SuppressWarnings("unchecked") // put() takes a key and a value of the same type only
    <T> @Nullable T find(Key<T> key) {
        return (T) read.get(key);
    }

    /** Whether the file says anything for this key itself. */
    boolean written(Key<?> key) {
        return places.containsKey(key);
    }

    /** Where a key's value stands; the table's begin where it was left out. */
    Place place(Key<?> key) {
        return places.getOrDefault(key, place);
    }

    /** Name of the thing the table describes. */
    String name() {
        return spot.name();
    }

    Spot spot() {
        return spot;
    }

    /** Notes, mounting and line of a part. */
    About about() {
        return new About(
                get(PartKind.NOTE), get(PartKind.MOUNTING), spot.place().line());
    }

    /** A value with the tolerance said behind it, or else in the key of its own. */
    Toleranced toleranced(Key<Stated> value, Key<Tolerance> tolerance) {
        return toleranced(value, tolerance, null);
    }

    /** As {@link #toleranced(Key, Key)}, where a part model's tolerance goes before the key's default. */
    Toleranced toleranced(Key<Stated> value, Key<Tolerance> tolerance, @Nullable Tolerance ofModel) {
        Stated stated = get(value);
        if (stated.tolerance() != null && written(tolerance)) {
            spot.error(
                    place(tolerance),
                    "a tolerance stands both behind '" + value.name() + "' and in '" + tolerance.name()
                            + "'; write it once");
        }
        return stated.or(ofModel == null || written(tolerance) ? get(tolerance) : ofModel);
    }

    /** A part model's value, with the tolerance of a key where the file itself says one. */
    Toleranced tolerated(Toleranced ofModel, Key<Tolerance> tolerance) {
        return written(tolerance) ? new Toleranced(ofModel.nominal(), get(tolerance)) : ofModel;
    }

    /** Reports a problem with the value of a key. */
    void error(Key<?> key, String found, String allowed, String nearest) {
        spot.under(key.name()).error(place(key), found, allowed, nearest);
    }
}
