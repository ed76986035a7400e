// SPDX-License-Identifier: Apache-2.0

/**
 * A described lift as a linkage with its drive: force curve, folding in time, holding unpowered.
 */
package foldwright.lift;
