package fusetale.circuit;

import fusetale.quantity.Quantity;
import fusetale.quantity.Span;
import fusetale.quantity.Toleranced;
import fusetale.quantity.Unit;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** How a whole circuit file and a shared block are written: everything around the parts. */
final class MachineForms {
    /** The one format there is. */
    static final Key<Integer> FORMAT = Key.required("format", new FormatForm(), "version of the format, 1");

    /** What a supply gives of its nominal voltage where no range is said (judgement, within what utilities promise). */
    private static final double USUAL_LOW_RATIO = 0.92;

    private static final double USUAL_HIGH_RATIO = 1.08;

    private static final Key<Quantity> MAINS_VOLTS = Key.required(
            "volts", Amounts.within(Unit.VOLT, 1e-3, BenchSetting.MOST_MAINS_VOLTS), "nominal voltage, r.m.s.");
    private static final Key<Span> MAINS_RANGE = Key.optional(
            "range", Amounts.span(Unit.VOLT), "what a healthy supply gives, as 110..126 V; left out: ±8 %");
    private static final Key<Quantity> HERTZ = Key.required("hertz", Amounts.positive(Unit.HERTZ), "frequency");
    private static final Key<Quantity> SOURCE =
            Key.defaulted("source", Amounts.positive(Unit.OHM), "0.3 ohm", "resistance of house wiring and lead");
    private static final Form<Mains> MAINS_FORM = new Shape<>(
            "the mains",
            "The mains at the inlet, between the nets line and neutral.",
            List.of(MAINS_VOLTS, MAINS_RANGE, HERTZ, SOURCE),
            MachineForms::mains);

    static final Key<String> NAME = Key.required("name", Forms.TEXT, "the machine's name");
    static final Key<String> STORY = Key.optional("story", Forms.TEXT, "what is told of it");
    static final Key<Mains> MAINS = Key.required("mains", MAINS_FORM, "its supply: {volts, range, hertz, source}");
    static final Key<Net> GROUND =
            Key.required("ground", Forms.NET, "the net that readings are taken against unless said otherwise");

    private static final Key<Located.Text> FILE =
            Key.required("file", Forms.RAW, "the block's file, seen from this one");
    private static final Key<List<Declared<Located.Text>>> WITH = Key.optional(
            "with", new NamedForm<>(NameForm.PARAMETER, Forms.RAW, false), "what each parameter of the block is here");
    private static final Key<Square> AT =
            Key.defaulted("at", new SquareDefault(), "", "where the block's square [0, 0] stands on the drawing");
    private static final Form<Include> INCLUDE = new Shape<>(
            "an include",
            "A shared block, used once.",
            List.of(FILE, WITH, AT),
            v -> new Include(v.get(FILE), orEmpty(v.find(WITH)), v.get(AT)));
    static final Key<List<Include>> INCLUDES = Key.optional(
            "include",
            new ListForm<>("{file, with, at}", INCLUDE, 0, Includes.MOST),
            "shared blocks, each with its parameters");

    static final Key<List<Declared<Part>>> PARTS =
            Key.required("parts", new NamedForm<>(NameForm.PART, new PartForm(), true), "the parts by designator");

