// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import java.util.List;

/** Checks that the key paths listed as assumed lead to something in the file. */
record AssumedPaths(Node root, Problems problems) {
    void check() {
        if (root instanceof Node.Members members
                && members.get("assumed").orElse(null) instanceof Node.Items list) {
            for (int i = 0; i < list.items().size(); i++) {
                if (list.items().get(i) instanceof Node.Text text
                        && !text.text().isBlank()
                        && KeyPath.find(root, text.text()).isEmpty()) {
                    List<String> known = KeyPath.all(root);
                    String here = "assumed[" + i + "]";
                    problems.addUnknown(
                            ProblemCode.UNKNOWN_PATH, text.start(), here, text.text(), known);
                }
            }
        }
    }
}
