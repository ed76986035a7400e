// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

/**
 * Mass of the bridge or the carriage.
 *
 * @param mass [kg]
 * @param yawInertia about the vertical through the centre of mass [kg m2]
 * @param centreX centre of mass from the body's origin, along the bridge [m]
 * @param centreY along the rails [m]
 * @param centreZ above the plane of the body's blocks [m]
 */
public record BodyMass(
        double mass, double yawInertia, double centreX, double centreY, double centreZ) {
    public BodyMass {
        Checks.positive("mass", mass);
        Checks.positive("yaw inertia", yawInertia);
        Checks.finite("centre x", centreX);
        Checks.finite("centre y", centreY);
        Checks.finite("centre z", centreZ);
    }
}
