// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import foldwright.quantity.Dimension;
import foldwright.quantity.Printed;

/** Is told of values that cannot be true together, with the key path of one of them. */
interface Contradictions {
    void add(String path, String found, String allowed);

    /** Reports them at the place in a file where that value stands. */
    static Contradictions in(Node root, Problems problems) {
        return (path, found, allowed) -> {
            Node at = KeyPath.nearestOnTheWay(root, path);
            problems.add(ProblemCode.CONTRADICTION, at.start(), path, found, allowed);
        };
    }

    /** A length as messages print it. */
    static String mm(double metres) {
        return plain(Printed.in("mm", metres));
    }

    /** An angle as messages print it. */
    static String degrees(double radians) {
        return plain(Printed.of(Dimension.ANGLE, radians));
    }

    /** Messages go to terminals and logs: ordinary spaces and minus signs. */
    private static String plain(String printed) {
        return printed.replace('\u00A0', ' ').replace("\u202F", "").replace('\u2212', '-');
    }
}
