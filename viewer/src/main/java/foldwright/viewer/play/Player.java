// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.play;

import foldwright.run.RunTable;
import java.util.List;

/** The clock of a run that is looked at: it stands, runs at a speed, is put to a moment. */
public final class Player {
    /** Speeds against the real motion. */
    private static final double[] SPEEDS = {
        1 / 50.0, 1 / 20.0, 1 / 10.0, 1 / 5.0, 1 / 2.0, 1, 2, 5, 10, 20, 50
    };

    private static final int REAL = 5;

    private final RunTable table;
    private final double[] marks;
    private double time;
    private int speed = REAL;
    private State state = State.STANDING;
    private Again again = Again.ONCE;

    /** Whether time goes on. */
    public enum State {
        STANDING,
        RUNNING
    }

    /** What happens at the end. */
    public enum Again {
        ONCE,
        LOOP
    }

    /**
     * A clock at the start of a run.
     *
     * @param marks moments to jump to, in order [s]
     */
    public Player(RunTable table, List<Double> marks) {
        this.table = table;
        this.marks = marks.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        time = table.start();
    }

    /** Now, in the run's own time [s]. */
    public double time() {
        return time;
    }

    public State state() {
        return state;
    }

    public Again again() {
        return again;
    }

    /** Against the real motion [1]. */
    public double speed() {
        return SPEEDS[speed];
    }

    /** Where the speed stands between the slowest (0) and the fastest (1). */
    public double speedShare() {
        return (double) speed / (SPEEDS.length - 1);
    }

    /** Takes the nearest speed to a place between slowest and fastest. */
    public void speedShare(double share) {
        double at = Math.max(0, Math.min(1, share)) * (SPEEDS.length - 1);
        speed = (int) Math.round(at);
    }

    /** Slower (-1) or faster (+1). */
    public void faster(int steps) {
        speed = Math.max(0, Math.min(SPEEDS.length - 1, speed + steps));
    }

    /** Runs or stands; from the end it runs from the start. */
    public void toggle() {
        if (state == State.RUNNING) {
            state = State.STANDING;
        } else {
            time = time >= table.end() ? table.start() : time;
            state = State.RUNNING;
        }
    }

    public void stop() {
        state = State.STANDING;
    }

    public void toggleLoop() {
        again = again == Again.ONCE ? Again.LOOP : Again.ONCE;
    }

    /** Puts the clock to a moment, held within the run. */
    public void seek(double to) {
        time = Math.max(table.start(), Math.min(table.end(), to));
    }

    /** Stands at the next (+1) or the last (-1) row of the run. */
    public void step(int rows) {
        stop();
        int row = table.row(time);
        if (rows > 0) {
            while (row < table.rows() - 1 && table.time(row) <= time) {
                row++;
            }
        } else {
            while (row > 0 && table.time(row) >= time) {
                row--;
            }
        }
        seek(table.time(row));
    }

    /** Stands at the next (+1) or the last (-1) mark, going round; nothing without marks. */
    public void nextMark(int way) {
        if (marks.length == 0) {
            return;
        }
        stop();
        double grain = 1e-9 * Math.max(1, table.end());
        if (way > 0) {
            for (double m : marks) {
                if (m > time + grain) {
                    seek(m);
                    return;
                }
            }
            seek(marks[0]);
        } else {
            for (int i = marks.length - 1; i >= 0; i--) {
                if (marks[i] < time - grain) {
                    seek(marks[i]);
                    return;
                }
            }
            seek(marks[marks.length - 1]);
        }
    }

    /** Lets time pass [s of the clock on the wall]; whether the run moves. */
    public boolean pass(double seconds) {
        if (state == State.STANDING) {
            return false;
        }
        double next = time + seconds * speed();
        double length = table.end() - table.start();
        if (next >= table.end() && again == Again.LOOP && length > 0) {
            next = table.start() + (next - table.start()) % length;
        } else if (next >= table.end()) {
            stop();
        }
        seek(next);
        return true;
    }

    /** Takes over speed, loop and whether it runs; the place as a share of the run. */
    public void like(Player other) {
        speed = other.speed;
        again = other.again;
        state = other.state;
        double length = other.table.end() - other.table.start();
        double share = length > 0 ? (other.time - other.table.start()) / length : 0;
        seek(table.start() + share * (table.end() - table.start()));
    }

    /** The speed in words. */
    public static String words(double speed) {
        if (speed == 1) {
            return "at real speed";
        }
        long times = Math.round(speed > 1 ? speed : 1 / speed);
        double exact = speed > 1 ? speed : 1 / speed;
        String number =
                Math.abs(times - exact) < 0.05
                        ? Long.toString(times)
                        : foldwright.study.Numerals.fixed(exact, 1);
        return number + "× " + (speed > 1 ? "faster" : "slower");
    }
}
