// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.keys.Range;
import foldwright.machine.linkage.ArmAngle;
import foldwright.machine.linkage.Opening;
import foldwright.machine.linkage.PinHeight;
import foldwright.machine.part.Teeth;
import foldwright.quantity.Dimension;

/** Schemas of records that a file writes as one text or as a list of lengths. */
final class ShortForms {
    private ShortForms() {}

    static ObjectNode of(Class<?> type, ObjectMapper mapper) {
        ObjectNode schema = mapper.createObjectNode();
        schema.put("description", type.getAnnotation(Kind.class).value());
        if (type == Teeth.class) {
            return schema.put("type", "string").put("pattern", "^ *[0-9]{1,3} *: *[0-9]{1,3} *$");
        } else if (type == Opening.class) {
            ArrayNode forms = schema.put("type", "string").putArray("anyOf");
            Range angle = Keys.of(ArmAngle.class).get(0).range();
            Range height = Keys.of(PinHeight.class).get(0).range();
            forms.addObject().put("pattern", QuantityPattern.of(Dimension.ANGLE, angle));
            forms.addObject().put("pattern", QuantityPattern.of(Dimension.LENGTH, height));
            return schema;
        }
        int size = Keys.of(type).size();
        schema.put("type", "array").put("minItems", size).put("maxItems", size);
        Range range = Keys.of(type).get(0).range();
        schema.putObject("items")
                .put("type", "string")
                .put("pattern", QuantityPattern.of(Dimension.LENGTH, range));
        return schema;
    }
}
