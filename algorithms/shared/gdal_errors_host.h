// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QString>
#include <cpl_error.h>

namespace brushline {

/**
 * Keeps the first failure that GDAL tells in this thread while it lives. Some failures, of closing a file on a full
 * disk above all, the host tells nobody: without this a run would end well and leave half a file, or none. Warnings are
 * written to the terminal, as without it.
 */
class GdalErrors {
public:
  GdalErrors() { CPLPushErrorHandlerEx(&GdalErrors::keep, this); }
  ~GdalErrors() { CPLPopErrorHandler(); }
  GdalErrors(const GdalErrors &) = delete;
  GdalErrors &operator=(const GdalErrors &) = delete;

  bool any() const { return !mFirst.isNull(); }
  //! The first in GDAL's words, or else another reason.
  QString firstOr(const QString &other) const { return any() ? mFirst : other; }

private:
  static void CPL_STDCALL keep(CPLErr kind, CPLErrorNum number, const char *text) {
    if (kind != CE_Failure && kind != CE_Fatal)
      return CPLDefaultErrorHandler(kind, number, text);
    auto *self = static_cast<GdalErrors *>(CPLGetErrorHandlerUserData());
    if (!self->any())
      self->mFirst = QLatin1String("GDAL: ") + QString::fromUtf8(text);
  }

  QString mFirst;
};

} // namespace brushline
