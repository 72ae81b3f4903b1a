package fusetale.aftermath;

import fusetale.aftermath.Body.Nature;
import fusetale.aftermath.ThermalNetwork.Stage;
import fusetale.circuit.About;
import fusetale.circuit.Bridge;
import fusetale.circuit.Darlington;
import fusetale.circuit.Diode;
import fusetale.circuit.Mosfet;
import fusetale.circuit.Mounting;
import fusetale.circuit.Part;
import fusetale.circuit.Ratings;
import fusetale.circuit.Regulator;
import fusetale.circuit.Thermal;
import fusetale.circuit.Thyristor;
import fusetale.circuit.Transistor;
import fusetale.circuit.Zener;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import java.util.ArrayList;
import java.util.List;

/**
 * Silicon: junction, case, and the plate or the air behind it. Four legs of a bridge are four junctions in one case.
 *
 * <p>Past its rated temperature a junction lives shorter. It is lost where it conducts by heat alone or its chip comes off its
 * solder, somewhere between 200 and 320 °C, and is a short from then on: the usual end of power semiconductors (FMD-91 gives
 * shorts the larger share; temperatures from memory of texts on failure analysis). A regulator shuts itself down at 150 to 175
 * °C instead.
 */
final class Junctions {
    private static final double LOST_FROM_CELSIUS = 200;
    private static final double LOST_TO_CELSIUS = 320;

    /** Above its rating nothing is lost at once: at least so much more [K]. */
    private static final double MARGIN_KELVIN = 40;

    private static final double SHUT_DOWN_FROM_CELSIUS = 150;
    private static final double SHUT_DOWN_TO_CELSIUS = 175;
    private static final String LOST =
            "silicon conducts by heat alone, or its solder lets go, between 200 and 320 °C (from memory)";

    private Junctions() {}

    static void add(Part part, List<Body> bodies) {
        if (part instanceof Diode p) {
            bodies.add(body(leg(p.name()), p.model().ratings(), p.about(), FailureMode.SHORT));
        } else if (part instanceof Bridge p) {
            for (int n = 1; n <= 4; n++) {
                bodies.add(body(
                        new Spot(p.name(), "leg" + n, "leg" + n), p.model().ratings(), p.about(), FailureMode.SHORT));
            }
        } else if (part instanceof Zener p) {
            bodies.add(body(new Spot(p.name(), "", ""), p.model().ratings(), p.about(), FailureMode.SHORT));
        } else if (part instanceof Transistor p) {
            bodies.add(body(new Spot(p.name(), "", "ce"), p.model().ratings(), p.about(), FailureMode.SHORT));
        } else if (part instanceof Darlington p) {
            bodies.add(body(new Spot(p.name(), "", "ce"), p.model().ratings(), p.about(), FailureMode.SHORT));
        } else if (part instanceof Mosfet p) {
            bodies.add(body(new Spot(p.name(), "", "ds"), p.model().ratings(), p.about(), FailureMode.SHORT));
        } else if (part instanceof Thyristor p) {
            bodies.add(body(new Spot(p.name(), "", "ak"), p.model().ratings(), p.about(), FailureMode.SHORT));
        } else if (part instanceof Regulator p) {
            bodies.add(regulator(p));
        }
    }

    /**
     * Where a junction is.
     *
     * @param part designator
     * @param place what of the part warms up
     * @param fails what of the part is shorted when it is lost
     */
    private record Spot(String part, String place, String fails) {}

    /** A leg of a bridge that a supposition took apart is called {@code BR201.leg2}. */
    private static Spot leg(String name) {
        int dot = name.indexOf('.');
        return dot < 0
                ? new Spot(name, "", "")
                : new Spot(name.substring(0, dot), name.substring(dot + 1), name.substring(dot + 1));
    }

    private static Body body(Spot spot, Ratings ratings, About about, FailureMode mode) {
        Thermal thermal = ratings.thermal();
        double lost = Math.max(LOST_FROM_CELSIUS, thermal.highestCelsius() + MARGIN_KELVIN);
        return new Body(
                spot.part(),
                spot.place(),
                Nature.JUNCTION,
                network(thermal, Mounting.of(about)),
                Bodies.known(),
                List.of(
                        new Limit(
                                thermal.highestCelsius(),
                                thermal.highestCelsius(),
                                Harm.JUNCTION_PAST_RATING,
                                null,
                                "highest junction temperature of its data sheet or its case"),
                        new Limit(
                                lost,
                                Math.max(lost, LOST_TO_CELSIUS),
                                Harm.FAILS_SHORT,
                                new Fault(spot.part(), spot.fails(), mode, null),
                                LOST)));
    }

    private static Body regulator(Regulator p) {
        return new Body(
                p.name(),
                "",
                Nature.JUNCTION,
                network(p.model().ratings().thermal(), Mounting.of(p.about())),
                Bodies.known(),
                List.of(new Limit(
                        SHUT_DOWN_FROM_CELSIUS,
                        SHUT_DOWN_TO_CELSIUS,
                        Harm.SHUTS_DOWN,
                        null,
                        "regulators shut down at 150 to 175 °C (from memory of data sheets)")));
    }

    /** Junction, then case, then the plate where there is one. */
    static ThermalNetwork network(Thermal thermal, Mounting mounting) {
        List<Stage> stages = new ArrayList<>();
        stages.add(new Stage(thermal.junctionToCaseKelvinPerWatt(), thermal.junctionJoulesPerKelvin(), false));
        double air = mounting.caseToAirKelvinPerWatt(thermal.caseToAirKelvinPerWatt());
        if (mounting.sunk()) {
            double through = Math.min(mounting.interfaceKelvinPerWatt(), air / 2);
            stages.add(new Stage(through, thermal.caseJoulesPerKelvin(), true));
            stages.add(new Stage(air - through, mounting.sinkJoulesPerKelvin() + thermal.caseJoulesPerKelvin(), true));
        } else {
            stages.add(new Stage(air, thermal.caseJoulesPerKelvin(), true));
        }
        return new ThermalNetwork(stages);
    }
}
