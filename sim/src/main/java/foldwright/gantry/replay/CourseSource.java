// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.replay;

import foldwright.motion.Course;
import foldwright.motion.ToolpathException;

/** Opens the same toolpath from its start again. */
public interface CourseSource {
    Course open() throws ToolpathException;
}
