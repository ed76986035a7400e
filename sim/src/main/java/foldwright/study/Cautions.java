// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.lift.Cause;
import foldwright.lift.CurvePoint;
import foldwright.lift.ForceCurve;
import foldwright.lift.HoldResult;
import foldwright.machine.Machine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What can hurt: closing gaps, stored energy, a falling deck, turning parts, the tool. */
final class Cautions {
    /** Gap in which a finger is not crushed [m]. */
    private static final double FINGER = 0.025;

    /** Gap in which a hand is not crushed [m]. */
    private static final double HAND = 0.100;

    private static final String GAPS =
            "Gaps of ISO 13854:2017 (EN 349), as listed by a national accident insurer.";

    private Cautions() {}

    static List<Caution> of(Machine m, ForceCurve curve, Optional<HoldResult> hold) {
        List<Caution> out = new ArrayList<>();
        out.add(scissor(m));
        out.add(underDeck(m));
        springs(m, curve, out);
        out.add(drop(curve, hold.flatMap(HoldResult::runDown)));
        out.add(
                new Caution(
                        "Turning parts",
                        "Screws, belts and pulleys draw in hair, sleeves and cables. Cover them, and"
                                + " stop the "
                                + SourceWords.of(m).noun()
                                + " before reaching in.",
                        ""));
        if (m.gantry().isPresent() || m.tool().isPresent()) {
            out.add(
                    new Caution(
                            "Tool",
                            "The tool may be hot, sharp or moving, and starts without warning. Keep"
                                    + " hands off its work area while the machine is powered.",
                            ""));
        }
        return out;
    }

    private static String mm(double metres) {
        return Numerals.fixed(Shown.MILLIMETRE.fromSi(metres), 0) + "\u00a0mm";
    }

    private static Caution scissor(Machine m) {
        double flat = Bench.flat(m);
        double limit = FINGER * m.lift().stages();
        String words =
                limit > flat
                        ? "Between "
                                + mm(flat)
                                + " and "
                                + mm(limit)
                                + " the openings of the scissor are under 25\u00a0mm and closing"
                                + " arms shear a finger. Below "
                                + mm(Math.min(HAND * m.lift().stages(), Bench.top(m)))
                                + " they close on a hand."
                        : "The openings of the scissor stay over 25\u00a0mm, but arms still cross"
                                + " like shears.";
        return new Caution("Fingers", words, GAPS);
    }

    private static Caution underDeck(Machine m) {
        double bed = m.base().bedHeight().orElse(m.base().pinHeight()) - m.base().pinHeight();
        double offset = bed + m.deck().undersideBelowPins();
        double finger = FINGER + offset;
        double hand = HAND + offset;
        double flat = Bench.flat(m);
        double top = Bench.top(m);
        String words =
                hand <= flat
                        ? "Under the deck the gap stays over 100\u00a0mm, which a hand needs."
                        : "Under the deck the gap is less than 100\u00a0mm, which a hand needs, "
                                + below(hand, top)
                                + (finger <= flat
                                        ? "."
                                        : ", and less than 25\u00a0mm, which a finger needs, "
                                                + below(finger, top)
                                                + ".");
        return new Caution("Hand under the deck", words, GAPS);
    }

    private static String below(double height, double top) {
        return height < top
                ? "below " + mm(height) + " of deck pin height"
                : "over the whole travel";
    }

    /** Energy the springs give from flat to top: their share of the foot force over foot travel. */
    private static void springs(Machine m, ForceCurve curve, List<Caution> out) {
        if (m.springs().isEmpty()) {
            return;
        }
        double energy = Math.abs(work(curve.raising(), Cause.SPRINGS));
        out.add(
                new Caution(
                        "Stored in springs",
                        "Folded, the helper springs hold "
                                + Numerals.with(energy, Shown.JOULE)
                                + ". Secure the deck before removing a pin, a nut or the latch; a"
                                + " freed spring flies.",
                        "Integral of the spring share of the force curve."));
    }

    /**
     * Work of one cause over the foot travel [J]. Integrated over height, where the force of a
     * weight is constant: dx = dH / (dH/dx).
     */
    static double work(List<CurvePoint> points, Cause cause) {
        double work = 0;
        for (int i = 1; i < points.size(); i++) {
            CurvePoint a = points.get(i - 1);
            CurvePoint b = points.get(i);
            work += 0.5 * (upward(a, cause) + upward(b, cause)) * (b.height() - a.height());
        }
        return work;
    }

    /** A share of the foot force as a force at the deck [N]. */
    private static double upward(CurvePoint p, Cause cause) {
        return p.footShares().of(cause) / p.at().heightPerTravel();
    }

    private static Caution drop(ForceCurve curve, Optional<HoldResult.RunDown> runDown) {
        double springs = work(curve.raising(), Cause.SPRINGS);
        double energy =
                work(curve.raising(), Cause.DECK) + work(curve.raising(), Cause.ARMS) + springs;
        String words =
                "Fully open, the raised weight"
                        + (springs == 0 ? "" : " less what the springs carry")
                        + " stores "
                        + Numerals.with(energy, Shown.JOULE)
                        + ". A stripped nut, a broken belt or a pulled pin lets"
                        + " go of it: prop the deck before working under it.";
        words += runDown.map(Cautions::sinking).orElse("");
        return new Caution("Falling deck", words, "Integral of the force curve without friction.");
    }

    private static String sinking(HoldResult.RunDown r) {
        return switch (r.end()) {
            case ARRIVED ->
                    " With the power off it runs down and arrives with "
                            + Numerals.with(r.energy(), Shown.JOULE)
                            + ".";
            case STANDS -> "";
            case MOVING -> " With the power off it creeps down.";
            case NOT_SOLVED ->
                    " With the power off it runs down; with what energy it arrives could not be"
                            + " computed.";
        };
    }
}
