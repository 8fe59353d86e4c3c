// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

class QgsMapLayer;

namespace brushline {

//! Hatches of a vector layer's polygons drawn as lines where the host would put pictures of them into a PDF. Call it on
//! a copy of a layer.
void hatchWithLines(QgsMapLayer &layer);

} // namespace brushline
