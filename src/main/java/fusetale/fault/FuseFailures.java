package fusetale.fault;

import static fusetale.fault.AmountRange.SHORTED;
import static fusetale.fault.AmountRange.contact;
import static fusetale.fault.FailureMode.BLOWN;
import static fusetale.fault.FailureMode.BURNT;
import static fusetale.fault.FailureMode.LOOSE;
import static fusetale.fault.FailureMode.MISSING;
import static fusetale.fault.FailureMode.SHORT;
import static fusetale.fault.FailureMode.WRONG_RATING;

import fusetale.circuit.Circuit;
import fusetale.circuit.Fuse;
import fusetale.circuit.FuseLink;
import fusetale.quantity.Quantity;
import fusetale.quantity.Toleranced;
import fusetale.quantity.Unit;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Fuses in their clips. Handbooks count a fuse that opens as a failure only when it had no reason to; how often one is found
 * blown, wrong, bridged or in bad clips is judgement.
 */
final class FuseFailures implements Failures<Fuse> {
    /** Ratings sold everywhere [A]; the usual wrong one is the first that is at least four times what is marked. */
    private static final double[] SHOP_AMPS = {1, 2, 3, 5, 7, 10, 15, 20, 25, 30};

    private static final double TOO_MUCH_RATIO = 4;
    private static final Set<FailureMode> CLIPS = EnumSet.of(LOOSE, BURNT);

    @Override
    public String kind() {
        return "fuse";
    }

    @Override
    public List<FaultForm> forms(Fuse f) {
        double marked = f.marked().ratedAmps().si();
        FailureRate clip = FailureRate.CONNECTOR_PIN;
        return new FormList(f.name(), kind())
                .whole(BLOWN, null, FailureRate.FUSE.judged(10))
                .whole(MISSING, null, FailureRate.HANDS.judged(1))
                .whole(
                        WRONG_RATING,
                        new AmountRange(Unit.AMPERE, usualWrong(marked), 0.02, 100),
                        FailureRate.HANDS.judged(5))
                .whole(SHORT, SHORTED, FailureRate.HANDS.judged(1))
                .said("is bridged", "is bridged, {}")
                .whole(LOOSE, contact(0.5), clip.judged(1))
                .whole(BURNT, contact(0.2), clip.judged(1))
                .list();
    }

    private static double usualWrong(double marked) {
        for (double amps : SHOP_AMPS) {
            if (amps >= TOO_MUCH_RATIO * marked) {
                return amps;
            }
        }
        return Math.min(TOO_MUCH_RATIO * marked, 100);
    }

    @Override
    public boolean clash(Fault a, Fault b) {
        if (CLIPS.contains(a.mode()) || CLIPS.contains(b.mode())) {
            return CLIPS.contains(a.mode()) && CLIPS.contains(b.mode());
        }
        return b.mode() == MISSING && (a.mode() == BLOWN || a.mode() == WRONG_RATING);
    }

    @Override
    public Circuit apply(Failing<Fuse> f) {
        Fuse fuse = f.now();
        if (Failing.apart(fuse.fitted().coldOhms().si())
                && !CLIPS.contains(f.fault().mode())) {
            return f.circuit();
        }
        return switch (f.fault().mode()) {
            case BLOWN, MISSING -> f.replacedBy(with(fuse, opened(fuse.fitted()), fuse.clipOhms()));
            case WRONG_RATING -> f.replacedBy(with(fuse, other(fuse.fitted(), f.amountSi()), fuse.clipOhms()));
            case SHORT -> f.across(fuse.one(), fuse.two());
            case LOOSE, BURNT -> f.replacedBy(with(fuse, fuse.fitted(), f.exactly(Unit.OHM)));
            default -> throw f.unlisted();
        };
    }

    private static FuseLink opened(FuseLink link) {
        return link(link, link.ratedAmps().si(), Failing.OPEN_OHMS);
    }

    private static FuseLink other(FuseLink link, double amps) {
        double ratio =
                LinkResistance.ohms(amps) / LinkResistance.ohms(link.ratedAmps().si());
        return link(link, amps, link.coldOhms().si() * ratio);
    }

    private static FuseLink link(FuseLink like, double amps, double coldOhms) {
        return new FuseLink(
                new Quantity(amps, Unit.AMPERE),
                like.speed(),
                like.standard(),
                like.size(),
                new Quantity(coldOhms, Unit.OHM));
    }

    private static Fuse with(Fuse f, FuseLink fitted, Toleranced clipOhms) {
        return new Fuse(f.name(), f.one(), f.two(), f.marked(), fitted, clipOhms, f.about());
    }
}
