// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

import foldwright.machine.Machine;
import foldwright.machine.Tool;
import foldwright.machine.gantry.BeltRoute;
import foldwright.machine.gantry.Gantry;
import foldwright.machine.gantry.GantryMotor;
import foldwright.machine.gantry.Guide;
import foldwright.machine.gantry.RouteBody;
import foldwright.machine.gantry.RouteItem;
import foldwright.machine.gantry.ToothedWheel;
import foldwright.machine.gantry.Wheel;
import foldwright.machine.part.Section;
import foldwright.viewer.mesh.Mesh;
import foldwright.viewer.mesh.Solid;
import foldwright.viewer.mesh.Zone;
import java.util.ArrayList;
import java.util.List;
import org.joml.Matrix4x3f;

/**
 * Rails, blocks, bridge, carriage, tool, motors, wheels and belts of the gantry. Gantry frame: x
 * along the bridge, y along the rails, z up, z = 0 on what carries it. Heights follow from rail
 * sizes as usual for miniature profile rails: rail 0.6 of its width high, rail with block 1.1 of
 * it.
 */
final class GantryParts {
    /** A wheel that turns with its belt. */
    record Turning(
            int body,
            RouteBody on,
            double x,
            double y,
            double z,
            int route,
            double radius,
            int sense) {}

    private final Machine machine;
    private final Gantry gantry;
    private final PartList out;
    private final List<Turning> turning = new ArrayList<>();
    private final List<BeltRun> runs = new ArrayList<>();

    GantryParts(Machine machine, Gantry gantry, PartList out) {
        this.machine = machine;
        this.gantry = gantry;
        this.out = out;
    }

    List<Turning> turning() {
        return turning;
    }

    List<BeltRun> runs() {
        return runs;
    }

    private static double railHeight(Guide guide) {
        return 0.6 * guide.size();
    }

    /** As given, or else the travel and room for the blocks [m]. */
    private static double railLength(Guide guide, foldwright.machine.gantry.Reach travel) {
        return guide.length().orElse(travel.length() + guide.spacing() + 5 * guide.size());
    }

    private static double blockTop(Guide guide) {
        return 1.12 * guide.size();
    }

    private double bridgeBottom() {
        return blockTop(gantry.legs().guide()) + 0.004;
    }

    private double beamDepth() {
        return gantry.bridge().section().map(Section::depth).orElse(0.014);
    }

    private double beamWidth() {
        return gantry.bridge().section().map(Section::width).orElse(0.020);
    }

    private double bridgeTop() {
        return bridgeBottom() + beamDepth();
    }

    void add() {
        out.bodies.of(Bodies.GANTRY);
        out.bodies.of(Bodies.BRIDGE);
        out.bodies.of(Bodies.CARRIAGE);
        legs();
        bridge();
        carriage();
        tool();
        wheels();
    }

    private void legs() {
        Guide guide = gantry.legs().guide();
        double span = gantry.legs().span();
        double middle = gantry.legs().travel().middle();
        double half = railLength(guide, gantry.legs().travel()) / 2;
        double w = guide.size() / 2;
        Mesh rail =
                new Solid()
                        .zone(Zone.RAIL)
                        .box(-w, middle - half, 0, w, middle + half, railHeight(guide))
                        .mesh();
        Mesh block = block(guide, Along.Y);
        for (int side = -1; side <= 1; side += 2) {
            String word = side < 0 ? "left" : "right";
            out.add(
                    word + " rail",
                    PartKind.RAIL,
                    rail,
                    out.bodies.of(Bodies.GANTRY),
                    PartList.at(side * span / 2, 0, 0));
            int number = 1;
            for (double at : places(guide)) {
                out.add(
                        word + " leg block " + number++,
                        PartKind.BLOCK,
                        block,
                        out.bodies.of(Bodies.BRIDGE),
                        PartList.at(side * span / 2, at, 0));
            }
            double reach = guide.spacing() / 2 + 1.1 * guide.size();
            double half2 = Math.max(1.3 * guide.size(), beamWidth() * 0.6);
            Mesh bracket =
                    new Solid()
                            .zone(Zone.PLASTIC)
                            .plate(
                                    -half2,
                                    -Math.max(reach, beamWidth() * 0.75),
                                    half2,
                                    Math.max(reach, beamWidth() * 0.75),
                                    0.003,
                                    blockTop(guide),
                                    bridgeBottom())
                            .mesh();
            out.add(
                    word + " bracket",
                    PartKind.BRIDGE,
                    bracket,
                    out.bodies.of(Bodies.BRIDGE),
                    PartList.at(side * span / 2, 0, 0));
        }
    }

