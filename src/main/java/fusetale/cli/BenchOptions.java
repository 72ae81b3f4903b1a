package fusetale.cli;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.BenchSetting;
import fusetale.circuit.Circuit;
import fusetale.circuit.Connector;
import fusetale.circuit.Fuse;
import fusetale.circuit.MeterFunction;
import fusetale.circuit.Net;
import fusetale.circuit.Part;
import fusetale.circuit.Pin;
import fusetale.circuit.TestPoint;
import fusetale.explore.Question;
import fusetale.explore.Words;
import fusetale.quantity.Notation;
import fusetale.quantity.NotationException;
import fusetale.quantity.Spelling;
import fusetale.quantity.Unit;
import fusetale.sentence.Leads;
import fusetale.sentence.Sentence;
import fusetale.sentence.Told;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;

/** Options that set the bench, shared by the commands that take readings. */
final class BenchOptions {
    private static final Words WORDS = Words.of(BenchOptions.class);

    /** A comma with a further NAME:AMOUNT behind it; any other is a decimal comma. */
    private static final String BETWEEN_AMOUNTS = ",(?=[^,:]*:)";

    @Option(names = "--arrangement", paramLabel = "NAME", descriptionKey = "arrangement")
    private @Nullable String arrangement;

    @Option(names = "--power", paramLabel = "on|off", descriptionKey = "power")
    private @Nullable Power power;

    @Option(names = "--mains", paramLabel = "VOLTS", descriptionKey = "mains")
    private @Nullable String mains;

    @Option(names = "--series-lamp", paramLabel = "WATTS", descriptionKey = "series-lamp")
    private @Nullable String seriesLamp;

    @Option(names = "--pull", paramLabel = "FUSE", split = ",", descriptionKey = "pull")
    private List<String> pulled = new ArrayList<>();

    @Option(names = "--unplug", paramLabel = "CONNECTOR", split = ",", descriptionKey = "unplug")
    private List<String> unplugged = new ArrayList<>();

    @Option(names = "--lift", paramLabel = "PART.pin", split = ",", descriptionKey = "lift")
    private List<String> lifted = new ArrayList<>();

    @Option(names = "--clip", paramLabel = "A,B", descriptionKey = "clip")
    private List<String> clips = new ArrayList<>();

    @Option(names = "--hold-on", paramLabel = "COIL", split = ",", descriptionKey = "hold-on")
    private List<String> heldOn = new ArrayList<>();

    @Option(names = "--switch", paramLabel = "S=open|closed", descriptionKey = "switch")
    private List<String> switches = new ArrayList<>();

    @Option(
            names = "--charged",
            paramLabel = "C:VOLTS",
            split = BETWEEN_AMOUNTS,
            splitSynopsisLabel = ",",
            descriptionKey = "charged")
    private List<String> charged = new ArrayList<>();

    @Option(
            names = "--pulse",
            paramLabel = "COIL:TIME",
            split = BETWEEN_AMOUNTS,
            splitSynopsisLabel = ",",
            descriptionKey = "pulse")
    private List<String> pulses = new ArrayList<>();

    @Option(names = "--meter", paramLabel = "NAME", descriptionKey = "meter")
    private @Nullable String meter;

    @Option(names = "--range", paramLabel = "AMOUNT", descriptionKey = "range")
    private @Nullable String range;

    @Option(names = "--function", paramLabel = "NAME", split = ",", descriptionKey = "function")
    private List<String> functions = new ArrayList<>();

    @Option(names = "--amps", paramLabel = "FUSE|PART.pin", split = ",", descriptionKey = "amps")
    private List<String> ampsThrough = new ArrayList<>();

    @Option(names = "--observations", paramLabel = "notable|all", descriptionKey = "observations")
    private Sights sights = Sights.NOTABLE;

    @Option(names = "--between", paramLabel = "A,B", descriptionKey = "between")
    private List<String> pairs = new ArrayList<>();

    @Option(names = "--every-pair", paramLabel = "PART", descriptionKey = "every-pair")
    private List<String> everyPair = new ArrayList<>();

    /** A deviation from so many draws is known to 2 %; more only takes longer. */
    private static final int MOST_DRAWS = 1000;

    @Option(names = "--draws", paramLabel = "N", descriptionKey = "draws")
    private int draws = Question.Options.USUAL.draws();

    @Option(names = "--seed", paramLabel = "N", descriptionKey = "seed")
    private long seed = Question.Options.USUAL.seed();

    /** How much of what is seen without a meter is told. */
    private enum Sights {
        NOTABLE,
        ALL
    }

