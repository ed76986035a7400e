// SPDX-License-Identifier: Apache-2.0

/**
 * Published multibody problems as mechanisms of 3D bodies with all their redundant joints, and the
 * chapters that compare them with their references.
 */
package foldwright.proof.multibody;
