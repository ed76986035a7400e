// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.machine.Machine;
import foldwright.machine.drive.BeltReduction;
import foldwright.machine.drive.Screw;
import foldwright.machine.drive.ScrewLine;
import foldwright.mechanics.Mechanism;
import foldwright.mechanics.body.Body;
import foldwright.mechanics.body.Inertia;
import foldwright.mechanics.body.Marker;
import foldwright.mechanics.body.MassProperties;
import foldwright.mechanics.body.Pose;
import foldwright.mechanics.body.Rotation;
import foldwright.mechanics.body.State;
import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.joint.Combination;
import foldwright.mechanics.joint.Coordinate;
import foldwright.mechanics.joint.Coupling;
import foldwright.mechanics.joint.FrictionBound;
import foldwright.mechanics.joint.JointKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The lift with its whole drive as moving bodies: what runs in time work on.
 *
 * <p>Each screw is a body that turns about a fixed axis; a coupling row keeps nut travel and turns
 * in step by the lead. Thread friction acts along the helix, with r the pitch radius and a the lead
 * angle: slip = r cos(a) turn + sin(a) travel, bound = mu/(cos(flank) cos(a)) times the coupling's
 * multiplier. In balance that is F r tan(a + phi') exactly, and self-locking by itself. Collar and
 * belt lose in proportion to what they transmit. Pins and guides are as in {@link LiftModel}; the
 * axial give of the screw ends and the turn of the belt are those of the machine file.
 *
 * <p>Left out: the moment of the nut on the slider it sits in, and the share of thread friction in
 * the collar's own load (about one hundredth of it). Belongs to one thread.
 */
final class DrivenLift {
    private static final double GRAVITY = 9.81;
    private static final Vec3 ALONG = new Vec3(1, 0, 0);

    /** Give of ideal couplings of turns [rad/(N·m)]. */
    private static final double STIFF_TURN = 1e-6;

    /**
     * Damping of the screws along their axes over their stiffness [s]: about 4 % of critical for
     * the deck on its screws half way up (common practice, no source; assumed).
     */
    private static final double AXIAL_DAMPING = 1e-3;

    /**
     * Elastic slip of a stuck thread along its helix [m/N]. It lies beside the give of the screw
     * along its axis, since both measure the travel of the nut: this soft, it stiffens the axis by
     * 1 %, and a thread that holds 1 N·m still gives by less than a third of a degree.
     */
    private static final double HELIX_BRISTLE = 1e-7;

    /**
     * A screw.
     *
     * @param part name, line and length as everywhere; its row is the helix coupling
     * @param turn of the screw, positive raises [rad]
     */
    record TurningScrew(ScrewPart part, Coordinate turn) {}

    /**
     * A motor or crank.
     *
     * @param body the rotor
     * @param turn its angle, positive raises [rad]
     * @param path length of its first screw over height
     * @param sense of that screw
     */
    record Rotor(Body body, Coordinate turn, NutPath path, int sense) {}

    private final Machine machine;
    private final LiftModel shape;
    private final Mechanism mechanism = new Mechanism();
    private final Linkage linkage;
    private final List<SpringPart> springs;
    private final DriveTrain train;
    private final List<TurningScrew> screws = new ArrayList<>();
    private final List<Rotor> rotors = new ArrayList<>();
    private final Give give;
    private final EndStops stops;
    private final Optional<DeckLatch> latch;
    private final double startHeight;
    private final State start;

    /**
     * Builds the lift standing at a height, its drive in step there.
     *
     * @param threadFriction friction in the threads [1]
     * @param height pivot height [m]
     */
    DrivenLift(Machine machine, Give give, double threadFriction, double height) {
        this.machine = machine;
        this.give = give;
        this.startHeight = height;
        shape = new LiftModel(machine, Give.IDEAL);
        mechanism.gravity(new Vec3(0, 0, -GRAVITY));
        linkage = new LinkageBuilder(machine, shape.flat(), mechanism, give).build();
        Anchors anchors = new Anchors(mechanism, linkage);
        springs = new SpringBuilder(machine, shape.flat(), mechanism, linkage, anchors).build();
        train = new DriveTrain(machine.drive(), threadFriction);
        for (int m = 0; m < train.motors(); m++) {
            addRotor(m);
        }
        ScrewLines lines = new ScrewLines(machine, mechanism, anchors);
        State open = mechanism.start();
        linkage.pose(open, machine.lift(), shape.scissor().atHeight(shape.highest()));
        for (ScrewLine line : machine.drive().lines()) {
            addScrew(line, lines, open);
        }
        stops = new EndStops(shape, mechanism, linkage);
        latch = machine.latch().map(l -> new DeckLatch(l, mechanism, linkage));
        start = mechanism.start();
        linkage.pose(start, machine.lift(), shape.scissor().atHeight(height));
    }

    private void addRotor(int m) {
        double inertia = Math.max(train.rotorInertia(), Mechanism.LEAST_INERTIA);
        Body rotor = spindle(LiftNames.motor(m + 1), new Vec3(0, 0.1 * m, 0), 0.1, inertia);
        NutPath path = shape.path(m);
        rotors.add(new Rotor(rotor, turnOf(rotor), path, shape.screws().get(m).sense()));
    }

    /** A body that can only turn about an axis along the machine. */
    private Body spindle(String name, Vec3 at, double mass, double inertia) {
        Pose frame = new Pose(at, Rotation.frame(ALONG));
        Inertia own = Inertia.principal(inertia, inertia, inertia);
        Body body = mechanism.body(name, frame, new MassProperties(mass, Vec3.ZERO, own));
        mechanism.joint(name + " bearing", JointKind.REVOLUTE, mechanism.base(), body, frame);
        return body;
    }

    private Coordinate turnOf(Body body) {
        return mechanism.angle(mechanism.base(), body, ALONG);
    }

    private void addScrew(ScrewLine line, ScrewLines lines, State open) {
        int i = screws.size();
        Screw screw = machine.drive().screw();
        var thread = screw.thread();
        Marker nut = lines.nut(line);
        Vec3 nutOpen = ScrewLines.place(nut, open);
        Coordinate length = lines.length(lines.bearing(line, nutOpen), nut);
        int sense = shape.screws().get(i).sense();
        String name = LiftNames.screw(i + 1);
        double rod = rodMass(screw);
        double root = thread.rootDiameter() / 2;
        Body body = spindle(name, nutOpen.plus(ALONG.times(0.05)), rod, 0.5 * rod * root * root);
        Coordinate turn = turnOf(body);
        double travelPerTurn = thread.lead() / (2 * Math.PI);
        double atStart = shape.path(i).value(startHeight);
        Coupling helix =
                mechanism.couple(name, atStart, List.of(length, turn), 1, -sense * travelPerTurn);
        helix.soften(0, axialGive(screw), AXIAL_DAMPING);
        addLosses(name, helix, length, turn, sense);
        screws.add(new TurningScrew(new ScrewPart(name, line, length, sense, helix), turn));
        couple(rotors.get(train.motorOf(i)), name, turn);
    }

    /** Give of the screw's own length and of its end bearing, one behind the other [m/N]. */
    private static double axialGive(Screw screw) {
        double root = screw.thread().rootDiameter();
        double rod =
                screw.length() / (screw.material().youngsModulus() * Math.PI / 4 * root * root);
        OptionalDouble end = screw.endStiffness();
        return end.isPresent() ? rod + 1 / end.getAsDouble() : rod;
    }

    private static double rodMass(Screw screw) {
        double d = screw.thread().pitchDiameter();
        return screw.material().density() * Math.PI / 4 * d * d * screw.length();
    }

    private void addLosses(
            String name, Coupling helix, Coordinate length, Coordinate turn, int sense) {
        var thread = machine.drive().screw().thread();
        double radius = thread.pitchDiameter() / 2;
        double lead = Math.atan(thread.lead() / (2 * Math.PI * radius));
        double cos = Math.cos(lead);
        Combination slip =
                new Combination(List.of(length, turn), sense * Math.sin(lead), radius * cos);
        double flank = train.friction() / (Math.cos(thread.flankAngle()) * cos);
        mechanism.friction(
                name + " thread", slip, FrictionBound.transmitted(helix, flank), HELIX_BRISTLE);
        var collar = machine.drive().screw().collar();
        double arm = collar.friction() * collar.diameter() / 2;
        if (arm > 0) {
            mechanism.friction(
                    name + " collar",
                    turn,
                    FrictionBound.transmitted(helix, arm),
                    give.turnBristle());
        }
    }

    private void couple(Rotor rotor, String screw, Coordinate turn) {
        double ratio = train.ratio();
        Coupling belt =
                mechanism.couple(screw + " belt", 0, List.of(rotor.turn(), turn), 1, -ratio);
        double give = STIFF_TURN;
        if (machine.drive().transmission() instanceof BeltReduction b) {
            give = b.stiffness().isPresent() ? ratio * ratio / b.stiffness().getAsDouble() : give;
        }
        belt.soften(0, give, 0);
        double eta = train.efficiency();
        if (eta < 1) {
            mechanism.friction(
                    screw + " belt loss",
                    turn,
                    FrictionBound.transmitted(belt, ratio * (1 - eta) / eta),
                    this.give.turnBristle());
        }
    }

    Machine machine() {
        return machine;
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

    DriveTrain train() {
        return train;
    }

    List<TurningScrew> screws() {
        return screws;
    }

    List<Rotor> rotors() {
        return rotors;
    }

    EndStops stops() {
        return stops;
    }

    /** The latch, open, where the machine has one. */
    Optional<DeckLatch> latch() {
        return latch;
    }

    /** The same lift without drive: lengths over height, shapes, travel. */
    LiftModel shape() {
        return shape;
    }

    /** A copy of the state it was built in: ideal pins, at rest, drive unloaded. */
    State start() {
        return start.copy();
    }

    double startHeight() {
        return startHeight;
    }

    /** Pivot height of a state, mean of both sides [m]. */
    double height(State s) {
        return ScrewLines.place(linkage.deck().marker(Vec3.ZERO), s).z();
    }

    /** Angle of a motor at which the lift stands at a height, zero at the start height [rad]. */
    double rotorAngle(Rotor rotor, double height) {
        double travel =
                rotor.sense() * (rotor.path().value(height) - rotor.path().value(startHeight));
        return travel * train.motorSpeed(1);
    }
}
