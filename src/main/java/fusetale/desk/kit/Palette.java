package fusetale.desk.kit;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The colours of the window, by name. Each difference is also one of shape or weight, never of colour alone. Style sheets use
 * them as looked-up colours ({@code -fusetale-ink}), so that a change of palette repaints everything.
 *
 * @param dark whether it is the one for a dim cellar
 * @param ink text, lines of a healthy machine
 * @param softInk text that may stand back
 * @param markerLine lines of what is supposed
 * @param pencil what was read
 * @param rule axes and frames, never text
 * @param focus ring around what has the keyboard
 * @param desk ground of the window
 * @param paper ground of drawing and charts
 * @param tag ground of a tag, a field, a card
 * @param markerFill highlighter under ink; too pale against paper to be a sign by itself
 * @param healthyRange what healthy machines may show, on paper or desk
 * @param dangerGround ground of a danger line
 * @param dangerText text on it
 * @param hatch dark stripe of a hatch
 * @param hatchGround light stripe of a hatch
 */
public record Palette(
        boolean dark,
        String ink,
        String softInk,
        String markerLine,
        String pencil,
        String rule,
        String focus,
        String desk,
        String paper,
        String tag,
        String markerFill,
        String healthyRange,
        String dangerGround,
        String dangerText,
        String hatch,
        String hatchGround) {
    /** For daylight. */
    public static final Palette LIGHT = new Palette(
            false, "#22303C", "#4C5761", "#9A3B06", "#1B5A9E", "#7D7663", "#0B4FB3", "#EBE4D6", "#FCF9F0", "#FFFDF6",
            "#FFD45C", "#D9D0BC", "#1D1D1B", "#FFF7DE", "#1D1D1B", "#FFD45C");

    /** For a dim cellar, the lamp off. */
    public static final Palette DARK = new Palette(
            true, "#F1E9DA", "#CFC5B2", "#FFB45C", "#8CC4FF", "#8B8270", "#9CC9FF", "#15130F", "#211E18", "#2C2820",
            "#6B4E00", "#3A3529", "#FFD45C", "#1D1D1B", "#1D1D1B", "#FFD45C");

    /** Every colour under the name that style sheets look it up by. */
    public Map<String, String> colours() {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("-fusetale-ink", ink);
        all.put("-fusetale-soft-ink", softInk);
        all.put("-fusetale-marker-line", markerLine);
        all.put("-fusetale-pencil", pencil);
        all.put("-fusetale-rule", rule);
        all.put("-fusetale-focus", focus);
        all.put("-fusetale-desk", desk);
        all.put("-fusetale-paper", paper);
        all.put("-fusetale-tag", tag);
        all.put("-fusetale-marker-fill", markerFill);
        all.put("-fusetale-healthy-range", healthyRange);
        all.put("-fusetale-danger-ground", dangerGround);
        all.put("-fusetale-danger-text", dangerText);
        all.put("-fusetale-hatch", hatch);
        all.put("-fusetale-hatch-ground", hatchGround);
        return all;
    }

    /** The style of a window's root: every colour, in the form of an inline style. */
    public String style() {
        return colours().entrySet().stream()
                .map(c -> c.getKey() + ": " + c.getValue() + ";")
                .collect(Collectors.joining(" "));
    }
}
