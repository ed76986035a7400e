// SPDX-License-Identifier: Apache-2.0

/** Synchronous belts: stretch, span tensions, plucked frequency, teeth in mesh, tooth jump. */
package foldwright.elements.belt;
