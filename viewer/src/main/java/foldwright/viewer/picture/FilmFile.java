// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.picture;

import java.io.IOException;

/** A film being written, picture by picture. */
interface FilmFile extends AutoCloseable {
    void add(Pixels pixels) throws IOException;

    @Override
    void close() throws IOException;
}
