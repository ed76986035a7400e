// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

/**
 * Something that can hurt a person.
 *
 * @param title e.g. "Fingers"
 * @param words what, where and how much, in sentences
 * @param source standard or page the limit comes from
 */
public record Caution(String title, String words, String source) {}
