package fusetale.fault;

import fusetale.circuit.FuseLink.Speed;
import fusetale.circuit.FuseLink.Standard;
import fusetale.circuit.Mounting;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** What a swap changes about a part: one aspect of it. */
public sealed interface Fitting permits Fitting.Model, Fitting.Mounted, Fitting.Value, Fitting.Link {
    /** Whether both say the same aspect of a part, so that only one of them can hold. */
    default boolean sameAspect(Fitting other) {
        return getClass().equals(other.getClass());
    }

    /**
     * Another type of the same kind.
     *
     * @param name of a part model: {@code bridge-35A}
     */
    record Model(String name) implements Fitting {}

    /**
     * Mounted otherwise.
     *
     * @param mounting how
     */
    record Mounted(Mounting mounting) implements Fitting {}

    /**
     * Another value of the same kind.
     *
     * @param value farads of a capacitor, ohms of a resistor; above 0
     * @param rating volts of a capacitor, watts of a resistor; null for what stood there
     */
    record Value(Quantity value, @Nullable Quantity rating) implements Fitting {
        /** Refuses values of other units. */
        public Value {
            boolean known = value.unit() == Unit.FARAD || value.unit() == Unit.OHM;
            if (!known || !(value.si() > 0) || (rating != null && !(rating.si() > 0))) {
                throw new IllegalArgumentException("no value to fit: " + value + ", " + rating);
            }
        }
    }

    /**
     * Another fuse link of the size that its clips take.
     *
     * @param amps its rating
     * @param speed quick or slow; null for that of the link that stood there
     * @param standard whose gates it keeps; null for that of the link that stood there
     */
    record Link(
            Quantity amps, @Nullable Speed speed, @Nullable Standard standard) implements Fitting {
        /** Refuses ratings that are no current. */
        public Link {
            if (amps.unit() != Unit.AMPERE || !(amps.si() > 0)) {
                throw new IllegalArgumentException("no rating of a fuse: " + amps);
            }
        }
    }
}
