// SPDX-License-Identifier: GPL-2.0-or-later
#include "support/host_fixture.h"

#include "provider.h"

#include <QElapsedTimer>
#include <QEventLoop>
#include <gdal_priv.h>
#include <qgsapplication.h>
#include <qgsfeatureiterator.h>
#include <qgslinestring.h>
#include <qgsprocessingalgrunnertask.h>
#include <qgsprocessingregistry.h>
#include <qgsproject.h>
#include <qgstaskmanager.h>
#include <qgsvectorfilewriter.h>

#include <cmath>
#include <cstring>
#include <stdexcept>

namespace brushline::test {

namespace {

[[noreturn]] void fail(const QString &what) { throw std::runtime_error(what.toStdString()); }

bool sameValue(const QVariant &a, const QVariant &b) {
  if (a.isNull() || b.isNull())
    return a.isNull() == b.isNull();
  if (a.type() != b.type())
    return false;
  if (a.type() != QVariant::Double)
    return a == b;
  const double x = a.toDouble(), y = b.toDouble();
  return std::memcmp(&x, &y, sizeof x) == 0;
}

} // namespace

int hostTestMain(int argc, char **argv, const std::function<std::unique_ptr<QObject>()> &make) {
  const QTemporaryDir folder;
  if (!folder.isValid())
    qFatal("no temporary folder");
  qputenv("QT_QPA_PLATFORM", "offscreen");
  qputenv("QGIS_CUSTOM_CONFIG_PATH", folder.path().toLocal8Bit());
  if (qEnvironmentVariableIsEmpty("XDG_RUNTIME_DIR"))
    qputenv("XDG_RUNTIME_DIR", folder.path().toLocal8Bit());
  QgsApplication application(argc, argv, false);
  QgsApplication::setPrefixPath(QStringLiteral("/usr"), true);
  QgsApplication::initQgis();
  if (!QgsApplication::processingRegistry()->addProvider(new Provider()))
    qFatal("the host refuses the provider");
  int result = 1;
  {
    const std::unique_ptr<QObject> test = make();
    result = QTest::qExec(test.get(), argc, argv);
  }
  QgsProject::instance()->clear(); // a layer that outlives the host crashes
  QgsApplication::exitQgis();
  return result;
}

QgsGeometry wkt(const QString &text) {
  if (text.isEmpty())
    return QgsGeometry();
  const QgsGeometry geometry = QgsGeometry::fromWkt(text);
  if (geometry.isNull())
    fail(QStringLiteral("no geometry: ") + text);
  return geometry;
}

QgsGeometry line(const std::vector<std::pair<double, double>> &points) {
  QVector<double> x, y;
  for (const auto &[pointX, pointY] : points) {
    x << pointX;
    y << pointY;
  }
  return QgsGeometry(new QgsLineString(x, y));
}

QgsField field(const char *name, FieldType type) { return host::field(QString::fromLatin1(name), type); }

Layer layer(const QString &name, const QString &type, const QString &crs, const QList<QgsField> &fields,
            const std::vector<Row> &rows) {
  QgsVectorLayer::LayerOptions options;
  options.skipCrsValidation = true;
  Layer layer = std::make_unique<QgsVectorLayer>(type, name, QStringLiteral("memory"), options);
  if (!layer->isValid())
    fail(QStringLiteral("no layer of type ") + type);
  layer->setCrs(QgsCoordinateReferenceSystem(crs));
  if (!crs.isEmpty() && !layer->crs().isValid())
    fail(QStringLiteral("the host does not know ") + crs);
  if (!fields.isEmpty() && !layer->dataProvider()->addAttributes(fields)) // newer hosts refuse to add none
    fail(QStringLiteral("the fields of %1 were refused").arg(name));
  layer->updateFields();
  QgsFeatureList features;
  for (const Row &row : rows) {
    if (row.values.size() != fields.size())
      fail(QStringLiteral("a row of %1 has %2 values").arg(name).arg(row.values.size()));
    QgsFeature feature(layer->fields());
    feature.setGeometry(row.geometry);
    feature.setAttributes(row.values.toVector());
    features << feature;
  }
  if (!layer->dataProvider()->addFeatures(features) || layer->featureCount() != long(rows.size()))
    fail(QStringLiteral("the rows of %1 were refused: %2").arg(name, layer->dataProvider()->lastError()));
  return layer;
}

Layer table(const QString &name, const QList<QgsField> &fields, const std::vector<QVariantList> &rows) {
  std::vector<Row> all;
  for (const QVariantList &values : rows)
    all.push_back({QgsGeometry(), values});
  return layer(name, QStringLiteral("None"), QString(), fields, all);
}

QVariant valueOf(const Layer &layer) { return QVariant::fromValue(layer.get()); }

void save(const Layer &layer, const QString &path) {
  QgsVectorFileWriter::SaveVectorOptions options;
  options.driverName = QgsVectorFileWriter::driverForExtension(QFileInfo(path).suffix());
  options.layerName = layer->name();
  const std::unique_ptr<QgsVectorFileWriter> writer(QgsVectorFileWriter::create(
      path, layer->fields(), layer->wkbType(), layer->crs(), QgsCoordinateTransformContext(), options));
  QgsFeature feature;
  QgsFeatureIterator features = layer->getFeatures();
  while (features.nextFeature(feature))
    if (!writer->addFeature(feature, QgsFeatureSink::FastInsert))
      fail(QStringLiteral("%1: %2").arg(path, writer->errorMessage()));
}

void writeRaster(const QString &path, const RasterShape &shape,
                 const std::function<double(double x, double y, int band)> &value) {
  GDALAllRegister();
  GDALDriver *driver = GetGDALDriverManager()->GetDriverByName("GTiff");
  const std::unique_ptr<GDALDataset> data(driver->Create(path.toUtf8().constData(), shape.columns, shape.rows,
                                                         shape.bands, shape.whole_numbers ? GDT_Int16 : GDT_Float32,
                                                         nullptr));
  if (!data)
    fail(QStringLiteral("cannot make ") + path);
  std::array<double, 6> transform = shape.transform;
  data->SetGeoTransform(transform.data());
  if (!shape.crs.isEmpty())
    data->SetProjection(host::wkt(QgsCoordinateReferenceSystem(shape.crs)).toUtf8().constData());
  std::vector<double> cells(size_t(shape.columns) * size_t(shape.rows));
  for (int number = 1; number <= shape.bands; ++number) {
    GDALRasterBand *band = data->GetRasterBand(number);
    if (shape.no_data)
      band->SetNoDataValue(*shape.no_data);
    if (shape.scale)
      band->SetScale(*shape.scale);
    if (shape.offset)
      band->SetOffset(*shape.offset);
    for (int row = 0; row < shape.rows; ++row)
      for (int column = 0; column < shape.columns; ++column) {
        const double c = column + 0.5, r = row + 0.5;
        double cell = value(transform[0] + c * transform[1] + r * transform[2],
                            transform[3] + c * transform[4] + r * transform[5], number);
        if (std::isnan(cell) && shape.no_data)
          cell = *shape.no_data;
        cells[size_t(row) * size_t(shape.columns) + size_t(column)] = cell;
      }
    if (band->RasterIO(GF_Write, 0, 0, shape.columns, shape.rows, cells.data(), shape.columns, shape.rows, GDT_Float64,
                       0, 0) != CE_None)
      fail(QStringLiteral("cannot write ") + path);
  }
}

QVariant OutputRow::operator[](const char *field) const {
  const auto found = values.constFind(QString::fromLatin1(field));
  if (found == values.constEnd())
    fail(QStringLiteral("no field %1").arg(QLatin1String(field)));
  return *found;
}

double OutputRow::number(const char *field) const {
  const QVariant found = (*this)[field];
  bool ok = false;
  const double number = found.toDouble(&ok);
  if (found.isNull() || !ok)
    fail(QStringLiteral("field %1 has no number but “%2”").arg(QLatin1String(field), found.toString()));
  return number;
}

bool Output::sameBits(const Output &other) const {
  if (fields.names() != other.fields.names() || type != other.type || crs != other.crs ||
      rows.size() != other.rows.size())
    return false;
  for (size_t i = 0; i < rows.size(); ++i) {
    if (rows[i].geometry.asWkb() != other.rows[i].geometry.asWkb())
      return false;
    for (const QString &name : fields.names())
      if (!sameValue(rows[i].values.value(name), other.rows[i].values.value(name)))
        return false;
  }
  return true;
}

QStringList Output::texts(const char *field) const {
  QStringList texts;
  for (const OutputRow &row : rows)
    texts << row.text(field);
  return texts;
}

Output read(const QgsVectorLayer &layer) {
  Output output;
  output.fields = layer.fields();
  output.type = layer.wkbType();
  output.crs = layer.crs().authid();
  QgsFeature feature;
  QgsFeatureIterator features = layer.getFeatures();
  while (features.nextFeature(feature)) {
    OutputRow row;
    row.geometry = feature.geometry();
    for (int i = 0; i < output.fields.size(); ++i)
      row.values.insert(output.fields.at(i).name(), feature.attribute(i));
    output.rows.push_back(row);
  }
  return output;
}

void Ear::reportError(const QString &error, bool fatal) {
  errors << error;
  QgsProcessingFeedback::reportError(error, fatal);
}

void Ear::pushWarning(const QString &warning) {
  warnings << warning;
  QgsProcessingFeedback::pushWarning(warning);
}

void Ear::pushInfo(const QString &info) {
  infos << info;
  QgsProcessingFeedback::pushInfo(info);
}

const Output &Outcome::output(const char *key) const {
  const auto found = outputs.find(QString::fromLatin1(key));
  if (found == outputs.end())
    fail(QStringLiteral("no output %1; said was: %2").arg(QLatin1String(key), said()));
  return found->second;
}

QString Outcome::said() const {
  return (QStringList() << refusal << errors << warnings).join(QLatin1Char('\n')).trimmed();
}

Outcome run(const QString &algorithm, const QVariantMap &parameters, const Surroundings &surroundings) {
  std::unique_ptr<QgsProcessingAlgorithm> created(QgsApplication::processingRegistry()->createAlgorithmById(algorithm));
  if (!created)
    fail(QStringLiteral("no algorithm ") + algorithm);
  Ear ownEar;
  Ear &ear = surroundings.ear ? *surroundings.ear : ownEar;
  QgsProcessingContext context;
  context.setFeedback(&ear);
  if (surroundings.context)
    surroundings.context(context);

  Outcome outcome;
  outcome.accepted = created->checkParameterValues(parameters, context, &outcome.refusal);
  QElapsedTimer timer;
  timer.start();
  if (outcome.accepted && surroundings.in_task) {
    auto *task = new QgsProcessingAlgRunnerTask(created.get(), parameters, context, &ear);
    QEventLoop loop;
    QObject::connect(task, &QgsProcessingAlgRunnerTask::executed, &loop,
                     [&](bool successful, const QVariantMap &results) {
                       outcome.ok = successful;
                       outcome.results = results;
                       loop.quit();
                     });
    QgsApplication::taskManager()->addTask(task);
    loop.exec();
  } else if (outcome.accepted) {
    outcome.results = created->run(parameters, context, &ear, &outcome.ok);
  }
  outcome.seconds = double(timer.nsecsElapsed()) * 1e-9;
  outcome.warnings = ear.warnings;
  outcome.errors = ear.errors;
  outcome.infos = ear.infos;
  if (outcome.ok && !surroundings.leave_outputs)
    for (const QgsProcessingOutputDefinition *definition : created->outputDefinitions()) {
      const QString path = outcome.results.value(definition->name()).toString();
      if (definition->type() != QLatin1String("outputVector") || path.isEmpty())
        continue;
      const auto *made = qobject_cast<QgsVectorLayer *>(QgsProcessingUtils::mapLayerFromString(path, context));
      if (!made || !made->isValid())
        fail(QStringLiteral("%1: the layer “%2” cannot be read").arg(definition->name(), path));
      const auto counted = made->featureCount(); // before it is read
      const Output &output = outcome.outputs.emplace(definition->name(), read(*made)).first->second;
      if (size_t(counted) != output.rows.size())
        fail(QStringLiteral("%1: the layer “%2” counts %3 features, and has %4")
                 .arg(definition->name(), path)
                 .arg(counted)
                 .arg(output.rows.size()));
    }
  return outcome;
}

} // namespace brushline::test
