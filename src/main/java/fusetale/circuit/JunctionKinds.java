package fusetale.circuit;

import fusetale.quantity.Quantity;
import fusetale.quantity.Spelling;
import fusetale.quantity.Tolerance;
import fusetale.quantity.Toleranced;
import fusetale.quantity.Unit;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** How parts with junctions are written; their electrical values come from the part models. */
final class JunctionKinds {
    private static final Key<Net> ANODE = net("anode");
    private static final Key<Net> CATHODE = net("cathode");
    private static final Key<Net> COLLECTOR = net("collector");
    private static final Key<Net> BASE = net("base");
    private static final Key<Net> EMITTER = net("emitter");
    private static final Key<Net> DRAIN = net("drain");
    private static final Key<Net> GATE = net("gate");
    private static final Key<Net> SOURCE = net("source");
    private static final Key<Net> IN = net("in");
    private static final Key<Net> OUT = net("out");
    private static final Key<Net> GROUND = net("ground");
    private static final Key<List<Net>> AC =
            Key.required("ac", Forms.nets(2, 2), "the nets at its a.c. pins, first and second");

    private static final Key<DiodeModel> DIODE = model("diodes", PartLibrary::diodes);
    private static final Key<DiodeModel> ZENER = model("zeners", PartLibrary::zeners);
    private static final Key<DiodeModel> BRIDGE = model("bridges", PartLibrary::bridges);
    private static final Key<TransistorModel> TRANSISTOR = model("transistors", PartLibrary::transistors);
    private static final Key<DarlingtonModel> DARLINGTON = model("darlingtons", PartLibrary::darlingtons);
    private static final Key<MosfetModel> MOSFET = model("mosfets", PartLibrary::mosfets);
    private static final Key<ThyristorModel> THYRISTOR = model("thyristors", PartLibrary::thyristors);
    private static final Key<OpAmpModel> OP_AMP = model("op-amps", PartLibrary::opAmps);
    private static final Key<Net> NON_INVERTING = Key.required("plus", Forms.NET, "the net at its non-inverting input");
    private static final Key<Net> INVERTING = Key.required("minus", Forms.NET, "the net at its inverting input");
    private static final Key<Quantity> LOW_RAIL =
            Key.defaulted("low rail", Amounts.signed(Unit.VOLT), "-15 V", "its negative supply against ground");
    private static final Key<Quantity> HIGH_RAIL =
            Key.defaulted("high rail", Amounts.signed(Unit.VOLT), "15 V", "its positive supply against ground");
    private static final Key<RegulatorModel> REGULATOR = model("regulators", PartLibrary::regulators);
    private static final Key<Stated> ZENER_VOLTS =
            Key.optional("volts", Amounts.stated(Unit.VOLT), "zener voltage; left out: the model's breakdown voltage");
    private static final Key<Tolerance> ZENER_TOLERANCE =
            Key.defaulted("tolerance", Amounts.TOLERANCE, "±5 %", "how far the zener voltage may stray");

