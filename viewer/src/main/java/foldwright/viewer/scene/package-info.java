// SPDX-License-Identifier: Apache-2.0

/**
 * A machine as drawn: parts with shape and material, hung on bodies. Built once from the machine's
 * description; a picture then only needs the places of the bodies ({@link
 * foldwright.viewer.scene.Pose}), made from the height by {@link
 * foldwright.viewer.scene.LiftMotion} and {@link foldwright.viewer.scene.GantryMotion}. No graphics
 * calls.
 *
 * <p>World frame [m]: the base frame of the machine file raised so that the table is z = 0.
 */
package foldwright.viewer.scene;
