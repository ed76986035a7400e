// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.lift.LiftPose.LoadKind;
import foldwright.lift.LiftPose.PartLoad;
import foldwright.lift.LiftPose.PlacedBody;
import foldwright.lift.LiftPose.Point;
import foldwright.lift.LiftPose.Turn;
import foldwright.lift.Linkage.SliderPart;
import foldwright.machine.linkage.SliderLevel;
import foldwright.mechanics.body.Body;
import foldwright.mechanics.body.State;
import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.joint.Freedom;
import foldwright.mechanics.joint.PairJoint;
import foldwright.mechanics.solve.Equilibrium;
import foldwright.mechanics.solve.MovingBalance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Turns a solved height into poses and loads by part, for pictures. */
final class PoseReader {
    private final LiftModel model;
    private final List<PartLoad> loads = new ArrayList<>();

    PoseReader(LiftModel model) {
        this.model = model;
    }

    LiftPose read(MovingBalance balance, double height, Direction way, Optional<CurvePoint> point) {
        State s = balance.balance().state();
        point.ifPresent(p -> addPoint(p));
        springs(s);
        guides(balance.balance());
        return new LiftPose(height, way, bodies(s), loads);
    }

    private List<PlacedBody> bodies(State s) {
        List<PlacedBody> placed = new ArrayList<>();
        for (Body b : model.mechanism().bodies()) {
            if (!b.isBase()) {
                int i = b.index();
                Vec3 at = ScrewLines.place(b.marker(Vec3.ZERO), s);
                placed.add(
                        new PlacedBody(
                                b.name(),
                                new Point(at.x(), at.y(), at.z()),
                                new Turn(
                                        s.q[4 * i],
                                        s.q[4 * i + 1],
                                        s.q[4 * i + 2],
                                        s.q[4 * i + 3])));
            }
        }
        return placed;
    }

    private void add(String part, LoadKind kind, double value) {
        loads.add(new PartLoad(part, kind, value));
    }

    private void addPoint(CurvePoint p) {
        for (PinLoad pin : p.parts().pins()) {
            add(pin.pin(), LoadKind.PIN_FORCE, pin.force());
            add(pin.pin(), LoadKind.PIN_PRESSURE, pin.pressure());
        }
        for (ArmLoad arm : p.parts().arms()) {
            add(arm.arm(), LoadKind.ARM_BENDING, arm.bending());
            add(arm.arm(), LoadKind.ARM_AXIAL, arm.axial());
            add(arm.arm(), LoadKind.ARM_STRESS, arm.stress());
        }
        for (ScrewPart screw : model.screws()) {
            add(screw.name(), LoadKind.NUT_FORCE, p.screw().force());
            add(screw.name(), LoadKind.SCREW_TORQUE, p.screw().torque());
        }
        add(LiftNames.motor(1), LoadKind.MOTOR_TORQUE, p.motor().needed());
        add(LiftNames.motor(1), LoadKind.MOTOR_MARGIN, p.margin());
    }

    private void springs(State s) {
        for (SpringPart spring : model.springs()) {
            double x = spring.extent(spring.along().value(s));
            add(spring.name(), LoadKind.SPRING_FORCE, spring.law().force(x));
            add(spring.name(), LoadKind.SPRING_LENGTH, x);
        }
    }

    private void guides(Equilibrium balance) {
        for (SliderPart slider : model.linkage().sliders()) {
            for (int i = 0; i < slider.guides().size(); i++) {
                PairJoint guide = slider.guides().get(i);
                boolean front = slider.guides().size() == 2 ? i == 0 : slider.y() < 0;
                LiftNames.Side side = front ? LiftNames.Side.RIGHT : LiftNames.Side.LEFT;
                String name =
                        slider.level() == SliderLevel.BASE
                                ? LiftNames.footSlider(side)
                                : LiftNames.deckSlider(side);
                double force =
                        Math.hypot(
                                balance.load(guide, Freedom.TX), balance.load(guide, Freedom.TY));
                add(name, LoadKind.GUIDE_FORCE, force);
            }
        }
    }
}
