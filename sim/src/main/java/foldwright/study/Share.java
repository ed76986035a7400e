// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.lift.Cause;
import java.util.Objects;

/**
 * One cause's share of a total.
 *
 * @param cause where it comes from
 * @param name as a reader is told it, e.g. "weight of deck plate"
 * @param amount its size; negative when it helps
 */
public record Share(Cause cause, String name, Amount amount) {
    public Share {
        Objects.requireNonNull(cause, "cause");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(amount, "amount");
    }

    /** A share named after its cause. */
    public static Share of(Cause cause, Amount amount) {
        return new Share(cause, cause.label(), amount);
    }
}
