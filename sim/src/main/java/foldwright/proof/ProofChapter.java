// SPDX-License-Identifier: Apache-2.0
package foldwright.proof;

import java.util.List;

/** A group of published values from one field; {@code foldwright proof} runs every chapter. */
public interface ProofChapter {
    /** What the chapter covers, e.g. "Lead screws". */
    String title();

    /** Recomputes every value of the chapter; takes from milliseconds to a few seconds. */
    List<ProofValue> compute();
}
