package fusetale.sentence;

import fusetale.circuit.Circuit;
import fusetale.circuit.FuseLink;
import fusetale.circuit.Mounting;
import fusetale.fault.Fitting;
import fusetale.fault.Replacements;
import fusetale.fault.Swap;
import fusetale.quantity.Notation;
import fusetale.quantity.NotationException;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Swaps in words and in short, read and written:
 *
 * <pre>
 * BR201 is a bridge-35A              BR201=bridge-35A
 * BR201 stands clear of the plate    BR201=standing-clear
 * C101 is 10000 uF, 63 V             C101=10000uF:63V
 * F201 is an IEC 5 A slow fuse       F201=5A:slow:IEC
 * </pre>
 *
 * <p>A model and a mounting may share a clause, {@code BR201=bridge-35A:standing-clear}; they are two swaps. "Holds a 25 A
 * fuse" says that the wrong one was put in, a fault; a link that is said with its speed or its standard, or after "is", is a
 * swap.
 */
final class SwapWords {
    private static final Pattern VERB =
            Pattern.compile("(?i)^(is|are|has|holds|takes|gets|becomes|now|sits|stands|hangs|lies|mounted)\\b\\s*");
    private static final Pattern ARTICLE = Pattern.compile("(?i)^(?:an?|the|now|with)\\s+");
    private static final Pattern SPEED =
            Pattern.compile("(?i)\\b(?:(slow|time[ -]?lag|time[ -]?delay)|(quick|fast))(?:[ -](?:blow|acting))?\\b");
    private static final Pattern STANDARD =
            Pattern.compile("(?i)\\b(?:(IEC)(?:[ -]?60127(?:-2)?)?|(UL)(?:/CSA)?(?:[ -]?248-14)?)\\b");

    /** What stands around a rating; not a comma within it, for 0,063 A is a rating too. */
    private static final Pattern LINK_FILLERS = Pattern.compile("(?i)\\b(?:fuse|link|to)\\b|:|,(?!\\d)|(?<!\\d),");

    private static final Pattern FIGURE = Pattern.compile("^[×x*]?\\s*[+-]?[.,]?\\d.*", Pattern.DOTALL);
    private static final Pattern BARE = Pattern.compile("[\\d.,\\s]*\\d[.,]?");

    private final String part;
    private final Replacements may;

    private SwapWords(String part, Replacements may) {
        this.part = part;
        this.may = may;
    }

    /**
     * Reads what stands behind a part's name.
     *
     * @param compact whether it stood behind an equals sign
     * @return empty where this is not about a swap
     * @throws SentenceException where it is, and cannot be understood
     */
    static List<Swap> read(Circuit circuit, String part, String text, boolean compact) throws SentenceException {
        Replacements may = Replacements.of(circuit, part).orElse(null);
        String verb = "";
        String rest = text.strip();
        if (!compact) {
            Matcher matcher = VERB.matcher(rest);
            verb = matcher.find() ? matcher.group(1).toLowerCase(Locale.ROOT) : "";
            rest = matcher.reset().replaceFirst("");
            rest = ARTICLE.matcher(rest).replaceFirst("");
        }
        if (may == null || rest.isEmpty()) {
            return List.of();
        }
        SwapWords words = new SwapWords(part, may);
        return may.link() ? words.link(verb, rest) : words.pieces(circuit, rest);
    }

    private List<Swap> link(String verb, String text) throws SentenceException {
        Matcher speed = SPEED.matcher(text);
        Matcher standard = STANDARD.matcher(text);
        boolean fast = speed.find();
        boolean kept = standard.find();
        boolean holds = verb.equals("holds") || verb.equals("has");
        String amps = standard.replaceAll(" ");
        amps = SPEED.matcher(amps).replaceAll(" ");
        amps = LINK_FILLERS.matcher(amps).replaceAll(" ").strip();
        boolean figure = FIGURE.matcher(amps).matches();
        if (!figure || (holds && !fast && !kept)) {
            return List.of();
        }
        speed.reset().find();
        standard.reset().find();
        return List.of(new Swap(
                part,
                new Fitting.Link(
                        quantity(amps, Unit.AMPERE, "5A:slow"),
                        !fast ? null : speed.group(1) != null ? FuseLink.Speed.SLOW : FuseLink.Speed.QUICK,
                        !kept
                                ? null
                                : standard.group(1) != null
                                        ? FuseLink.Standard.IEC_60127
                                        : FuseLink.Standard.UL_248_14)));
    }

    private List<Swap> pieces(Circuit circuit, String text) throws SentenceException {
        List<Swap> swaps = new ArrayList<>();
        String[] pieces = text.split(":|,\\s+", -1);
        for (String written : pieces) {
            String piece = written.strip();
            Optional<String> model = may.model(piece.replace(' ', '-')).or(() -> may.model(piece));
            Mounting mounting = mounting(piece);
            if (model.isPresent()) {
                swaps.add(new Swap(part, new Fitting.Model(model.get())));
            } else if (mounting != null && may.mounted()) {
                swaps.add(new Swap(part, new Fitting.Mounted(mounting)));
            } else {
                return value(circuit, pieces, swaps.isEmpty() ? "" : piece);
            }
        }
        return swaps;
    }

