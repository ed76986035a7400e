// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import java.util.List;
import java.util.Optional;

/** A value of a JSON text with the place of its text, so that it can be pointed at and replaced. */
sealed interface Node {
    /** Offset of its first character. */
    int start();

    /** Offset behind its last character. */
    int end();

    /** What it is, in the words of a message. */
    String words();

    /** An object. */
    record Members(List<Member> members, int start, int end) implements Node {
        public Members {
            members = List.copyOf(members);
        }

        /** The value of a key; of a key that stands twice, the first. */
        Optional<Node> get(String key) {
            for (Member member : members) {
                if (member.key().equals(key)) {
                    return Optional.of(member.value());
                }
            }
            return Optional.empty();
        }

        @Override
        public String words() {
            return "an object";
        }
    }

    /**
     * A key with its value.
     *
     * @param start offset of the key
     */
    record Member(String key, int start, Node value) {}

    /** A list. */
    record Items(List<Node> items, int start, int end) implements Node {
        public Items {
            items = List.copyOf(items);
        }

        @Override
        public String words() {
            return "a list";
        }
    }

    /** A text. */
    record Text(String text, int start, int end) implements Node {
        @Override
        public String words() {
            return Words.quoted(text);
        }
    }

    /** A number as written. */
    record Digits(String digits, int start, int end) implements Node {
        @Override
        public String words() {
            return Words.shortened(digits);
        }
    }

    /** The words true, false and null. */
    record Literal(String word, int start, int end) implements Node {
        @Override
        public String words() {
            return word;
        }
    }
}