    /** Whether to tell all there is to see without a meter. */
    boolean everySight() {
        return sights == Sights.ALL;
    }

    /** Whether the plug is in. */
    private enum Power {
        ON,
        OFF
    }

    /** The question that a sentence asks of a circuit; options win over what it says. */
    Question question(Circuit circuit, Told told) throws Refused {
        if (draws < 2 || draws > MOST_DRAWS) {
            throw unusable(WORDS.say("draws.bounds", draws));
        }
        Sentence said = told.sentence();
        Arrangement set = arranged(circuit, told);
        return new Question(
                circuit,
                said.supposition(),
                set,
                chosenMeter(said.setting().meter()),
                checks(circuit, set.powerOn(), told),
                new Question.Options(draws, seed, Question.Options.USUAL.traces(), Question.Options.USUAL.aftermath()));
    }

    /**
     * One side of a bench sheet: every test point with the power on, or off, and the pairs asked for besides.
     *
     * @param powerOn which side
     * @throws Refused also where an option is given that a sheet has no place for
     */
    Question sheetQuestion(Circuit circuit, Told told, boolean powerOn) throws Refused {
        notOnSheets().check("sheet.leave-out");
        Question side = question(circuit, told);
        Arrangement set = side.arrangement().withPower(powerOn);
        if (powerOn && !(set.mainsVolts() > 0)) {
            set = set.withMainsVolts(circuit.mains().volts().si());
        }
        Set<Check> checks = new LinkedHashSet<>(Check.all(circuit, powerOn));
        for (String pair : pairs) {
            List<String> ends = two("--between", pair, ",");
            Arrays.stream(MeterFunction.values())
                    .filter(f -> f.usual() && f.powered() == powerOn)
                    .forEach(f -> checks.add(new Check(ends.get(0), ends.get(1), f)));
        }
        return new Question(circuit, side.supposition(), set, side.meter(), new ArrayList<>(checks), side.options());
    }

    private LeftOut notOnSheets() {
        return new LeftOut()
                .no("--power", power != null)
                .no("--charged", !charged.isEmpty())
                .no("--function", !functions.isEmpty())
                .no("--amps", !ampsThrough.isEmpty())
                .no("--every-pair", !everyPair.isEmpty())
                .no("--observations", everySight());
    }

    /** Leaves out of the help of a sheet what a sheet has no place for; typed all the same, it is refused with the reason. */
    static void hideWhatSheetsRefuse(CommandSpec sheet) {
        for (String name : new BenchOptions().notOnSheets().names()) {
            OptionSpec option = sheet.findOption(name);
            sheet.remove(option);
            sheet.addOption(OptionSpec.builder(option).hidden(true).build());
        }
    }

    private Arrangement arranged(Circuit circuit, Told told) throws Refused {
        Sentence said = told.sentence();
        Arrangement set = named(circuit);
        if (arrangement == null
                && !said.arrangement().equals(Sentence.atFirst(circuit).arrangement())) {
            set = said.arrangement();
        }
        if (power != null && (power == Power.ON) != set.powerOn()) {
            boolean on = power == Power.ON;
            set = set.withPower(on);
            if (on && !(set.mainsVolts() > 0)) {
                set = set.withMainsVolts(circuit.mains().volts().si());
            }
        } else if (power == null && arrangement == null && !told.power() && wantsPowerOff(told)) {
            set = set.withPower(false);
        }
        if (mains != null) {
            set = set.withMainsVolts(amount("--mains", mains, Unit.VOLT));
        }
        if (seriesLamp != null) {
            set = set.withSeriesLamp(amount("--series-lamp", seriesLamp, Unit.WATT));
        }
        for (String fuse : pulled) {
            set = set.withPulledFuse(fuse);
        }
        for (String connector : unplugged) {
            set = set.withUnplugged(connector);
        }
        for (String pin : lifted) {
            set = set.withLiftedPin(pin);
        }
        for (String clip : clips) {
            List<String> ends = two("--clip", clip, ",");
            set = set.withClip(ends.get(0), ends.get(1));
        }
        for (String driven : heldOn) {
            set = set.withHeldOn(driven);
        }
        for (String pulse : pulses) {
            List<String> sides = two("--pulse", pulse, ":");
            set = set.withPulse(sides.get(0), amount("--pulse", sides.get(1), Unit.SECOND));
        }
        for (String one : switches) {
            List<String> sides = two("--switch", one, "=");
            set = set.withSwitch(sides.get(0), closed(sides.get(1)));
        }
        for (String one : charged) {
            List<String> sides = two("--charged", one, ":");
            set = set.withCharged(sides.get(0), amount("--charged", sides.get(1), Unit.VOLT));
        }
        for (String gap : ampsThrough) {
            set = circuit.part(gap).filter(Fuse.class::isInstance).isPresent()
                    ? set.withPulledFuse(gap)
                    : set.withLiftedPin(gap);
        }
        return set;
    }

