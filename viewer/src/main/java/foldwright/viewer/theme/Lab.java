// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.theme;

/**
 * Between sRGB and CIE L*a*b* for the D65 white (IEC 61966-2-1 for the transfer curve and primaries; ISO/CIE 11664-4 for
 * Lab). Colours are 0xRRGGBB.
 */
public final class Lab {
    private static final double[] WHITE = {0.95047, 1.0, 1.08883};

    private Lab() {}

    /** L*, a*, b* of a colour. */
    public static double[] of(int rgb) {
        double r = linear((rgb >> 16 & 255) / 255.0);
        double g = linear((rgb >> 8 & 255) / 255.0);
        double b = linear((rgb & 255) / 255.0);
        double x = curve((0.4124564 * r + 0.3575761 * g + 0.1804375 * b) / WHITE[0]);
        double y = curve((0.2126729 * r + 0.7151522 * g + 0.0721750 * b) / WHITE[1]);
        double z = curve((0.0193339 * r + 0.1191920 * g + 0.9503041 * b) / WHITE[2]);
        return new double[] {116 * y - 16, 500 * (x - y), 200 * (y - z)};
    }

    /** The nearest colour of the screen. */
    public static int rgb(double[] lab) {
        double fy = (lab[0] + 16) / 116;
        double x = WHITE[0] * back(fy + lab[1] / 500);
        double y = WHITE[1] * back(fy);
        double z = WHITE[2] * back(fy - lab[2] / 200);
        int r = channel(3.2404542 * x - 1.5371385 * y - 0.4985314 * z);
        int g = channel(-0.9692660 * x + 1.8760108 * y + 0.0415560 * z);
        int b = channel(0.0556434 * x - 0.2040259 * y + 1.0572252 * z);
        return r << 16 | g << 8 | b;
    }

    /** The colour at {@code t} (0..1) of a scale of equally spaced stops. */
    public static int between(int[] stops, double t) {
        double place = Math.max(0, Math.min(1, t)) * (stops.length - 1);
        int low = Math.min((int) place, stops.length - 2);
        double[] a = of(stops[low]);
        double[] b = of(stops[low + 1]);
        double s = place - low;
        return rgb(
                new double[] {
                    a[0] + s * (b[0] - a[0]), a[1] + s * (b[1] - a[1]), a[2] + s * (b[2] - a[2])
                });
    }

    /** Light of a channel value 0..1. */
    public static double linear(double c) {
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    private static int channel(double light) {
        double l = Math.max(0, Math.min(1, light));
        double c = l <= 0.0031308 ? 12.92 * l : 1.055 * Math.pow(l, 1 / 2.4) - 0.055;
        return (int) Math.round(255 * c);
    }

    private static double curve(double t) {
        return t > 216.0 / 24389 ? Math.cbrt(t) : (24389.0 / 27 * t + 16) / 116;
    }

    private static double back(double f) {
        return f > 6.0 / 29 ? f * f * f : (116 * f - 16) * 27 / 24389;
    }
}
