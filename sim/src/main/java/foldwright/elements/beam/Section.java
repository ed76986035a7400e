// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.beam;

import foldwright.elements.Domain;

/**
 * Cross-section of a straight beam, its width and height along its two axes of symmetry.
 *
 * <p>Torsion: solid rectangles after Roark (from memory), within 0.6 % of the exact series; thin
 * closed tubes after Bredt, some per cent low for walls above a tenth of the side; round ones
 * exact.
 */
public sealed interface Section {
    /** Direction in which the load bends the beam. */
    enum Bending {
        ALONG_HEIGHT,
        ALONG_WIDTH
    }

    /** A [m²]. */
    double area();

    /** I for a load along that direction [m⁴]. */
    double secondMoment(Bending bending);

    /** Distance of the outermost fibre from the axis of bending [m]. */
    double extremeFibre(Bending bending);

    /** J, so that the twist is T L/(G J) [m⁴]. */
    double torsionConstant();

    /** Largest shear stress under a torque [Pa]. */
    double torsionStress(double torque);

    /** Bending stress at the outermost fibre, M c/I [Pa]. */
    default double bendingStress(double moment, Bending bending) {
        return moment * extremeFibre(bending) / secondMoment(bending);
    }

    /**
     * Solid rectangle.
     *
     * @param width [m]
     * @param height [m]
     */
    record Rectangle(double width, double height) implements Section {
        public Rectangle {
            Domain.positive("section width", width, "m");
            Domain.positive("section height", height, "m");
        }

        @Override
        public double area() {
            return width * height;
        }

        @Override
        public double secondMoment(Bending bending) {
            return bending == Bending.ALONG_HEIGHT
                    ? width * height * height * height / 12
                    : height * width * width * width / 12;
        }

        @Override
        public double extremeFibre(Bending bending) {
            return (bending == Bending.ALONG_HEIGHT ? height : width) / 2;
        }

        /** J = a b^3 [1/3 - 0.21 (b/a)(1 - b^4/(12 a^4))], a the longer side. */
        @Override
        public double torsionConstant() {
            double a = Math.max(width, height);
            double b = Math.min(width, height);
            double q = b / a;
            return a * b * b * b * (1.0 / 3 - 0.21 * q * (1 - q * q * q * q / 12));
        }

        /**
         * In the middle of the longer side, 3T/(a b^2) [1 + 0.6095 q + 0.8865 q^2 - 1.8023 q^3 +
         * 0.91 q^4], q = b/a (Roark, table of torsion, from memory); within 0.5 % of the exact
         * series.
         */
        @Override
        public double torsionStress(double torque) {
            double a = Math.max(width, height);
            double b = Math.min(width, height);
            double q = b / a;
            double shape = 1 + q * (0.6095 + q * (0.8865 + q * (-1.8023 + q * 0.91)));
            return 3 * torque * shape / (a * b * b);
        }

        /** The short form T (3 + 1.8 b/a)/(a b^2) of many textbooks; up to 4 % low [Pa]. */
        public double shortFormTorsionStress(double torque) {
            double a = Math.max(width, height);
            double b = Math.min(width, height);
            return torque * (3 + 1.8 * b / a) / (a * b * b);
        }
    }

    /**
     * Rectangular tube of even wall.
     *
     * @param width outside [m]
     * @param height outside [m]
     * @param wall thickness [m]
     */
    record RectangularTube(double width, double height, double wall) implements Section {
        public RectangularTube {
            Domain.positive("section width", width, "m");
            Domain.positive("section height", height, "m");
            Domain.positive("section wall", wall, "m");
            refuseThickWall(wall, Math.min(width, height));
        }

        @Override
        public double area() {
            return width * height - (width - 2 * wall) * (height - 2 * wall);
        }

        @Override
        public double secondMoment(Bending bending) {
            double b = bending == Bending.ALONG_HEIGHT ? width : height;
            double h = bending == Bending.ALONG_HEIGHT ? height : width;
            double bi = b - 2 * wall;
            double hi = h - 2 * wall;
            return (b * h * h * h - bi * hi * hi * hi) / 12;
        }

        @Override
        public double extremeFibre(Bending bending) {
            return (bending == Bending.ALONG_HEIGHT ? height : width) / 2;
        }

        private double enclosedArea() {
            return (width - wall) * (height - wall);
        }

        /** Bredt: J = 4 A_m^2 t/perimeter of the middle line. */
        @Override
        public double torsionConstant() {
            double perimeter = 2 * (width + height - 2 * wall);
            return 4 * enclosedArea() * enclosedArea() * wall / perimeter;
        }

        /** Bredt: T/(2 A_m t); corners carry more. */
        @Override
        public double torsionStress(double torque) {
            return torque / (2 * enclosedArea() * wall);
        }
    }

    /**
     * Solid round bar.
     *
     * @param diameter [m]
     */
    record Round(double diameter) implements Section {
        public Round {
            Domain.positive("section diameter", diameter, "m");
        }

        @Override
        public double area() {
            return Math.PI * diameter * diameter / 4;
        }

        @Override
        public double secondMoment(Bending bending) {
            return Math.PI * Math.pow(diameter, 4) / 64;
        }

        @Override
        public double extremeFibre(Bending bending) {
            return diameter / 2;
        }

        @Override
        public double torsionConstant() {
            return Math.PI * Math.pow(diameter, 4) / 32;
        }

        @Override
        public double torsionStress(double torque) {
            return torque * diameter / 2 / torsionConstant();
        }
    }

    /**
     * Round tube.
     *
     * @param diameter outside [m]
     * @param wall thickness [m]
     */
    record RoundTube(double diameter, double wall) implements Section {
        public RoundTube {
            Domain.positive("section diameter", diameter, "m");
            Domain.positive("section wall", wall, "m");
            refuseThickWall(wall, diameter);
        }

        private double inside() {
            return diameter - 2 * wall;
        }

        @Override
        public double area() {
            return Math.PI * (diameter * diameter - inside() * inside()) / 4;
        }

        @Override
        public double secondMoment(Bending bending) {
            return torsionConstant() / 2;
        }

        @Override
        public double extremeFibre(Bending bending) {
            return diameter / 2;
        }

        @Override
        public double torsionConstant() {
            return Math.PI * (Math.pow(diameter, 4) - Math.pow(inside(), 4)) / 32;
        }

        @Override
        public double torsionStress(double torque) {
            return torque * diameter / 2 / torsionConstant();
        }
    }

    private static void refuseThickWall(double wall, double side) {
        if (!(2 * wall < side)) {
            throw new IllegalArgumentException(
                    "section wall is "
                            + wall
                            + " m, allowed: below half the side, "
                            + side / 2
                            + " m");
        }
    }
}
