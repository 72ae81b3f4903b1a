package fusetale.report.drawing;

import java.util.List;

/**
 * A connector, its pins where they are of use.
 *
 * @param name {@code J1}
 * @param contacts its pins in the order of the file; ports {@code board} and {@code harness}
 */
public record DrawnConnector(String name, List<DrawnPart> contacts) {
    /** Copies the list. */
    public DrawnConnector {
        contacts = List.copyOf(contacts);
    }
}
