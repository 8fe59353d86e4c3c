// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/source_features_host.h"

#include "shared/compatibility_host.h"
#include "shared/feedback_progress_host.h"

#include <qgsapplication.h>
#include <qgsexception.h>
#include <qgsmessagelog.h>

#include <QThread>

#include <cpl_error.h>

#include <atomic>

namespace brushline {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::SourceFeatures)
};
} // namespace

// What a provider tells of trouble while it reads, to the host's log or to GDAL.
class SourceFeatures::Listener {
public:
  Listener() {
    mConnection = QObject::connect(
        QgsApplication::messageLog(),
        qOverload<const QString &, const QString &, Qgis::MessageLevel>(&QgsMessageLog::messageReceived),
        [state = mState](const QString &message, const QString &tag, Qgis::MessageLevel level) {
          // Other threads tell their own things, perhaps even while the listener goes; hence shared.
          if (state->reader == QThread::currentThread() && level != Qgis::Info && level != Qgis::Success)
            state->heard = tag + QStringLiteral(": ") + message.simplified();
        });
  }
  ~Listener() { QObject::disconnect(mConnection); }
  Listener(const Listener &) = delete;
  Listener &operator=(const Listener &) = delete;

  //! Runs a step of the reading in this thread. \returns what went wrong in it; empty when all was well.
  template <typename Step> QString during(const Step &step) {
    CPLErrorReset();
    mState->heard.clear();
    mState->reader = QThread::currentThread();
    step();
    mState->reader = nullptr;
    if (!mState->heard.isEmpty())
      return mState->heard;
    return CPLGetLastErrorType() >= CE_Failure ? QString::fromUtf8(CPLGetLastErrorMsg()).simplified() : QString();
  }

private:
  struct State {
    std::atomic<QThread *> reader = nullptr; //!< while it reads
    QString heard;                           //!< touched by the reader only
  };
  std::shared_ptr<State> mState = std::make_shared<State>();
  QMetaObject::Connection mConnection;
};

SourceFeatures::SourceFeatures() = default;
SourceFeatures::~SourceFeatures() = default;
SourceFeatures::SourceFeatures(SourceFeatures &&) noexcept = default;
SourceFeatures &SourceFeatures::operator=(SourceFeatures &&) noexcept = default;

SourceFeatures::SourceFeatures(const QString &key, const QgsProcessingFeatureSource &source,
                               const QgsFeedback *feedback, const QgsFeatureRequest &request)
    : mKey(key), mLayer(source.sourceName()), mFeedback(feedback), mListener(std::make_unique<Listener>()) {
  mTrouble = mListener->during([&] { mFeatures = source.getFeatures(request, host::skipValidityChecks); });
}

bool SourceFeatures::next(QgsFeature &feature) {
  if (!mListener)
    return false;
  bool read = false;
  const QString trouble = mListener->during([&] { read = mFeatures.nextFeature(feature); });
  FeedbackProgress(mFeedback).check();
  if (read) {
    mTrouble.clear(); // it could be got over
    return true;
  }
  mListener.reset();
  if (!trouble.isEmpty())
    mTrouble = trouble;
  if (!mTrouble.isEmpty())
    throw QgsProcessingException(
        Text::tr("%1: the reading of layer “%2” broke off before its end (%3). Nothing is worked out from a part; see "
                 "to the file or the connection, and run again.")
            .arg(mKey, mLayer, mTrouble));
  return false;
}

} // namespace brushline
