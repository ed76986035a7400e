// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

/** Where a share of a total comes from, in the order in which shares are stacked. */
public enum Cause {
    DECK("deck and gantry"),
    ARMS("arms"),
    SPRINGS("helper springs"),
    PINS("pin friction"),
    FEET("guide friction"),
    THREAD("thread friction"),
    COLLAR("collar friction"),
    BELT("belt loss"),
    INERTIA("inertia");

    private final String words;

    Cause(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
