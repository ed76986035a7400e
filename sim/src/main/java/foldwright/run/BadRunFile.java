// SPDX-License-Identifier: Apache-2.0
package foldwright.run;

/** A run file that cannot be used; the message says where, what was found and what is allowed. */
public final class BadRunFile extends Exception {
    private static final long serialVersionUID = 1L;

    BadRunFile(String message) {
        super(message);
    }
}
