package fusetale.circuit;

import fusetale.quantity.Quantity;
import fusetale.quantity.Tolerance;
import fusetale.quantity.Toleranced;
import fusetale.quantity.Unit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** How parts without junctions are written: resistor, wire, capacitors, coils, switch. */
final class PassiveKinds {
    static final Key<List<Net>> BETWEEN = Key.required("between", Forms.nets(2, 2), "the nets at its two ends");
    static final Key<Net> PLUS = Key.required("plus", Forms.NET, "the net at its plus pin");
    static final Key<Net> MINUS = Key.required("minus", Forms.NET, "the net at its minus pin");

    private static final Key<Stated> RESISTANCE =
            Key.required("value", Amounts.stated(Unit.OHM), "its resistance, as 4k7 or 0.47 ohm");
    private static final Key<Stated> CAPACITANCE =
            Key.required("value", Amounts.stated(Unit.FARAD), "its capacitance, as 4700 uF");
    private static final Key<Tolerance> FIVE = tolerance("±5 %", "how far its resistance may stray");
    private static final Key<Tolerance> TEN = tolerance("±10 %", "how far its capacitance may stray");
    private static final Key<Tolerance> CAN = tolerance("-20..+50 %", "how far its capacitance may stray");
    private static final Key<Tolerance> WINDING = tolerance("±8 %", "how far its resistance may stray");
    private static final Key<Quantity> WATTS =
            Key.defaulted("watts", Amounts.positive(Unit.WATT), "0.5 W", "power it stands at 70 °C");
    private static final Toleranced USUAL_WIRE =
            new Toleranced(new Quantity(0.010, Unit.OHM), new Tolerance(-0.3, 0.3));
    private static final Key<Toleranced> WIRE_OHMS = Key.optional(
            "ohms",
            Amounts.toleranced(Unit.OHM, "±30 %"),
            "its resistance from end to end; left out: by its size, or 10 mohm ±30 %");
    private static final Key<Quantity> AMPS =
            Key.optional("amps", Amounts.positive(Unit.AMPERE), "steady current it stands");
    private static final Key<CapacitorModel> CAPACITOR_MODEL = model("capacitors", PassiveLibrary::capacitors);
    private static final Key<ElectrolyticModel> ELECTROLYTIC_MODEL =
            model("electrolytics", PassiveLibrary::electrolytics);
    private static final Key<CoilModel> COIL_MODEL = model("coils", PassiveLibrary::coils);
    private static final Key<Quantity> CAPACITOR_VOLTS =
            Key.orModel("volts", Amounts.positive(Unit.VOLT), "the voltage it stands, as printed on it");
    private static final Key<Quantity> RATED_VOLTS =
            Key.required("volts", Amounts.positive(Unit.VOLT), "the voltage it stands, as printed on it");
    private static final Key<Quantity> ESR = Key.optional(
            "esr",
            Amounts.positive(Unit.OHM),
            "equivalent series resistance; left out: from a loss factor of 0.20 at 120 Hz");
    private static final Key<Quantity> LEAKAGE = Key.optional(
            "leakage",
            Amounts.positive(Unit.OHM),
            "leakage as a resistance; left out: from 3·√(C·V) µA at rated voltage, C in µF");
    private static final Key<Stated> COIL_OHMS =
            Key.required("ohms", Amounts.stated(Unit.OHM), "winding resistance at 25 °C");
    private static final Key<Stated> SOLENOID_OHMS =
            Key.orModel("ohms", Amounts.stated(Unit.OHM), "winding resistance at 25 °C");
    private static final Key<Quantity> TEMPERATURE = Key.defaulted(
            "temperature", Amounts.signed(Unit.CELSIUS), "25 °C", "of its copper, which the resistance follows");
    /** What insulation and solder leave of a winding's temperatures [°C]. */
    private static final double COLDEST_CELSIUS = -55;