    /** @param stray what stands beside a model and is none, nor a mounting */
    private List<Swap> value(Circuit circuit, String[] pieces, String stray) throws SentenceException {
        String first = pieces[0].strip();
        if (!stray.isEmpty()) {
            throw new SentenceException(
                    stray, "'" + stray + "' is neither a model for " + part + " nor a mounting", may.words());
        }
        Optional<String> kind = Replacements.kindOfModel(first);
        if (kind.isPresent()) {
            String own = Replacements.kindOfPart(circuit, part)
                    .map(k -> ", and " + part + " is a " + k)
                    .orElse("");
            throw new SentenceException(first, first + " is a " + kind.get() + own, may.words());
        }
        Unit unit = may.value();
        Unit rating = may.rating();
        if (unit == null || rating == null || !FIGURE.matcher(first).matches()) {
            return List.of();
        }
        if (pieces.length > 2) {
            throw new SentenceException(
                    pieces[2], part + " takes a value and a rating, and nothing behind them", may.words());
        }
        Quantity value = quantity(first, unit, unit == Unit.FARAD ? "10000uF" : "4k7");
        Quantity rated =
                pieces.length < 2 ? null : quantity(pieces[1].strip(), rating, rating == Unit.VOLT ? "63V" : "5W");
        return List.of(new Swap(part, new Fitting.Value(value, rated)));
    }

    private Quantity quantity(String text, Unit unit, String such) throws SentenceException {
        if (BARE.matcher(text).matches()) {
            throw new SentenceException(
                    text, part + "=" + text.strip() + " lacks its unit: write it behind, as in " + part + "=" + such);
        }
        try {
            Quantity quantity = Notation.parse(text, unit);
            if (!(quantity.si() > 0)) {
                throw new SentenceException(
                        text, part + " cannot be " + text + ": nothing has a value below zero, or none");
            }
            return quantity;
        } catch (NotationException unreadable) {
            throw new SentenceException(text, part + ": " + unreadable.getMessage());
        }
    }

    private static @Nullable Mounting mounting(String text) {
        String plain = text.toLowerCase(Locale.ROOT)
                .replace('-', ' ')
                .replaceAll("\\b(?:is|sits|stands|standing|hangs|mounted|screwed|to|the|of|in|on|a)\\b", " ")
                .replaceAll("\\s+", " ")
                .strip();
        return switch (plain) {
            case "chassis", "plate" -> Mounting.ON_CHASSIS;
            case "clear", "clear plate", "clear chassis" -> Mounting.STANDING_CLEAR;
            case "free air" -> Mounting.FREE_AIR;
            default -> null;
        };
    }

    /** "BR201 is a bridge-35A". */
    static String clause(Swap swap) {
        return swap.part() + " " + says(swap.fitting());
    }

    private static String says(Fitting fitting) {
        if (fitting instanceof Fitting.Model model) {
            return "is " + withArticle(model.name());
        } else if (fitting instanceof Fitting.Mounted mounted) {
            return switch (mounted.mounting()) {
                case ON_CHASSIS -> "sits on the chassis";
                case STANDING_CLEAR -> "stands clear of the plate";
                case FREE_AIR -> "hangs in free air";
            };
        } else if (fitting instanceof Fitting.Value value) {
            Quantity rating = value.rating();
            return "is " + SentencePrinter.said(value.value())
                    + (rating == null ? "" : ", " + SentencePrinter.said(rating));
        } else if (fitting instanceof Fitting.Link link) {
            FuseLink.Speed speed = link.speed();
            FuseLink.Standard standard = link.standard();
            return "is "
                    + withArticle((standard == null ? "" : word(standard) + " ")
                            + Notation.format(link.amps())
                            + (speed == null ? "" : " " + word(speed))
                            + " fuse");
        }
        throw new IllegalStateException("no words for " + fitting);
    }

    /** "a bridge-35A", "an 8 W". */
    static String withArticle(String words) {
        return (words.matches("(?i)(?:[aeio8]|11\\b|18\\b|11 |18 |LED|MOS|SCR).*") ? "an " : "a ") + words;
    }

    /** {@code BR201=bridge-35A}. */
    static String compact(Swap swap) {
        return swap.part() + "=" + behindEquals(swap.fitting());
    }

    private static String behindEquals(Fitting fitting) {
        if (fitting instanceof Fitting.Model model) {
            return model.name();
        } else if (fitting instanceof Fitting.Mounted mounted) {
            return Replacements.compact(mounted.mounting());
        } else if (fitting instanceof Fitting.Value value) {
            Quantity rating = value.rating();
            return typed(value.value()) + (rating == null ? "" : ":" + typed(rating));
        } else if (fitting instanceof Fitting.Link link) {
            FuseLink.Speed speed = link.speed();
            FuseLink.Standard standard = link.standard();
            return typed(link.amps())
                    + (speed == null ? "" : ":" + word(speed))
                    + (standard == null ? "" : ":" + word(standard));
        }
        throw new IllegalStateException("no short form for " + fitting);
    }

    private static String typed(Quantity quantity) {
        return Notation.typed(quantity).replace(" ", "");
    }

    private static String word(FuseLink.Speed speed) {
        return speed == FuseLink.Speed.SLOW ? "slow" : "quick";
    }

    private static String word(FuseLink.Standard standard) {
        return standard == FuseLink.Standard.IEC_60127 ? "IEC" : "UL";
    }
}
