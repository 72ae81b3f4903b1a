package fusetale.seeded.cli;

import com.fasterxml.jackson.core.JsonFactory;
import picocli.CommandLine.Command;

/** Keeps the rules: the commands speak, and use their libraries. */
@Command
final class Says {
    void say() {
        System.out.println(new JsonFactory());
        System.exit(0);
    }
}
