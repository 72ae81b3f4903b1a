package fusetale.aftermath;

import fusetale.aftermath.ThermalNetwork.Warmth;
import java.util.List;

/** A body of one drawn machine, and how warm it is by now. One thread's. */
final class DrawnBody {
    final Body body;
    final int index;
    final int first;
    final ThermalNetwork network;
    final List<DrawnLimit> limits;
    Warmth warmth;

    /**
     * Draws a body; what shares outer stages shares its draw.
     *
     * @param index its place among all bodies
     * @param first place of the first body of the same part
     */
    DrawnBody(Body body, int index, int first, Draw draw, double ambientCelsius) {
        this.body = body;
        this.index = index;
        this.first = first;
        String figure = body.part() + " " + body.nature();
        this.network = body.network()
                .times(
                        draw.factor(figure + " K/W", body.spread().resistanceRatio()),
                        draw.factor(figure + " J/K", body.spread().capacityRatio()));
        this.limits = body.limits().stream()
                .map(l -> new DrawnLimit(
                        l,
                        draw.between(body.name() + " " + l.harm(), l.lowCelsius(), l.highCelsius()) - ambientCelsius))
                .toList();
        this.warmth = network.cool();
    }

    /** A limit of this machine. */
    static final class DrawnLimit {
        final Limit limit;
        final double kelvin;
        boolean passed;

        DrawnLimit(Limit limit, double kelvin) {
            this.limit = limit;
            this.kelvin = kelvin;
        }
    }
}
