// SPDX-License-Identifier: Apache-2.0
package foldwright.report.plot;

import foldwright.lift.Cause;
import foldwright.report.draw.Box;
import foldwright.report.draw.Palette;
import foldwright.report.draw.SvgSurface;
import foldwright.report.draw.Theme;
import foldwright.study.Amount;
import foldwright.study.Distribution;
import foldwright.study.HeightPlot;
import foldwright.study.HeightPlot.Caption;
import foldwright.study.Outcome;
import foldwright.study.Place;
import foldwright.study.Remedy;
import foldwright.study.Series;
import foldwright.study.Shown;
import foldwright.study.SignedCurve;
import foldwright.study.TimePlot;
import foldwright.study.Verdict;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Every plot once, with made-up numbers; its main method writes them as SVG files to look at. */
final class PlotGallery {
    private static final int N = 121;

    private PlotGallery() {}

    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        Files.createDirectories(folder);
        for (Theme theme : Theme.values()) {
            Palette palette = Palette.of(theme);
            SvgSurface on = new SvgSurface(palette, 1180, 1020, "g");
            draw(on);
            Files.writeString(
                    folder.resolve(theme + ".svg"),
                    on.standalone("gallery", args.length > 1 ? args[1] : ""));
        }
    }

    static void draw(SvgSurface on) {
        HeightFigure.draw(on, new Box(20, 20, 360, 400), torque(1));
        HeightFigure.draw(on, new Box(410, 20, 360, 400), torque(0.16));
        HeightFigure.draw(on, new Box(800, 20, 360, 400), torque(0.6));
        ChangeBars.draw(on, new Box(20, 450, 360, 200), changes().get(0).outcome(), changes());
        Scale height = new Scale(0.034, 0.273, 960, 720);
        new BudgetStack(on, height, new Box(20, 720, 360, 240), torque(1)).draw();
        TimeChart.draw(on, new Box(410, 450, 360, 260), time());
        DistributionChart.draw(on, new Box(410, 740, 360, 260), distribution());
        SignedChart.draw(on, new Box(800, 450, 360, 540), signed(), Shown.METRE);
    }

    static HeightPlot torque(double scale) {
        double[] h = new double[N];
        double[] need = new double[N];
        double[] limit = new double[N];
        double[] margin = new double[N];
        List<double[]> parts = new ArrayList<>();
        for (int k = 0; k < 4; k++) {
            parts.add(new double[N]);
        }
        for (int i = 0; i < N; i++) {
            h[i] = 0.034 + (0.273 - 0.034) * i / (N - 1);
            double theta = Math.asin(h[i] / 0.38);
            double deck = scale * 0.0166 / Math.tan(theta);
            double[] share = {deck, 0.09 * deck, deck * 0.03 / h[i], 1.6 * deck};
            for (int k = 0; k < 4; k++) {
                parts.get(k)[i] = share[k];
                need[i] += share[k];
            }
            limit[i] = 0.28;
            margin[i] = limit[i] / need[i];
        }
        return new HeightPlot(
                new Caption("Torque at the motor", "two screws, belt 2:1", Shown.NEWTON_METRE),
                Series.of(h),
                Series.of(need),
                Optional.of(new HeightPlot.Limit("motor gives", Series.of(limit), Verdict.RULE)),
                Series.of(margin),
                List.of(
                        new HeightPlot.Layer(Cause.DECK, Series.of(parts.get(0))),
                        new HeightPlot.Layer(Cause.ARMS, Series.of(parts.get(1))),
                        new HeightPlot.Layer(Cause.PINS, Series.of(parts.get(2))),
                        new HeightPlot.Layer(Cause.THREAD, Series.of(parts.get(3)))),
                List.of());
    }

    static List<Remedy> changes() {
        double[] margins = {0.22, 0.36, 0.49, 1.13, 1.34, 2.0};
        String[] words = {
            "bronze bushes, 6 mm pins",
            "belt 3:1",
            "belt 4.5:1",
            "four springs",
            "springs, bushes",
            "springs, bushes, rollers, 3:1"
        };
        List<Remedy> out = new ArrayList<>();
        for (int i = 0; i < margins.length; i++) {
            Outcome outcome =
                    Outcome.of(
                            Amount.of(0.28 / margins[i], Shown.NEWTON_METRE),
                            Amount.of(0.28, Shown.NEWTON_METRE),
                            Place.at(0.034, "lying flat"));
            out.add(new Remedy(words[i], outcome));
        }
        return out;
    }

    private static TimePlot time() {
        double[] t = new double[N];
        double[] asked = new double[N];
        double[] found = new double[N];
        for (int i = 0; i < N; i++) {
            t[i] = 60.0 * i / (N - 1);
            asked[i] = 0.034 + 0.004 * t[i];
            found[i] = Math.min(asked[i], 0.15);
        }
        return new TimePlot(
                new Caption("Height of the deck", "unfolding at 4 mm/s", Shown.MILLIMETRE),
                Series.of(t),
                List.of(
                        new TimePlot.Curve("asked", TimePlot.Kind.ASKED, Series.of(asked)),
                        new TimePlot.Curve("found", TimePlot.Kind.FOUND, Series.of(found))),
                List.of(new TimePlot.Event(29, "motor stalls", Verdict.FAILS)));
    }

    private static Distribution distribution() {
        double[] edges = new double[21];
        double[] counts = new double[20];
        for (int i = 0; i <= 20; i++) {
            edges[i] = 0.8 + 0.08 * i;
            if (i < 20) {
                double z = (edges[i] + 0.04 - 1.5) / 0.3;
                counts[i] = Math.round(400 * Math.exp(-z * z / 2));
            }
        }
        return new Distribution(
                new Caption("Worst motor margin", "2000 machines drawn", Shown.TIMES),
                Series.of(edges),
                Series.of(counts),
                1,
                Distribution.Side.BELOW);
    }

    private static SignedCurve signed() {
        double[] s = new double[N];
        double[] v = new double[N];
        for (int i = 0; i < N; i++) {
            s[i] = 1.0 * i / (N - 1);
            v[i] = 3e-4 * Math.sin(14 * s[i]) * (0.3 + s[i]);
        }
        return new SignedCurve(
                new Caption("Stray of the tool", "", Shown.MILLIMETRE),
                new SignedCurve.Along("way", Series.of(s)),
                Series.of(v),
                1e-4,
                "front",
                "back");
    }
}
