// SPDX-License-Identifier: Apache-2.0

/**
 * Published gaps and forces at which people get hurt. For showing cautions only: nothing here
 * certifies a machine; local codes and licensed practice decide.
 */
package foldwright.elements.safety;
