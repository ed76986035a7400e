// SPDX-License-Identifier: Apache-2.0

/**
 * Writes the machine as glTF 2.0 (.glb): parts as nodes, the unfolding as an animation, loads as
 * vertex colours, creases as lines. Standard: Khronos glTF 2.0 (ISO/IEC 12113:2022) with
 * KHR_materials_unlit.
 */
package foldwright.viewer.glb;
