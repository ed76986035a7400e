// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.theme;

import foldwright.report.draw.Colour;
import foldwright.report.draw.Ground;
import foldwright.report.draw.Theme;
import foldwright.study.Verdict;
import java.util.EnumMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The palette of a theme as plain 0xRRGGBB numbers, looked up once, so that drawing a frame makes
 * no objects.
 */
public final class Palette {
    private static final Map<Theme, Palette> KNOWN = new EnumMap<>(Theme.class);

    public final foldwright.report.draw.Palette roles;
    public final int paper;
    public final int sheet;
    public final int recess;
    public final int rule;
    public final int ink;
    public final int ink2;
    public final int ink3;
    public final int pine;
    private final int[] fills = new int[Verdict.values().length];
    private final int[] texts = new int[Verdict.values().length];
    private final Map<String, Integer> materials = new ConcurrentHashMap<>();
    private final double[] tints = new double[Verdict.values().length];

    private Palette(Theme theme) {
        roles = foldwright.report.draw.Palette.of(theme);
        paper = rgb(roles.ground(Ground.PAPER));
        sheet = rgb(roles.ground(Ground.SHEET));
        recess = rgb(roles.ground(Ground.RECESS));
        rule = rgb(roles.ground(Ground.RULE));
        ink = rgb(roles.ground(Ground.INK));
        ink2 = rgb(roles.ground(Ground.INK2));
        ink3 = rgb(roles.ground(Ground.INK3));
        pine = rgb(roles.ground(Ground.PINE));
        for (Verdict v : Verdict.values()) {
            fills[v.ordinal()] = rgb(roles.fill(v));
            texts[v.ordinal()] = rgb(roles.text(v));
            tints[v.ordinal()] = roles.tint(v);
        }
    }

    /** The colours of a theme, read once. */
    public static synchronized Palette of(Theme theme) {
        return KNOWN.computeIfAbsent(theme, Palette::new);
    }

    public boolean dark() {
        return roles.theme() == Theme.DARK;
    }

    /** Colour of a verdict's mark and area. */
    public int fill(Verdict verdict) {
        return fills[verdict.ordinal()];
    }

    /** Colour of a verdict's words. */
    public int text(Verdict verdict) {
        return texts[verdict.ordinal()];
    }

    /** Opacity of the tint below a verdict's texture. */
    public double tint(Verdict verdict) {
        return tints[verdict.ordinal()];
    }

    /** Colour of a material, by its key. */
    public int material(String key) {
        Integer known = materials.get(key);
        if (known == null) {
            known = rgb(roles.material(key));
            materials.put(key, known);
        }
        return known;
    }

    /** Ink of a load, 0..1 of its scale. */
    public int load(double share) {
        return rgb(roles.load(share));
    }

    /** Colour of a signed value, -1..1 of its scale. */
    public int signed(double share) {
        return rgb(roles.signed(share));
    }

    /** A colour as one number. */
    public static int rgb(Colour c) {
        return c.red() << 16 | c.green() << 8 | c.blue();
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
