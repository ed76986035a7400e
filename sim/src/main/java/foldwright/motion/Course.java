// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

/**
 * Where the tool is commanded to be, over time. A course is read forwards only, so that a toolpath
 * of any length streams through bounded memory; reading allocates nothing.
 */
public interface Course {
    /**
     * Writes the commanded state at a time that is not before the one asked for last.
     *
     * @param time since the start of the course [s]
     * @param out filled; after the end it is at rest where the course ended
     * @return whether the course is still running at {@code time}
     * @throws ToolpathException where the toolpath behind the course cannot be read on; its message
     *     names the line
     */
    boolean at(double time, CourseSample out) throws ToolpathException;
}
