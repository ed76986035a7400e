// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.lift.Cause;
import foldwright.lift.PartShares;
import foldwright.lift.Shares;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A load and what it is made of.
 *
 * @param words what is split, e.g. "force on the back centre pin 1"
 * @param whole its size
 * @param shares they add up to {@code whole}; negative ones relieve
 */
public record Split(String words, Amount whole, List<Share> shares) {
    /** Least share that is told, of the largest. */
    private static final double LEAST = 0.002;

    /** Weights on the deck below this share of the largest are told together. */
    private static final double SMALL = 0.06;

    /** No percentages of a whole that is small beside its pieces. */
    private static final double CANCELS = 0.1;

    public Split {
        Objects.requireNonNull(words, "words");
        Objects.requireNonNull(whole, "whole");
        shares = List.copyOf(shares);
    }

    /** The push at the feet or the torque of the motor, cause by cause. */
    public static Split of(String words, Shares all, Shown unit) {
        List<Share> shares = new ArrayList<>();
        for (Cause c : Cause.values()) {
            if (all.of(c) != 0) {
                shares.add(Share.of(c, Amount.of(all.of(c), unit)));
            }
        }
        return new Split(words, Amount.of(all.total(), unit), shares);
    }

    /** What a pin or an arm carries; small weights on the deck are told together. */
    public static Split of(String words, PartShares.Split part, Shown unit) {
        List<Share> shares = new ArrayList<>();
        for (PartShares.Share s : gathered(part.shares())) {
            boolean weight = s.cause() == Cause.DECK || s.cause() == Cause.ARMS;
            String name = weight ? "weight of " + s.name() : s.name();
            shares.add(new Share(s.cause(), name, Amount.of(s.value(), unit)));
        }
        return new Split(words, Amount.of(part.total(), unit), shares);
    }

    /** Small weights on the deck as one piece after the large ones. */
    private static List<PartShares.Share> gathered(List<PartShares.Share> shares) {
        double most = shares.stream().mapToDouble(s -> Math.abs(s.value())).max().orElse(0);
        List<PartShares.Share> out = new ArrayList<>();
        List<PartShares.Share> small = new ArrayList<>();
        int at = 0;
        for (PartShares.Share s : shares) {
            if (s.cause() == Cause.DECK && Math.abs(s.value()) < SMALL * most) {
                small.add(s);
            } else {
                out.add(s);
                at += s.cause() == Cause.DECK ? 1 : 0;
            }
        }
        if (!small.isEmpty()) {
            String name = small.size() == 1 ? small.get(0).name() : "other things on the deck";
            double rest = small.stream().mapToDouble(PartShares.Share::value).sum();
            out.add(at, new PartShares.Share(Cause.DECK, name, rest));
        }
        return out;
    }

    /** The shares large enough to be told. */
    public List<Share> told() {
        return above(LEAST);
    }

    /** The shares above a part [1] of the largest. */
    public List<Share> above(double part) {
        double least = part * largest();
        return shares.stream().filter(s -> Math.abs(s.amount().si()) > least).toList();
    }

    /** Size of the largest share, in the unit of the whole [SI]. */
    public double largest() {
        return shares.stream().mapToDouble(s -> Math.abs(s.amount().si())).max().orElse(0);
    }

    /** A share over the whole [1]; empty where the whole is small beside its pieces. */
    public OptionalDouble part(Share share) {
        return Math.abs(whole.si()) < CANCELS * largest()
                ? OptionalDouble.empty()
                : OptionalDouble.of(share.amount().si() / whole.si());
    }
}
