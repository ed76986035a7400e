// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import foldwright.gantry.route.BeltRun;
import foldwright.gantry.route.BeltSystem;
import foldwright.gantry.route.Carrier;
import foldwright.gantry.route.MotionRelation;
import foldwright.gantry.route.Section;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * What the belts themselves, and free idlers that are not states, add to the moving parts.
 *
 * <p>Belt whose speed follows an axle at an end of its section turns with that axle, mass times the
 * square of its way a radian, half with each where both ends do; so does an idler. What follows
 * none rides on the carriage along the bridge and on the bridge along the rails: in the single-loop
 * H layout the strands along the bridge and the wheels at its ends. That is the kinetic energy of
 * belts that do not stretch, with two things left out: products of the speeds along x and y, which
 * cancel in layouts that mirror themselves, and that a stretching belt does not run everywhere at
 * the speed of its end.
 *
 * <p>What rides on the carriage is pulled by the belts, at the height of their clamps and not at
 * the carriage's centre of mass; {@link #carriage} gives the point about which both balance.
 *
 * <p>Taken at the middle of the travel. Where strands run along the axes that holds everywhere, as
 * what one strand loses another gains at the same speed.
 */
final class RidingLoad {
    /** Share by which speeds may differ and still count as those of an axle: rounded places. */
    private static final double ALIKE = 1e-3;

    private final MotionRelation relation;
    private final double[] axleInertia;
    private final double[] axleDrag;
    private final double beltLine;
    private final double lead;
    private double massX;
    private double massY;
    private double yawInertia;
    private double dragX;
    private double dragY;

    private RidingLoad(BeltSystem system, MotionRelation relation, double lead) {
        this.lead = lead;
        this.relation = relation;
        axleInertia = new double[system.axleNames().size()];
        axleDrag = new double[axleInertia.length];
        beltLine = beltLine(system);
    }

    /** At the middle of the travel. */
    static RidingLoad of(GantryModel model, BeltSystem system, MotionRelation relation) {
        system.place(system.reference());
        return standing(model, system, relation);
    }

    /** Where the system stands. */
    static RidingLoad standing(GantryModel model, BeltSystem system, MotionRelation relation) {
        RidingLoad sum = new RidingLoad(system, relation, model.damping().belt());
        BeltRun run = BeltRun.of(system, relation);
        for (BeltRun.Strand strand : run.strands()) {
            sum.add(strand, model);
        }
        for (BeltRun.Arc arc : run.arcs()) {
            sum.add(arc, linearMass(model, arc.section()));
        }
        return sum;
    }

    private static double linearMass(GantryModel model, Section section) {
        return model.layout().belts().get(section.belt()).linearMass();
    }

    /** Clamps of the belts seen from the carriage's origin, along the rails, by their share [m]. */
    private static double beltLine(BeltSystem system) {
        double[] row = new double[BeltSystem.POSE_COLUMNS + system.axleNames().size()];
        double pull = 0;
        double moment = 0;
        for (int i = 0; i < system.sections().size(); i++) {
            system.gradient(i, row);
            pull += Math.abs(row[3]);
            moment -= Math.signum(row[3]) * row[5];
        }
        return pull > 0 ? moment / pull : 0;
    }

    private void add(BeltRun.Strand s, GantryModel model) {
        double mass = linearMass(model, s.section()) * s.length();
        carry(followed(s.section(), s.along()), mass, s.along());
        BeltRun.Rate a = s.leaving();
        BeltRun.Rate b = s.arriving();
        massX += mass * meanSquare(a.perX(), b.perX());
        double across = mass * meanSquare(a.perY(), b.perY());
        massY += across;
        double centre = model.bridge().centreX();
        yawInertia += across * meanSquare(s.startX() - centre, s.endX() - centre);
    }

    /** Of what runs linearly from one value to the other. */
    private static double meanSquare(double a, double b) {
        return (a * a + a * b + b * b) / 3;
    }

    /** Belt on a wheel and, where the wheel is not a state, the wheel itself. */
    private void add(BeltRun.Arc arc, double linearMass) {
        double mass = linearMass * arc.length();
        int[] own = {arc.section().startAxle()};
        int[] axles = arc.passes() ? followed(arc.section(), arc.rolling()) : own;
        carry(axles, mass, arc.rolling());
        if (arc.wheel().carrier() == Carrier.CARRIAGE) {
            massX += mass + 2 * linearMass * arc.rolling().perX() * arc.chordX();
        }
        if (arc.wheel().carrier() != Carrier.BASE) {
            massY += mass + 2 * linearMass * arc.rolling().perY() * arc.chordY();
        }
        if (arc.passes()) {
            double r = arc.wheel().radius();
            carry(axles, arc.wheel().inertia() / (r * r), arc.rolling());
            drag(axles, arc.wheel().drag() / r, arc.rolling());
        }
    }

