package fusetale.sentence;

import fusetale.bench.Meter;
import fusetale.circuit.BenchSetting;
import fusetale.circuit.MeterFunction;
import fusetale.quantity.Notation;
import fusetale.quantity.NotationException;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Reads clauses that begin with what is done at the bench: {@code pull f202}, {@code lamp 100 W}, {@code ohms}, and the
 * sentence's own {@code a clip lead from TP1 to gnd}. One pattern a deed, the first that fits is taken. A new deed is a row
 * here, its first word in {@link Verbs}, its piece in {@link BenchPieces}.
 */
final class BenchClause {
    private static final List<Rule> RULES = List.of(
            rule("(?:power|switch(?: it)?) (on|off)|(on|off)", BenchClause::power),
            rule("nominal mains|mains (?:nominal|back)", (c, m) -> c.draft.bench.mainsVolts = c.nominalVolts),
            rule("mains(?: at| of| to)? ([\\d.,].*)", BenchClause::mains),
            rule("at (?:the )?(?:mains|usual) frequency", (c, m) -> c.draft.bench.mainsHertz = null),
            rule("(?:mains )?at ([\\d.,]\\S* ?k?(?:hz|hertz))", BenchClause::frequency),
            rule("no (?:series )?lamp|(?:series )?lamp (?:out|off)", (c, m) -> c.draft.bench.lampWatts = null),
            rule("(?:an? |the )?(?:series )?lamp(?: of)? ([\\d.,].*?)(?: in series)?", BenchClause::lamp),
            rule("(?:an? |the )?([\\d.,]\\S*(?: [a-z]+)??) (?:series )?lamp(?: in series)?", BenchClause::lamp),
            rule("(?:pull|take out) (.+)", (c, m) -> c.draft.bench.pulled.add(c.name(Names.Kind.FUSE, m.group(1)))),
            rule("unplug (.+)", (c, m) -> c.draft.bench.unplugged.add(c.name(Names.Kind.CONNECTOR, m.group(1)))),
            rule(
                    "plug(?: in)? (.+)",
                    (c, m) -> c.draft.bench.unplugged.remove(c.name(Names.Kind.CONNECTOR, m.group(1)))),
            rule("lift(?: pin)? (.+)", (c, m) -> c.draft.bench.lifted.add(c.name(Names.Kind.PIN, m.group(1)))),
            rule("solder(?: pin)? (.+)", (c, m) -> c.draft.bench.lifted.remove(c.name(Names.Kind.PIN, m.group(1)))),
            rule("(?:no|take off) clips?(?: leads?)?(?:(?: from)? (.+))?|unclip(?: (.+))?", BenchClause::unclip),
            rule("(?:an? |the )?clip(?: lead)?(?: from)? (.+)", BenchClause::clip),
            rule("hold(?: on)? (.+?)(?: on)?", (c, m) -> c.draft.hold(c.name(Names.Kind.DRIVEN, m.group(1)))),
            rule("(?:release|let go(?: of)?) (.+)", (c, m) -> c.draft.release(c.name(Names.Kind.DRIVEN, m.group(1)))),
            rule("pulse (\\S+)(?: for)?(?: (.+))?", BenchClause::pulse),
            rule("discharge(?: (.+))?", BenchClause::discharge),
            rule("charge (\\S+)(?: to)?(?: (.+))?", BenchClause::charge),
            rule("(open|close) (.+)", BenchClause::operate),
            rule("auto(?:matic)?(?: range)?|no range|range auto", (c, m) -> c.draft.range(null)),
            rule("(?:range|set to) (.+)", BenchClause::range),
            rule("no leads?|leads? off", (c, m) -> c.draft.leads = null),
            rule("(?:swap|turn)(?: the)? leads?", BenchClause::turnLeads),
            rule("(red|black)(?: lead)?(?: on| to| at)? (.+)", BenchClause::lead),
            rule("leads?(?: on| at)? (.+)", (c, m) -> c.draft.leads = c.points.pair(m.group(1))),
            rule("put back|put everything back|put all back", (c, m) -> c.everythingBack()),
            rule("put (?:back|in) (.+)|put (.+) (?:back|in)", (c, m) -> c.putBack(either(m))),
            rule("(?:the )?(.*?)\\s?\\bmeter\\b(?: (?:is )?(?:on|to|set to))?\\s?(.*)", BenchClause::meter));

