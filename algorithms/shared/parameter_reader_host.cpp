// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/parameter_reader_host.h"

#include "shared/kept_styles_host.h"

#include <qgsexception.h>
#include <qgsrasterlayer.h>

#include <stdexcept>

namespace brushline {

QgsProcessingParameterDefinition *advanced(QgsProcessingParameterDefinition *definition) {
  definition->setFlags(definition->flags() | host::advanced);
  return definition;
}

QgsProcessingParameterDefinition *helped(QgsProcessingParameterDefinition *definition, const QString &help) {
  definition->setHelp(help);
  return definition;
}

QgsProcessingParameterDefinition *numberDefinition(const QString &key, const QString &label, const Limits &limits) {
  return new QgsProcessingParameterNumber(key, label, host::doubleNumber, limits.usual, false, limits.least,
                                          limits.most);
}

QString plain(double value) { return QString::number(value, 'g', 10); }

ParameterReader::ParameterReader(const QgsProcessingAlgorithm &algorithm, const QVariantMap &parameters,
                                 QgsProcessingContext &context)
    : mAlgorithm(algorithm), mParameters(parameters), mContext(context), mStyles(std::make_shared<KeptStyles>(*this)) {}

const QgsProcessingParameterDefinition *ParameterReader::definition(const QString &key) const {
  const QgsProcessingParameterDefinition *definition = mAlgorithm.parameterDefinition(key);
  Q_ASSERT(definition);
  return definition;
}

bool ParameterReader::given(const QString &key) const {
  const QVariant value = mParameters.value(key);
  return value.isValid() && !value.isNull() && !(value.type() == QVariant::String && value.toString().isEmpty());
}

QString ParameterReader::shown(const QString &key) const {
  const QVariant value = mParameters.value(key);
  if (value.canConvert<QgsProcessingFeatureSourceDefinition>())
    return value.value<QgsProcessingFeatureSourceDefinition>().source.staticValue().toString();
  if (value.canConvert<QgsProcessingOutputLayerDefinition>())
    return value.value<QgsProcessingOutputLayerDefinition>().sink.staticValue().toString();
  return value.toString();
}

double ParameterReader::number(const QString &key, const Limits &limits) const {
  const QVariant given = mParameters.value(key);
  bool isNumber = true;
  if (given.type() == QVariant::String && !given.toString().isEmpty())
    given.toDouble(&isNumber);
  if (!isNumber) // the host would take the default of an optional number, or 0
    throw QgsProcessingException(tr("%1 (%2) is “%3”: give a number from %4 to %5, with a decimal point.")
                                     .arg(key, definition(key)->description(), given.toString(), plain(limits.least),
                                          plain(limits.most)));
  const double value = QgsProcessingParameters::parameterAsDouble(definition(key), mParameters, mContext);
  if (!limits.contains(value))
    throw QgsProcessingException(tr("%1 (%2) is %3: give a number from %4 to %5.")
                                     .arg(key, definition(key)->description(), plain(value), plain(limits.least),
                                          plain(limits.most)));
  return value;
}

std::optional<double> ParameterReader::maybeNumber(const QString &key, const Limits &limits) const {
  if (!given(key))
    return std::nullopt;
  return number(key, limits);
}

int ParameterReader::choice(const QString &key, int count) const {
  if (given(key)) {
    bool isNumber = false;
    const int value = mParameters.value(key).toInt(&isNumber);
    if (!isNumber && mParameters.value(key).type() == QVariant::String)
      throw QgsProcessingException(tr("%1 (%2) is “%3”: give a whole number from 0 to %4.")
                                       .arg(key, definition(key)->description(), mParameters.value(key).toString())
                                       .arg(count - 1));
    if (isNumber && (value < 0 || value >= count))
      throw QgsProcessingException(tr("%1 (%2) is %3: give a whole number from 0 to %4.")
                                       .arg(key, definition(key)->description())
                                       .arg(value)
                                       .arg(count - 1));
  }
  return QgsProcessingParameters::parameterAsEnum(definition(key), mParameters, mContext);
}

bool ParameterReader::flag(const QString &key) const {
  return QgsProcessingParameters::parameterAsBool(definition(key), mParameters, mContext);
}

QString ParameterReader::text(const QString &key) const {
  return QgsProcessingParameters::parameterAsString(definition(key), mParameters, mContext).trimmed();
}

QDate ParameterReader::maybeDate(const QString &key) const {
  if (!given(key))
    return QDate();
  const QDate date = QgsProcessingParameters::parameterAsDate(definition(key), mParameters, mContext);
  if (!date.isValid())
    throw QgsProcessingException(tr("%1 (%2) is “%3”: give a day as year-month-day, for example 2026-05-31.")
                                     .arg(key, definition(key)->description(), mParameters.value(key).toString()));
  return date;
}

QgsCoordinateReferenceSystem ParameterReader::crs(const QString &key) const {
  if (!given(key))
    return QgsCoordinateReferenceSystem();
  const QgsCoordinateReferenceSystem crs =
      QgsProcessingParameters::parameterAsCrs(definition(key), mParameters, mContext);
  if (!crs.isValid())
    throw QgsProcessingException(
        tr("%1 (%2): “%3” is no coordinate reference system that this machine knows. Give one like EPSG:32621.")
            .arg(key, definition(key)->description(), mParameters.value(key).toString()));
  return crs;
}

std::unique_ptr<QgsProcessingFeatureSource> ParameterReader::source(const QString &key) const {
  std::unique_ptr<QgsProcessingFeatureSource> source;
  try {
    source.reset(QgsProcessingParameters::parameterAsSource(definition(key), mParameters, mContext));
  } catch (const std::length_error &) { // QGIS 3.44 of an extent without end
    throw QgsProcessingException(tr("%1 (%2): “%3” has a coordinate that is not a number, with which this host cannot "
                                    "open a layer. Find the feature and mend it.")
                                     .arg(key, definition(key)->description(), shown(key)));
  }
  if (!source && given(key))
    throw QgsProcessingException(
        tr("%1 (%2): “%3” cannot be read. Give a layer of the project or the path of a file that the host reads.")
            .arg(key, definition(key)->description(), shown(key)));
  return source;
}

QgsRasterLayer *ParameterReader::raster(const QString &key) const {
  QgsRasterLayer *layer = QgsProcessingParameters::parameterAsRasterLayer(definition(key), mParameters, mContext);
  if (!layer && given(key))
    throw QgsProcessingException(
        tr("%1 (%2): “%3” cannot be read. Give a raster of the project or the path of a file that the host reads.")
            .arg(key, definition(key)->description(), shown(key)));
  return layer;
}

int ParameterReader::fieldIndex(const QString &key, const QgsProcessingFeatureSource &source) const {
  const QString name = text(key);
  if (name.isEmpty())
    return -1;
  const int index = source.fields().lookupField(name);
  if (index < 0) {
    QStringList names;
    for (const QgsField &field : source.fields())
      names << field.name();
    throw QgsProcessingException(tr("%1: layer “%2” has no field “%3”. Its fields are: %4.")
                                     .arg(key, source.sourceName(), name, names.join(QLatin1String(", "))));
  }
  return index;
}

} // namespace brushline
