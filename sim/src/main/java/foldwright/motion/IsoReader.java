// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

import foldwright.motion.ToolpathException.Fault;
import java.io.InputStream;

/**
 * Reads the subset of ISO 6983 that says where a tool goes: G0 to G4, G17 to G21, G28, G90 to G92
 * and F, in the order of execution of NISTIR 6556 (Kramer, Proctor, Messina, "The NIST RS274NGC
 * Interpreter - Version 3", 2000) table 8. Words that do not move the tool are left out and
 * counted; codes that would change the path in a way not read here stop the replay with a message.
 * Streams: memory does not grow with the file.
 */
public final class IsoReader implements MoveSource {
    private static final int AXES = Words.AXES;
    private static final int READ =
            AXES
                    | Words.bit('F')
                    | Words.bit('I')
                    | Words.bit('J')
                    | Words.bit('K')
                    | Words.bit('R');
    private static final int MOST_PENDING = 8;

    private enum Mode {
        NONE,
        RAPID,
        LINEAR,
        CLOCKWISE,
        COUNTERCLOCKWISE
    }

    private static final Mode[] MOVING = {
        Mode.RAPID, Mode.LINEAR, Mode.CLOCKWISE, Mode.COUNTERCLOCKWISE
    };

    private final ByteLines lines;
    private final WordScanner scanner = new WordScanner();
    private final Words words = new Words();
    private final ReaderSettings settings;
    private final ReadTally tally = new ReadTally();
    private final ArcCentre arc = new ArcCentre();

    private final Move[] pending = new Move[MOST_PENDING];
    private int pendingFirst;
    private int pendingCount;

    private Move given;

    private final double[] at = new double[3];
    private final double[] offset = new double[3];
    private final double[] target = new double[3];
    private Mode mode = Mode.NONE;
    private Plane plane = Plane.XY;
    private double unit = 1e-3;
    private boolean incremental;
    private double feed = Double.NaN;
    private boolean partOpened;
    private boolean anyLine;
    private boolean ended;

    public IsoReader(InputStream in, ReaderSettings settings) {
        this.lines = new ByteLines(in);
        this.settings = settings;
        for (int i = 0; i < MOST_PENDING; i++) {
            pending[i] = new Move();
        }
    }

    /** What was met up to now. */
    public ReadSummary summary() {
        return tally.summary(lines.number());
    }

    @Override
    public boolean next(Move out) throws ToolpathException {
        while (pendingCount == 0) {
            if (ended || !lines.advance()) {
                return false;
            }
            pendingFirst = 0;
            scanner.scan(lines, words);
            given = out;
            execute();
            if (given == null) {
                return true;
            }
        }
        out.copyFrom(pending[pendingFirst++]);
        pendingCount--;
        return true;
    }

    private void execute() throws ToolpathException {
        if (words.percent()) {
            ended = partOpened;
            partOpened = !anyLine;
            anyLine = true;
            return;
        }
        if (words.isEmpty()) {
            return;
        }
        anyLine = true;
        LineRules.check(words, lines);
        if (words.has('F')) {
            readFeed();
        }
        boolean axesTaken = settingCodes();
        if (words.means(Codes.Meaning.DWELL)) {
            dwell();
        }
        if (words.means(Codes.Meaning.HOME)) {
            home();
        } else if (words.means(Codes.Meaning.OFFSET)) {
            shift();
        } else if (!axesTaken) {
            move();
        } else {
            tally.skippedLetters(words.letters() & AXES, lines.number());
        }
        countSkipped();
        stops();
    }

    /**
     * Carries out the codes that only set something; true where an unknown code took the axis
     * words.
     */
    private boolean settingCodes() {
        boolean taken = false;
        for (int i = 0; i < words.gCount(); i++) {
            int code = words.g(i);
            switch (Codes.of(code)) {
                case MOTION -> mode = MOVING[code / 10];
                case PLANE -> plane = code == 170 ? Plane.XY : code == 180 ? Plane.ZX : Plane.YZ;
                case UNITS -> unit = unit(code);
                case DISTANCE -> incremental = code == 910;
                case UNKNOWN -> {
                    taken = true;
                    tally.skippedCode('G', code, lines.number());
                }
                case SKIPPED -> {
                    tally.skippedCode('G', code, lines.number());
                    mode = code == 800 ? Mode.NONE : mode;
                }
                default -> {}
            }
        }
        return taken;
    }

