// SPDX-License-Identifier: Apache-2.0

/** What a person reads: the HTML report, plots and tables. */
package foldwright.report;
