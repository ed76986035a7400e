// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.replay;

import foldwright.gantry.model.GantryKernel;
import foldwright.gantry.model.ToothHold;

/** Counts slack belts, climbing teeth and lost steps while a replay runs; allocates nothing. */
final class EventWatch {
    private final GantryKernel kernel;
    private final ToothHold teeth;
    private final boolean[] slack;
    private boolean anySlack;
    private boolean climbing;
    private boolean slipping;
    private long slackSpells;
    private long slackSteps;
    private long firstSlackLine;
    private long toothJumps;
    private long firstToothJumpLine;
    private long firstLossLine;
    private double leastMargin = Double.POSITIVE_INFINITY;
    private double leastTension = Double.POSITIVE_INFINITY;
    private double mostTension;

    EventWatch(GantryKernel kernel) {
        this.kernel = kernel;
        teeth = new ToothHold(kernel.system());
        slack = new boolean[kernel.sections()];
    }

    void look(long line) {
        boolean someSlack = lookAtTensions();
        if (someSlack || anySlack) {
            countSlack(line);
            anySlack = someSlack;
        }
        if (!slipping && kernel.largestLag() > Math.PI) {
            slipping = true;
            firstLossLine = line;
        }
    }

    /** Keeps the extremes, which seldom move; true where a belt is slack. */
    private boolean lookAtTensions() {
        double least = leastTension;
        double most = mostTension;
        boolean someSlack = false;
        for (int i = 0; i < slack.length; i++) {
            double t = kernel.tension(i);
            if (t < least) {
                least = t;
            }
            if (t > most) {
                most = t;
            }
            someSlack |= t <= 0;
        }
        leastTension = least;
        mostTension = most;
        return someSlack;
    }

    /** Looks whether a belt climbs its teeth. */
    void lookAtTeeth(long line) {
        double margin = teeth.leastMargin(kernel);
        leastMargin = margin < leastMargin ? margin : leastMargin;
        if (margin < 1 != climbing) {
            climbing = !climbing;
            if (climbing && toothJumps++ == 0) {
                firstToothJumpLine = line;
            }
        }
    }

    private void countSlack(long line) {
        for (int i = 0; i < slack.length; i++) {
            boolean now = kernel.tension(i) <= 0;
            if (now) {
                slackSteps++;
            }
            if (now && !slack[i] && slackSpells++ == 0) {
                firstSlackLine = line;
            }
            slack[i] = now;
        }
    }

    double leastTension() {
        return leastTension;
    }

    double mostTension() {
        return mostTension;
    }

    ReplayEvents result(double step) {
        long lost = 0;
        for (int m = 0; m < kernel.motors(); m++) {
            lost += 4 * Math.abs(kernel.slippedPeriods(m));
        }
        return new ReplayEvents(
                slackSpells,
                slackSteps * step,
                firstSlackLine,
                toothJumps,
                firstToothJumpLine,
                leastMargin,
                lost,
                firstLossLine);
    }
}
