// SPDX-License-Identifier: Apache-2.0

/** Published values recomputed: every chapter compares this program with something outside it. */
package foldwright.proof;
