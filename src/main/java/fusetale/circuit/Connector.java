package fusetale.circuit;

import fusetale.quantity.Quantity;
import fusetale.quantity.Toleranced;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A connector between a board and its harness.
 *
 * @param name {@code J3}
 * @param pins its contacts
 * @param ratedAmps what each contact stands, where known
 */
public record Connector(
        String name, List<Contact> pins, @Nullable Quantity ratedAmps) {
    /** Copies the list. */
    public Connector {
        pins = List.copyOf(pins);
    }

    /**
     * One contact.
     *
     * @param label its number or key
     * @param board net on the board's side
     * @param harness net on the harness' side
     * @param ohms contact resistance
     */
    public record Contact(String label, Net board, Net harness, Toleranced ohms) {}
}
