// SPDX-License-Identifier: Apache-2.0
package foldwright.proof;

import foldwright.elements.safety.BodyPart;
import foldwright.elements.safety.ForceLimit;
import foldwright.elements.safety.ReachDistance;
import foldwright.elements.safety.SafetyGap;
import java.util.List;

/** Crush gaps, reach distances and force limits: what a caution quotes. It certifies nothing. */
public final class SafetyChapter implements ProofChapter {
    private static final double MM = 1e-3;

    @Override
    public String title() {
        return "Safety gaps";
    }

    @Override
    public List<ProofValue> compute() {
        Comparison all =
                new Comparison(
                        "crush gap",
                        1e-12,
                        "ISO 13854:2017 as listed by a national accident insurer; ISO 13857:2019"
                                + " Table 4; EN 12453 as summarised by a trade federation");
        gap(all, BodyPart.FINGER, 25);
        gap(all, BodyPart.HAND, 100);
        gap(all, BodyPart.ARM, 120);
        gap(all, BodyPart.FOOT, 120);
        gap(all, BodyPart.TOES, 50);
        gap(all, BodyPart.LEG, 180);
        gap(all, BodyPart.HEAD, 300);
        gap(all, BodyPart.BODY, 500);
        List<BodyPart> caught =
                SafetyGap.violated(60 * MM, 12 * MM).stream().map(SafetyGap::part).toList();
        double reach =
                ReachDistance.needed(ReachDistance.Shape.SLOT, 12 * MM).orElse(Double.NaN) / MM;
        return all.fact("60 to 12 mm, finger in danger", caught.contains(BodyPart.FINGER), true)
                .fact("60 to 12 mm, hand in danger", caught.contains(BodyPart.HAND), true)
                .value("static force to show", ForceLimit.staticCrushing().force(), 150, "N")
                .value("peak force to show", ForceLimit.dynamicCrushing().force(), 400, "N")
                .value("reach through a 12 mm slot", reach, 100, "mm")
                .values();
    }

    private static void gap(Comparison all, BodyPart part, double publishedMm) {
        all.value(part.tableName(), SafetyGap.get(part).minimum() / MM, publishedMm, "mm");
    }
}
