// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "shared/parameter_reader_host.h"

#include <qgscoordinatereferencesystem.h>
#include <qgsrectangle.h>

#include <memory>
#include <vector>

class QgsRasterDataProvider;

namespace brushline {

/**
 * A raster output of one band of real numbers, written from the top row down. It is written under a name of its own and
 * takes its final name in finish(); unless that is reached, nothing remains.
 */
class RasterOutput {
  Q_DECLARE_TR_FUNCTIONS(brushline::RasterOutput)

public:
  //! Throws QgsProcessingException when the file cannot be made.
  RasterOutput(const ParameterReader &reader, const QString &key, const QgsRectangle &extent, int columns, int rows,
               const QgsCoordinateReferenceSystem &crs);
  ~RasterOutput();
  RasterOutput(const RasterOutput &) = delete;
  RasterOutput &operator=(const RasterOutput &) = delete;

  //! Writes whole rows from a row on; NaN becomes no data.
  void writeRows(int firstRow, const std::vector<double> &values);

  //! Ends the writing. \param styleResource path of a style inside the library. \returns the value for the algorithm's
  //! results.
  QString finish(const QString &styleResource);

private:
  void fail(const QString &reason) const;

  QgsProcessingContext &mContext;
  std::shared_ptr<KeptStyles> mStyles;
  QString mKey, mDestination, mPart;
  int mColumns;
  std::unique_ptr<QgsRasterDataProvider> mProvider;
  bool mFinished = false;
};

} // namespace brushline
