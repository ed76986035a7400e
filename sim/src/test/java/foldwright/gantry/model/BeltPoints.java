// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import foldwright.gantry.route.BeltGeometry;
import foldwright.gantry.route.BeltSystem;
import foldwright.gantry.route.MotionRelation;
import foldwright.gantry.route.Pose;
import foldwright.gantry.route.Section;

/**
 * Points of the belts, found on the exact geometry: a point stays as far along its belt from the
 * wheel or clamp at which its section starts, wheel turns counted in. Their velocities are central
 * differences of their places.
 */
final class BeltPoints {
    private static final double SHIFT = 1e-5;
    private static final int SAMPLES = 400;

    private final GantryModel model;
    private final BeltSystem system;
    private final MotionRelation relation;
    private final double x;
    private final double y;

    BeltPoints(GantryModel model, double x, double y) {
        this.model = model;
        this.x = x;
        this.y = y;
        GantryKernel k = new GantryKernel(model);
        system = k.system();
        relation = k.relation();
    }

    /** Kinetic energy as a quadratic form: xx, yy, xy [kg]. */
    double[] movingMass() {
        double[] sum = new double[3];
        for (int i = 0; i < system.sections().size(); i++) {
            Section s = system.sections().get(i);
            double mu = model.layout().belts().get(s.belt()).linearMass();
            system.place(Pose.at(x, y));
            double length = system.length(i);
            double heading = system.geometry(s.belt()).heading(s.firstSpan());
            for (int n = 0; n < SAMPLES; n++) {
                add(sum, s, (n + 0.5) / SAMPLES * length, heading, mu * length / SAMPLES);
            }
            addRim(sum, s, mu);
        }
        return sum;
    }

    private void add(double[] sum, Section s, double along, double heading, double mass) {
        double[] vx = difference(s, along, heading, SHIFT, 0);
        double[] vy = difference(s, along, heading, 0, SHIFT);
        sum[0] += mass * (vx[0] * vx[0] + vx[1] * vx[1]);
        sum[1] += mass * (vy[0] * vy[0] + vy[1] * vy[1]);
        sum[2] += mass * (vx[0] * vy[0] + vx[1] * vy[1]);
    }

    private double[] difference(Section s, double along, double heading, double dx, double dy) {
        double[] up = at(s, along, heading, dx, dy);
        double[] down = at(s, along, heading, -dx, -dy);
        return new double[] {(up[0] - down[0]) / (2 * SHIFT), (up[1] - down[1]) / (2 * SHIFT)};
    }

    /** Place of a point when carriage and bridge are elsewhere. */
    private double[] at(Section s, double along, double heading, double dx, double dy) {
        system.place(Pose.at(x + dx, y + dy));
        BeltGeometry g = system.geometry(s.belt());
        double left = along;
        if (s.startAxle() >= 0) {
            double turn =
                    relation.anglePerX(s.startAxle()) * dx + relation.anglePerY(s.startAxle()) * dy;
            left += -s.startArm() * (turn - (g.heading(s.firstSpan()) - heading));
        }
        for (int k = 0; ; k++) {
            int span = (s.firstSpan() + k) % g.spans();
            boolean last = k == s.spanCount() - 1;
            if (left <= g.length(span) || last) {
                return new double[] {
                    g.startX(span) + left * g.directionX(span),
                    g.startY(span) + left * g.directionY(span)
                };
            }
            left -= g.length(span);
            int wheel = g.endOf(span);
            double r = g.signedRadius(wheel);
            double arc = Math.abs(r) * g.wrap(wheel);
            if (left <= arc) {
                double from = g.heading(span) + left / r;
                return new double[] {
                    g.centreX(wheel) + r * Math.sin(from), g.centreY(wheel) - r * Math.cos(from)
                };
            }
            left -= arc;
        }
    }

    /** Belt on the wheel at which a section starts turns with it and moves with its centre. */
    private void addRim(double[] sum, Section s, double mu) {
        BeltGeometry g = system.geometry(s.belt());
        int point = s.firstSpan();
        if (s.startAxle() < 0 || g.arriving(point) < 0) {
            return;
        }
        system.place(Pose.at(x, y));
        double r = g.signedRadius(point);
        double cx = g.centreX(point);
        double cy = g.centreY(point);
        double arc = Math.abs(r) * g.wrap(point);
        double met = g.heading(g.arriving(point));
        system.place(Pose.at(x + SHIFT, y));
        double[] centreX = {(g.centreX(point) - cx) / SHIFT, (g.centreY(point) - cy) / SHIFT};
        system.place(Pose.at(x, y + SHIFT));
        double[] centreY = {(g.centreX(point) - cx) / SHIFT, (g.centreY(point) - cy) / SHIFT};
        double px = r * relation.anglePerX(s.startAxle());
        double py = r * relation.anglePerY(s.startAxle());
        for (int n = 0; n < SAMPLES; n++) {
            double h = met + (n + 0.5) / SAMPLES * arc / r;
            double[] vx = {centreX[0] + px * Math.cos(h), centreX[1] + px * Math.sin(h)};
            double[] vy = {centreY[0] + py * Math.cos(h), centreY[1] + py * Math.sin(h)};
            double mass = mu * arc / SAMPLES;
            sum[0] += mass * (vx[0] * vx[0] + vx[1] * vx[1]);
            sum[1] += mass * (vy[0] * vy[0] + vy[1] * vy[1]);
            sum[2] += mass * (vx[0] * vy[0] + vx[1] * vy[1]);
        }
    }
}
