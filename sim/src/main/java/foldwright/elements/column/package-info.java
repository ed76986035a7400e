// SPDX-License-Identifier: Apache-2.0

/** Long round shafts under thrust: buckling load, column sizing, and whirling speed. */
package foldwright.elements.column;
