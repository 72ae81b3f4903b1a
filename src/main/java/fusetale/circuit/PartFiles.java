package fusetale.circuit;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What reading part models gave.
 *
 * @param library the models that could be read
 * @param problems everything wrong with the files
 */
public record PartFiles(PartLibrary library, List<Problem> problems) {
    /** The files that come with the program, under {@code shared/parts}. */
    public static final List<String> SHIPPED = List.of(
            "diodes.yaml",
            "bridges.yaml",
            "zeners.yaml",
            "transistors.yaml",
            "darlingtons.yaml",
            "mosfets.yaml",
            "thyristors.yaml",
            "regulators.yaml",
            "op-amps.yaml",
            "fuses.yaml",
            "lamps.yaml",
            "coils.yaml",
            "capacitors.yaml",
            "wires.yaml",
            "traces.yaml",
            "connectors.yaml",
            "clips.yaml",
            "meters.yaml");

    private static final Key<List<Declared<DiodeModel>>> DIODES = section("diodes", ModelForms.DIODE);
    private static final Key<List<Declared<DiodeModel>>> BRIDGES = section("bridges", ModelForms.DIODE);
    private static final Key<List<Declared<DiodeModel>>> ZENERS = section("zeners", ModelForms.DIODE);
    private static final Key<List<Declared<TransistorModel>>> TRANSISTORS =
            section("transistors", ModelForms.TRANSISTOR);
    private static final Key<List<Declared<DarlingtonModel>>> DARLINGTONS =
            section("darlingtons", ModelForms.DARLINGTON);
    private static final Key<List<Declared<MosfetModel>>> MOSFETS = section("mosfets", ModelForms.MOSFET);
    private static final Key<List<Declared<ThyristorModel>>> THYRISTORS = section("thyristors", ModelForms.THYRISTOR);
    private static final Key<List<Declared<RegulatorModel>>> REGULATORS = section("regulators", ModelForms.REGULATOR);
    private static final Key<List<Declared<OpAmpModel>>> OP_AMPS = section("op-amps", ModelForms.OP_AMP);
    private static final Key<List<Declared<FuseTable>>> FUSES = Key.optional(
            "fuses",
            new NamedForm<>(NameForm.FUSES, ModelForms.FUSES, true),
            "cold resistances of fuse links, a table for each family");
    private static final Key<List<Declared<LampModel>>> LAMPS = section("lamps", PassiveModelForms.LAMP);
    private static final Key<List<Declared<CoilModel>>> COILS = section("coils", PassiveModelForms.COIL);
    private static final Key<List<Declared<ElectrolyticModel>>> ELECTROLYTICS =
            section("electrolytics", PassiveModelForms.ELECTROLYTIC);
    private static final Key<List<Declared<CapacitorModel>>> CAPACITORS =
            section("capacitors", PassiveModelForms.CAPACITOR);
    private static final Key<List<Declared<ConductorModel>>> WIRES = section("wires", PassiveModelForms.WIRE);
    private static final Key<List<Declared<ConductorModel>>> TRACES = section("traces", PassiveModelForms.TRACE);
    private static final Key<List<Declared<ConnectorModel>>> CONNECTORS =
            section("connectors", PassiveModelForms.CONNECTOR);
    private static final Key<List<Declared<ClipModel>>> CLIPS = section("clips", PassiveModelForms.CLIPS);

    /** What a circuit file has and no file of part models. */
    private static final String PARTS_NAME = "parts";

    private static final Key<List<Declared<MeterModel>>> METERS =
            Key.optional("meters", new NamedForm<>(NameForm.METER, MeterForms.METER, true), "meters by name");

    /** A file of part models. */
    static final Shape<PartLibrary> SHAPE = new Shape<>(
            "a file of part models",
            "Part models by name.",
            List.of(
                    MachineForms.FORMAT,
                    DIODES,
                    BRIDGES,
                    ZENERS,
                    TRANSISTORS,
                    DARLINGTONS,
                    MOSFETS,
                    THYRISTORS,
                    REGULATORS,
                    OP_AMPS,
                    FUSES,
                    LAMPS,
                    COILS,
                    ELECTROLYTICS,
                    CAPACITORS,
                    WIRES,
                    TRACES,
                    CONNECTORS,
                    CLIPS,
                    METERS),
            v -> PartLibrary.EMPTY);

    /** Copies the list. */
    public PartFiles {
        problems = List.copyOf(problems);
    }

    private static <M> Key<List<Declared<M>>> section(String name, Form<M> model) {
        return Key.optional(name, new NamedForm<>(NameForm.MODEL, model, true), name + " by name");
    }

    /** Reads the files that come with the program. */
    public static PartFiles shipped() {
        Findings findings = new Findings();
        Map<String, String> texts = new LinkedHashMap<>();
        for (String file : SHIPPED) {
            String text = resource(file, findings);
            if (text != null) {
                texts.put(file, text);
            }
        }
        return read(texts, PartLibrary.EMPTY, findings);
    }