    private static final Key<Net> POINT_AT = Key.required("at", Forms.NET, "the net where the red lead goes");
    private static final Key<Net> AGAINST =
            Key.optional("against", Forms.NET, "the net where the black lead goes; left out: ground");
    private static final Key<String> LABEL = Key.required("label", Forms.TEXT, "what it is");
    private static final Key<TestPoint.Access> ACCESS =
            Key.defaulted("access", Forms.choice(TestPoint.Access.class), "bench top", "effort to reach it");
    private static final Map<MeterFunction, Key<Toleranced>> EXPECTED = expected();
    private static final Form<Map<MeterFunction, Toleranced>> EXPECT_FORM = new Shape<>(
            "what a meter shows",
            "What the schematic says a meter shows there.",
            List.copyOf(EXPECTED.values()),
            MachineForms::expect);
    private static final Key<Map<MeterFunction, Toleranced>> EXPECT =
            Key.optional("expect", EXPECT_FORM, "what the schematic says a meter shows there");
    private static final Form<PointDraft> POINT = new Shape<>(
            "a test point",
            "A place where the schematic tells one to measure.",
            List.of(POINT_AT, AGAINST, LABEL, ACCESS, EXPECT),
            v -> new PointDraft(
                    v.name(),
                    v.get(POINT_AT),
                    v.place(POINT_AT),
                    v.find(AGAINST),
                    v.place(AGAINST),
                    v.get(LABEL),
                    v.get(ACCESS),
                    v.find(EXPECT) == null ? Map.of() : v.get(EXPECT)));
    static final Key<List<Declared<PointDraft>>> POINTS =
            Key.optional("testpoints", new NamedForm<>(NameForm.PART, POINT, true), "test points by name");

    private static final Key<Quantity> CONTACT_AMPS =
            Key.optional("amps", Amounts.positive(Unit.AMPERE), "what each contact stands");
    private static final Key<List<Declared<ContactForm.Said>>> CONTACTS = Key.required(
            "pins", new NamedForm<>(NameForm.CONTACT, new ContactForm(), false), "contacts: {1: {board, harness}}");
    private static final Key<ConnectorModel> CONNECTOR_MODEL = Key.optional(
            Key.MODEL_NAME,
            JunctionKinds.modelNamed("connectors", library -> library.passives().connectors()),
            "a name from the part models, section connectors; keys that stand here go before it");
    private static final Form<Connector> CONNECTOR = new Shape<>(
            "a connector",
            "A connector between a board and its harness.",
            List.of(CONTACT_AMPS, CONTACTS, CONNECTOR_MODEL),
            MachineForms::connector);
    static final Key<List<Declared<Connector>>> CONNECTORS =
            Key.optional("connectors", new NamedForm<>(NameForm.PART, CONNECTOR, true), "connectors by name");

    static final Key<List<Declared<SettingDraft>>> SETTINGS = Key.optional(
            "arrangements",
            new NamedForm<>(NameForm.ARRANGEMENT, SettingDraft.FORM, true),
            "how the bench may be set, by name; the first is the default; left out: power on, power off");

    static final Key<List<Declared<StageDraft>>> STAGES = Key.optional(
            "staged start",
            new NamedForm<>(NameForm.ARRANGEMENT, StageDraft.FORM, true),
            "stages of switching on section by section, in order: {logic: {fuses in: [F102]}}");

    static final Key<List<Located.Text>> PARAMETERS = Key.optional(
            "parameters",
            new ListForm<>("a parameter's name", Forms.RAW, 0, 99),
            "names that stand in the block as <name>");

    /** A whole circuit file. */
    static final Shape<Draft> CIRCUIT = new Shape<>(
            "a circuit",
            "A machine's supply and drivers.",
            List.of(
                    FORMAT,
                    NAME,
                    STORY,
                    MAINS,
                    GROUND,
                    INCLUDES,
                    PARTS,
                    POINTS,
                    CONNECTORS,
                    SETTINGS,
                    STAGES,
                    DrawingForms.DRAWING,
                    DrawingForms.SECTIONS),
            Draft::of);

    /** A shared block. */
    static final Shape<Draft> BLOCK = new Shape<>(
            "a shared block",
            "Parts that a circuit uses several times with other names and values.",
            List.of(
                    FORMAT,
                    PARAMETERS,
                    INCLUDES,
                    PARTS,
                    POINTS,
                    CONNECTORS,
                    DrawingForms.DRAWING,
                    DrawingForms.SECTIONS),
            Draft::of);

    private MachineForms() {}

    /** A use of a shared block. */
    record Include(Located.Text file, List<Declared<Located.Text>> with, Square at) {}

