// SPDX-License-Identifier: Apache-2.0

/**
 * Solvers on a mechanism: equilibrium, slow motion along a prescribed coordinate, inverse dynamics,
 * the fixed-step integrator, linearisation. All use the same rows and the same factorisation.
 */
package foldwright.mechanics.solve;
