// SPDX-License-Identifier: Apache-2.0

/**
 * From a machine and what was computed of it to a sheet: which load the ink shows, what the cards
 * say, where the rules stand. {@link foldwright.viewer.session.SheetBuilder} is the entry; no
 * graphics calls here.
 */
package foldwright.viewer.session;
