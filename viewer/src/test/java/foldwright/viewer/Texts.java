// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer;

import static org.assertj.core.api.Assertions.assertThat;

import foldwright.viewer.sheet.Studio;
import foldwright.viewer.text.TextBox;
import java.util.List;

/** Texts of a sheet that was drawn. */
public final class Texts {
    private Texts() {}

    /** Adds every two that cover one another, and every one that leaves the picture. */
    public static void overlaps(Studio studio, String where, List<String> out) {
        List<TextBox> boxes = studio.boxes();
        assertThat(boxes).hasSizeGreaterThan(studio.layout().little ? 10 : 40);
        for (int i = 0; i < boxes.size(); i++) {
            for (int j = i + 1; j < boxes.size(); j++) {
                if (boxes.get(i).overlaps(boxes.get(j))) {
                    out.add(
                            where
                                    + ": \""
                                    + boxes.get(i).text()
                                    + "\" and \""
                                    + boxes.get(j).text()
                                    + "\"");
                }
            }
            TextBox b = boxes.get(i);
            if (b.x() < 0
                    || b.x() + b.width() > studio.layout().width
                    || b.y() + b.height() > studio.layout().height) {
                out.add(where + ": \"" + b.text() + "\" leaves the picture");
            }
        }
    }
}
