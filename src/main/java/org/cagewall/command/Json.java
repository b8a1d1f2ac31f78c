package org.cagewall.command;

import java.util.List;
import java.util.Optional;
import org.cagewall.almanac.Window;
import org.cagewall.text.Message;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * An object of an answer in JSON: every field that is put is there, and null where nothing is known. Built and written
 * by one thread.
 */
final class Json {

    private static final JsonNodeFactory NODES = JsonMapper.shared().getNodeFactory();

    private final ObjectNode object = NODES.objectNode();

    static Json object() {
        return new Json();
    }

    /** A text, number, truth, date, constant, object, list of these, or one of them that may be missing. */
    Json with(String field, Object value) {
        object.set(field, node(value));
        return this;
    }

    /** Between which days something is expected. */
    static Json of(Window window) {
        return object().with("earliest", window.earliest())
                .with("expected", window.expected())
                .with("latest", window.latest())
                .with("about", window.about());
    }

    /** What came of it, as one line. */
    String line() {
        return object.toString();
    }

    /** Several as an array, as one line. */
    static String line(List<Json> several) {
        return node(several).toString();
    }

    private static JsonNode node(Object value) {
        if (value instanceof Optional<?> maybe) {
            return maybe.map(Json::node).orElse(NODES.nullNode());
        }
        if (value instanceof Json part) {
            return part.object;
        }
        if (value instanceof List<?> several) {
            ArrayNode array = NODES.arrayNode();
            several.forEach(each -> array.add(node(each)));
            return array;
        }
        if (value instanceof Boolean truth) {
            return NODES.booleanNode(truth);
        }
        if (value instanceof Integer whole) {
            return NODES.numberNode(whole);
        }
        if (value instanceof Long whole) {
            return NODES.numberNode(whole);
        }
        if (value instanceof Double number) {
            return NODES.numberNode(number);
        }
        return NODES.stringNode(value instanceof Enum<?> constant ? Message.word(constant) : value.toString());
    }
}
