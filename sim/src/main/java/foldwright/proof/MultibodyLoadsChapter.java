// SPDX-License-Identifier: Apache-2.0
package foldwright.proof;

import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.joint.PairJoint;
import foldwright.mechanics.solve.Equilibrium;
import foldwright.mechanics.solve.Linearisation;
import foldwright.mechanics.solve.Settings;
import foldwright.mechanics.solve.Statics;
import foldwright.mechanics.solve.Stepper;
import foldwright.proof.multibody.ElasticScissor;
import foldwright.proof.multibody.FourBar;
import foldwright.proof.multibody.Scissor;
import foldwright.proof.multibody.SliderCrank;
import java.util.ArrayList;
import java.util.List;

/** Loads of linkages: inverse dynamics, statics and motion of scissors, sag of elastic arms. */
final class MultibodyLoadsChapter implements ProofChapter {
    private static final double INCH = 0.0254;
    private static final double POUND = 4.4482216152605;

    @Override
    public String title() {
        return "Linkage loads";
    }

    @Override
    public List<ProofValue> compute() {
        List<ProofValue> all = new ArrayList<>();
        all.addAll(sliderCrankMotion());
        all.addAll(sliderCrankLoads());
        all.addAll(fourBarMotion());
        all.addAll(fourBarPounds());
        all.addAll(fourBarDesk());
        all.addAll(scissorStatics());
        all.addAll(scissorSag());
        all.addAll(scissorPull());
        all.addAll(scissorDrop());
        all.addAll(scissorSwing());
        return all;
    }

    private static List<ProofValue> sliderCrankMotion() {
        SliderCrank s =
                new SliderCrank(
                        new SliderCrank.Parts(.254, .508, .1, .1, 1e-3, .1), Math.PI / 4, 1, 0);
        return new Comparison(
                        "MB-06a slider-crank",
                        1e-7,
                        "course sheet with Norton's symbols, recomputed")
                .value("rod rate", -s.rodRate(), 0.3779644730, "rad/s")
                .value("slider speed", -s.slider().y(), 0.2474894779, "m/s")
                .value("slider acceleration", s.slider().z(), -0.1893028875, "m/s2")
                .values();
    }

    private static List<ProofValue> sliderCrankLoads() {
        // angle, mu, A x, A y, B x, B y, N, T
        double[][] table = {
            {30, 0, -4919.002280, 376.822575, -2098.581101, 1096.481229, -1096.481229, 139.2919531},
            {135, 0, 3322.905756, -1240.859121, 1317.231273, -223.108092, 223.108092, -73.6114647},
            {300, 0, -1704.803026, 207.047480, -562.939641, -1039.437874, 1039.437874, -68.6439494},
            {
                30,
                .1,
                -5031.036819,
                400.686734,
                -2210.615640,
                1120.345388,
                -1120.345388,
                143.1261650
            },
            {135, .1, 3301.262245, -1234.186141, 1295.587762, -216.435111, 216.435111, -73.0821765},
            {300, .1, -1604.731136, 245.766456, -462.867751, -1000.718897, 1000.718897, -63.3427351}
        };
        List<ProofValue> all = new ArrayList<>();
        for (double[] r : table) {
            SliderCrank s =
                    new SliderCrank(
                            SliderCrank.Parts.CLEARANCE_LITERATURE,
                            Math.toRadians(r[0]),
                            5000 * Math.PI / 30,
                            r[1]);
            String name = "MB-06b slider-crank " + (int) r[0] + " deg, mu " + r[1];
            Comparison c =
                    new Comparison(
                            name,
                            1e-6,
                            "data of Ravn 1998, Flores et al. 2006 (from memory); Newton-Euler 8 x 8");
            c.value("A x", s.onRod().x(), r[2], "N").value("A y", s.onRod().y(), r[3], "N");
            c.value("B x", s.onSlider().x(), r[4], "N").value("B y", s.onSlider().y(), r[5], "N");
            c.value("N", s.guideForce(), r[6], "N").value("T", s.torque(), r[7], "N m");
            all.addAll(c.values());
        }
        return all;
    }

    private static List<ProofValue> fourBarMotion() {
        FourBar f =
                new FourBar(
                        new FourBar.Link(.04, .1, 0, 0, 1e-4),
                        new FourBar.Link(.12, .1, 0, 0, 1e-4),
                        new FourBar.Link(.08, .1, 0, 0, 1e-4),
                        new FourBar.Drive(.1, Math.toRadians(40), 25, 15, 0, 0),
                        Vec3.ZERO,
                        Vec3.ZERO);
        return new Comparison(
                        "MB-07a four-bar",
                        1e-8,
                        "Norton, Design of Machinery, position and acceleration example (from memory),"
                                + " recomputed")
                .value("coupler rate", f.rates()[0], -4.1209144153, "rad/s")
                .value("rocker rate", f.rates()[1], 6.9979852422, "rad/s")
                .value("coupler acceleration", f.accelerations()[0], 296.0891931743, "rad/s2")
                .value("rocker acceleration", f.accelerations()[1], 470.1335302610, "rad/s2")
                .values();
    }

