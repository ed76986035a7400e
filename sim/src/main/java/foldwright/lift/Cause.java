// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

/** What a share of a force or torque is spent on. */
public enum Cause {
    DECK("deck"),
    ARMS("arms"),
    SPRINGS("springs"),
    PINS("pins"),
    GUIDES("slider guides"),
    THREAD("thread"),
    COLLAR("collar"),
    BELT("belt"),
    INERTIA("inertia"),
    WIND_UP("wind-up");

    private final String label;

    Cause(String label) {
        this.label = label;
    }

    /** The word printed in tables and legends. */
    public String label() {
        return label;
    }
}
