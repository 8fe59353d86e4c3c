// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <qgis.h>

// The library's plain C face, for the loader and for programs that use the host's libraries.
extern "C" {

/**
 * Registers the provider and the functions for expressions once, however often it is called and by whomever; each call
 * but a failed one is to be answered by one brushline_unregister(). Main thread, at the start of a session.
 *
 * \returns 0: the provider is there; 1: there is no application yet (call after the host has been initialized);
 * 2: the host refused the provider.
 */
Q_DECL_EXPORT int brushline_register();

//! Takes back one registration; with the last one provider and functions go. Harmless when the application is gone.
Q_DECL_EXPORT void brushline_unregister();

//! The number of this face; the loader was written for 1.
Q_DECL_EXPORT int brushline_abi();

//! The version of the host this library was built for, for example "3.22.16".
Q_DECL_EXPORT const char *brushline_built_for();
}