    /** A test point whose black lead may still be left to ground. */
    record PointDraft(
            String name,
            Net at,
            Place atPlace,
            @Nullable Net against,
            Place againstPlace,
            String label,
            TestPoint.Access access,
            Map<MeterFunction, Toleranced> expect) {
        TestPoint against(Net ground) {
            return new TestPoint(name, at, against == null ? ground : against, label, access, expect);
        }
    }

    static <T> List<T> orEmpty(@Nullable List<T> list) {
        return list == null ? List.of() : list;
    }

    private static @Nullable Connector connector(Values v) {
        ConnectorModel model = v.find(CONNECTOR_MODEL);
        Quantity amps = v.find(CONTACT_AMPS);
        List<ContactForm.Said> said = NamedForm.values(v.get(CONTACTS));
        return said == null
                ? null
                : new Connector(
                        v.name(),
                        said.stream().map(c -> c.of(model)).toList(),
                        amps == null && model != null ? model.amps() : amps);
    }

    private static Mains mains(Values v) {
        double volts = v.get(MAINS_VOLTS).si();
        Span range = v.find(MAINS_RANGE);
        double low = range == null ? USUAL_LOW_RATIO * volts : range.low().si();
        double high = range == null ? USUAL_HIGH_RATIO * volts : range.high().si();
        if (volts < low || volts > high) {
            v.error(
                    MAINS_RANGE,
                    "the nominal voltage lies outside this range",
                    "a range around the nominal voltage",
                    "");
        }
        if (high > BenchSetting.MOST_MAINS_VOLTS) {
            String most = Math.round(BenchSetting.MOST_MAINS_VOLTS) + " V";
            long nominal = (long) (BenchSetting.MOST_MAINS_VOLTS / USUAL_HIGH_RATIO);
            v.error(
                    range == null ? MAINS_VOLTS : MAINS_RANGE,
                    "the mains may come to more than " + most,
                    (range == null ? "at most " + nominal + " V, or " : "") + "a range up to " + most,
                    "");
        }
        return new Mains(
                v.get(MAINS_VOLTS),
                new Quantity(low, Unit.VOLT),
                new Quantity(high, Unit.VOLT),
                v.get(HERTZ),
                v.get(SOURCE));
    }

    private static Map<MeterFunction, Key<Toleranced>> expected() {
        Map<MeterFunction, Key<Toleranced>> keys = new LinkedHashMap<>();
        for (MeterFunction function : MeterFunction.values()) {
            if (!function.usual()) {
                continue;
            }
            keys.put(
                    function,
                    Key.optional(
                            function.words(),
                            Amounts.expected(function.unit(), "±10 %"),
                            "with its tolerance, ±10 % where none is said"));
        }
        return keys;
    }

    private static Map<MeterFunction, Toleranced> expect(Values v) {
        Map<MeterFunction, Toleranced> readings = new EnumMap<>(MeterFunction.class);
        EXPECTED.forEach((function, key) -> {
            Toleranced reading = v.find(key);
            if (reading != null) {
                readings.put(function, reading);
            }
        });
        return readings;
    }

    /** {@code format: 1}. */
    private static final class FormatForm implements Form<Integer> {
        @Override
        public @Nullable Integer read(Located item, Spot spot) {
            if (item instanceof Located.Text text && "1".equals(text.text())) {
                return 1;
            }
            spot.error(item.place(), item.what() + " is not a format this program reads", "1", "");
            return null;
        }

        @Override
        public Json schema(Dialect dialect) {
            return Json.of("const", 1);
        }
    }

    /** A square, [0, 0] where none is said. */
    private static final class SquareDefault implements Form<Square> {
        @Override
        public @Nullable Square read(Located item, Spot spot) {
            boolean left = item instanceof Located.Text text && text.text().isEmpty();
            return left ? new Square(0, 0) : Forms.SQUARE.read(item, spot);
        }

        @Override
        public Json schema(Dialect dialect) {
            return Forms.SQUARE.schema(dialect);
        }
    }
}
