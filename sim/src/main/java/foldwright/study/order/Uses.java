// SPDX-License-Identifier: Apache-2.0
package foldwright.study.order;

import foldwright.study.Check;
import java.util.List;
import java.util.Optional;

/** Finds the check that weighs the load of a part against what it may carry. */
final class Uses {
    private final List<Check> checks;

    Uses(List<Check> checks) {
        this.checks = List.copyOf(checks);
    }

    /** The check of that id, if it knows both load and limit. */
    Optional<OrderLine.Use> of(String id) {
        return checks.stream().filter(c -> c.id().equals(id)).flatMap(Uses::known).findFirst();
    }

    /** The tightest check of that id that speaks of a named part. */
    Optional<OrderLine.Use> of(String id, String name) {
        return checks.stream()
                .filter(c -> c.id().equals(id) && c.title().contains(name))
                .flatMap(Uses::known)
                .min((a, b) -> Double.compare(a.outcome().margin(), b.outcome().margin()));
    }

    private static java.util.stream.Stream<OrderLine.Use> known(Check check) {
        boolean both =
                Double.isFinite(check.outcome().required().si())
                        && Double.isFinite(check.outcome().available().si());
        return both
                ? java.util.stream.Stream.of(new OrderLine.Use(check.title(), check.outcome()))
                : java.util.stream.Stream.empty();
    }
}
