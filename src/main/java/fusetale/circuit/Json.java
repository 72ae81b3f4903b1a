package fusetale.circuit;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A JSON object under construction; members keep their order (RFC 8259). */
final class Json {
    private final Map<String, Object> members = new LinkedHashMap<>();

    static Json object() {
        return new Json();
    }

    static Json of(String name, Object value) {
        return new Json().with(name, value);
    }

    /** Adds a member: a text, a number, a truth value, another object or a list of these. Modifies and returns this. */
    Json with(String name, Object value) {
        members.put(name, value);
        return this;
    }

    /** Adds the default of a schema, written as the schema's type asks. Modifies and returns this. */
    Json withDefault(String written) {
        Object type = members.get("type");
        if ("integer".equals(type)) {
            return with("default", Integer.valueOf(written));
        }
        return with("default", "boolean".equals(type) ? Boolean.valueOf(written) : written);
    }

    /** Adds every member of another object. Modifies and returns this. */
    Json withAll(Json other) {
        members.putAll(other.members);
        return this;
    }

    /** A copy that shares no list of members with this. */
    Json copy() {
        Json copy = new Json();
        copy.members.putAll(members);
        return copy;
    }

    /** As text, two spaces an indent, lines ended by a line feed. */
    String text() {
        StringWriter out = new StringWriter();
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentObjectsWith(indenter);
        try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
            json.setPrettyPrinter(printer);
            write(json, this);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out + "\n";
    }

    private static void write(JsonGenerator json, Object value) throws IOException {
        if (value instanceof Json object) {
            json.writeStartObject();
            for (Map.Entry<String, Object> member : object.members.entrySet()) {
                json.writeFieldName(member.getKey());
                write(json, member.getValue());
            }
            json.writeEndObject();
        } else if (value instanceof List<?> list) {
            json.writeStartArray();
            for (Object item : new ArrayList<Object>(list)) {
                write(json, item);
            }
            json.writeEndArray();
        } else if (value instanceof Integer number) {
            json.writeNumber(number);
        } else if (value instanceof BigDecimal number) {
            json.writeNumber(number.toPlainString());
        } else if (value instanceof Boolean truth) {
            json.writeBoolean(truth);
        } else {
            json.writeString(value.toString());
        }
    }
}
