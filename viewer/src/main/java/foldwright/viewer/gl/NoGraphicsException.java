// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.gl;

/**
 * No usable OpenGL (or no display for a window) on this computer. The message is one sentence that
 * says what to do.
 */
public final class NoGraphicsException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public NoGraphicsException(String message) {
        super(message);
    }
}
