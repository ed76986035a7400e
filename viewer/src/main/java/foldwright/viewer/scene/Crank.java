// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

import foldwright.machine.Base;
import foldwright.machine.Machine;
import foldwright.machine.drive.HandCrank;
import foldwright.viewer.mesh.Mesh;
import foldwright.viewer.mesh.Solid;
import foldwright.viewer.mesh.Zone;
import org.joml.Matrix4x3f;

/**
 * The hand crank on its shaft. It is a part of the body that it turns, screw or pulley, so both
 * turn as one. Its arm is as long as the machine file says; it stands clear of the base, since most
 * cranks are longer than their shaft is high and must turn past the edge of the table.
 */
final class Crank {
    private static final double CLEAR = 0.004;
    private static final double GRIP_END = 0.050;

    private static final double GRIP_RADIUS = 0.0085;

    private final HandCrank crank;
    private final Machine machine;
    private final PartList out;

    Crank(HandCrank crank, Machine machine, PartList out) {
        this.crank = crank;
        this.machine = machine;
        this.out = out;
    }

    /** How it stands out where it is on the side of +x. */
    Overhang overhang() {
        return new Overhang(CLEAR + GRIP_END, crank.radius() + GRIP_RADIUS);
    }

    /**
     * Adds it.
     *
     * @param turned what it turns
     * @param from inner end of its shaft along x, base frame [m]
     * @param sense side on which it stands, +1 or -1 along x
     */
    void add(DriveParts.Turning turned, double from, double sense) {
        Base base = machine.base();
        double edge = sense > 0 ? base.length() - base.pinInset() : -base.pinInset();
        double start = edge + sense * CLEAR;
        Matrix4x3f place = PartList.at(start - turned.x(), 0, 0);
        if (sense < 0) {
            place.rotateZ((float) Math.PI);
        }
        double shaft = Math.max(0, sense * (start - from));
        String name = SourceNames.of(machine).get(0);
        out.add(name, PartKind.MOTOR, mesh(shaft), turned.body(), place);
    }

    /** Arm and grip along x from the hub on, shaft behind it [m]; the handle is up. */
    private Mesh mesh(double shaft) {
        double radius = crank.radius();
        double thick = 0.375 * machine.drive().screw().thread().majorDiameter();
        return new Solid()
                .zone(Zone.STEEL)
                .at(0, 0, 0)
                .alongX()
                .bar(thick, -shaft, 0, 14)
                .bar(0.009, 0, 0.012, 20)
                .at(0, 0, 0)
                .box(0.003, -0.0055, 0, 0.009, 0.0055, radius)
                .at(0, 0, radius)
                .alongX()
                .bar(0.0055, 0.002, 0.010, 16)
                .zone(Zone.MOTOR)
                .bar(GRIP_RADIUS, 0.010, GRIP_END, 20)
                .mesh();
    }
}