    private enum Along {
        X,
        Y
    }

    private static double[] places(Guide guide) {
        double[] at = new double[guide.blocks()];
        for (int i = 0; i < at.length; i++) {
            at[i] = at.length == 1 ? 0 : guide.spacing() * ((double) i / (at.length - 1) - 0.5);
        }
        return at;
    }

    private static Mesh block(Guide guide, Along along) {
        double long2 = Math.max(0.75 * guide.block().ballLength(), 1.1 * guide.size());
        double wide = 1.12 * guide.size();
        double lx = along == Along.X ? long2 : wide;
        double ly = along == Along.X ? wide : long2;
        double low = 0.18 * guide.size();
        return new Solid()
                .zone(Zone.BLOCK)
                .box(-lx, -ly, low, lx, ly, blockTop(guide))
                .zone(Zone.DARK)
                .box(
                        -lx - (along == Along.X ? 0.0012 : 0),
                        -ly - (along == Along.Y ? 0.0012 : 0),
                        low + 0.0006,
                        lx + (along == Along.X ? 0.0012 : 0),
                        ly + (along == Along.Y ? 0.0012 : 0),
                        blockTop(guide) - 0.0012)
                .mesh();
    }

    private void bridge() {
        double half = gantry.legs().span() / 2 + 1.6 * gantry.legs().guide().size();
        double w = beamWidth() / 2;
        Guide guide = gantry.bridge().guide();
        double rw = guide.size() / 2;
        double middle = gantry.bridge().travel().middle();
        double rail = Math.min(railLength(guide, gantry.bridge().travel()), 2 * half);
        Mesh beam =
                new Solid()
                        .zone(Zone.ALUMINIUM)
                        .box(-half, -w, bridgeBottom(), half, w, bridgeTop())
                        .zone(Zone.RAIL)
                        .box(
                                middle - rail / 2,
                                -rw,
                                bridgeTop(),
                                middle + rail / 2,
                                rw,
                                bridgeTop() + railHeight(guide))
                        .mesh();
        out.add("bridge", PartKind.BRIDGE, beam, out.bodies.of(Bodies.BRIDGE));
    }

    private void carriage() {
        Guide guide = gantry.bridge().guide();
        Mesh block = block(guide, Along.X);
        int body = out.bodies.of(Bodies.CARRIAGE);
        int number = 1;
        for (double at : places(guide)) {
            out.add(
                    "carriage block " + number++,
                    PartKind.BLOCK,
                    block,
                    body,
                    PartList.at(at, 0, bridgeTop()));
        }
        double half = Math.max(guide.spacing() / 2 + 1.2 * guide.size(), 0.016);
        double side = Math.max(1.2 * guide.size(), beamWidth() / 2 + 0.003);
        double top = bridgeTop() + blockTop(guide);
        double hang = Math.signum(gantry.carriage().toolPoint().y());
        double face = hang >= 0 ? side : -side;
        Mesh plate =
                new Solid()
                        .zone(Zone.PLASTIC)
                        .plate(-half, -side, half, side, 0.003, top, top + 0.004)
                        .box(
                                -half,
                                Math.min(face, face + (hang >= 0 ? 0.004 : -0.004)),
                                bridgeBottom() - 0.006,
                                half,
                                Math.max(face, face + (hang >= 0 ? 0.004 : -0.004)),
                                top + 0.004)
                        .mesh();
        out.add("carriage", PartKind.CARRIAGE, plate, body);
    }

    private void tool() {
        var point = gantry.carriage().toolPoint();
        double under = -machine.deck().undersideBelowPins() - gantry.stand().origin().z();
        double reach = machine.tool().map(Tool::reach).orElse(0.03);
        double tip = point.z() < -0.001 ? point.z() : under - reach;
        double top = bridgeTop() + 0.020;
        double y =
                Math.abs(point.y()) > beamWidth() / 2 + 0.010
                        ? point.y()
                        : (beamWidth() / 2 + 0.022) * (point.y() < 0 ? -1 : 1);
        double half = 0.014;
        Mesh mesh =
                new Solid()
                        .zone(Zone.MOTOR)
                        .at(point.x(), y, 0)
                        .plate(-half, -half, half, half, 0.003, bridgeBottom() - 0.004, top + 0.016)
                        .zone(Zone.PLASTIC)
                        .bar(
                                0.0095,
                                Math.min(bridgeBottom() - 0.006, tip + 0.022),
                                bridgeBottom() - 0.004,
                                22)
                        .zone(Zone.STEEL)
                        .bar(0.0042, tip + 0.010, tip + 0.022, 16)
                        .bar(0.0016, tip, tip + 0.010, 10)
                        .mesh();
        out.add(
                machine.tool().map(Tool::name).orElse("tool"),
                PartKind.TOOL,
                mesh,
                out.bodies.of(Bodies.CARRIAGE));
    }

