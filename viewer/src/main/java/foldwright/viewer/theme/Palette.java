// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.theme;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.Map;

/** The colours of one theme by role, 0xRRGGBB. */
public final class Palette {
    private static final String FILE = "/foldwright/report/palette.json";
    private static final Map<Theme, Palette> KNOWN = new EnumMap<>(Theme.class);

    /** Light is home; dark is for the dim workshop. */
    public enum Theme {
        LIGHT,
        DARK
    }

    public final Theme theme;
    public final int paper;
    public final int sheet;
    public final int recess;
    public final int rule;
    public final int ink;
    public final int ink2;
    public final int ink3;
    public final int pine;
    public final VerdictInk holds;
    public final VerdictInk tight;
    public final VerdictInk fails;
    private final JsonNode materials;
    private final Map<String, Integer> causes = new java.util.LinkedHashMap<>();
    private final int[] loads;
    private final int[] signed;

    /** Colours of a verdict: area and mark, and words. */
    public record VerdictInk(int fill, int text, float tint) {}

    private Palette(JsonNode file, Theme theme) {
        this.theme = theme;
        JsonNode part = file.get(theme == Theme.LIGHT ? "light" : "dark");
        JsonNode ground = part.get("ground");
        paper = hex(ground.get("paper"));
        sheet = hex(ground.get("sheet"));
        recess = hex(ground.get("recess"));
        rule = hex(ground.get("rule"));
        ink = hex(ground.get("ink"));
        ink2 = hex(ground.get("ink2"));
        ink3 = hex(ground.get("ink3"));
        pine = hex(ground.get("pine"));
        boolean light = theme == Theme.LIGHT;
        holds = verdict(part.get("verdict").get("holds"), light ? 0.34f : 0.30f);
        tight = verdict(part.get("verdict").get("tight"), light ? 0.30f : 0.22f);
        fails = verdict(part.get("verdict").get("fails"), light ? 0.16f : 0.22f);
        loads = stops(part.get("load_scale").get("stops"));
        signed = stops(part.get("signed_scale").get("stops"));
        materials = file.get("material").get(light ? "light" : "dark");
        file.get("cause").properties().forEach(e -> causes.put(e.getKey(), hex(e.getValue())));
    }

    /** The colours of a theme, read once. */
    public static synchronized Palette of(Theme theme) {
        return KNOWN.computeIfAbsent(theme, t -> new Palette(read(), t));
    }

    private static JsonNode read() {
        try (InputStream in = Palette.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException("palette " + FILE + " is not in this build");
            }
            return new ObjectMapper().readTree(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static VerdictInk verdict(JsonNode node, float tint) {
        return new VerdictInk(hex(node), parse(node.get("text_hex").asText()), tint);
    }

    private static int[] stops(JsonNode list) {
        int[] out = new int[list.size()];
        Iterator<JsonNode> each = list.elements();
        for (int i = 0; i < out.length; i++) {
            out[i] = parse(each.next().asText());
        }
        return out;
    }

    private static int hex(JsonNode node) {
        return parse(node.get("hex").asText());
    }

    private static int parse(String hex) {
        return Integer.parseInt(hex.substring(1), 16);
    }

    /** Colour of a material, by its key. */
    public int material(String key) {
        return parse(materials.get(key).asText());
    }

    /** Colour of a cause of a budget, by its key. */
    public int cause(String key) {
        return causes.getOrDefault(key, ink3);
    }

    /** Ink of a load, 0..1 of its scale. */
    public int load(double share) {
        return Lab.between(loads, share);
    }

    /** Colour of a signed value, -1..1 of its scale. */
    public int signed(double share) {
        return Lab.between(signed, (share + 1) / 2);
    }

    /** A mix of two colours: 0 the first, 1 the second. */
    public static int mix(int a, int b, double t) {
        int out = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            double from = a >> shift & 255;
            double to = b >> shift & 255;
            out |= (int) Math.round(from + (to - from) * t) << shift;
        }
        return out;
    }
}
