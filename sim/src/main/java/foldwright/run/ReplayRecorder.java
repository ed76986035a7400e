// SPDX-License-Identifier: Apache-2.0
package foldwright.run;

import foldwright.gantry.model.GantryKernel;
import foldwright.gantry.model.GantryState;
import foldwright.gantry.replay.ChannelResult;
import foldwright.gantry.replay.ReplayListener;
import foldwright.gantry.replay.ReplayResult;
import foldwright.machine.file.MachineFile;
import foldwright.quantity.Printed;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * Keeps a replay in a bounded number of rows: a thousand a second at first, half as many each time
 * they run out. The worst moments are kept exactly.
 */
public final class ReplayRecorder implements ReplayListener {
    /** Rows kept at most, before the worst moments are added. */
    static final int MOST = 20_000;

    private static final double FIRST_INTERVAL = 1e-3;

    private final List<double[]> rows = new ArrayList<>();
    private final List<RunEvent> events = new ArrayList<>();
    private final List<String> sections = new ArrayList<>();
    private double interval = FIRST_INTERVAL;
    private long taken;
    private boolean slipped;
    private boolean slack;

    @Override
    public void at(double time, long line, double x, double y, GantryKernel k) {
        look(time, line, k);
        if (sections.isEmpty()) {
            k.system().sections().forEach(s -> sections.add(s.name()));
        }
        if (time + 1e-12 >= taken * interval) {
            rows.add(row(time, line, x, y, k));
            taken++;
            if (rows.size() >= MOST) {
                thin();
            }
        }
    }

    private void thin() {
        for (int i = 0; i < MOST / 2; i++) {
            rows.set(i, rows.get(2 * i));
        }
        rows.subList(MOST / 2, rows.size()).clear();
        interval *= 2;
        taken = rows.size();
    }

    private void look(double time, long line, GantryKernel k) {
        if (!slipped && steps(k) > 0) {
            slipped = true;
            events.add(
                    new RunEvent(
                            RunEvent.Kind.STEPS_LOST,
                            time,
                            line,
                            "A motor of the gantry falls out of step" + place(line) + "."));
        }
        if (!slack && least(k) <= 0) {
            slack = true;
            events.add(
                    new RunEvent(
                            RunEvent.Kind.BELT_SLACK,
                            time,
                            line,
                            "A section of belt goes slack" + place(line) + "."));
        }
    }

    private static String place(long line) {
        return line == 0 ? "" : " in line " + line;
    }

    private static double steps(GantryKernel k) {
        long lost = 0;
        for (int m = 0; m < k.motors(); m++) {
            lost += 4 * Math.abs(k.slippedPeriods(m));
        }
        return lost;
    }

    private static double least(GantryKernel k) {
        double least = k.tension(0);
        for (int i = 1; i < k.sections(); i++) {
            least = Math.min(least, k.tension(i));
        }
        return least;
    }

    private static double most(GantryKernel k) {
        double most = k.tension(0);
        for (int i = 1; i < k.sections(); i++) {
            most = Math.max(most, k.tension(i));
        }
        return most;
    }

    private static double hardest(GantryKernel k) {
        double hardest = 0;
        for (int m = 0; m < k.motors(); m++) {
            double torque = k.motorTorque(m);
            hardest = Math.abs(torque) > Math.abs(hardest) ? torque : hardest;
        }
        return hardest;
    }

    private static double[] row(double time, long line, double x, double y, GantryKernel k) {
        double[] row = {
            time,
            hardest(k),
            steps(k),
            line,
            x,
            y,
            k.carriagePlace(),
            k.bridgePlace(),
            k.skew(),
            k.toolX() - x - k.model().tool().x(),
            k.toolY() - y - k.model().tool().y(),
            least(k),
            most(k)
        };
        int n = row.length;
        double[] all = Arrays.copyOf(row, n + k.sections());
        for (int i = 0; i < k.sections(); i++) {
            all[n + i] = k.tension(i);
        }
        return all;
    }

    /** A kept worst moment; steps lost are those of the row before it. */
    private double[] row(ChannelResult at, GantryState s) {
        double c = Math.cos(s.skew());
        double sin = Math.sin(s.skew());
        double dx = s.pose().carriageX() - s.pose().bridgeX();
        double dy = s.pose().carriageY() - s.pose().bridgeY();
        double torque =
                s.motorTorques().stream().max(Comparator.comparingDouble(Math::abs)).orElse(0.0);
        double[] row = {
            at.time(),
            torque,
            rows.get(before(at.time()))[2],
            at.line(),
            at.x(),
            at.y(),
            c * dx + sin * dy,
            s.pose().bridgeY(),
            s.skew(),
            s.error().total().x(),
            s.error().total().y(),
            s.slackest(),
            s.tensions().stream().mapToDouble(Double::doubleValue).max().orElse(0)
        };
        int n = row.length;
        double[] all = Arrays.copyOf(row, n + sections.size());
        for (int i = 0; i < sections.size(); i++) {
            all[n + i] = s.tensions().get(i);
        }
        return all;
    }

    private int before(double time) {
        int at = 0;
        while (at + 1 < rows.size() && rows.get(at + 1)[0] <= time) {
            at++;
        }
        return at;
    }

    private void insert(double[] row) {
        int at = before(row[0]);
        if (rows.get(at)[0] == row[0]) {
            rows.set(at, row);
        } else {
            rows.add(at + 1, row);
        }
    }

    private void mark(RunEvent.Kind kind, String words, ChannelResult at) {
        events.add(
                new RunEvent(
                        kind,
                        at.time(),
                        at.line(),
                        String.format(
                                Locale.ROOT,
                                "%s is largest, %s%s, at X %.1f Y %.1f mm of the travel.",
                                words,
                                Printed.in("mm", at.peak()),
                                place(at.line()),
                                at.x() * 1e3,
                                at.y() * 1e3)));
    }

    /**
     * The finished run.
     *
     * @param subject name of the toolpath
     */
    public Run run(MachineFile machine, String subject, ReplayResult result) {
        insert(row(result.skew(), result.worstSkew()));
        insert(row(result.error(), result.worstError()));
        mark(RunEvent.Kind.LARGEST_SKEW, "The skew end to end", result.skew());
        mark(RunEvent.Kind.LARGEST_ERROR, "The error of the tool", result.error());
        String outcome =
                result.events().lostSteps() > 0
                        ? "lost steps"
                        : result.events().toothJumps() > 0 ? "teeth climb" : "arrived";
        return new Run(
                RunKind.REPLAY,
                subject,
                machine,
                result.stability().step(),
                outcome,
                new RunTable(RunKind.REPLAY.columns(), sections, rows),
                events);
    }
}