    /** What is charged beforehand, and a diode test over every pair, which may be asked for in volts, too. */
    private boolean wantsPowerOff(Told told) throws Refused {
        boolean pairsOff = !everyPair.isEmpty() && overPairs(told).stream().noneMatch(MeterFunction::powered);
        return pairsOff || !charged.isEmpty();
    }

    private Arrangement named(Circuit circuit) throws Refused {
        BenchSetting setting = circuit.settings().get(0);
        if (arrangement != null) {
            String wanted = arrangement;
            List<String> names =
                    circuit.settings().stream().map(BenchSetting::name).toList();
            setting = circuit.settings().stream()
                    .filter(s -> s.name().equalsIgnoreCase(wanted))
                    .findFirst()
                    .orElseThrow(() -> unusable(WORDS.say(
                            "no-arrangement",
                            wanted,
                            Spelling.nearest(wanted, names)
                                    .map(n -> WORDS.say("nearest", n))
                                    .orElse(""),
                            String.join("; ", names))));
        }
        try {
            return Arrangement.of(circuit, setting);
        } catch (UnfitArrangement e) {
            throw unusable(String.valueOf(e.getMessage()));
        }
    }

    private Meter chosenMeter(Meter said) throws Refused {
        Meter chosen = meter == null ? range == null ? said : Meter.of(said.model()) : namedMeter(meter);
        return range == null ? chosen : ranged(chosen, range);
    }

    /** The meter set to a range by hand; the unit says of which functions. */
    private static Meter ranged(Meter chosen, String range) throws Refused {
        for (Unit unit : List.of(Unit.VOLT, Unit.OHM, Unit.AMPERE)) {
            try {
                return chosen.withRange(Notation.parse(range, unit))
                        .orElseThrow(() -> unusable(WORDS.say("no-range", chosen.name(), range)));
            } catch (NotationException e) {
                // another unit, then
            }
        }
        throw unusable(WORDS.say("no-range", chosen.name(), range));
    }

    /**
     * The meter whose name begins so.
     *
     * @throws Refused where there is none
     */
    static Meter namedMeter(String meter) throws Refused {
        String wanted = meter.toLowerCase(Locale.ROOT);
        for (Meter each : Meter.builtIn()) {
            if (!wanted.isBlank() && each.name().toLowerCase(Locale.ROOT).startsWith(wanted)) {
                return each;
            }
        }
        List<String> names = Meter.builtIn().stream().map(Meter::name).toList();
        throw unusable(WORDS.say("no-meter", meter, String.join("; ", names)));
    }

    /** What was asked for, or else every test point. */
    private List<Check> checks(Circuit circuit, boolean powerOn, Told told) throws Refused {
        Set<Check> checks = new LinkedHashSet<>();
        List<MeterFunction> asked = asked(powerOn, told);
        boolean ampsAlone = !ampsThrough.isEmpty() && pairs.isEmpty() && everyPair.isEmpty();
        new LeftOut()
                .no("--function", ampsAlone && !functions.isEmpty() && !asked.equals(List.of(MeterFunction.DC_AMPS)))
                .check("amps.leave-out");
        Leads held = told.sentence().setting().leads();
        if (held != null && pairs.isEmpty() && ampsThrough.isEmpty() && everyPair.isEmpty()) {
            asked.forEach(f -> checks.add(new Check(held.red(), held.black(), f)));
        }
        for (String pair : pairs) {
            List<String> ends = two("--between", pair, ",");
            for (MeterFunction function : asked) {
                checks.add(new Check(ends.get(0), ends.get(1), function));
            }
        }
        for (String gap : ampsThrough) {
            checks.add(acrossTheGap(circuit, gap));
        }
        for (String name : everyPair) {
            checks.addAll(everyPairOf(circuit, name, overPairs(told)));
        }
        if (!checks.isEmpty()) {
            return new ArrayList<>(checks);
        }
        return functions.isEmpty() && !told.function() ? Check.all(circuit, powerOn) : everywhere(circuit, asked);
    }

