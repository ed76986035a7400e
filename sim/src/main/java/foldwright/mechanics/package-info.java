// SPDX-License-Identifier: Apache-2.0

/**
 * Bodies, joints, force elements and the one fixed-step solver. Usable by itself; knows no machine.
 *
 * <p>{@link foldwright.mechanics.Mechanism} is what a caller builds; the solvers are in {@code
 * solve}. Below stand {@code body} (poses, masses, state), {@code joint} (constraint rows), {@code
 * force} (laws) and {@code sparse} (the factorisation).
 */
package foldwright.mechanics;
