// SPDX-License-Identifier: Apache-2.0

/**
 * The sparse direct solver of the mechanics: a symmetric quasi-definite matrix whose rows come in
 * small blocks, factored without pivoting.
 *
 * <p>The matrix has the shape
 *
 * <pre>
 *     [ S   G' ]      S positive definite, one block a body
 *     [ G  -C  ]      C positive semidefinite, one block a joint
 * </pre>
 *
 * and is described once a topology by a {@link foldwright.mechanics.sparse.BlockPattern}. {@link
 * foldwright.mechanics.sparse.BlockLdl#analyse} then finds an elimination order that keeps every
 * pivot healthy, merges small steps into dense fronts and fixes all addresses; {@code factor} and
 * {@code solve} only compute. Nothing here knows what a body or a joint is beyond its role in the
 * order.
 */
package foldwright.mechanics.sparse;
