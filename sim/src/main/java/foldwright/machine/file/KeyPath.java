// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Key paths such as {@code springs[0].law.rate}: entries of lists are counted from 0. */
final class KeyPath {
    private static final Pattern STEP = Pattern.compile("([^.\\[\\]]+)|\\[([0-9]{1,6})\\]");

    private KeyPath() {}

    /** The steps of a path: keys as they are, list places as numbers in brackets. */
    static List<String> steps(String path) {
        List<String> steps = new ArrayList<>();
        Matcher matcher = STEP.matcher(path);
        while (matcher.find()) {
            steps.add(matcher.group());
        }
        return steps;
    }

    /** The node at a path. */
    static Optional<Node> find(Node root, String path) {
        Optional<Node> at = Optional.of(root);
        for (String step : steps(path)) {
            at = at.flatMap(node -> step(node, step));
        }
        return path.isBlank() ? Optional.empty() : at;
    }

    /** The node at a path, or the innermost one on the way to it. */
    static Node nearestOnTheWay(Node root, String path) {
        Node at = root;
        for (String step : steps(path)) {
            Optional<Node> next = step(at, step);
            if (next.isEmpty()) {
                return at;
            }
            at = next.get();
        }
        return at;
    }

    private static Optional<Node> step(Node node, String step) {
        if (node instanceof Node.Members members && step.charAt(0) != '[') {
            return members.get(step);
        }
        if (node instanceof Node.Items list && step.charAt(0) == '[') {
            int index = Integer.parseInt(step.substring(1, step.length() - 1));
            return index < list.items().size()
                    ? Optional.of(list.items().get(index))
                    : Optional.empty();
        }
        return Optional.empty();
    }

    /** All paths below a node. */
    static List<String> all(Node root) {
        List<String> paths = new ArrayList<>();
        collect(root, "", paths);
        return paths;
    }

    private static void collect(Node node, String path, List<String> out) {
        if (!path.isEmpty()) {
            out.add(path);
        }
        if (node instanceof Node.Members members) {
            for (Node.Member member : members.members()) {
                String key = member.key();
                collect(member.value(), path.isEmpty() ? key : path + "." + key, out);
            }
        } else if (node instanceof Node.Items list) {
            for (int i = 0; i < list.items().size(); i++) {
                collect(list.items().get(i), path + "[" + i + "]", out);
            }
        }
    }
}
