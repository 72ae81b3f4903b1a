package fusetale.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import fusetale.circuit.BenchSetting;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitFile;
import fusetale.circuit.CircuitReader;
import fusetale.circuit.PartFiles;
import fusetale.circuit.PartLibrary;
import fusetale.circuit.Problem;
import fusetale.explore.Words;
import fusetale.report.Tables;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code inspect}: reads files and reports everything wrong with them at once. */
@Command(name = "inspect", mixinStandardHelpOptions = true)
final class Inspect implements Callable<Integer> {
    private static final Words WORDS = Words.of(Inspect.class);

    private final Console console;

    @Parameters(arity = "1..*", paramLabel = "FILE", descriptionKey = "inspect.file")
    private List<String> files = new ArrayList<>();

    @Mixin
    private DrawingOptions drawing = new DrawingOptions();

    @Option(names = "--json", descriptionKey = "json")
    private boolean json;

    Inspect(Console console) {
        this.console = console;
    }

    /** A file, read as a circuit or, where it holds part models, as those. */
    private record Inspected(
            String file, CircuitFile read, @Nullable PartFiles models) {
        boolean isUsable() {
            return models == null ? read.circuit() != null : models.usable();
        }

        List<Problem> problems() {
            return models == null ? read.problems() : models.problems();
        }
    }

    @Override
    public Integer call() throws Refused {
        drawing.check();
        if (drawing.asked() && files.size() > 1) {
            throw new Refused(ExitCodes.UNUSABLE, WORDS.say("drawing.one-file"));
        }
        CircuitReader reader = CircuitReader.withShippedParts();
        List<Inspected> all = new ArrayList<>();
        for (String file : files) {
            Path path = CircuitFiles.path(file);
            PartFiles models = PartFiles.readIfModels(path, reader.library());
            CircuitFile read = models == null ? reader.read(path) : new CircuitFile(null, List.of());
            all.add(new Inspected(file, read, models));
        }
        Circuit first = all.get(0).read().circuit();
        if (drawing.asked() && first == null && all.get(0).isUsable()) {
            throw new Refused(
                    ExitCodes.UNUSABLE,
                    WORDS.say("drawing.no-circuit", all.get(0).file()));
        }
        if (drawing.asked() && first != null) {
            drawing.draw(first, console);
        }
        if (json) {
            console.out().print(json(all));
        } else {
            all.forEach(this::print);
        }
        return all.stream().allMatch(Inspected::isUsable) ? ExitCodes.DONE : ExitCodes.UNUSABLE;
    }

    private void print(Inspected inspected) {
        inspected.problems().forEach(p -> console.err().print(p + "\n"));
        if (!inspected.isUsable()) {
            long errors = inspected.problems().stream().filter(Problem::isError).count();
            console.err().print(WORDS.say("inspect.unusable", inspected.file(), errors) + "\n");
            return;
        }
        List<String> lines = new ArrayList<>();
        Circuit circuit = inspected.read().circuit();
        if (circuit != null) {
            lines.add(console.emphasis().strong(circuit.name()) + " (" + inspected.file() + ")");
            lines.add(WORDS.say(
                    "inspect.counts",
                    circuit.parts().size(),
                    circuit.nets().size(),
                    circuit.points().size(),
                    circuit.connectors().size()));
            lines.addAll(Tables.wrapped(WORDS.say("inspect.arrangements", arrangements(circuit))));
        } else if (inspected.models() != null) {
            lines.addAll(models(inspected.file(), inspected.models().library()));
        }
        long warnings = inspected.problems().stream().filter(p -> !p.isError()).count();
        lines.add(warnings == 0 ? WORDS.say("inspect.clean") : WORDS.say("inspect.warnings", warnings));
        console.print(lines);
    }

    private List<String> models(String file, PartLibrary library) {
        List<String> lines = new ArrayList<>();
        lines.add(console.emphasis().strong(WORDS.say("inspect.models")) + " (" + file + ")");
        library.names()
                .forEach((section, names) -> lines.addAll(
                        Tables.wrapped(WORDS.say("inspect.section", section, names.size(), String.join(", ", names)))));
        return lines;
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
                for (Problem p : inspected.problems()) {
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
                if (inspected.models() != null) {
                    models(json, inspected.models().library());
                }
                json.writeEndObject();
            }
            json.writeEndArray();
        });
    }

    private static void models(JsonGenerator json, PartLibrary library) throws IOException {
        json.writeObjectFieldStart("models");
        for (Map.Entry<String, List<String>> section : library.names().entrySet()) {
            json.writeArrayFieldStart(section.getKey());
            for (String name : section.getValue()) {
                json.writeString(name);
            }
            json.writeEndArray();
        }
        json.writeEndObject();
    }
}
