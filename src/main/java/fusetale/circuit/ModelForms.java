package fusetale.circuit;

import fusetale.quantity.Notation;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** How part models are written: the one place that reader and JSON Schema of the part files are made from. */
final class ModelForms {
    static final Key<List<String>> SOURCES = Key.required(
            "sources",
            new ListForm<>("a text", Forms.TEXT, 1, 99),
            "where each figure is from; 'from memory' or 'common practice' where that is what it is");

    private static final Key<Ratings> RATINGS = Key.required("ratings", RatingForms.FORM, "what it stands");

    private static final Key<Quantity> BREAKDOWN_VOLTS =
            Key.required("volts", Amounts.within(Unit.VOLT, 1, 1e4), "reverse voltage at that current");
    private static final Key<Quantity> BREAKDOWN_AT =
            Key.required("at", Amounts.within(Unit.AMPERE, 1e-9, 10), "current at which breakdown is stated");
    private static final Key<Quantity> BREAKDOWN_OHMS =
            Key.required("resistance", Amounts.within(Unit.OHM, 1e-3, 1e6), "differential resistance in breakdown");
    private static final Form<Breakdown> BREAKDOWN_FORM = new Shape<>(
            "a breakdown",
            "Reverse breakdown.",
            List.of(BREAKDOWN_VOLTS, BREAKDOWN_AT, BREAKDOWN_OHMS),
            v -> new Breakdown(
                    v.get(BREAKDOWN_VOLTS).si(),
                    v.get(BREAKDOWN_AT).si(),
                    v.get(BREAKDOWN_OHMS).si()));
    private static final Key<Breakdown> BREAKDOWN =
            Key.required("breakdown", BREAKDOWN_FORM, "reverse breakdown: {volts, at, resistance}");
    private static final Key<Quantity> SATURATION =
            Key.required("saturation current", Amounts.within(Unit.AMPERE, 1e-21, 1e-2), "IS at 25 °C, as 37.8 nA");
    private static final Key<Double> IDEALITY =
            Key.required("ideality", Forms.number("a plain number", 0.5, 5), "N, a plain number");
    private static final Key<Quantity> SERIES =
            Key.required("series resistance", Amounts.within(Unit.OHM, 1e-5, 1e3), "ohmic resistance of the junction");
    private static final Key<Quantity> JUNCTION = Key.required(
            "junction capacitance", Amounts.within(Unit.FARAD, 1e-14, 1e-6), "capacitance of the junction");
    private static final Key<Quantity> REVERSE =
            Key.required("leakage resistance", Amounts.within(Unit.OHM, 1e3, 1e12), "reverse leakage as a resistance");

    static final Form<DiodeModel> DIODE = new Shape<>(
            "a diode model",
            "A junction: diode, zener, or one leg of a bridge.",
            List.of(SATURATION, IDEALITY, SERIES, JUNCTION, REVERSE, BREAKDOWN, RATINGS, SOURCES),
            ModelForms::diode);

    private static final Key<TransistorModel.Polarity> POLARITY =
            Key.required("polarity", Forms.choice(polarities()), "which way round");
    private static final Key<Quantity> TRANSPORT = Key.required(
            "saturation current", Amounts.within(Unit.AMPERE, 1e-18, 1e-6), "transport saturation current IS");
    private static final Key<Double> FORWARD =
            Key.required("forward gain", Forms.number("a plain number such as 100", 1, 1e5), "current gain forward");
    private static final Key<Double> BACKWARD = Key.required(
            "reverse gain", Forms.number("a plain number such as 2", 0.01, 1e4), "current gain in reverse");
    private static final Key<Quantity> EARLY =
            Key.required("early voltage", Amounts.within(Unit.VOLT, 1, 1e4), "Early voltage");
    private static final Key<Quantity> BASE =
            Key.required("base resistance", Amounts.within(Unit.OHM, 1e-3, 1e4), "in series with the base");
    private static final Key<Quantity> COLLECTOR =
            Key.required("collector resistance", Amounts.within(Unit.OHM, 1e-4, 1e3), "in series with the collector");
    private static final Key<Quantity> EMITTER =
            Key.required("emitter resistance", Amounts.within(Unit.OHM, 1e-4, 1e3), "in series with the emitter");
    private static final Key<Quantity> CAPACITANCE =
            Key.required("collector capacitance", Amounts.within(Unit.FARAD, 1e-14, 1e-7), "from collector to base");
    private static final Key<Quantity> BREAKS =
            Key.required("breakdown voltage", Amounts.within(Unit.VOLT, 1, 1e4), "collector to emitter, base at rest");
    private static final List<Key<?>> TRANSISTOR_KEYS =
            List.of(POLARITY, TRANSPORT, FORWARD, BACKWARD, EARLY, BASE, COLLECTOR, EMITTER, CAPACITANCE, BREAKS);

