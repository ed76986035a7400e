// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.watch;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Width and height of a picture [px], written {@code 1920x1080}. */
public record PictureSize(int width, int height) {
    private static final int LEAST_WIDTH = 640;

    /**
     * Letters do not shrink below what can be read, so smaller pictures would hold only letters.
     */
    private static final int LEAST_HEIGHT = 360;

    private static final int MOST = 8192;

    /** Half as wide and high, as far as sheets can be that small. */
    PictureSize half() {
        return new PictureSize(
                Math.max(LEAST_WIDTH, width / 2), Math.max(LEAST_HEIGHT, height / 2));
    }

    @Override
    public String toString() {
        return width + "x" + height;
    }

    /** Reads a size. */
    public static final class Reader implements ITypeConverter<PictureSize> {
        @Override
        public PictureSize convert(String text) {
            String[] parts = text.toLowerCase(java.util.Locale.ROOT).split("[x×]", -1);
            try {
                int w = Integer.parseInt(parts[0].strip());
                int h = Integer.parseInt(parts[parts.length - 1].strip());
                if (parts.length == 2
                        && w >= LEAST_WIDTH
                        && h >= LEAST_HEIGHT
                        && w <= MOST
                        && h <= MOST) {
                    return new PictureSize(w, h);
                }
            } catch (NumberFormatException e) {
                throw refused(text);
            }
            throw refused(text);
        }

        private static TypeConversionException refused(String text) {
            return new TypeConversionException(
                    "found \""
                            + text
                            + "\", allowed: width x height in pixels from 640x360 to 8192x8192, e.g. 1920x1080");
        }
    }
}
