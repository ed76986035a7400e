// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

/** What a check can be drawn as. */
public sealed interface Plot permits HeightPlot, SignedCurve, DirectionPlot, AreaPlot {}