    private void wheels() {
        for (int r = 0; r < gantry.belts().size(); r++) {
            BeltRoute route = gantry.belts().get(r);
            for (RouteItem item : route.route()) {
                if (item instanceof Wheel wheel) {
                    wheel(route, r, wheel);
                }
            }
            runs.add(new BeltRun(route, out, this::bodyOf));
        }
        gantry.motors().forEach(this::motor);
    }

    private int bodyOf(RouteBody on) {
        return switch (on) {
            case FRAME -> out.bodies.of(Bodies.GANTRY);
            case BRIDGE -> out.bodies.of(Bodies.BRIDGE);
            case CARRIAGE -> out.bodies.of(Bodies.CARRIAGE);
        };
    }

    private void wheel(BeltRoute route, int index, Wheel wheel) {
        double r = wheel.pitchRadius(route.belt());
        double half = route.belt().width() / 2;
        int teeth = wheel instanceof ToothedWheel t ? t.teeth() : 0;
        Solid solid = new Solid();
        solid.zone(teeth > 0 ? Zone.RIM : Zone.STEEL)
                .bar(Math.max(0.002, r - 0.0009), -half - 0.0003, half + 0.0003, 26);
        solid.zone(Zone.ALUMINIUM)
                .bar(r + 0.0016, half + 0.0003, half + 0.0013, 26)
                .bar(r + 0.0016, -half - 0.0013, -half - 0.0003, 26)
                .zone(Zone.DARK)
                .bar(0.0016, half + 0.0013, half + 0.0020, 10)
                .at(0.55 * r, 0, 0)
                .bar(0.09 * r + 0.0003, half + 0.0013, half + 0.0017, 8);
        int body = out.bodies.of("wheel " + index + " " + wheel.name());
        out.add(
                wheel.name(),
                PartKind.PULLEY,
                solid.mesh(),
                body,
                new Matrix4x3f(),
                -1,
                Math.max(1, teeth));
        int sense = wheel.sense() == foldwright.machine.gantry.Sense.COUNTERCLOCKWISE ? 1 : -1;
        turning.add(
                new Turning(
                        body,
                        wheel.on(),
                        wheel.at().x(),
                        wheel.at().y(),
                        route.height(),
                        index,
                        r,
                        sense));
        // The post it turns on.
        double foot = wheel.on() == RouteBody.FRAME ? 0 : bridgeBottom();
        if (route.height() - half > foot + 0.001) {
            Mesh post =
                    new Solid()
                            .zone(Zone.STEEL)
                            .bar(0.0025, foot, route.height() - half - 0.0013, 12)
                            .mesh();
            out.add(
                    wheel.name() + " axle",
                    PartKind.PULLEY,
                    post,
                    bodyOf(wheel.on()),
                    PartList.at(wheel.at().x(), wheel.at().y(), 0));
        }
    }

    private void motor(GantryMotor motor) {
        for (BeltRoute route : gantry.belts()) {
            for (RouteItem item : route.route()) {
                if (item instanceof ToothedWheel t
                        && t.turnedBy().filter(motor.name()::equals).isPresent()) {
                    motorAt(motor, t);
                    return;
                }
            }
        }
    }

    private void motorAt(GantryMotor motor, ToothedWheel wheel) {
        double face = DriveParts.face(motor.stepper().frameSize());
        double h = face / 2;
        double length = 0.80 * face;
        double top = motor.on() == RouteBody.FRAME ? -0.005 : bridgeBottom() - 0.001;
        Mesh mesh =
                new Solid()
                        .zone(Zone.MOTOR)
                        .plate(-h, -h, h, h, 0.12 * face, -0.84 * length, -0.16 * length)
                        .zone(Zone.ALUMINIUM)
                        .plate(-h, -h, h, h, 0.08 * face, -0.16 * length, 0)
                        .plate(-h, -h, h, h, 0.08 * face, -length, -0.84 * length)
                        .mesh();
        out.add(
                motor.name(),
                PartKind.MOTOR,
                mesh,
                bodyOf(motor.on()),
                PartList.at(wheel.at().x(), wheel.at().y(), top));
    }
}
