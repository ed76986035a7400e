// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import foldwright.machine.Machine;
import foldwright.machine.linkage.ArmPlanes;
import foldwright.machine.linkage.FoldGeometry;
import foldwright.machine.linkage.Lift;
import foldwright.machine.linkage.Opening;
import foldwright.machine.linkage.OpeningRange;
import foldwright.machine.linkage.Stop;
import foldwright.machine.linkage.StopSide;

/** Whether the linkage closes, folds and fits on its base and deck. */
final class LiftChecks {
    private static final double ROUNDING = 1e-9;

    private final Machine machine;
    private final Lift lift;
    private final FoldGeometry geometry;
    private final Contradictions report;

    LiftChecks(Machine machine, Contradictions report) {
        this.machine = machine;
        this.lift = machine.lift();
        this.geometry = new FoldGeometry(lift);
        this.report = report;
    }

    /** Reports what is wrong; true if the folding range makes sense, so that poses exist. */
    boolean check() {
        checkWidths();
        checkPins();
        checkBars();
        OpeningRange fold = lift.travel().fold();
        String path = "lift.travel.fold";
        boolean reached = reached(fold.low(), path + ".low") & reached(fold.high(), path + ".high");
        if (!reached || !rises(fold, path)) {
            return false;
        }
        checkArmsMeet();
        checkEnds();
        lift.travel().work().ifPresent(this::checkWork);
        for (int i = 0; i < machine.stops().size(); i++) {
            checkStop(machine.stops().get(i), "stops[" + i + "]");
        }
        return true;
    }

    private boolean reached(Opening opening, String path) {
        if (!Double.isNaN(geometry.angle(opening))) {
            return true;
        }
        String stages = lift.stages() == 1 ? "one stage" : lift.stages() + " stages";
        report.add(
                path,
                "the linkage cannot close there",
                stages
                        + " with this arm reach from "
                        + Contradictions.mm(geometry.lowestHeight())
                        + " to less than "
                        + Contradictions.mm(geometry.largestHeight()));
        return false;
    }

    private boolean rises(OpeningRange range, String path) {
        double low = geometry.height(range.low());
        double high = geometry.height(range.high());
        if (low < high) {
            return true;
        }
        report.add(
                path + ".high",
                "it is " + Contradictions.mm(high) + " high, the lower end " + mm(low),
                "higher than the lower end");
        return false;
    }

    private void checkWork(OpeningRange work) {
        String path = "lift.travel.work";
        boolean reached = reached(work.low(), path + ".low") & reached(work.high(), path + ".high");
        if (!reached || !rises(work, path)) {
            return;
        }
        double flat = geometry.height(lift.travel().fold().low());
        double top = geometry.height(lift.travel().fold().high());
        String allowed = "between " + mm(flat) + " and " + mm(top) + ", the ends of the fold";
        if (geometry.height(work.low()) < flat - ROUNDING) {
            report.add(path + ".low", "at " + mm(geometry.height(work.low())), allowed);
        }
        if (geometry.height(work.high()) > top + ROUNDING) {
            report.add(path + ".high", "at " + mm(geometry.height(work.high())), allowed);
        }
    }

    /** Arms of neighbouring stages in one plane meet when h cos(theta) is less than their depth. */
    private void checkArmsMeet() {
        if (lift.stages() < 2 || lift.arm().planes() == ArmPlanes.OFFSET) {
            return;
        }
        double angle = geometry.angle(lift.travel().fold().low());
        double clear = lift.arm().length() * Math.sin(angle) * Math.cos(angle);
        double depth = lift.arm().section().depth();
        if (clear < depth - ROUNDING) {
            report.add(
                    "lift.travel.fold.low",
                    "arms of neighbouring stages are " + mm(clear) + " apart there",
                    "at least their depth, " + mm(depth) + ", or planes \"offset\"");
        }
    }

    private void checkEnds() {
        double flat = geometry.angle(lift.travel().fold().low());
        double foot = machine.base().pinInset() + geometry.spread(flat, 0);
        if (foot > machine.base().length()) {
            report.add(
                    "base.length",
                    mm(machine.base().length())
                            + ", where folded flat the slider ends stand "
                            + mm(foot)
                            + " from its end",
                    "at least " + mm(foot));
        }
        double top = machine.deck().pinInset() + geometry.spread(flat, lift.stages());
        if (top > machine.deck().length()) {
            report.add(
                    "deck.length",
                    mm(machine.deck().length())
                            + ", where folded flat its slider ends stand "
                            + mm(top)
                            + " from its end",
                    "at least " + mm(top));
        }
    }

    private void checkWidths() {
        if (lift.width() > machine.base().width()) {
            report.add(
                    "lift.width",
                    mm(lift.width()) + " is wider than the base",
                    "at most " + mm(machine.base().width()));
        }
        if (lift.width() > machine.deck().width()) {
            report.add(
                    "lift.width",
                    mm(lift.width()) + " is wider than the deck",
                    "at most " + mm(machine.deck().width()));
        }
        if (lift.arm().section().depth() >= lift.arm().length()) {
            report.add(
                    "lift.arm.section",
                    mm(lift.arm().section().depth()) + " is no less than the arm's own length",
                    "a depth of less than " + mm(lift.arm().length()));
        }
    }

    private void checkPins() {
        double depth = lift.arm().section().depth();
        if (lift.pins().usual().diameter() >= depth) {
            report.add(
                    "lift.pins.usual.diameter",
                    mm(lift.pins().usual().diameter()) + " leaves no arm round the pin",
                    "less than the depth of the arm, " + mm(depth));
        }
        for (int i = 0; i < lift.pins().special().size(); i++) {
            double diameter = lift.pins().special().get(i).pin().diameter();
            if (diameter >= depth) {
                report.add(
                        "lift.pins.special[" + i + "].pin.diameter",
                        mm(diameter) + " leaves no arm round the pin",
                        "less than the depth of the arm, " + mm(depth));
            }
        }
    }

    private void checkBars() {
        for (int i = 0; i < lift.crossBars().size(); i++) {
            if (lift.crossBars().get(i).stage() > lift.stages()) {
                report.add(
                        "lift.crossBars[" + i + "].stage",
                        "there is no stage " + lift.crossBars().get(i).stage(),
                        "1 to " + lift.stages());
            }
        }
    }

    private void checkStop(Stop stop, String path) {
        if (!reached(stop.at(), path + ".at")) {
            return;
        }
        double at = geometry.height(stop.at());
        double flat = geometry.height(lift.travel().fold().low());
        double top = geometry.height(lift.travel().fold().high());
        if (stop.blocks() == StopSide.RISING && at < top - ROUNDING) {
            report.add(
                    path + ".at",
                    "it keeps the lift from opening, at " + mm(at),
                    "from " + mm(top));
        } else if (stop.blocks() == StopSide.SINKING && at > flat + ROUNDING) {
            report.add(
                    path + ".at",
                    "it keeps the lift from folding, at " + mm(at),
                    "up to " + mm(flat));
        }
    }

    private static String mm(double metres) {
        return Contradictions.mm(metres);
    }
}
