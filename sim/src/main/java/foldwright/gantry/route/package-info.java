// SPDX-License-Identifier: Apache-2.0

/**
 * Belt routes as data. A route is an ordered list of wheels and anchors; from the list alone come
 * span lengths, wraps, the derivatives of the lengths, the sections that carry one tension each,
 * the relation between motors and tool, and whether the route can work at all. No layout has a
 * class of its own. Entry: {@link foldwright.gantry.route.BeltSystem} and {@link
 * foldwright.gantry.route.RouteCheck}; called by {@code gantry.model}. No dynamics here.
 */
package foldwright.gantry.route;
