// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonStreamContext;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a JSON text with comments into nodes that know their place.
 *
 * <p>Duplicate keys are reported and read on; a text that is not JSON ends the reading.
 */
final class TreeReader {
    private static final int DEEPEST = 40;

    private static final JsonFactory FACTORY =
            JsonFactory.builder()
                    .enable(JsonReadFeature.ALLOW_JAVA_COMMENTS)
                    .streamReadConstraints(
                            StreamReadConstraints.builder().maxNestingDepth(DEEPEST).build())
                    .build();

    private final SourceText source;
    private final Problems problems;
    private final JsonParser parser;
    private boolean rootRead;

    private TreeReader(SourceText source, Problems problems) throws IOException {
        this.source = source;
        this.problems = problems;
        this.parser = FACTORY.createParser(source.text());
    }

    /** The root of the text, or nothing where it is not JSON; says why in {@code problems}. */
    static Optional<Node> read(SourceText source, Problems problems) {
        try {
            TreeReader reader = new TreeReader(source, problems);
            try (JsonParser parser = reader.parser) {
                return reader.root(parser);
            } catch (JsonProcessingException e) {
                new SyntaxProblem(source, reader.path(), reader.progress()).add(e, problems);
                return Optional.empty();
            }
        } catch (IOException e) {
            throw new IllegalStateException("a text in memory cannot fail to be read", e);
        }
    }

    private Progress progress() {
        return new Progress(Math.max(0, end()), rootRead);
    }

    /** How far the reading got: an offset, and whether the root was read to its end. */
    private record Progress(int offset, boolean rootRead) {}

    private Optional<Node> root(JsonParser in) throws IOException {
        if (in.nextToken() == null) {
            problems.add(ProblemCode.EMPTY, 0, "", "nothing in the file", "a machine");
            return Optional.empty();
        }
        Node root = value("");
        rootRead = true;
        if (in.nextToken() != null) {
            int at = start();
            problems.add(ProblemCode.TEXT_AFTER_END, at, "", "text after the machine", "nothing");
        }
        return Optional.of(root);
    }

    private Node value(String path) throws IOException {
        int start = start();
        JsonToken token = parser.currentToken();
        if (token == JsonToken.START_OBJECT) {
            return members(path, start);
        }
        if (token == JsonToken.START_ARRAY) {
            List<Node> items = new ArrayList<>();
            while (parser.nextToken() != JsonToken.END_ARRAY) {
                items.add(value(path + "[" + items.size() + "]"));
            }
            return new Node.Items(items, start, end());
        }
        String text = parser.getText();
        return switch (token) {
            case VALUE_STRING -> new Node.Text(text, start, end());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT ->
                    new Node.Digits(text, start, start + text.length());
            default -> new Node.Literal(text, start, start + text.length());
        };
    }

    private Node members(String path, int start) throws IOException {
        List<Node.Member> members = new ArrayList<>();
        Map<String, Integer> seen = new HashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            int at = start();
            String key = parser.currentName();
            String here = path.isEmpty() ? key : path + "." + key;
            Integer first = seen.putIfAbsent(key, at);
            if (first != null) {
                int line = source.place(first).line();
                String found = "the key stands here and in line " + line;
                problems.add(ProblemCode.DUPLICATE_KEY, at, here, found, "each key once");
            }
            parser.nextToken();
            members.add(new Node.Member(key, at, value(here)));
        }
        return new Node.Members(members, start, end());
    }

    private int start() {
        return (int) parser.currentTokenLocation().getCharOffset();
    }

    private int end() {
        return (int) parser.currentLocation().getCharOffset();
    }

    /** Key path of the place the parser has got to. */
    private String path() {
        StringBuilder out = new StringBuilder();
        for (JsonStreamContext at = parser.getParsingContext(); at != null; at = at.getParent()) {
            if (at.inObject() && at.getCurrentName() != null) {
                boolean bare = out.length() == 0 || out.charAt(0) == '[';
                out.insert(0, at.getCurrentName() + (bare ? "" : "."));
            } else if (at.inArray()) {
                boolean bare = out.length() == 0 || out.charAt(0) == '[';
                out.insert(0, "[" + Math.max(0, at.getCurrentIndex()) + "]" + (bare ? "" : "."));
            }
        }
        return out.toString();
    }

    /** Says in our words why a text is not JSON. */
    private record SyntaxProblem(SourceText source, String path, Progress progress) {
        private static final Pattern TOKEN = Pattern.compile("token '([^']+)'");

        void add(JsonProcessingException e, Problems problems) {
            JsonLocation location = e.getLocation();
            int length = source.text().length();
            boolean known = location != null && location.getCharOffset() >= 0;
            int at = known ? (int) location.getCharOffset() : progress.offset();
            int offset = Math.max(0, Math.min(at, length));
            String why = e.getOriginalMessage();
            if (progress.rootRead()) {
                String found = "text after the machine";
                problems.add(ProblemCode.TEXT_AFTER_END, offset, "", found, "nothing");
            } else if (e instanceof StreamConstraintsException) {
                boolean deep = why.contains("depth");
                problems.add(
                        deep ? ProblemCode.TOO_DEEP : ProblemCode.TOO_LARGE,
                        offset,
                        deep ? "" : path,
                        deep ? "brackets nested too deep" : "a number, text or key far too long",
                        deep ? "at most " + DEEPEST + " levels" : "");
            } else if (e instanceof JsonEOFException || why.contains("end-of-input")) {
                String found = "the file ends in the middle of it; is it cut short?";
                problems.add(ProblemCode.CUT_SHORT, length, path, found, "");
            } else {
                Matcher token = TOKEN.matcher(why);
                if (token.find() && source.text().lastIndexOf(token.group(1), offset) >= 0) {
                    int start = source.text().lastIndexOf(token.group(1), offset);
                    String found = "found " + Words.shortened(token.group(1));
                    problems.add(ProblemCode.SYNTAX, start, path, found, needed(why, start));
                } else {
                    String needed = needed(why, offset);
                    problems.add(ProblemCode.SYNTAX, offset, path, found(offset), needed);
                }
            }
        }

        private String found(int offset) {
            if (offset >= source.text().length()) {
                return "found the end of the file";
            }
            int end = source.text().offsetByCodePoints(offset, 1);
            return "found " + Words.quoted(source.text().substring(offset, end));
        }

        private String needed(String why, int offset) {
            char at = offset < source.text().length() ? source.text().charAt(offset) : ' ';
            if (why.contains("comma")) {
                return "a comma or a closing bracket";
            } else if (why.contains("start field name")) {
                return at == '}' ? "no comma before a closing bracket" : "a key in double quotes";
            } else if (why.contains("colon")) {
                return "a colon after the key";
            } else if (why.contains("close marker")) {
                return "a closing bracket that fits the opening one";
            } else if (why.contains("CTRL-CHAR") || why.contains("control character")) {
                return "texts that end in the line they start in";
            } else if (why.contains("escape")) {
                return "only the escapes of JSON behind a backslash";
            } else if (why.contains("zeroes") || why.contains("plus sign")) {
                return "a number without leading zero or plus sign";
            } else if (why.contains("ecimal point")) {
                return "a number with digits on both sides of its point";
            } else if (at == ']') {
                return "no comma before a closing bracket";
            }
            return "a text in double quotes, a number, a list or an object";
        }
    }
}
