package fusetale.circuit;

import fusetale.quantity.Quantity;
import fusetale.quantity.Tolerance;
import fusetale.quantity.Toleranced;
import fusetale.quantity.Unit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** How models of parts without junctions are written. */
final class PassiveModelForms {
    private static final Key<List<String>> SOURCES = ModelForms.SOURCES;
    private static final Key<Quantity> VOLTS =
            Key.required("volts", Amounts.within(Unit.VOLT, 0.5, 2e3), "rated voltage");
    private static final Key<Toleranced> CURRENT =
            Key.required("current", Amounts.toleranced(Unit.AMPERE, "±10 %", 1e-3, 100), "current at rated voltage");
    private static final Key<Quantity> COLD_OHMS = Key.required(
            "cold resistance", Amounts.within(Unit.OHM, 1e-2, 1e5), "resistance at 25 °C, as a meter shows it");

    static final Form<LampModel> LAMP = new Shape<>(
            "a lamp model", "A type of lamp.", List.of(VOLTS, CURRENT, COLD_OHMS, SOURCES), PassiveModelForms::lamp);

    private static final Key<Toleranced> OHMS =
            Key.required("ohms", Amounts.toleranced(Unit.OHM, "±8 %", 1e-2, 1e5), "winding resistance at 25 °C");
    private static final Key<Toleranced> INDUCTANCE =
            Key.required("inductance", Amounts.toleranced(Unit.HENRY, "±20 %", 1e-6, 1e3), "inductance, plunger out");
    private static final Key<Quantity> PULL_IN =
            Key.optional("pull-in", Amounts.within(Unit.AMPERE, 1e-3, 100), "current that pulls the plunger in");
    private static final Key<Quantity> HOLD =
            Key.optional("hold", Amounts.within(Unit.AMPERE, 1e-3, 100), "current that holds the plunger");

    static final Form<CoilModel> COIL = new Shape<>(
            "a coil model",
            "A class of solenoids with one winding.",
            List.of(OHMS, INDUCTANCE, PULL_IN, HOLD, MakeForms.COPPER, MakeForms.INSULATION, SOURCES),
            PassiveModelForms::coil);

    private static final Key<Tolerance> TOLERANCE =
            Key.required("tolerance", Amounts.TOLERANCE, "how far the capacitance may stray");
    private static final Key<Quantity> LOSS =
            Key.required("loss factor", Amounts.within(Unit.RATIO, 1e-3, 2), "tan δ at 120 Hz, as 20 %");
    private static final Key<ElectrolyticModel.Leakage> LEAKAGE = Key.required(
            "leakage rule",
            Forms.choice(ElectrolyticModel.Leakage.class),
            "what its leakage current goes with: capacitance times voltage, or the root of that");
    private static final Key<Double> LEAKAGE_FACTOR = Key.required(
            "leakage factor",
            Forms.number("a plain number such as 0.01", 1e-4, 100),
            "the number in that rule, in µA with C in µF and volts");
    private static final Key<Quantity> LEAST_LEAKAGE = Key.optional(
            "least leakage", Amounts.within(Unit.AMPERE, 1e-9, 1), "leakage current allowed in any case, as 3 uA");

    static final Form<ElectrolyticModel> ELECTROLYTIC = new Shape<>(
            "an electrolytic model",
            "A class of electrolytic capacitors.",
            List.of(TOLERANCE, LOSS, LEAKAGE, LEAKAGE_FACTOR, LEAST_LEAKAGE, SOURCES),
            PassiveModelForms::electrolytic);

    static final Form<CapacitorModel> CAPACITOR = new Shape<>(
            "a capacitor model",
            "A class of capacitors without polarity.",
            List.of(TOLERANCE, VOLTS, SOURCES),
            v -> new CapacitorModel(v.name(), v.get(TOLERANCE), v.get(VOLTS), v.get(SOURCES)));

    private static final Key<Quantity> WIRE_AMPS = Key.optional(
            "amps", Amounts.within(Unit.AMPERE, 1e-2, 1e3), "steady current; left out: what warms it by 30 K");

    static final Form<ConductorModel> WIRE = new Shape<>(
            "a wire model",
            "A wire by its gauge or cross-section.",
            List.of(MakeForms.GAUGE, MakeForms.AREA, WIRE_AMPS, SOURCES),
            PassiveModelForms::wire);

