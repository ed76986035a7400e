// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.spring;

/** How a spring is held. */
public enum Contact {
    /** Both ends are fastened: it pushes and pulls. */
    ATTACHED,
    /** It is only touched: it pushes until its free length is reached. */
    TOUCHING
}
