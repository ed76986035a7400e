// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import foldwright.study.Amount;
import foldwright.study.Assessment;
import foldwright.study.Assumption;
import foldwright.study.Caution;
import foldwright.study.Check;
import foldwright.study.Fact;
import foldwright.study.HandCard;
import foldwright.study.Outcome;
import foldwright.study.Remedy;
import foldwright.study.Share;
import foldwright.study.Split;
import foldwright.study.order.OrderList;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** Checks as JSON. Numbers are SI; what is no number is null. */
final class CheckJson {
    private CheckJson() {}

    /** A number, or null where it is none or has no end. */
    static void number(JsonGenerator out, String name, double value) throws IOException {
        if (Double.isFinite(value)) {
            out.writeNumberField(name, value);
        } else {
            out.writeNullField(name);
        }
    }

    static void assessment(JsonGenerator out, Assessment a) throws IOException {
        out.writeStartObject();
        out.writeStringField("machine", a.machine().name());
        out.writeStringField("units", "SI");
        out.writeStringField("verdict", a.verdict().word());
        out.writeArrayFieldStart("questions");
        for (var answer : a.answers()) {
            out.writeStartObject();
            out.writeStringField("question", answer.question().words());
            out.writeStringField("verdict", answer.verdict().word());
            out.writeArrayFieldStart("checks");
            for (Check c : answer.checks()) {
                check(out, c);
            }
            out.writeEndArray();
            out.writeEndObject();
        }
        out.writeEndArray();
        out.writeArrayFieldStart("cautions");
        for (Caution c : a.cautions()) {
            out.writeStartObject();
            out.writeStringField("title", c.title());
            out.writeStringField("words", c.words());
            out.writeStringField("source", c.source());
            out.writeEndObject();
        }
        out.writeEndArray();
        out.writeArrayFieldStart("facts");
        for (Fact f : a.facts()) {
            out.writeStartObject();
            out.writeStringField("words", f.words());
            out.writeStringField("value", f.value());
            out.writeStringField("how", f.how());
            out.writeEndObject();
        }
        out.writeEndArray();
        OrderJson.write(out, OrderList.of(a));
        trust(out, a.trust());
        out.writeEndObject();
    }

    static void trust(JsonGenerator out, List<Assessment.Trust> trust) throws IOException {
        out.writeArrayFieldStart("trust");
        for (Assessment.Trust t : trust) {
            out.writeStartObject();
            out.writeStringField("run", t.run());
            out.writeStringField("words", t.words());
            out.writeBooleanField("met", t.met());
            out.writeEndObject();
        }
        out.writeEndArray();
    }

    static void check(JsonGenerator out, Check c) throws IOException {
        out.writeStartObject();
        out.writeStringField("id", c.id());
        out.writeStringField("title", c.title());
        out.writeStringField("finding", c.finding());
        outcome(out, c.outcome());
        if (c.grounds().split().isPresent()) {
            split(out, c.grounds().split().get());
        }
        out.writeArrayFieldStart("remedies");
        for (Remedy r : c.remedies()) {
            out.writeStartObject();
            out.writeStringField("change", r.words());
            outcome(out, r.outcome());
            out.writeEndObject();
        }
        out.writeEndArray();
        grounds(out, c);
        out.writeEndObject();
    }

    /** What makes the load: the shares add up to {@code sharesTotal}. */
    private static void split(JsonGenerator out, Split split) throws IOException {
        out.writeStringField("sharesOf", split.words());
        number(out, "sharesTotal", split.whole().si());
        out.writeArrayFieldStart("shares");
        for (Share s : split.shares()) {
            out.writeStartObject();
            out.writeStringField("cause", s.cause().name().toLowerCase(Locale.ROOT));
            out.writeStringField("name", s.name());
            number(out, "value", s.amount().si());
            out.writeEndObject();
        }
        out.writeEndArray();
    }

    static void outcome(JsonGenerator out, Outcome o) throws IOException {
        out.writeStringField("verdict", o.verdict().word());
        amount(out, "required", o.required());
        amount(out, "available", o.available());
        number(out, "margin", o.margin());
        number(out, "holdsFrom", o.holdsFrom());
        number(out, "worstHeight", o.worst().height().orElse(Double.NaN));
        out.writeStringField("worst", o.worst().text());
    }

    private static void amount(JsonGenerator out, String name, Amount a) throws IOException {
        number(out, name, a.si());
        out.writeStringField(name + "Shown", a.text());
    }

    private static void grounds(JsonGenerator out, Check c) throws IOException {
        out.writeArrayFieldStart("byHand");
        for (HandCard.Step s : c.grounds().byHand().steps()) {
            out.writeStartObject();
            out.writeStringField("words", s.words());
            out.writeStringField("formula", s.formula());
            out.writeStringField("numbers", s.numbers());
            out.writeEndObject();
        }
        out.writeEndArray();
        out.writeStringField("source", c.grounds().byHand().source());
        out.writeArrayFieldStart("assumed");
        for (Assumption a : c.grounds().assumptions()) {
            out.writeStartObject();
            out.writeStringField("key", a.keyPath());
            out.writeStringField("value", a.value());
            out.writeStringField("measure", a.measure());
            out.writeEndObject();
        }
        out.writeEndArray();
    }
}
