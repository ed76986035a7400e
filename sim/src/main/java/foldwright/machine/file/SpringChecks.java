// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import foldwright.machine.Machine;
import foldwright.machine.linkage.FoldGeometry;
import foldwright.machine.spring.AtFoot;
import foldwright.machine.spring.AtPins;
import foldwright.machine.spring.BetweenPoints;
import foldwright.machine.spring.Coil;
import foldwright.machine.spring.ConicalCoil;
import foldwright.machine.spring.GasSpring;
import foldwright.machine.spring.HelperSpring;
import foldwright.machine.spring.RatedCoil;
import foldwright.machine.spring.SpringEnds;
import foldwright.machine.spring.SpringLaw;
import foldwright.machine.spring.TorsionCoil;
import foldwright.machine.spring.Upright;

/** Whether springs can exist, fit in, and are never squeezed beyond their solid length. */
final class SpringChecks {
    private static final int POSES = 21;
    private static final double ROUNDING = 1e-9;

    private final Machine machine;
    private final FoldGeometry geometry;
    private final Contradictions report;
    private final double flat;
    private final double top;

    SpringChecks(Machine machine, Contradictions report) {
        this.machine = machine;
        this.geometry = new FoldGeometry(machine.lift());
        this.report = report;
        this.flat = geometry.angle(machine.lift().travel().fold().low());
        this.top = geometry.angle(machine.lift().travel().fold().high());
    }

    void check() {
        for (int i = 0; i < machine.springs().size(); i++) {
            HelperSpring spring = machine.springs().get(i);
            String path = "springs[" + i + "]";
            checkLaw(spring.law(), path + ".law");
            checkPlace(spring, path + ".place");
        }
    }

    private void checkLaw(SpringLaw law, String path) {
        if (law instanceof Coil coil) {
            checkWire(coil.wire(), coil.meanDiameter(), path);
            checkSolid(coil.closedLength(), coil.freeLength(), path);
        } else if (law instanceof RatedCoil coil) {
            checkSolid(coil.solidLength(), coil.freeLength(), path);
        } else if (law instanceof ConicalCoil coil) {
            checkWire(coil.wire(), coil.smallDiameter(), path);
            if (coil.smallDiameter() >= coil.largeDiameter()) {
                String allowed = "less than the largest coil, " + mm(coil.largeDiameter());
                report.add(path + ".smallDiameter", "as large as the largest coil", allowed);
            }
        } else if (law instanceof TorsionCoil coil) {
            checkWire(coil.wire(), coil.meanDiameter(), path);
        }
    }

    private void checkWire(double wire, double meanDiameter, String path) {
        if (wire >= meanDiameter) {
            String allowed = "less than the mean diameter, " + mm(meanDiameter);
            report.add(path + ".wire", "the wire leaves no coil", allowed);
        }
    }

    private void checkSolid(double solid, double free, String path) {
        if (solid >= free) {
            report.add(
                    path + ".freeLength",
                    mm(free) + " free is not longer than " + mm(solid) + " solid",
                    "longer than its solid length");
        }
    }

    private void checkPlace(HelperSpring spring, String path) {
        if (spring.place() instanceof Upright upright) {
            double room = geometry.height(flat) + upright.gapAtPins();
            checkRoom(spring.law(), room, path + ".gapAtPins");
        } else if (spring.place() instanceof AtFoot foot) {
            checkRoom(
                    spring.law(),
                    freeLength(spring.law()) - foot.squeezeAtFlat(),
                    path + ".squeezeAtFlat");
        } else if (spring.place() instanceof AtPins pins && pins.freeAngle() <= flat) {
            String allowed = "more than " + Contradictions.degrees(flat) + ", the angle when flat";
            report.add(path + ".freeAngle", "the spring never acts", allowed);
        } else if (spring.place() instanceof BetweenPoints points) {
            for (int i = 0; i < points.ends().size(); i++) {
                checkEnds(spring, points.ends().get(i), path + ".ends[" + i + "]");
            }
        }
    }

    private void checkRoom(SpringLaw law, double room, String path) {
        double solid = shortest(law);
        if (room < solid - ROUNDING) {
            report.add(
                    path,
                    "folded flat, the spring would be " + mm(room) + " long",
                    "at least its solid length, " + mm(solid));
        }
    }

    private void checkEnds(HelperSpring spring, SpringEnds ends, String path) {
        boolean there =
                AnchorChecks.check(ends.from(), path + ".from", machine.lift(), report)
                        & AnchorChecks.check(ends.to(), path + ".to", machine.lift(), report);
        if (!there) {
            return;
        }
        double low = Double.MAX_VALUE;
        double high = 0;
        for (int i = 0; i < POSES; i++) {
            AnchorPoints pose =
                    new AnchorPoints(machine.lift(), flat + (top - flat) * i / (POSES - 1));
            double length = AnchorPoints.distance(pose.at(ends.from()), pose.at(ends.to()));
            low = Math.min(low, length);
            high = Math.max(high, length);
        }
        if (low < shortest(spring.law()) - ROUNDING) {
            String allowed = "at least " + mm(shortest(spring.law()));
            report.add(path, "over the fold the spring gets as short as " + mm(low), allowed);
        }
        if (spring.law() instanceof GasSpring gas && high > gas.extendedLength() + ROUNDING) {
            String allowed = "at most " + mm(gas.extendedLength());
            report.add(path, "over the fold the spring gets as long as " + mm(high), allowed);
        }
    }

    private static double shortest(SpringLaw law) {
        if (law instanceof Coil coil) {
            return coil.closedLength();
        } else if (law instanceof RatedCoil coil) {
            return coil.solidLength();
        } else if (law instanceof GasSpring gas) {
            return gas.extendedLength() - gas.stroke();
        }
        // a conical coil may close to one wire when its coils lie inside each other
        return law instanceof ConicalCoil coil ? coil.wire() : 0;
    }

    private static double freeLength(SpringLaw law) {
        if (law instanceof Coil coil) {
            return coil.freeLength();
        } else if (law instanceof RatedCoil coil) {
            return coil.freeLength();
        } else if (law instanceof GasSpring gas) {
            return gas.extendedLength();
        }
        return law instanceof ConicalCoil coil ? coil.freeLength() : 0;
    }

    private static String mm(double metres) {
        return Contradictions.mm(metres);
    }
}
