// SPDX-License-Identifier: Apache-2.0
package foldwright.report;

import foldwright.report.draw.SvgSurface;
import foldwright.study.Verdict;
import java.util.regex.Pattern;

/** Writes elements of a page, text escaped. */
final class Html {
    private static final Pattern SUBSCRIPT =
            Pattern.compile("\\b(Wa|Tm|L0|d2|d3|[A-Za-zΑ-ω]_\\{[^}]+\\}|[A-Za-zΑ-ω]_\\w)");

    private final StringBuilder out = new StringBuilder(1 << 16);

    /** Opens an element: "div.card" is a div of class card. */
    Html open(String element) {
        int dot = element.indexOf('.');
        if (dot < 0) {
            out.append('<').append(element).append('>');
        } else {
            out.append('<').append(element, 0, dot).append(" class=\"");
            out.append(element.substring(dot + 1).replace('.', ' ')).append("\">");
        }
        return this;
    }

    Html close(String... elements) {
        for (String e : elements) {
            out.append("</").append(e).append('>');
        }
        out.append('\n');
        return this;
    }

    Html text(String text) {
        out.append(SvgSurface.escape(Sums.bound(text)));
        return this;
    }

    /** An element with text only. */
    Html leaf(String element, String text) {
        open(element).text(text);
        int dot = element.indexOf('.');
        return close(dot < 0 ? element : element.substring(0, dot));
    }

    /** A formula: known symbols and {@code x_y} get their subscripts, {@code x^y} its exponent. */
    Html formula(String text) {
        String safe = SvgSurface.escape(Sums.set(text));
        String lowered =
                SUBSCRIPT
                        .matcher(safe)
                        .replaceAll(
                                m -> {
                                    String s = m.group().replaceAll("[_{}]", "");
                                    return s.charAt(0) + "<sub>" + s.substring(1) + "</sub>";
                                });
        out.append(lowered.replaceAll("\\^(\\w+)", "<sup>$1</sup>"));
        return this;
    }

    /** Markup that is right already. */
    Html raw(String markup) {
        out.append(markup);
        return this;
    }

    /** The mark of a verdict at the size of the text. */
    Html mark(Verdict verdict) {
        return raw(
                "<svg class=\"mark\" viewBox=\"0 0 20 20\" aria-hidden=\"true\"><use href=\"#mark-"
                        + verdict.word()
                        + "\"/></svg>");
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
