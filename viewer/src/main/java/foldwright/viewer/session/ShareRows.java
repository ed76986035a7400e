// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import foldwright.lift.Cause;
import foldwright.lift.PartShares;
import foldwright.lift.Shares;
import foldwright.study.Numerals;
import foldwright.study.Shown;
import foldwright.viewer.session.PartReading.Share;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Rows of shares with their unit and percentage; pieces too small to matter are left out. */
final class ShareRows {
    /** Least share that is told, of the largest. */
    private static final double LEAST = 0.002;

    /** Weights on the deck below this share of the largest are told together. */
    private static final double SMALL = 0.06;

    /** No percentages of a whole that is small beside its pieces. */
    private static final double CANCELS = 0.1;

    private ShareRows() {}

    /** Causes of the push at the feet or of the motor's torque. */
    static List<Share> of(Shares all, Shown unit) {
        List<PartShares.Share> pieces = new ArrayList<>();
        for (Cause c : Cause.values()) {
            pieces.add(new PartShares.Share(c, c.label(), all.of(c)));
        }
        return rows(pieces, all.total(), unit);
    }

    /** Causes of what a pin or an arm carries. */
    static List<Share> of(PartShares.Split split, Shown unit) {
        List<PartShares.Share> named = new ArrayList<>();
        for (PartShares.Share s : gathered(split.shares())) {
            boolean weight = s.cause() == Cause.DECK || s.cause() == Cause.ARMS;
            String name = weight ? "weight of " + s.name() : s.name();
            named.add(new PartShares.Share(s.cause(), name, s.value()));
        }
        return rows(named, split.total(), unit);
    }

    /** The same rows without their numbers, while these are being computed. */
    static List<Share> blank(List<Share> rows) {
        return rows.stream().map(s -> new Share(s.name(), "…", "", 0, s.cause())).toList();
    }

    /** Small weights on the deck as one row after the large ones. */
    private static List<PartShares.Share> gathered(List<PartShares.Share> shares) {
        double most = most(shares);
        List<PartShares.Share> out = new ArrayList<>();
        double rest = 0;
        int small = 0;
        int at = 0;
        PartShares.Share last = null;
        for (PartShares.Share s : shares) {
            if (s.cause() == Cause.DECK && Math.abs(s.value()) < SMALL * most) {
                rest += s.value();
                small++;
                last = s;
            } else {
                out.add(s);
                at += s.cause() == Cause.DECK ? 1 : 0;
            }
        }
        if (small > 0) {
            String name = small == 1 ? last.name() : "other things on the deck";
            out.add(at, new PartShares.Share(Cause.DECK, name, rest));
        }
        return out;
    }

    private static List<Share> rows(List<PartShares.Share> pieces, double total, Shown unit) {
        double most = most(pieces);
        List<Share> out = new ArrayList<>();
        for (PartShares.Share s : pieces) {
            if (Math.abs(s.value()) > LEAST * most) {
                out.add(
                        new Share(
                                s.name(),
                                Numerals.with(s.value(), unit),
                                Math.abs(total) < CANCELS * most ? "" : percent(s.value() / total),
                                s.value() / most,
                                Optional.of(s.cause())));
            }
        }
        return out;
    }

    /** A share of a whole as a percentage. */
    static String percent(double share) {
        double percent = 100 * share;
        return Numerals.fixed(percent, Math.abs(percent) < 9.95 ? 1 : 0) + "\u00a0%";
    }

    private static double most(List<PartShares.Share> shares) {
        return shares.stream().mapToDouble(s -> Math.abs(s.value())).max().orElse(0);
    }
}
