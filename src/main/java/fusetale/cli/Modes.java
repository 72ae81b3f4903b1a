package fusetale.cli;

import fusetale.circuit.Circuit;
import fusetale.explore.Words;
import fusetale.fault.Catalogue;
import fusetale.quantity.Spelling;
import fusetale.report.Csv;
import fusetale.report.Mode;
import fusetale.report.ModeTables;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code modes}: how the parts of a machine can fail, and what the trade does about it. */
@Command(name = "modes", mixinStandardHelpOptions = true)
final class Modes implements Callable<Integer> {
    private static final Words WORDS = Words.of(Modes.class);

    private final Console console;

    @Parameters(index = "0", paramLabel = "CIRCUIT", descriptionKey = "circuit")
    private String file = "";

    @Parameters(index = "1", arity = "0..1", paramLabel = "PART", descriptionKey = "modes.part")
    private @Nullable String wanted;

    @Option(names = "--json", descriptionKey = "json")
    private boolean json;

    @Option(names = "--csv", descriptionKey = "csv")
    private boolean csv;

    Modes(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws Refused {
        if (json && csv) {
            throw new Refused(ExitCodes.UNUSABLE, WORDS.say("json-or-csv"));
        }
        Circuit circuit = CircuitFiles.read(file, console);
        List<Mode> modes = wanted == null ? all(circuit) : wanted(circuit, wanted.strip());
        if (json) {
            console.out().print(ModesJson.text(circuit, modes));
        } else if (csv) {
            console.out().print(Csv.modes(modes));
        } else if (wanted == null) {
            console.print(ModeTables.circuit(circuit, console.emphasis()));
            String first = Catalogue.designators(circuit).get(0);
            console.print(List.of("", WORDS.say("modes.more", file, first)));
        } else {
            console.print(ModeTables.part(circuit, modes, console.emphasis()));
        }
        return ExitCodes.DONE;
    }

    private static List<Mode> all(Circuit circuit) {
        return Catalogue.designators(circuit).stream()
                .flatMap(part -> Mode.of(circuit, part).stream())
                .toList();
    }

    /** Those of a part, or of the place behind its dot. */
    private static List<Mode> wanted(Circuit circuit, String target) throws Refused {
        Optional<String> whole = known(circuit, target);
        if (whole.isPresent()) {
            return Mode.of(circuit, whole.get());
        }
        int dot = target.indexOf('.');
        String name = dot < 0 ? target : target.substring(0, dot);
        String part = known(circuit, name).orElseThrow(() -> noPart(circuit, name));
        List<Mode> modes = Mode.of(circuit, part);
        String place = target.substring(dot + 1);
        List<Mode> there = modes.stream()
                .filter(m -> m.form().place().equalsIgnoreCase(place))
                .toList();
        if (there.isEmpty() || place.isEmpty()) {
            throw noPlace(part, place, modes);
        }
        return there;
    }

    private static Optional<String> known(Circuit circuit, String name) {
        return Catalogue.designators(circuit).stream()
                .filter(n -> n.equalsIgnoreCase(name))
                .findFirst();
    }

    private static Refused noPart(Circuit circuit, String name) {
        return new Refused(
                ExitCodes.UNUSABLE, WORDS.say("no-part", name, nearest(name, Catalogue.designators(circuit))));
    }

    private static Refused noPlace(String part, String place, List<Mode> modes) {
        List<String> places = modes.stream()
                .map(m -> m.form().place())
                .filter(p -> !p.isEmpty())
                .distinct()
                .toList();
        return new Refused(
                ExitCodes.UNUSABLE,
                places.isEmpty()
                        ? WORDS.say("no-places", part, place)
                        : WORDS.say("no-place", part, place, nearest(place, places), String.join(", ", places)));
    }

    private static String nearest(String word, List<String> known) {
        return Spelling.nearest(word, known).map(n -> WORDS.say("nearest", n)).orElse("");
    }
}
