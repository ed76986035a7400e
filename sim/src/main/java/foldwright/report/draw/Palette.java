// SPDX-License-Identifier: Apache-2.0
package foldwright.report.draw;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import foldwright.lift.Cause;
import foldwright.study.Verdict;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The colours of one theme, read from {@code palette.json}, which also states their contrasts. */
public final class Palette {
    private static final String RESOURCE = "/foldwright/report/palette.json";

    private final Theme theme;
    private final Map<Ground, Colour> ground = new EnumMap<>(Ground.class);
    private final Map<Verdict, Colour> fill = new EnumMap<>(Verdict.class);
    private final Map<Verdict, Colour> text = new EnumMap<>(Verdict.class);
    private final Map<Verdict, Double> tint = new EnumMap<>(Verdict.class);
    private final Map<Cause, Colour> cause = new EnumMap<>(Cause.class);
    private final List<Colour> load;
    private final List<Colour> signed;
    private final JsonNode material;

    private Palette(Theme theme, JsonNode root) {
        this.theme = theme;
        String side = theme == Theme.DARK ? "dark" : "light";
        JsonNode node = root.get(side);
        for (Ground g : Ground.values()) {
            ground.put(g, colour(node.get("ground").get(lower(g)).get("hex")));
        }
        if (theme == Theme.PRINT) {
            ground.put(Ground.PAPER, colour(root.get("print").get("paper")));
        }
        for (Verdict v : List.of(Verdict.HOLDS, Verdict.TIGHT, Verdict.FAILS)) {
            JsonNode entry = node.get("verdict").get(v.word());
            fill.put(v, colour(entry.get("hex")));
            text.put(v, colour(entry.get("text_hex")));
            tint.put(v, entry.get("tint").asDouble());
        }
        for (Verdict v : List.of(Verdict.UNKNOWN, Verdict.UNJUDGED)) {
            fill.put(v, ground.get(Ground.INK3));
            text.put(v, ground.get(Ground.INK3));
            tint.put(v, 0.0);
        }
        readCauses(root.get("cause"));
        load = colours(node.get("load_scale").get("stops"));
        signed = colours(node.get("signed_scale").get("stops"));
        material = root.get("material").get(side);
    }

    private void readCauses(JsonNode node) {
        for (Cause c : Cause.values()) {
            String name =
                    switch (c) {
                        case GUIDES -> "feet";
                        case COLLAR -> "belt";
                        case WIND_UP -> "inertia";
                        default -> lower(c);
                    };
            JsonNode entry = node.get(name);
            boolean own = theme == Theme.DARK && entry.has("dark_hex");
            cause.put(c, colour(entry.get(own ? "dark_hex" : "hex")));
        }
        // The collar is of the thread's family, between its dark member and the belt's light one;
        // wind-up, the other share that is only stored, is a darker grey beside inertia.
        cause.put(Cause.COLLAR, cause.get(Cause.THREAD).towards(cause.get(Cause.BELT), 0.5));
        cause.put(Cause.WIND_UP, cause.get(Cause.INERTIA).towards(ground.get(Ground.INK3), 0.5));
    }

    /** The colours of a theme. */
    public static Palette of(Theme theme) {
        try (InputStream in = Palette.class.getResourceAsStream(RESOURCE);
                JsonParser parser = new JsonFactory().createParser(in)) {
            parser.nextToken();
            return new Palette(theme, tree(parser));
        } catch (IOException e) {
            throw new UncheckedIOException(RESOURCE, e);
        }
    }

    /**
     * The value at the parser; an object mapper would take longer to load than a window to open.
     */
    private static JsonNode tree(JsonParser in) throws IOException {
        JsonNodeFactory nodes = JsonNodeFactory.instance;
        if (in.currentToken() == JsonToken.START_OBJECT) {
            ObjectNode object = nodes.objectNode();
            while (in.nextToken() == JsonToken.FIELD_NAME) {
                String name = in.currentName();
                in.nextToken();
                object.set(name, tree(in));
            }
            return object;
        } else if (in.currentToken() == JsonToken.START_ARRAY) {
            ArrayNode array = nodes.arrayNode();
            while (in.nextToken() != JsonToken.END_ARRAY) {
                array.add(tree(in));
            }
            return array;
        }
        return in.currentToken().isNumeric()
                ? nodes.numberNode(in.getDoubleValue())
                : nodes.textNode(in.getText());
    }

    public Theme theme() {
        return theme;
    }

    public Colour ground(Ground role) {
        return ground.get(role);
    }

    /** Colour of a verdict's mark and of its area's texture. */
    public Colour fill(Verdict verdict) {
        return fill.get(verdict);
    }

    /** Colour of a verdict's word. */
    public Colour text(Verdict verdict) {
        return text.get(verdict);
    }

    /** Opacity of a verdict's area under its texture, 0 to 1. */
    public double tint(Verdict verdict) {
        return tint.get(verdict);
    }

    public Colour cause(Cause role) {
        return cause.get(role);
    }

    /**
     * Colour of a load without sign; {@code part} is load over the end of the scale, held 0 to 1.
     */
    public Colour load(double part) {
        return along(load, part);
    }

    /** Colour of a signed value; {@code part} from -1 (copper) to 1 (blue), held. */
    public Colour signed(double part) {
        return along(signed, (part + 1) / 2);
    }

    /** Stops of the scale for loads, even steps. */
    public List<Colour> loadStops() {
        return load;
    }

    /** Stops of the signed scale, even steps. */
    public List<Colour> signedStops() {
        return signed;
    }

    /** Colour of a material of {@code palette.json}, e.g. "aluminium" or "edge". */
    public Colour material(String name) {
        JsonNode node = material.get(name);
        if (node == null) {
            throw new IllegalArgumentException(
                    "no material \"" + name + "\" in " + RESOURCE + "; found " + material);
        }
        return colour(node);
    }

    private static Colour along(List<Colour> stops, double part) {
        double at = Math.min(1, Math.max(0, part)) * (stops.size() - 1);
        int low = Math.min(stops.size() - 2, (int) at);
        return stops.get(low).towards(stops.get(low + 1), at - low);
    }

    private static List<Colour> colours(JsonNode stops) {
        List<Colour> out = new ArrayList<>();
        stops.forEach(s -> out.add(colour(s)));
        return List.copyOf(out);
    }

    private static Colour colour(JsonNode node) {
        return Colour.hex(node.asText());
    }

    private static String lower(Enum<?> name) {
        return name.name().toLowerCase(Locale.ROOT);
    }
}
