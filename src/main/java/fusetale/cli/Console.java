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
}
