// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.route;

import java.util.ArrayList;
import java.util.Arrays;
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
    private final double[] referenceStartX;
    private final double[] referenceStartY;
    private final double[] referenceEndX;
    private final double[] referenceEndY;
    private final double[] backwards = new double[POSE_COLUMNS];

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
        referenceStartX = new double[n];
        referenceStartY = new double[n];
        referenceEndX = new double[n];
        referenceEndY = new double[n];
        place(reference());
        for (int i = 0; i < n; i++) {
            referenceLength[i] = path(i);
            BeltGeometry g = geometry[sections.get(i).belt()];
            referenceStartX[i] = g.directionX(sections.get(i).firstSpan());
            referenceStartY[i] = g.directionY(sections.get(i).firstSpan());
            referenceEndX[i] = g.directionX(lastSpan(i));
            referenceEndY[i] = g.directionY(lastSpan(i));
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

    /** Summed from both ends, so that a section and its mirror image get the same digits. */
    private double path(int i) {
        Section s = sections.get(i);
        double forwards = 0;
        double back = 0;
        for (int k = 0; k < s.spanCount(); k++) {
            forwards += span(s, k);
            forwards += k + 1 < s.spanCount() ? arc(s, k + 1) : 0;
            int last = s.spanCount() - 1 - k;
            back += span(s, last);
            back += last > 0 ? arc(s, last) : 0;
        }
        return 0.5 * (forwards + back);
    }

    private double span(Section s, int k) {
        BeltGeometry g = geometry[s.belt()];
        return g.length((s.firstSpan() + k) % g.spans());
    }

    /** Belt on the wheel at the start of the k-th span of a section. */
    private double arc(Section s, int k) {
        BeltGeometry g = geometry[s.belt()];
        int point = (s.firstSpan() + k) % g.spans();
        return Math.abs(g.signedRadius(point)) * g.wrap(point);
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
        BeltGeometry g = geometry[s.belt()];
        double start = g.turn(referenceStartX[section], referenceStartY[section], s.firstSpan());
        double end = g.turn(referenceEndX[section], referenceEndY[section], lastSpan(section));
        e -= s.startArm() * start + s.endArm() * end;
        if (s.startAxle() >= 0) {
            e += s.startArm() * axleAngle[s.startAxle()];
        }
        if (s.endAxle() >= 0) {
            e += s.endArm() * axleAngle[s.endAxle()];
        }
        return e;
    }

    /**
     * Derivatives of a section's extension at the pose placed last.
     *
     * @param out row of {@link #POSE_COLUMNS} + number of axles columns, overwritten [1, m, m/rad]
     */
    public void gradient(int section, double[] out) {
        Arrays.fill(out, 0);
        Section s = sections.get(section);
        BeltGeometry g = geometry[s.belt()];
        for (int k = 0; k < s.spanCount(); k++) {
            int span = (s.firstSpan() + k) % g.spans();
            pull(g, span, span, -1, out);
            pull(g, span, g.endOf(span), 1, out);
        }
        // And from the other end: a section and its mirror image get the same digits.
        Arrays.fill(backwards, 0);
        for (int k = s.spanCount() - 1; k >= 0; k--) {
            int span = (s.firstSpan() + k) % g.spans();
            pull(g, span, g.endOf(span), 1, backwards);
            pull(g, span, span, -1, backwards);
        }
        for (int c = 0; c < POSE_COLUMNS; c++) {
            out[c] = 0.5 * (out[c] + backwards[c]);
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
