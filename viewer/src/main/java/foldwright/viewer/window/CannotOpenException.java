// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.window;

/** A file that cannot be shown; the message tells all its problems. */
public final class CannotOpenException extends Exception {
    private static final long serialVersionUID = 1L;

    CannotOpenException(String message) {
        super(message);
    }
}
