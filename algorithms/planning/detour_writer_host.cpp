// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/detour_writer_host.h"

#include "quantities/progress.h"
#include "shared/base_algorithm.h"
#include "walking/pacing.h"

#include <qgsexception.h>
#include <qgsgeometry.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <stdexcept>

namespace brushline {

namespace {
using host::FieldType;
const QString outputKey = QStringLiteral("OUTPUT"), detoursKey = QStringLiteral("DETOUR_COUNT"),
              notPassedKey = QStringLiteral("NOT_PASSED");

// The words of the field part; never translated.
QString wordOf(LegPart part) {
  static const QString words[] = {QStringLiteral("along"), QStringLiteral("out"), QStringLiteral("past"),
                                  QStringLiteral("back")};
  return words[static_cast<int>(part)];
}

QString wordOf(Side side) { return side == Side::Left ? QStringLiteral("left") : QStringLiteral("right"); }

Side opposite(Side side) { return side == Side::Left ? Side::Right : Side::Left; }

// The quarter turn at a piece's start: none where the walk begins or goes straight on.
QVariant turnInto(const DetouredLeg &way, size_t piece) {
  const LegPart part = way.pieces[piece].part;
  if (part == LegPart::Along) {
    if (piece == 0)
      return QVariant();
    return wordOf(way.detours[*way.pieces[piece - 1].detour].side); // after a way back
  }
  const Side side = way.detours[*way.pieces[piece].detour].side;
  return wordOf(part == LegPart::Out ? side : opposite(side));
}

double blockedOn(const LegPiece &piece, const std::vector<NotPassed> &all) {
  double metres = 0;
  if (piece.part == LegPart::Along)
    for (const NotPassed &one : all)
      metres += std::max(0.0, std::min(piece.to_m, one.to_m) - std::max(piece.from_m, one.from_m));
  return metres;
}

QString whole(double metres) { return QString::number(std::round(metres)); }
} // namespace

DetourWriter::DetourWriter(const ParameterReader &reader, const AnnotateSettings &settings, const QDate &date,
                           const Obstacles &obstacles, const DetourRule &rule, const QgsCoordinateReferenceSystem &crs,
                           QgsProcessingFeedback *feedback)
    : mReader(reader), mSettings(settings), mAnnotator(settings, nullptr, nullptr),
      mLayer(settings.compass, settings.walkers, date, nullptr), mObstacles(obstacles), mRule(rule), mCrs(crs),
      mFromPlaces(crs, reader.context().transformContext()), mFeedback(feedback) {}

Definitions DetourWriter::definitions() {
  return {new QgsProcessingParameterFeatureSink(outputKey, tr("Legs with detours"), host::lineOutput)};
}

void DetourWriter::begin() {
  if (mOutput)
    return;
  const QgsFields fields = fieldsOf({{"part", FieldType::Text},
                                     {"piece", FieldType::Integer},
                                     {"turn", FieldType::Text},
                                     {"side", FieldType::Text},
                                     {"obstacle", FieldType::Text},
                                     {"count_m", FieldType::Real},
                                     {"run_paces", FieldType::Integer},
                                     {"blocked_m", FieldType::Real}},
                                    LegLayer::fields());
  mOutput = std::make_unique<VectorOutput>(mReader, outputKey, fields, host::lineString, mCrs);
}

GridPoint DetourWriter::gridPoint(const std::string &grid, const Place &place) {
  auto found = mToGrids.find(grid);
  if (found == mToGrids.end()) {
    const QgsCoordinateReferenceSystem crs(QString::fromStdString(grid));
    found = mToGrids.emplace(grid, QgsCoordinateTransform(wgs84(), crs, mReader.context().transformContext())).first;
  }
  double x = place.longitude.degrees(), y = place.latitude.degrees(), z = 0;
  try {
    found->second.transformInPlace(x, y, z);
  } catch (const QgsException &) {
    x = std::numeric_limits<double>::quiet_NaN();
  }
  return {x, y};
}

// The route with its detours as vertices; source is of no use in it.
Route DetourWriter::routeOf(const RouteInput &route, const std::vector<RouteLeg> &legs) {
  Route result;
  result.grid = route.route.grid;
  size_t part = 0;
  for (const RouteLeg &leg : legs) {
    if (result.parts.empty() || leg.part != part) {
      part = leg.part;
      result.parts.push_back({leg.from});
    }
    auto &vertices = result.parts.back();
    for (size_t i = 0; i < leg.way.pieces.size(); ++i) {
      const Place &place = leg.way.pieces[i].to;
      // A leg without detours keeps the numbers it has elsewhere, to the last digit.
      if (i + 1 == leg.way.pieces.size())
        vertices.push_back(leg.to);
      else
        vertices.push_back({place, gridPoint(result.grid, place), 0});
    }
  }
  return result;
}

// Quarter turns are quarter turns on the dial too, whatever the rounding; over long legs the dial follows the bearing.
// Where the graduation does not divide a quarter, each piece keeps the reading nearest to its own bearing.
void DetourWriter::turnDials(const DetouredLeg &way, AnnotatedLeg *annotated) const {
  if (way.detours.empty())
    return;
  const Compass &compass = mSettings.compass;
  const Angle step = dialBearing(compass.step, compass.unit);
  const double steps = 90 / step.degrees();
  if (std::abs(steps - std::round(steps)) > 1e-9)
    return;
  std::optional<double> base; // the leg's own
  for (size_t i = 0; i < way.pieces.size(); ++i) {
    AnnotatedLeg &piece = annotated[i];
    if (!piece.dial)
      continue;
    const LegPiece &geometry = way.pieces[i];
    Angle turn;
    if (geometry.part == LegPart::Out || geometry.part == LegPart::Back) {
      const bool right = (way.detours[*geometry.detour].side == Side::Right) == (geometry.part == LegPart::Out);
      turn = Angle::degrees(right ? 90 : -90);
    }
    const Angle exact = compass.north == North::True   ? piece.true_bearing.angle()
                        : compass.north == North::Grid ? piece.grid_bearing.angle()
                                                       : piece.magnetic_bearing.value_or(MagneticBearing()).angle();
    const Angle own = exact - turn; // of the leg, as this piece has it
    const auto off = [&](double reading) {
      return std::abs((own - dialBearing(reading, compass.unit)).signedTurn().degrees());
    };
    if (!base || off(*base) > 0.55 * step.degrees())
      base = dialReading(own, compass);
    const Angle set = dialBearing(*base, compass.unit) + turn;
    piece.dial = dialReading(set, compass);
    piece.back_dial = dialReading(set + Angle::degrees(180), compass);
  }
}

// The pieces' paces add up to the leg's own count, and the way back has the count of the way out.
void DetourWriter::countPaces(const DetouredLeg &way, AnnotatedLeg *annotated) const {
  for (size_t w = 0; w < mSettings.walkers.size(); ++w) {
    const Walker &walker = mSettings.walkers[w];
    const auto counted = [&](double at_m) {
      return pacesCounted(stepsOver(Length::metres(at_m), Length(), walker), walker.kind);
    };
    long out = 0;
    for (size_t i = 0; i < way.pieces.size(); ++i) {
      long &paces = annotated[i].by_walker[w].paces;
      if (way.pieces[i].part == LegPart::Out)
        out = paces;
      else if (way.pieces[i].part == LegPart::Back)
        paces = out;
      else
        paces = counted(way.pieces[i].to_m) - counted(way.pieces[i].from_m);
    }
  }
}

QString DetourWriter::named(const std::vector<size_t> &obstacles) const {
  constexpr size_t most = 5;
  QStringList names;
  size_t more = 0;
  for (const size_t obstacle : obstacles) {
    const Shape &shape = mObstacles.outlines()[obstacle];
    const QString name = shape.name.empty() ? tr("obstacle %1").arg(shape.feature) : QString::fromStdString(shape.name);
    if (names.contains(name))
      continue;
    if (size_t(names.size()) < most)
      names << name;
    else
      ++more;
  }
  if (more > 0)
    names << tr("%1 more").arg(more);
  return names.isEmpty() ? tr("an obstacle") : names.join(QStringLiteral(", "));
}

QString DetourWriter::inWords(Refusal refusal) const {
  switch (refusal) {
  case Refusal::TooFarOut:
    return tr("the way out would be longer than %1 m").arg(plain(mRule.most_out.metres()));
  case Refusal::NoRoomBefore:
    return tr("there is no room before it to turn off");
  case Refusal::NoRoomAfter:
    return tr("there is no room after it to come back before the leg ends");
  }
  return QString();
}

QString DetourWriter::inWords(const NotPassed &what, const Ends &ends) const {
  const QString name = named(what.obstacles), clearance = plain(mRule.clearance.metres());
  const QString where =
      tr("NOT PASSED: %1, from %2 m to %3 m of this leg.").arg(name, whole(what.from_m), whole(what.to_m));
  QStringList words{where};
  const QString turning = tr("move the turning point.");
  QString move = ends.leg_before ? turning : tr("move the start.");
  if (what.start == EndState::Inside)
    words << tr("The leg starts inside it: %1").arg(move);
  else if (what.start == EndState::Near)
    words << tr("The leg starts nearer to it than %1 m: %2").arg(clearance, move);
  move = ends.leg_after ? turning : tr("move the end.");
  if (what.end == EndState::Inside)
    words << tr("The leg ends inside it: %1").arg(move);
  else if (what.end == EndState::Near)
    words << tr("The leg ends nearer to it than %1 m: %2").arg(clearance, move);
  if (words.size() == 1 && what.left == what.right)
    words << tr("On both sides %1.").arg(inWords(what.left));
  else if (words.size() == 1)
    words << tr("On the left %1; on the right %2.").arg(inWords(what.left), inWords(what.right));
  return words.join(QLatin1Char(' '));
}

void DetourWriter::write(const RouteInput &route, const std::vector<RouteLeg> &legs) {
  begin();
  const FeedbackProgress progress(mFeedback);
  std::vector<AnnotatedLeg> annotated = mAnnotator.annotate(routeOf(route, legs), progress);
  size_t pieces = 0;
  for (const RouteLeg &leg : legs)
    pieces += leg.way.pieces.size();
  if (annotated.size() != pieces)
    throw std::logic_error("the pieces of a route and their bearings do not match");

  AnnotatedLeg *next = annotated.data();
  for (size_t i = 0; i < legs.size(); ++i) {
    progress.check();
    const DetouredLeg &way = legs[i].way;
    turnDials(way, next);
    countPaces(way, next);
    for (size_t p = 0; p < way.pieces.size(); ++p) {
      next[p].number = route.first_leg + int(i);
      next[p].back = route.back;
      // A named point beside a corner is not the corner.
      if (p > 0)
        next[p].from = nullptr;
      if (p + 1 < way.pieces.size())
        next[p].to = nullptr;
    }
    const Ends ends{i > 0 && legs[i - 1].part == legs[i].part, i + 1 < legs.size() && legs[i + 1].part == legs[i].part};
    writeLeg(route, legs[i], ends, next);
    next += way.pieces.size();
  }
}

void DetourWriter::writeLeg(const RouteInput &route, const RouteLeg &leg, const Ends &ends,
                            const AnnotatedLeg *annotated) {
  const DetouredLeg &way = leg.way;
  const QVariant name(route.name);
  const int number = annotated->number;
  ++mLegs;
  mDetours += long(way.detours.size());
  for (const NotPassed &one : way.not_passed) {
    constexpr long toldEach = 20;
    if (++mNotPassed <= toldEach)
      mFeedback->pushWarning(tr("Route “%1”, leg %2: %3").arg(route.name, QString::number(number), inWords(one, ends)));
  }
  const auto drawn = [&](const RouteVertex &vertex) {
    return QgsPointXY(route.x[vertex.source], route.y[vertex.source]);
  };
  QgsPointXY from = drawn(leg.from);
  for (size_t i = 0; i < way.pieces.size(); ++i) {
    const LegPiece &piece = way.pieces[i];
    QgsPointXY to = drawn(leg.to);
    if (i + 1 < way.pieces.size())
      to = mFromPlaces(piece.to, from.x());
    else if (i > 0) // the last piece of a leg that is drawn round the Earth is not
      to.setX(mFromPlaces.beside(to.x(), from.x()));
    const QgsGeometry line = QgsGeometry::fromPolylineXY({from, to});
    from = to;
    const Detour *detour = piece.detour ? &way.detours[*piece.detour] : nullptr;
    QStringList notPassed;
    for (const NotPassed &one : way.not_passed)
      if (blockedOn(piece, {one}) > 0)
        notPassed << inWords(one, ends);
    for (size_t w = 0; w < mSettings.walkers.size(); ++w) {
      const Walker &walker = mSettings.walkers[w];
      QgsAttributes row = mLayer.row(name, annotated[i], w);
      if (!notPassed.isEmpty())
        row.last() = row.last().isNull() ? notPassed.join(QLatin1Char(' '))
                                         : notPassed.join(QLatin1Char(' ')) + QLatin1Char(' ') + row.last().toString();
      row << wordOf(piece.part) << int(i + 1) << turnInto(way, i)
          << (detour ? QVariant(wordOf(detour->side)) : QVariant())
          << (detour ? QVariant(named(detour->obstacles)) : QVariant()) << piece.to_m
          << int(pacesCounted(stepsOver(Length::metres(piece.to_m), Length(), walker), walker.kind))
          << blockedOn(piece, way.not_passed);
      QgsFeature feature;
      feature.setGeometry(line);
      feature.setAttributes(row);
      mOutput->add(feature);
    }
  }
}

QVariantMap DetourWriter::finish() {
  begin();
  QVariantMap results{{outputKey, mOutput->finish(QStringLiteral(":/brushline/styles/detour.qml"), mFeedback)},
                      {detoursKey, double(mDetours)},
                      {notPassedKey, double(mNotPassed)}};
  mFeedback->pushInfo(tr("Legs: %1; detours: %2.").arg(mLegs).arg(mDetours));
  if (mNotPassed > 0)
    mFeedback->pushWarning(
        tr("%n obstacle(s) in the way are NOT gone round: see the field “warnings”.", nullptr, int(mNotPassed)));
  return results;
}

} // namespace brushline
