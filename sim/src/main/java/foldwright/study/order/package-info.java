// SPDX-License-Identifier: Apache-2.0
/** What a maker must buy or make: parts, counts, sizes and ratings that the machine file states. */
package foldwright.study.order;
