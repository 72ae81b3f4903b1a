package fusetale.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import fusetale.explore.Outcome;
import fusetale.report.BenchSheet;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** A bench sheet as JSON: where it was written, and its lines as printed. Keys are documented in the README and stay. */
final class SheetJson {
    private SheetJson() {}

    static String text(BenchSheet sheet, Outcome on, List<Path> written) {
        return JsonText.object(json -> {
            json.writeStringField("circuit", on.question().healthy().name());
            json.writeArrayFieldStart("files");
            for (Path file : written) {
                json.writeString(file.toString());
            }
            json.writeEndArray();
            json.writeNumberField("pages", sheet.count());
            json.writeBooleanField("doNotPowerUp", on.doNotPowerUp());
            rows(json, "powerOff", sheet.cells(false));
            rows(json, "powerOn", sheet.cells(true));
        });
    }

    private static void rows(JsonGenerator json, String key, List<List<String>> rows) throws IOException {
        json.writeArrayFieldStart(key);
        for (List<String> row : rows) {
            json.writeStartObject();
            json.writeStringField("where", row.get(0));
            json.writeStringField("function", row.get(1));
            json.writeStringField("healthy", row.get(2));
            json.writeStringField("shows", row.get(3));
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