    private static List<ProofValue> fourBarPounds() {
        double slug = POUND / (386 * INCH);
        double inertia = POUND * INCH;
        FourBar.Link crank =
                new FourBar.Link(5 * INCH, 1.5 * slug, 3 * INCH, Math.toRadians(30), .4 * inertia);
        FourBar.Link coupler =
                new FourBar.Link(
                        15 * INCH, 7.7 * slug, 9 * INCH, Math.toRadians(45), 1.5 * inertia);
        FourBar.Link rocker = new FourBar.Link(10 * INCH, 5.8 * slug, 5 * INCH, 0, .8 * inertia);
        FourBar.Drive drive =
                new FourBar.Drive(19 * INCH, Math.toRadians(60), 25, -40, 0, 120 * inertia);
        double load = Math.toRadians(330);
        Vec3 force = new Vec3(80 * POUND * Math.cos(load), 80 * POUND * Math.sin(load), 0);
        Vec3 at = polar(9 * INCH, 45).plus(polar(3 * INCH, 100));
        FourBar f = new FourBar(crank, coupler, rocker, drive, force, at);
        double[] want = {
            -522.93112, -477.99934, 525.00542, 445.58840, -5.82523, 388.78118, -90.02233, 345.44058
        };
        Comparison c =
                new Comparison(
                        "MB-07b four-bar",
                        1e-5,
                        "Norton, Design of Machinery, force example (from memory), recomputed 9 x 9");
        for (int i = 0; i < 8; i++) {
            c.value("pin force " + (i + 1), f.forces()[i], want[i], "N");
        }
        c.value("torque", f.torque(), 27.48215761, "N m");
        c.within(5e-3, "torque of the book", f.torque() / inertia, 243.2, "lbf in");
        return c.values();
    }

    private static Vec3 polar(double r, double degrees) {
        double a = Math.toRadians(degrees);
        return new Vec3(r * Math.cos(a), r * Math.sin(a), 0);
    }

    private static List<ProofValue> fourBarDesk() {
        FourBar f =
                new FourBar(
                        new FourBar.Link(.03, .02, .015, 0, 3e-6),
                        new FourBar.Link(.09, .06, .045, 0, 4.5e-5),
                        new FourBar.Link(.07, .05, .035, 0, 2.2e-5),
                        new FourBar.Drive(.08, Math.toRadians(75), 12, 50, 9.81, -.05),
                        Vec3.ZERO,
                        Vec3.ZERO);
        double[] want = {
            -1.12391250,
            -0.14330513,
            1.09824263,
            0.30165942,
            0.90090848,
            0.74610897,
            0.80063802,
            1.21109787
        };
        Comparison c = new Comparison("MB-07c desk four-bar", 1e-6, "own case, Newton-Euler 9 x 9");
        for (int i = 0; i < 8; i++) {
            c.value("pin force " + (i + 1), f.forces()[i], want[i], "N");
        }
        return c.value("torque", f.torque(), 0.0306190760, "N m").values();
    }

    private static List<ProofValue> scissorStatics() {
        double g = Scissor.GRAVITY;
        double d = Math.PI / 180;
        List<ProofValue> all = new ArrayList<>();
        all.addAll(scissor("S1", new Scissor.Case(1, .2, 20 * d, .3 / g, 20 / g, .5), 55.77379161));
        all.addAll(
                scissor("S2", new Scissor.Case(2, .16, 15 * d, .25 / g, 30 / g, .5), 227.65509926));
        all.addAll(
                scissor("S3", new Scissor.Case(3, .12, 35 * d, .2 / g, 12 / g, .25), 53.98399465));
        all.addAll(scissor("S4", new Scissor.Case(1, 1, 30 * d, 0, 1000 / g, .5), 1732.05080757));
        all.addAll(scissor("S5", new Scissor.Case(1, .2, 20 * d, 0, 20 / g, .8), 54.94954839));
        return all;
    }

    private static List<ProofValue> scissor(String name, Scissor.Case set, double force) {
        Comparison c =
                new Comparison(
                        "MB-12 scissor " + name,
                        1e-6,
                        "virtual work and 6n x 6n free bodies; Spackman, NOSC TD 1550, 1989");
        Scissor s = new Scissor(set);
        Equilibrium e = s.moving(0, 0);
        c.value("foot force", s.pull(e), force, "N");
        double tan = Math.tan(set.angle());
        double w = set.platformMass() * Scissor.GRAVITY;
        double arms = 2 * set.armMass() * Scissor.GRAVITY;
        double thrust = 0;
        for (int k = set.stages() - 1; k >= 0; k--) {
            PairJoint pin = s.centres.get(k);
            double below = thrust + (w + arms * (set.stages() - 1 - k) + arms / 2) / tan;
            c.value(
                    "centre pin " + (k + 1) + " x",
                    Scissor.force(e, pin).x(),
                    -thrust - below,
                    "N");
            thrust = below;
            if (k > 0) {
                c.value("left pin x " + k, Scissor.force(e, s.lefts.get(k - 1)).x(), -thrust, "N");
                c.value("right pin x " + k, Scissor.force(e, s.rights.get(k - 1)).x(), thrust, "N");
            }
        }
        return c.values();
    }

