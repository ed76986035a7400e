// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.lift.Cause;
import java.util.Objects;

/**
 * One cause's share of a total.
 *
 * @param cause where it comes from
 * @param amount its size; negative when it helps
 */
public record Share(Cause cause, Amount amount) {
    public Share {
        Objects.requireNonNull(cause, "cause");
        Objects.requireNonNull(amount, "amount");
    }
}
