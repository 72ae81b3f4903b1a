package fusetale.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import fusetale.circuit.Circuit;
import fusetale.fault.AmountRange;
import fusetale.fault.FaultForm;
import fusetale.report.Mode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How parts can fail, as JSON. The keys are documented in the README and stay; new ones come behind the old ones of their
 * object. Amounts are SI.
 */
final class ModesJson {
    private ModesJson() {}

    /** One object: the circuit's name, and its parts with their failures. */
    static String text(Circuit circuit, List<Mode> modes) {
        Map<String, List<Mode>> parts = new LinkedHashMap<>();
        modes.forEach(m ->
                parts.computeIfAbsent(m.form().part(), k -> new ArrayList<>()).add(m));
        return JsonText.object(json -> {
            json.writeStringField("circuit", circuit.name());
            json.writeArrayFieldStart("parts");
            for (Map.Entry<String, List<Mode>> part : parts.entrySet()) {
                json.writeStartObject();
                json.writeStringField("part", part.getKey());
                json.writeStringField(
                        "kind", part.getValue().get(0).form().telling().kind());
                json.writeArrayFieldStart("modes");
                for (Mode mode : part.getValue()) {
                    mode(json, mode);
                }
                json.writeEndArray();
                json.writeEndObject();
            }
            json.writeEndArray();
        });
    }

    private static void mode(JsonGenerator json, Mode mode) throws IOException {
        FaultForm form = mode.form();
        json.writeStartObject();
        json.writeStringField("type", mode.typed());
        json.writeStringField("sentence", mode.sentence());
        json.writeStringField("failure", form.mode().compact());
        json.writeStringField("place", form.place());
        json.writeStringField("detail", form.telling().detail());
        AmountRange range = form.amount();
        if (range == null) {
            json.writeNullField("amount");
        } else {
            json.writeObjectFieldStart("amount");
            json.writeStringField("unit", range.unit().symbol());
            JsonText.number(json, "usual", range.usualSi());
            JsonText.number(json, "low", range.lowSi());
            JsonText.number(json, "high", range.highSi());
            json.writeEndObject();
        }
        JsonText.number(json, "share", mode.shareRatio());
        json.writeStringField("likely", mode.likely());
        JsonText.number(json, "prior", form.priorRatio());
        json.writeStringField("source", form.prior().source());
        json.writeStringField("happened", form.telling().happened());
        json.writeStringField("confirm", form.telling().confirmation());
        json.writeEndObject();
    }
}
