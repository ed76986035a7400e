// SPDX-License-Identifier: Apache-2.0

/** A second machine or run, over the first as dashed outlines or beside it on the same table. */
package foldwright.viewer.beside;
