// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import foldwright.lift.PartShares;
import foldwright.lift.Shares;
import foldwright.study.Numerals;
import foldwright.study.Shown;
import foldwright.study.Split;
import foldwright.viewer.session.PartReading.Share;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Rows of shares with their unit and percentage; pieces too small to matter are left out. */
final class ShareRows {
    private ShareRows() {}

    /** Causes of the push at the feet or of the motor's torque. */
    static List<Share> of(Shares all, Shown unit) {
        return rows(Split.of("", all, unit));
    }

    /** Causes of what a pin or an arm carries. */
    static List<Share> of(PartShares.Split split, Shown unit) {
        return rows(Split.of("", split, unit));
    }

    /** The same rows without their numbers, while these are being computed. */
    static List<Share> blank(List<Share> rows) {
        return rows.stream().map(s -> new Share(s.name(), "…", "", 0, s.cause())).toList();
    }

    private static List<Share> rows(Split split) {
        List<Share> out = new ArrayList<>();
        for (foldwright.study.Share s : split.told()) {
            OptionalDouble part = split.part(s);
            out.add(
                    new Share(
                            s.name(),
                            s.amount().text(),
                            part.isPresent() ? Numerals.percent(part.getAsDouble()) : "",
                            s.amount().si() / split.largest(),
                            Optional.of(s.cause())));
        }
        return out;
    }
}