    private final Draft draft;
    private final Names names;
    private final Points points;
    private final MeterWords meters;
    private final double nominalVolts;

    BenchClause(Draft draft, Names names, Points points, MeterWords meters, double nominalVolts) {
        this.draft = draft;
        this.names = names;
        this.points = points;
        this.meters = meters;
        this.nominalVolts = nominalVolts;
    }

    /** What a clause of one form does. */
    @FunctionalInterface
    private interface Deed {
        void at(BenchClause clause, Matcher words) throws SentenceException;
    }

    private record Rule(Pattern pattern, Deed deed) {}

    private static Rule rule(String regex, Deed deed) {
        return new Rule(Pattern.compile(regex, Pattern.CASE_INSENSITIVE), deed);
    }

    /**
     * Does what a clause says.
     *
     * @return whether it is one of these clauses
     * @throws SentenceException where it is, and names what is not there
     */
    boolean read(String clause) throws SentenceException {
        Optional<MeterFunction> function = MeterWords.exactFunction(clause);
        if (function.isPresent()) {
            draft.function(function.get());
            return true;
        }
        for (Rule rule : RULES) {
            Matcher matcher = rule.pattern().matcher(clause);
            if (matcher.matches()) {
                rule.deed().at(this, matcher);
                return true;
            }
        }
        Optional<Leads> leads = points.pairOrTestPoint(clause);
        leads.ifPresent(l -> draft.leads = l);
        return leads.isPresent();
    }

    private String name(Names.Kind kind, String text) throws SentenceException {
        return names.find(kind, text);
    }

    private static @Nullable String either(Matcher matcher) {
        return matcher.group(1) == null ? matcher.group(2) : matcher.group(1);
    }

    private void power(Matcher m) {
        draft.power("on".equalsIgnoreCase(either(m)));
    }

    private void mains(Matcher m) throws SentenceException {
        draft.bench.mainsVolts = amount("mains 110 V", m.group(1), Unit.VOLT);
    }

    private void frequency(Matcher m) throws SentenceException {
        draft.bench.mainsHertz = amount("at 25 kHz", m.group(1), Unit.HERTZ);
    }

    private void lamp(Matcher m) throws SentenceException {
        draft.bench.lampWatts = amount("lamp 100 W", m.group(1), Unit.WATT);
    }

    private void clip(Matcher m) throws SentenceException {
        Leads ends = points.pair(m.group(1));
        draft.bench.clips.add(BenchDraft.inOrder(ends.red(), ends.black()));
    }

    private void unclip(Matcher m) throws SentenceException {
        String which = either(m);
        if (which == null) {
            draft.bench.clips.clear();
            return;
        }
        Leads ends = points.pair(which);
        BenchSetting.Clip clip = BenchDraft.inOrder(ends.red(), ends.black());
        if (!draft.bench.clips.remove(clip)) {
            throw SentenceException.near(
                    which,
                    Texts.say("clip.none", ends.red(), ends.black()),
                    draft.bench.clips.stream()
                            .map(c -> c.from() + " to " + c.to())
                            .toList());
        }
    }

    private void pulse(Matcher m) throws SentenceException {
        String driven = name(Names.Kind.DRIVEN, m.group(1));
        draft.pulse(driven, amount("pulse " + driven + " 40 ms", m.group(2), Unit.SECOND));
    }

    private void charge(Matcher m) throws SentenceException {
        String capacitor = name(Names.Kind.CAPACITOR, m.group(1));
        draft.charge(capacitor, amount("charge " + capacitor + " 8 V", m.group(2), Unit.VOLT));
    }

    private void discharge(Matcher m) throws SentenceException {
        String which = m.group(1);
        if (which == null) {
            draft.bench.charged.clear();
        } else {
            draft.bench.charged.remove(name(Names.Kind.CAPACITOR, which));
        }
    }

