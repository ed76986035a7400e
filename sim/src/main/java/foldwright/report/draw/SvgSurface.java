// SPDX-License-Identifier: Apache-2.0
package foldwright.report.draw;

import foldwright.study.Verdict;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * A surface that writes SVG 1.1. Textures are patterns, so nothing depends on the printing of
 * backgrounds. {@link #inline} gives an element for a page that holds {@link #textures} once;
 * {@link #standalone} a whole file.
 */
public final class SvgSurface implements Surface {
    private static final int TILE = 6;

    private final Palette palette;
    private final double width;
    private final double height;
    private final StringBuilder body = new StringBuilder(8192);
    private final StringBuilder ramps = new StringBuilder();
    private final Map<Face, Set<Integer>> used = new TreeMap<>();
    private final String prefix;
    private int ids;

    /**
     * A blank surface.
     *
     * @param prefix letters that make the ids of this drawing unlike those of others in the page
     */
    public SvgSurface(Palette palette, double width, double height, String prefix) {
        this.palette = palette;
        this.width = width;
        this.height = height;
        this.prefix = prefix;
    }

    @Override
    public Palette palette() {
        return palette;
    }

    @Override
    public void stroke(Path path, Pen pen) {
        body.append("<path d=\"").append(data(path)).append("\" fill=\"none\"").append(pen(pen));
        body.append("/>\n");
    }

    @Override
    public void fill(Path path, Fill fill) {
        String data = data(path);
        if (fill instanceof Fill.Texture t && palette.tint(t.verdict()) > 0) {
            shape(data, paint(new Fill.Flat(palette.fill(t.verdict()), palette.tint(t.verdict()))));
            if (t.verdict() == Verdict.HOLDS) {
                return;
            }
        }
        shape(data, paint(fill));
    }

    private void shape(String data, String paint) {
        body.append("<path d=\"").append(data).append('"').append(paint).append("/>\n");
    }

    @Override
    public void strokeCircle(double x, double y, double radius, Pen pen) {
        circle(x, y, radius, " fill=\"none\"" + pen(pen));
    }

    @Override
    public void fillCircle(double x, double y, double radius, Fill fill) {
        circle(x, y, radius, paint(fill));
    }

    private void circle(double x, double y, double radius, String how) {
        body.append("<circle cx=\"")
                .append(n(x))
                .append("\" cy=\"")
                .append(n(y))
                .append("\" r=\"")
                .append(n(radius))
                .append('"')
                .append(how)
                .append("/>\n");
    }

    @Override
    public void text(double x, double y, String text, TextStyle style) {
        Face face = style.face();
        remember(face, text);
        body.append("<text x=\"").append(n(x)).append("\" y=\"").append(n(y)).append('"');
        body.append(" font-family=\"'").append(face.family()).append("','");
        body.append(Face.FALLBACK.family()).append("',sans-serif\" font-size=\"");
        body.append(n(style.size())).append('"');
        body.append(" font-weight=\"").append(face.weight()).append('"');
        if (!face.slant().equals("normal")) {
            body.append(" font-style=\"").append(face.slant()).append('"');
        }
        if (style.align() != Align.START) {
            String anchor = style.align() == Align.END ? "end" : "middle";
            body.append(" text-anchor=\"").append(anchor).append('"');
        }
        style.halo()
                .ifPresent(
                        rim ->
                                body.append(" paint-order=\"stroke\" stroke=\"")
                                        .append(rim.hex())
                                        .append("\" stroke-width=\"4\" stroke-linejoin=\"round\""));
        body.append(" fill=\"").append(style.colour().hex()).append("\">");
        body.append(escape(text)).append("</text>\n");
    }

    private void remember(Face face, String text) {
        text.codePoints()
                .forEach(
                        sign -> {
                            Face in = FontMetrics.of(face).has(sign) ? face : Face.FALLBACK;
                            used.computeIfAbsent(in, f -> new TreeSet<>()).add(sign);
                        });
    }

    @Override
    public void clip(Box box) {
        String id = prefix + "c" + ids++;
        ramps.append("<clipPath id=\"").append(id).append("\"><path d=\"");
        ramps.append(data(Path.box(box))).append("\"/></clipPath>\n");
        body.append("<g clip-path=\"url(#").append(id).append(")\">\n");
    }

    @Override
    public void unclip() {
        body.append("</g>\n");
    }

    /** What was drawn so far, without the element around it; without clips, ramps and stripes. */
    public String body() {
        return body.toString();
    }

    /** Signs drawn so far, by face. */
    public Map<Face, Set<Integer>> used() {
        return used;
    }

    /**
     * The drawing as an element of a page, as wide as its place allows and no wider than drawn.
     *
     * @param spoken what the picture says, for those who do not see it
     */
    public String inline(String spoken) {
        return String.format(
                        Locale.ROOT,
                        "<svg viewBox=\"0 0 %s %s\" style=\"max-width:%spx\" role=\"img\""
                                + " aria-label=\"%s\">%n",
                        n(width),
                        n(height),
                        n(width),
                        escape(spoken))
                + definitions(ramps.toString())
                + body
                + "</svg>\n";
    }

    /**
     * The drawing as a file of its own.
     *
     * @param fonts style rules that embed the faces; may be empty
     */
    public String standalone(String title, String fonts) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                + String.format(
                        Locale.ROOT,
                        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%s\" height=\"%s\""
                                + " viewBox=\"0 0 %s %s\">%n<title>%s</title>%n",
                        n(width),
                        n(height),
                        n(width),
                        n(height),
                        escape(title))
                + "<style>text{font-kerning:none;font-feature-settings:\"liga\" 0}"
                + fonts
                + "</style>\n"
                + definitions(textures(palette) + ramps)
                + "<path d=\""
                + data(Path.box(new Box(0, 0, width, height)))
                + "\" fill=\""
                + palette.ground(Ground.PAPER).hex()
                + "\"/>\n"
                + body
                + "</svg>\n";
    }

    private static String definitions(String inside) {
        return inside.isEmpty() ? "" : "<defs>\n" + inside + "</defs>\n";
    }

    /** The patterns of the verdicts, to be held once by a page. */
    public static String textures(Palette palette) {
        String dot = palette.fill(Verdict.TIGHT).hex();
        String dots =
                "<pattern id=\"area-tight\" width=\"6\" height=\"6\" patternUnits=\"userSpaceOnUse\">"
                        + "<circle cx=\"1.5\" cy=\"1.5\" r=\"1.05\" fill=\""
                        + dot
                        + "\"/><circle cx=\"4.5\" cy=\"4.5\" r=\"1.05\" fill=\""
                        + dot
                        + "\"/></pattern>\n";
        return dots + stripes("area-fails", palette.fill(Verdict.FAILS));
    }

    private static String stripes(String id, Colour colour) {
        return String.format(
                Locale.ROOT,
                "<pattern id=\"%s\" width=\"%d\" height=\"%d\" patternUnits=\"userSpaceOnUse\""
                        + " patternTransform=\"rotate(45)\"><path d=\"M1.1 0V6\" stroke=\"%s\""
                        + " stroke-width=\"2.2\"/></pattern>%n",
                id,
                TILE,
                TILE,
                colour.hex());
    }

    private String paint(Fill fill) {
        if (fill instanceof Fill.Flat f) {
            String opacity = f.opacity() < 1 ? " fill-opacity=\"" + n(f.opacity()) + "\"" : "";
            return " fill=\"" + f.colour().hex() + "\"" + opacity;
        }
        if (fill instanceof Fill.Texture t) {
            return switch (t.verdict()) {
                case TIGHT, FAILS -> " fill=\"url(#area-" + t.verdict().word() + ")\"";
                case HOLDS, UNKNOWN, UNJUDGED -> " fill=\"none\"";
            };
        }
        String id = prefix + "p" + ids++;
        if (fill instanceof Fill.Stripes s) {
            ramps.append(stripes(id, s.colour()));
        } else if (fill instanceof Fill.Ramp r) {
            ramps.append(ramp(id, r));
        }
        return " fill=\"url(#" + id + ")\"";
    }

    private static String ramp(String id, Fill.Ramp r) {
        StringBuilder out = new StringBuilder("<linearGradient id=\"").append(id).append('"');
        out.append(" gradientUnits=\"userSpaceOnUse\" x1=\"").append(n(r.from()));
        out.append("\" x2=\"").append(n(r.to())).append("\" y1=\"0\" y2=\"0\">");
        List<Colour> stops = r.stops();
        for (int i = 0; i < stops.size(); i++) {
            out.append("<stop offset=\"").append(n((double) i / (stops.size() - 1)));
            out.append("\" stop-color=\"").append(stops.get(i).hex()).append("\"/>");
        }
        return out.append("</linearGradient>\n").toString();
    }

    private static String pen(Pen pen) {
        String dash =
                pen.dash() == Dash.SOLID
                        ? ""
                        : pen.dash().lengths().stream()
                                .map(SvgSurface::n)
                                .collect(Collectors.joining(" ", " stroke-dasharray=\"", "\""));
        String cap = pen.dash() == Dash.SOLID ? " stroke-linecap=\"round\"" : "";
        return " stroke=\""
                + pen.colour().hex()
                + "\" stroke-width=\""
                + n(pen.width())
                + "\" stroke-linejoin=\"round\""
                + cap
                + dash;
    }

    private static String data(Path path) {
        StringBuilder out = new StringBuilder();
        for (int c = 0; c < path.contours(); c++) {
            for (int i = path.from(c); i < path.to(c); i++) {
                out.append(i == path.from(c) ? 'M' : 'L');
                out.append(n(path.x(i))).append(' ').append(n(path.y(i)));
            }
            if (path.isClosed(c)) {
                out.append('Z');
            }
        }
        return out.toString();
    }

    /** A coordinate with at most two decimals. */
    private static String n(double value) {
        long hundredths = Math.round(value * 100);
        if (hundredths % 100 == 0) {
            return Long.toString(hundredths / 100);
        }
        String text = String.format(Locale.ROOT, "%.2f", hundredths / 100.0);
        return text.endsWith("0") ? text.substring(0, text.length() - 1) : text;
    }

    /** Text for use between tags and in attributes. */
    public static String escape(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
