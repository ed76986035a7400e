// SPDX-License-Identifier: Apache-2.0
package foldwright.proof;

import foldwright.elements.screw.Collar;
import foldwright.elements.screw.ScrewThread;
import foldwright.elements.screw.ThreadStress;
import foldwright.elements.screw.TrapezoidalThread;
import foldwright.elements.table.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Power screws: torque, efficiency, self-locking, stress, and the table of trapezoidal sizes. */
public final class ThreadChapter implements ProofChapter {
    private static final double MM = 1e-3;
    private static final double MPA = 1e6;
    private static final String OWN =
            "own case recomputed independently from Shigley 9th ed. Eqs. 8-1 to 8-6";

    @Override
    public String title() {
        return "Lead screws";
    }

    @Override
    public List<ProofValue> compute() {
        List<ProofValue> values = new ArrayList<>();
        values.addAll(squareThread());
        values.addAll(squareThreadStress());
        values.addAll(largeTrapezoidal());
        values.addAll(acme());
        values.addAll(small("Tr8x2", 25, 0.15, Collar.NONE, 5.19651, 0.0218544, 0.00555184));
        values.addAll(small("Tr8x8P2", 25, 0.15, Collar.NONE, 19.9905, 0.0481384, -0.0172675));
        values.addAll(
                small(
                        "Tr10x2",
                        40,
                        0.12,
                        new Collar(0.0015, 10 * MM),
                        4.04611,
                        0.0357055,
                        0.00984569));
        values.addAll(smallRatios());
        values.addAll(table());
        return values;
    }

    private static List<ProofValue> squareThread() {
        ScrewThread thread = ScrewThread.square(32 * MM, 4 * MM, 2);
        Collar collar = new Collar(0.08, 40 * MM);
        double raise = thread.raiseTorque(6400, 0.08, collar);
        double lower = thread.lowerTorque(6400, 0.08, collar);
        double efficiency = thread.efficiency(0.08, collar);
        return new Comparison(
                        "square thread d 32 p 4, two starts",
                        1e-3,
                        "Shigley's Mechanical Engineering Design, 9th ed. 2011, Example 8-1 pp."
                                + " 419-421")
                .value("lead angle", Math.toDegrees(thread.leadAngle()), 4.85179, "deg")
                .value("torque to raise", raise, 26.177, "N·m")
                .printed("torque to raise", raise, 26.18, 0.01, "N·m")
                .value("torque to lower", lower, 9.77443, "N·m")
                .printed("torque to lower", lower, 9.77, 0.01, "N·m")
                .printed("thread part of it", thread.lowerTorque(6400, 0.08), -0.466, 0.001, "N·m")
                .printed("collar part of it", collar.torque(6400), 10.24, 0.01, "N·m")
                .value("efficiency", efficiency, 0.311294, "1")
                .printed("efficiency", efficiency, 0.311, 0.001, "1")
                .fact("thread alone holds", thread.selfLocks(0.08), false)
                .value(
                        "friction at the self-locking limit",
                        thread.frictionAtSelfLocking(),
                        0.0848826,
                        "1")
                .value("back-drive torque", thread.backDriveTorque(6400, 0.08), 0.465572, "N·m")
                .value("back-drive efficiency", thread.backDriveEfficiency(0.08), 0.0571342, "1")
                .values();
    }

    private static List<ProofValue> squareThreadStress() {
        ScrewThread thread = ScrewThread.square(32 * MM, 4 * MM, 2);
        double torque = thread.raiseTorque(6400, 0.08, new Collar(0.08, 40 * MM));
        ThreadStress stress = ThreadStress.of(thread, 6400, torque);
        return new Comparison(
                        "square thread d 32 p 4, two starts",
                        1e-3,
                        "Shigley 9th ed. Example 8-1 pp. 419-421, recomputed from Eqs. 8-7 to 8-14")
                .value("body torsion", stress.bodyTorsion() / MPA, 6.07317, "MPa")
                .value("body thrust", stress.bodyAxial() / MPA, -10.3938, "MPa")
                .value("flank pressure of the first turn", stress.bearing() / MPA, -12.9022, "MPa")
                .value("root bending of the first turn", stress.rootBending() / MPA, 41.4712, "MPa")
                .value("von Mises at the root", stress.vonMises() / MPA, 48.6784, "MPa")
                .value("largest shear at the root", stress.maximumShear() / MPA, 27.3307, "MPa")
                .values();
    }

    private static List<ProofValue> largeTrapezoidal() {
        ScrewThread thread = ScrewThread.trapezoidal(100 * MM, 12 * MM, 2);
        return new Comparison(
                        "trapezoidal d 100 P 12, two starts",
                        1e-4,
                        "V. B. Bhandari, Design of Machine Elements, Example 6.2 (title from"
                                + " memory, numbers seen in its public companion archive)")
                .value("lead angle", Math.toDegrees(thread.leadAngle()), 4.64625, "deg")
                .value("torque to raise", thread.raiseTorque(300e3, 0.15), 3378.16, "N·m")
                .value("torque to lower", thread.lowerTorque(300e3, 0.15), 1030.69, "N·m")
                .value("efficiency", thread.efficiency(0.15), 0.33921, "1")
                .value(
                        "friction at the self-locking limit",
                        thread.frictionAtSelfLocking(),
                        0.0785014,
                        "1")
                .fact("thread alone holds", thread.selfLocks(0.15), true)
                .values();
    }