    private static List<ProofValue> scissorSag() {
        double width = .003;
        double depth = .012;
        ElasticScissor.Beam beam =
                new ElasticScissor.Beam(
                        69e9 * width * Math.pow(depth, 3) / 12, 69e9 * width * depth);
        double d = Math.PI / 180;
        return new Comparison(
                        "MB-13 elastic scissor", 1e-6, "strain energy and a plane-frame model")
                .value("1 stage", sag(1, .20, 20 * d, beam, 20), 209.740896, "um")
                .value("2 stages", sag(2, .16, 15 * d, beam, 30), 1757.002473, "um")
                .value("3 stages", sag(3, .12, 35 * d, beam, 12), 697.262306, "um")
                .values();
    }

    private static double sag(
            int stages, double arm, double angle, ElasticScissor.Beam beam, double load) {
        return 1e6 * load * new ElasticScissor(stages, arm, angle, beam).sagPerForce();
    }

    private static Scissor moving(double degrees) {
        return new Scissor(new Scissor.Case(2, .16, Math.toRadians(degrees), .025, 3, .5));
    }

    private static List<ProofValue> scissorPull() {
        Scissor low = moving(12);
        Scissor high = moving(45);
        return new Comparison(
                        "MB-14 scissor pull",
                        1e-4,
                        "energy with an effective inertia; 400 point masses")
                .value("12 deg, steady", low.pull(low.moving(-.02, 0)), 265.6512916927, "N")
                .value("12 deg, -0.5 m/s2", low.pull(low.moving(-.02, -.5)), 399.9447947925, "N")
                .value("45 deg, -0.5 m/s2", high.pull(high.moving(-.02, -.5)), 65.8385377105, "N")
                .value(
                        "platform speed at 12 deg",
                        low.moving(-.02, 0).state().v[6 * low.platform.index() + 1],
                        .1881852044,
                        "m/s")
                .values();
    }

    private static List<ProofValue> scissorDrop() {
        Scissor s = moving(60);
        s.foot.release();
        Stepper run = new Stepper(s.mechanism, s.mechanism.start(), Settings.ofStep(1e-4));
        double end = Math.toRadians(10);
        double before = s.angle(run.state());
        double now = before;
        while (now > end && run.step() == Stepper.Outcome.DONE) {
            before = now;
            now = s.angle(run.state());
        }
        boolean down = now <= end;
        double time = down ? run.state().time - 1e-4 * (end - now) / (before - now) : Double.NaN;
        return new Comparison("MB-14 scissor drop", 1e-3, "energy quadrature")
                .value("time from 60 to 10 deg", time, 0.21230344669, "s")
                .near("ledger's closing error", run.ledger().closing(), 0, 1e-5, "J")
                .values();
    }

    private static List<ProofValue> scissorSwing() {
        Comparison c = new Comparison("MB-14 scissor on a spring", 1e-5, "energy quadrature");
        Scissor low = moving(25).withSpring(1500, .06);
        Scissor high = moving(58).withSpring(1500, .06);
        Equilibrium unstable = new Statics(low.mechanism).frictionless(low.mechanism.start());
        Equilibrium stable = new Statics(high.mechanism).frictionless(high.mechanism.start());
        c.value("unstable angle", Math.toDegrees(low.angle(unstable.state())), 25.2025410, "deg");
        c.value("stable angle", Math.toDegrees(high.angle(stable.state())), 57.8987915, "deg");
        double f = new Linearisation(high.mechanism, stable).modes(1).get(0).frequency();
        c.value("frequency", f, 2.1589003221, "Hz");
        boolean falls = !new Linearisation(low.mechanism, unstable).modes(1).get(0).stable();
        c.near("the other one is unstable", falls ? 1 : 0, 1, 0, "1");
        c.value("period of a 1 deg swing", period(1), 0.4635346230, "s");
        c.value("period of a 10 deg swing", period(10), 0.5104770541, "s");
        return c.values();
    }

    private static double period(double degrees) {
        double rest = Math.toRadians(57.8987915);
        Scissor s = moving(57.8987915 + degrees).withSpring(1500, .06);
        Stepper run = new Stepper(s.mechanism, s.mechanism.start(), Settings.ofStep(2e-4));
        double before = s.angle(run.state());
        double first = Double.NaN;
        while (run.step() == Stepper.Outcome.DONE) {
            double now = s.angle(run.state());
            if (before > rest && now <= rest) {
                double t = run.state().time - 2e-4 * (rest - now) / (before - now);
                if (first > 0) {
                    return t - first;
                }
                first = t;
            }
            before = now;
        }
        return Double.NaN;
    }
}