    private void operate(Matcher m) throws SentenceException {
        draft.bench.switches.put(name(Names.Kind.SWITCH, m.group(2)), m.group(1).equalsIgnoreCase("close"));
    }

    private void range(Matcher m) throws SentenceException {
        String text = m.group(1).strip();
        for (Unit unit : List.of(Unit.VOLT, Unit.OHM, Unit.AMPERE)) {
            try {
                draft.range(Notation.parse(text, unit));
                return;
            } catch (NotationException otherUnit) {
                // the next, then
            }
        }
        throw SentenceException.near(text, Texts.say("range.unreadable", text), List.of());
    }

    private void turnLeads(Matcher m) throws SentenceException {
        Leads held = draft.leads;
        if (held == null) {
            throw SentenceException.near(m.group(), Texts.say("leads.none"), List.of());
        }
        draft.leads = held.turned();
    }

    private void lead(Matcher m) throws SentenceException {
        String point = name(Names.Kind.POINT, m.group(2));
        Leads held = draft.leads;
        if (m.group(1).equalsIgnoreCase("red")) {
            draft.leads = held == null ? points.against(point) : new Leads(point, held.black());
        } else if (held == null) {
            throw SentenceException.near(m.group(), Texts.say("leads.red-first", point), List.of());
        } else {
            draft.leads = new Leads(held.red(), point);
        }
    }

    private void everythingBack() {
        draft.supposeNothing();
        draft.bench.undoDeeds();
    }

    private void putBack(@Nullable String what) throws SentenceException {
        String text = what == null ? "" : what.strip();
        String target = names.has(Names.Kind.PIN, text) ? name(Names.Kind.PIN, text) : points.target(text);
        if (!draft.putBack(target)) {
            throw SentenceException.near(text, Texts.say("put-back.nothing", target), List.of());
        }
    }

    /** "meter basic", "meter on ohms", "basic 3½ digit meter on ohms". */
    private void meter(Matcher m) throws SentenceException {
        String before = m.group(1).strip();
        String behind = m.group(2).strip();
        if (!before.isEmpty()) {
            draft.meter(meterCalled(before));
        }
        if (behind.isEmpty()) {
            if (before.isEmpty()) {
                throw meterUnknown(behind);
            }
            return;
        }
        Optional<MeterFunction> function = MeterWords.function(behind);
        if (function.isPresent()) {
            draft.function(function.get());
            return;
        }
        if (!before.isEmpty()) {
            throw functionUnknown(behind);
        }
        draft.meter(meterCalled(behind));
    }

    private Meter meterCalled(String name) throws SentenceException {
        return meters.meter(name).orElseThrow(() -> meterUnknown(name));
    }

    private SentenceException meterUnknown(String found) {
        List<String> all = meters.meters().stream().map(Meter::name).toList();
        return SentenceException.near(found, Texts.say("meter.unknown", found, String.join("; ", all)), all);
    }

    private static SentenceException functionUnknown(String found) {
        List<String> all = List.of(MeterFunction.values()).stream()
                .map(MeterFunction::words)
                .toList();
        return SentenceException.near(found, Texts.say("function.unknown", found, String.join(", ", all)), all);
    }

    /** An amount; without its unit it is in the one that is meant. */
    static double amount(String such, @Nullable String text, Unit unit) throws SentenceException {
        String bare = text == null ? "" : text.strip();
        if (bare.isEmpty()) {
            throw SentenceException.near(bare, Texts.say("amount.missing", such), List.of(such));
        }
        boolean number = bare.matches("[+-]?[.,]?\\d+(?:[.,]\\d+)?(?:[eE][+-]?\\d+)?");
        try {
            Quantity quantity = Notation.parse(number ? bare + " " + unit.symbol() : bare, unit);
            return quantity.si();
        } catch (NotationException unreadable) {
            throw SentenceException.near(bare, such + ": " + unreadable.getMessage(), List.of(such));
        }
    }
}
