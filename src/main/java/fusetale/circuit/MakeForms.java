package fusetale.circuit;

import fusetale.quantity.Quantity;
import fusetale.quantity.Toleranced;
import fusetale.quantity.Unit;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** How it is written what parts without junctions are made of: windings, resistor bodies, wires and traces. */
final class MakeForms {
    static final Key<Quantity> COPPER = Key.optional(
            "copper", Amounts.within(Unit.GRAM, 0.1, 2e4), "mass of its copper, as 60 g; left out: estimated");
    static final Key<InsulationClass> INSULATION = Key.optional(
            "class", insulation(), "thermal class of its insulation in °C (IEC 60085), as 130; left out: 130");
    static final Key<ResistorStyle> STYLE = Key.optional(
            "style",
            Forms.choice(ResistorStyle.class),
            "what it is made of; left out: carbon film up to 2 W, wirewound above");

    static final Key<Integer> GAUGE =
            Key.optional("gauge", Forms.integer(0, 40), "American wire gauge of a solid wire, 0 to 40");
    static final Key<Quantity> AREA = Key.optional(
            "area", Amounts.within(Unit.SQUARE_MILLIMETRE, 1e-3, 1e2), "cross-section of a wire, instead of its gauge");
    static final Key<Quantity> LENGTH = Key.optional(
            "length",
            Amounts.within(Unit.METRE, 1e-3, 1e3),
            "length of a wire or trace; with its model, gauge or area it gives what 'ohms' and 'amps' leave out");
    static final Key<Quantity> TRACE_WIDTH =
            Key.required("width", Amounts.within(Unit.METRE, 5e-5, 0.1), "width of the foil, as 2.5 mm");
    static final Key<Quantity> TRACE_THICKNESS =
            Key.defaulted("thickness", Amounts.within(Unit.METRE, 5e-6, 5e-4), "35 um", "thickness of the foil");
    private static final Key<Quantity> TRACE_LENGTH =
            Key.required("length", Amounts.within(Unit.METRE, 1e-4, 10), "length of the foil, as 80 mm");
    private static final Form<Conductor> TRACE_FORM = new Shape<>(
            "a board trace",
            "A trace on the face of a board.",
            List.of(TRACE_WIDTH, TRACE_THICKNESS, TRACE_LENGTH),
            v -> Conductor.trace(
                    1e3 * v.get(TRACE_WIDTH).si(),
                    1e3 * v.get(TRACE_THICKNESS).si(),
                    v.get(TRACE_LENGTH).si()));
    static final Key<ConductorModel> WIRE_MODEL = Key.optional(
            Key.MODEL_NAME,
            JunctionKinds.modelNamed(
                    "wires and traces", library -> library.passives().conductors()),
            "a name from the part models, sections wires and traces; with 'length'");
    static final Key<Conductor> TRACE = Key.optional(
            "trace", TRACE_FORM, "a board trace by its size, instead of a wire: {width, thickness, length}");

    private MakeForms() {}

    /** A thermal class by its number. */
    private static Form<InsulationClass> insulation() {
        Map<String, InsulationClass> classes = new LinkedHashMap<>();
        List<Integer> numbers = Arrays.stream(InsulationClass.values())
                .map(InsulationClass::hottestCelsius)
                .toList();
        Arrays.stream(InsulationClass.values()).forEach(c -> classes.put(String.valueOf(c.hottestCelsius()), c));
        return new ScalarForm<>(
                String.join(", ", classes.keySet()), Json.of("type", "integer").with("enum", numbers), (text, spot) -> {
                    InsulationClass found = classes.get(text.text());
                    if (found == null) {
                        throw new Unfit("is no thermal class");
                    }
                    return found;
                });
    }

    /** One winding, with what is usual for it where the file is silent. */
    static Wound wound(Values v, Wound usual) {
        return usual.or(v.find(COPPER), v.find(INSULATION));
    }

    /** A part with one winding, its copper at a temperature [°C]. */
    static About coil(Values v, Wound usual, double celsius) {
        return v.about().of(new Make.Windings(Map.of(Make.Windings.ALONE, wound(v, usual)), celsius));
    }

    /** A resistor of a rating [W]. */
    static About body(Values v, double ratedWatts) {
        ResistorStyle said = v.find(STYLE);
        return v.about().of(new Make.Body(said == null ? ResistorStyle.usual(ratedWatts) : said));
    }

    /** A wire or trace: its resistance and rating follow from its size where the file does not say them. */
    static @Nullable Wire wire(Values v, Key<Toleranced> ohms, Key<Quantity> amps, Toleranced usual) {
        ConductorModel model = v.find(WIRE_MODEL);
        boolean sized = model != null || v.find(GAUGE) != null || v.find(AREA) != null || v.find(LENGTH) != null;
        Conductor trace = v.find(TRACE);
        if (trace != null && sized) {
            v.error(TRACE, "a model, gauge, area or length stands beside a trace's size", "one of the two", "");
            return null;
        }
        Conductor conductor = trace == null && sized ? wireOf(v, model) : trace;
        if (sized && conductor == null) {
            return null;
        }
        Toleranced said = v.find(ohms);
        Quantity rated = v.find(amps);
        Net one = PassiveKinds.one(v);
        Net two = PassiveKinds.two(v);
        if (conductor == null) {
            return new Wire(v.name(), one, two, said == null ? usual : said, rated, v.about());
        }
        Quantity byLength = new Quantity(conductor.ohms(Copper.STATED_CELSIUS), Unit.OHM);
        Quantity bySize = new Quantity(conductor.ratedAmps(), Unit.AMPERE);
        boolean thickened = v.find(GAUGE) != null || v.find(AREA) != null;
        Quantity modelAmps = model == null || thickened ? null : model.ratedAmps();
        Quantity found = modelAmps == null ? bySize : modelAmps;
        return new Wire(
                v.name(),
                one,
                two,
                said == null ? new Toleranced(byLength, usual.tolerance()) : said,
                rated == null ? found : rated,
                v.about().of(new Make.Metal(conductor)));
    }

    private static @Nullable Conductor wireOf(Values v, @Nullable ConductorModel model) {
        Quantity length = v.find(LENGTH);
        if (length == null) {
            Key<?> by = model != null ? WIRE_MODEL : v.find(GAUGE) != null ? GAUGE : AREA;
            v.error(by, "how long it is, is not said", "the key 'length', as 1.2 m", "");
            return null;
        }
        if (model != null && v.find(GAUGE) == null && v.find(AREA) == null) {
            return model.metre().ofLength(length.si());
        }
        Double squareMillimetres = squareMillimetres(v);
        return squareMillimetres == null ? null : Conductor.wire(squareMillimetres, length.si());
    }

    /** Cross-section [mm²] by gauge or area, or null where a problem was reported. */
    static @Nullable Double squareMillimetres(Values v) {
        Integer gauge = v.find(GAUGE);
        Quantity area = v.find(AREA);
        if (gauge != null && area != null) {
            v.error(AREA, "gauge and area both tell the cross-section", "one of the two", "");
            return null;
        }
        if (gauge != null) {
            return Conductor.gaugeSquareMillimetres(gauge);
        }
        if (area == null) {
            v.error(GAUGE, "how thick the wire is, is not said", "the key 'gauge' or 'area'", "");
            return null;
        }
        return area.si();
    }
}
