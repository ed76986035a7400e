// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import foldwright.machine.Machine;
import foldwright.machine.keys.KeyOf;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.keys.NameTable;
import foldwright.machine.keys.Range;
import foldwright.quantity.Dimension;
import foldwright.quantity.Quantity;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The JSON Schema (draft 2020-12) of machine files, made from the same keys the reader uses.
 *
 * <p>It knows keys, kinds, words, types, units and signs. What it cannot say is left to the reader:
 * upper limits of numbers with units, doubled keys, and values that contradict each other.
 */
public final class MachineSchema {
    private static final String DEFINITIONS = "#/$defs/";

    private final ObjectMapper mapper = new ObjectMapper();
    private final ObjectNode definitions = mapper.createObjectNode();

    private MachineSchema() {}

    /** The schema as a text. */
    public static String text() {
        return new MachineSchema().write();
    }

    private String write() {
        ObjectNode root = mapper.createObjectNode();
        root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        root.put("title", "Foldwright machine file");
        ObjectNode machine = record(Machine.class, Optional.empty());
        root.setAll(machine);
        root.set("$defs", definitions);
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentObjectsWith(new DefaultIndenter("  ", "\n"));
        try {
            return mapper.writer(printer).writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    private ObjectNode value(KeyOf key) {
        ObjectNode schema = key.isList() ? list(key) : single(key.type(), key, key.range());
        schema.put("description", key.about());
        if (!key.orElse().isEmpty()) {
            schema.set("default", json(key, key.orElse()));
        }
        if (!key.example().isEmpty() && !key.isList()) {
            schema.putArray("examples").add(json(key, key.example()));
        }
        return schema;
    }

    /** A default or example as it stands in a file. */
    private JsonNode json(KeyOf key, String text) {
        boolean bare = key.type() == int.class || key.dimension() == Dimension.RATIO;
        boolean number = bare && text.matches("-?[0-9.]+");
        try {
            boolean raw = number || text.startsWith("{") || text.startsWith("[");
            return raw ? mapper.readTree(text) : mapper.getNodeFactory().textNode(text);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(key.name() + ": " + text, e);
        }
    }

    private ObjectNode list(KeyOf key) {
        ObjectNode schema = mapper.createObjectNode();
        schema.put("type", "array");
        if (!key.range().equals(Range.ALL)) {
            schema.put("minItems", (int) key.range().low());
            schema.put("maxItems", (int) key.range().high());
        }
        schema.set("items", single(key.type(), key, key.each()));
        return schema;
    }

    private ObjectNode single(Class<?> type, KeyOf key, Range range) {
        if (type == double.class || type == Double.class) {
            return number(key.dimension(), range);
        } else if (type == int.class) {
            ObjectNode schema = mapper.createObjectNode().put("type", "integer");
            schema.put("minimum", (int) range.low());
            return schema.put("maximum", (int) range.high());
        } else if (type == String.class) {
            return text(key);
        } else if (type.isEnum()) {
            ObjectNode schema = mapper.createObjectNode();
            ArrayNode words = schema.putArray("enum");
            for (Object constant : type.getEnumConstants()) {
                words.add(Keys.word((Enum<?>) constant));
            }
            return schema;
        }
        return reference(type);
    }

    private ObjectNode text(KeyOf key) {
        ObjectNode schema = mapper.createObjectNode().put("type", "string");
        if (key.names() == NameTable.NONE) {
            return schema.put("pattern", "\\S").put("maxLength", 2000);
        }
        NameTables.names(key.names()).all().forEach(schema.putArray("examples")::add);
        return schema;
    }

    private ObjectNode number(Dimension dimension, Range range) {
        String quantity = QuantityPattern.of(dimension, range);
        if (dimension != Dimension.RATIO) {
            return textForm(quantity);
        }
        ObjectNode schema = mapper.createObjectNode();
        ArrayNode forms = schema.putArray("anyOf");
        ObjectNode bare = forms.addObject().put("type", "number");
        if (!range.equals(Range.ALL)) {
            bare.put(range.lowIn() ? "minimum" : "exclusiveMinimum", range.low());
            bare.put(range.highIn() ? "maximum" : "exclusiveMaximum", range.high());
        }
        forms.add(textForm(quantity));
        return schema;
    }

    private ObjectNode textForm(String pattern) {
        ObjectNode schema = mapper.createObjectNode().put("type", "string");
        return schema.put("maxLength", Quantity.LONGEST).put("pattern", pattern);
    }

    private ObjectNode reference(Class<?> type) {
        String name = type.getSimpleName();
        if (!definitions.has(name)) {
            definitions.set(name, mapper.createObjectNode()); // stops recursion
            definitions.set(name, definition(type));
        }
        return mapper.createObjectNode().put("$ref", DEFINITIONS + name);
    }

    private ObjectNode definition(Class<?> type) {
        if (TextForms.isShort(type)) {
            return ShortForms.of(type, mapper);
        } else if (type.isSealed()) {
            return sealed(type);
        }
        ObjectNode record = record(type, Optional.empty());
        if (!TextForms.isNamed(type)) {
            return record;
        }
        ObjectNode schema = mapper.createObjectNode();
        ArrayNode forms = schema.putArray("anyOf");
        boolean material = type.getSimpleName().equals("Material");
        NameTables.Names names = material ? NameTables.materials() : NameTables.threads();
        names.all().forEach(forms.addObject().putArray("enum")::add);
        forms.add(record);
        return schema;
    }

    /** Chooses by the kind: if it is this word, then this record. */
    private ObjectNode sealed(Class<?> type) {
        Kind about = type.getAnnotation(Kind.class);
        ObjectNode schema = mapper.createObjectNode().put("type", "object");
        schema.put("description", about.value());
        Map<String, Class<?>> kinds = Binder.kinds(type);
        ObjectNode choosing = schema.putObject("properties").putObject(about.key());
        kinds.keySet().forEach(choosing.putArray("enum")::add);
        if (about.orElse().isEmpty()) {
            schema.putArray("required").add(about.key());
        }
        ArrayNode all = schema.putArray("allOf");
        kinds.forEach(
                (word, kind) -> {
                    ObjectNode branch = all.addObject();
                    ObjectNode condition = branch.putObject("if");
                    condition.putObject("properties").putObject(about.key()).put("const", word);
                    if (!about.orElse().equals(word)) {
                        condition.putArray("required").add(about.key());
                    }
                    branch.set("then", record(kind, Optional.of(about.key())));
                });
        return schema;
    }

    private ObjectNode record(Class<?> type, Optional<String> choosing) {
        Kind about = type.getAnnotation(Kind.class);
        ObjectNode schema = mapper.createObjectNode().put("type", "object");
        schema.put("description", about.value());
        ObjectNode properties = schema.putObject("properties");
        choosing.ifPresent(properties::putObject);
        if (!about.ignored().isEmpty()) {
            properties.putObject(about.ignored()).put("type", "string");
        }
        List<KeyOf> keys = Keys.of(type);
        keys.forEach(key -> properties.set(key.name(), value(key)));
        List<String> required =
                keys.stream().filter(key -> !key.mayBeAbsent()).map(KeyOf::name).toList();
        if (!required.isEmpty()) {
            required.forEach(schema.putArray("required")::add);
        }
        return schema.put("additionalProperties", false);
    }
}
