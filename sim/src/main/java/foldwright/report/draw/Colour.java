// SPDX-License-Identifier: Apache-2.0
package foldwright.report.draw;

import java.util.Locale;

/**
 * An opaque sRGB colour.
 *
 * @param red 0 to 255
 * @param green 0 to 255
 * @param blue 0 to 255
 */
public record Colour(int red, int green, int blue) {
    /** Reference white D65 in CIE XYZ, as in IEC 61966-2-1. */
    private static final double[] WHITE = {0.95047, 1.0, 1.08883};

    private static final double LAB_EDGE = 216.0 / 24389;
    private static final double LAB_SLOPE = 24389.0 / 27;

    public Colour {
        if ((red | green | blue) < 0 || red > 255 || green > 255 || blue > 255) {
            throw new IllegalArgumentException(
                    "colour " + red + " " + green + " " + blue + ", allowed: 0 to 255");
        }
    }

    /** From {@code #RRGGBB}. */
    public static Colour hex(String hex) {
        if (!hex.matches("#[0-9A-Fa-f]{6}")) {
            throw new IllegalArgumentException("colour \"" + hex + "\", allowed: #RRGGBB");
        }
        int rgb = Integer.parseInt(hex.substring(1), 16);
        return new Colour(rgb >> 16 & 255, rgb >> 8 & 255, rgb & 255);
    }

    /** As {@code #RRGGBB}. */
    public String hex() {
        return String.format(Locale.ROOT, "#%02X%02X%02X", red, green, blue);
    }

    /** This colour on {@code ground} at the given opacity, 0 to 1, mixed as browsers mix. */
    public Colour over(Colour ground, double opacity) {
        return new Colour(
                mix(ground.red, red, opacity),
                mix(ground.green, green, opacity),
                mix(ground.blue, blue, opacity));
    }

    /** The colour a part of the way from this one to another, in CIE L*a*b*. */
    public Colour towards(Colour other, double part) {
        double[] a = lab();
        double[] b = other.lab();
        for (int i = 0; i < 3; i++) {
            a[i] += part * (b[i] - a[i]);
        }
        return ofLab(a);
    }

    /** L*, a*, b* (CIE 1976, D65). */
    public double[] lab() {
        double r = linear(red);
        double g = linear(green);
        double b = linear(blue);
        double x = squeeze((0.4124564 * r + 0.3575761 * g + 0.1804375 * b) / WHITE[0]);
        double y = squeeze((0.2126729 * r + 0.7151522 * g + 0.0721750 * b) / WHITE[1]);
        double z = squeeze((0.0193339 * r + 0.1191920 * g + 0.9503041 * b) / WHITE[2]);
        return new double[] {116 * y - 16, 500 * (x - y), 200 * (y - z)};
    }

    private static Colour ofLab(double[] lab) {
        double fy = (lab[0] + 16) / 116;
        double x = WHITE[0] * stretch(fy + lab[1] / 500);
        double y = WHITE[1] * stretch(fy);
        double z = WHITE[2] * stretch(fy - lab[2] / 200);
        return new Colour(
                coded(3.2404542 * x - 1.5371385 * y - 0.4985314 * z),
                coded(-0.9692660 * x + 1.8760108 * y + 0.0415560 * z),
                coded(0.0556434 * x - 0.2040259 * y + 1.0572252 * z));
    }

    private static int mix(int below, int above, double opacity) {
        return (int) Math.round(below + (above - below) * opacity);
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    private static int coded(double linear) {
        double c = linear <= 0.0031308 ? 12.92 * linear : 1.055 * Math.pow(linear, 1 / 2.4) - 0.055;
        return (int) Math.round(255 * Math.min(1, Math.max(0, c)));
    }

    private static double squeeze(double t) {
        return t > LAB_EDGE ? Math.cbrt(t) : (LAB_SLOPE * t + 16) / 116;
    }

    private static double stretch(double t) {
        return t * t * t > LAB_EDGE ? t * t * t : (116 * t - 16) / LAB_SLOPE;
    }
}