    private void readFeed() throws ToolpathException {
        double value = words.value('F');
        if (value < 0) {
            throw lines.fault(Fault.BAD_FEED, "a negative feed", "a feed above zero");
        }
        // The unit in force is the one of this line, which table 8 sets after F: it is the same in
        // practice.
        double u = unit;
        for (int i = 0; i < words.gCount() && words.means(Codes.Meaning.UNITS); i++) {
            u = Codes.of(words.g(i)) == Codes.Meaning.UNITS ? unit(words.g(i)) : u;
        }
        feed = value * u / 60;
    }

    private void dwell() throws ToolpathException {
        double seconds;
        if (words.has('P')) {
            seconds =
                    words.value('P')
                            * (settings.dwellUnit() == ReaderSettings.DwellUnit.SECONDS ? 1 : 1e-3);
        } else if (words.has('S')) {
            seconds = words.value('S');
        } else {
            throw lines.fault(Fault.BAD_DWELL, "G4 without a time", "G4 P with a time");
        }
        if (seconds < 0) {
            throw lines.fault(Fault.BAD_DWELL, "a negative dwell", "zero or more");
        }
        if (seconds > 0) {
            add().setPause(at, seconds, lines.number());
            tally.pause();
        }
    }

    private void home() throws ToolpathException {
        boolean any = words.hasAny(AXES);
        if (settings.homing() == ReaderSettings.Homing.ALL_AXES_BY_POINT) {
            if (any) {
                readTarget();
                straight(Move.Rate.RAPID);
            }
            target[0] = target[1] = target[2] = 0;
        } else {
            for (int i = 0; i < 3; i++) {
                target[i] = !any || words.has((char) ('X' + i)) ? 0 : at[i];
            }
        }
        straight(Move.Rate.RAPID);
    }

    /** G92: the present point gets the coordinates given (section 3.5.18). */
    private void shift() throws ToolpathException {
        if (!words.hasAny(AXES)) {
            throw lines.fault(Fault.NO_AXIS_WORD, "G92 without a coordinate", "G92 with X, Y or Z");
        }
        for (int i = 0; i < 3; i++) {
            char axis = (char) ('X' + i);
            if (words.has(axis)) {
                offset[i] = at[i] - words.value(axis) * unit;
            }
        }
    }

    private void move() throws ToolpathException {
        boolean named = words.means(Codes.Meaning.MOTION);
        if (!words.hasAny(AXES)) {
            if (named && (words.letters() & ~Words.bit('N')) == 0 || named && mode.ordinal() > 2) {
                throw lines.fault(
                        Fault.NO_AXIS_WORD,
                        "a move without a coordinate",
                        "at least one of X, Y, Z");
            }
            return;
        }
        switch (mode) {
            case NONE ->
                    throw lines.fault(
                            Fault.NO_MOTION_MODE,
                            "coordinates with no move in force",
                            "G0, G1, G2 or G3 before");
            case RAPID -> {
                readTarget();
                straight(Move.Rate.RAPID);
            }
            case LINEAR -> {
                readTarget();
                straight(Move.Rate.FEED);
            }
            case CLOCKWISE, COUNTERCLOCKWISE -> {
                readTarget();
                arc();
            }
        }
    }

    private void readTarget() throws ToolpathException {
        for (int i = 0; i < 3; i++) {
            char axis = (char) ('X' + i);
            target[i] = at[i];
            if (words.has(axis)) {
                double value = words.value(axis) * unit;
                target[i] = incremental ? at[i] + value : value + offset[i];
                checkReach(axis, target[i]);
            }
        }
    }

