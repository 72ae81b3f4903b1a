package fusetale.fault;

import static fusetale.fault.AmountRange.OPENED;
import static fusetale.fault.AmountRange.SHORTED;
import static fusetale.fault.AmountRange.contact;
import static fusetale.fault.AmountRange.partlyOpen;
import static fusetale.fault.AmountRange.ratio;
import static fusetale.fault.FailureMode.BURNT;
import static fusetale.fault.FailureMode.OPEN;
import static fusetale.fault.FailureMode.PARTLY_OPEN;
import static fusetale.fault.FailureMode.SHORT;
import static fusetale.fault.FailureMode.SHORTED_TURNS;
import static fusetale.fault.FailureMode.STUCK_OFF;
import static fusetale.fault.FailureMode.STUCK_ON;

import fusetale.circuit.Armature;
import fusetale.circuit.Circuit;
import fusetale.circuit.Relay;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.List;

/**
 * Relays: coil as in {@link CoilFailures}; contact welded (stuck on), stuck open (stuck off) or burnt. Shares: FMD-91,
 * "relay": fails to trip .55, spurious trip .26, short .19 (from memory), divided among coil and contact by judgement.
 * With shorted turns the ampere turns of a current fall with the turns left, so that pull-in and drop-out rise.
 */
final class RelayFailures implements Failures<Relay> {
    private static final String COIL = "coil";
    private static final String CONTACT = "contact";

    @Override
    public String kind() {
        return "relay";
    }

    @Override
    public List<FaultForm> forms(Relay k) {
        FailureRate coil = FailureRate.COIL;
        FailureRate touching = FailureRate.CONTACT;
        return new FormList(k.name(), kind())
                .at(COIL, "coil", OPEN, OPENED, coil.share(0.30))
                .at(COIL, "coil", PARTLY_OPEN, partlyOpen(k.winding().ohms().si()), coil.judged(0.05))
                .at(COIL, "coil", SHORT, SHORTED, coil.share(0.05))
                .at(COIL, "coil", SHORTED_TURNS, ratio(0.7, 0.02, 0.99), coil.share(0.20))
                .at(CONTACT, "contact", STUCK_ON, null, touching.judged(1))
                .said("is welded", "is welded")
                .at(CONTACT, "contact", STUCK_OFF, null, touching.judged(1))
                .said("is stuck open", "is stuck open")
                .at(CONTACT, "contact", BURNT, contact(5), touching.judged(2))
                .list();
    }

    @Override
    public Circuit apply(Failing<Relay> f) {
        Relay k = f.now();
        Relay.Winding w = k.winding();
        double left = f.amountSi();
        return switch (f.fault().mode()) {
            case OPEN -> f.inSeries(k, "coil1", left);
            case SHORT -> f.across(k.coil().one(), k.coil().two());
            case PARTLY_OPEN ->
                f.replacedBy(k.with(new Relay.Winding(
                        f.exactly(Unit.OHM), w.henries(), w.pullInAmps(), w.dropOutAmps(), w.operateSeconds())));
            case SHORTED_TURNS ->
                f.replacedBy(k.with(new Relay.Winding(
                        w.ohms().times(left),
                        w.henries().times(left * left),
                        over(w.pullInAmps(), left),
                        over(w.dropOutAmps(), left),
                        w.operateSeconds())));
            case STUCK_ON -> f.replacedBy(k.with(Armature.WELDED));
            case STUCK_OFF -> f.replacedBy(k.with(Armature.STUCK_OPEN));
            case BURNT -> f.replacedBy(k.withContact(f.ohms()));
            default -> throw f.unlisted();
        };
    }

    /** The current that makes the same ampere turns with a share of the turns. */
    private static Quantity over(Quantity amps, double left) {
        return new Quantity(amps.si() / left, Unit.AMPERE);
    }
}
