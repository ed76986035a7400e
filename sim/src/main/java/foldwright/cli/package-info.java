// SPDX-License-Identifier: Apache-2.0

/** The commands, one class each. */
package foldwright.cli;
