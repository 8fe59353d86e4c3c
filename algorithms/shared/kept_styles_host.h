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
 * The looks of what a run writes. KEEP_STYLE: those of layers that were written to files are kept with them, so that
 * they look the same wherever the file is opened, also when nothing showed it while it was made (as in qgis_process).
 */
class KeptStyles {
  Q_DECLARE_TR_FUNCTIONS(brushline::KeptStyles)

public:
  static Definitions definitions();
  //! Of a run. Nothing is kept where an algorithm has no such parameter.
  explicit KeptStyles(const ParameterReader &reader);

  //! Gives an output that stands its look: it wears it where the host shows it, and it is to be kept with its file.
  void give(QgsProcessingContext &context, const QString &destination, const Look &look);
  /**
   * Keeps the looks: in a GeoPackage as the layer's default style, for other files as a file .qml beside it, which
   * appears whole or not at all. Layers in memory and in servers' databases are left alone. What cannot be kept is
   * told; the layers themselves are whole. Main thread.
   */
  void keep(QgsProcessingContext &context, QgsProcessingFeedback *feedback) const;

private:
  struct Layer {
    QString destination;
    Look look;
  };
  bool mKeep;
  std::vector<Layer> mLayers;
};

} // namespace brushline
