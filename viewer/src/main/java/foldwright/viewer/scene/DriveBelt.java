// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

import foldwright.machine.drive.BeltReduction;
import foldwright.viewer.mesh.Mesh;
import foldwright.viewer.mesh.Solid;
import foldwright.viewer.mesh.Zone;
import java.util.ArrayList;
import java.util.List;
import org.joml.Matrix4x3f;

/**
 * The belt from the motor to the screws with its pulleys: the motor in the middle, its pulley
 * lifted so that the belt wraps it, one belt round all. Each strand is a part of its own, from the
 * middle of one wrap to the middle of the next.
 */
final class DriveBelt {
    private static final double THICK = 0.0016;

    private final BeltReduction belt;
    private final double perTravel;
    private final PartList out;
    private final List<DriveParts.Turning> turning;
    private final double screwRadius;
    private final double motorRadius;
    private int channel = -1;

    /**
     * @param lead of the screws [m]
     * @param turning takes what turns
     */
    DriveBelt(BeltReduction belt, double lead, PartList out, List<DriveParts.Turning> turning) {
        this.belt = belt;
        this.out = out;
        this.turning = turning;
        perTravel = 2 * Math.PI / lead;
        screwRadius = belt.teeth().screw() * belt.pitch() / (2 * Math.PI);
        motorRadius = belt.teeth().motor() * belt.pitch() / (2 * Math.PI);
    }

    /** The phase of the teeth. */
    int channel() {
        return channel;
    }

    /** Belt run a metre of foot travel [m/m]. */
    double perTravel() {
        return screwRadius * perTravel;
    }

    /**
     * Adds pulleys and belt.
     *
     * @param screws ends of the screws, x, y, z each [m]
     * @param sign side of the ends on which the belt runs, +1 or -1 along x
     * @return where the motor's flange is, x, y, z [m]
     */
    double[] add(List<double[]> screws, double sign) {
        double plane = screws.get(0)[0] + sign * 0.020;
        double z = screws.get(0)[2];
        double middle = screws.stream().mapToDouble(s -> s[1]).average().orElse(0);
        double motorZ = z + screwRadius - motorRadius + 0.004;
        List<double[]> circles = new ArrayList<>();
        circles.add(new double[] {middle, motorZ, motorRadius});
        for (int i = 0; i < screws.size(); i++) {
            double y = screws.get(i)[1];
            pulley("screw pulley " + (i + 1), belt.teeth().screw(), plane, y, z);
            circles.add(new double[] {y, z, screwRadius});
        }
        pulley("motor pulley", belt.teeth().motor(), plane, middle, motorZ);
        channel = out.newChannel();
        strands(circles, plane);
        return new double[] {plane - sign * (belt.width() / 2 + 0.006), middle, motorZ};
    }

    private void strands(List<double[]> circles, double plane) {
        float[] line = BeltLine.round(circles);
        int n = line.length / 2;
        int[] wheel = new int[n];
        for (int i = 0; i < n; i++) {
            wheel[i] = nearest(circles, line[2 * i], line[2 * i + 1]);
        }
        int at = middleOfWrap(wheel, firstOf(wheel));
        int screws = circles.size() - 1;
        double way = 0;
        for (int passed = 0; passed <= screws; passed++) {
            int next = at;
            while (wheel[next % n] == wheel[at % n]) {
                next++;
            }
            boolean home = wheel[next % n] == 0;
            next += middleOfWrap(wheel, next % n) - next % n;
            next = next <= at ? next + n : next;
            String name = BeltNames.driveStrand(home ? screws : passed, screws);
            way = strand(line, at, next, way, name, plane);
            at = next;
            if (home) {
                return;
            }
        }
    }

    private double strand(float[] line, int from, int to, double start, String name, double plane) {
        int n = line.length / 2;
        int count = to - from + 3;
        float[] points = new float[2 * count];
        float[] way = new float[count];
        double sum = start;
        for (int k = 0; k < count; k++) {
            int i = Math.floorMod(from - 1 + k, n);
            points[2 * k] = line[2 * i];
            points[2 * k + 1] = line[2 * i + 1];
            if (k > 1) {
                sum +=
                        Math.hypot(
                                points[2 * k] - points[2 * k - 2],
                                points[2 * k + 1] - points[2 * k - 1]);
            }
            way[k] = (float) sum;
        }
        double half = belt.width() / 2;
        Mesh mesh = new Solid().zone(Zone.BELT).strip(points, way, THICK, -half, half).mesh();
        out.add(
                name,
                PartKind.BELT,
                mesh,
                out.bodies.of(Bodies.BASE),
                acrossFrame(plane),
                channel,
                belt.pitch());
        return way[count - 2];
    }

    private static int nearest(List<double[]> circles, double x, double y) {
        int best = 0;
        double least = Double.MAX_VALUE;
        for (int i = 0; i < circles.size(); i++) {
            double[] c = circles.get(i);
            double off = Math.abs(Math.hypot(x - c[0], y - c[1]) - c[2]);
            if (off < least) {
                least = off;
                best = i;
            }
        }
        return best;
    }

    /** The point at which the belt first touches the motor pulley. */
    private static int firstOf(int[] wheel) {
        int n = wheel.length;
        for (int i = 0; i < n; i++) {
            if (wheel[i] == 0 && wheel[(i + n - 1) % n] != 0) {
                return i;
            }
        }
        return 0;
    }

    /** The middle point of the wrap that begins at a point, counted on past the last point. */
    private static int middleOfWrap(int[] wheel, int first) {
        int count = 0;
        while (count < wheel.length && wheel[(first + count) % wheel.length] == wheel[first]) {
            count++;
        }
        return first + count / 2;
    }

    /** Local x, y of a drawing in a plane across the machine become its y, z. */
    private static Matrix4x3f acrossFrame(double x) {
        return new Matrix4x3f(0, 1, 0, 0, 0, 1, 1, 0, 0, (float) x, 0, 0);
    }

    private void pulley(String name, int teeth, double x, double y, double z) {
        double r = teeth * belt.pitch() / (2 * Math.PI);
        double turn = perTravel * belt.teeth().screw() / teeth;
        double half = belt.width() / 2;
        int body = out.bodies.of(name);
        double flange = r + 0.0018;
        Mesh mesh =
                new Solid()
                        .zone(Zone.RIM)
                        .bar(Math.max(0.002, r - 0.0008), -half - 0.0004, half + 0.0004, 32)
                        .zone(Zone.ALUMINIUM)
                        .ring(flange, 0.4 * r, half + 0.0004, half + 0.0016, 32)
                        .ring(flange, 0.4 * r, -half - 0.0016, -half - 0.0004, 32)
                        .zone(Zone.DARK)
                        .bar(0.30 * r, -half - 0.0022, half + 0.0022, 14)
                        .zone(Zone.ALUMINIUM)
                        .at(0.62 * r, 0, 0)
                        .bar(0.08 * r + 0.0003, half + 0.0016, half + 0.0021, 10)
                        .mesh();
        out.add(name, PartKind.PULLEY, mesh, body, acrossFrame(0), -1, teeth);
        turning.add(new DriveParts.Turning(body, turn, 0, x, y, z));
    }
}
