// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import foldwright.machine.linkage.Anchor;
import foldwright.machine.linkage.Lift;
import foldwright.machine.linkage.OnArm;

/** Whether points on arms lie on arms that exist. */
final class AnchorChecks {
    private AnchorChecks() {}

    /** Reports a point that is on no arm; true if it is good. */
    static boolean check(Anchor anchor, String path, Lift lift, Contradictions report) {
        if (!(anchor instanceof OnArm arm)) {
            return true;
        }
        if (arm.stage() > lift.stages()) {
            String allowed = "1 to " + lift.stages();
            report.add(path + ".stage", "there is no stage " + arm.stage(), allowed);
            return false;
        }
        double spare = lift.arm().section().depth();
        if (arm.along() < -spare || arm.along() > lift.arm().length() + spare) {
            String allowed = "0 mm to its length, " + Contradictions.mm(lift.arm().length());
            report.add(path + ".along", "the arm does not reach there", allowed);
            return false;
        }
        return true;
    }
}
