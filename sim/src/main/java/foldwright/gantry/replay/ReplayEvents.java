// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.replay;

/**
 * What went wrong on the way; lines are those of the toolpath at the first time, 0 if never.
 *
 * @param slackSpells times a section of belt went slack
 * @param slackTime section-seconds without tension [s]
 * @param firstSlackLine line
 * @param toothJumps times a driven wheel's belt would have climbed its teeth
 * @param firstToothJumpLine line
 * @param leastToothMargin smallest hold of the slack side over what the teeth push out [1]
 * @param lostSteps full steps by which motors are off at the end, all motors together
 * @param firstLossLine line
 */
public record ReplayEvents(
        long slackSpells,
        double slackTime,
        long firstSlackLine,
        long toothJumps,
        long firstToothJumpLine,
        double leastToothMargin,
        long lostSteps,
        long firstLossLine) {}
