// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.belt;

import foldwright.elements.Domain;
import foldwright.elements.table.Table;
import java.util.List;

/**
 * A toothed pulley with its belt around it: radius, teeth in mesh, what they may carry, shaft load,
 * tooth jump.
 *
 * @param teeth z
 * @param pitch of belt and pulley [m]
 * @param wrap angle over which the belt touches [rad]
 */
public record BeltPulley(int teeth, double pitch, double wrap) {
    /** Teeth that should mesh (handbook rule, from memory). */
    public static final int ENOUGH_TEETH = 6;

    public BeltPulley {
        Domain.atLeast("pulley teeth", teeth, 6);
        Domain.positive("belt pitch", pitch, "m");
        Domain.within("wrap angle", wrap, 0, 2 * Math.PI, "rad");
    }

    /** z p/(2 pi) [m]. */
    public double pitchRadius() {
        return teeth * pitch / (2 * Math.PI);
    }

    /** Whole teeth in mesh, z wrap/(2 pi) rounded down. */
    public int teethInMesh() {
        double slack = 1e-9;
        return (int) Math.floor(teeth * wrap / (2 * Math.PI) + slack);
    }

    /**
     * Share of the belt's rated force that so many teeth may carry: 1 from six on, then 0.8, 0.6,
     * 0.4, 0.2 (table {@code belt_teeth_in_mesh.csv}); 0 below two [1].
     */
    public double meshFactor() {
        return Shipped.ROWS.stream()
                .filter(row -> teethInMesh() >= row.teeth())
                .mapToDouble(MeshRow::factor)
                .max()
                .orElse(0);
    }

    /** Torque for a belt force [N·m]. */
    public double torque(double force) {
        return force * pitchRadius();
    }

    /**
     * Force on the shaft from the tensions of both sides, at rest 2 T0 sin(wrap/2) [N].
     *
     * @param tight tension of one side [N]
     * @param slack tension of the other [N]
     */
    public double shaftLoad(double tight, double slack) {
        double square = tight * tight + slack * slack - 2 * tight * slack * Math.cos(wrap);
        return Math.sqrt(Math.max(0, square));
    }

    /** Extra belt that riding on the tooth tips takes, tooth height times wrap [m]. */
    public double rideOutPath(double toothHeight) {
        return toothHeight * wrap;
    }

    /**
     * Tension rise before the belt rides out, EA times that path over the free length (own
     * geometric criterion; an order of size, not a limit) [N].
     *
     * @param stretchStiffness EA [N]
     * @param freeLength of belt that takes the stretch [m]
     * @param toothHeight [m]
     */
    public double rideOutTension(double stretchStiffness, double freeLength, double toothHeight) {
        return stretchStiffness * rideOutPath(toothHeight) / freeLength;
    }

    private record MeshRow(int teeth, double factor) {}

    /** Read when the first factor is asked for. */
    private static final class Shipped {
        private static final List<MeshRow> ROWS =
                Table.shipped("belt_teeth_in_mesh.csv").rows().stream()
                        .map(
                                row ->
                                        new MeshRow(
                                                row.whole("teeth_in_mesh"),
                                                row.number("load_factor", Table.ONE)))
                        .toList();
    }
}
