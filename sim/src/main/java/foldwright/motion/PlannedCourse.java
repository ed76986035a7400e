// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

/** The course of planned moves, streamed. */
public final class PlannedCourse implements Course {
    private final Planner planner;
    private final TimedMove current = new TimedMove();
    private double startTime;
    private double endTime;
    private boolean running;

    /** Reads and plans the first move. */
    public PlannedCourse(Planner planner) throws ToolpathException {
        this.planner = planner;
        running = advance();
    }

    @Override
    public boolean at(double time, CourseSample out) throws ToolpathException {
        while (running && time >= endTime) {
            running = advance();
        }
        current.sample(running ? time - startTime : endTime - startTime, out);
        if (!running) {
            out.vx = out.vy = out.vz = 0;
            out.ax = out.ay = out.az = 0;
        }
        return running;
    }

    private boolean advance() throws ToolpathException {
        if (!planner.next(current)) {
            return false;
        }
        startTime = endTime;
        endTime = startTime + current.profile().duration();
        return true;
    }

    /** Time at which the move now running ends [s]. */
    public double endOfMove() {
        return endTime;
    }
}
