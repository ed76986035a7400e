// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import static java.lang.Math.fma;

/** An axle that turns by itself: motor, shaft end, or idler that is a state. */
final class Rotor {
    /** Stiffness of a sticking bearing a unit of inertia: a stick frequency of 1500 rad/s. */
    private static final double STICK = 1500.0 * 1500.0;

    final double inertia;
    final double perInertia;
    final double drag;
    final double stick;

    /** Turn a way of the carriage along the bridge and of the bridge along the rails [rad/m]. */
    double perX;

    double perY;

    // State: angle at n, rate at n - 1/2 before the step, acceleration at n.
    double angle;
    double rate;
    double acceleration;
    double bristle;

    /** Torque of the last evaluation without that of the belts [N m]. */
    double driven;

    /** Rate at n, predicted over half a step with the last acceleration [rad/s]. */
    double predicted;

    /** Angle ahead along it by the belts' damping time [rad]. */
    double ahead;

    private final double lead;

    /** Where belts run on and off its wheels. */
    BeltEnds ends;

    /** The rotor that is its mirror image across x = 0, and 1 where both turn alike; or null. */
    Rotor image;

    double imageSense;

    /** The next rotor of the machine: a chain is walked faster than an array of two. */
    Rotor next;

    /** The next rotor without a motor. */
    Rotor nextFree;

    /**
     * @param lead damping time of the belts [s]
     */
    Rotor(double inertia, double drag, double lead) {
        this.inertia = inertia;
        this.drag = drag;
        this.lead = lead;
        perInertia = 1 / inertia;
        stick = STICK * inertia;
    }

    /** Stands still at an angle [rad]. */
    void stand(double newAngle) {
        angle = newAngle;
        ahead = newAngle;
        rate = 0;
        predicted = 0;
        acceleration = 0;
        bristle = 0;
    }

    /** Friction of the bearing for a step of h [N m]. */
    double friction(double h) {
        double f = LegForces.clip(fma(stick * h, rate, bristle), drag);
        bristle = f;
        return f;
    }

    /** Torque with the pull of the belts at the last evaluation [N m]. */
    double torque() {
        double t = driven;
        for (BeltEnds e = ends; e != null; e = e.next) {
            t -= e.moment();
        }
        return t;
    }

    void advance(double h) {
        double a = torque() * perInertia;
        acceleration = a;
        double w = fma(h, a, rate);
        rate = w;
        double u = fma(0.5 * h, a, w);
        predicted = u;
        double turned = fma(h, w, angle);
        angle = turned;
        ahead = fma(lead, u, turned);
    }
}