    private static final double HOTTEST_CELSIUS = 250;
    private static final Key<Toleranced> INDUCTANCE =
            Key.required("inductance", Amounts.toleranced(Unit.HENRY, "±20 %"), "inductance, plunger out, as 25 mH");
    private static final Key<Toleranced> SOLENOID_INDUCTANCE =
            Key.orModel("inductance", Amounts.toleranced(Unit.HENRY, "±20 %"), "inductance, plunger out, as 25 mH");
    private static final Key<Quantity> PULL_IN =
            Key.optional("pull-in", Amounts.positive(Unit.AMPERE), "current that pulls the plunger in");
    private static final Key<Quantity> HOLD =
            Key.optional("hold", Amounts.positive(Unit.AMPERE), "current that holds the plunger");
    private static final Form<HalfCoil> HALF = new Shape<>(
            "a winding",
            "One winding of a coil.",
            List.of(COIL_OHMS, INDUCTANCE, MakeForms.COPPER, MakeForms.INSULATION),
            v -> new HalfCoil(
                    v.get(COIL_OHMS), v.get(INDUCTANCE), v.find(MakeForms.COPPER), v.find(MakeForms.INSULATION)));
    private static final Key<HalfCoil> POWER = Key.required("power", HALF, "the strong winding: {ohms, inductance}");
    private static final Key<HalfCoil> HOLDING = Key.required("hold", HALF, "the holding winding: {ohms, inductance}");
    private static final Key<Boolean> CLOSED =
            Key.defaulted("closed", Forms.TRUTH, "true", "whether it conducts as drawn");
    private static final Key<Quantity> CONTACT =
            Key.defaulted("contact", Amounts.positive(Unit.OHM), "20 mohm", "resistance when closed");

    private static final Key<List<Net>> RELAY_COIL =
            Key.required("coil", Forms.nets(2, 2), "the nets at both ends of its coil");
    private static final Key<List<Net>> CONTACTS =
            Key.required("contacts", Forms.nets(2, 2), "the nets at both sides of its contact");
    private static final Key<Toleranced> RELAY_INDUCTANCE =
            Key.required("inductance", Amounts.toleranced(Unit.HENRY, "±20 %"), "inductance of its coil, as 300 mH");
    private static final Key<Quantity> PULLS_IN =
            Key.required("pull-in", Amounts.positive(Unit.AMPERE), "current that pulls the armature in");
    private static final Key<Quantity> DROPS_OUT =
            Key.required("drop-out", Amounts.positive(Unit.AMPERE), "current below which it lets go");
    private static final Key<Quantity> OPERATES =
            Key.defaulted("operates", Amounts.positive(Unit.SECOND), "10 ms", "time until its contact moves");
    private static final Key<Quantity> RELAY_CONTACT =
            Key.defaulted("contact", Amounts.positive(Unit.OHM), "50 mohm", "contact resistance when closed");
    private static final Key<Boolean> AT_REST =
            Key.defaulted("rests", Forms.choice(restings()), "open", "its contact, coil without current");