    static final Form<TransistorModel> TRANSISTOR = new Shape<>(
            "a transistor model",
            "A bipolar transistor.",
            with(TRANSISTOR_KEYS, RATINGS, SOURCES),
            v -> transistor(v, rated(v)));

    private static final Form<TransistorModel> INNER = new Shape<>(
            "a transistor of a Darlington",
            "One of the two transistors in the case.",
            TRANSISTOR_KEYS,
            v -> transistor(v, RatingForms.unknown()));
    private static final Key<TransistorModel> FIRST =
            Key.required("first", INNER, "the transistor whose base is brought out");
    private static final Key<TransistorModel> SECOND = Key.required("second", INNER, "the output transistor");
    private static final Key<Quantity> FIRST_SHUNT =
            Key.required("first shunt", Amounts.within(Unit.OHM, 1, 1e6), "base to emitter of the first");
    private static final Key<Quantity> SECOND_SHUNT =
            Key.required("second shunt", Amounts.within(Unit.OHM, 1, 1e6), "base to emitter of the second");
    private static final Key<DiodeModel> ACROSS = Key.required(
            "across",
            JunctionKinds.modelNamed("diodes", PartLibrary::diodes),
            "name of a diode model: the diode from emitter to collector");

    static final Form<DarlingtonModel> DARLINGTON = new Shape<>(
            "a Darlington model",
            "Two transistors in one case with their base-emitter resistors.",
            List.of(FIRST, SECOND, FIRST_SHUNT, SECOND_SHUNT, ACROSS, RATINGS, SOURCES),
            v -> new DarlingtonModel(
                    v.name(),
                    v.get(FIRST),
                    v.get(SECOND),
                    v.get(FIRST_SHUNT).si(),
                    v.get(SECOND_SHUNT).si(),
                    v.get(ACROSS),
                    rated(v)));

    private static final Key<MosfetModel.Channel> CHANNEL =
            Key.required("channel", Forms.choice(channels()), "which channel");
    private static final Key<Quantity> THRESHOLD = Key.required(
            "threshold voltage",
            Amounts.within(Unit.VOLT, 0.1, 20),
            "where the channel begins to conduct, or the on-state");
    private static final Key<Quantity> GATE_VOLTS = Key.required(
            "gate voltage",
            Amounts.within(Unit.VOLT, 0.1, 30),
            "gate to source at the drain current; of a thyristor to trigger");
    private static final Key<Quantity> DRAIN_AMPS = Key.required(
            "drain current", Amounts.within(Unit.AMPERE, 1e-6, 1e3), "drain current in saturation at the gate voltage");
    private static final Key<Quantity> DRAIN =
            Key.required("drain resistance", Amounts.within(Unit.OHM, 1e-4, 1e3), "in series with the drain");
    private static final Key<Quantity> BODY =
            Key.required("saturation current", Amounts.within(Unit.AMPERE, 1e-18, 1e-6), "IS of the body diode");
    private static final Key<Quantity> GATE_LEAK =
            Key.required("gate leakage", Amounts.within(Unit.OHM, 1e4, 1e13), "gate to source as a resistance");
    private static final Key<Quantity> GATE_FARADS =
            Key.required("gate capacitance", Amounts.within(Unit.FARAD, 1e-13, 1e-6), "from gate to source");
    private static final Key<Quantity> DRAIN_FARADS =
            Key.required("drain capacitance", Amounts.within(Unit.FARAD, 1e-13, 1e-6), "from drain to source");
    private static final Key<Quantity> DRAIN_BREAKS =
            Key.required("breakdown voltage", Amounts.within(Unit.VOLT, 1, 1e4), "drain to source, gate at rest");

