// SPDX-License-Identifier: Apache-2.0

/**
 * How hard a gantry may accelerate before one of its limits is met, and which; skew at rest apart
 * from skew under acceleration. Entry: {@link foldwright.gantry.limits.AccelerationLimits}.
 */
package foldwright.gantry.limits;
