// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.route;

import java.util.ArrayList;
import java.util.List;

/**
 * A layout taken apart into sections, with their lengths, extensions and derivatives for any pose.
 *
 * <p>Extension of a section = change of its free strands + change of the arcs on wheels it passes +
 * what the wheels at its ends have fed, counted by pitch radius. Its gradient is, strand by strand,
 * u.(velocity of the end centre - velocity of the start centre), minus s r times the absolute turn
 * of the start wheel, plus s r times that of the end wheel (s = +1 counter-clockwise): all terms of
 * the wrap angles cancel. Own derivation; the test differences exact lengths.
 *
 * <p>Extensions are counted from the reference pose, the middle of the travel with a square bridge.
 */
public final class BeltSystem {
    /** Columns of a gradient row before the axles: the six numbers of {@link Pose} in order. */
    public static final int POSE_COLUMNS = 6;

    private final BeltLayout layout;
    private final Axles axles;
    private final List<Section> sections = new ArrayList<>();
    private final BeltGeometry[] geometry;
    private final double[] referenceLength;
    private final double[] referenceStart;
    private final double[] referenceEnd;

    public BeltSystem(BeltLayout layout, IdlerModel idlers) {
        this.layout = layout;
        axles = new Axles(layout, idlers);
        geometry = new BeltGeometry[layout.belts().size()];
        for (int b = 0; b < geometry.length; b++) {
            geometry[b] = new BeltGeometry(layout.belts().get(b));
            cut(b);
        }
        int n = sections.size();
        referenceLength = new double[n];
        referenceStart = new double[n];
        referenceEnd = new double[n];
        place(reference());
        for (int i = 0; i < n; i++) {
            referenceLength[i] = path(i);
            referenceStart[i] = startHeading(i);
            referenceEnd[i] = endHeading(i);
        }
    }

    private void cut(int b) {
        Belt belt = layout.belts().get(b);
        List<Integer> cuts = new ArrayList<>();
        for (int i = 0; i < belt.points().size(); i++) {
            if (belt.points().get(i) instanceof Anchor
                    || axles.of((Wheel) belt.points().get(i)) >= 0) {
                cuts.add(i);
            }
        }
        int spans = belt.spans();
        int count = belt.closed() ? cuts.size() : cuts.size() - 1;
        for (int c = 0; c < count; c++) {
            int from = cuts.get(c);
            int to = cuts.get((c + 1) % cuts.size());
            int length = to > from ? to - from : to + spans - from;
            sections.add(section(b, from, to, length));
        }
    }

    private Section section(int b, int from, int to, int spans) {
        RoutePoint first = layout.belts().get(b).points().get(from);
        RoutePoint last = layout.belts().get(b).points().get(to);
        return new Section(
                first.name() + " to " + last.name(),
                b,
                from,
                spans,
                first instanceof Wheel w ? axles.of(w) : -1,
                -geometry[b].signedRadius(from),
                last instanceof Wheel w ? axles.of(w) : -1,
                geometry[b].signedRadius(to));
    }

    public BeltLayout layout() {
        return layout;
    }

    /** Pose from which extensions are counted. */
    public Pose reference() {
        return Pose.at(layout.travel().xMid(), layout.travel().yMid());
    }

    public List<Section> sections() {
        return List.copyOf(sections);
    }

    /** Names of the turning parts with an angle of their own, driven ones first. */
    public List<String> axleNames() {
        return axles.names();
    }

    /** Index of an axle (or, where idlers are states, of an idler), -1 if it has no angle. */
    public int axle(String name) {
        return axles.of(name);
    }

    /** Index of the axle that carries a wheel, -1 where the wheel passes the tension on. */
    public int axle(Wheel wheel) {
        return axles.of(wheel);
    }

    /** Strands of one belt as last placed. */
    public BeltGeometry geometry(int belt) {
        return geometry[belt];
    }

