package fusetale.circuit;

import fusetale.circuit.MachineForms.Include;
import fusetale.quantity.Spelling;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Brings in the shared blocks that a circuit file asks for, and those that they ask for. Used once. */
final class Includes {
    /** Uses of blocks in one circuit. */
    static final int MOST = 200;

    private final Spot top;
    private int uses;

    Includes(Spot top) {
        this.top = top;
    }

    /** A path as problems show it. */
    static String name(Path path) {
        return path.toString().replace('\\', '/');
    }

    /**
     * The draft with the contents of its blocks.
     *
     * @param draft what the file says itself
     * @param file where it lies; null where it is a text without a folder
     */
    Draft withBlocks(Draft draft, @Nullable Path file) {
        return withBlocks(draft, file == null ? List.of() : List.of(file));
    }

    private Draft withBlocks(Draft draft, List<Path> chain) {
        Draft whole = draft;
        for (Include include : draft.includes()) {
            if (uses > MOST) {
                return whole;
            }
            uses++;
            if (uses > MOST) {
                error(include, "the blocks of this circuit are used more than " + MOST + " times in all", "");
                return whole;
            }
            Draft block = block(include, chain);
            if (block != null) {
                whole = whole.plus(block, include.at());
            }
        }
        return whole;
    }

    private void error(Include include, String found, String allowed) {
        top.findings().error(include.file().place(), "include", found, allowed, "");
    }

    private @Nullable Draft block(Include include, List<Path> chain) {
        Path path = resolved(include, chain);
        if (path == null) {
            return null;
        }
        List<Path> longer = new ArrayList<>(chain);
        longer.add(path);
        if (chain.stream().anyMatch(p -> same(p, path))) {
            error(
                    include,
                    "this block includes itself: "
                            + String.join(
                                    " -> ", longer.stream().map(Includes::name).toList()),
                    "");
            return null;
        }
        Findings findings = top.findings();
        String name = name(path);
        findings.asked(path);
        if (!Files.isRegularFile(path)) {
            findings.error(
                    include.file().place(),
                    "include",
                    "there is no file '" + name + "'",
                    "",
                    SourceText.neighbour(path));
            return null;
        }
        String text = SourceText.read(path, name, findings);
        Located.Table root = text == null ? null : CircuitReader.table(text, name, findings);
        Located.Table filled = root == null ? null : filled(root, include);
        if (filled == null) {
            return null;
        }
        Spot spot = Spot.top(Place.of(name, 1), findings, top.library());
        Draft own = Draft.of(MachineForms.BLOCK.readValues(filled, spot));
        return withBlocks(own, longer);
    }

    private static boolean same(Path one, Path two) {
        return one.toAbsolutePath().normalize().equals(two.toAbsolutePath().normalize());
    }

    private @Nullable Path resolved(Include include, List<Path> chain) {
        if (chain.isEmpty()) {
            error(include, "a text that lies in no folder cannot include blocks", "");
            return null;
        }
        String allowed = "a path from this file's folder, as blocks/coil-driver.yaml, no further up than one folder";
        String written = include.file().text();
        Path including = chain.get(chain.size() - 1);
        Path folder = including.toAbsolutePath().normalize().getParent();
        try {
            Path relative = Path.of(written);
            Path parent = including.getParent();
            Path path = (parent == null ? relative : parent.resolve(relative)).normalize();
            Path root = folder == null || folder.getParent() == null ? folder : folder.getParent();
            boolean inside = root != null && path.toAbsolutePath().normalize().startsWith(root);
            if (relative.isAbsolute() || !inside) {
                error(include, "'" + written + "' leads outside the circuit's folder", allowed);
                return null;
            }
            return path;
        } catch (InvalidPathException e) {
            error(include, "'" + written + "' is not a path", allowed);
            return null;
        }
    }

    /** The block with its parameters filled in, or null where they do not fit. */
    private Located.@Nullable Table filled(Located.Table root, Include include) {
        Findings findings = top.findings();
        int before = findings.errors();
        Map<String, String> given = new LinkedHashMap<>();
        for (Declared<Located.Text> each : include.with()) {
            Located.Text value = each.value();
            if (value != null) {
                given.put(each.name(), value.text());
            }
        }
        List<Located.Text> declared = parameters(root);
        Map<String, String> values = new LinkedHashMap<>();
        for (Located.Text parameter : declared) {
            String value = given.get(parameter.text());
            if (value == null) {
                error(
                        include,
                        "'with' lacks the parameter '" + parameter.text() + "' of "
                                + root.place().file(),
                        "");
            } else {
                values.put(parameter.text(), value);
            }
        }
        List<String> names = declared.stream().map(Located.Text::text).toList();
        for (Declared<Located.Text> each : include.with()) {
            if (!names.contains(each.name())) {
                findings.error(
                        each.place(),
                        "include",
                        "'" + each.name() + "' is not a parameter of "
                                + root.place().file(),
                        names.isEmpty() ? "none" : String.join(", ", names),
                        Spelling.nearestIfAny(each.name(), names));
            }
        }
        if (findings.errors() > before) {
            return null;
        }
        Blocks blocks = new Blocks(values, include.file().place(), findings);
        Located filled = blocks.filled(root);
        declared.stream()
                .filter(p -> !blocks.used().contains(p.text()))
                .forEach(p -> findings.warning(
                        p.place(),
                        "parameters",
                        "'" + p.text() + "' is declared, but <" + p.text() + "> stands nowhere"));
        return findings.errors() > before ? null : (Located.Table) filled;
    }

    /** The names a block declares; problems with them are reported when the block itself is read. */
    private static List<Located.Text> parameters(Located.Table root) {
        List<Located.Text> names = new ArrayList<>();
        for (Located.Entry entry : root.entries()) {
            if (entry.key().text().equals(MachineForms.PARAMETERS.name()) && entry.value() instanceof Located.Row row) {
                for (Located item : row.items()) {
                    if (item instanceof Located.Text text) {
                        names.add(text);
                    }
                }
            }
        }
        return names;
    }
}
