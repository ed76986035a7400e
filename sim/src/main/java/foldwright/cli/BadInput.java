// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

/** The user's input cannot be used; the message is the whole of what they are told. */
final class BadInput extends RuntimeException {
    private static final long serialVersionUID = 1;

    BadInput(String message) {
        super(message);
    }
}