    static final List<PartKind<?>> ALL = List.of(
            PartKind.of(
                    "diode",
                    Diode.class,
                    "A rectifier or signal diode.",
                    List.of(ANODE, CATHODE, DIODE),
                    v -> new Diode(v.name(), v.get(ANODE), v.get(CATHODE), v.get(DIODE), v.about())),
            PartKind.of(
                    "zener",
                    Zener.class,
                    "A zener diode.",
                    List.of(ANODE, CATHODE, ZENER, ZENER_VOLTS, ZENER_TOLERANCE),
                    v -> zener(v)),
            PartKind.of(
                    "bridge",
                    Bridge.class,
                    "Four rectifier legs in one package.",
                    List.of(AC, PassiveKinds.PLUS, PassiveKinds.MINUS, BRIDGE),
                    v -> new Bridge(
                            v.name(),
                            v.get(AC).get(0),
                            v.get(AC).get(1),
                            v.get(PassiveKinds.PLUS),
                            v.get(PassiveKinds.MINUS),
                            v.get(BRIDGE),
                            v.about())),
            PartKind.of(
                    "transistor",
                    Transistor.class,
                    "A bipolar transistor.",
                    List.of(COLLECTOR, BASE, EMITTER, TRANSISTOR),
                    v -> new Transistor(
                            v.name(), v.get(COLLECTOR), v.get(BASE), v.get(EMITTER), v.get(TRANSISTOR), v.about())),
            PartKind.of(
                    "darlington",
                    Darlington.class,
                    "A Darlington transistor with its internal resistors.",
                    List.of(COLLECTOR, BASE, EMITTER, DARLINGTON),
                    v -> new Darlington(
                            v.name(), v.get(COLLECTOR), v.get(BASE), v.get(EMITTER), v.get(DARLINGTON), v.about())),
            PartKind.of(
                    "mosfet",
                    Mosfet.class,
                    "A field-effect transistor with an insulated gate and its body diode.",
                    List.of(DRAIN, GATE, SOURCE, MOSFET),
                    v -> new Mosfet(v.name(), v.get(DRAIN), v.get(GATE), v.get(SOURCE), v.get(MOSFET), v.about())),
            PartKind.of(
                    "thyristor",
                    Thyristor.class,
                    "A thyristor (silicon-controlled rectifier).",
                    List.of(ANODE, GATE, CATHODE, THYRISTOR),
                    v -> new Thyristor(
                            v.name(), v.get(ANODE), v.get(GATE), v.get(CATHODE), v.get(THYRISTOR), v.about())),
            PartKind.of(
                    "regulator",
                    Regulator.class,
                    "A three-terminal series regulator.",
                    List.of(IN, OUT, GROUND, REGULATOR),
                    v -> new Regulator(v.name(), v.get(IN), v.get(OUT), v.get(GROUND), v.get(REGULATOR), v.about())),
            PartKind.of(
                    "op-amp",
                    OpAmp.class,
                    "An operational amplifier; its supply is not wired but said by its rails.",
                    List.of(NON_INVERTING, INVERTING, OUT, LOW_RAIL, HIGH_RAIL, OP_AMP),
                    v -> opAmp(v)));

    private JunctionKinds() {}

    private static Zener zener(Values v) {
        DiodeModel model = v.get(ZENER);
        Toleranced volts = v.find(ZENER_VOLTS) == null
                ? new Toleranced(new Quantity(model.breakdownVolts(), Unit.VOLT), v.get(ZENER_TOLERANCE))
                : v.toleranced(ZENER_VOLTS, ZENER_TOLERANCE);
        return new Zener(v.name(), v.get(ANODE), v.get(CATHODE), model, volts, v.about());
    }

    private static @Nullable OpAmp opAmp(Values v) {
        OpAmp amplifier = new OpAmp(
                v.name(),
                v.get(NON_INVERTING),
                v.get(INVERTING),
                v.get(OUT),
                v.get(LOW_RAIL),
                v.get(HIGH_RAIL),
                OpAmp.State.WORKS,
                v.get(OP_AMP),
                v.about());
        if (!(amplifier.lowestVolts() < amplifier.highestVolts())) {
            v.error(HIGH_RAIL, "the rails leave the output no room", "a voltage further above 'low rail'", "");
            return null;
        }
        return amplifier;
    }

    private static Key<Net> net(String pin) {
        return Key.required(pin, Forms.NET, "the net at its " + pin + " pin");
    }

    private static <M> Key<M> model(String section, Function<PartLibrary, Map<String, M>> models) {
        return Key.required("model", modelNamed(section, models), "a name from the part models, section " + section);
    }

    /** The name of a part model. */
    static <M> Form<M> modelNamed(String section, Function<PartLibrary, Map<String, M>> models) {
        Json json = Json.of("type", "string")
                .with("pattern", NameForm.MODEL.pattern().pattern());
        return new ScalarForm<>("a name from the " + section + " of the part models", json, (text, spot) -> {
            Map<String, M> known = models.apply(spot.library());
            M model = known.get(text.text());
            if (model == null) {
                throw new Unfit(
                        "is not among the " + section + " of the part models",
                        Spelling.nearestIfAny(text.text(), known.keySet()));
            }
            return model;
        });
    }
}
