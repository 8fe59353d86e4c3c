// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/leg_sheets_host.h"

#include "handouts/gpx_values.h"
#include "quantities/progress.h"
#include "shared/feedback_progress_host.h"
#include "shared/geodesic.h"
#include "shared/place_reader_host.h"
#include "shared/source_features_host.h"

#include <QHash>
#include <QMap>
#include <QRegularExpression>
#include <QSet>
#include <qgscoordinatetransform.h>
#include <qgsexception.h>
#include <qgsfeatureiterator.h>
#include <qgsgeometry.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

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

QString SheetLeg::letter() const {
  return in_pieces && piece ? QString::fromStdString(letterOf(size_t(piece->number - 1))).toLower() : QString();
}

size_t LegSheet::legCount() const {
  return size_t(std::count_if(legs.begin(), legs.end(),
                              [](const SheetLeg &leg) { return !leg.in_pieces || leg.piece->number == 1; }));
}

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
constexpr long greatestNumber = 1000000; // of a leg; nobody walks more

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
    throw QgsProcessingException(Text::tr("%1: layer “%2” lacks these fields: %3. %4")
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

bool isBack(const Values &values) { return values.text("direction") == QLatin1String("back"); }

QString keyOf(const Values &values, bool back) {
  return values.text("route") + QLatin1Char('\n') + values.text("walker") + QLatin1Char('\n') +
         (back ? QLatin1String("back") : QLatin1String("out"));
}
QString keyOf(const Values &values) { return keyOf(values, isBack(values)); }

// Of the sheets on which a mark may be: where it does not tell the direction, its place does.
QStringList sheetKeys(const Values &mark) {
  if (mark.text("direction").isEmpty())
    return {keyOf(mark, false), keyOf(mark, true)};
  return {keyOf(mark)};
}

// Tells of rows that were passed over: the first few each, then their number.
class PassedOver {
public:
  PassedOver(QString layer, QgsProcessingFeedback *feedback) : mLayer(std::move(layer)), mFeedback(feedback) {}
  void add(qint64 feature, const QString &reason) {
    if (++mCount <= 20)
      mFeedback->pushWarning(
          Text::tr("Layer “%1”, feature %2 %3 Passed over.").arg(mLayer, QString::number(feature), reason));
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

std::optional<SheetPiece> pieceFrom(const Values &row) {
  const QString part = row.text("part");
  const long number = row.whole("piece").value_or(0);
  static const QStringList parts{QStringLiteral("along"), QStringLiteral("out"), QStringLiteral("past"),
                                 QStringLiteral("back")};
  if (number < 1 || number > greatestNumber || !parts.contains(part))
    return std::nullopt;
  return SheetPiece{int(number),
                    part,
                    row.text("turn"),
                    row.text("side"),
                    row.text("obstacle"),
                    row.real("count_m"),
                    row.whole("run_paces"),
                    row.real("blocked_m")};
}

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
  leg.piece = pieceFrom(row);
  return leg;
}

//! A row of INPUT that has a number.
struct Row {
  int number;
  int piece; // 0: a whole leg
  qint64 feature;
  long met;                    // the how many-eth row of the layer
  std::optional<SheetLeg> leg; // none: of no use
};

//! The rows of one name, walker and direction.
struct Group {
  QString route, walker;
  bool back;
  std::vector<Row> rows;
};

constexpr double joint_m = 1;     // the ends of two legs this near are one place, whatever a format rounds
constexpr size_t mostApart = 100; // routes of one name by their joints alone; more are legs in disorder

bool inOrder(const Row &a, const Row &b) { return std::tie(a.number, a.piece) < std::tie(b.number, b.piece); }

// Whether rows, in order, have each number and piece once.
bool numberedOnce(const std::vector<Row> &rows) {
  return std::adjacent_find(rows.begin(), rows.end(), [](const Row &a, const Row &b) { return !inOrder(a, b); }) ==
         rows.end();
}

// Whether a row is that of the next leg, or of the next piece of the same.
bool follows(const Row &last, const Row &row) {
  return row.number == last.number ? last.piece > 0 && row.piece == last.piece + 1
                                   : row.number == last.number + 1 && row.piece <= 1;
}

// Whether warnings tell of so many metres, whatever their language: parts of a route lie so far from each other.
bool tellOf(const QString &warnings, double metres) {
  static const QRegularExpression length(QStringLiteral("(\\d+)\\s*m\\b"));
  auto found = length.globalMatch(warnings);
  while (found.hasNext())
    if (std::abs(found.next().captured(1).toDouble() - metres) <= joint_m)
      return true;
  return false;
}

// Whether a leg begins where the one before ends. One of no use does not tell.
bool joins(const Row &last, const Row &row) {
  if (!last.leg || !row.leg)
    return true;
  const double gap = geodesicBetween(last.leg->end, row.leg->start).length.metres();
  return gap <= joint_m || tellOf(row.leg->warnings, gap);
}

// Whether rows are a whole leg that can be used: one, or all of its pieces, which join, and the last ends on its line.
bool isWhole(const Row *first, const Row *end) {
  const bool several = end - first > 1;
  for (const Row *row = first; row != end; ++row)
    if (!row->leg || (row->piece > 0 ? row->piece != int(row - first) + 1 : several) ||
        (row != first && !joins(*(row - 1), *row)))
      return false;
  const std::optional<SheetPiece> &piece = (end - 1)->leg->piece;
  return !piece || piece->part == QLatin1String("along") || piece->part == QLatin1String("back");
}

// Of rows in order: nobody gets round an obstacle by some of the pieces.
void dropUnfinished(std::vector<Row> &rows, PassedOver &passedOver) {
  for (Row *row = rows.data(), *const all = row + rows.size(); row != all;) {
    const int number = row->number;
    Row *const end = std::find_if(row, all, [&](const Row &other) { return other.number != number; });
    const bool whole = isWhole(row, end), several = end - row > 1;
    for (; row != end; ++row)
      if (whole) {
        row->leg->in_pieces = several;
      } else if (row->leg) {
        passedOver.add(row->feature, Text::tr("is a piece of leg %1, of which others are lacking.").arg(number));
        row->leg.reset();
      }
  }
}

// The leg at the rows' end, where the next does not join it: its last pieces may be lacking.
void dropLast(std::vector<Row> &rows, PassedOver &passedOver) {
  const int number = rows.back().number;
  for (auto row = rows.rbegin(); row != rows.rend() && row->number == number; ++row) {
    if (row->leg)
      passedOver.add(row->feature, Text::tr("is of leg %1, which does not end where the next starts.").arg(number));
    row->leg.reset();
  }
}

// The rows, route by route where several have one name. Throws when they do not tell, and Cancelled.
std::vector<std::vector<Row>> takenApart(Group &group, PassedOver &passedOver, const Progress &progress) {
  std::stable_sort(group.rows.begin(), group.rows.end(), inOrder);
  const bool once = numberedOnce(group.rows);
  if (once)
    dropUnfinished(group.rows, passedOver);
  else
    std::sort(group.rows.begin(), group.rows.end(), [](const Row &a, const Row &b) { return a.met < b.met; });
  std::vector<std::vector<Row>> routes;
  for (Row &row : group.rows) {
    progress.check();
    const Row *last = routes.empty() ? nullptr : &routes.back().back();
    const bool next = last && follows(*last, row), joined = next && joins(*last, row);
    if (once && next && !joined && last->piece > 0)
      dropLast(routes.back(), passedOver);
    const bool begins = once ? !last || (next && !joined) : row.number == 1 && row.piece <= 1;
    if (once ? routes.size() > mostApart : !begins && !joined)
      throw QgsProcessingException(
          Text::tr("%1: several routes are called “%2”, and the rows do not tell which leg belongs to which (feature "
                   "%3). Give each route a name of its own and annotate them again.")
              .arg(inputKey, group.route, QString::number(row.feature)));
    if (begins)
      routes.emplace_back();
    routes.back().push_back(std::move(row));
  }
  for (std::vector<Row> &route : routes)
    dropUnfinished(route, passedOver);
  return routes;
}

LegSheet sheetOf(const Group &group, std::vector<Row> rows) {
  LegSheet sheet;
  sheet.route = sheet.given_name = group.route;
  sheet.walker = group.walker;
  sheet.back = group.back;
  int next = 1;
  for (Row &row : rows) {
    for (; next < row.number; ++next)
      sheet.missing.push_back(next);
    if (row.leg)
      sheet.legs.push_back(std::move(*row.leg));
    else if (next == row.number)
      sheet.missing.push_back(row.number);
    next = row.number + 1;
  }
  return sheet;
}

// The sheets of a run, in the order in which their first rows were met. Throws Cancelled.
std::vector<LegSheet> sheetsOf(std::vector<Group> groups, PassedOver &passedOver, const Progress &progress) {
  std::vector<std::pair<long, LegSheet>> met;
  for (Group &group : groups) {
    int copy = 0;
    for (std::vector<Row> &rows : takenApart(group, passedOver, progress)) {
      long first = rows.front().met;
      for (const Row &row : rows)
        first = std::min(first, row.met);
      LegSheet sheet = sheetOf(group, std::move(rows));
      sheet.copy = ++copy;
      if (!sheet.legs.empty())
        met.emplace_back(first, std::move(sheet));
    }
  }
  std::stable_sort(met.begin(), met.end(), [](const auto &a, const auto &b) { return a.first < b.first; });
  std::vector<LegSheet> sheets;
  for (auto &[first, sheet] : met)
    sheets.push_back(std::move(sheet));
  return sheets;
}

QString keyOf(const LegSheet &sheet) {
  return sheet.route + QLatin1Char('\n') + sheet.walker + QLatin1Char('\n') +
         (sheet.back ? QLatin1String("back") : QLatin1String("out"));
}

// Gives marks to the legs they lie on.
class MarkTaker {
public:
  explicit MarkTaker(std::vector<LegSheet> &sheets) {
    for (LegSheet &sheet : sheets)
      for (SheetLeg &leg : sheet.legs)
        if (!leg.in_pieces) // marks count from the start of a whole one
          mLegs[{keyOf(sheet), leg.number}].push_back(&leg);
  }

  //! The leg of one of these sheets on which the mark lies best gets it. False when there is no such leg, or the mark
  //! lies elsewhere.
  bool take(const QStringList &sheets, int leg, const SheetMark &mark) {
    std::vector<std::pair<double, SheetLeg *>> near; // how far off
    for (const QString &sheet : sheets)
      if (const auto found = mLegs.find({sheet, leg}); found != mLegs.end())
        for (SheetLeg *candidate : found->second)
          if (const double off = metresOff(mark, *candidate); off <= slack_m)
            near.emplace_back(off, candidate);
    std::stable_sort(near.begin(), near.end(), [](const auto &a, const auto &b) { return a.first < b.first; });
    const auto taker = near.size() == 1 ? near.begin() : std::find_if(near.begin(), near.end(), [&](const auto &each) {
      return !has(*each.second, mark.number);
    });
    if (taker == near.end())
      return false;
    taker->second->marks.push_back(mark);
    return true;
  }

private:
  static constexpr double slack_m = 5;

  // How far a mark's place is from where it says it is: so far along the leg, so far to its right. Marks of a route
  // that was drawn anew since, and of the other way, are far off. To the centimetre: what rounding leaves decides
  // nothing.
  static double metresOff(const SheetMark &mark, const SheetLeg &leg) {
    if (!mark.at_m)
      return 0;
    if (*mark.at_m > leg.length_m.value_or(0) + slack_m)
      return HUGE_VAL;
    const double right = mark.offset_m.value_or(0);
    const TrueBearing towards(geodesicBetween(leg.start, leg.end).departure.angle() +
                              Angle::radians(std::atan2(right, *mark.at_m)));
    const Place told = geodesicDestination(leg.start, towards, Length::metres(std::hypot(*mark.at_m, right)));
    return std::round(100 * geodesicBetween(told, mark.place).length.metres()) / 100;
  }
  static bool has(const SheetLeg &leg, int number) {
    return std::any_of(leg.marks.begin(), leg.marks.end(),
                       [number](const SheetMark &mark) { return mark.number == number; });
  }

  std::map<std::pair<QString, int>, std::vector<SheetLeg *>> mLegs;
};

// Gives each route of a name that comes again one of its own, "Loop (2)", in all that is handed out.
void nameApart(std::vector<LegSheet> &sheets, QgsProcessingFeedback *feedback) {
  QSet<QString> names;
  for (const LegSheet &sheet : sheets)
    names << sheet.route;
  QHash<QString, QString> given; // by route and copy
  QMap<QString, QStringList> told;
  for (LegSheet &sheet : sheets) {
    if (sheet.copy < 2)
      continue;
    const QString key = sheet.route + QLatin1Char('\n') + QString::number(sheet.copy);
    if (!given.contains(key)) {
      QString name;
      for (int n = sheet.copy; name.isEmpty() || names.contains(name); ++n)
        name = QStringLiteral("%1 (%2)").arg(sheet.route, QString::number(n)).trimmed();
      names << name;
      given.insert(key, name);
      told[sheet.route] << name;
    }
    sheet.route = given.value(key);
  }
  for (auto route = told.constBegin(); route != told.constEnd(); ++route)
    feedback->pushWarning(Text::tr("%1: several routes are called “%2”; they are kept apart as “%2”, “%3”. Give each "
                                   "route a name of its own.")
                              .arg(inputKey, route.key(), route->join(QStringLiteral("”, “"))));
}

void readMarks(const ParameterReader &reader, QgsProcessingFeedback *feedback, std::vector<LegSheet> &sheets) {
  const auto source = reader.source(marksKey);
  const ToPlaces toPlaces(source->sourceCrs(), reader.context().transformContext());
  MarkTaker taker(sheets);
  Values row(source->fields());
  long strangers = 0, placeless = 0;
  QgsFeature feature;
  SourceFeatures features(marksKey, *source, feedback);
  while (features.next(feature)) {
    row.setRow(feature);
    const QgsAbstractGeometry *geometry = feature.hasGeometry() ? feature.geometry().constGet() : nullptr;
    std::optional<Place> place;
    if (geometry && !geometry->isEmpty() && geometry->vertexCount() == 1)
      place = toPlaces((*geometry->vertices_begin()).x(), (*geometry->vertices_begin()).y());
    if (!place)
      ++placeless;
    else if (const SheetMark mark{int(row.whole("mark").value_or(0)), row.text("name"), row.real("at_m"),
                                  row.whole("paces"), row.real("sight_m"), row.real("offset_m"), *place};
             !taker.take(sheetKeys(row), int(row.whole("leg").value_or(0)), mark))
      ++strangers;
  }
  for (LegSheet &sheet : sheets)
    for (SheetLeg &leg : sheet.legs)
      std::stable_sort(leg.marks.begin(), leg.marks.end(),
                       [](const SheetMark &a, const SheetMark &b) { return a.number < b.number; });
  if (strangers > 0)
    feedback->pushWarning(
        Text::tr("%1: %n mark(s) of layer “%2” belong to none of the legs, or lie elsewhere than they "
                 "say; passed over. Are they those of these legs?",
                 nullptr, int(strangers))
            .arg(marksKey, source->sourceName()));
  if (placeless > 0)
    feedback->pushWarning(
        Text::tr("%1: %n mark(s) of layer “%2” have no usable place; passed over.", nullptr, int(placeless))
            .arg(marksKey, source->sourceName()));
}

} // namespace

Definitions legsDefinitions() {
  return {helped(
      new QgsProcessingParameterFeatureSource(inputKey, Text::tr("Annotated legs"), QList<int>() << host::lineLayers),
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

namespace {
// The leg of a row; a reason where it is of no use.
std::optional<SheetLeg> usableLeg(const Values &row, const QgsGeometry &geometry, const ToPlaces &toPlaces,
                                  QString &reason) {
  SheetLeg leg = legFrom(row);
  if (!leg.paces || !leg.length_m) {
    reason = Text::tr("has no paces or no length.");
    return std::nullopt;
  }
  const int last = geometry.isNull() ? 0 : geometry.constGet()->nCoordinates() - 1;
  if (last < 1) {
    reason = Text::tr("has no line.");
    return std::nullopt;
  }
  const QgsPoint first = geometry.vertexAt(0), end = geometry.vertexAt(last);
  const auto from = toPlaces(first.x(), first.y()), to = toPlaces(end.x(), end.y());
  if (!from || !to) {
    reason = Text::tr("has coordinates that are no place on the Earth.");
    return std::nullopt;
  }
  leg.start = *from;
  leg.end = *to;
  return leg;
}
} // namespace

std::vector<LegSheet> read(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  const auto source = reader.source(inputKey);
  const ToPlaces toPlaces(source->sourceCrs(), reader.context().transformContext());
  std::vector<Group> groups;
  QHash<QString, size_t> byKey;
  PassedOver passedOver(source->sourceName(), feedback);
  Values row(source->fields());
  QgsFeature feature;
  SourceFeatures features(inputKey, *source, feedback);
  long rows = 0;
  while (features.next(feature)) {
    ++rows;
    row.setRow(feature);
    const long number = row.whole("leg").value_or(0);
    if (number < 1 || number > greatestNumber) {
      passedOver.add(feature.id(), Text::tr("has no number in its field “leg”, from 1 to %1.").arg(greatestNumber));
      continue;
    }
    QString reason;
    std::optional<SheetLeg> leg = usableLeg(row, feature.geometry(), toPlaces, reason);
    if (!leg)
      passedOver.add(feature.id(), reason);
    const QString key = keyOf(row);
    auto found = byKey.find(key);
    if (found == byKey.end()) {
      found = byKey.insert(key, groups.size());
      groups.push_back({row.text("route"), row.text("walker"), isBack(row), {}});
    }
    const std::optional<SheetPiece> piece = pieceFrom(row);
    groups[*found].rows.push_back({int(number), piece ? piece->number : 0, feature.id(), rows, std::move(leg)});
  }
  std::vector<LegSheet> sheets = sheetsOf(std::move(groups), passedOver, FeedbackProgress(feedback));
  passedOver.finish();
  if (sheets.empty())
    throw QgsProcessingException(rows == 0
                                     ? Text::tr("%1: layer “%2” has no features, so there is nothing to hand out.")
                                           .arg(inputKey, source->sourceName())
                                     : Text::tr("%1: none of the features of layer “%2” is a leg that can be used.")
                                           .arg(inputKey, source->sourceName()));
  if (reader.has(marksKey) && reader.given(marksKey))
    readMarks(reader, feedback, sheets);
  nameApart(sheets, feedback);
  return sheets;
}

} // namespace leg_sheets

} // namespace brushline
