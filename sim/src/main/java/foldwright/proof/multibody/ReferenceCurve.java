// SPDX-License-Identifier: Apache-2.0
package foldwright.proof.multibody;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A tabulated reference solution: a time column and further columns, with its source on top. */
public final class ReferenceCurve {
    private final String source;
    private final List<double[]> rows;

    private ReferenceCurve(String source, List<double[]> rows) {
        this.source = source;
        this.rows = rows;
    }

    /** Reads a curve stored beside this class. */
    public static ReferenceCurve read(String name) {
        List<double[]> rows = new ArrayList<>();
        try (InputStream in = ReferenceCurve.class.getResourceAsStream(name);
                BufferedReader reader =
                        new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            String source = reader.readLine().substring(2);
            reader.readLine();
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                rows.add(Arrays.stream(line.split(",")).mapToDouble(Double::parseDouble).toArray());
            }
            return new ReferenceCurve(source, rows);
        } catch (IOException e) {
            throw new UncheckedIOException("reference curve " + name, e);
        }
    }

    /** Where the values come from. */
    public String source() {
        return source;
    }

    public int size() {
        return rows.size();
    }

    /** Time of row {@code i} [s]. */
    public double time(int i) {
        return rows.get(i)[0];
    }

    /** Column {@code c} of row {@code i}, time being column 0. */
    public double value(int i, int c) {
        return rows.get(i)[c];
    }
}
