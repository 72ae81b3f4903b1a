package fusetale.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;

/** Writes JSON (RFC 8259) into a text, keys in the order written. */
final class JsonText {
    private JsonText() {}

    /** What to write. */
    @FunctionalInterface
    interface Body {
        void write(JsonGenerator json) throws IOException;
    }

    /** One object, indented, with a line end behind it. */
    static String object(Body body) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.setPrettyPrinter(new DefaultPrettyPrinter());
            json.writeStartObject();
            body.write(json);
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text + "\n";
    }

    /** A number, or null where JSON has no such number: infinite stands for OL and for ever. */
    static void number(JsonGenerator json, String key, double value) throws IOException {
        json.writeFieldName(key);
        number(json, value);
    }

    /** The same without a key. */
    static void number(JsonGenerator json, double value) throws IOException {
        if (Double.isFinite(value)) {
            json.writeNumber(value);
        } else {
            json.writeNull();
        }
    }
}