    private static List<ProofValue> acme() {
        ScrewThread thread =
                new ScrewThread(
                        38.1 * MM, 34.1097 * MM, 31.75 * MM, 6.35 * MM, 1, ScrewThread.ACME);
        double force = 55602.8;
        double raise = thread.raiseTorque(force, 0.15);
        return new Comparison(
                        "Acme 1 1/2-4",
                        1e-3,
                        "R. L. Mott, Machine Elements in Mechanical Design, 4th ed., Example"
                                + " Problem 17-1 p. 703")
                .value("lead angle", Math.toDegrees(thread.leadAngle()), 3.39126, "deg")
                .value("torque to raise", raise, 205, "N·m")
                .within(5e-3, "torque to raise, book 1809 lb in", raise, 204.39, "N·m")
                .value("torque to lower", thread.lowerTorque(force, 0.15), 89.9048, "N·m")
                .value("efficiency", thread.efficiency(0.15), 0.274117, "1")
                .value(
                        "friction at the self-locking limit",
                        thread.frictionAtSelfLocking(),
                        0.0573704,
                        "1")
                .fact("thread alone holds", thread.selfLocks(0.15), true)
                .values();
    }

    private static List<ProofValue> small(
            String name,
            double force,
            double friction,
            Collar collar,
            double leadAngle,
            double raise,
            double lower) {
        ScrewThread thread = TrapezoidalThread.get(name).thread();
        return new Comparison(name + " at " + force + " N, f " + friction, 1e-3, OWN)
                .value("lead angle", Math.toDegrees(thread.leadAngle()), leadAngle, "deg")
                .value("torque to raise", thread.raiseTorque(force, friction, collar), raise, "N·m")
                .value("torque to lower", thread.lowerTorque(force, friction, collar), lower, "N·m")
                .values();
    }

    private static List<ProofValue> smallRatios() {
        ScrewThread tr8x2 = TrapezoidalThread.get("Tr8x2").thread();
        ScrewThread tr8x8 = TrapezoidalThread.get("Tr8x8P2").thread();
        ScrewThread tr10x2 = TrapezoidalThread.get("Tr10x2").thread();
        Collar ball = new Collar(0.0015, 10 * MM);
        return new Comparison("small trapezoidal threads", 1e-3, OWN)
                .value("Tr8x2 efficiency at f 0.15", tr8x2.efficiency(0.15), 0.364126, "1")
                .fact("Tr8x2 holds at f 0.15", tr8x2.selfLocks(0.15), true)
                .value("Tr8x2 limit friction", tr8x2.frictionAtSelfLocking(), 0.0878468, "1")
                .value("Tr8x8P2 efficiency at f 0.15", tr8x8.efficiency(0.15), 0.661238, "1")
                .fact("Tr8x8P2 holds at f 0.15", tr8x8.selfLocks(0.15), false)
                .value("Tr8x8P2 limit friction", tr8x8.frictionAtSelfLocking(), 0.351387, "1")
                .value(
                        "Tr8x8P2 back-drive torque at 25 N",
                        tr8x8.backDriveTorque(25, 0.15),
                        0.0172675,
                        "N·m")
                .value(
                        "Tr8x8P2 back-drive efficiency",
                        tr8x8.backDriveEfficiency(0.15),
                        0.542475,
                        "1")
                .value(
                        "Tr10x2 efficiency at f 0.12 on a ball collar",
                        tr10x2.efficiency(0.12, ball),
                        0.356595,
                        "1")
                .fact("Tr10x2 holds at f 0.12", tr10x2.selfLocks(0.12), true)
                .value("Tr10x2 limit friction", tr10x2.frictionAtSelfLocking(), 0.0683253, "1")
                .values();
    }

    /**
     * Every size of the table: lead angle, limit friction and efficiencies to its printed digits.
     */
    private static List<ProofValue> table() {
        Comparison all =
                new Comparison(
                        "table of trapezoidal threads",
                        1e-3,
                        "ISO 2904:1977 basic dimensions (public reprint, recomputed); Shigley 9th"
                                + " ed. Eqs. 8-4, 8-5");
        for (Table.Row row : Table.shipped("threads_trapezoidal.csv").rows()) {
            String name = row.text("designation");
            ScrewThread thread = TrapezoidalThread.get(name).thread();
            ScrewThread byRule =
                    ScrewThread.trapezoidal(
                            thread.majorDiameter(), thread.pitch(), thread.starts());
            double angle = Math.toDegrees(thread.leadAngle());
            double limit = thread.frictionAtSelfLocking();
            all.printed(
                            name + " d3 by rule",
                            byRule.rootDiameter() / MM,
                            cell(row, "d3_screw_root_mm"),
                            1e-3,
                            "mm")
                    .printed(name + " lead angle", angle, cell(row, "lead_angle_deg"), 1e-4, "deg")
                    .printed(
                            name + " limit friction",
                            limit,
                            cell(row, "f_selflock_limit"),
                            1e-5,
                            "1");
            for (double f : new double[] {0.10, 0.15, 0.20}) {
                String column = String.format(Locale.ROOT, "eff_raise_f%.2f", f);
                all.printed(
                        name + " efficiency at f " + f,
                        thread.efficiency(f),
                        cell(row, column),
                        1e-4,
                        "1");
            }
        }
        return all.values();
    }

    private static double cell(Table.Row row, String column) {
        return row.number(column, Table.ONE);
    }
}
