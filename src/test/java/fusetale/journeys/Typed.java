package fusetale.journeys;

import fusetale.cli.Main;
import fusetale.report.Emphasis;
import java.io.PrintWriter;
import java.io.StringWriter;

/**
 * A command as typed, and what it did.
 *
 * @param code exit code
 * @param out what it answered
 * @param err what it said beside that
 */
record Typed(int code, String out, String err) {
    static Typed in(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Main.run(new PrintWriter(out), new PrintWriter(err), Emphasis.NONE, arguments);
        return new Typed(code, out.toString(), err.toString());
    }
}
