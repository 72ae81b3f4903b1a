package fusetale.circuit;

import fusetale.quantity.Notation;
import fusetale.quantity.Quantity;
import fusetale.quantity.Tolerance;
import fusetale.quantity.Toleranced;
import fusetale.quantity.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** How the parts that feed the machine are written: transformer, fuse, battery. */
final class SupplyKinds {
    /** The name of the winding that takes the mains; its pins are {@code primary.1}, {@code primary.2}. */
    private static final String PRIMARY_NAME = "primary";

    private static final Key<List<Net>> PINS =
            Key.required("pins", Forms.nets(2, 9), "the nets at its ends, taps between them in order");
    private static final Key<Quantity> WINDING_VOLTS = Key.required(
            "volts", Amounts.positive(Unit.VOLT), "end to end: rated of a primary, at rated load of a secondary");
    private static final Key<Toleranced> WINDING_OHMS =
            Key.required("ohms", Amounts.toleranced(Unit.OHM, "±10 %"), "resistance end to end at 25 °C");
    private static final Key<Quantity> WINDING_AMPS =
            Key.optional("amps", Amounts.positive(Unit.AMPERE), "r.m.s. current it stands for good");
    private static final Form<Coiled> WINDING = new Shape<>(
            "a winding",
            "One winding of a transformer; taps divide it evenly.",
            List.of(PINS, WINDING_VOLTS, WINDING_OHMS, WINDING_AMPS, MakeForms.COPPER, MakeForms.INSULATION),
            SupplyKinds::winding);
    private static final Key<Coiled> PRIMARY =
            Key.required(PRIMARY_NAME, WINDING, "the winding that takes the mains: {pins, volts, ohms, amps}");
    private static final Key<List<Declared<Coiled>>> WINDINGS = Key.required(
            "windings",
            new NamedForm<>(NameForm.WINDING, WINDING, false),
            "the secondaries by name: {pins, volts, ohms, amps}");
    private static final Key<Quantity> REGULATION = Key.required(
            "regulation",
            Amounts.positive(Unit.RATIO),
            "how far a secondary falls from no load to rated load, as a share of the latter");
    private static final Key<Quantity> MAGNETISING = Key.optional(
            "magnetising",
            Amounts.positive(Unit.AMPERE),
            "r.m.s. magnetising current; left out: 4 % of the primary's rated current, or 40 mA");
    private static final Key<Quantity> CORE_LOSS =
            Key.defaulted("core loss", Amounts.positive(Unit.WATT), "4 W", "iron loss at rated voltage");
    private static final Key<Quantity> LEAKAGE = Key.defaulted(
            "leakage", Amounts.positive(Unit.RATIO), "2 %", "leakage reactance as a share of the rated impedance");

    private static final Key<Quantity> RATING =
            Key.required("rating", Amounts.positive(Unit.AMPERE), "what the schematic asks for");
    private static final Key<FuseLink.Speed> SPEED =
            Key.required("speed", Forms.choice(FuseLink.Speed.class), "quick-acting or time-lag");
    private static final Key<String> SIZE =
            Key.defaulted("size", Forms.words("5x20", "6.3x25", "6.3x32"), "6.3x32", "diameter and length in mm");
    static final Map<String, FuseLink.Standard> STANDARDS = standards();
    private static final Key<FuseLink.Standard> STANDARD =
            Key.defaulted("standard", Forms.choice(STANDARDS), "UL 248-14", "whose gates it keeps");
    private static final Toleranced USUAL_CLIPS =
            new Toleranced(new Quantity(0.005, Unit.OHM), new Tolerance(-0.6, 0.6));
    private static final Key<Toleranced> CLIPS = Key.optional(
            "clips",
            Amounts.toleranced(Unit.OHM, "±60 %"),
            "resistance of both clips together; left out: its holder's, or 5 mohm ±60 %");
    private static final Key<ClipModel> HOLDER = Key.optional(
            "holder",
            JunctionKinds.modelNamed("clips", library -> library.passives().clips()),
            "a name from the part models, section clips");
    private static final Key<Quantity> COLD = Key.optional(
            "cold", Amounts.positive(Unit.OHM), "cold resistance of the link; left out: from the table by rating");
    private static final Key<Quantity> FITTED = Key.optional(
            "fitted", Amounts.positive(Unit.AMPERE), "rating of the link found in the clips, where it differs");

