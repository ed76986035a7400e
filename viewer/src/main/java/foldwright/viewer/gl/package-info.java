// SPDX-License-Identifier: Apache-2.0

/**
 * The thin layer over OpenGL 3.3 core: a surface (window or headless), programs, targets, textures
 * and buffers. Every object that owns a GL name is {@link java.lang.AutoCloseable}; everything is
 * called from the thread that made the {@link foldwright.viewer.gl.GlSurface}. Knows nothing of
 * machines.
 */
package foldwright.viewer.gl;
