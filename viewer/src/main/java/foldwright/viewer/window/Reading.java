// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.window;

import foldwright.study.Numerals;
import foldwright.viewer.scene.Part;
import foldwright.viewer.session.LoadField;
import foldwright.viewer.session.Overlay;
import foldwright.viewer.session.Results;
import foldwright.viewer.session.SheetBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is known of a part at a height, in lines. */
final class Reading {
    private Reading() {}

    static List<String> of(Part part, SheetBuilder builder, Results results, double height) {
        List<String> lines = new ArrayList<>();
        for (Overlay overlay : Overlay.values()) {
            Optional<LoadField> field = builder.field(results, overlay);
            if (field.isEmpty()) {
                continue;
            }
            double value = field.get().at(part.name(), height);
            if (!Double.isNaN(value)) {
                lines.add(
                        overlay.words()
                                + " "
                                + Numerals.with(value, overlay.unit())
                                + " of "
                                + Numerals.with(field.get().end(), overlay.unit())
                                + " on the scale");
            }
        }
        if (lines.isEmpty()) {
            lines.add(part.kind().word() + "; no load computed for it");
        }
        return lines;
    }
}
