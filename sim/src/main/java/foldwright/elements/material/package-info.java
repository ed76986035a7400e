// SPDX-License-Identifier: Apache-2.0

/** Tables of materials, friction pairs and allowable loads of plastics, with their sources. */
package foldwright.elements.material;