    private void checkReach(char axis, double coordinate) throws ToolpathException {
        if (!(Math.abs(coordinate) <= settings.reach())) {
            throw lines.fault(
                    Fault.OUT_OF_REACH,
                    axis + " " + Math.round(coordinate * 1e3) + " mm, far outside the machine",
                    "at most " + Math.round(settings.reach() * 1e3) + " mm from the origin");
        }
    }

    private void straight(Move.Rate rate) throws ToolpathException {
        if (at[0] == target[0] && at[1] == target[1] && at[2] == target[2]) {
            return;
        }
        add().setLine(at, target, rate, rate == Move.Rate.FEED ? feedNow() : 0, lines.number());
        tally.straight(rate);
        arrive();
    }

    private void arc() throws ToolpathException {
        boolean clockwise = mode == Mode.CLOCKWISE;
        char u = (char) ('X' + plane.first());
        char v = (char) ('X' + plane.second());
        char i = (char) ('I' + plane.first());
        char j = (char) ('I' + plane.second());
        if (!words.has(u) && !words.has(v)) {
            throw lines.fault(
                    Fault.BAD_ARC,
                    "an arc without an end in its plane",
                    "at least one of " + u + ", " + v);
        }
        if (words.has('R')) {
            if (!arc.fromRadius(at, target, plane, words.value('R') * unit, clockwise)) {
                throw lines.fault(
                        Fault.BAD_ARC,
                        "a radius that cannot join the ends",
                        "ends apart, by at most twice the radius");
            }
        } else if (words.has(i) || words.has(j)) {
            double di = words.has(i) ? words.value(i) * unit : 0;
            double dj = words.has(j) ? words.value(j) * unit : 0;
            arc.fromOffset(at, target, plane, di, dj, clockwise);
        } else {
            throw lines.fault(Fault.BAD_ARC, "an arc without a centre", i + " or " + j + ", or R");
        }
        checkRounding();
        Move out = add();
        out.setArc(at, target, plane, arc.centre(), arc.sweep(), feedNow(), lines.number());
        if (out.reach() > 4 * settings.reach()) {
            throw lines.fault(
                    Fault.OUT_OF_REACH, "an arc far outside the machine", "a centre within reach");
        }
        tally.arc(arc.sweep());
        arrive();
    }

    private void checkRounding() throws ToolpathException {
        double gap = arc.mismatch();
        if (!(gap <= ArcCentre.REFUSED)) {
            throw lines.fault(
                    Fault.BAD_ARC,
                    "start and end at distances from the centre that differ by "
                            + String.format(java.util.Locale.ROOT, "%.3f mm", gap * 1e3),
                    "at most 0.5 mm");
        }
        tally.rounding(gap);
    }

    private double feedNow() throws ToolpathException {
        if (Double.isNaN(feed)) {
            tally.moveBeforeFeed();
            return settings.fallbackFeed();
        }
        if (!(feed > 0)) {
            throw lines.fault(Fault.BAD_FEED, "a feed move with feed 0", "a feed above zero");
        }
        return feed;
    }

    private void arrive() {
        at[0] = target[0];
        at[1] = target[1];
        at[2] = target[2];
    }

    /** The first move of a line goes straight into the caller's buffer, the others wait. */
    private Move add() {
        if (given != null) {
            Move first = given;
            given = null;
            return first;
        }
        return pending[pendingFirst + pendingCount++];
    }

    private void countSkipped() {
        int rest = words.letters() & ~READ & ~Words.bit('N');
        if (words.means(Codes.Meaning.DWELL)) {
            rest &= ~(words.has('P') ? Words.bit('P') : Words.bit('S'));
        }
        if (rest != 0) {
            tally.skippedLetters(rest, lines.number());
        }
    }

    private void stops() {
        for (int i = 0; i < words.mCount(); i++) {
            int code = words.m(i);
            switch (code) {
                case 0, 10, 600 -> {
                    add().setPause(at, 0, lines.number());
                    tally.pause();
                }
                case 20, 300 -> ended = true;
                default -> tally.skippedCode('M', code, lines.number());
            }
        }
    }

    private static double unit(int code) {
        return code == 200 ? 0.0254 : 1e-3;
    }
}
