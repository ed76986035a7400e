// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.route;

/** How free idlers enter the moving model. */
public enum IdlerModel {
    /** Their inertia and drag ride on carriage and bridge; tension passes through them. */
    LUMPED,
    /** Every idler with inertia has its own angle, and a section of belt on each side. */
    STATES
}
