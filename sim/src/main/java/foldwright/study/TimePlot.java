// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import java.util.List;

/**
 * Quantities over time, one curve each, on one axis.
 *
 * @param caption title, second line and unit of the axis
 * @param time instants, rising [s]
 * @param curves drawn in this order
 * @param events moments to be marked
 */
public record TimePlot(
        HeightPlot.Caption caption, Series time, List<Curve> curves, List<Event> events) {

    /** How a curve is meant. */
    public enum Kind {
        /** What happened: solid. */
        FOUND,
        /** What was asked for or another run: dashed. */
        ASKED,
        /** A bound that must not be crossed. */
        LIMIT
    }

    /** One curve [SI of the unit]. */
    public record Curve(String words, Kind kind, Series values) {}

    /** A moment [s] with a short name and how bad it is. */
    public record Event(double time, String words, Verdict verdict) {}

    public TimePlot {
        curves = List.copyOf(curves);
        events = List.copyOf(events);
    }
}
