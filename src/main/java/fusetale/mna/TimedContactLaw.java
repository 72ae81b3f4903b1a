package fusetale.mna;

/**
 * A contact that opens and closes at given times, one port: its resistance is {@code closedOhms} or {@code openOhms}, and
 * changes over at each time. In a periodic state the times count from the start of the period and the contact begins
 * every period as it began the first.
 */
public final class TimedContactLaw implements PortLaw {
    /** Steps land on a time as closely as their grain allows [s]: half of 1/16384 of a period of 50 Hz, 0.61 μs. */
    private static final double LANDED_SECONDS = 0.7e-6;

    private final double closedSiemens;
    private final double openSiemens;
    private final boolean closedAtFirst;
    private final double[] changes;

    /**
     * A contact.
     *
     * @param closedOhms resistance closed [ohm], above 0
     * @param openOhms resistance open [ohm], above {@code closedOhms}
     * @param closedAtFirst whether it is closed at 0 s
     * @param changesSeconds when it changes over [s], rising, above 0
     * @throws IllegalArgumentException where a value is out of its bounds
     */
    public TimedContactLaw(double closedOhms, double openOhms, boolean closedAtFirst, double... changesSeconds) {
        if (!(closedOhms > 0 && openOhms > closedOhms && openOhms < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a contact of " + closedOhms + " ohm closed and " + openOhms
                    + " ohm open; the first must be above 0 and below the second");
        }
        double before = 0;
        for (double change : changesSeconds) {
            if (!(change > before)) {
                throw new IllegalArgumentException(
                        "a contact that changes over at " + change + " s, after " + before + " s; times must rise");
            }
            before = change;
        }
        this.closedSiemens = 1 / closedOhms;
        this.openSiemens = 1 / openOhms;
        this.closedAtFirst = closedAtFirst;
        this.changes = changesSeconds.clone();
    }

    @Override
    public int ports() {
        return 1;
    }

    @Override
    public double baselineSiemens(int port) {
        return openSiemens;
    }

    @Override
    public double[] corners() {
        return changes.clone();
    }

    @Override
    public void evaluate(PortPoint at) {
        boolean closed = closedAtFirst;
        for (double change : changes) {
            if (at.seconds > change + LANDED_SECONDS) {
                closed = !closed;
            }
        }
        double siemens = closed ? closedSiemens - openSiemens : 0;
        at.amps[0] = siemens * at.volts[0];
        at.siemens[0] = siemens;
    }
}