    /** Lays all strands for a pose; the other methods speak of the pose placed last. */
    public void place(Pose pose) {
        for (BeltGeometry g : geometry) {
            g.place(pose);
        }
    }

    /** As {@link #place(Pose)}, without an object. */
    public void place(double bx, double by, double yaw, double cx, double cy, double cYaw) {
        for (BeltGeometry g : geometry) {
            g.place(bx, by, yaw, cx, cy, cYaw);
        }
    }

    /** Belt of a section that stretches: free strands and arcs on wheels it passes [m]. */
    public double length(int section) {
        return path(section);
    }

    private double path(int i) {
        Section s = sections.get(i);
        BeltGeometry g = geometry[s.belt()];
        double sum = 0;
        for (int k = 0; k < s.spanCount(); k++) {
            int span = (s.firstSpan() + k) % g.spans();
            sum += g.length(span);
            if (k > 0) {
                sum += Math.abs(g.signedRadius(span)) * g.wrap(span);
            }
        }
        return sum;
    }

    private double startHeading(int i) {
        return geometry[sections.get(i).belt()].heading(sections.get(i).firstSpan());
    }

    private double endHeading(int i) {
        return geometry[sections.get(i).belt()].heading(lastSpan(i));
    }

    private int lastSpan(int i) {
        Section s = sections.get(i);
        return (s.firstSpan() + s.spanCount() - 1) % geometry[s.belt()].spans();
    }

    /**
     * Extension of a section against the reference pose with all axles at angle 0.
     *
     * @param axleAngle absolute angles of all axles [rad]
     * @return exact extension [m]
     */
    public double extension(int section, double[] axleAngle) {
        Section s = sections.get(section);
        double e = path(section) - referenceLength[section];
        e -= s.startArm() * turned(startHeading(section) - referenceStart[section]);
        e -= s.endArm() * turned(endHeading(section) - referenceEnd[section]);
        if (s.startAxle() >= 0) {
            e += s.startArm() * axleAngle[s.startAxle()];
        }
        if (s.endAxle() >= 0) {
            e += s.endArm() * axleAngle[s.endAxle()];
        }
        return e;
    }

    private static double turned(double angle) {
        return angle - 2 * Math.PI * Math.rint(angle / (2 * Math.PI));
    }

    /**
     * Derivatives of a section's extension at the pose placed last.
     *
     * @param out row of {@link #POSE_COLUMNS} + number of axles columns, overwritten [1, m, m/rad]
     */
    public void gradient(int section, double[] out) {
        java.util.Arrays.fill(out, 0);
        Section s = sections.get(section);
        BeltGeometry g = geometry[s.belt()];
        for (int k = 0; k < s.spanCount(); k++) {
            int span = (s.firstSpan() + k) % g.spans();
            pull(g, span, g.endOf(span), 1, out);
            pull(g, span, span, -1, out);
        }
        if (s.startAxle() >= 0) {
            out[POSE_COLUMNS + s.startAxle()] += s.startArm();
        }
        if (s.endAxle() >= 0) {
            out[POSE_COLUMNS + s.endAxle()] += s.endArm();
        }
    }

    /** Adds sign u.(velocity of the centre of a point) as a row over the pose. */
    private static void pull(BeltGeometry g, int span, int point, int sign, double[] out) {
        Carrier carrier = g.belt().points().get(point).carrier();
        if (carrier == Carrier.BASE) {
            return;
        }
        int at = carrier == Carrier.BRIDGE ? 0 : 3;
        double ux = sign * g.directionX(span);
        double uy = sign * g.directionY(span);
        out[at] += ux;
        out[at + 1] += uy;
        out[at + 2] += g.leverX(point) * uy - g.leverY(point) * ux;
    }

    /** Force per extension of a section as placed: EA/L [N/m]. */
    public double stiffness(int section) {
        return layout.belts().get(sections.get(section).belt()).stiffness() / path(section);
    }
}
