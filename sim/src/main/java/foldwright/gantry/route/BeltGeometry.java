// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.route;

/**
 * Where the strands of one belt run for a given pose: common tangents of neighbouring wheels.
 *
 * <p>Exact plane geometry, wheels of any radius. For neighbours with centre distance vector D,
 * signed radii a and b (positive where the belt turns counter-clockwise) and kappa = b - a, the
 * free length is L = sqrt(D.D - kappa^2) and the direction of travel u = (L D - kappa J D)/D.D, J
 * the quarter turn. Derived from D = L u + kappa J u. A strand whose circles have no such tangent
 * gets a length that is not a number. Sized once; placing allocates nothing.
 */
public final class BeltGeometry {
    private final Belt belt;
    private final int points;
    private final int spans;
    private final double[] localX;
    private final double[] localY;
    private final Carrier[] carrier;
    private final double[] signedRadius;
    private final double[] centreX;
    private final double[] centreY;
    private final double[] leverX;
    private final double[] leverY;
    private final double[] directionX;
    private final double[] directionY;
    private final double[] length;

    public BeltGeometry(Belt belt) {
        this.belt = belt;
        points = belt.points().size();
        spans = belt.spans();
        localX = new double[points];
        localY = new double[points];
        carrier = new Carrier[points];
        signedRadius = new double[points];
        centreX = new double[points];
        centreY = new double[points];
        leverX = new double[points];
        leverY = new double[points];
        directionX = new double[spans];
        directionY = new double[spans];
        length = new double[spans];
        for (int i = 0; i < points; i++) {
            RoutePoint point = belt.points().get(i);
            localX[i] = point.x();
            localY[i] = point.y();
            carrier[i] = point.carrier();
            signedRadius[i] = point instanceof Wheel w ? w.sense().sign() * w.radius() : 0;
        }
    }

    /** Lays the strands for a pose of bridge and carriage. */
    public void place(Pose pose) {
        place(
                pose.bridgeX(),
                pose.bridgeY(),
                pose.bridgeYaw(),
                pose.carriageX(),
                pose.carriageY(),
                pose.carriageYaw());
    }

    /** Lays the strands; arguments as in {@link Pose}. Allocates nothing. */
    public void place(double bx, double by, double yaw, double cx, double cy, double cYaw) {
        double cosB = Math.cos(yaw);
        double sinB = Math.sin(yaw);
        double cosC = Math.cos(cYaw);
        double sinC = Math.sin(cYaw);
        for (int i = 0; i < points; i++) {
            switch (carrier[i]) {
                case BASE -> put(i, 0, 0, 1, 0);
                case BRIDGE -> put(i, bx, by, cosB, sinB);
                case CARRIAGE -> put(i, cx, cy, cosC, sinC);
            }
        }
        for (int i = 0; i < spans; i++) {
            layStrand(i, i + 1 == points ? 0 : i + 1);
        }
    }

    private void put(int i, double ox, double oy, double cos, double sin) {
        leverX[i] = cos * localX[i] - sin * localY[i];
        leverY[i] = sin * localX[i] + cos * localY[i];
        centreX[i] = ox + leverX[i];
        centreY[i] = oy + leverY[i];
    }

    private void layStrand(int from, int to) {
        double dx = centreX[to] - centreX[from];
        double dy = centreY[to] - centreY[from];
        double kappa = signedRadius[to] - signedRadius[from];
        double d2 = dx * dx + dy * dy;
        double l = Math.sqrt(d2 - kappa * kappa);
        length[from] = l;
        directionX[from] = (l * dx + kappa * dy) / d2;
        directionY[from] = (l * dy - kappa * dx) / d2;
    }

    public Belt belt() {
        return belt;
    }

    public int spans() {
        return spans;
    }

    public int points() {
        return points;
    }

    /** Point that a strand runs to. */
    public int endOf(int span) {
        return span + 1 == points ? 0 : span + 1;
    }

    /** Free length of a strand [m]; not a number where no tangent exists. */
    public double length(int span) {
        return length[span];
    }

    /** Direction of travel along the bridge axis of the base frame [1]. */
    public double directionX(int span) {
        return directionX[span];
    }

    /** Direction of travel along the rails [1]. */
    public double directionY(int span) {
        return directionY[span];
    }

    /** Direction of travel as an angle [rad]. */
    public double heading(int span) {
        return Math.atan2(directionY[span], directionX[span]);
    }

    /** Centre of a wheel or place of an anchor [m, base frame]. */
    public double centreX(int point) {
        return centreX[point];
    }

    /** Centre of a wheel or place of an anchor [m, base frame]. */
    public double centreY(int point) {
        return centreY[point];
    }

    /** Centre seen from the origin of its carrier [m, directions of the base frame]. */
    public double leverX(int point) {
        return leverX[point];
    }

    /** Centre seen from the origin of its carrier [m, directions of the base frame]. */
    public double leverY(int point) {
        return leverY[point];
    }

    /** Radius, positive where the belt turns counter-clockwise, 0 for an anchor [m]. */
    public double signedRadius(int point) {
        return signedRadius[point];
    }

    /** Angle from one strand to another, -pi to pi; its sign alone changes in a mirror [rad]. */
    private double turn(int from, int to) {
        return turn(directionX[from], directionY[from], to);
    }

    /** Angle from a direction to a strand, -pi to pi [rad]. */
    double turn(double fromX, double fromY, int to) {
        double cross = fromX * directionY[to] - fromY * directionX[to];
        double dot = fromX * directionX[to] + fromY * directionY[to];
        return Math.atan2(cross, dot);
    }

    /** Where a strand leaves its first wheel [m, base frame]. */
    public double startX(int span) {
        return centreX[span] + directionY[span] * signedRadius[span];
    }

    /** Where a strand leaves its first wheel [m, base frame]. */
    public double startY(int span) {
        return centreY[span] - directionX[span] * signedRadius[span];
    }

    /** Where a strand meets its second wheel [m, base frame]. */
    public double endX(int span) {
        int to = endOf(span);
        return centreX[to] + directionY[span] * signedRadius[to];
    }

    /** Where a strand meets its second wheel [m, base frame]. */
    public double endY(int span) {
        int to = endOf(span);
        return centreY[to] - directionX[span] * signedRadius[to];
    }

    /** Strand that arrives at a point, or -1 at the start of an open belt. */
    public int arriving(int point) {
        if (point > 0) {
            return point - 1;
        }
        return belt.closed() ? spans - 1 : -1;
    }

    /** Strand that leaves a point, or -1 at the end of an open belt. */
    public int leaving(int point) {
        return point < spans ? point : -1;
    }

    /** Angle over which the belt touches a wheel, 0 to 2 pi; 0 at an anchor [rad]. */
    public double wrap(int point) {
        int in = arriving(point);
        int out = leaving(point);
        if (in < 0 || out < 0 || signedRadius[point] == 0) {
            return 0;
        }
        double turn = Math.signum(signedRadius[point]) * turn(in, out);
        double wrapped = turn - 2 * Math.PI * Math.floor(turn / (2 * Math.PI));
        return wrapped > 2 * Math.PI - 1e-9 ? 0 : wrapped;
    }
}
