// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Chooses a palette by median cut (P. Heckbert, SIGGRAPH 1982, 297-307), on colours weighted by the
 * root of their count.
 */
final class MedianCut {
    private MedianCut() {}

    /** At most so many colours; the most frequent colour (the paper) is kept exactly. */
    static int[] palette(int[] pixels, int most) {
        Map<Integer, Integer> counts = new HashMap<>();
        for (int p : pixels) {
            counts.merge(p, 1, Integer::sum);
        }
        int[] colours = counts.keySet().stream().mapToInt(Integer::intValue).toArray();
        Arrays.sort(colours);
        int paper =
                counts.entrySet().stream()
                        .max(Map.Entry.comparingByValue())
                        .map(Map.Entry::getKey)
                        .orElse(0);
        if (colours.length <= most) {
            return colours;
        }
        List<int[]> boxes = new ArrayList<>(List.of(colours));
        while (boxes.size() < most - 1) {
            int widest = widest(boxes, counts);
            if (widest < 0) {
                break;
            }
            int[] box = boxes.remove(widest);
            split(box, counts, boxes);
        }
        int[] out = new int[boxes.size() + 1];
        out[0] = paper;
        for (int i = 0; i < boxes.size(); i++) {
            out[i + 1] = mean(boxes.get(i), counts);
        }
        return out;
    }

    private static int channel(int rgb, int c) {
        return rgb >> 16 - 8 * c & 255;
    }

    private static int longest(int[] box) {
        int best = 0;
        int most = -1;
        for (int c = 0; c < 3; c++) {
            int low = 255;
            int high = 0;
            for (int p : box) {
                low = Math.min(low, channel(p, c));
                high = Math.max(high, channel(p, c));
            }
            if (high - low > most) {
                most = high - low;
                best = c;
            }
        }
        return best;
    }

    private static double weight(int[] box, Map<Integer, Integer> counts) {
        double sum = 0;
        for (int p : box) {
            sum += Math.sqrt(counts.get(p));
        }
        return sum;
    }

    private static int widest(List<int[]> boxes, Map<Integer, Integer> counts) {
        int best = -1;
        double most = 0;
        for (int i = 0; i < boxes.size(); i++) {
            int[] box = boxes.get(i);
            if (box.length < 2) {
                continue;
            }
            int c = longest(box);
            int low = Arrays.stream(box).map(p -> channel(p, c)).min().orElse(0);
            int high = Arrays.stream(box).map(p -> channel(p, c)).max().orElse(0);
            double score = (high - low) * Math.sqrt(weight(box, counts));
            if (score > most) {
                most = score;
                best = i;
            }
        }
        return best;
    }

    private static void split(int[] box, Map<Integer, Integer> counts, List<int[]> out) {
        int c = longest(box);
        int[] sorted =
                Arrays.stream(box)
                        .boxed()
                        .sorted((a, b) -> Integer.compare(channel(a, c), channel(b, c)))
                        .mapToInt(Integer::intValue)
                        .toArray();
        double half = weight(box, counts) / 2;
        double sum = 0;
        int cut = 1;
        for (int i = 0; i < sorted.length - 1; i++) {
            sum += Math.sqrt(counts.get(sorted[i]));
            cut = i + 1;
            if (sum >= half) {
                break;
            }
        }
        out.add(Arrays.copyOfRange(sorted, 0, cut));
        out.add(Arrays.copyOfRange(sorted, cut, sorted.length));
    }

    private static int mean(int[] box, Map<Integer, Integer> counts) {
        double[] sum = new double[3];
        double all = 0;
        for (int p : box) {
            double w = Math.sqrt(counts.get(p));
            for (int c = 0; c < 3; c++) {
                sum[c] += w * channel(p, c);
            }
            all += w;
        }
        int out = 0;
        for (int c = 0; c < 3; c++) {
            out = out << 8 | (int) Math.round(sum[c] / all);
        }
        return out;
    }
}
