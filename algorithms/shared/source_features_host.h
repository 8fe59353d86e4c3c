// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <qgsfeatureiterator.h>
#include <qgsfeaturerequest.h>

#include <QString>

#include <memory>

class QgsFeedback;
class QgsProcessingFeatureSource;

namespace brushline {

/**
 * The features of a parameter's layer, to its very end.
 *
 * The host takes a connection that breaks, or a file that cannot be read on, for the layer's end. A part taken for the
 * whole is a wrong answer, so next() listens to what the provider says and throws instead. It does the same when the
 * run is cancelled, upon which the host ends the reading too.
 *
 * Geometries come as they are, valid or not: our own checks name feature and reason, and pass over one route instead of
 * stopping the club's whole day.
 */
class SourceFeatures {
public:
  SourceFeatures();
  //! \param key of the parameter, for the message. \param source may go before this does. \param feedback may be null:
  //! nobody can cancel then.
  SourceFeatures(const QString &key, const QgsProcessingFeatureSource &source, const QgsFeedback *feedback,
                 const QgsFeatureRequest &request = QgsFeatureRequest());
  ~SourceFeatures();
  SourceFeatures(SourceFeatures &&) noexcept;
  SourceFeatures &operator=(SourceFeatures &&) noexcept;

  //! False at the layer's end. Throws Cancelled, and QgsProcessingException when the reading broke off before it.
  bool next(QgsFeature &feature);

private:
  class Listener;
  QString mKey, mLayer;
  const QgsFeedback *mFeedback = nullptr;
  QString mTrouble;                    // told when the features were asked for
  std::unique_ptr<Listener> mListener; // none after the end
  QgsFeatureIterator mFeatures;
};

} // namespace brushline
