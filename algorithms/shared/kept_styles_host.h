// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "shared/parameter_reader_host.h"

#include <optional>
#include <vector>

class QgsMapLayer;

namespace brushline {

//! How a layer is shown.
struct Look {
  QString resource; //!< path of a style inside the library
  //! Legs that come for several walkers wear the labels of one: whom the layer's variable brushline_walker names. Empty
  //! where there is only one walker; none for layers without walkers.
  std::optional<QString> walker;
};

/**
 * KEEP_STYLE: the looks of layers that were written to files, kept with them, so that they look the same wherever the
 * file is opened, also when nothing showed it while it was made (as in qgis_process).
 */
class KeptStyles {
  Q_DECLARE_TR_FUNCTIONS(brushline::KeptStyles)

public:
  static Definitions definitions();
  //! False also where an algorithm has no such parameter.
  static bool wanted(const ParameterReader &reader);

  //! Gives a layer a look. \returns what went wrong; empty: nothing.
  static QString dress(QgsMapLayer &layer, const Look &look);

  void add(const QString &destination, const Look &look) { mLayers.push_back({destination, look}); }
  /**
   * Into a GeoPackage as the layer's default style, beside other files as a file .qml. Layers in memory and in servers'
   * databases are left alone. What cannot be kept is told; the layers themselves are whole. Main thread.
   */
  void keep(QgsProcessingContext &context, QgsProcessingFeedback *feedback) const;

private:
  struct Layer {
    QString destination;
    Look look;
  };
  std::vector<Layer> mLayers;
};

} // namespace brushline
