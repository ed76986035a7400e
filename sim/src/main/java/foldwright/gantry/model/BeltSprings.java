// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import foldwright.gantry.route.Belt;
import foldwright.gantry.route.BeltSystem;
import foldwright.gantry.route.Pose;
import foldwright.gantry.route.Section;
import foldwright.gantry.route.Travel;
import java.util.ArrayList;
import java.util.List;

/**
 * The sections of belt of a machine as springs. Where rows change over the travel they are renewed
 * from the exact geometry at the place where the kernel stands; the offset then takes the exact
 * extension, so nothing drifts.
 */
final class BeltSprings {
    /** Rows that change less than this over the travel count as constant: rounded wheel places. */
    private static final double CONSTANT = 1e-4;

    /** Skew at which the stiffness of the pretension is measured [rad]. */
    private static final double PROBE = 1e-3;

    /** In the order of {@code BeltSystem.sections()}. */
    final BeltSpring[] springs;

    /**
     * For the step, each section in one of four chains: those that are no mirror images, those that
     * are their own, pairs that are each other's, and couples: the same where rows change.
     */
    final BeltSpring firstAlone;

    final BeltSpring firstCentred;

    final MirrorPair firstPair;

    final MirrorPair firstCouple;

    final boolean constant;

    /**
     * Yaw stiffness that comes from the pretension itself, the belts pulling the bridge at points
     * ahead of and behind its centre; 0 where rows are renewed, for then it is in them [N m/rad].
     */
    final double pretensionStiffness;

    private final BeltSystem system;
    private final BodyMass bridge;
    private final BodyMass carriage;
    private final double[] scratch;
    private final double[] still;

    /**
     * @param carriage mass about the point to which the carriage's place refers
     */
    BeltSprings(BeltSystem system, GantryModel model, BodyMass carriage, RotorSet rotors) {
        this.system = system;
        bridge = model.bridge();
        this.carriage = carriage;
        List<Section> sections = system.sections();
        springs = new BeltSpring[sections.size()];
        for (int i = 0; i < springs.length; i++) {
            Belt belt = model.layout().belts().get(sections.get(i).belt());
            springs[i] =
                    new BeltSpring(i, sections.get(i), belt.pretension(), belt.stiffness(), rotors);
        }
        scratch = new double[BeltSystem.POSE_COLUMNS + rotors.rotors.length];
        still = new double[rotors.rotors.length];
        constant = measureLengths();
        pretensionStiffness = constant ? measureStiffness() : 0;
        Pose centre = system.reference();
        renew(
                centre.bridgeX() + bridge.centreX(),
                centre.bridgeY() + bridge.centreY(),
                0,
                centre.carriageX() + carriage.centreX(),
                centre.carriageY() + carriage.centreY(),
                0);
        MirrorImages images = new MirrorImages(springs, constant);
        firstAlone = images.firstAlone();
        firstCentred = images.firstCentred();
        firstPair = images.firstPair();
        firstCouple = images.firstCouple();
        for (Rotor r : rotors.rotors) {
            r.ends = ends(r);
        }
    }

    /** Sections that end on a rotor, two by two, in the order in which a step walks them. */
    private BeltEnds ends(Rotor rotor) {
        List<BeltSpring> ordered = new ArrayList<>();
        for (BeltSpring s = firstAlone; s != null; s = s.next) {
            ordered.add(s);
        }
        for (BeltSpring s = firstCentred; s != null; s = s.next) {
            ordered.add(s);
        }
        for (MirrorPair first : new MirrorPair[] {firstPair, firstCouple}) {
            for (MirrorPair p = first; p != null; p = p.next) {
                ordered.add(p.right);
                ordered.add(p.left);
            }
        }
        List<BeltSpring> springs = new ArrayList<>();
        List<Double> arms = new ArrayList<>();
        for (BeltSpring s : ordered) {
            if (s.start == rotor) {
                springs.add(s);
                arms.add(s.startArm);
            }
            if (s.end == rotor) {
                springs.add(s);
                arms.add(s.endArm);
            }
        }
        if (springs.size() % 2 == 1) {
            springs.add(springs.get(0));
            arms.add(0.0);
        }
        BeltEnds chain = null;
        for (int i = springs.size() - 2; i >= 0; i -= 2) {
            chain =
                    new BeltEnds(
                            springs.get(i),
                            arms.get(i),
                            springs.get(i + 1),
                            arms.get(i + 1),
                            chain);
        }
        return chain;
    }

