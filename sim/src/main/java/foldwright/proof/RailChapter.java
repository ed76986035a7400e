// SPDX-License-Identifier: Apache-2.0
package foldwright.proof;

import foldwright.elements.bearing.PointContact.Elastic;
import foldwright.elements.rail.BlockContact;
import foldwright.elements.rail.BlockLoad;
import foldwright.elements.rail.BlockRating;
import foldwright.elements.rail.BlockRow;
import foldwright.elements.rail.RailSize;
import java.util.ArrayList;
import java.util.List;

/** Miniature profile rails: life, static safety, yaw stiffness, contact stiffness. */
public final class RailChapter implements ProofChapter {
    private static final double MM = 1e-3;
    private static final double UM = 1e-6;
    private static final double KM = 1e3;

    @Override
    public String title() {
        return "Profile rails";
    }

    @Override
    public List<ProofValue> compute() {
        List<ProofValue> values = new ArrayList<>();
        values.addAll(
                block(
                        "9 short under (30, 10) N",
                        RailSize.get("9 short").rating(),
                        new BlockLoad(30, 10, 0.3, 0.5, 0.2),
                        new double[] {465, 5.37634, 3356.72, 1889.88, 2000, 1}));
        values.addAll(
                block(
                        "7 short under (15, 25) N",
                        RailSize.get("7 short").rating(),
                        new BlockLoad(15, 25, 0.1, 0.8, 0.4),
                        new double[] {646, 1.85759, 270.414, 1133.93, 1000, 0}));
        values.addAll(yaw());
        values.addAll(
                contact(
                        "two rows of 8 balls of 1.5875 mm, 50 N",
                        8,
                        1.5875,
                        50,
                        new double[] {4.41942, 1.62058, 30.8531, 46.2797}));
        values.addAll(
                contact(
                        "two rows of 7 balls of 1.2 mm, 30 N",
                        7,
                        1.2,
                        30,
                        new double[] {3.03046, 1.38339, 21.6859, 32.5288}));
        return values;
    }

    /** {@code published}: P, S0, life in km, C for 50 km, travel asked in km, 1 if covered. */
    private static List<ProofValue> block(
            String name, BlockRating rating, BlockLoad load, double[] published) {
        double life = rating.life(load) / KM;
        return new Comparison(
                        "block " + name,
                        1e-3,
                        "recomputed independently; life rule and 2^(1/3) seen on a trade page citing"
                                + " ISO 14728-1 and -2, moment sum catalogue practice from memory")
                .value("equivalent load", rating.equivalentLoad(load), published[0], "N")
                .value("static safety", rating.staticSafety(load), published[1], "1")
                .value("life", life, published[2], "km")
                .value("C for 50 km", rating.ratingFor50Km(), published[3], "N")
                .fact("travel asked is covered", life >= published[4], published[5] == 1)
                .values();
    }

    private static List<ProofValue> yaw() {
        double k = 30 / UM;
        BlockRow one = new BlockRow(k, 18.9 * MM, 0, 3 * UM);
        BlockRow two = new BlockRow(k, 18.9 * MM, 60 * MM, 3 * UM);
        double moment = 10 * 0.15;
        return new Comparison(
                        "blocks of steel length 18.9, 60 apart",
                        1e-3,
                        "recomputed independently; springs spread evenly over the steel length")
                .value("yaw stiffness of one", one.yawStiffness(), 893.025, "N·m/rad")
                .value("yaw stiffness of two", two.yawStiffness(), 55786.1, "N·m/rad")
                .value("yaw of one", moment / one.yawStiffness() / UM, 1679.68, "urad")
                .value("yaw of two", moment / two.yawStiffness() / UM, 26.8884, "urad")
                .value("tip move of two", two.moveAt(0.15, 10) / UM, 4.19993, "um")
                .value("free yaw of one", one.freeYaw() / UM, 317.46, "urad")
                .value("free yaw of two", two.freeYaw() / UM, 100, "urad")
                .values();
    }

    /** {@code published}: ball load N, deflection um, secant and tangent stiffness N/um. */
    private static List<ProofValue> contact(
            String name, int balls, double ballMm, double force, double[] published) {
        BlockContact block =
                new BlockContact(balls, ballMm * MM, 0.53, Math.toRadians(45), Elastic.STEEL);
        return new Comparison(
                        name, 2e-2, "own case recomputed independently; internal geometry assumed")
                .within(1e-3, "ball load", block.ballLoad(force), published[0], "N")
                .value("deflection", block.deflection(force) / UM, published[1], "um")
                .value("secant stiffness", block.secantStiffness(force) * UM, published[2], "N/um")
                .value(
                        "tangent stiffness",
                        block.tangentStiffness(force) * UM,
                        published[3],
                        "N/um")
                .values();
    }
}
