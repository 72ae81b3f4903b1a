package fusetale.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import fusetale.explore.SwapChange;
import fusetale.explore.SwapChanges;
import java.io.IOException;
import org.jspecify.annotations.Nullable;

/** What swaps change, as JSON: {@code swaps}, a list of figures, and {@code swapNotes}, what they rest on. */
final class SwapsJson {
    private SwapsJson() {}

    /** Behind the keys that every outcome has. */
    static void write(JsonGenerator json, SwapChanges changes) throws IOException {
        json.writeArrayFieldStart("swaps");
        for (SwapChange row : changes.rows()) {
            json.writeStartObject();
            json.writeStringField("part", row.part());
            json.writeStringField("what", row.figure().words());
            json.writeStringField("unit", row.figure().symbol());
            band(json, "asBuilt", row.asBuilt());
            band(json, "asSupposed", row.asSupposed());
            JsonText.number(json, "rating", row.rating());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("swapNotes");
        for (String assumption : changes.assumptions()) {
            json.writeString(assumption);
        }
        json.writeEndArray();
    }

    private static void band(JsonGenerator json, String key, SwapChange.@Nullable Band band) throws IOException {
        if (band == null) {
            json.writeNullField(key);
            return;
        }
        json.writeArrayFieldStart(key);
        JsonText.number(json, band.low());
        JsonText.number(json, band.high());
        json.writeEndArray();
    }
}
