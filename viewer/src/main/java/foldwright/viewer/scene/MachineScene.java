// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

import foldwright.machine.Machine;
import foldwright.machine.WhenFolded;
import foldwright.viewer.mesh.Mesh;
import foldwright.viewer.mesh.Zone;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joml.Matrix4x3f;
import org.joml.Vector3f;

/** A machine as parts on bodies, and the records from which a renderer draws it. */
public final class MachineScene {
    private final Machine machine;
    private final LiftShape shape;
    private final LiftMotion lift;
    private final GantryMotion gantry;
    private final List<Part> parts;
    private final Bodies bodies;
    private final SpringMotion springs;
    private final List<DriveParts.Turning> turning;
    private final int beltChannel;
    private final double beltPerTravel;
    private final Pose pose;
    private final List<Batch> batches = new ArrayList<>();
    private final int[] batchOf;
    private final int[] slotOf;
    private final Matrix4x3f scratch = new Matrix4x3f();
    private final double deckTop;
    private final Overhang overhang;
    private final boolean toolComesOff;
    private boolean toolOff;
    private final Vector3f[] middles;
    private final Carried[] carried;
    private Lean lean = Lean.NONE;
    private Ground ground = Ground.PLAIN;

    /** What a part goes along with when the deck leans. */
    private enum Carried {
        NOTHING,
        LIFT,
        DECK
    }

    public MachineScene(Machine machine) {
        this.machine = machine;
        toolComesOff =
                machine.tool().map(t -> t.whenFolded() == WhenFolded.TAKEN_OFF).orElse(false);
        shape = new LiftShape(machine);
        PartList list = new PartList();
        list.bodies.of(Bodies.BASE);
        FrameParts frame = new FrameParts(machine, shape, list);
        deckTop = frame.deckTop();
        frame.add();
        new ArmParts(machine, shape, list).add();
        DriveParts drive = new DriveParts(machine, shape, list);
        drive.add();
        SpringParts coils = new SpringParts(machine, shape, list, frame.deckTop() - 0.005);
        coils.add();
        int beforeGantry = list.bodies.count();
        if (machine.gantry().isPresent()) {
            GantryParts g = new GantryParts(machine, machine.gantry().get(), list);
            g.add();
            gantry = new GantryMotion(machine.gantry().get(), g, list.bodies);
        } else {
            gantry = null;
        }
        lift = new LiftMotion(machine, shape, list.bodies);
        parts = List.copyOf(list.parts);
        bodies = list.bodies;
        springs = coils.motion();
        turning = drive.turning();
        overhang = drive.overhang();
        beltChannel = drive.beltChannel();
        beltPerTravel = drive.beltPerTravel();
        pose = new Pose(bodies.count(), list.channels());
        batchOf = new int[parts.size()];
        slotOf = new int[parts.size()];
        middles = parts.stream().map(MachineScene::middle).toArray(Vector3f[]::new);
        carried = parts.stream().map(p -> carried(p, beforeGantry)).toArray(Carried[]::new);
        group();
        on(Ground.PLAIN);
    }

    private static Vector3f middle(Part part) {
        if (part.mesh().coil() != null || part.mesh().vertexCount() == 0) {
            return new Vector3f();
        }
        float[] b = part.mesh().bounds();
        return new Vector3f((b[0] + b[3]) / 2, (b[1] + b[4]) / 2, (b[2] + b[5]) / 2);
    }

    private Carried carried(Part part, int beforeGantry) {
        boolean deck = machine.gantryOnDeck().isPresent() && part.body() >= beforeGantry;
        String body = bodies.name(part.body());
        if (deck || body.equals(Bodies.DECK) || body.equals(Bodies.DECK_SLIDER)) {
            return Carried.DECK;
        }
        boolean lift =
                body.startsWith("rising arms")
                        || body.startsWith("falling arms")
                        || part.kind() == PartKind.SPRING;
        return lift ? Carried.LIFT : Carried.NOTHING;
    }

