// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import foldwright.machine.keys.KeyOf;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** Default values of keys as nodes, so that they are read like values of a file. */
final class Defaults {
    private static final Map<String, Node> CACHE = new ConcurrentHashMap<>();

    private Defaults() {}

    /** The default of a key that has one. */
    static Node node(KeyOf key) {
        boolean bracket = key.orElse().startsWith("[") || key.orElse().startsWith("{");
        boolean json = key.type() == int.class || bracket;
        String text = json ? key.orElse() : '"' + key.orElse() + '"';
        return CACHE.computeIfAbsent(text, Defaults::read);
    }

    private static Node read(String text) {
        SourceText source = new SourceText("default", text);
        Optional<Node> node = TreeReader.read(source, new Problems(source));
        return node.orElseThrow(() -> new IllegalStateException("bad default " + text));
    }
}
