// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics;

import foldwright.mechanics.body.Body;
import foldwright.mechanics.body.Inertia;
import foldwright.mechanics.body.Marker;
import foldwright.mechanics.body.MassProperties;
import foldwright.mechanics.body.Pose;
import foldwright.mechanics.body.Rotation;
import foldwright.mechanics.body.State;
import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.force.Force;
import foldwright.mechanics.force.ForceLaw;
import foldwright.mechanics.force.LawForce;
import foldwright.mechanics.force.PointLoad;
import foldwright.mechanics.joint.AxisAngle;
import foldwright.mechanics.joint.AxisTravel;
import foldwright.mechanics.joint.Branch;
import foldwright.mechanics.joint.Combination;
import foldwright.mechanics.joint.Coordinate;
import foldwright.mechanics.joint.Coupling;
import foldwright.mechanics.joint.Driver;
import foldwright.mechanics.joint.Friction;
import foldwright.mechanics.joint.FrictionBound;
import foldwright.mechanics.joint.JointKind;
import foldwright.mechanics.joint.PairJoint;
import foldwright.mechanics.joint.PointDistance;
import foldwright.mechanics.joint.PrescribedMotion;
import foldwright.mechanics.joint.Rows;
import foldwright.mechanics.joint.Stop;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/**
 * Bodies, joints and forces of one mechanism, added one after the other; solvers then work on it.
 *
 * <p>Points and axes of joints are given in the base frame as they are at assembly, i.e. with every
 * body in its start pose, or as markers on the bodies. Everything is SI. A mechanism and the
 * solvers on it belong to one thread; build it again for another.
 */
public final class Mechanism {
    /** Smallest principal moment of inertia of a body [kg m2]; less is mended and reported. */
    public static final double LEAST_INERTIA = 1e-9;

    private final List<Body> bodies = new ArrayList<>(List.of(Body.BASE));
    private final List<Rows> rows = new ArrayList<>();
    private final List<Force> forces = new ArrayList<>();
    private final List<Branch> branches = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private Vec3 gravity = Vec3.ZERO;
    private int angles;
    private int rowCount;

    /** Sets the acceleration of free fall [m/s2, base frame]; zero until set. */
    public void gravity(Vec3 g) {
        gravity = g;
    }

    public Vec3 gravity() {
        return gravity;
    }

    /** The base. */
    public Body base() {
        return Body.BASE;
    }

    /** Bodies, the base first. */
    public List<Body> bodies() {
        return Collections.unmodifiableList(bodies);
    }

    /** Row blocks in order of addition. */
    public List<Rows> rows() {
        return Collections.unmodifiableList(rows);
    }

    public List<Force> forces() {
        return Collections.unmodifiableList(forces);
    }

    /** What was mended in the input, in words. */
    public List<String> notes() {
        return Collections.unmodifiableList(notes);
    }

    /** Number of constraint rows. */
    public int rowCount() {
        return rowCount;
    }

    /**
     * Adds a body whose frame stands at {@code start}. Thin or pointlike bodies get a little
     * inertia.
     */
    public Body body(String name, Pose start, MassProperties mass) {
        Body b = new Body(bodies.size(), name, start, mended(name, mass));
        bodies.add(b);
        return b;
    }

    private MassProperties mended(String name, MassProperties m) {
        double least = m.inertia().smallest();
        if (least >= LEAST_INERTIA) {
            return m;
        }
        double add = LEAST_INERTIA - Math.min(0, least);
        notes.add(
                String.format(
                        Locale.ROOT,
                        "body \"%s\": smallest moment of inertia %.3g kg m2 raised by %.3g kg m2, since"
                                + " a body without inertia about an axis has no unique motion",
                        name,
                        least,
                        add));
        Inertia more = m.inertia().plus(Inertia.principal(add, add, add));
        return new MassProperties(m.mass(), m.centre(), more);
    }

