// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import foldwright.machine.Machine;
import foldwright.machine.drive.Drive;
import foldwright.machine.drive.RiseProfile;
import foldwright.machine.drive.ScrewLine;
import foldwright.machine.linkage.Anchor;
import foldwright.machine.linkage.FoldGeometry;
import foldwright.machine.linkage.Opening;

/** Whether the screws are long enough, are where the machine is, and the rise can be followed. */
final class DriveChecks {
    private static final int POSES = 21;

    private final Machine machine;
    private final Drive drive;
    private final FoldGeometry geometry;
    private final Contradictions report;

    DriveChecks(Machine machine, Contradictions report) {
        this.machine = machine;
        this.drive = machine.drive();
        this.geometry = new FoldGeometry(machine.lift());
        this.report = report;
    }

    void check() {
        for (int i = 0; i < drive.lines().size(); i++) {
            checkLine(drive.lines().get(i), "drive.lines[" + i + "]");
        }
        if (drive.rise() instanceof RiseProfile profile) {
            checkProfile(profile);
        }
    }

    private void checkLine(ScrewLine line, String path) {
        if (Math.abs(line.y()) > machine.base().width() / 2) {
            String allowed = "at most half its width, " + mm(machine.base().width() / 2);
            report.add(path + ".y", "the screw lies beside the base", allowed);
        }
        boolean good = line.from().map(from -> armThere(from, path + ".from")).orElse(true);
        good &= line.to().map(to -> armThere(to, path + ".to")).orElse(true);
        if (good) {
            checkScrewLength(line, path);
        }
    }

    private boolean armThere(Anchor anchor, String path) {
        return AnchorChecks.check(anchor, path, machine.lift(), report);
    }

    private void checkScrewLength(ScrewLine line, String path) {
        double shortest = Double.MAX_VALUE;
        double longest = 0;
        for (int i = 0; i < POSES; i++) {
            double length = length(line, pose(i));
            shortest = Math.min(shortest, length);
            longest = Math.max(longest, length);
        }
        double needed = longest - shortest + drive.screw().nut().length();
        if (needed > drive.screw().length()) {
            report.add(
                    "drive.screw.length",
                    "its nut travels "
                            + mm(longest - shortest)
                            + " and is "
                            + mm(drive.screw().nut().length())
                            + " long",
                    "at least " + mm(needed));
        }
        if (longest - shortest < 1e-6) {
            report.add(path, "this screw does not move the lift", "ends that move apart");
        }
    }

    /** Angle of the lowest arms at one of the poses from flat to top [rad]. */
    private double pose(int i) {
        Opening low = machine.lift().travel().fold().low();
        Opening high = machine.lift().travel().fold().high();
        double flat = geometry.angle(low);
        return flat + (geometry.angle(high) - flat) * i / (POSES - 1);
    }

    private double length(ScrewLine line, double angle) {
        if (line.from().isEmpty() && line.to().isEmpty()) {
            // the usual start depends on the screw's length, which is what is judged here
            return geometry.spread(angle, 0);
        }
        AnchorPoints points = new AnchorPoints(machine.lift(), angle);
        return AnchorPoints.distance(
                points.at(machine.startOf(line)), points.at(machine.endOf(line)));
    }

    private void checkProfile(RiseProfile profile) {
        double top = geometry.height(machine.lift().travel().fold().high());
        for (int i = 0; i < profile.points().size(); i++) {
            double height = profile.points().get(i).height();
            if (height > top + 1e-9) {
                report.add(
                        "drive.rise.points[" + i + "].height",
                        "above the top of the fold",
                        "up to " + mm(top));
            }
        }
    }

    private static String mm(double metres) {
        return Contradictions.mm(metres);
    }
}
