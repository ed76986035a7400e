// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

/** Moves one after the other: a toolpath being read, or one of the built-in probe moves. */
public interface MoveSource {
    /**
     * Reads the next move into a buffer.
     *
     * @return false at the end; {@code out} is then untouched
     * @throws ToolpathException where the toolpath cannot be read on
     */
    boolean next(Move out) throws ToolpathException;
}
