// SPDX-License-Identifier: Apache-2.0
package foldwright.machine;

import foldwright.machine.keys.KeyOf;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.RecordMaker;
import foldwright.machine.linkage.Opening;
import foldwright.machine.part.Point;
import foldwright.machine.part.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The numbers of a machine by their key path, such as {@code springs[0].law.rate}: what sliders,
 * sizing and tolerance studies turn.
 *
 * <p>Entries of lists are counted from 0. A point is a list of its coordinates ({@code at[2]}), an
 * opening is the one number it is written as. Tooth numbers are {@code teeth.motor} and {@code
 * teeth.screw}.
 */
public final class MachineNumbers {
    private static final Pattern STEP = Pattern.compile("([^.\\[\\]]+)|\\[([0-9]{1,6})\\]");

    private MachineNumbers() {}

    /**
     * A number with its path.
     *
     * @param path key path
     * @param value the number [SI]
     * @param key its key: dimension, range, meaning
     */
    public record Entry(String path, double value, KeyOf key) {}

    /** All numbers of a machine in the order of its description; absent ones are left out. */
    public static List<Entry> all(Machine machine) {
        List<Entry> entries = new ArrayList<>();
        collect("", machine, entries);
        return entries;
    }

    /** The number at a path, or nothing where there is none. */
    public static OptionalDouble find(Machine machine, String path) {
        return all(machine).stream()
                .filter(entry -> entry.path().equals(path))
                .mapToDouble(Entry::value)
                .findFirst();
    }

    /**
     * The same machine with another number.
     *
     * <p>Only the value and its own record are checked, not its agreement with the rest of the
     * machine, so that a number can be tried out.
     *
     * @param value the number [SI]
     * @throws IllegalArgumentException if there is no number at that path, or it is not allowed
     */
    public static Machine with(Machine machine, String path, double value) {
        List<String> steps = new ArrayList<>();
        Matcher matcher = STEP.matcher(path);
        while (matcher.find()) {
            steps.add(matcher.group());
        }
        try {
            return (Machine) replace(machine, steps, value);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(path + ": " + e.getMessage(), e);
        }
    }

    private static void collect(String path, Object record, List<Entry> out) {
        List<KeyOf> keys = Keys.of(record.getClass());
        for (int i = 0; i < keys.size(); i++) {
            KeyOf key = keys.get(i);
            String here = isPoint(record) ? path + "[" + i + "]" : join(path, key.name());
            collectValue(isOpening(record) ? path : here, get(record, key), key, out);
        }
    }

    private static void collectValue(String path, Object value, KeyOf key, List<Entry> out) {
        if (value instanceof Number number) {
            out.add(new Entry(path, number.doubleValue(), key));
        } else if (value instanceof OptionalDouble optional && optional.isPresent()) {
            out.add(new Entry(path, optional.getAsDouble(), key));
        } else if (value instanceof Optional<?> optional) {
            optional.ifPresent(inner -> collectValue(path, inner, key, out));
        } else if (value instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                collectValue(path + "[" + i + "]", list.get(i), key, out);
            }
        } else if (value instanceof Record record) {
            collect(path, record, out);
        }
    }

    private static Object replace(Object value, List<String> steps, double number) {
        if (value instanceof Optional<?> optional) {
            return Optional.of(replace(optional.orElseThrow(NoNumber::new), steps, number));
        } else if (value instanceof List<?> list && !steps.isEmpty()) {
            List<Object> copy = new ArrayList<>(list);
            int at = index(steps.get(0), list.size());
            copy.set(at, replace(list.get(at), steps.subList(1, steps.size()), number));
            return copy;
        } else if (value instanceof Record record) {
            return replaceInRecord(record, steps, number);
        } else if (!steps.isEmpty()) {
            throw new NoNumber();
        } else if (value instanceof OptionalDouble) {
            return OptionalDouble.of(number);
        } else if (value instanceof Double) {
            return number;
        } else if (value instanceof Integer && number == Math.rint(number)) {
            return (int) number;
        }
        throw new NoNumber();
    }

    private static Object replaceInRecord(Record record, List<String> steps, double number) {
        List<KeyOf> keys = Keys.of(record.getClass());
        boolean opening = isOpening(record);
        if (steps.isEmpty() && !opening) {
            throw new NoNumber();
        }
        Object[] values = new Object[keys.size()];
        boolean changed = false;
        for (int i = 0; i < values.length; i++) {
            values[i] = get(record, keys.get(i));
            String name = isPoint(record) ? "[" + i + "]" : keys.get(i).name();
            if (opening || name.equals(steps.get(0))) {
                values[i] =
                        replace(
                                values[i],
                                opening ? steps : steps.subList(1, steps.size()),
                                number);
                changed = true;
            }
        }
        if (!changed) {
            throw new NoNumber();
        }
        return RecordMaker.make(record.getClass(), values);
    }

    private static int index(String step, int size) {
        int at =
                step.charAt(0) == '[' ? Integer.parseInt(step.substring(1, step.length() - 1)) : -1;
        if (at < 0 || at >= size) {
            throw new NoNumber();
        }
        return at;
    }

    private static Object get(Object record, KeyOf key) {
        try {
            return key.component().getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(key.name(), e);
        }
    }

    private static boolean isPoint(Object record) {
        return record instanceof Point || record instanceof Spot;
    }

    private static boolean isOpening(Object record) {
        return record instanceof Opening;
    }

    private static String join(String path, String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    /** There is no number where one was to be changed. */
    private static final class NoNumber extends IllegalArgumentException {
        private static final long serialVersionUID = 1L;

        NoNumber() {
            super("there is no number to change");
        }
    }
}
