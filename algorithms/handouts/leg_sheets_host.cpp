// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/leg_sheets_host.h"

#include "quantities/progress.h"
#include "shared/place_reader_host.h"

#include <QHash>
#include <QRegularExpression>
#include <qgscoordinatetransform.h>
#include <qgsexception.h>
#include <qgsfeatureiterator.h>
#include <qgsgeometry.h>

#include <algorithm>
#include <cmath>

namespace brushline {

namespace {

// The sum over legs; none when one of them does not tell.
template <typename Number>
std::optional<Number> sum(const std::vector<SheetLeg> &legs, std::optional<Number> SheetLeg::*value) {
  Number total = 0;
  for (const SheetLeg &leg : legs) {
    if (!(leg.*value))
      return std::nullopt;
    total += *(leg.*value);
  }
  return total;
}

} // namespace

std::optional<double> LegSheet::length_m() const { return sum(legs, &SheetLeg::length_m); }
std::optional<double> LegSheet::minutes() const { return sum(legs, &SheetLeg::minutes); }
std::optional<double> LegSheet::climb_m() const { return sum(legs, &SheetLeg::climb_m); }
std::optional<double> LegSheet::drop_m() const { return sum(legs, &SheetLeg::drop_m); }
std::optional<long> LegSheet::paces() const { return sum(legs, &SheetLeg::paces); }

namespace leg_sheets {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::LegSheets)
};
const QString inputKey = QStringLiteral("INPUT"), marksKey = QStringLiteral("MARKS");

// A row's values by field name.
class Values {
public:
  explicit Values(const QgsFields &fields) {
    for (int i = 0; i < fields.count(); ++i)
      mIndices.insert(fields.at(i).name().toLower(), i);
  }
  void setRow(const QgsFeature &feature) { mRow = feature.attributes(); }

  QVariant value(const char *name) const {
    const int i = mIndices.value(QString::fromLatin1(name), -1);
    return i < 0 || i >= mRow.size() || mRow.at(i).isNull() ? QVariant() : mRow.at(i);
  }
  QString text(const char *name) const { return value(name).toString().trimmed(); }
  std::optional<double> real(const char *name) const {
    bool ok = false;
    const double number = value(name).toDouble(&ok);
    return ok && std::isfinite(number) ? std::optional(number) : std::nullopt;
  }
  std::optional<long> whole(const char *name) const {
    const auto number = real(name);
    return number && std::abs(*number) < 2e9 ? std::optional(std::lround(*number)) : std::nullopt;
  }

private:
  QHash<QString, int> mIndices;
  QgsAttributes mRow;
};

void checkFields(const QString &key, const QgsProcessingFeatureSource &source,
                 const std::initializer_list<const char *> &wanted, const QString &maker) {
  QStringList lacking;
  for (const char *name : wanted)
    if (source.fields().lookupField(QString::fromLatin1(name)) < 0)
      lacking << QString::fromLatin1(name);
  if (!lacking.isEmpty())
    throw QgsProcessingException(Text::tr("%1: layer “%2” lacks the field(s) %3. %4")
                                     .arg(key, source.sourceName(), lacking.join(QLatin1String(", ")), maker));
}

// A number on the dial, written the way another is.
QString writtenLike(const QString &dialText, std::optional<double> dial) {
  static const QRegularExpression pattern(QStringLiteral("^(\\d+)(?:\\.(\\d+))?(.*)$"));
  const QRegularExpressionMatch match = pattern.match(dialText);
  if (!dial || !match.hasMatch())
    return QString();
  const int decimals = match.capturedLength(2) > 0 ? int(match.capturedLength(2)) : 0;
  const int width = int(match.capturedLength(1)) + (decimals > 0 ? decimals + 1 : 0);
  return QString::number(*dial, 'f', decimals).rightJustified(width, QLatin1Char('0')) + match.captured(3);
}

QString keyOf(const Values &values) {
  return values.text("route") + QLatin1Char('\n') + values.text("walker") + QLatin1Char('\n') +
         values.text("direction");
}

// Tells of rows that were passed over: the first few each, then their number.
class PassedOver {
public:
  PassedOver(QString layer, QgsProcessingFeedback *feedback) : mLayer(std::move(layer)), mFeedback(feedback) {}
  void add(qint64 feature, const QString &reason) {
    if (++mCount <= 20)
      mFeedback->pushWarning(Text::tr("Layer “%1”, feature %2 %3 Passed over.").arg(mLayer).arg(feature).arg(reason));
  }
  void finish() const {
    if (mCount > 0)
      mFeedback->pushWarning(Text::tr("%n feature(s) of layer “%1” passed over.", nullptr, int(mCount)).arg(mLayer));
  }

private:
  QString mLayer;
  QgsProcessingFeedback *mFeedback;
  long mCount = 0;
};

