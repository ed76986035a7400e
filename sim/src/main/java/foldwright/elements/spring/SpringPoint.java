// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.spring;

/** Where {@link SpringLaw#evaluate} puts its three values; owned and reused by the caller. */
public final class SpringPoint {
    /** Force or moment [N or N·m]. */
    public double force;

    /** {@code -d force/dx} [N/m or N·m/rad]. */
    public double stiffness;

    /** Energy stored [J]. */
    public double energy;

    void set(double newForce, double newStiffness, double newEnergy) {
        force = newForce;
        stiffness = newStiffness;
        energy = newEnergy;
    }
}