    /** Fits lengths linearly over the travel; true where rows and lengths are constant in slope. */
    private boolean measureLengths() {
        Travel t = system.layout().travel();
        double[][] rows = new double[springs.length][scratch.length];
        system.place(system.reference());
        for (int i = 0; i < springs.length; i++) {
            system.gradient(i, rows[i]);
        }
        double[] middle = lengths(system.reference());
        double[] low = lengths(Pose.at(t.xMin(), t.yMid()));
        double[] high = lengths(Pose.at(t.xMax(), t.yMid()));
        double[] near = lengths(Pose.at(t.xMid(), t.yMin()));
        double[] far = lengths(Pose.at(t.xMid(), t.yMax()));
        for (int i = 0; i < springs.length; i++) {
            BeltSpring s = springs[i];
            s.lengthX = (high[i] - low[i]) / (t.xMax() - t.xMin());
            s.lengthY = (far[i] - near[i]) / (t.yMax() - t.yMin());
            s.length0 = middle[i] - s.lengthX * t.xMid() - s.lengthY * t.yMid();
        }
        return sameRows(rows, Pose.at(t.xMin(), t.yMin()))
                && sameRows(rows, Pose.at(t.xMax(), t.yMax()));
    }

    /** Second derivative of the tensions' work along a skew of bridge and carriage together. */
    private double measureStiffness() {
        Pose c = system.reference();
        double sum = 0;
        for (int i = 0; i < springs.length; i++) {
            system.place(c);
            double middle = system.extension(i, still);
            system.place(Pose.skewed(c.carriageX(), c.carriageY(), PROBE));
            double left = system.extension(i, still);
            system.place(Pose.skewed(c.carriageX(), c.carriageY(), -PROBE));
            double right = system.extension(i, still);
            sum += springs[i].pretension * (left - 2 * middle + right) / (PROBE * PROBE);
        }
        return sum;
    }

    private double[] lengths(Pose pose) {
        system.place(pose);
        double[] l = new double[springs.length];
        for (int i = 0; i < l.length; i++) {
            l[i] = system.length(i);
        }
        return l;
    }

    /** Pose columns about the bodies' origins do not change when a belt only shifts along. */
    private boolean sameRows(double[][] rows, Pose pose) {
        system.place(pose);
        for (int i = 0; i < rows.length; i++) {
            system.gradient(i, scratch);
            for (int k = 0; k < scratch.length; k++) {
                if (Math.abs(scratch[k] - rows[i][k]) > CONSTANT) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Takes rows and offsets from the geometry at a pose of the centres of mass. */
    void renew(double xb, double yb, double yaw, double xc, double yc, double yawC) {
        double bx = xb - bridge.centreX() + yaw * bridge.centreY();
        double by = yb - bridge.centreY() - yaw * bridge.centreX();
        double cx = xc - carriage.centreX() + yawC * carriage.centreY();
        double cy = yc - carriage.centreY() - yawC * carriage.centreX();
        system.place(bx, by, yaw, cx, cy, yawC);
        for (BeltSpring s : springs) {
            system.gradient(s.index, scratch);
            s.g0 = scratch[0];
            s.g1 = scratch[1];
            s.g3 = scratch[3];
            s.g4 = scratch[4];
            // Origin = centre of mass - turned offset: dx/dyaw = +offsetY, dy/dyaw = -offsetX.
            s.g2 = scratch[2] + (s.g0 * bridge.centreY() - s.g1 * bridge.centreX());
            s.g5 = scratch[5] + (s.g3 * carriage.centreY() - s.g4 * carriage.centreX());
            s.offset =
                    system.extension(s.index, still)
                            - s.g0 * xb
                            - s.g1 * yb
                            - s.g2 * yaw
                            - s.g3 * xc
                            - s.g4 * yc
                            - s.g5 * yawC;
        }
    }
}
