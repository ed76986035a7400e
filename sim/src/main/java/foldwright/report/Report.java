// SPDX-License-Identifier: Apache-2.0
package foldwright.report;

import foldwright.report.draw.Marks;
import foldwright.report.draw.Palette;
import foldwright.report.draw.SvgSurface;
import foldwright.report.draw.Theme;
import foldwright.study.Answer;
import foldwright.study.Assessment;
import foldwright.study.Question;
import foldwright.study.Verdict;
import foldwright.study.order.OrderList;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;

/**
 * The whole report as one HTML page that needs nothing else: no script, no network, no fonts of the
 * reader's. It reads on a phone, a screen and A4 paper.
 */
public final class Report {
    private static final String STYLE = "/foldwright/report/report.css";

    private Report() {}

    /**
     * Writes the page.
     *
     * @param assessment what was found out
     * @param date printed in the head
     */
    public static String html(Assessment assessment, LocalDate date) {
        Palette palette = Palette.of(Theme.PRINT);
        Html body = new Html();
        body.raw(definitions(palette));
        new FrontPage(body, palette, assessment).write(date);
        for (Answer answer : assessment.answers()) {
            QuestionPage page =
                    new QuestionPage(body, palette, answer, assessment.headline().speaker());
            if (answer.question() == Question.ORDER) {
                page.write(new PartsTable(body, OrderList.of(assessment))::write);
            } else if (!answer.checks().isEmpty()) {
                page.write();
            }
        }
        new BackPage(body, assessment).write();
        String text = body.toString();
        String title = assessment.machine().name() + ": " + FrontPage.finding(assessment);
        String plain = text.replaceAll("<[^>]*>", " ") + title;
        return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
                + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
                + "<title>"
                + SvgSurface.escape(title)
                + "</title>\n<style>\n"
                + "/* Faces: Source Serif 4 and Source Sans 3, SIL Open Font License 1.1, cut to the"
                + " signs used here. */\n"
                + EmbeddedFonts.rules(entities(plain))
                + style(palette)
                + "</style>\n</head>\n<body>\n<main>\n"
                + text
                + "</main>\n</body>\n</html>\n";
    }

    private static String entities(String markup) {
        return markup.replace("&amp;", "&")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&quot;", "\"");
    }

    private static String style(Palette palette) {
        try (InputStream in = Report.class.getResourceAsStream(STYLE)) {
            String css = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return Colours.fill(css, palette);
        } catch (IOException e) {
            throw new UncheckedIOException(STYLE, e);
        }
    }

    /** Textures and marks, held once and used by all drawings of the page. */
    private static String definitions(Palette palette) {
        StringBuilder out = new StringBuilder("<svg class=\"defs\" aria-hidden=\"true\"><defs>\n");
        out.append(SvgSurface.textures(palette));
        for (Verdict v : Verdict.values()) {
            SvgSurface mark = new SvgSurface(palette, 20, 20, "m");
            Marks.draw(mark, v, 10, 10, 15);
            out.append("<g id=\"mark-").append(v.word()).append("\">");
            out.append(mark.body()).append("</g>\n");
        }
        return out.append("</defs></svg>\n").toString();
    }
}
