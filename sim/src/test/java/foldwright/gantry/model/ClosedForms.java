// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import foldwright.proof.GantryCases;

/**
 * Quasi-static closed forms of the single-loop H and the crossed two-loop layout, strand-line
 * lengths. Own derivation from the belt lengths; the force terms of the H layout agree with K. S.
 * Sollmann, M. K. Jouaneh, D. Lavender, IEEE/ASME Trans. Mechatronics 15(2) 2010, 280-290, eq. 19.
 */
record ClosedForms(GantryCases c) {
    static final double W = GantryCases.W;
    static final double EA = GantryCases.EA;

    double forceX() {
        return GantryCases.CARRIAGE * c.load().ax() + c.load().carriageFriction();
    }

    double forceY() {
        return (GantryCases.BRIDGE + GantryCases.CARRIAGE) * c.load().ay()
                + c.load().railFriction();
    }

    double p1() {
        return (forceX() + forceY()) / 2;
    }

    double p2() {
        return (forceY() - forceX()) / 2;
    }

    double frontLeft() {
        return c.y() + W + c.x();
    }

    double frontRight() {
        return c.y() + W - c.x();
    }

    double loopBack() {
        return 2 * GantryCases.DEPTH + 2 * (GantryCases.DEPTH - c.y()) + 2 * W;
    }

    double back1() {
        return GantryCases.DEPTH + 2 * W + (GantryCases.DEPTH - c.y()) + (W - c.x());
    }

    double back2() {
        return GantryCases.DEPTH + 2 * W + (GantryCases.DEPTH - c.y()) + (W + c.x());
    }

    double inertiaMoment() {
        return -GantryCases.CARRIAGE * c.x() * c.load().ay()
                + GantryCases.CARRIAGE * GantryCases.CENTRE * c.load().ax();
    }

    double skewSingleLoop() {
        return (-W * forceX() + inertiaMoment()) / GantryCases.GUIDE;
    }

    double[] tensionsSingleLoop() {
        double sum = frontLeft() + frontRight() + loopBack();
        double ta =
                c.pretension1()
                        - (loopBack() * (forceX() + forceY()) / 2 + frontRight() * forceX()) / sum;
        return new double[] {ta, ta + (forceX() + forceY()) / 2, ta + forceX()};
    }

    double kappa1() {
        return (back1() - frontLeft()) / (back1() + frontLeft());
    }

    double kappa2() {
        return (back2() - frontRight()) / (back2() + frontRight());
    }

    double beltYawStiffness() {
        double loop = back1() + frontLeft();
        return 4 * W * W * (EA / loop + EA / loop);
    }

    double skewCrossed() {
        double pull = 2 * W * (c.pretension1() - c.pretension2());
        double drive = -W * (kappa1() * p1() - kappa2() * p2());
        return (pull + drive + inertiaMoment()) / (GantryCases.GUIDE + beltYawStiffness());
    }

    /** Skew held at 0, plus the common change that the skew brings to a whole loop. */
    double[] tensionsCrossed() {
        double loop = back1() + frontLeft();
        double common = 2 * W * skewCrossed() * EA / loop;
        double t1 = c.pretension1() - common;
        double t2 = c.pretension2() + common;
        return new double[] {
            t1 - p1() * back1() / loop,
            t1 + p1() * frontLeft() / loop,
            t2 - p2() * back2() / loop,
            t2 + p2() * frontRight() / loop
        };
    }

    /** Way of the tool in x and y, rotors held. */
    double[] toolSingleLoop() {
        double ka = EA / frontLeft();
        double kb = EA / loopBack();
        double kc = EA / frontRight();
        double d = ka * kc + kb * (ka + kc);
        double s1 = -p1();
        double s2 = -p2();
        double theta = skewSingleLoop();
        double u1 = (s1 * (kc + kb) - s2 * kb) / d + W * theta;
        double u2 = (s2 * (ka + kb) - s1 * kb) / d - W * theta;
        return tool(u1, u2, theta);
    }

    double[] toolCrossed() {
        double theta = skewCrossed();
        double k1 = EA / frontLeft() + EA / back1();
        double k2 = EA / frontRight() + EA / back2();
        double u1 = -p1() / k1 + kappa1() * W * theta;
        double u2 = -p2() / k2 - kappa2() * W * theta;
        return tool(u1, u2, theta);
    }

    private double[] tool(double u1, double u2, double theta) {
        return new double[] {
            (u1 - u2) / 2 - GantryCases.TOOL * theta, (u1 + u2) / 2 + c.x() * theta
        };
    }
}
