// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/effort_grid_host.h"

#include "quantities/progress.h"
#include "shared/base_algorithm.h"
#include "shared/geodesic.h"
#include "shared/geodesic_chords.h"
#include "shared/grid_north.h"
#include "shared/place_reader_host.h"
#include "shared/source_features_host.h"

#include <qgscoordinatetransform.h>
#include <qgscurve.h>
#include <qgsexception.h>
#include <qgsfeatureiterator.h>
#include <qgsgeometry.h>
#include <qgslinestring.h>
#include <qgspolygon.h>

#include <algorithm>
#include <cmath>

namespace brushline {

namespace {
constexpr double mostCells = 100e6;

void project(const Project &to, const Place &place, double &x, double &y) {
  std::vector<double> xs{place.longitude.signedTurn().degrees()}, ys{place.latitude.degrees()};
  to(xs, ys);
  x = xs[0];
  y = ys[0];
}

// Short ways from a place in four directions, so that a system that stretches but one of them is found out.
std::vector<GeodesicChord> waysAround(const Place &place, const Project &to) {
  std::vector<GeodesicChord> ways;
  for (const double bearing : {0, 45, 90, 135})
    for (const GeodesicChord &chord : chordsAlong(place, TrueBearing(Angle::degrees(bearing)), Length::metres(100), to))
      if (chord.end_m - chord.start_m > 1e-3)
        ways.push_back(chord);
  return ways;
}

// Whether a system counts metres that are metres on the ground at a place, in whatever direction.
bool countsMetres(const QgsCoordinateReferenceSystem &crs, const Project &to, const Place &place) {
  if (crs.isGeographic() || crs.mapUnits() != host::metres)
    return false;
  const std::vector<GeodesicChord> ways = waysAround(place, to);
  return std::all_of(ways.begin(), ways.end(), [](const GeodesicChord &way) {
    return std::abs(std::hypot(way.x1 - way.x0, way.y1 - way.y0) / (way.end_m - way.start_m) - 1) < 0.01;
  });
}

// The least length of a raster's cells on the ground at a place, metres; infinite where its system does not reach.
double cellOnGround(const TiledGrid &grid, const Project &to, const Place &place) {
  double least = HUGE_VAL;
  for (const GeodesicChord &way : waysAround(place, to)) {
    const CellPosition from = grid.cellOf(way.x0, way.y0), at = grid.cellOf(way.x1, way.y1);
    const double cells = std::hypot(at.column - from.column, at.row - from.row);
    if (std::isfinite(cells))
      least = std::min(least, (way.end_m - way.start_m) / cells);
  }
  return least;
}
} // namespace

PlanGround::PlanGround(const ParameterReader &reader, const GroundInput &input, const std::vector<PlacePair> &pairs)
    : mInput(input), mTransforms(reader.context().transformContext()) {
  double longest = 0;
  for (const PlacePair &pair : pairs)
    longest = std::max(longest, geodesicBetween(pair.start, pair.end).length.metres());
  const auto &dem = *input.dem;
  const PlacePair &first = pairs.front();
  const Project toDem = dem ? dem->project() : Project();
  const bool demGrid =
      dem && std::all_of(pairs.begin(), pairs.end(), [&](const PlacePair &pair) {
        return countsMetres(dem->crs(), toDem, pair.start) && countsMetres(dem->crs(), toDem, pair.end);
      });
  mCrs = demGrid ? dem->crs() : QgsCoordinateReferenceSystem(QString::fromStdString(standardGrid(first.start)));
  mToGrid = projectInto(mCrs, mTransforms);
  if (dem)
    mDem = std::make_unique<TiledGrid>(dem->grid());

  QgsRectangle box;
  for (const PlacePair &pair : pairs)
    for (const Place *place : {&pair.start, &pair.end}) {
      double x, y;
      project(mToGrid, *place, x, y);
      if (std::isfinite(x) && std::isfinite(y))
        box.combineExtentWith(x, y);
    }
  const double margin = input.margin_m > 0 ? input.margin_m : std::max(300.0, longest / 2);
  box.grow(margin);
  mCell = input.cell_m;
  if (!(mCell > 0) && mDem)
    mCell = demGrid ? std::min(mDem->shape().cell_width, mDem->shape().cell_height)
                    : cellOnGround(*mDem, toDem, first.start);
  if (!(mCell > 0 && std::isfinite(mCell)))
    mCell = std::max(2.0, std::round(std::max(box.width(), box.height()) / 1000));
  // On the terrain model's own cells the heights are its own.
  double left = std::floor(box.xMinimum() / mCell) * mCell, top = std::ceil(box.yMaximum() / mCell) * mCell;
  if (demGrid) {
    const QgsRectangle has = dem->extent();
    if (has.intersects(box))
      box = box.intersect(has);
    left = has.xMinimum() + std::floor((box.xMinimum() - has.xMinimum()) / mCell + 1e-6) * mCell;
    top = has.yMaximum() - std::floor((has.yMaximum() - box.yMaximum()) / mCell + 1e-6) * mCell;
  }
  mLeft = left;
  mTop = top;
  const double columns = std::max(1.0, std::ceil((box.xMaximum() - left) / mCell - 1e-6)),
               rows = std::max(1.0, std::ceil((top - box.yMinimum()) / mCell - 1e-6));
  const double cells = columns * rows;
  if (!(cells <= mostCells))
    throw QgsProcessingException(
        tr("The area round the pairs makes %1 million cells of %2 m, which would take %3 MB; at most %4 million are "
           "worked on. Give CELL at least %5, a smaller MARGIN, or pairs that lie together.")
            .arg(QString::number(cells / 1e6, 'f', 0), plain(mCell),
                 QString::number(cells * EffortGrid::bytesPerCell(!mDem) / 1e6, 'f', 0), plain(mostCells / 1e6),
                 plain(std::ceil(mCell * std::sqrt(cells / mostCells) * 10) / 10)));
  mColumns = int64_t(columns);
  mRows = int64_t(rows);
  if (input.cover->codes)
    mCodes = std::make_unique<TiledGrid>(input.cover->codes->grid());
  mSource = input.cover->source();
}

QgsRectangle PlanGround::extent() const {
  return QgsRectangle(mLeft, mTop - double(mRows) * mCell, mLeft + double(mColumns) * mCell, mTop);
}

CellPosition PlanGround::cellOf(const Place &place) const {
  double x, y;
  project(mToGrid, place, x, y);
  return {(x - mLeft) / mCell, (mTop - y) / mCell};
}

std::vector<QgsPointXY> PlanGround::mapped(const std::vector<CellPosition> &points,
                                           const QgsCoordinateReferenceSystem &crs) const {
  const QgsCoordinateTransform transform(mCrs, crs, mTransforms);
  std::vector<QgsPointXY> result;
  for (const CellPosition &at : points)
    result.push_back(transform.transform(mLeft + at.column * mCell, mTop - at.row * mCell));
  return result;
}

Place PlanGround::placeOf(CellPosition at) const {
  const QgsPointXY place = mapped({at}, wgs84()).front();
  return {Angle::degrees(place.y()), Angle::degrees(place.x())};
}

QString PlanGround::inWords(int kind) const {
  switch (kind) {
  case EffortGrid::edge:
    return tr("the edge of the area searched (a larger MARGIN or terrain model may help)");
  case EffortGrid::noHeight:
    return tr("ground without a height in the terrain model");
  case EffortGrid::steep:
    return tr("ground steeper than %1°")
        .arg(plain(std::round(Angle::radians(std::atan(mInput.most_slope)).degrees() * 10) / 10));
  case EffortGrid::barrier:
    return tr("barriers");
  default:
    return QString::fromStdString(mGrid->kinds()[size_t(kind)].name);
  }
}

void PlanGround::fill(QgsProcessingFeedback *feedback, const std::function<void(double)> &told) {
  mGrid = std::make_unique<EffortGrid>(mColumns, mRows, Length::metres(mCell), !mDem, FeedbackProgress(feedback));
  const double unknown = mInput.cover->given() && (mInput.cover->map || mInput.cover->codes) ? mInput.unknown_speed : 1;
  mKindOfClass = {mGrid->addKind(
      {tr("ground without known cover").toStdString(), unknown > 0 ? std::optional(unknown) : std::nullopt})};
  for (const CoverClass &cover : mInput.cover->table->classes())
    // Only what nobody walks needs its name; a table may have more classes than a cell has numbers.
    mKindOfClass.push_back(mGrid->addKind({cover.speed_factor ? "open" : cover.label, cover.speed_factor}));
  fillCover(feedback, [&](double share) { told(share * (mDem ? 0.6 : 1)); });
  if (!mDem)
    return;
  const Project toDem = (*mInput.dem)->projectFrom(mCrs);
  for (int64_t row = 0; row <= mRows; ++row) {
    if (feedback->isCanceled())
      throw Cancelled();
    if (row < mRows)
      fillHeights(row, *mDem, toDem);
    if (row > 0)
      mGrid->closeSteep(row - 1, mInput.most_slope);
    if (row % 64 == 0)
      told(0.6 + 0.4 * double(row) / double(mRows));
  }
}

void PlanGround::fillHeights(int64_t row, TiledGrid &dem, const Project &project) {
  std::vector<double> x(static_cast<size_t>(mColumns)), y(x.size(), mTop - (double(row) + 0.5) * mCell);
  for (size_t i = 0; i < x.size(); ++i)
    x[i] = mLeft + (double(i) + 0.5) * mCell;
  project(x, y);
  for (size_t i = 0; i < x.size(); ++i)
    mGrid->setHeight(int64_t(i), row, float(dem.interpolated(dem.cellOf(x[i], y[i]))));
}

// The classes along a piece of a middle line, up to 1: the map's, and the codes' where it says nothing.
std::vector<CoverStretch> PlanGround::coverAlong(MapPoint from, MapPoint to, CellPosition codesFrom,
                                                 CellPosition codesTo) {
  const auto known = [](double a, double b) { return std::isfinite(a + b); };
  std::vector<CoverStretch> all;
  if (mInput.cover->map && known(from.x + from.y, to.x + to.y))
    all = mInput.cover->map->along(from, to);
  else
    all = {{1, -1, false}};
  if (!mCodes || !known(codesFrom.column + codesFrom.row, codesTo.column + codesTo.row) ||
      std::none_of(all.begin(), all.end(), [](const CoverStretch &stretch) { return stretch.cover < 0; }))
    return all;
  const std::vector<CellRun> runs = mCodes->along(codesFrom, codesTo);
  std::vector<CoverStretch> both;
  size_t run = 0;
  double before = 0;
  for (const CoverStretch &stretch : all) {
    while (run + 1 < runs.size() && runs[run].to <= before)
      ++run;
    if (stretch.cover >= 0)
      both.push_back(stretch);
    else
      for (size_t i = run; i < runs.size() && (i == run || runs[i - 1].to < stretch.to); ++i)
        both.push_back({std::min(runs[i].to, stretch.to), classOfCode(runs[i].value), false});
    before = stretch.to;
  }
  return both;
}

int PlanGround::classOfCode(double value) {
  if (std::isnan(value))
    return -1;
  const auto [found, isNew] = mClassOfCode.try_emplace(std::lround(value), -1);
  if (isNew)
    found->second = mInput.cover->table->find(std::to_string(found->first));
  return found->second;
}

// The kinds of ground in the middles of a row's or column's cells, and which of its cells have ground that nobody walks
// anywhere on their middle line.
void PlanGround::coverAlongLine(bool alongRow, int64_t line, std::vector<int> &kinds, std::vector<bool> &closes) {
  const int64_t cells = alongRow ? mColumns : mRows;
  kinds.assign(size_t(cells), kindOf(-1));
  closes.assign(size_t(cells), false);
  if (!mInput.cover->map && !mCodes)
    return;
  constexpr int64_t piece = 32; // cells; straight enough in the cover's own systems
  std::vector<double> x, y;
  for (int64_t at = 0; at < cells + piece; at += piece) {
    const double along = double(std::min(at, cells)), across = double(line) + 0.5;
    x.push_back(mLeft + (alongRow ? along : across) * mCell);
    y.push_back(mTop - (alongRow ? across : along) * mCell);
    if (at >= cells)
      break;
  }
  std::vector<CellPosition> inCodes(x.size(), CellPosition{NAN, NAN});
  if (mCodes) {
    std::vector<double> codesX = x, codesY = y;
    mToCodes(codesX, codesY);
    for (size_t i = 0; i < x.size(); ++i)
      inCodes[i] = mCodes->cellOf(codesX[i], codesY[i]);
  }
  if (mInput.cover->map) {
    const QgsCoordinateTransform toPlaces(mCrs, wgs84(), mTransforms);
    std::vector<double> zero(x.size(), 0);
    toPlaces.transformCoords(int(x.size()), x.data(), y.data(), zero.data());
    mInput.cover->map_project(x, y);
  }
  for (size_t i = 0; i + 1 < x.size(); ++i) {
    const double first = double(int64_t(i) * piece), span = std::min(double(piece), double(cells) - first);
    double before = first;
    for (const CoverStretch &stretch : coverAlong({x[i], y[i]}, {x[i + 1], y[i + 1]}, inCodes[i], inCodes[i + 1])) {
      const double end = first + stretch.to * span;
      const int kind = kindOf(stretch.cover);
      for (auto cell = int64_t(std::ceil(before - 0.5)); double(cell) + 0.5 < end && cell < cells; ++cell)
        if (!closes[size_t(cell)])
          kinds[size_t(cell)] = kind;
      if (stretch.cover >= 0 && !mGrid->kinds()[size_t(kind)].speed_factor)
        for (auto cell = int64_t(before + 1e-6); double(cell) < end - 1e-6 && cell < cells; ++cell) {
          closes[size_t(cell)] = true;
          kinds[size_t(cell)] = kind;
        }
      before = end;
    }
  }
}

void PlanGround::fillCover(QgsProcessingFeedback *feedback, const std::function<void(double)> &told) {
  std::vector<int> kinds;
  std::vector<bool> closes;
  if (mCodes)
    mToCodes = mInput.cover->codes->projectFrom(mCrs);
  for (int64_t row = 0; row < mRows; ++row) {
    if (feedback->isCanceled())
      throw Cancelled();
    coverAlongLine(true, row, kinds, closes);
    for (int64_t column = 0; column < mColumns; ++column)
      mGrid->setKind(column, row, kinds[size_t(column)]);
    if (row % 64 == 0)
      told(0.5 * double(row) / double(mRows));
  }
  for (int64_t column = 0; (mInput.cover->map || mCodes) && column < mColumns; ++column) {
    if (feedback->isCanceled())
      throw Cancelled();
    coverAlongLine(false, column, kinds, closes);
    for (int64_t row = 0; row < mRows; ++row)
      if (closes[size_t(row)])
        mGrid->setKind(column, row, kinds[size_t(row)]);
    if (column % 64 == 0)
      told(0.5 + 0.5 * double(column) / double(mColumns));
  }
}

namespace {
// Whether all coordinates, of degrees or metres, are such as occur on the Earth. Others would make millions of vertices
// when a line is divided, or none at all.
bool onEarth(const QgsGeometry &geometry) {
  constexpr double most = 1e8; // two and a half times round
  for (auto vertex = geometry.vertices_begin(); vertex != geometry.vertices_end(); ++vertex)
    if (!(std::abs((*vertex).x()) < most) || !(std::abs((*vertex).y()) < most))
      return false;
  return true;
}
} // namespace

void PlanGround::bar(const ParameterReader &reader, const QString &key, QgsProcessingFeedback *feedback) {
  const auto source = reader.source(key);
  if (!source)
    return;
  checkPlaces(key, *source);
  if (host::isPointType(source->wkbType()))
    throw QgsProcessingException(
        tr("%1: layer “%2” has points, which bar nothing. Give lines or polygons; buffer points first.")
            .arg(key, source->sourceName()));
  QgsCoordinateTransform transform(source->sourceCrs(), mCrs, mTransforms);
  int passedOver = 0;
  QgsFeature feature;
  SourceFeatures features(key, *source, feedback);
  while (features.next(feature)) {
    QgsGeometry geometry = feature.geometry();
    bool usable = feature.hasGeometry() && !geometry.isEmpty() && onEarth(geometry);
    try {
      if (usable && !transform.isShortCircuited()) { // what is straight there is not quite so here
        geometry = geometry.densifyByDistance(source->sourceCrs().isGeographic() ? 0.002 : 200);
        geometry.transform(transform);
        usable = onEarth(geometry);
      }
    } catch (const QgsCsException &) {
      usable = false;
    }
    if (!usable) {
      ++passedOver;
      continue;
    }
    geometry.convertToMultiType();
    const auto inCells = [&](const QgsCurve *curve) {
      std::vector<CellPosition> line;
      const std::unique_ptr<QgsLineString> straight(curve->curveToLine());
      for (int i = 0; i < straight->numPoints(); ++i)
        line.push_back({(straight->xAt(i) - mLeft) / mCell, (mTop - straight->yAt(i)) / mCell});
      return line;
    };
    for (auto part = geometry.const_parts_begin(); part != geometry.const_parts_end(); ++part)
      if (const auto *polygon = qgsgeometry_cast<const QgsCurvePolygon *>(*part)) {
        std::vector<std::vector<CellPosition>> rings;
        if (polygon->exteriorRing())
          rings.push_back(inCells(polygon->exteriorRing()));
        for (int i = 0; i < polygon->numInteriorRings(); ++i)
          rings.push_back(inCells(polygon->interiorRing(i)));
        for (const auto &ring : rings)
          mGrid->addBarrierLine(ring);
        mGrid->closeInside(rings);
        mBarredAreas.push_back(std::move(rings));
      } else if (const auto *curve = qgsgeometry_cast<const QgsCurve *>(*part)) {
        mGrid->addBarrierLine(inCells(curve));
      }
  }
  mGrid->finishBarriers();
  if (passedOver > 0)
    feedback->pushWarning(tr("%1: %n feature(s) of layer “%2” without a usable geometry passed over: they bar nothing.",
                             nullptr, passedOver)
                              .arg(key, source->sourceName()));
}

QString PlanGround::refusal(const Place &place) {
  const CellPosition at = cellOf(place);
  if (!mGrid->contains(at))
    return tr("lies outside the terrain model");
  const auto column = int64_t(at.column), row = int64_t(at.row);
  for (const auto &rings : mBarredAreas) {
    bool inside = false;
    for (const auto &ring : rings)
      for (size_t i = 0; i < ring.size(); ++i) {
        const CellPosition &a = ring[i], &b = ring[(i + 1) % ring.size()];
        if ((a.row > at.row) != (b.row > at.row) &&
            at.column < a.column + (at.row - a.row) / (b.row - a.row) * (b.column - a.column))
          inside = !inside;
      }
    if (inside)
      return tr("lies inside a barrier");
  }
  int kind = mGrid->kindAt(column, row);
  if (kind == EffortGrid::noHeight || kind == EffortGrid::steep)
    return tr("lies on %1").arg(inWords(kind));
  // The place itself counts, not the middle of its cell: one stands on the shore, or beside the fence.
  int cover = -1;
  if (mSource)
    cover = mSource->along(place, TrueBearing(Angle()), Length::metres(0.01)).front().cover;
  kind = kindOf(cover);
  if (!mGrid->kinds()[size_t(kind)].speed_factor)
    return cover < 0 ? tr("lies on ground without known cover") : tr("lies in %1").arg(inWords(kind));
  if (!mGrid->isOpen(column, row))
    mGrid->openForLegs(column, row, kind);
  return QString();
}

} // namespace brushline
