// SPDX-License-Identifier: Apache-2.0

/**
 * Helper springs.
 *
 * <p>Two kinds of class. A <i>design</i> ({@link foldwright.elements.spring.CylindricalSpring},
 * {@link foldwright.elements.spring.ConicalSpring}, {@link
 * foldwright.elements.spring.TorsionSpring}, {@link foldwright.elements.spring.GasSpring}) holds
 * what is bought or wound and answers for stress, solid length and buckling. Each makes a {@link
 * foldwright.elements.spring.SpringLaw}: force, stiffness and energy over length or angle, which
 * the solver calls in its inner loop without allocating.
 */
package foldwright.elements.spring;
