// SPDX-License-Identifier: Apache-2.0
package foldwright.proof;

import foldwright.elements.bearing.BallGeometry;
import foldwright.elements.bearing.BearingLife;
import foldwright.elements.bearing.BearingLife.Weibull;
import foldwright.elements.bearing.DeepGrooveBearing;
import foldwright.elements.bearing.PlainPin;
import foldwright.elements.bearing.PointContact;
import foldwright.elements.bearing.PointContact.Elastic;
import foldwright.elements.bearing.PreloadedPair;
import foldwright.elements.bearing.ThrustContact;
import foldwright.elements.material.PlasticAllowable;
import java.util.ArrayList;
import java.util.List;

/** Rolling bearings: life, equivalent loads, Hertz contacts, preload; and plain pins. */
public final class BearingChapter implements ProofChapter {
    private static final double MM = 1e-3;
    private static final double UM = 1e-6;
    private static final double MPA = 1e6;
    private static final double KN = 1e3;
    private static final double PER_MINUTE = Math.PI / 30;
    private static final double HOUR = 3600;
    private static final double MILLION = 1e6;
    private static final String OWN =
            "own case recomputed independently; internal geometry assumed";

    @Override
    public String title() {
        return "Bearings and pins";
    }

    @Override
    public List<ProofValue> compute() {
        List<ProofValue> values = new ArrayList<>();
        values.addAll(lifeWithReliability());
        values.addAll(catalogueRating());
        values.addAll(smallBearing());
        values.addAll(preloadedPair());
        values.addAll(thrustBearing());
        values.addAll(radialDeflection());
        values.addAll(sphereOnFlat());
        values.addAll(pinInPrintedHole());
        return values;
    }

    private static List<ProofValue> lifeWithReliability() {
        double load = 1.2 * 1.898 * KN;
        double speed = 300 * PER_MINUTE;
        double turns = 30000 * HOUR * speed / (2 * Math.PI);
        double byWeibull = Weibull.SHIGLEY.ratingFor(load, turns, 0.9) / KN;
        double hours = BearingLife.seconds(19.5 * KN, load, speed) / HOUR;
        double reached = turns / BearingLife.turns(19.5 * KN, load);
        double reliability = Weibull.SHIGLEY.reliability(reached);
        return new Comparison(
                        "ball bearing for 30 000 h",
                        1e-3,
                        "Shigley 8th ed. Problem 11-1 with its published solution")
                .value("turns wanted", turns / MILLION, 540, "10^6")
                .value("C by the Weibull form", byWeibull, 18.5884, "kN")
                .printed("C by the Weibull form", byWeibull, 18.59, 0.01, "kN")
                .value("C by L10", BearingLife.ratingFor(load, turns) / KN, 18.5471, "kN")
                .value("L10h of C = 19.5 kN", hours, 34865.7, "h")
                .value("reliability of C = 19.5 kN", reliability, 0.918745, "1")
                .printed("reliability of C = 19.5 kN", reliability, 0.919, 0.001, "1")
                .values();
    }

    private static List<ProofValue> catalogueRating() {
        double turns = 5000 * HOUR * 1725 / 60;
        double rating = BearingLife.ratingFor(1.77929 * KN, turns) / KN;
        return new Comparison(
                        "catalogue rating for 5000 h at 1725 1/min",
                        1e-3,
                        "Shigley 9th ed. Example 11-1, from memory; recomputed")
                .value("turns wanted", turns / MILLION, 517.5, "10^6")
                .value("C", rating, 14.2851, "kN")
                .within(1e-3, "C, book 3211 lbf", rating, 14.28, "kN")
                .values();
    }

    private static List<ProofValue> smallBearing() {
        DeepGrooveBearing bearing = DeepGrooveBearing.get("625");
        double p = bearing.equivalentLoad(60, 40);
        double seconds = BearingLife.seconds(bearing.dynamicRating(), p, 600 * PER_MINUTE);
        return new Comparison(
                        "5 x 16 x 5 under 60 N radial, 40 N axial",
                        2e-3,
                        "recomputed independently; ISO 281 and ISO 76 factors, typical ratings")
                .value("F_a/C0", 40 / bearing.staticRating(), 0.105263, "1")
                .value("e", bearing.axialThreshold(40), 0.296356, "1")
                .value("Y", bearing.axialFactor(40), 1.46822, "1")
                .value("P", p, 92.3287, "N")
                .value("L10", bearing.lifeTurns(60, 40).orElse(0) / MILLION, 1882.36, "10^6")
                .value("L10h", seconds / HOUR, 52287.9, "h")
                .value("P0", bearing.equivalentStaticLoad(60, 40), 60, "N")
                .value("s0", bearing.staticSafety(60, 40), 6.33333, "1")
                .value("friction torque", bearing.frictionTorque(p), 0.000346233, "N·m")
                .values();
    }

