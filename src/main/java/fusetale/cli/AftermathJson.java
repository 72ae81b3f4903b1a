package fusetale.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import fusetale.aftermath.Aftermath;
import fusetale.aftermath.Event;
import fusetale.aftermath.Story;
import fusetale.fault.Fault;
import fusetale.sentence.SentencePrinter;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** An aftermath as JSON; its keys are documented in the README. */
final class AftermathJson {
    private AftermathJson() {}

    static void write(JsonGenerator json, Aftermath aftermath) throws IOException {
        json.writeObjectFieldStart("aftermath");
        Aftermath.Settings settings = aftermath.settings();
        json.writeNumberField("machines", settings.machines());
        json.writeNumberField("seed", settings.seed());
        JsonText.number(json, "seconds", settings.horizonSeconds());
        json.writeArrayFieldStart("air");
        JsonText.number(json, settings.leastAirCelsius());
        JsonText.number(json, settings.mostAirCelsius());
        json.writeEndArray();
        events(json, "events", aftermath.events());
        json.writeArrayFieldStart("stories");
        for (Story story : aftermath.stories()) {
            json.writeStartObject();
            json.writeNumberField("machines", story.count());
            events(json, "steps", story.steps());
            json.writeStringField(
                    "end", story.end().name().toLowerCase(Locale.ROOT).replace('_', ' '));
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void events(JsonGenerator json, String key, List<Event> events) throws IOException {
        json.writeArrayFieldStart(key);
        for (Event event : events) {
            json.writeStartObject();
            json.writeStringField("part", event.part());
            json.writeStringField("place", event.place());
            json.writeStringField("what", event.harm().words());
            json.writeStringField("gravity", event.harm().gravity().name().toLowerCase(Locale.ROOT));
            Fault then = event.consequence();
            if (then == null) {
                json.writeNullField("then");
            } else {
                json.writeStringField("then", SentencePrinter.compact(then));
            }
            json.writeArrayFieldStart("seconds");
            JsonText.number(json, event.leastSeconds());
            JsonText.number(json, event.mostSeconds());
            json.writeEndArray();
            JsonText.number(json, "middle", event.middleSeconds());
            json.writeNumberField("machines", event.count());
            json.writeStringField("source", event.source());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
