package fusetale.cli;

import fusetale.circuit.BenchSetting;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitFile;
import fusetale.circuit.CircuitReader;
import fusetale.circuit.Problem;
import fusetale.explore.Words;
import fusetale.report.Tables;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code inspect}: reads files and reports everything wrong with them at once. */
@Command(name = "inspect", mixinStandardHelpOptions = true)
final class Inspect implements Callable<Integer> {
    private static final Words WORDS = Words.of(Inspect.class);

    private final Console console;

    @Parameters(arity = "1..*", paramLabel = "FILE", descriptionKey = "inspect.file")
    private List<String> files = new ArrayList<>();

    @Option(names = "--json", descriptionKey = "json")
    private boolean json;

    Inspect(Console console) {
        this.console = console;
    }

    private record Inspected(String file, CircuitFile read) {
        boolean isUsable() {
            return read.circuit() != null;
        }
    }

    @Override
    public Integer call() throws Refused {
        CircuitReader reader = CircuitReader.withShippedParts();
        List<Inspected> all = new ArrayList<>();
        for (String file : files) {
            all.add(new Inspected(file, reader.read(CircuitFiles.path(file))));
        }
        if (json) {
            console.out().print(json(all));
        } else {
            all.forEach(this::print);
        }
        return all.stream().allMatch(Inspected::isUsable) ? ExitCodes.DONE : ExitCodes.UNUSABLE;
    }

    private void print(Inspected inspected) {
        inspected.read().problems().forEach(p -> console.err().print(p + "\n"));
        Circuit circuit = inspected.read().circuit();
        if (circuit == null) {
            int errors = inspected.read().errors().size();
            console.err().print(WORDS.say("inspect.unusable", inspected.file(), errors) + "\n");
            return;
        }
        List<String> lines = new ArrayList<>();
        lines.add(console.emphasis().strong(circuit.name()) + " (" + inspected.file() + ")");
        lines.add(WORDS.say(
                "inspect.counts",
                circuit.parts().size(),
                circuit.nets().size(),
                circuit.points().size(),
                circuit.connectors().size()));
        lines.addAll(Tables.wrapped(WORDS.say("inspect.arrangements", arrangements(circuit))));
        int warnings = inspected.read().warnings().size();
        lines.add(warnings == 0 ? WORDS.say("inspect.clean") : WORDS.say("inspect.warnings", warnings));
        console.print(lines);
    }

    private static String arrangements(Circuit circuit) {
        return circuit.settings().stream().map(BenchSetting::name).collect(Collectors.joining("; "));
    }

    private static String json(List<Inspected> all) {
        return JsonText.object(json -> {
            json.writeArrayFieldStart("files");
            for (Inspected inspected : all) {
                json.writeStartObject();
                json.writeStringField("file", inspected.file());
                json.writeBooleanField("usable", inspected.isUsable());
                json.writeArrayFieldStart("problems");
                for (Problem p : inspected.read().problems()) {
                    json.writeStartObject();
                    json.writeStringField("severity", p.severity().name().toLowerCase(Locale.ROOT));
                    json.writeStringField("file", p.file());
                    json.writeNumberField("line", p.line());
                    json.writeStringField("key", p.key());
                    json.writeStringField("found", p.found());
                    json.writeStringField("allowed", p.allowed());
                    json.writeStringField("nearest", p.nearest());
                    json.writeEndObject();
                }
                json.writeEndArray();
                Circuit circuit = inspected.read().circuit();
                if (circuit != null) {
                    json.writeStringField("circuit", circuit.name());
                    json.writeNumberField("parts", circuit.parts().size());
                    json.writeNumberField("nets", circuit.nets().size());
                    json.writeNumberField("testPoints", circuit.points().size());
                    json.writeNumberField("connectors", circuit.connectors().size());
                    json.writeArrayFieldStart("arrangements");
                    for (BenchSetting setting : circuit.settings()) {
                        json.writeString(setting.name());
                    }
                    json.writeEndArray();
                }
                json.writeEndObject();
            }
            json.writeEndArray();
        });
    }
}
