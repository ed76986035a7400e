// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

/**
 * Something worth knowing that no limit is set for.
 *
 * @param words what it is, e.g. "height gained by a full step, lying flat"
 * @param value with unit
 * @param how the short formula it can be checked by; may be empty
 */
public record Fact(String words, String value, String how) {}