// Turns points of a layer into places; none for what cannot be turned.
class ToPlaces {
public:
  ToPlaces(const QgsProcessingFeatureSource &source, const QgsCoordinateTransformContext &transforms)
      : mTransform(source.sourceCrs(), QgsCoordinateReferenceSystem(QStringLiteral("EPSG:4326")), transforms) {}

  std::optional<Place> operator()(double x, double y) const {
    double z = 0;
    try {
      if (!mTransform.isShortCircuited())
        mTransform.transformCoords(1, &x, &y, &z);
    } catch (const QgsCsException &) {
      return std::nullopt;
    }
    if (!std::isfinite(x) || !std::isfinite(y) || std::abs(y) > 90)
      return std::nullopt;
    return Place{Angle::degrees(y), Angle::degrees(x)};
  }

private:
  QgsCoordinateTransform mTransform;
};

SheetLeg legFrom(const Values &row) {
  SheetLeg leg;
  leg.number = int(row.whole("leg").value_or(0));
  leg.from = row.text("from_name");
  leg.to = row.text("to_name");
  leg.true_bearing = row.real("true_brg");
  leg.grid_bearing = row.real("grid_brg");
  leg.magnetic_bearing = row.real("mag_brg");
  leg.convergence = row.real("converg");
  leg.declination = row.real("decl");
  leg.declination_error = row.real("decl_err");
  const QVariant date = row.value("date");
  leg.date = date.toDate();
  if (!leg.date.isValid()) // CSV and other formats without dates
    leg.date = QDate::fromString(date.toString().left(10).replace(QLatin1Char('/'), QLatin1Char('-')), Qt::ISODate);
  leg.dial = row.real("dial");
  leg.back_dial = row.real("back_dial");
  leg.dial_text = row.text("dial_text");
  leg.back_text = writtenLike(leg.dial_text, leg.back_dial);
  leg.compass_point = row.text("compass_pt");
  leg.length_m = row.real("dist_m");
  leg.slope_m = row.real("slope_m");
  leg.climb_m = row.real("climb_m");
  leg.drop_m = row.real("drop_m");
  leg.paces = row.whole("paces");
  leg.minutes = row.real("walk_min");
  leg.cover = row.text("cover");
  leg.sight_m = row.real("sight_m");
  leg.spacing_m = row.real("spacing_m");
  leg.sightings = row.whole("marks");
  leg.drift_m = row.real("drift_m");
  leg.along_m = row.real("along_m");
  leg.warnings = row.text("warnings");
  return leg;
}

void readMarks(const ParameterReader &reader, QgsProcessingFeedback *feedback, std::vector<LegSheet> &sheets,
               const QHash<QString, size_t> &byKey) {
  const auto source = reader.source(marksKey);
  const ToPlaces toPlaces(*source, reader.context().transformContext());
  std::vector<QHash<int, size_t>> legs(sheets.size());
  for (size_t i = 0; i < sheets.size(); ++i)
    for (size_t k = 0; k < sheets[i].legs.size(); ++k)
      legs[i].insert(sheets[i].legs[k].number, k);
  Values row(source->fields());
  long strangers = 0, placeless = 0;
  QgsFeature feature;
  QgsFeatureIterator features = source->getFeatures(QgsFeatureRequest(), host::skipValidityChecks);
  while (features.nextFeature(feature)) {
    if (feedback->isCanceled())
      throw Cancelled();
    row.setRow(feature);
    const auto sheet = byKey.constFind(keyOf(row));
    const auto number = row.whole("leg");
    if (sheet == byKey.constEnd() || !number || !legs[*sheet].contains(int(*number))) {
      ++strangers;
      continue;
    }
    const QgsAbstractGeometry *geometry = feature.hasGeometry() ? feature.geometry().constGet() : nullptr;
    std::optional<Place> place;
    if (geometry && !geometry->isEmpty() && geometry->vertexCount() == 1)
      place = toPlaces((*geometry->vertices_begin()).x(), (*geometry->vertices_begin()).y());
    if (!place) {
      ++placeless;
      continue;
    }
    sheets[*sheet].legs[legs[*sheet].value(int(*number))].marks.push_back(
        {int(row.whole("mark").value_or(0)), row.text("name"), row.real("at_m"), row.whole("paces"),
         row.real("sight_m"), row.real("offset_m"), *place});
  }
  for (LegSheet &sheet : sheets)
    for (SheetLeg &leg : sheet.legs)
      std::stable_sort(leg.marks.begin(), leg.marks.end(),
                       [](const SheetMark &a, const SheetMark &b) { return a.number < b.number; });
  if (strangers > 0)
    feedback->pushWarning(Text::tr("%1: %n mark(s) of layer “%2” belong to none of the legs; passed over.", nullptr,
                                   int(strangers))
                              .arg(marksKey, source->sourceName()));
  if (placeless > 0)
    feedback->pushWarning(Text::tr("%1: %n mark(s) of layer “%2” have no usable place; passed over.", nullptr,
                                   int(placeless))
                              .arg(marksKey, source->sourceName()));
}

} // namespace

