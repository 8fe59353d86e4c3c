// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/base_algorithm.h"

#include "shared/clean_feedback_host.h"
#include "shared/input_files_host.h"
#include "shared/kept_styles_host.h"
#include "shared/parameter_checks_host.h"

#include <QFile>
#include <QIcon>
#include <QThread>
#include <qgsapplication.h>
#include <qgsexception.h>

#include <algorithm>
#include <new>

namespace brushline {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::BaseAlgorithm)
};

// Runs work and lets nothing out but the host's own exception and Cancelled.
template <typename Work> auto withHostExceptions(Work work) {
  try {
    return work();
  } catch (const QgsProcessingException &error) {
    throw QgsProcessingException(CleanFeedback::text(error.what()));
  } catch (const Cancelled &) {
    throw;
  } catch (const std::bad_alloc &) {
    throw QgsProcessingException(
        Text::tr("There is not enough memory for this. Split the input, or write to a file instead of memory."));
  } catch (const QgsException &error) {
    throw QgsProcessingException(CleanFeedback::text(Text::tr("The host reports: %1").arg(error.what())));
  } catch (const std::exception &error) {
    throw QgsProcessingException(
        CleanFeedback::text(Text::tr("This could not be computed: %1").arg(QString::fromUtf8(error.what()))));
  } catch (...) {
    throw QgsProcessingException(Text::tr("This could not be computed, for a reason that was not told."));
  }
}
void refuseInputFiles(const ParameterReader &reader) {
  for (const QgsProcessingParameterDefinition *definition : reader.definitions())
    if (definition->isDestination() && reader.given(definition->name()))
      refuseInputFile(reader, definition->name());
}
} // namespace

QString BaseAlgorithm::shortHelpString() const {
  const QString stem = QStringLiteral(":/brushline/help/") + name();
  const QString language =
      QgsApplication::instance() ? QgsApplication::locale().section(QLatin1Char('_'), 0, 0) : QString();
  for (const QString &path : {stem + QLatin1Char('_') + language, stem}) {
    QFile file(path + QStringLiteral(".txt"));
    if (file.open(QIODevice::ReadOnly))
      return QString::fromUtf8(file.readAll());
  }
  return QString();
}

QIcon BaseAlgorithm::icon() const { return QIcon(svgIconPath()); }

QString BaseAlgorithm::svgIconPath() const { return QStringLiteral(":/brushline/icon.svg"); }

void BaseAlgorithm::checkAll(const ParameterReader &reader) const {
  check(reader);
  checkLayers(reader);
  checkOutputNames(reader);
  refuseInputFiles(reader);
}

bool BaseAlgorithm::checkParameterValues(const QVariantMap &parameters, QgsProcessingContext &context,
                                         QString *message) const {
  try {
    withHostExceptions([&] {
      const ParameterReader reader(*this, parameters, context);
      checkAll(reader);
    });
  } catch (const QgsProcessingException &error) {
    if (message)
      *message = error.what();
    return false;
  }
  return QgsProcessingAlgorithm::checkParameterValues(parameters, context, message);
}

void BaseAlgorithm::addParameters(const Definitions &definitions) {
  for (QgsProcessingParameterDefinition *definition : definitions)
    addParameter(definition);
}

size_t BaseAlgorithm::workers() {
  const int most = QgsApplication::maxThreads(); // -1: as many as there are
  return size_t(std::max(1, most > 0 ? most : QThread::idealThreadCount()));
}

bool BaseAlgorithm::prepareAlgorithm(const QVariantMap &parameters, QgsProcessingContext &context,
                                     QgsProcessingFeedback *feedback) {
  try {
    withHostExceptions([&] {
      const ParameterReader reader(*this, parameters, context);
      checkAll(reader);
      CleanFeedback clean(feedback);
      prepare(reader, &clean);
    });
  } catch (const Cancelled &) {
    return false;
  }
  return true;
}

QVariantMap BaseAlgorithm::processAlgorithm(const QVariantMap &parameters, QgsProcessingContext &context,
                                            QgsProcessingFeedback *feedback) {
  try {
    return withHostExceptions([&] {
      const ParameterReader reader(*this, parameters, context);
      mStyles = reader.styles();
      CleanFeedback clean(feedback);
      return run(reader, &clean);
    });
  } catch (const Cancelled &) {
    feedback->pushInfo(Text::tr("Cancelled: nothing was kept of the outputs."));
    return {};
  }
}

QVariantMap BaseAlgorithm::postProcessAlgorithm(QgsProcessingContext &context, QgsProcessingFeedback *feedback) {
  if (mStyles)
    mStyles->keep(context, feedback);
  return {};
}

} // namespace brushline
