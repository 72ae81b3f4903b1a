package fusetale.cli;

import fusetale.report.Emphasis;
import java.io.PrintWriter;
import java.util.List;

/**
 * Where a command writes.
 *
 * @param out answers
 * @param err messages
 * @param emphasis how text may stand out
 */
record Console(PrintWriter out, PrintWriter err, Emphasis emphasis) {
    /** Prints lines of an answer. */
    void print(List<String> lines) {
        lines.forEach(l -> out.print(l + "\n"));
    }

    /** Tells what must not be missed beside an answer that is only figures. */
    void warn(List<String> lines) {
        lines.forEach(l -> err.print(l + "\n"));
        err.flush();
    }

    /** On a terminal, overwrites the present line of the error stream; elsewhere nothing. */
    void tellProgress(String text) {
        if (emphasis == Emphasis.TERMINAL) {
            err.print("\r\u001B[K" + text);
            err.flush();
        }
    }
}
