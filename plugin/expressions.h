// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

namespace brushline {

/**
 * Gives the host's expressions the functions brushline_declination, brushline_dial, brushline_compass_point and
 * brushline_paces; harmless when they are there. Main thread, while no expression is worked out: the host keeps its
 * functions in a list without a lock.
 */
void registerExpressions();

//! Takes back those that registerExpressions() gave. Main thread; not once the host has begun to end.
void unregisterExpressions();

} // namespace brushline
