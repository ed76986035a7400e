// SPDX-License-Identifier: Apache-2.0

/** Questions, checks, verdicts and remedies: what a run means for the maker. */
package foldwright.study;
