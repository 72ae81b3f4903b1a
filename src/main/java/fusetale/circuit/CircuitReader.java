package fusetale.circuit;

import fusetale.circuit.MachineForms.PointDraft;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Reads circuit files. Never throws for what stands in a file: everything wrong with it comes back as {@link Problem}s, all
 * at once.
 *
 * @param library part models that the files may name
 */
public record CircuitReader(PartLibrary library) {
    /** Machines have one to three hundred parts; at a thousand diodes an answer takes a minute and gigabytes. */
    private static final int MOST_PARTS = 1000;

    /** A reader with the models that come with the program. */
    public static CircuitReader withShippedParts() {
        return new CircuitReader(PartLibrary.shipped());
    }

    /** Reads a file and the blocks it includes. */
    public CircuitFile read(Path path) {
        Findings findings = new Findings();
        findings.asked(path);
        String name = Includes.name(path);
        String text = SourceText.read(path, name, findings);
        return text == null
                ? new CircuitFile(null, findings.inOrder(), findings.files())
                : read(text, name, path, findings);
    }

    /**
     * Reads a text. It cannot include blocks, since it lies in no folder.
     *
     * @param name what to call it in problems
     * @param text YAML
     */
    public CircuitFile readText(String name, String text) {
        Findings findings = new Findings();
        String taken = SourceText.decode(text.getBytes(StandardCharsets.UTF_8), name, findings);
        return taken == null
                ? new CircuitFile(null, findings.inOrder(), findings.files())
                : read(taken, name, null, findings);
    }

    private CircuitFile read(String text, String name, @Nullable Path path, Findings findings) {
        Located.Table root = table(text, name, findings);
        if (root == null) {
            return new CircuitFile(null, findings.inOrder(), findings.files());
        }
        Spot top = Spot.top(Place.of(name, 1), findings, library);
        Values values = MachineForms.CIRCUIT.readValues(root, top);
        Draft own = Draft.of(values);
        Draft whole = new Includes(top).withBlocks(own, path);
        if (whole.parts().size() > MOST_PARTS) {
            findings.error(
                    Place.of(name, 0),
                    "parts",
                    "the circuit has " + whole.parts().size() + " parts, too many to work out here",
                    "at most " + MOST_PARTS,
                    "");
        }
        Net ground = values.find(MachineForms.GROUND);
        References references = new References(whole, findings);
        references.check();
        Circuit circuit = null;
        if (ground != null && whole.complete() && references.namesAreUnique()) {
            circuit = circuit(values, whole, ground);
            if (circuit != null) {
                new Structure(circuit, whole, values.place(MachineForms.GROUND), findings).check();
            }
        }
        return new CircuitFile(findings.anyError() ? null : circuit, findings.inOrder(), findings.files());
    }

    /** The text as a table of keys, or null where a problem was reported. */
    static Located.@Nullable Table table(String text, String name, Findings findings) {
        if (text.isBlank()) {
            findings.error(Place.of(name, 0), "", "the file is empty", "format: 1, then name, mains, parts", "");
            return null;
        }
        Located root = YamlTree.parse(text, name, findings);
        if (root instanceof Located.Table table) {
            return table;
        }
        if (root == null && !findings.anyError()) {
            findings.error(Place.of(name, 0), "", "the file holds nothing but comments");
        }
        if (root != null) {
            findings.error(
                    root.place(),
                    "",
                    (root instanceof Located.Text ? "a mere text" : root.what())
                            + " stands where the file should be a table of keys",
                    "format: 1, then name, mains, parts",
                    "");
        }
        return null;
    }

    private static @Nullable Circuit circuit(Values values, Draft whole, Net ground) {
        String name = values.find(MachineForms.NAME);
        Mains mains = values.find(MachineForms.MAINS);
        if (name == null || mains == null) {
            return null;
        }
        String story = values.find(MachineForms.STORY);
        List<BenchSetting> settings =
                read(whole.settings()).stream().map(SettingDraft::setting).toList();
        return new Circuit(
                name,
                story == null ? "" : story,
                mains,
                ground,
                read(whole.parts()),
                read(whole.points()).stream()
                        .map((PointDraft p) -> p.against(ground))
                        .toList(),
                read(whole.connectors()),
                settings.isEmpty() ? usualSettings() : settings,
                drawing(whole),
                read(whole.stages()).stream().map(StageDraft::stage).toList());
    }

    private static Drawing drawing(Draft whole) {
        Map<String, Stand> places = new LinkedHashMap<>();
        whole.drawing().forEach(d -> {
            Stand stand = d.value();
            if (stand != null) {
                places.put(d.name(), stand);
            }
        });
        List<SectionArea> sections = new ArrayList<>();
        whole.sections().forEach(d -> {
            SectionArea section = d.value();
            if (section != null) {
                sections.add(section);
            }
        });
        return new Drawing(places, sections);
    }

    private static <T> List<T> read(List<Declared<T>> declared) {
        return Objects.requireNonNull(NamedForm.values(declared));
    }

    private static List<BenchSetting> usualSettings() {
        return List.of(plain("power on", true), plain("power off", false));
    }

    private static BenchSetting plain(String name, boolean powerOn) {
        return new BenchSetting(
                name, powerOn, null, null, List.of(), List.of(), List.of(), List.of(), List.of(), Map.of(), Map.of(),
                Map.of(), null);
    }
}