    /**
     * Reads a file where it holds part models: it is a table with a section of models, and no parts of a circuit.
     *
     * @param known models that it may speak of beside its own
     * @return what it holds and everything wrong with it; null where it cannot be read or holds something else
     */
    public static @Nullable PartFiles readIfModels(Path path, PartLibrary known) {
        Findings unsaid = new Findings();
        String name = Includes.name(path);
        String text = SourceText.read(path, name, unsaid);
        Located.Table root = text == null ? null : CircuitReader.table(text, name, unsaid);
        if (text == null || root == null) {
            return null;
        }
        List<String> keys = root.entries().stream().map(e -> e.key().text()).toList();
        boolean models = !keys.contains(PARTS_NAME)
                && SHAPE.keys().stream()
                        .map(k -> k.name())
                        .anyMatch(k -> !k.equals(MachineForms.FORMAT.name()) && keys.contains(k));
        return models ? read(Map.of(name, text), known, new Findings()) : null;
    }

    /** Whether models could be read and nothing is wrong with them. */
    public boolean usable() {
        return problems.stream().noneMatch(Problem::isError);
    }

    /**
     * Reads files of part models; a model may speak of one in a file before or after it.
     *
     * @param texts YAML by the name to call it in problems
     */
    public static PartFiles read(Map<String, String> texts) {
        return read(texts, PartLibrary.EMPTY, new Findings());
    }

    private static @Nullable String resource(String file, Findings findings) {
        try (InputStream in = PartFiles.class.getResourceAsStream("parts/" + file)) {
            if (in == null) {
                findings.error(Place.of(file, 0), "", "this file of part models is missing from the program");
                return null;
            }
            return SourceText.decode(in.readAllBytes(), file, findings);
        } catch (IOException e) {
            findings.error(Place.of(file, 0), "", "this file cannot be read: " + e.getMessage());
            return null;
        }
    }

    private static PartFiles read(Map<String, String> texts, PartLibrary beside, Findings findings) {
        List<Located.Table> roots = new ArrayList<>();
        texts.forEach((name, text) -> {
            Located.Table root = CircuitReader.table(text, name, findings);
            if (root != null) {
                roots.add(root);
            }
        });
        // Darlingtons speak of diodes: the diodes are read first, and again with everything else
        Map<String, DiodeModel> diodes = new LinkedHashMap<>(beside.diodes());
        for (Located.Table root : roots) {
            Values values = SHAPE.readValues(root, spot(root, new Findings(), PartLibrary.EMPTY));
            diodes.putAll(named(values.find(DIODES), new Findings()));
        }
        PartLibrary known = PartLibrary.withDiodes(diodes);
        return new PartFiles(everything(roots, findings, known), findings.inOrder());
    }

    private static Spot spot(Located.Table root, Findings findings, PartLibrary library) {
        return Spot.top(Place.of(root.place().file(), 1), findings, library);
    }

    private static PartLibrary everything(List<Located.Table> roots, Findings findings, PartLibrary known) {
        List<Values> all = roots.stream()
                .map(r -> SHAPE.readValues(r, spot(r, findings, known)))
                .toList();
        return new PartLibrary(
                gathered(all, DIODES, findings),
                gathered(all, BRIDGES, findings),
                gathered(all, ZENERS, findings),
                gathered(all, TRANSISTORS, findings),
                gathered(all, DARLINGTONS, findings),
                gathered(all, MOSFETS, findings),
                gathered(all, THYRISTORS, findings),
                gathered(all, REGULATORS, findings),
                gathered(all, OP_AMPS, findings),
                gathered(all, FUSES, findings),
                passives(all, findings),
                gathered(all, METERS, findings));
    }

    private static PassiveLibrary passives(List<Values> all, Findings findings) {
        PassiveLibrary read = new PassiveLibrary(
                gathered(all, LAMPS, findings),
                gathered(all, COILS, findings),
                gathered(all, ELECTROLYTICS, findings),
                gathered(all, CAPACITORS, findings),
                gathered(all, WIRES, findings),
                gathered(all, TRACES, findings),
                gathered(all, CONNECTORS, findings),
                gathered(all, CLIPS, findings));
        // a wire's model may be either: one name, one thing
        List<Declared<ConductorModel>> both = new ArrayList<>();
        all.forEach(v -> both.addAll(MachineForms.orEmpty(v.find(TRACES))));
        both.stream()
                .filter(d -> read.wires().containsKey(d.name()))
                .forEach(d -> findings.error(d.place(), d.name(), "a wire has this name already"));
        return read;
    }

    private static <M> Map<String, M> gathered(List<Values> all, Key<List<Declared<M>>> section, Findings findings) {
        List<Declared<M>> models = new ArrayList<>();
        all.forEach(v -> models.addAll(MachineForms.orEmpty(v.find(section))));
        return named(models, findings);
    }

    private static <M> Map<String, M> named(@Nullable List<Declared<M>> models, Findings findings) {
        Map<String, M> byName = new LinkedHashMap<>();
        Map<String, Place> places = new LinkedHashMap<>();
        for (Declared<M> each : MachineForms.orEmpty(models)) {
            M model = each.value();
            Place earlier = places.putIfAbsent(each.name(), each.place());
            if (earlier != null) {
                findings.error(each.place(), each.name(), "this name is already taken at " + earlier);
            } else if (model != null) {
                byName.put(each.name(), model);
            }
        }
        return byName;
    }
}