    /** What lies below the machine from now on; returns this. */
    public MachineScene on(Ground next) {
        ground = next;
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i).kind() == PartKind.GRID) {
                batches.get(batchOf[i]).shown = next == Ground.GRID;
            }
        }
        return this;
    }

    /** What lies below the machine. */
    public Ground ground() {
        return ground;
    }

    /** Reach of the grid, x, y from and to, base frame [m]. */
    public double[] gridReach() {
        return FrameParts.gridReach(machine);
    }

    /** Makes the deck lean from now on. */
    public void lean(Lean next) {
        lean = next;
    }

    /**
     * The middle of a part as placed last, in the world [m]; of a coil half way along it.
     *
     * @return {@code out}
     */
    public Vector3f middle(Part part, Vector3f out) {
        place(part, part.id() - 1);
        out.set(middles[part.id() - 1]);
        if (part.mesh().coil() != null) {
            out.z = (float) pose.channel[part.channel()] / 2;
        }
        return scratch.transformPosition(out);
    }

    /** Place of a part, lean included, into the scratch matrix. */
    private void place(Part part, int index) {
        pose.body[part.body()].mul(part.local(), scratch);
        if (lean != Lean.NONE && carried[index] != Carried.NOTHING) {
            lean(index);
        }
    }

    /** Affine for each part: the deck tilts, an arm of one side grows or shrinks upright. */
    private void lean(int index) {
        double pin = machine.base().pinHeight();
        double rise = lift.joints().z[shape.stages()];
        Matrix4x3f m = scratch;
        if (carried[index] == Carried.DECK) {
            double dz = lean.tilt() * m.m31();
            m.m02((float) (m.m02() + lean.tilt() * m.m01()));
            m.m12((float) (m.m12() + lean.tilt() * m.m11()));
            m.m22((float) (m.m22() + lean.tilt() * m.m21()));
            m.m32((float) (m.m32() + dz));
            m.m31((float) (m.m31() + lean.shift()));
            return;
        }
        Vector3f c = middles[index];
        double y = m.m01() * c.x + m.m11() * c.y + m.m21() * c.z + m.m31();
        double grow = lean.tilt() * y / rise;
        double side = lean.shift() / rise;
        m.m01((float) (m.m01() + side * m.m02()));
        m.m11((float) (m.m11() + side * m.m12()));
        m.m21((float) (m.m21() + side * m.m22()));
        m.m31((float) (m.m31() + side * (m.m32() - pin)));
        m.m02((float) (m.m02() * (1 + grow)));
        m.m12((float) (m.m12() * (1 + grow)));
        m.m22((float) (m.m22() * (1 + grow)));
        m.m32((float) (pin + (m.m32() - pin) * (1 + grow)));
    }

    private void group() {
        Map<Mesh, List<Integer>> byMesh = new LinkedHashMap<>();
        Map<Mesh, Mesh> same = new IdentityHashMap<>();
        for (int i = 0; i < parts.size(); i++) {
            Mesh mesh = parts.get(i).mesh();
            same.putIfAbsent(mesh, mesh);
            byMesh.computeIfAbsent(mesh, m -> new ArrayList<>()).add(i);
        }
        for (Map.Entry<Mesh, List<Integer>> e : byMesh.entrySet()) {
            int slot = 0;
            for (int i : e.getValue()) {
                batchOf[i] = batches.size();
                slotOf[i] = slot++;
            }
            batches.add(new Batch(e.getKey(), slot));
        }
    }

    public Machine machine() {
        return machine;
    }

    public LiftShape shape() {
        return shape;
    }

    public List<Part> parts() {
        return parts;
    }

    public Bodies bodies() {
        return bodies;
    }

    public List<Batch> batches() {
        return batches;
    }

    public Pose pose() {
        return pose;
    }

    /** The gantry's motion, where there is a gantry. */
    public Optional<GantryMotion> gantry() {
        return Optional.ofNullable(gantry);
    }

    public LiftMotion lift() {
        return lift;
    }

    /** Turns of what turns fastest in the drive a metre of foot travel [1/m]. */
    public double turnsPerTravel() {
        double most = turning.stream().mapToDouble(t -> Math.abs(t.perTravel())).max().orElse(0);
        return most / (2 * Math.PI);
    }

    /** The first part of that name. */
    public Optional<Part> part(String name) {
        return parts.stream().filter(p -> p.name().equals(name)).findFirst();
    }

    /** The part with an id from picking. */
    public Optional<Part> part(int id) {
        return id >= 1 && id <= parts.size() ? Optional.of(parts.get(id - 1)) : Optional.empty();
    }

    /** Top of the deck plate above the deck pins [m]. */
    public double deckTop() {
        return deckTop;
    }

    /** What stands out beyond the end of its base at +x. */
    public Overhang overhang() {
        return overhang;
    }

    /** Poses everything at a pivot height, the gantry at its home. */
    public void place(double height) {
        place(height, gantry == null ? null : gantry.home());
    }

    /** Poses everything. */
    public void place(double height, GantryMotion.Place at) {
        lift.place(height, pose);
        double travel = lift.footTravel();
        DriveParts.place(turning, machine.base().pinHeight(), travel, pose);
        springs.place(pose);
        if (beltChannel >= 0) {
            pose.channel[beltChannel] = beltPerTravel * travel;
        }
        if (gantry != null) {
            gantry.place(at, pose);
        }
        toolOff = toolComesOff && height < shape.workLow() - 1e-6;
    }

    /** Writes the records of all parts from the pose and what they carry. */
    public void write(PartLook look) {
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            float[] data = batches.get(batchOf[i]).data;
            int at = slotOf[i] * Batch.FLOATS;
            place(part, i);
            if (toolOff && part.kind() == PartKind.TOOL) {
                scratch.zero();
            }
            if (isBelt(part) && part.body() != 0) {
                scratch.scale(1, look.beltSwell(), 1);
            }
            rows(scratch, data, at);
            look.load(part, data, at + Batch.LOAD);
            if (isBelt(part)) {
                // The way of a belt piece is measured in lengths of the piece, that of a whole belt
                // in metres.
                data[at + Batch.LOAD + 3] =
                        part.body() == 0 ? 1 : pose.body[part.body()].getColumn(0, column).length();
            }
            look.colour(part, data, at + Batch.COLOUR);
            if (part.kind() == PartKind.GRID) {
                // Lines are fainter by what stands below zero here.
                data[at + Batch.COLOUR + 3] = part.name().endsWith("50 mm") ? -0.42f : -0.2f;
            }
            data[at + Batch.EXTRA] = part.id();
            data[at + Batch.EXTRA + 1] =
                    part.channel() < 0 ? 0 : (float) pose.channel[part.channel()];
            data[at + Batch.EXTRA + 2] =
                    isCone(part) ? (float) pose.channel[part.channel() + 1] : (float) part.pitch();
            data[at + Batch.EXTRA + 3] = look.pointed() == part.id() ? 1 : 0;
        }
    }

    private final Vector3f column = new Vector3f();

    private static boolean isBelt(Part part) {
        return part.kind() == PartKind.BELT;
    }

    private static boolean isCone(Part part) {
        Mesh.Coil coil = part.mesh().coil();
        return coil != null && coil.radiusBelow() != coil.radiusAbove();
    }

    private static void rows(Matrix4x3f m, float[] out, int at) {
        out[at] = m.m00();
        out[at + 1] = m.m10();
        out[at + 2] = m.m20();
        out[at + 3] = m.m30();
        out[at + 4] = m.m01();
        out[at + 5] = m.m11();
        out[at + 6] = m.m21();
        out[at + 7] = m.m31();
        out[at + 8] = m.m02();
        out[at + 9] = m.m12();
        out[at + 10] = m.m22();
        out[at + 11] = m.m32();
    }

    /** Faces of a zone that has materials of its own, for exporters. */
    public static Zone zone(float code) {
        return Zone.values()[Math.round(code)];
    }
}
