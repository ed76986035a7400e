// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.lift.Cause;
import foldwright.lift.CurvePoint;
import foldwright.lift.Direction;
import foldwright.lift.HandDrive;
import foldwright.lift.HandLinkage;
import foldwright.lift.HandSum;
import foldwright.machine.Machine;
import foldwright.machine.drive.BeltReduction;
import foldwright.machine.drive.Collar;
import foldwright.machine.drive.Drive;
import foldwright.machine.drive.ScrewThread;
import foldwright.machine.linkage.PinPlace;
import java.util.ArrayList;
import java.util.List;

/**
 * The torque at one motor or crank by the short formulas, raising: foot force, pins, thread, collar
 * and belt; beside it what the force curve says.
 */
final class MotorSums {
    /** A collar that takes a smaller share of the thread's torque is left out [1]. */
    private static final double SMALL = 0.01;

    /** Springs that lift with less have let go [N]. */
    private static final double LEAST_LIFT = 0.01;

    private final Machine machine;
    private final Drive drive;

    MotorSums(Machine machine) {
        this.machine = machine;
        this.drive = machine.drive();
    }

    HandCard at(CurvePoint p) {
        List<HandSum> sums = new ArrayList<>(linkage(p));
        HandSum force =
                HandDrive.axialForce(
                        sums.get(0).value(), sums.get(1).value(), drive.lines().size());
        sums.add(force);
        ScrewThread thread = drive.screw().thread();
        HandSum torque =
                new HandDrive(thread.pitchDiameter(), thread.lead(), thread.flankAngle())
                        .raiseTorque(force.value(), drive.screw().nut().friction());
        sums.add(torque);
        HandDrive.ScrewTorque screw = new HandDrive.ScrewTorque(torque.value(), 0);
        Collar collar = drive.screw().collar();
        HandSum rub = HandDrive.collarTorque(force.value(), collar.friction(), collar.diameter());
        if (rub.value() > SMALL * torque.value()) {
            sums.add(rub);
            screw = new HandDrive.ScrewTorque(torque.value(), rub.value());
        }
        HandDrive.Belt belt =
                drive.transmission() instanceof BeltReduction b
                        ? new HandDrive.Belt(b.teeth().ratio(), b.efficiency())
                        : HandDrive.Belt.NONE;
        int each = drive.lines().size() / drive.motors();
        if (each > 1 || screw.collar() > 0 || !belt.equals(HandDrive.Belt.NONE)) {
            sums.add(HandDrive.sourceTorque(SourceWords.of(machine).torque(), each, screw, belt));
        }
        return beside(p, Hand.card(sums.toArray(HandSum[]::new)));
    }

    /** Foot force without friction, and the factor of the pins. */
    private List<HandSum> linkage(CurvePoint p) {
        int stages = machine.lift().stages();
        HandLinkage linkage =
                HandLinkage.atHeight(stages, machine.lift().arm().length(), p.height());
        double springs = -p.footShares().of(Cause.SPRINGS) / (stages / Math.tan(p.at().angle()));
        double lift = Math.abs(springs) < LEAST_LIFT ? 0 : springs;
        var pin = machine.lift().pinAt(PinPlace.CENTRE);
        return List.of(
                linkage.footForce(Bench.deckWeight(machine), Bench.armWeight(machine), lift),
                linkage.pinFrictionFactor(pin.bearing().friction(), pin.radius()));
    }

    private HandCard beside(CurvePoint p, HandCard card) {
        if (p.at().direction() != Direction.RAISING) {
            return card;
        }
        List<HandCard.Step> steps = new ArrayList<>(card.steps());
        String adds =
                machine.springs().isEmpty()
                        ? "The force curve adds collar and guides, pin by pin"
                        : "The force curve adds collar, guides and what springs press on each pin";
        steps.add(
                new HandCard.Step(
                        adds,
                        "",
                        "T_m = "
                                + Numerals.with(Math.abs(p.motor().needed()), Shown.NEWTON_METRE)));
        return new HandCard(steps, card.source());
    }
}
