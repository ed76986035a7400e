// SPDX-License-Identifier: Apache-2.0

/**
 * Numbers with units: what a person writes ("240 mm") and reads. Everywhere else a double is SI.
 */
package foldwright.quantity;