    private static List<ProofValue> preloadedPair() {
        BallGeometry single =
                new BallGeometry(9, 2.381 * MM, 0.52, 12 * MM, Math.toRadians(25), Elastic.STEEL);
        PreloadedPair pair = new PreloadedPair(single, 50);
        double ball = single.ballLoadOfThrust(50);
        double shortForm =
                BallGeometry.palmgrenApproach(ball, 2.381 * MM) / Math.sin(single.contactAngle());
        return new Comparison("angular-contact pair, preload 50 N", 1e-2, OWN)
                .value("ball load", ball, 13.1456, "N")
                .value("normal approach", single.normalApproach(ball) / UM, 1.89254, "um")
                .value("axial approach of one", pair.preloadDeflection() / UM, 4.47812, "um")
                .within(1e-3, "axial approach by the short form", shortForm / UM, 4.30333, "um")
                .within(0.1, "short form against full", shortForm / UM, 4.47812, "um")
                .value(
                        "peak pressure, inner race",
                        single.innerContact().peakPressure(ball) / MPA,
                        1330.77,
                        "MPa")
                .value("axial stiffness of the pair", pair.stiffness() * UM, 33.4962, "N/um")
                .value("displacement at 20 N", pair.displacement(20) / UM, 0.597527, "um")
                .value("displacement at 60 N", pair.displacement(60) / UM, 1.80384, "um")
                .value("displacement at 150 N", pair.displacement(150) / UM, 4.83674, "um")
                .value("load that frees the rear side", pair.unloadingForce(), 141.421, "N")
                .values();
    }

    private static List<ProofValue> thrustBearing() {
        ThrustContact chart =
                new ThrustContact(16, 22.225 * MM, 2 * 0.5232, Math.toRadians(40), 896.7 * MPA);
        BallGeometry geometry =
                new BallGeometry(
                        16, 22.225 * MM, 0.5232, 125.3 * MM, Math.toRadians(40), Elastic.STEEL);
        ThrustContact hertz = ThrustContact.of(geometry);
        double thrust = 17800;
        double chartAngle = Math.toDegrees(chart.angle(thrust));
        double chartMove = chart.deflection(thrust) / MM;
        return new Comparison(
                        "bearing size 218, 40 degrees, 17 800 N",
                        1e-3,
                        "T. A. Harris, Rolling Bearing Analysis, 218 example, data and answer from"
                                + " memory; relation recomputed")
                .value("contact angle, chart constant", chartAngle, 41.5925, "deg")
                .within(1e-2, "contact angle, book", chartAngle, 41.6, "deg")
                .value("axial deflection, chart constant", chartMove, 0.0383207, "mm")
                .within(1e-2, "axial deflection, book", chartMove, 0.0386, "mm")
                .value(
                        "contact angle, full Hertz",
                        Math.toDegrees(hertz.angle(thrust)),
                        41.5022,
                        "deg")
                .within(
                        1e-2,
                        "axial deflection, full Hertz",
                        hertz.deflection(thrust) / MM,
                        0.0360981,
                        "mm")
                .within(0.1, "full Hertz against book", hertz.deflection(thrust) / MM, 0.0386, "mm")
                .values();
    }

    private static List<ProofValue> radialDeflection() {
        BallGeometry geometry = new BallGeometry(7, 3 * MM, 0.52, 10.5 * MM, 0, Elastic.STEEL);
        double ball = geometry.fullestBall(60);
        double move = geometry.radialDeflection(60);
        double shortForm = BallGeometry.palmgrenApproach(ball, 3 * MM);
        return new Comparison(
                        "60 N on 7 balls of 3 mm",
                        1e-2,
                        OWN + "; factor 4.37 seen in a bearing maker's technical note")
                .within(1e-3, "fullest ball", ball, 37.4571, "N")
                .value("deflection, full Hertz", move / UM, 3.52984, "um")
                .within(1e-3, "deflection, short form", shortForm / UM, 3.3843, "um")
                .within(0.1, "short form against full", shortForm / UM, 3.52984, "um")
                .value("secant stiffness", 60 / move * UM, 16.998, "N/um")
                .value("tangent stiffness", geometry.radialStiffness(60) * UM, 25.4969, "N/um")
                .value(
                        "peak pressure, inner race",
                        geometry.innerContact().peakPressure(ball) / MPA,
                        1722.88,
                        "MPa")
                .values();
    }

    private static List<ProofValue> sphereOnFlat() {
        PointContact contact =
                PointContact.spheres(
                        1.5 * MM, Double.POSITIVE_INFINITY, Elastic.STEEL, Elastic.STEEL);
        return new Comparison(
                        "steel sphere R 1.5 on a flat, 20 N",
                        1e-4,
                        "K. L. Johnson, Contact Mechanics, 1985 ch. 4 (from memory)")
                .value("contact radius", contact.longHalfAxis(20) / UM, 58.3618, "um")
                .value("approach", contact.approach(20) / UM, 2.27074, "um")
                .value("peak pressure", contact.peakPressure(20) / MPA, 2803.58, "MPa")
                .values();
    }

    private static List<ProofValue> pinInPrintedHole() {
        PlainPin pin = new PlainPin(3 * MM, 6 * MM);
        double allowed = PlasticAllowable.get("pin in printed hole, static, PLA").longTerm();
        return new Comparison(
                        "3 mm pin in a printed hole, 40 N",
                        1e-3,
                        "recomputed independently; allowables are common practice, no source")
                .value("pressure", pin.pressure(40) / MPA, 2.22222, "MPa")
                .value("double shear", pin.doubleShear(40) / MPA, 2.82942, "MPa")
                .value("allowed for long", allowed / MPA, 5, "MPa")
                .value("safety", allowed / pin.pressure(40), 2.25, "1")
                .values();
    }
}