    /** The state at assembly, at rest. */
    public State start() {
        State s = new State(bodies.size(), angles);
        for (Body b : bodies.subList(1, bodies.size())) {
            s.place(b, b.start());
        }
        s.refresh();
        for (Rows r : rows) {
            r.accept(s, new double[rowCount]);
        }
        return s;
    }

    /** Adds any block of rows. */
    public <R extends Rows> R add(R block) {
        block.place(rowCount);
        rows.add(block);
        rowCount += block.size();
        return block;
    }

    /** Adds any force. */
    public <F extends Force> F add(F force) {
        forces.add(force);
        return force;
    }

    /** Joint between two markers. */
    public PairJoint joint(String name, JointKind kind, Marker a, Marker b) {
        return add(new PairJoint(name, kind.locked(), a, b));
    }

    /** Joint at a point with its z axis along {@code axis}, both in the base frame at assembly. */
    public PairJoint joint(String name, JointKind kind, Body a, Body b, Vec3 point, Vec3 axis) {
        return joint(name, kind, a, b, new Pose(point, Rotation.frame(axis)));
    }

    /** Joint whose frame stands at {@code frame} [base frame] at assembly. */
    public PairJoint joint(String name, JointKind kind, Body a, Body b, Pose frame) {
        return joint(name, kind, a.markerFromBase(frame), b.markerFromBase(frame));
    }

    /** Turn of {@code b} against {@code a} about their common z axis [rad]. */
    public Coordinate angle(Marker a, Marker b) {
        return new AxisAngle(a, b, angles++);
    }

    /**
     * Turn of {@code b} against {@code a} about an axis in the base frame, zero at assembly [rad].
     */
    public Coordinate angle(Body a, Body b, Vec3 axis) {
        Pose frame = new Pose(Vec3.ZERO, Rotation.frame(axis));
        return angle(a.markerFromBase(frame), b.markerFromBase(frame));
    }

    /** Travel of {@code b}'s point along {@code a}'s z axis [m]. */
    public Coordinate travel(Marker a, Marker b) {
        return new AxisTravel(a, b);
    }

    /** Travel of {@code b} along an axis fixed to {@code a}, zero at assembly [m, base frame]. */
    public Coordinate travel(Body a, Body b, Vec3 point, Vec3 axis) {
        Pose frame = new Pose(point, Rotation.frame(axis));
        return travel(a.markerFromBase(frame), b.markerFromBase(frame));
    }

    /** Distance between two points [m]. */
    public Coordinate distance(Marker a, Marker b) {
        return new PointDistance(a, b);
    }

    /** Keeps weighted coordinates in step: sum of weight times coordinate = value. */
    public Coupling couple(String name, double value, List<Coordinate> parts, double... weights) {
        return add(new Coupling(name, new Combination(parts, weights), value));
    }

    /** Rod of fixed length between two points [m]. */
    public Coupling rod(String name, Marker a, Marker b, double length) {
        return add(new Coupling(name, new PointDistance(a, b), length));
    }

    /** Prescribes a coordinate. */
    public Driver drive(String name, Coordinate along, PrescribedMotion motion) {
        return add(new Driver(name, along, motion));
    }

    /** Limits a coordinate to one side. */
    public Stop stop(String name, Coordinate along, double limit, Stop.Side side) {
        return add(new Stop(name, along, limit, side));
    }

    /** Dry friction along a coordinate. */
    public Friction friction(String name, Coordinate along, FrictionBound bound, double bristle) {
        return add(new Friction(name, along, bound, bristle));
    }

    /** Force law along a coordinate. */
    public LawForce law(String name, Coordinate along, ForceLaw law) {
        return add(new LawForce(name, along, law));
    }

    /** Declares the range of a coordinate on the branch that is meant; statics check it. */
    public void branch(String name, Coordinate along, double least, double most) {
        branches.add(new Branch(name, along, least, most));
    }

    /** Branch conditions. */
    public List<Branch> branches() {
        return Collections.unmodifiableList(branches);
    }

    /** Load at a point, zero until set. */
    public PointLoad load(String name, Marker at) {
        return add(new PointLoad(name, at));
    }
}
