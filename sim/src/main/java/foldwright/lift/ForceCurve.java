// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What the drive needs and has over the whole travel, both ways.
 *
 * <p>Both lists rise in height. Heights are not evenly spaced: points are added where a spring lets
 * go or the load on the nut turns, so that the worst point is met exactly. Heights at which the
 * lift is locked have no point; {@link #findings()} names them.
 *
 * @param machine name of the machine
 * @param raising points while the deck rises
 * @param lowering points while it sinks
 * @param findings locks, jams, stalls, spring and nut events found on the way
 */
public record ForceCurve(
        String machine,
        List<CurvePoint> raising,
        List<CurvePoint> lowering,
        List<Finding> findings) {
    private static final Comparator<CurvePoint> BY_MARGIN =
            Comparator.comparingDouble(CurvePoint::margin);

    public ForceCurve {
        raising = List.copyOf(raising);
        lowering = List.copyOf(lowering);
        findings = List.copyOf(findings);
    }

    /** Points of one direction, rising in height. */
    public List<CurvePoint> points(Direction direction) {
        return direction == Direction.RAISING ? raising : lowering;
    }

    /** The point with the lowest motor margin, both directions; empty when everything is locked. */
    public Optional<CurvePoint> worst() {
        return java.util.stream.Stream.concat(raising.stream(), lowering.stream()).min(BY_MARGIN);
    }

    /** The point with the lowest motor margin of one direction. */
    public Optional<CurvePoint> worst(Direction direction) {
        return points(direction).stream().min(BY_MARGIN);
    }

    /** The computed point nearest to a pivot height [m]. */
    public Optional<CurvePoint> nearest(Direction direction, double height) {
        return points(direction).stream()
                .min(Comparator.comparingDouble(p -> Math.abs(p.height() - height)));
    }

    /** All findings of one kind. */
    public List<Finding> findings(Finding.Kind kind) {
        return findings.stream().filter(f -> f.kind() == kind).toList();
    }
}
