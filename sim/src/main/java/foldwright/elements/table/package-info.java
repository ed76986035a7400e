// SPDX-License-Identifier: Apache-2.0

/**
 * Reference tables shipped with the program and the two ways to use them: {@link
 * foldwright.elements.table.Table} reads a CSV resource with typed cells and exact error places,
 * {@link foldwright.elements.table.Catalog} finds an entry by name and knows its nearest
 * neighbours. The part packages turn rows into their own records; nothing here knows a part.
 */
package foldwright.elements.table;