    private static final Key<Quantity> EMF =
            Key.required("volts", Amounts.positive(Unit.VOLT), "open-circuit voltage as charged");
    private static final Key<Quantity> SERIES = Key.required("ohms", Amounts.positive(Unit.OHM), "internal resistance");

    private static final Key<Cells> CELLS =
            Key.defaulted("cells", Forms.choice(Cells.class), "nickel cadmium", "what its cells are made of");
    private static final Key<Quantity> CHARGE =
            Key.defaulted("charge", Amounts.positive(Unit.RATIO), "100 %", "how full it is, which its voltage follows");

    static final List<PartKind<?>> ALL = List.of(
            PartKind.of(
                    "transformer",
                    Transformer.class,
                    "A mains transformer.",
                    List.of(PRIMARY, WINDINGS, REGULATION, MAGNETISING, CORE_LOSS, LEAKAGE),
                    SupplyKinds::transformer),
            PartKind.of(
                    "fuse",
                    Fuse.class,
                    "A fuse in its clips.",
                    List.of(PassiveKinds.BETWEEN, RATING, SPEED, SIZE, STANDARD, CLIPS, COLD, FITTED, HOLDER),
                    SupplyKinds::fuse),
            PartKind.of(
                    "battery",
                    Battery.class,
                    "A battery for the memory.",
                    List.of(PassiveKinds.PLUS, PassiveKinds.MINUS, EMF, SERIES, CELLS, CHARGE),
                    SupplyKinds::battery));

    private SupplyKinds() {}

    private static Map<String, FuseLink.Standard> standards() {
        Map<String, FuseLink.Standard> standards = new LinkedHashMap<>();
        standards.put("IEC 60127", FuseLink.Standard.IEC_60127);
        standards.put("UL 248-14", FuseLink.Standard.UL_248_14);
        return standards;
    }

    /** One winding and what it is made of. */
    private record Coiled(Transformer.Winding winding, Wound wound) {}

    private static Coiled winding(Values v) {
        Transformer.Winding winding = new Transformer.Winding(
                v.name(), v.get(PINS), v.get(WINDING_VOLTS), v.get(WINDING_OHMS), v.find(WINDING_AMPS));
        return new Coiled(winding, MakeForms.wound(v, Wound.ofTransformer(winding)));
    }

    private static @Nullable Transformer transformer(Values v) {
        List<Coiled> coiled = NamedForm.values(v.get(WINDINGS));
        if (coiled == null) {
            return null;
        }
        Map<String, Wound> wound = new LinkedHashMap<>();
        wound.put(PRIMARY_NAME, v.get(PRIMARY).wound());
        for (Declared<Coiled> each : v.get(WINDINGS)) {
            if (each.name().equals(PRIMARY_NAME)) {
                v.spot().error(each.place(), "a secondary cannot be named 'primary'", "another name", "");
                return null;
            }
        }
        coiled.forEach(c -> wound.put(c.winding().name(), c.wound()));
        List<Transformer.Winding> secondaries =
                coiled.stream().map(Coiled::winding).toList();
        Transformer.Winding read = v.get(PRIMARY).winding();
        Transformer.Winding primary =
                new Transformer.Winding(PRIMARY_NAME, read.nets(), read.volts(), read.ohms(), read.ratedAmps());
        Quantity magnetising = v.find(MAGNETISING);
        return new Transformer(
                v.name(),
                primary,
                secondaries,
                new Transformer.Magnetics(
                        v.get(REGULATION),
                        magnetising == null ? usualMagnetising(primary, secondaries) : magnetising,
                        v.get(CORE_LOSS),
                        v.get(LEAKAGE)),
                v.about().of(new Make.Windings(wound)));
    }