    static final List<PartKind<?>> ALL = List.of(
            PartKind.of(
                    "resistor",
                    Resistor.class,
                    "A resistor.",
                    List.of(BETWEEN, RESISTANCE, FIVE, WATTS, MakeForms.STYLE),
                    v -> new Resistor(
                            v.name(),
                            one(v),
                            two(v),
                            v.toleranced(RESISTANCE, FIVE),
                            v.get(WATTS),
                            MakeForms.body(v, v.get(WATTS).si()))),
            PartKind.of(
                    "wire",
                    Wire.class,
                    "A wire, a board trace or a solder joint that is worth suspecting.",
                    List.of(
                            BETWEEN,
                            WIRE_OHMS,
                            AMPS,
                            MakeForms.WIRE_MODEL,
                            MakeForms.GAUGE,
                            MakeForms.AREA,
                            MakeForms.LENGTH,
                            MakeForms.TRACE),
                    v -> MakeForms.wire(v, WIRE_OHMS, AMPS, USUAL_WIRE)),
            PartKind.of(
                    "capacitor",
                    Capacitor.class,
                    "A capacitor without polarity (film, ceramic).",
                    List.of(BETWEEN, CAPACITANCE, TEN, CAPACITOR_VOLTS, CAPACITOR_MODEL),
                    PassiveKinds::capacitor),
            PartKind.of(
                    "electrolytic",
                    Electrolytic.class,
                    "An electrolytic capacitor.",
                    List.of(PLUS, MINUS, CAPACITANCE, CAN, RATED_VOLTS, ESR, LEAKAGE, ELECTROLYTIC_MODEL),
                    PassiveKinds::electrolytic),
            PartKind.of(
                    "coil",
                    Coil.class,
                    "A solenoid with one winding.",
                    List.of(
                            BETWEEN,
                            SOLENOID_OHMS,
                            WINDING,
                            SOLENOID_INDUCTANCE,
                            PULL_IN,
                            HOLD,
                            TEMPERATURE,
                            MakeForms.COPPER,
                            MakeForms.INSULATION,
                            COIL_MODEL),
                    PassiveKinds::coil),
            PartKind.of(
                    "dual coil",
                    DualCoil.class,
                    "A coil of a strong and a holding winding in series with an end-of-stroke switch.",
                    List.of(BETWEEN, POWER, HOLDING, WINDING, TEMPERATURE),
                    PassiveKinds::dualCoil),
            PartKind.of(
                    "relay",
                    Relay.class,
                    "A relay with one contact.",
                    List.of(
                            RELAY_COIL,
                            CONTACTS,
                            COIL_OHMS,
                            WINDING,
                            RELAY_INDUCTANCE,
                            PULLS_IN,
                            DROPS_OUT,
                            OPERATES,
                            RELAY_CONTACT,
                            AT_REST,
                            TEMPERATURE,
                            MakeForms.COPPER,
                            MakeForms.INSULATION),
                    PassiveKinds::relay),
            PartKind.of(
                    "switch",
                    Switch.class,
                    "A hand-operated or interlock switch.",
                    List.of(BETWEEN, CLOSED, CONTACT),
                    v -> new Switch(v.name(), one(v), two(v), v.get(CLOSED), v.get(CONTACT), v.about())));

    private PassiveKinds() {}

    /** One winding as the file says it. */
    private record HalfCoil(
            Stated ohms,
            Toleranced henries,
            @Nullable Quantity copper,
            @Nullable InsulationClass insulation) {}

    private static Map<String, Boolean> restings() {
        Map<String, Boolean> words = new LinkedHashMap<>();
        words.put("open", false);
        words.put("closed", true);
        return words;
    }

    private static Key<Tolerance> tolerance(String usual, String doc) {
        return Key.defaulted("tolerance", Amounts.TOLERANCE, usual, doc);
    }

    static Net one(Values values) {
        return values.get(BETWEEN).get(0);
    }

    static Net two(Values values) {
        return values.get(BETWEEN).get(1);
    }

    private static <M> Key<M> model(String section, Function<PassiveLibrary, Map<String, M>> models) {
        return Key.optional(
                Key.MODEL_NAME,
                JunctionKinds.modelNamed(section, library -> models.apply(library.passives())),
                "a name from the part models, section " + section + "; keys that stand here go before it");
    }

    private static Capacitor capacitor(Values v) {
        CapacitorModel model = v.find(CAPACITOR_MODEL);
        Quantity volts = v.find(CAPACITOR_VOLTS);
        return new Capacitor(
                v.name(),
                one(v),
                two(v),
                v.toleranced(CAPACITANCE, TEN, model == null ? null : model.tolerance()),
                volts == null ? Objects.requireNonNull(model).volts() : volts,
                v.about());
    }

    /** What the file leaves out follows from the model, or from what is usual of large cans. */
    private static Electrolytic electrolytic(Values v) {
        ElectrolyticModel named = v.find(ELECTROLYTIC_MODEL);
        ElectrolyticModel model = named == null ? ElectrolyticModel.USUAL : named;
        Toleranced farads = v.toleranced(CAPACITANCE, CAN, named == null ? null : named.tolerance());
        Quantity volts = v.get(RATED_VOLTS);
        Quantity esr = v.find(ESR);
        Quantity leakage = v.find(LEAKAGE);
        return new Electrolytic(
                v.name(),
                v.get(PLUS),
                v.get(MINUS),
                farads,
                volts,
                esr == null ? model.seriesOhms(farads.si()) : esr,
                leakage == null ? model.leakageOhms(farads.si(), volts.si()) : leakage,
                v.about());
    }

