// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.machine.Machine;
import foldwright.machine.drive.ScrewLine;
import foldwright.mechanics.Mechanism;
import foldwright.mechanics.body.Marker;
import foldwright.mechanics.body.State;
import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.joint.Coordinate;
import foldwright.mechanics.joint.Driver;
import java.util.ArrayList;
import java.util.List;

/**
 * A lift as a 3D mechanism whose screw lengths are prescribed: what statics, force curve and hold
 * work on.
 *
 * <p>Time stands for the ideal pivot height: at time H [s] every screw has the length that ideal
 * pins would give it at height H [m], and drivers rise 1 m a second. Belongs to one thread.
 */
final class LiftModel {
    private static final int PATH_NODES = 150;
    private static final double GRAVITY = 9.81;

    private final Machine machine;
    private final Scissor scissor;
    private final Mechanism mechanism = new Mechanism();
    private final Linkage linkage;
    private final List<SpringPart> springs;
    private final List<ScrewPart> screws = new ArrayList<>();
    private final List<NutPath> paths = new ArrayList<>();
    private final Scissor.Shape flat;
    private final double lowest;
    private final double highest;

    /** Builds the lift folded flat. */
    LiftModel(Machine machine, Give give) {
        this(machine, give, GRAVITY);
    }

    /**
     * Builds the lift folded flat.
     *
     * @param gravity acceleration of free fall [m/s²]
     */
    LiftModel(Machine machine, Give give, double gravity) {
        this.machine = machine;
        this.scissor = new Scissor(machine.lift());
        flat = scissor.at(machine.lift().travel().fold().low());
        lowest = flat.height();
        highest = scissor.at(machine.lift().travel().fold().high()).height();
        mechanism.gravity(new Vec3(0, 0, -gravity));
        linkage = new LinkageBuilder(machine, flat, mechanism, give).build();
        Anchors anchors = new Anchors(mechanism, linkage);
        springs = new SpringBuilder(machine, flat, mechanism, linkage, anchors).build();
        addScrews(new ScrewLines(machine, mechanism, anchors), give);
    }

    private void addScrews(ScrewLines lines, Give give) {
        State s = mechanism.start();
        double reach = scissor.stages() * scissor.arm();
        double top = Math.min(highest * 1.05, highest + 0.5 * (reach - highest));
        for (ScrewLine line : machine.drive().lines()) {
            Marker nut = lines.nut(line);
            pose(s, scissor.atHeight(highest));
            Marker bearing = lines.bearing(line, ScrewLines.place(nut, s));
            Coordinate length = lines.length(bearing, nut);
            NutPath path = new NutPath(bottom(), top, PATH_NODES, new Along(length)::at);
            int sense = path.rate(0.5 * (lowest + highest)) >= 0 ? 1 : -1;
            double ahead =
                    sense
                            * line.phaseError()
                            * machine.drive().screw().thread().lead()
                            / (2 * Math.PI);
            NutPath out = path.shifted(ahead);
            String name = LiftNames.screw(screws.size() + 1);
            Driver driver = mechanism.drive(name, length, out);
            give.screw(driver, machine.drive().screw());
            screws.add(new ScrewPart(name, line, length, sense, driver));
            paths.add(out);
        }
    }

    /** Lowest height the screw paths know; pins may lock between it and flat [m]. */
    double bottom() {
        double closes = scissor.at(scissor.lowestAngle()).height();
        return Math.max(0.02 * lowest, closes * (1 + 1e-9));
    }

    Machine machine() {
        return machine;
    }

    Scissor scissor() {
        return scissor;
    }

    Mechanism mechanism() {
        return mechanism;
    }

    Linkage linkage() {
        return linkage;
    }

    List<SpringPart> springs() {
        return springs;
    }

    List<ScrewPart> screws() {
        return screws;
    }

    /** Length of screw i over height, its phase error included. */
    NutPath path(int screw) {
        return paths.get(screw);
    }

    /** Shape folded flat. */
    Scissor.Shape flat() {
        return flat;
    }

    /** Pivot height folded flat [m]. */
    double lowest() {
        return lowest;
    }

    /** Pivot height fully open [m]. */
    double highest() {
        return highest;
    }

    /** Places every body where ideal pins would have it; velocities stay as they are. */
    void pose(State s, Scissor.Shape shape) {
        linkage.pose(s, machine.lift(), shape);
    }

    /** A coordinate over the pivot height. */
    Along along(Coordinate coordinate) {
        return new Along(coordinate);
    }

    /** A coordinate over the pivot height with ideal pins; only the bodies it depends on move. */
    final class Along {
        private final Coordinate coordinate;
        private final int[] bodies;
        private final State state = mechanism.start();

        private Along(Coordinate coordinate) {
            this.coordinate = coordinate;
            this.bodies = coordinate.bodies();
        }

        /** Its value [m or rad] at a pivot height [m]. */
        double at(double height) {
            linkage.pose(state, machine.lift(), scissor.atHeight(height), bodies);
            return coordinate.value(state);
        }
    }

    /** Pivot height of a state: deck frame above the base pins, mean of both sides [m]. */
    double height(State s) {
        return ScrewLines.place(linkage.deck().marker(Vec3.ZERO), s).z();
    }
}
