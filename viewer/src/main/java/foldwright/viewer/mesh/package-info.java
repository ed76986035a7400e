// SPDX-License-Identifier: Apache-2.0

/**
 * Solids as triangles with the edges that are drawn as ink lines. No graphics calls here: a {@link
 * foldwright.viewer.mesh.Mesh} is built once by a {@link foldwright.viewer.mesh.Solid} and then
 * uploaded or exported. Lengths in metres, right-handed, outside counter-clockwise.
 */
package foldwright.viewer.mesh;
