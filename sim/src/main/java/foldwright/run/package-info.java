// SPDX-License-Identifier: Apache-2.0

/**
 * Runs kept: what happened in time, in columns, with the machine it happened to. {@link
 * foldwright.run.Run} is the record, {@link foldwright.run.RunFile} its file. Nothing here computes
 * a motion.
 */
package foldwright.run;