    static final Form<MosfetModel> MOSFET = new Shape<>(
            "a MOSFET model",
            "An enhancement MOSFET with its body diode.",
            List.of(
                    CHANNEL,
                    THRESHOLD,
                    GATE_VOLTS,
                    DRAIN_AMPS,
                    EARLY,
                    DRAIN,
                    BODY,
                    GATE_LEAK,
                    GATE_FARADS,
                    DRAIN_FARADS,
                    DRAIN_BREAKS,
                    RATINGS,
                    SOURCES),
            ModelForms::mosfet);

    private static final Key<Quantity> GATE_AMPS =
            Key.required("gate current", Amounts.within(Unit.AMPERE, 1e-7, 1), "gate current that triggers it");
    private static final Key<Quantity> GATE_OHMS =
            Key.required("gate resistance", Amounts.within(Unit.OHM, 1, 1e6), "inside, from gate to cathode");
    private static final Key<Quantity> LATCHES = Key.required(
            "latching current",
            Amounts.within(Unit.AMPERE, 1e-5, 10),
            "anode current that keeps it on without its gate");
    private static final Key<Quantity> HOLDS = Key.required(
            "holding current", Amounts.within(Unit.AMPERE, 1e-5, 10), "anode current below which it turns off");
    private static final Key<Quantity> SLOPE = Key.required(
            "slope resistance", Amounts.within(Unit.OHM, 1e-4, 100), "of the on-state, above the threshold voltage");
    private static final Key<Quantity> BLOCKS = Key.required(
            "breakdown voltage", Amounts.within(Unit.VOLT, 1, 1e4), "where it breaks over forward, or down in reverse");
    private static final Key<Quantity> TURN_OFF =
            Key.required("turn-off time", Amounts.within(Unit.SECOND, 1e-8, 1e-2), "until it blocks again, as 30 us");

    static final Form<ThyristorModel> THYRISTOR = new Shape<>(
            "a thyristor model",
            "A thyristor by the figures of its data sheet.",
            List.of(
                    GATE_AMPS,
                    GATE_VOLTS,
                    GATE_OHMS,
                    LATCHES,
                    HOLDS,
                    THRESHOLD,
                    SLOPE,
                    REVERSE,
                    JUNCTION,
                    BLOCKS,
                    TURN_OFF,
                    RATINGS,
                    SOURCES),
            ModelForms::thyristor);

    private static final Key<Quantity> OUTPUT =
            Key.required("output", Amounts.within(Unit.VOLT, 1, 100), "regulated voltage");
    private static final Key<fusetale.quantity.Tolerance> TOLERANCE =
            Key.required("tolerance", Amounts.TOLERANCE, "how far the output may stray");
    private static final Key<Quantity> OUTPUT_OHMS = Key.required(
            "output resistance", Amounts.within(Unit.OHM, 1e-5, 10), "differential output resistance in regulation");
    private static final Key<Quantity> DROPOUT =
            Key.required("dropout", Amounts.within(Unit.VOLT, 0.01, 20), "what the input must exceed the output by");
    private static final Key<Quantity> QUIESCENT =
            Key.required("quiescent current", Amounts.within(Unit.AMPERE, 1e-6, 1), "current into the ground pin");
    private static final Key<Quantity> LIMIT =
            Key.required("current limit", Amounts.within(Unit.AMPERE, 1e-3, 100), "most it gives");
    private static final Key<Double> REJECTION =
            Key.required("ripple rejection", Amounts.DECIBEL_RATIO, "input ripple over output ripple, as 62 dB");

    static final Form<RegulatorModel> REGULATOR = new Shape<>(
            "a regulator model",
            "A three-terminal series regulator.",
            List.of(OUTPUT, TOLERANCE, OUTPUT_OHMS, DROPOUT, QUIESCENT, LIMIT, REJECTION, RATINGS, SOURCES),
            v -> new RegulatorModel(
                    v.name(),
                    v.get(OUTPUT).si(),
                    Math.max(v.get(TOLERANCE).highRatio(), -v.get(TOLERANCE).lowRatio()),
                    v.get(OUTPUT_OHMS).si(),
                    v.get(DROPOUT).si(),
                    v.get(QUIESCENT).si(),
                    v.get(LIMIT).si(),
                    v.get(REJECTION),
                    rated(v)));

