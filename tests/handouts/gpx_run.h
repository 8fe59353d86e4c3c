// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "legs/leg_layer_host.h"
#include "support/host_fixture.h"

#include <QDir>
#include <QDomDocument>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

#include <stdexcept>
#include <vector>

namespace brushline::test {

//! The values of a row by field name; those not named are NULL.
using Named = QVariantMap;

//! A leg east of the place before, as annotatelegs would write it: from x to x + 0.001 degrees on latitude y, with the
//! numbers that a handout cannot do without.
inline Named leg(const QString &route, int number, const Named &more = {}) {
  Named row{{"route", route},
            {"leg", number},
            {"direction", "out"},
            {"true_brg", 90.0},
            {"decl", -17.0},
            {"mag_brg", 107.0},
            {"dial", 108.0},
            {"dial_text", QString::fromUtf8("108°")},
            {"back_dial", 288.0},
            {"compass_pt", "ESE"},
            {"dist_m", 73.0},
            {"paces", 100},
            {"date", QDate(2026, 6, 15)}};
  for (auto one = more.begin(); one != more.end(); ++one)
    row[one.key()] = one.value();
  return row;
}

//! A row and its geometry as text.
struct LegRow {
  Named values;
  QString wkt;
};

//! The n-th stretch of a line that runs east, from 1.
inline QString stretch(int n, double latitude = 48.8) {
  return QStringLiteral("LINESTRING(%1 %3, %2 %3)")
      .arg(-55.2 + 0.001 * (n - 1), 0, 'f', 6)
      .arg(-55.2 + 0.001 * n, 0, 'f', 6)
      .arg(latitude, 0, 'f', 6);
}

inline Layer layerOf(const QString &name, const QString &type, const QgsFields &fields, const std::vector<LegRow> &rows,
                     const QString &crs) {
  QList<QgsField> list;
  for (const QgsField &one : fields)
    list << one;
  std::vector<Row> all;
  for (const LegRow &row : rows) {
    QVariantList values;
    for (const QgsField &one : fields)
      values << row.values.value(one.name());
    all.push_back({wkt(row.wkt), values});
  }
  return layer(name, type, crs, list, all);
}

inline Layer legsOf(const std::vector<LegRow> &rows, const QString &crs = QStringLiteral("EPSG:4326")) {
  return layerOf(QStringLiteral("legs"), QStringLiteral("LineString"), LegLayer::fields(), rows, crs);
}

//! Marks as annotatelegs writes them.
inline Layer marksOf(const std::vector<LegRow> &rows) {
  return layerOf(QStringLiteral("marks"), QStringLiteral("Point"), LegLayer::markFields(), rows,
                 QStringLiteral("EPSG:4326"));
}

//! Children of an element with a name without prefix.
inline std::vector<QDomElement> childrenOf(const QDomElement &parent, const QString &name) {
  std::vector<QDomElement> found;
  for (QDomElement one = parent.firstChildElement(); !one.isNull(); one = one.nextSiblingElement())
    if (one.localName() == name)
      found.push_back(one);
  return found;
}

//! The text of the only child of that name; empty without.
inline QString text(const QDomElement &parent, const QString &name) {
  const auto found = childrenOf(parent, name);
  if (found.size() > 1)
    throw std::runtime_error("more than one " + name.toStdString());
  return found.empty() ? QString() : found.front().text();
}

//! The text of an element of our own among the extensions.
inline QString own(const QDomElement &parent, const QString &name) {
  const auto extensions = childrenOf(parent, QStringLiteral("extensions"));
  if (extensions.size() != 1)
    return QString();
  const auto found = childrenOf(extensions.front(), name);
  if (found.size() > 1 || (!found.empty() && found.front().namespaceURI() != QLatin1String("urn:brushline:legs:1")))
    throw std::runtime_error("not one of our own: " + name.toStdString());
  return found.empty() ? QString() : found.front().text();
}

inline QStringList texts(const std::vector<QDomElement> &elements, const QString &name) {
  QStringList all;
  for (const QDomElement &one : elements)
    all << text(one, name);
  return all;
}

//! A GPX file, read by Qt's DOM.
struct Gpx {
  QDomDocument document;
  QDomElement root, metadata;
  std::vector<QDomElement> waypoints, routes;

  explicit Gpx(const QString &path) {
    QFile file(path);
    QString message;
    if (!file.open(QIODevice::ReadOnly) || !document.setContent(&file, true, &message))
      throw std::runtime_error("no XML: " + path.toStdString() + " " + message.toStdString());
    root = document.documentElement();
    metadata = childrenOf(root, QStringLiteral("metadata")).at(0);
    waypoints = childrenOf(root, QStringLiteral("wpt"));
    routes = childrenOf(root, QStringLiteral("rte"));
  }
  std::vector<QDomElement> points(size_t route = 0) const {
    return childrenOf(routes.at(route), QStringLiteral("rtept"));
  }
};

//! What xmllint says against the schema; empty when it is content.
inline QString againstSchema(const QString &path) {
  static const QString schema = QStringLiteral(BRUSHLINE_GPX_SCHEMA);
  const auto call = [](const QString &program, const QStringList &arguments) {
    QProcess process;
    process.setProcessChannelMode(QProcess::MergedChannels);
    process.start(program, arguments);
    const bool ended = process.waitForFinished(120000) && process.exitStatus() == QProcess::NormalExit;
    return ended && process.exitCode() == 0
               ? QString()
               : QStringLiteral("%1 failed: %2 %3")
                     .arg(program, process.errorString(), QString::fromUtf8(process.readAll()));
  };
  static const QString fetched = call(QStringLiteral(BRUSHLINE_TESTS_DIR "/handouts/gpx_schema.sh"), {schema});
  return fetched.isEmpty() ? call(QStringLiteral("xmllint"), {QStringLiteral("--noout"), QStringLiteral("--nonet"),
                                                              QStringLiteral("--schema"), schema, path})
                           : fetched;
}

//! Runs exportgpx into a folder of its own, unless the parameters say otherwise.
class GpxRun {
public:
  explicit GpxRun(QVariantMap parameters, const Surroundings &surroundings = {}) {
    if (!parameters.contains("OUTPUT"))
      parameters["OUTPUT"] = mFolder.filePath("legs.gpx");
    path = parameters["OUTPUT"].toString();
    outcome = run("brushline:exportgpx", parameters, surroundings);
    if (outcome.ok)
      invalid = againstSchema(path);
  }

  Outcome outcome;
  QString path;
  QString invalid; //!< what is wrong with it by the schema

  Gpx gpx() const { return Gpx(path); }
  QByteArray bytes() const {
    QFile file(path);
    file.open(QIODevice::ReadOnly);
    return file.readAll();
  }
  //! The files in the folder.
  QStringList files() const {
    return QDir(mFolder.path()).entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot);
  }
  QString warnings() const { return outcome.warnings.join(QLatin1Char('\n')); }

private:
  QTemporaryDir mFolder;
};

} // namespace brushline::test

//! Stops the test when no valid file was written.
#define VERIFY_EXPORTED(run)                                                                                           \
  QVERIFY2((run).outcome.ok, qPrintable((run).outcome.said()));                                                        \
  QVERIFY2((run).invalid.isEmpty(), qPrintable((run).invalid))
