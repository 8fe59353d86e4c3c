// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/length.h"

namespace brushline {

/*
 * Sight through cover. A ray of length d through cover of extinction k (1/m) is clear with the probability exp(-k d);
 * across borders the exponents add up. A class's sight distance is the one at which half the marks are still clear.
 */

/**
 * The extinction of cover in which half the marks are clear at a distance: ln 2 / distance, in 1/m.
 * \param half_clear > 0.
 */
double extinctionOf(Length half_clear);

/**
 * The distance at which marks are still clear with a probability: -ln(probability) / k.
 * \param extinction 1/m, >= 0; at 0 the distance is infinite.
 * \param probability in (0, 1).
 */
Length clearDistance(double extinction, double probability);

/**
 * The extinction by the stems of a stand, 1/m: k = N D / 10 000 for N stems per hectare of mean diameter D, by a thin
 * ray past stems that stand at random; what grows between them adds its own.
 *
 * It is for seeing a point. Seeing the whole of a mark w wide takes D + w / 2 in place of D, walking through w wide
 * D + w; the share of a mark that is seen on average is as for a point.
 * \param stems_per_ha >= 0. \param mean_diameter >= 0. \param understorey 1/m, >= 0.
 * Source: the Poisson law of random stands (Lang, Vennik, Poldma and Nilson, Forestry Studies 74, 2021, doi
 * 10.2478/fsmu-2020-0019), which sees too far where young growth was not counted.
 */
double standExtinction(double stems_per_ha, Length mean_diameter, double understorey);

} // namespace brushline
