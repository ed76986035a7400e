// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import foldwright.study.order.OrderLine;
import foldwright.study.order.OrderList;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** The list of parts as JSON. */
final class OrderJson {
    private OrderJson() {}

    static void write(JsonGenerator out, OrderList list) throws IOException {
        out.writeObjectFieldStart("order");
        out.writeArrayFieldStart("lines");
        for (OrderLine line : list.lines()) {
            out.writeStartObject();
            out.writeStringField("group", line.group().name().toLowerCase(Locale.ROOT));
            out.writeNumberField("count", line.count());
            out.writeStringField("part", line.part());
            out.writeStringField("size", line.size());
            if (line.use().isPresent()) {
                out.writeObjectFieldStart("use");
                out.writeStringField("check", line.use().get().check());
                CheckJson.outcome(out, line.use().get().outcome());
                out.writeEndObject();
            }
            words(out, "open", line.open());
            out.writeEndObject();
        }
        out.writeEndArray();
        words(out, "unlisted", list.unlisted());
        out.writeEndObject();
    }

    private static void words(JsonGenerator out, String name, List<String> words)
            throws IOException {
        out.writeArrayFieldStart(name);
        for (String w : words) {
            out.writeString(w);
        }
        out.writeEndArray();
    }
}
