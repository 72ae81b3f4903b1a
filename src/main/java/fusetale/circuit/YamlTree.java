package fusetale.circuit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.common.Anchor;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.events.SequenceStartEvent;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlVersionException;

/**
 * One YAML 1.2 document as a tree of located values. Built from the parser's events, so that depth and the size that aliases
 * unfold to are bounded before anything large exists.
 */
final class YamlTree {
    /** A circuit needs about eight levels. */
    static final int DEEPEST = 40;
    /** Values a file may unfold to. */
    static final int MOST_VALUES = 400_000;

    private final String file;
    private final Findings findings;
    private final Iterator<Event> events;
    private final Map<Anchor, Weighed> anchors = new HashMap<>();

    private YamlTree(String file, Findings findings, Iterator<Event> events) {
        this.file = file;
        this.findings = findings;
        this.events = events;
    }

    /** A tree and how many values it unfolds to. */
    private record Weighed(Located item, int weight) {}

    /** Stops the reading at a place. */
    private static final class Stop extends Exception {
        private static final long serialVersionUID = 1L;
        private final transient Place place;

        Stop(Place place, String message) {
            super(message);
            this.place = place;
        }

        Place place() {
            return place;
        }
    }

    /** The document as a tree, or null where a problem was reported. */
    static @Nullable Located parse(String text, String file, Findings findings) {
        LoadSettings settings = LoadSettings.builder()
                .setLabel(file)
                .setCodePointLimit(SourceText.MOST_BYTES)
                .build();
        try {
            YamlTree tree = new YamlTree(
                    file, findings, new Parse(settings).parseString(text).iterator());
            return tree.document();
        } catch (Stop stop) {
            findings.error(stop.place(), "", String.valueOf(stop.getMessage()));
        } catch (ReaderException e) {
            int line = 1
                    + (int) text.codePoints()
                            .limit(Math.max(0, e.getPosition()))
                            .filter(c -> c == '\n')
                            .count();
            String code = String.format("U+%04X", e.getCodePoint());
            findings.error(
                    Place.of(file, line), "", "an invisible character (" + code + ") stands on this line; remove it");
        } catch (MarkedYamlEngineException e) {
            findings.error(Place.of(file, YamlComplaint.line(e)), "", YamlComplaint.inWords(e));
        } catch (YamlVersionException e) {
            findings.error(Place.of(file, 1), "", "this line asks for another YAML than 1.2; leave the line out");
        } catch (YamlEngineException e) {
            findings.error(Place.of(file, 0), "", "this is not readable as YAML: " + e.getMessage());
        }
        return null;
    }

    private @Nullable Located document() throws Stop {
        Located root = null;
        while (events.hasNext()) {
            Event event = events.next();
            if (event instanceof NodeEvent node) {
                if (root != null) {
                    throw new Stop(place(event), "a second document begins here (---); a file holds one");
                }
                root = node(node, 0).item();
            }
        }
        return root;
    }

    private Place place(Event event) {
        return Place.of(file, event.getStartMark().map(m -> m.getLine() + 1).orElse(0));
    }

    private Weighed node(NodeEvent event, int depth) throws Stop {
        Place place = place(event);
        if (depth > DEEPEST) {
            throw new Stop(place, "values are nested more than " + DEEPEST + " deep here");
        }
        if (event instanceof AliasEvent alias) {
            Weighed meant = anchors.get(alias.getAlias());
            if (meant == null) {
                throw new Stop(
                        place, "*" + alias.getAlias() + " points to no finished &" + alias.getAlias() + " above it");
            }
            return meant;
        }
        Weighed read;
        if (event instanceof ScalarEvent scalar) {
            scalar.getTag().ifPresent(tag -> refuseTag(tag, place));
            read = new Weighed(Located.Text.of(scalar.getValue(), place), 1);
        } else if (event instanceof SequenceStartEvent row) {
            row.getTag().ifPresent(tag -> refuseTag(tag, place));
            read = row(place, depth);
        } else if (event instanceof MappingStartEvent table) {
            table.getTag().ifPresent(tag -> refuseTag(tag, place));
            read = table(place, depth);
        } else {
            throw new Stop(place, "this is not readable as YAML");
        }
        event.getAnchor().ifPresent(anchor -> anchors.put(anchor, read));
        return read;
    }

    private void refuseTag(String tag, Place place) {
        String written = tag.startsWith("tag:yaml.org,2002:") ? "!!" + tag.substring(18) : tag;
        findings.error(place, "", "the tag '" + written + "' stands here; leave it out");
    }

    private Weighed row(Place place, int depth) throws Stop {
        List<Located> items = new ArrayList<>();
        int weight = 1;
        for (NodeEvent next = nextNode(); next != null; next = nextNode()) {
            Weighed item = node(next, depth + 1);
            items.add(item.item());
            weight = sum(weight, item, place);
        }
        return new Weighed(new Located.Row(items, place), weight);
    }

    private Weighed table(Place place, int depth) throws Stop {
        Map<String, Located.Entry> entries = new LinkedHashMap<>();
        int weight = 1;
        for (NodeEvent next = nextNode(); next != null; next = nextNode()) {
            Weighed key = node(next, depth + 1);
            NodeEvent valueEvent = nextNode();
            if (valueEvent == null) {
                throw new Stop(place(next), "a key without a value stands here");
            }
            Weighed value = node(valueEvent, depth + 1);
            weight = sum(weight, value, place);
            if (!(key.item() instanceof Located.Text text)) {
                findings.error(key.item().place(), "", key.item().what() + " stands where a key belongs");
                continue;
            }
            Located.Entry earlier = entries.putIfAbsent(text.text(), new Located.Entry(text, value.item()));
            if (earlier != null) {
                findings.error(
                        text.place(),
                        text.shown(),
                        "this key stands here a second time; it is already on line "
                                + earlier.key().place().line());
            }
        }
        return new Weighed(new Located.Table(List.copyOf(entries.values()), place), weight);
    }

    private static int sum(int weight, Weighed item, Place place) throws Stop {
        int sum = weight + item.weight();
        if (sum > MOST_VALUES) {
            throw new Stop(
                    place,
                    "the values from here on unfold to more than " + MOST_VALUES + "; use fewer aliases (*name)");
        }
        return sum;
    }

    private @Nullable NodeEvent nextNode() {
        return events.next() instanceof NodeEvent node ? node : null;
    }
}