    private void carry(int[] axles, double mass, BeltRun.Rate rate) {
        for (int axle : axles) {
            double way = way(axle, rate);
            axleInertia[axle] += mass * way * way / axles.length;
        }
        if (axles.length == 0) {
            massX += mass * rate.perX() * rate.perX();
            massY += mass * rate.perY() * rate.perY();
        }
    }

    /** Drag of an idler that turns with none, but with both ways, is counted in full on each. */
    private void drag(int[] axles, double force, BeltRun.Rate rate) {
        for (int axle : axles) {
            axleDrag[axle] += force * way(axle, rate) / axles.length;
        }
        if (axles.length == 0) {
            dragX += force * Math.abs(rate.perX());
            dragY += force * Math.abs(rate.perY());
        }
    }

    /** Axles at the ends of a section whose turning a speed follows: half of it goes to each. */
    private int[] followed(Section section, BeltRun.Rate rate) {
        return IntStream.of(section.startAxle(), section.endAxle())
                .filter(axle -> follows(axle, rate))
                .toArray();
    }

    private boolean follows(int axle, BeltRun.Rate rate) {
        if (axle < 0) {
            return false;
        }
        double x = relation.anglePerX(axle);
        double y = relation.anglePerY(axle);
        double size = Math.hypot(x, y) * Math.hypot(rate.perX(), rate.perY());
        return size > 0 && Math.abs(rate.perX() * y - rate.perY() * x) <= ALIKE * size;
    }

    /** Way of the belt a radian of an axle, by size [m/rad]. */
    private double way(int axle, BeltRun.Rate rate) {
        return Math.hypot(rate.perX(), rate.perY())
                / Math.hypot(relation.anglePerX(axle), relation.anglePerY(axle));
    }

    /** On the carriage along the bridge [kg]. */
    double massX() {
        return massX;
    }

    /** On the bridge along the rails [kg]. */
    double massY() {
        return massY;
    }

    /** On the carriage along the bridge [N]. */
    double dragX() {
        return dragX;
    }

    /** On the bridge along the rails [N]. */
    double dragY() {
        return dragY;
    }

    /** With an axle [kg m2]. */
    double axleInertia(int axle) {
        return axleInertia[axle];
    }

    /** With an axle [N m]. */
    double axleDrag(int axle) {
        return axleDrag[axle];
    }

    /** The bridge with what swings with it; its centre of mass is taken as unchanged. */
    MovingBody bridge(BodyMass own) {
        return new MovingBody(own.mass(), own.mass() + massY, own.yawInertia() + yawInertia, lead);
    }

    MovingBody carriage(BodyMass own) {
        return new MovingBody(own.mass() + massX, own.mass(), balanced(own).yawInertia(), lead);
    }

    /**
     * The carriage about the point at which its own mass at its centre and what rides on it at the
     * belt line balance along the rails. About that point a push along the bridge does not turn it,
     * and mass and yaw inertia stay diagonal.
     */
    BodyMass balanced(BodyMass own) {
        double y = (own.mass() * own.centreY() + massX * beltLine) / (own.mass() + massX);
        double toCentre = own.centreY() - y;
        double toLine = beltLine - y;
        double yaw = own.yawInertia() + own.mass() * toCentre * toCentre + massX * toLine * toLine;
        return new BodyMass(own.mass(), yaw, own.centreX(), y, own.centreZ());
    }

    /** All that moves with the carriage along the bridge, own masses left out [kg]. */
    double totalX() {
        return massX + turning(relation::anglePerX);
    }

    /** All that moves with the bridge along the rails, own masses left out [kg]. */
    double totalY() {
        return massY + turning(relation::anglePerY);
    }

    /** What turns with the axles, as mass that moves with a way [kg]. */
    private double turning(IntToDoubleFunction anglePerWay) {
        double sum = 0;
        for (int a = 0; a < axleInertia.length; a++) {
            double turn = anglePerWay.applyAsDouble(a);
            sum += axleInertia[a] * turn * turn;
        }
        return sum;
    }
}
