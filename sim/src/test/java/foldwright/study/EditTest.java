// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class EditTest {
    record Leaf(double size, OptionalDouble mass) {
        Leaf {
            if (size < 0) {
                throw new IllegalArgumentException("size is " + size);
            }
        }
    }

    record Tree(String name, Leaf leaf, List<Leaf> leaves, Optional<Leaf> last) {}

    private static final Leaf LEAF = new Leaf(1, OptionalDouble.empty());
    private static final Tree TREE = new Tree("t", LEAF, List.of(LEAF, LEAF), Optional.of(LEAF));

    @Test
    void changesOneValueAndNothingElse() {
        assertThat(Edit.with(TREE, "leaf.size", 2.0))
                .isEqualTo(
                        new Tree(
                                "t",
                                new Leaf(2, OptionalDouble.empty()),
                                List.of(LEAF, LEAF),
                                Optional.of(LEAF)));
        assertThat(Edit.with(TREE, "leaves[1].mass", 3.0).leaves())
                .containsExactly(LEAF, new Leaf(1, OptionalDouble.of(3)));
        assertThat(Edit.with(TREE, "last.size", 4.0).last().get().size()).isEqualTo(4);
        assertThat(Edit.with(TREE, "name", "u").name()).isEqualTo("u");
    }

    @Test
    void refusesUnknownKeysAndValuesTheRecordRefuses() {
        assertThatThrownBy(() -> Edit.with(TREE, "leaf.sise", 1.0))
                .hasMessageContaining("sise")
                .hasMessageContaining("size");
        assertThatThrownBy(() -> Edit.with(TREE, "leaf.size", -1.0)).hasMessage("size is -1.0");
    }
}
