// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/length.h"
#include "shared/walker.h"

namespace brushline {

/**
 * How long a step is on a slope, as a share of the step on level ground.
 *
 * \param slope of the ground along the walk; uphill positive, [-90, 90] degrees.
 * \returns between the table's angles linear; beyond its 30 degrees the last value.
 *
 * The table gives lengths along the slope. Downhill it shortens the step, as measurements of walkers do, while a
 * field manual of the US Army (FM 3-25.26, 5-3) says that it lengthens: we follow the table, which errs to the side
 * of stopping short of a mark and not of overshooting it.
 * Source: Moss, Manual of Military Training, 2nd edition, 1917, paragraph 1887.
 */
double stepLengthRatio(Angle slope);

/**
 * The single steps a walker takes over a run and a rise of even slope, by their slope rule.
 *
 * SlopeRule::SlopeTable counts steps along the ground; SlopeRule::None counts those over the run.
 * \param run horizontal, >= 0. \param rise uphill positive.
 */
double stepsOver(Length run, Length rise, const Walker &walker);

//! The number the walker counts: whole paces of their kind, halves up.
long pacesCounted(double singleSteps, PaceKind kind);

} // namespace brushline