    /** The functions asked for, or said, or else those one uses with the power as it is. */
    private List<MeterFunction> asked(boolean powerOn, Told told) throws Refused {
        List<MeterFunction> asked = asked(told);
        if (asked.isEmpty()) {
            Arrays.stream(MeterFunction.values())
                    .filter(f -> f.usual() && f.powered() == powerOn)
                    .forEach(asked::add);
        }
        return asked;
    }

    /** What is measured over every pair of a part's pins. */
    private List<MeterFunction> overPairs(Told told) throws Refused {
        List<MeterFunction> asked = asked(told);
        return asked.isEmpty() ? List.of(MeterFunction.DIODE_TEST) : asked;
    }

    /** The functions asked for, or said; empty for none. */
    private List<MeterFunction> asked(Told told) throws Refused {
        List<MeterFunction> asked = new ArrayList<>();
        for (String name : functions) {
            List<String> known = Arrays.stream(MeterFunction.values())
                    .map(MeterFunction::words)
                    .toList();
            asked.add(Arrays.stream(MeterFunction.values())
                    .filter(f -> f.words().equalsIgnoreCase(name.strip()))
                    .findFirst()
                    .orElseThrow(() -> unusable(WORDS.say(
                            "no-function",
                            name,
                            Spelling.nearest(name, known)
                                    .map(n -> WORDS.say("nearest", n))
                                    .orElse(""),
                            String.join("; ", known)))));
        }
        if (asked.isEmpty() && told.function()) {
            asked.add(told.sentence().setting().function());
        }
        return asked;
    }

    private static List<Check> everywhere(Circuit circuit, List<MeterFunction> functions) {
        List<Check> checks = new ArrayList<>();
        for (TestPoint point : circuit.points()) {
            for (MeterFunction function : functions) {
                checks.add(new Check(point.name(), point.against().name(), function));
            }
        }
        return checks;
    }

    /** From one clip of the fuse that is out to the other, or from the net to the pin that was lifted from it. */
    private static Check acrossTheGap(Circuit circuit, String gap) throws Refused {
        if (circuit.part(gap).filter(Fuse.class::isInstance).isPresent()) {
            return new Check(gap + ".one", gap + ".two", MeterFunction.DC_AMPS);
        }
        int dot = Math.max(gap.indexOf('.'), 0);
        Optional<Net> board = circuit.connector(gap.substring(0, dot))
                .flatMap(c -> c.pins().stream()
                        .filter(p -> p.label().equals(gap.substring(dot + 1)))
                        .findFirst())
                .map(Connector.Contact::board);
        Net net = board.or(() -> circuit.find(gap)).orElseThrow(() -> unusable(WORDS.say("no-gap", gap)));
        return new Check(net.name(), gap, MeterFunction.DC_AMPS);
    }

    private static List<Check> everyPairOf(Circuit circuit, String name, List<MeterFunction> functions) throws Refused {
        List<String> names = circuit.parts().stream().map(Part::name).toList();
        Part part = circuit.part(name)
                .orElseThrow(() -> unusable(WORDS.say(
                        "no-part",
                        name,
                        Spelling.nearest(name, names)
                                .map(n -> WORDS.say("nearest", n))
                                .orElse(""))));
        List<Check> checks = new ArrayList<>();
        for (Pin red : part.pins()) {
            for (Pin black : part.pins()) {
                if (!red.equals(black)) {
                    functions.forEach(
                            f -> checks.add(new Check(name + "." + red.name(), name + "." + black.name(), f)));
                }
            }
        }
        return checks;
    }

    private static boolean closed(String word) throws Refused {
        return switch (word.toLowerCase(Locale.ROOT)) {
            case "closed" -> true;
            case "open" -> false;
            default -> throw unusable(WORDS.say("switch.word", word));
        };
    }

    private static List<String> two(String option, String text, String between) throws Refused {
        List<String> ends =
                List.of(text.split(between, -1)).stream().map(String::strip).toList();
        if (ends.size() != 2 || ends.contains("")) {
            throw unusable(WORDS.say("two", option, between, text));
        }
        return ends;
    }

    /** An amount on the command line may go without its unit: the option says which. */
    private static double amount(String option, String text, Unit unit) throws Refused {
        try {
            String bare = text.strip();
            boolean number = bare.matches("[+-]?\\d+(?:[.,]\\d+)?(?:[eE][+-]?\\d+)?");
            return Notation.parse(number ? bare + " " + unit.symbol() : bare, unit)
                    .si();
        } catch (NotationException e) {
            throw unusable(option + ": " + e.getMessage());
        }
    }

    private static Refused unusable(String message) {
        return new Refused(ExitCodes.UNUSABLE, message);
    }
}
