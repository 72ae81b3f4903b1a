package fusetale.circuit;

import fusetale.quantity.Quantity;
import fusetale.quantity.Tolerance;
import fusetale.quantity.Unit;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** How the rest of the machine is written as its supply sees it: lamps, logic outputs, the controller. */
final class LoadKinds {
    private static final Key<Quantity> LAMP_VOLTS = Key.orModel("volts", Amounts.positive(Unit.VOLT), "rated voltage");
    private static final Key<Stated> LAMP_AMPS =
            Key.orModel("current", Amounts.stated(Unit.AMPERE), "current of one lamp at rated voltage");
    private static final Key<Tolerance> LAMP_TOLERANCE =
            Key.defaulted("tolerance", Amounts.TOLERANCE, "±10 %", "how far the current may stray");
    private static final Key<Integer> COUNT =
            Key.defaulted("count", Forms.integer(1, 999), "1", "how many lamps stand in parallel");

    private static final Key<LampModel> LAMP_MODEL = Key.optional(
            Key.MODEL_NAME,
            JunctionKinds.modelNamed("lamps", library -> library.passives().lamps()),
            "a name from the part models, section lamps; keys that stand here go before it");

    private static final Key<Net> OUT = Key.required("out", Forms.NET, "the net at its output");
    private static final Key<Net> SUPPLY = Key.required("supply", Forms.NET, "the net at its supply pin");
    private static final Key<Net> GROUND = Key.required("ground", Forms.NET, "the net at its ground pin");
    private static final Key<Quantity> HIGH =
            Key.defaulted("high", Amounts.positive(Unit.OHM), "1 kohm", "resistance from the supply when high");
    private static final Key<Quantity> LOW =
            Key.defaulted("low", Amounts.positive(Unit.OHM), "50 ohm", "resistance to ground when low");
    private static final Key<LogicOutput.State> RESTS =
            Key.required("rests", Forms.choice(LogicOutput.State.class), "its level at rest");
    private static final Key<String> COMMANDS = Key.optional(
            "commands", NameForm.PART, "the coil or lamp that is on when this output leaves its level at rest");

    private static final Key<Quantity> VOLTS =
            Key.required("volts", Amounts.positive(Unit.VOLT), "supply voltage at which it draws its current");
    private static final Key<Quantity> DRAWS =
            Key.required("draws", Amounts.positive(Unit.AMPERE), "supply current at that voltage");
    private static final Key<Quantity> RESET_BELOW =
            Key.required("reset below", Amounts.positive(Unit.VOLT), "below this supply voltage it is held in reset");
    private static final Key<String> LABEL = Key.required("label", Forms.TEXT, "what the controller looks at");
    private static final Key<Net> NET = Key.required("net", Forms.NET, "the net it looks at, against its ground");
    private static final Key<Quantity> FROM =
            Key.required("from", Amounts.signed(Unit.VOLT), "the check passes from here");
    private static final Key<Quantity> TO = Key.required("to", Amounts.signed(Unit.VOLT), "to here");
    private static final Form<Controller.StartUpCheck> CHECK =
            new Shape<>("a start-up check", "One start-up check.", List.of(LABEL, NET, FROM, TO), LoadKinds::check);
    private static final Key<List<Controller.StartUpCheck>> CHECKS = Key.required(
            "checks",
            new ListForm<>("{label, net, from, to}", CHECK, 0, 99),
            "start-up checks in order; it stops at the first that fails");

    static final List<PartKind<?>> ALL = List.of(
            PartKind.of(
                    "lamp",
                    Lamp.class,
                    "One lamp, or several alike in parallel.",
                    List.of(PassiveKinds.BETWEEN, LAMP_VOLTS, LAMP_AMPS, LAMP_TOLERANCE, COUNT, LAMP_MODEL),
                    LoadKinds::lamp),
            PartKind.of(
                    "logic output",
                    LogicOutput.class,
                    "A logic output that drives something.",
                    List.of(OUT, SUPPLY, GROUND, HIGH, LOW, RESTS, COMMANDS),
                    v -> new LogicOutput(
                            v.name(),
                            v.get(OUT),
                            v.get(SUPPLY),
                            v.get(GROUND),
                            v.get(HIGH),
                            v.get(LOW),
                            v.get(RESTS),
                            v.find(COMMANDS),
                            v.about())),
            PartKind.of(
                    "controller",
                    Controller.class,
                    "The logic board seen as a load, with the checks it goes through when it starts.",
                    List.of(SUPPLY, GROUND, VOLTS, DRAWS, RESET_BELOW, CHECKS),
                    v -> new Controller(
                            v.name(),
                            v.get(SUPPLY),
                            v.get(GROUND),
                            v.get(VOLTS),
                            v.get(DRAWS),
                            v.get(RESET_BELOW),
                            v.get(CHECKS),
                            v.about())));

    private LoadKinds() {}

    private static Lamp lamp(Values v) {
        LampModel model = v.find(LAMP_MODEL);
        Quantity volts = v.find(LAMP_VOLTS);
        return new Lamp(
                v.name(),
                PassiveKinds.one(v),
                PassiveKinds.two(v),
                volts == null ? Objects.requireNonNull(model).volts() : volts,
                v.find(LAMP_AMPS) == null
                        ? v.tolerated(Objects.requireNonNull(model).amps(), LAMP_TOLERANCE)
                        : v.toleranced(LAMP_AMPS, LAMP_TOLERANCE),
                v.get(COUNT),
                v.about());
    }

    private static Controller.@Nullable StartUpCheck check(Values v) {
        if (v.get(TO).si() < v.get(FROM).si()) {
            v.error(TO, "the check ends below where it begins", "a voltage at or above 'from'", "");
            return null;
        }
        return new Controller.StartUpCheck(v.get(LABEL), v.get(NET), v.get(FROM), v.get(TO));
    }
}
