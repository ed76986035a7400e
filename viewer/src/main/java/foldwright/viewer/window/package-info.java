// SPDX-License-Identifier: Apache-2.0

/**
 * The window. {@link foldwright.viewer.window.Desk} holds what the user has before them and what
 * they changed, {@link foldwright.viewer.window.Hand} turns keys and mouse into calls to it, {@link
 * foldwright.viewer.window.WindowApp} draws when something changed.
 */
package foldwright.viewer.window;
