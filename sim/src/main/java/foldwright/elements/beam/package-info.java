// SPDX-License-Identifier: Apache-2.0

/** Cross-sections and straight beams in bending and torsion, for arms, bridges and brackets. */
package foldwright.elements.beam;