Definitions legsDefinitions() {
  return {helped(new QgsProcessingParameterFeatureSource(inputKey, Text::tr("Annotated legs"),
                                                         QList<int>() << host::lineLayers),
                 Text::tr("Legs as “Annotate legs” writes them, with the fields it gives them."))};
}

Definitions marksDefinitions() {
  return {helped(new QgsProcessingParameterFeatureSource(marksKey, Text::tr("Marks (points)"),
                                                         QList<int>() << host::pointLayers, QVariant(), true),
                 Text::tr("The marks of the same legs, as “Annotate legs” or “Choose marks to leapfrog between” write "
                          "them."))};
}

void check(const ParameterReader &reader) {
  const auto legs = reader.source(inputKey);
  if (!legs)
    throw QgsProcessingException(Text::tr("%1: give a layer of annotated legs.").arg(inputKey));
  checkPlaces(inputKey, *legs);
  checkFields(inputKey, *legs,
              {"route", "leg", "walker", "direction", "true_brg", "decl", "date", "dial", "dial_text", "back_dial",
               "dist_m", "paces"},
              Text::tr("Give legs that “Annotate legs” (brushline:annotatelegs) made."));
  if (!reader.has(marksKey) || !reader.given(marksKey))
    return;
  const auto marks = reader.source(marksKey);
  checkPlaces(marksKey, *marks);
  checkFields(marksKey, *marks, {"route", "leg", "walker", "mark"},
              Text::tr("Give the output MARKS of “Annotate legs” (brushline:annotatelegs), or marks that “Choose marks "
                       "to leapfrog between” (brushline:choosemarks) made."));
}

std::vector<LegSheet> read(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  const auto source = reader.source(inputKey);
  const ToPlaces toPlaces(*source, reader.context().transformContext());
  std::vector<LegSheet> sheets;
  QHash<QString, size_t> byKey;
  PassedOver passedOver(source->sourceName(), feedback);
  Values row(source->fields());
  QgsFeature feature;
  QgsFeatureIterator features = source->getFeatures(QgsFeatureRequest(), host::skipValidityChecks);
  long rows = 0;
  while (features.nextFeature(feature)) {
    if (feedback->isCanceled())
      throw Cancelled();
    ++rows;
    row.setRow(feature);
    if (row.whole("leg").value_or(0) < 1) {
      passedOver.add(feature.id(), Text::tr("has no number in its field “leg”."));
      continue;
    }
    SheetLeg leg = legFrom(row);
    if (!leg.paces || !leg.length_m) {
      passedOver.add(feature.id(), Text::tr("has no paces or no length."));
      continue;
    }
    const QgsGeometry geometry = feature.geometry();
    const int last = geometry.isNull() ? 0 : geometry.constGet()->nCoordinates() - 1;
    if (last < 1) {
      passedOver.add(feature.id(), Text::tr("has no line."));
      continue;
    }
    const QgsPoint first = geometry.vertexAt(0), end = geometry.vertexAt(last);
    const auto from = toPlaces(first.x(), first.y()), to = toPlaces(end.x(), end.y());
    if (!from || !to) {
      passedOver.add(feature.id(), Text::tr("has coordinates that are no place on the Earth."));
      continue;
    }
    leg.start = *from;
    leg.end = *to;
    const QString key = keyOf(row);
    auto found = byKey.find(key);
    if (found == byKey.end()) {
      found = byKey.insert(key, sheets.size());
      sheets.push_back({row.text("route"), row.text("walker"), row.text("direction") == QLatin1String("back"), {}});
    }
    sheets[*found].legs.push_back(std::move(leg));
  }
  if (feedback->isCanceled())
    throw Cancelled();
  passedOver.finish();
  if (sheets.empty())
    throw QgsProcessingException(rows == 0 ? Text::tr("%1: layer “%2” has no features, so there is nothing to hand out.")
                                                 .arg(inputKey, source->sourceName())
                                           : Text::tr("%1: none of the features of layer “%2” is a leg that can be used.")
                                                 .arg(inputKey, source->sourceName()));
  for (LegSheet &sheet : sheets)
    std::stable_sort(sheet.legs.begin(), sheet.legs.end(),
                     [](const SheetLeg &a, const SheetLeg &b) { return a.number < b.number; });
  if (reader.has(marksKey) && reader.given(marksKey))
    readMarks(reader, feedback, sheets, byKey);
  return sheets;
}

} // namespace leg_sheets

} // namespace brushline
