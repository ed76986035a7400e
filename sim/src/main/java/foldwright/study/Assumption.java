// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

/**
 * An input that was assumed and decides something.
 *
 * @param keyPath where it stands in the machine file
 * @param words what it is, e.g. "friction of the thread"
 * @param value as used, with unit
 * @param measure how to find the true value
 */
public record Assumption(String keyPath, String words, String value, String measure) {}
