// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import foldwright.machine.Machine;
import foldwright.report.EmbeddedFonts;
import foldwright.report.draw.Box;
import foldwright.report.draw.Palette;
import foldwright.report.draw.SvgSurface;
import foldwright.report.draw.Theme;
import foldwright.report.plot.AreaMap;
import foldwright.report.plot.DirectionRose;
import foldwright.report.plot.HeightFigure;
import foldwright.report.plot.TimeChart;
import foldwright.study.AreaPlot;
import foldwright.study.Check;
import foldwright.study.DirectionPlot;
import foldwright.study.HeightPlot;
import foldwright.study.TimePlot;
import java.util.List;

/** Plots as SVG files that carry their fonts. */
final class Drawings {
    private static final double WIDTH = 520;
    private static final double HEIGHT = 460;
    private static final double EDGE = 20;

    private Drawings() {}

    /** The plot of a check; a check without one cannot be drawn. */
    static String height(Machine machine, Check check) {
        HeightPlot plot =
                check.heightPlot()
                        .orElseThrow(
                                () -> new BadInput("no height could be passed: nothing to draw"));
        SvgSurface on = new SvgSurface(Palette.of(Theme.LIGHT), WIDTH, HEIGHT, "f");
        HeightFigure.draw(on, new Box(EDGE, EDGE, WIDTH - 2 * EDGE, HEIGHT - 2 * EDGE), plot);
        return file(on, machine.name() + ": " + plot.caption().title());
    }

    /** Charts over time, one below the other. */
    static String time(String title, List<TimePlot> plots) {
        double each = 260;
        double height = plots.size() * each + 2 * EDGE;
        SvgSurface on = new SvgSurface(Palette.of(Theme.LIGHT), WIDTH + 120, height, "f");
        for (int i = 0; i < plots.size(); i++) {
            Box box = new Box(EDGE, EDGE + i * each, WIDTH + 120 - 2 * EDGE, each - 12);
            TimeChart.draw(on, box, plots.get(i));
        }
        return file(on, title);
    }

    /** A quantity over the work area. */
    static String area(String title, AreaPlot plot) {
        SvgSurface on = new SvgSurface(Palette.of(Theme.LIGHT), WIDTH, HEIGHT, "f");
        AreaMap.draw(on, inside(), plot);
        return file(on, title);
    }

    /** What is allowed by direction. */
    static String rose(String title, DirectionPlot plot) {
        SvgSurface on = new SvgSurface(Palette.of(Theme.LIGHT), WIDTH, HEIGHT, "f");
        DirectionRose.draw(on, inside(), plot);
        return file(on, title);
    }

    private static Box inside() {
        return new Box(EDGE, EDGE, WIDTH - 2 * EDGE, HEIGHT - 2 * EDGE);
    }

    private static String file(SvgSurface on, String title) {
        String plain = on.body().replaceAll("<[^>]*>", "");
        return on.standalone(title, EmbeddedFonts.rules(plain, on.used().keySet()));
    }
}
