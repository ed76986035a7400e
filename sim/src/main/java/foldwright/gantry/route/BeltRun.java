// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.route;

import java.util.ArrayList;
import java.util.List;

/**
 * How fast every piece of belt runs while bridge and carriage move, rigid and square, and no belt
 * stretches.
 *
 * <p>A belt keeps its speed past the rim of a wheel, seen from the wheel's centre. So from the
 * wheel or anchor at which a section starts, strand by strand: speed along the strand = speed past
 * the first rim + u.(velocity of its centre), and the speed past the next rim is that less
 * u.(velocity of the next centre). Sideways a strand moves with the centres of its ends. Own.
 *
 * @param strands free strands
 * @param arcs belt on wheels
 */
public record BeltRun(List<Strand> strands, List<Arc> arcs) {

    /**
     * A speed that is linear in the motion of carriage and bridge.
     *
     * @param perX per speed of the carriage along the bridge [1]
     * @param perY per speed of the bridge along the rails [1]
     */
    public record Rate(double perX, double perY) {
        static final Rate NONE = new Rate(0, 0);

        Rate plus(Rate other, double factor) {
            return new Rate(perX + factor * other.perX, perY + factor * other.perY);
        }
    }

    /**
     * A free strand.
     *
     * @param section that it belongs to
     * @param length [m]
     * @param along speed of the belt along itself
     * @param leaving speed across itself where it leaves its first wheel
     * @param arriving speed across itself where it meets its second wheel
     * @param startX place of its start across the rails [m, base frame]
     * @param endX place of its end across the rails [m, base frame]
     */
    public record Strand(
            Section section,
            double length,
            Rate along,
            Rate leaving,
            Rate arriving,
            double startX,
            double endX) {}

    /**
     * Belt on a wheel.
     *
     * @param section that it belongs to
     * @param wheel on which it lies
     * @param length [m]
     * @param rolling speed of the belt past the wheel's centre, in the belt's direction
     * @param chordX from where it meets the wheel to where it leaves, across the rails [m]
     * @param chordY along the rails [m]
     * @param passes whether the wheel passes the tension on, or has an angle of its own
     */
    public record Arc(
            Section section,
            Wheel wheel,
            double length,
            Rate rolling,
            double chordX,
            double chordY,
            boolean passes) {}

    public BeltRun {
        strands = List.copyOf(strands);
        arcs = List.copyOf(arcs);
    }

    /** Speeds where a system stands, its axles turning as a relation says. */
    public static BeltRun of(BeltSystem system, MotionRelation relation) {
        List<Strand> strands = new ArrayList<>();
        List<Arc> arcs = new ArrayList<>();
        for (Section s : system.sections()) {
            run(system.geometry(s.belt()), s, rim(s, relation), strands, arcs);
        }
        return new BeltRun(strands, arcs);
    }

    /** Speed of the belt past the rim at which a section starts. */
    private static Rate rim(Section s, MotionRelation relation) {
        if (s.startAxle() < 0) {
            return Rate.NONE;
        }
        double radius = -s.startArm();
        return new Rate(
                radius * relation.anglePerX(s.startAxle()),
                radius * relation.anglePerY(s.startAxle()));
    }

    private static void run(
            BeltGeometry g, Section s, Rate rim, List<Strand> strands, List<Arc> arcs) {
        Rate past = rim;
        for (int k = 0; k < s.spanCount(); k++) {
            int span = (s.firstSpan() + k) % g.spans();
            int to = g.endOf(span);
            if (g.belt().points().get(span) instanceof Wheel wheel && g.arriving(span) >= 0) {
                arcs.add(arc(g, s, span, wheel, past, k > 0));
            }
            double ux = g.directionX(span);
            double uy = g.directionY(span);
            Rate along = past.plus(velocity(g, span, ux, uy), 1);
            strands.add(
                    new Strand(
                            s,
                            g.length(span),
                            along,
                            velocity(g, span, -uy, ux),
                            velocity(g, to, -uy, ux),
                            g.startX(span),
                            g.endX(span)));
            past = along.plus(velocity(g, to, ux, uy), -1);
        }
    }

    /** Velocity of the centre of a point in a direction. */
    private static Rate velocity(BeltGeometry g, int point, double dx, double dy) {
        return switch (g.belt().points().get(point).carrier()) {
            case BASE -> Rate.NONE;
            case BRIDGE -> new Rate(0, dy);
            case CARRIAGE -> new Rate(dx, dy);
        };
    }

    private static Arc arc(
            BeltGeometry g, Section s, int point, Wheel wheel, Rate past, boolean passes) {
        int in = g.arriving(point);
        return new Arc(
                s,
                wheel,
                Math.abs(g.signedRadius(point)) * g.wrap(point),
                past,
                g.startX(point) - g.endX(in),
                g.startY(point) - g.endY(in),
                passes);
    }
}
