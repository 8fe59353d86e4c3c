// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/sight_surface_algorithm.h"

#include "shared/kept_styles_host.h"
#include "shared/ordered_work.h"
#include "shared/raster_output_host.h"
#include "sighting/extinction.h"
#include "sighting/sight_surface.h"
#include "sighting/stand_parameters.h"

#include <qgsexception.h>
#include <qgsunittypes.h>

#include <algorithm>
#include <cmath>
#include <limits>

namespace brushline {

namespace {
const QString extentKey = QStringLiteral("EXTENT"), cellKey = QStringLiteral("CELL"),
              outputKey = QStringLiteral("OUTPUT");
constexpr Limits cellLimits{0.01, 100000, 5};
constexpr double mostCells = 4e9;
constexpr double nothing = std::numeric_limits<double>::quiet_NaN();

// Rows that are worked out together, so that writing goes on beside the computing.
struct Band {
  int first = 0, rows = 0;
  std::vector<double> values; // row by row
};
constexpr int bandCells = 1 << 18; // some 2 MB
} // namespace

QString SightSurfaceAlgorithm::name() const { return QStringLiteral("sightsurface"); }
QString SightSurfaceAlgorithm::displayName() const { return tr("Sight distance surface"); }
QString SightSurfaceAlgorithm::group() const { return tr("Sighting"); }
QString SightSurfaceAlgorithm::groupId() const { return QStringLiteral("sighting"); }
QStringList SightSurfaceAlgorithm::tags() const {
  return tr("sight,visibility,see,cover,vegetation,forest,stand,stems,raster,thicket,brush").split(QLatin1Char(','));
}
QString SightSurfaceAlgorithm::shortDescription() const {
  return tr("Makes a raster of how far one sees through the cover, from cover polygons, class codes or forest stands.");
}
QgsProcessingAlgorithm *SightSurfaceAlgorithm::createInstance() const { return new SightSurfaceAlgorithm(); }

void SightSurfaceAlgorithm::initAlgorithm(const QVariantMap &) {
  addParameters(cover_parameters::coverDefinitions());
  addParameters(stand_parameters::definitions());
  addParameters({helped(new QgsProcessingParameterExtent(extentKey, tr("Extent"), QVariant(), true),
                        tr("Empty: that of the cover layer, or of the raster when no polygons are given.")),
                 helped(numberDefinition(cellKey, tr("Size of the cells (m)"), cellLimits),
                        tr("In metres; the cover layer has to be in a projected system."))});
  addParameter(new QgsProcessingParameterRasterDestination(outputKey, tr("Sight distance (m)")));
  addParameters(KeptStyles::definitions());
}

void SightSurfaceAlgorithm::check(const ParameterReader &reader) const {
  stand_parameters::check(reader);
  cover_parameters::check(reader);
  reader.number(cellKey, cellLimits);
}

void SightSurfaceAlgorithm::prepare(const ParameterReader &reader, QgsProcessingFeedback *) {
  mCover = cover_parameters::read(reader);
}

void SightSurfaceAlgorithm::readRest(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  const double cellMetres = reader.number(cellKey, cellLimits);
  for (const CoverClass &entry : mCover.table->classes())
    mClassExtinctions.push_back(extinctionOf(entry.sightIn(mCover.season)));
  mExtinctions = mClassExtinctions;
  if (stand_parameters::given(reader)) {
    StandMap read = stand_parameters::read(reader, feedback);
    mCover.map = std::move(read.map);
    mExtinctions = std::move(read.extinctions);
  } else {
    cover_parameters::readPolygons(mCover, reader, feedback);
  }
  const auto polygons = reader.source(QStringLiteral("COVER"));
  const RasterInput *raster = mCover.sights ? &*mCover.sights : mCover.codes ? &*mCover.codes : nullptr;
  if (!polygons && !raster)
    throw QgsProcessingException(
        tr("Give cover: polygons (COVER), class codes (COVER_RASTER) or sights (SIGHT_RASTER)."));
  mCrs = polygons ? polygons->sourceCrs() : raster->crs();
  if (mCrs.isGeographic())
    throw QgsProcessingException(
        tr("%1 is in metres, but the cover is in %2, which counts in degrees. Reproject it to a "
           "UTM zone or a national grid first.")
            .arg(cellKey, mCrs.authid()));
  mCell = cellMetres * QgsUnitTypes::fromUnitToUnitFactor(host::metres, mCrs.mapUnits()); // there are maps in feet
  mExtent = reader.given(extentKey) ? QgsProcessingParameters::parameterAsExtent(
                                          reader.definition(extentKey), reader.parameters(), reader.context(), mCrs)
            : polygons ? polygons->sourceExtent()
                       : raster->extent();
  if (mExtent.isEmpty() || !mExtent.isFinite())
    throw QgsProcessingException(tr("%1 is empty. Give an area that the cover lies in.").arg(extentKey));
  const double cells = std::ceil(mExtent.width() / mCell) * std::ceil(mExtent.height() / mCell);
  if (cells > mostCells || mExtent.width() / mCell > 1e6 || mExtent.height() / mCell > 1e6)
    throw QgsProcessingException(
        tr("%1 of %2 m over this extent makes %3 cells. Give larger cells or a smaller extent.")
            .arg(cellKey, plain(cellMetres), plain(cells)));
  for (size_t i = 0; i < workers(); ++i)
    mLookups.push_back({lookup(mCover.codes), lookup(mCover.sights), {}});
}

std::optional<SightSurfaceAlgorithm::Lookup>
SightSurfaceAlgorithm::lookup(const std::optional<RasterInput> &raster) const {
  if (!raster)
    return std::nullopt;
  return Lookup{raster->grid(), raster->projectFrom(mCrs)};
}

void SightSurfaceAlgorithm::fillRow(int row, int columns, Lookups &lookups, std::vector<double> &values) const {
  const double y = mExtent.yMaximum() - (row + 0.5) * mCell;
  values.assign(size_t(columns), nothing);
  if (mCover.map)
    extinctionRow(*mCover.map, mExtinctions, {mExtent.xMinimum() + mCell / 2, y}, mCell, values);
  const auto look = [&](Lookup &raster, const auto &take) {
    std::vector<double> x(values.size()), ys(values.size(), y);
    for (size_t i = 0; i < x.size(); ++i)
      x[i] = mExtent.xMinimum() + (double(i) + 0.5) * mCell;
    raster.from_surface(x, ys);
    for (size_t i = 0; i < x.size(); ++i)
      if (const double value = raster.grid.nearest(raster.grid.cellOf(x[i], ys[i])); !std::isnan(value))
        take(values[i], value);
  };
  if (lookups.codes)
    look(*lookups.codes, [&](double &extinction, double code) {
      if (!std::isnan(extinction))
        return;
      if (const int cover = mCover.table->find(std::to_string(std::lround(code))); cover >= 0)
        extinction = mClassExtinctions[size_t(cover)];
      else
        lookups.unknown_codes.insert(std::lround(code));
    });
  if (lookups.sights)
    look(*lookups.sights, [&](double &extinction, double sight) {
      if (sight > 0)
        extinction = extinctionOf(Length::metres(sight));
      else
        lookups.bad_sights = true;
    });
  lookups.known =
      lookups.known || !std::all_of(values.begin(), values.end(), [](double value) { return std::isnan(value); });
  sightsFromExtinctions(values, mCover.clear_sight);
}

QVariantMap SightSurfaceAlgorithm::run(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  readRest(reader, feedback);
  const int columns = int(std::ceil(mExtent.width() / mCell - 1e-9));
  const int rows = int(std::ceil(mExtent.height() / mCell - 1e-9));
  const QgsRectangle extent(mExtent.xMinimum(), mExtent.yMaximum() - rows * mCell, mExtent.xMinimum() + columns * mCell,
                            mExtent.yMaximum());
  RasterOutput output(reader, outputKey, extent, columns, rows, mCrs);
  const FeedbackProgress progress(feedback);
  const auto compute = [&](Band band, size_t worker) {
    std::vector<double> row;
    for (int i = 0; i < band.rows; ++i) {
      progress.check();
      fillRow(band.first + i, columns, mLookups[worker], row);
      band.values.insert(band.values.end(), row.begin(), row.end());
    }
    return band;
  };
  const auto write = [&](const Band &band) {
    output.writeRows(band.first, band.values);
    feedback->setProgress(100.0 * (band.first + band.rows) / rows);
  };
  OrderedWork<Band, Band> work(mLookups.size(), compute, write);
  const int bandRows = std::max(1, bandCells / columns);
  for (int first = 0; first < rows; first += bandRows)
    work.push({first, std::min(bandRows, rows - first), {}});
  work.finish();
  std::set<long> codes;
  bool badSights = false, known = false;
  for (const Lookups &lookups : mLookups) {
    codes.insert(lookups.unknown_codes.begin(), lookups.unknown_codes.end());
    badSights = badSights || lookups.bad_sights;
    known = known || lookups.known;
  }
  cover_parameters::report(codes, badSights, feedback);
  if (!known)
    feedback->pushWarning(tr("Nothing is known of the cover of any cell, so the raster is empty. Does the cover lie in "
                             "this extent, and does the table have its classes?"));
  if (mCover.clear_sight != SpacingRule::clearLimits.usual)
    feedback->pushWarning(
        tr("%1 is %2, so this raster is no SIGHT_RASTER for other algorithms: those want the metres at "
           "which half the marks are clear (%1 0.5).")
            .arg(QStringLiteral("CLEAR_SIGHT"), plain(mCover.clear_sight)));
  feedback->pushInfo(tr("%1 columns and %2 rows written.").arg(columns).arg(rows));
  return {{outputKey, output.finish(QStringLiteral(":/brushline/styles/sight_surface.qml"))}};
}

} // namespace brushline