    /** Common practice for small mains transformers: 4 % of the rated primary current; 40 mA where that is not known. */
    private static Quantity usualMagnetising(Transformer.Winding primary, List<Transformer.Winding> secondaries) {
        double share = 0.04;
        Quantity rated = primary.ratedAmps();
        if (rated != null) {
            return new Quantity(share * rated.si(), Unit.AMPERE);
        }
        List<Double> voltAmperes = new ArrayList<>();
        for (Transformer.Winding winding : secondaries) {
            Quantity amps = winding.ratedAmps();
            if (amps == null) {
                return new Quantity(0.040, Unit.AMPERE);
            }
            voltAmperes.add(winding.volts().si() * amps.si());
        }
        double total = voltAmperes.stream().mapToDouble(Double::doubleValue).sum();
        return new Quantity(total > 0 ? share * total / primary.volts().si() : 0.040, Unit.AMPERE);
    }

    private static @Nullable Battery battery(Values v) {
        double charge = v.get(CHARGE).si();
        if (charge > 1) {
            v.error(CHARGE, "a battery is never more than full", "a share up to 100 %", "");
            return null;
        }
        return new Battery(
                v.name(),
                v.get(PassiveKinds.PLUS),
                v.get(PassiveKinds.MINUS),
                new Quantity(v.get(EMF).si() * v.get(CELLS).ratio(charge), Unit.VOLT),
                v.get(SERIES),
                v.about());
    }

    private static @Nullable Fuse fuse(Values v) {
        Quantity rating = v.get(RATING);
        Quantity fitted = v.find(FITTED);
        Quantity cold = v.find(COLD);
        FuseLink inClips = fitted == null ? link(v, rating, cold, RATING) : link(v, fitted, cold, FITTED);
        if (inClips == null) {
            return null;
        }
        ClipModel holder = v.find(HOLDER);
        Toleranced clips = v.find(CLIPS);
        Toleranced usual = holder == null ? USUAL_CLIPS : holder.ohms();
        return new Fuse(
                v.name(),
                PassiveKinds.one(v),
                PassiveKinds.two(v),
                fitted == null ? inClips : marked(v, rating, inClips),
                inClips,
                clips == null ? usual : clips,
                holder == null ? v.about() : v.about().of(new Make.Clips(holder)));
    }

    /**
     * What the holder asks for where another link is fitted. Nobody can measure it: where no table knows its cold resistance it
     * drops at its rated current what the fitted one drops at its own (judgement, within a kind of link about so).
     */
    private static FuseLink marked(Values v, Quantity rating, FuseLink fitted) {
        Double tabled = v.spot().library().coldOhms(fitted.standard(), fitted.speed(), fitted.size(), rating.si());
        double ohms =
                tabled == null ? fitted.coldOhms().si() * fitted.ratedAmps().si() / rating.si() : tabled;
        return new FuseLink(rating, fitted.speed(), fitted.standard(), fitted.size(), new Quantity(ohms, Unit.OHM));
    }

    private static @Nullable FuseLink link(Values v, Quantity rating, @Nullable Quantity cold, Key<Quantity> saidIn) {
        FuseLink.Standard standard = v.get(STANDARD);
        FuseLink.Speed speed = v.get(SPEED);
        String size = v.get(SIZE);
        if (cold != null) {
            return new FuseLink(rating, speed, standard, size, cold);
        }
        Double ohms = v.spot().library().coldOhms(standard, speed, size, rating.si());
        if (ohms == null) {
            String standardWords = standard == FuseLink.Standard.IEC_60127 ? "IEC 60127" : "UL 248-14";
            v.error(
                    saidIn,
                    "no table gives the cold resistance of a " + (speed == FuseLink.Speed.SLOW ? "slow " : "quick ")
                            + Notation.format(rating) + " fuse, " + size + ", " + standardWords,
                    "the key 'cold' with its resistance, as 25 mohm",
                    "");
            return null;
        }
        return new FuseLink(rating, speed, standard, size, new Quantity(ohms, Unit.OHM));
    }
}