    private static boolean tooColdOrHot(Values v, double celsius) {
        boolean fits = celsius >= COLDEST_CELSIUS && celsius <= HOTTEST_CELSIUS;
        if (!fits) {
            v.error(TEMPERATURE, "no winding is as cold or as hot as this", "a temperature from -55 °C to 250 °C", "");
        }
        return !fits;
    }

    private static @Nullable Coil coil(Values v) {
        double celsius = v.get(TEMPERATURE).si();
        if (tooColdOrHot(v, celsius)) {
            return null;
        }
        CoilModel model = v.find(COIL_MODEL);
        Toleranced ohms = v.find(SOLENOID_OHMS) == null
                ? v.tolerated(Objects.requireNonNull(model).ohms(), WINDING)
                : v.toleranced(SOLENOID_OHMS, WINDING);
        Toleranced henries = v.find(SOLENOID_INDUCTANCE);
        Quantity saidPullIn = v.find(PULL_IN);
        Quantity saidHold = v.find(HOLD);
        Quantity pullIn = saidPullIn == null && model != null ? model.pullInAmps() : saidPullIn;
        Quantity hold = saidHold == null && model != null ? model.holdAmps() : saidHold;
        if (pullIn != null && hold != null && hold.si() > pullIn.si()) {
            v.error(
                    saidHold == null ? PULL_IN : HOLD,
                    "a plunger needs more current to be pulled in than to be held",
                    saidHold == null ? "not below the model's 'hold'" : "not above 'pull-in'",
                    "");
            return null;
        }
        return new Coil(
                v.name(),
                one(v),
                two(v),
                Copper.at(celsius, ohms),
                henries == null ? Objects.requireNonNull(model).henries() : henries,
                pullIn,
                hold,
                MakeForms.coil(v, model == null ? Wound.ofSolenoid() : model.wound(), celsius));
    }

    private static @Nullable Relay relay(Values v) {
        double celsius = v.get(TEMPERATURE).si();
        if (tooColdOrHot(v, celsius)) {
            return null;
        }
        if (v.get(DROPS_OUT).si() >= v.get(PULLS_IN).si()) {
            v.error(DROPS_OUT, "it would let go of what it has just pulled in", "a current below 'pull-in'", "");
            return null;
        }
        return new Relay(
                v.name(),
                new Relay.Ends(v.get(RELAY_COIL).get(0), v.get(RELAY_COIL).get(1)),
                new Relay.Ends(v.get(CONTACTS).get(0), v.get(CONTACTS).get(1)),
                new Relay.Winding(
                        Copper.at(celsius, v.toleranced(COIL_OHMS, WINDING)),
                        v.get(RELAY_INDUCTANCE),
                        v.get(PULLS_IN),
                        v.get(DROPS_OUT),
                        v.get(OPERATES)),
                v.get(RELAY_CONTACT),
                v.get(AT_REST),
                Armature.FOLLOWS,
                MakeForms.coil(v, Wound.ofRelay(), celsius));
    }

    private static @Nullable DualCoil dualCoil(Values v) {
        HalfCoil power = v.get(POWER);
        HalfCoil hold = v.get(HOLDING);
        Tolerance usual = v.get(WINDING);
        double celsius = v.get(TEMPERATURE).si();
        if (tooColdOrHot(v, celsius)) {
            return null;
        }
        // in this order: what is kept on a disk is found again by what a part is made of
        Map<String, Wound> windings = new LinkedHashMap<>();
        windings.put(Make.Windings.POWER, Wound.ofSolenoid().or(power.copper(), power.insulation()));
        windings.put(Make.Windings.HOLD, Wound.ofHolding().or(hold.copper(), hold.insulation()));
        return new DualCoil(
                v.name(),
                one(v),
                two(v),
                Copper.at(celsius, power.ohms().or(usual)),
                power.henries(),
                Copper.at(celsius, hold.ohms().or(usual)),
                hold.henries(),
                EndOfStroke.FOLLOWS,
                false,
                v.about().of(new Make.Windings(windings, celsius)));
    }
}