    static final Form<ConductorModel> TRACE = new Shape<>(
            "a trace model",
            "A board trace by its width.",
            List.of(MakeForms.TRACE_WIDTH, MakeForms.TRACE_THICKNESS, WIRE_AMPS, SOURCES),
            v -> new ConductorModel(
                    v.name(),
                    Conductor.trace(
                            1e3 * v.get(MakeForms.TRACE_WIDTH).si(),
                            1e3 * v.get(MakeForms.TRACE_THICKNESS).si(),
                            1),
                    v.find(WIRE_AMPS),
                    v.get(SOURCES)));

    private static final Key<Toleranced> CONTACT_OHMS = Key.required(
            "ohms", Amounts.toleranced(Unit.OHM, "±60 %", 1e-4, 1), "resistance of one contact with its crimp");
    private static final Key<Quantity> CONTACT_AMPS =
            Key.required("amps", Amounts.within(Unit.AMPERE, 1e-2, 1e3), "what each contact stands at a rise of 30 K");

    static final Form<ConnectorModel> CONNECTOR = new Shape<>(
            "a connector model",
            "A class of connectors.",
            List.of(CONTACT_OHMS, CONTACT_AMPS, SOURCES),
            v -> new ConnectorModel(v.name(), v.get(CONTACT_OHMS), v.get(CONTACT_AMPS), v.get(SOURCES)));

    private static final Key<Toleranced> CLIP_OHMS = Key.required(
            "ohms", Amounts.toleranced(Unit.OHM, "±60 %", 1e-4, 1), "both clips together, bright and tight");
    private static final Key<Quantity> TARNISHED =
            Key.required("tarnished", Amounts.within(Unit.OHM, 1e-4, 10), "both clips together, tarnished");
    private static final Key<Quantity> ACCEPTS = Key.required(
            "accepts", Amounts.within(Unit.WATT, 0.1, 100), "power of a link that it stands (IEC 60127-6)");

    static final Form<ClipModel> CLIPS = new Shape<>(
            "a clip model",
            "A class of fuse clips or holders.",
            List.of(CLIP_OHMS, TARNISHED, ACCEPTS, SOURCES),
            PassiveModelForms::clips);

    private PassiveModelForms() {}

    private static @Nullable LampModel lamp(Values v) {
        double hot = v.get(VOLTS).si() / v.get(CURRENT).si();
        if (v.get(COLD_OHMS).si() >= hot) {
            v.error(COLD_OHMS, "no lamp has more resistance cold than hot", "less than volts over current", "");
            return null;
        }
        return new LampModel(
                v.name(), v.get(VOLTS), v.get(CURRENT), v.get(COLD_OHMS).si(), v.get(SOURCES));
    }

    private static @Nullable CoilModel coil(Values v) {
        Quantity pullIn = v.find(PULL_IN);
        Quantity hold = v.find(HOLD);
        if (pullIn != null && hold != null && hold.si() > pullIn.si()) {
            v.error(HOLD, "a plunger needs more current to be pulled in than to be held", "not above 'pull-in'", "");
            return null;
        }
        return new CoilModel(
                v.name(),
                v.get(OHMS),
                v.get(INDUCTANCE),
                pullIn,
                hold,
                MakeForms.wound(v, Wound.ofSolenoid()),
                v.get(SOURCES));
    }

    private static ElectrolyticModel electrolytic(Values v) {
        Quantity least = v.find(LEAST_LEAKAGE);
        return new ElectrolyticModel(
                v.name(),
                v.get(TOLERANCE),
                v.get(LOSS).si(),
                v.get(LEAKAGE),
                v.get(LEAKAGE_FACTOR),
                least == null ? 0 : least.si(),
                v.get(SOURCES));
    }

    private static @Nullable ConductorModel wire(Values v) {
        Double squareMillimetres = MakeForms.squareMillimetres(v);
        return squareMillimetres == null
                ? null
                : new ConductorModel(v.name(), Conductor.wire(squareMillimetres, 1), v.find(WIRE_AMPS), v.get(SOURCES));
    }

    private static @Nullable ClipModel clips(Values v) {
        if (v.get(TARNISHED).si() < v.get(CLIP_OHMS).si()) {
            v.error(TARNISHED, "tarnished clips are never better than bright ones", "not below 'ohms'", "");
            return null;
        }
        return new ClipModel(v.name(), v.get(CLIP_OHMS), v.get(TARNISHED), v.get(ACCEPTS), v.get(SOURCES));
    }
}
