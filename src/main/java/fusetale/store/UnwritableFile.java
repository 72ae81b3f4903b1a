package fusetale.store;

import java.io.IOException;

/** A file that could not be written; the message names it and tells what to change. */
public final class UnwritableFile extends IOException {
    private static final long serialVersionUID = 1;

    UnwritableFile(String message) {
        super(message);
    }

    UnwritableFile(String message, IOException cause) {
        super(message, cause);
    }
}