    private static final Key<Double> OPEN_LOOP =
            Key.required("gain", Forms.number("a plain number such as 200000", 10, 1e8), "open-loop gain at d.c.");
    private static final Key<Quantity> INPUT_OHMS =
            Key.required("input resistance", Amounts.within(Unit.OHM, 1e3, 1e13), "differential input resistance");
    private static final Key<Quantity> OPEN_LOOP_OHMS =
            Key.required("output resistance", Amounts.within(Unit.OHM, 1e-2, 1e4), "open-loop output resistance");
    private static final Key<Quantity> HEADROOM =
            Key.required("headroom", Amounts.within(Unit.VOLT, 1e-3, 10), "how far from either rail its output stops");
    private static final Key<Quantity> UNITY_GAIN = Key.optional(
            "unity gain frequency",
            Amounts.within(Unit.HERTZ, 1e3, 1e9),
            "where its gain has fallen to 1; left out: it does not fall");

    static final Form<OpAmpModel> OP_AMP = new Shape<>(
            "an op-amp model",
            "An operational amplifier.",
            List.of(OPEN_LOOP, INPUT_OHMS, OPEN_LOOP_OHMS, HEADROOM, UNITY_GAIN, SOURCES),
            ModelForms::opAmp);

    private static final Key<FuseLink.Standard> STANDARD =
            Key.required("standard", Forms.choice(SupplyKinds.STANDARDS), "whose gates the family keeps");
    private static final Key<FuseLink.Speed> SPEED =
            Key.required("speed", Forms.choice(FuseLink.Speed.class), "quick-acting or time-lag");
    private static final Key<String> SIZE =
            Key.required("size", Forms.words("5x20", "6.3x25", "6.3x32"), "diameter and length in mm");
    private static final Key<List<FuseTable.Row>> ROWS = Key.required(
            "rows",
            new ListForm<>("[rating, cold resistance]", new FuseRow(), 1, 99),
            "[rating, cold resistance] for each rating");

    static final Form<FuseTable> FUSES = new Shape<>(
            "a table of fuse links",
            "Cold resistances of one family of fuse links.",
            List.of(STANDARD, SPEED, SIZE, ROWS, SOURCES),
            v -> new FuseTable(v.get(STANDARD), v.get(SPEED), v.get(SIZE), v.get(ROWS), v.get(SOURCES)));

    private ModelForms() {}

    private static OpAmpModel opAmp(Values v) {
        Quantity hertz = v.find(UNITY_GAIN);
        return new OpAmpModel(
                v.name(),
                v.get(OPEN_LOOP),
                v.get(INPUT_OHMS).si(),
                v.get(OPEN_LOOP_OHMS).si(),
                v.get(HEADROOM).si(),
                hertz == null ? null : Double.valueOf(hertz.si()));
    }

    /** Reverse breakdown as the file says it. */
    private record Breakdown(double volts, double amps, double ohms) {}

    private static java.util.Map<String, TransistorModel.Polarity> polarities() {
        java.util.Map<String, TransistorModel.Polarity> words = new java.util.LinkedHashMap<>();
        words.put("NPN", TransistorModel.Polarity.NPN);
        words.put("PNP", TransistorModel.Polarity.PNP);
        return words;
    }

    private static java.util.Map<String, MosfetModel.Channel> channels() {
        java.util.Map<String, MosfetModel.Channel> words = new java.util.LinkedHashMap<>();
        words.put("N", MosfetModel.Channel.N);
        words.put("P", MosfetModel.Channel.P);
        return words;
    }

    private static Ratings rated(Values v) {
        return v.get(RATINGS).from(v.get(SOURCES));
    }

