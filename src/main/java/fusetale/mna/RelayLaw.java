package fusetale.mna;

/**
 * Coil and contact of a relay: port 0 the resistance of its coil (the inductance stays outside, in series), port 1 its
 * contact; one state, the place x of the armature from 0 (released) to 1 (pulled in):
 *
 * <pre>
 * τ·dx/dt = pulled − x      pulled: 0 to 1 as |i| passes 0.95 to 1.05 of what pulls
 * what pulls: the pull-in current while x is below 0.2, the drop-out current above 0.8, in between on a smooth step
 * contact: ln of the conductance from open to closed on a smooth step while x goes from 0.45 to 0.55
 * </pre>
 *
 * with τ such that the contact moves, x = ½, one operate time after the current has set in. Pull-in (must operate),
 * drop-out (must release) and operate time are terms of IEC 61810-1; the equation is ours: the armature's way is not
 * modelled, only that it takes its time and holds with less than it needs to start. A coil on a.c. or on unsmoothed pulses
 * is averaged by the armature and may buzz.
 */
public final class RelayLaw implements PortLaw {
    private static final Rise PULLED = new Rise(0.95, 1.05);
    private static final Rise NEARER = new Rise(0.2, 0.8);
    private static final Rise TOUCHES = new Rise(0.45, 0.55);
    private static final double SETTLED = 1e-13;
    private static final int MOST_PASSES = 200;

    private final Coil coil;
    private final Contact contact;
    private final double constantSeconds;

    /**
     * The coil.
     *
     * @param ohms winding resistance [ohm], above 0
     * @param pullInAmps current [A] that pulls the armature in, above 0
     * @param dropOutAmps current [A] below which it lets go, above 0 and below {@code pullInAmps}
     * @param operateSeconds time [s] until the contact moves, above 0
     */
    public record Coil(double ohms, double pullInAmps, double dropOutAmps, double operateSeconds) {
        /** Refuses a coil that lets go above what pulls it in. */
        public Coil {
            positive("coil resistance", ohms);
            positive("drop-out current", dropOutAmps);
            positive("operate time", operateSeconds);
            if (!(pullInAmps > dropOutAmps && pullInAmps < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("relay pull-in current of " + pullInAmps
                        + " A; it must be above the drop-out current, " + dropOutAmps + " A");
            }
        }
    }

    /**
     * The contact.
     *
     * @param closedOhms resistance closed [ohm], above 0
     * @param openOhms resistance open [ohm], above 0
     * @param closedAtRest whether it opens when the armature pulls in
     */
    public record Contact(double closedOhms, double openOhms, boolean closedAtRest) {
        /** Refuses resistances that are none. */
        public Contact {
            positive("contact resistance", closedOhms);
            positive("resistance of an open contact", openOhms);
        }
    }

    /**
     * A relay.
     *
     * @throws IllegalArgumentException where a value of either is out of its bounds
     */
    public RelayLaw(Coil coil, Contact contact) {
        this.coil = coil;
        this.contact = contact;
        this.constantSeconds = coil.operateSeconds() / Math.log(2);
    }

    private static void positive(String what, double value) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("relay " + what + " of " + value + "; it must be above 0");
        }
    }

    @Override
    public int ports() {
        return 2;
    }

    @Override
    public int states() {
        return 1;
    }

    @Override
    public double baselineSiemens(int port) {
        // an open contact behind a closed one's conductance would be a difference of large numbers
        return port == 0 ? 1 / coil.ohms() : 1 / contact.openOhms();
    }

    /** Conductance [S] of the contact with the armature at a place. */
    public double contactSiemens(double armature) {
        double touching = TOUCHES.at(armature);
        double closed = contact.closedAtRest() ? 1 - touching : touching;
        return Math.pow(contact.openOhms(), closed - 1) * Math.pow(contact.closedOhms(), -closed);
    }

    private double contactGrowth(double armature) {
        double decades = Math.log(contact.openOhms() / contact.closedOhms());
        return (contact.closedAtRest() ? -decades : decades) * TOUCHES.slope(armature);
    }

    @Override
    public void evaluate(PortPoint at) {
        double ratio = at.stepSeconds / constantSeconds;
        boolean steady = Double.isInfinite(ratio);
        double amps = Math.abs(at.volts[0]) / coil.ohms();
        double before = steady ? settled(amps, at.start[0]) : at.start[0];
        double pulling = pullingAmps(before);
        double pulled = PULLED.at(amps / pulling);
        double slope = PULLED.slope(amps / pulling);
        double byVolts = slope * Math.signum(at.volts[0]) / (coil.ohms() * pulling);
        double byBefore = -slope * amps / (pulling * pulling) * pullingSlope(before);
        double end = steady ? before : (before + ratio * pulled) / (1 + ratio);
        at.end[0] = end;
        at.endByVolts[0] = byVolts * (steady ? 1 / (1 - byBefore) : ratio / (1 + ratio));
        at.endByVolts[1] = 0;
        at.endByStart[0] = steady ? 0 : (1 + ratio * byBefore) / (1 + ratio);
        double siemens = contactSiemens(end);
        double ampsByEnd = siemens * contactGrowth(end) * at.volts[1];
        at.amps[0] = 0;
        at.amps[1] = (siemens - 1 / contact.openOhms()) * at.volts[1];
        at.siemens[0] = 0;
        at.siemens[1] = 0;
        at.siemens[2] = ampsByEnd * at.endByVolts[0];
        at.siemens[3] = siemens - 1 / contact.openOhms();
        at.ampsByStart[0] = 0;
        at.ampsByStart[1] = ampsByEnd * at.endByStart[0];
    }

    /** Coil current [A] that pulls the armature further in from a place. */
    private double pullingAmps(double armature) {
        return coil.pullInAmps() + (coil.dropOutAmps() - coil.pullInAmps()) * NEARER.at(armature);
    }

    private double pullingSlope(double armature) {
        return (coil.dropOutAmps() - coil.pullInAmps()) * NEARER.slope(armature);
    }

    /** The place of rest that the armature reaches first from {@code start} at a steady current. */
    private double settled(double amps, double start) {
        double place = start;
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            double next = PULLED.at(amps / pullingAmps(place));
            double moved = Math.abs(next - place);
            place = next;
            if (moved < SETTLED) {
                break;
            }
        }
        return place;
    }
}