    private static DiodeModel diode(Values v) {
        Breakdown breakdown = v.get(BREAKDOWN);
        return new DiodeModel(
                v.name(),
                v.get(SATURATION).si(),
                v.get(IDEALITY),
                v.get(SERIES).si(),
                v.get(JUNCTION).si(),
                v.get(REVERSE).si(),
                breakdown.volts(),
                breakdown.amps(),
                breakdown.ohms(),
                rated(v));
    }

    private static TransistorModel transistor(Values v, Ratings ratings) {
        return new TransistorModel(
                v.name(),
                v.get(POLARITY),
                v.get(TRANSPORT).si(),
                v.get(FORWARD),
                v.get(BACKWARD),
                v.get(EARLY).si(),
                v.get(BASE).si(),
                v.get(COLLECTOR).si(),
                v.get(EMITTER).si(),
                v.get(CAPACITANCE).si(),
                v.get(BREAKS).si(),
                ratings);
    }

    private static @Nullable MosfetModel mosfet(Values v) {
        if (v.get(GATE_VOLTS).si() <= v.get(THRESHOLD).si()) {
            v.error(GATE_VOLTS, "no drain current flows at this gate voltage", "a voltage above the threshold", "");
            return null;
        }
        return new MosfetModel(
                v.name(),
                v.get(CHANNEL),
                v.get(THRESHOLD).si(),
                v.get(GATE_VOLTS).si(),
                v.get(DRAIN_AMPS).si(),
                v.get(EARLY).si(),
                v.get(DRAIN).si(),
                v.get(BODY).si(),
                v.get(GATE_LEAK).si(),
                v.get(GATE_FARADS).si(),
                v.get(DRAIN_FARADS).si(),
                v.get(DRAIN_BREAKS).si(),
                rated(v));
    }

    private static @Nullable ThyristorModel thyristor(Values v) {
        if (v.get(LATCHES).si() < v.get(HOLDS).si()) {
            v.error(LATCHES, "it would let go where it still holds", "a current not below the holding current", "");
            return null;
        }
        double leastOhms = v.get(GATE_VOLTS).si() / v.get(GATE_AMPS).si();
        if (v.get(GATE_OHMS).si() <= leastOhms) {
            v.error(
                    GATE_OHMS,
                    "it would take the whole gate current, and nothing would trigger it",
                    "more than the gate voltage over the gate current, "
                            + Notation.format(new Quantity(leastOhms, Unit.OHM), 3),
                    "");
            return null;
        }
        return new ThyristorModel(
                v.name(),
                v.get(GATE_AMPS).si(),
                v.get(GATE_VOLTS).si(),
                v.get(GATE_OHMS).si(),
                v.get(LATCHES).si(),
                v.get(HOLDS).si(),
                v.get(THRESHOLD).si(),
                v.get(SLOPE).si(),
                v.get(REVERSE).si(),
                v.get(JUNCTION).si(),
                v.get(BLOCKS).si(),
                v.get(TURN_OFF).si(),
                rated(v));
    }

    private static List<Key<?>> with(List<Key<?>> keys, Key<?>... more) {
        List<Key<?>> all = new ArrayList<>(keys);
        all.addAll(List.of(more));
        return all;
    }

    /** {@code [2 A, 170 mohm]}. */
    private static final class FuseRow implements Form<FuseTable.Row> {
        private static final Form<Quantity> RATING = Amounts.within(Unit.AMPERE, 1e-2, 100);
        private static final Form<Quantity> COLD = Amounts.within(Unit.OHM, 1e-5, 1e4);

        @Override
        public FuseTable.@Nullable Row read(Located item, Spot spot) {
            if (!(item instanceof Located.Row row) || row.items().size() != 2) {
                spot.error(
                        item.place(), item.what() + " stands here", "[rating, cold resistance], as [2 A, 45 mohm]", "");
                return null;
            }
            Quantity rating = RATING.read(row.items().get(0), spot);
            Quantity cold = COLD.read(row.items().get(1), spot);
            return rating == null || cold == null ? null : new FuseTable.Row(rating.si(), cold.si());
        }

        @Override
        public Json schema(Dialect dialect) {
            return Json.of("type", "array")
                    .with("prefixItems", List.of(RATING.schema(dialect), COLD.schema(dialect)))
                    .with("minItems", 2)
                    .with("maxItems", 2);
        }
    }
}
