// SPDX-License-Identifier: GPL-2.0-or-later
// The sight over the ground beside GDAL's viewshed, an independent implementation: it works outward from the observer
// over the cells' centres, where ours asks for the heights along each line.
#include "shared/geodesic.h"
#include "shared/raster_host.h"
#include "shared/terrain.h"
#include "sighting/sight_line.h"
#include "support/host_fixture.h"
#include "support/random.h"

#include <gdal_alg.h>
#include <gdal_priv.h>
#include <qgscoordinatetransform.h>
#include <qgsrasterdataprovider.h>
#include <qgsrasterlayer.h>

#include <cmath>

using namespace brushline;
using namespace brushline::test;

namespace {
const QString path = QStringLiteral(BRUSHLINE_SOURCE_DIR "/sample-project/terrain.tif");
constexpr double eyeHeight = 1.6, markHeight = 1.0, farthest = 400; // metres
constexpr int observers = 50, targets = 20;                         // of each observer

//! What GDAL lets an observer see, cell by cell of the whole raster; outside its reach nothing.
class Viewshed {
public:
  Viewshed(GDALDataset &raster, double x, double y) {
    const GDALDatasetH seen = GDALViewshedGenerate(
        GDALRasterBand::ToHandle(raster.GetRasterBand(1)), "MEM", "", nullptr, x, y, eyeHeight, markHeight, 1, 0, 0, 0,
        0, GVM_Edge, farthest + 50, nullptr, nullptr, GVOT_NORMAL, nullptr);
    if (!seen)
      qFatal("no viewshed: %s", CPLGetLastErrorMsg());
    mColumns = GDALGetRasterXSize(seen);
    mRows = GDALGetRasterYSize(seen);
    mCells.resize(size_t(mColumns) * size_t(mRows));
    double place[6], whole[6];
    GDALGetGeoTransform(seen, place);
    raster.GetGeoTransform(whole);
    mLeft = int(std::lround((place[0] - whole[0]) / whole[1]));
    mTop = int(std::lround((place[3] - whole[3]) / whole[5]));
    const CPLErr error = GDALRasterIO(GDALGetRasterBand(seen, 1), GF_Read, 0, 0, mColumns, mRows, mCells.data(),
                                      mColumns, mRows, GDT_Byte, 0, 0);
    GDALClose(seen);
    if (error != CE_None)
      qFatal("the viewshed cannot be read");
  }

  bool sees(int column, int row) const {
    column -= mLeft;
    row -= mTop;
    return column >= 0 && column < mColumns && row >= 0 && row < mRows && mCells[size_t(row * mColumns + column)] != 0;
  }

  //! Whether a cell or one of the eight around it has that answer.
  bool nearlySays(bool answer, int column, int row) const {
    for (int r = row - 1; r <= row + 1; ++r)
      for (int c = column - 1; c <= column + 1; ++c)
        if (sees(c, r) == answer)
          return true;
    return false;
  }

private:
  int mColumns, mRows, mLeft, mTop;
  std::vector<uint8_t> mCells;
};
} // namespace

class ViewshedTest : public QObject {
  Q_OBJECT

private slots:
  void theGroundHidesWhatGdalsViewshedHides() {
    const QgsRasterLayer layer(path);
    QVERIFY(layer.isValid());
    const RasterInput input(QStringLiteral("DEM"),
                            std::shared_ptr<QgsRasterDataProvider>(layer.dataProvider()->clone()), 1, layer.crs(),
                            QgsCoordinateTransformContext());
    Terrain terrain(input.grid(), input.project());
    const QgsCoordinateTransform toPlaces(layer.crs(), QgsCoordinateReferenceSystem(QStringLiteral("EPSG:4326")),
                                          QgsCoordinateTransformContext());
    const std::unique_ptr<GDALDataset> raster(
        GDALDataset::Open(qPrintable(path), GDAL_OF_RASTER | GDAL_OF_READONLY, nullptr, nullptr, nullptr));
    QVERIFY(raster);
    double transform[6];
    raster->GetGeoTransform(transform);
    const int columns = raster->GetRasterXSize(), rows = raster->GetRasterYSize();
    const double cell = transform[1];
    const auto centre = [&](int column, int row) {
      return QgsPointXY(transform[0] + (column + 0.5) * cell, transform[3] - (row + 0.5) * cell);
    };
    const auto placeOf = [&](const QgsPointXY &point) {
      const QgsPointXY degrees = toPlaces.transform(point);
      return Place{Angle::degrees(degrees.y()), Angle::degrees(degrees.x())};
    };

    Random random(20260615);
    int same = 0, near = 0, seen = 0;
    for (int i = 0; i < observers; ++i) {
      const int column = int(random.between(0, columns)), row = int(random.between(0, rows));
      const QgsPointXY from = centre(column, row);
      const Viewshed viewshed(*raster, from.x(), from.y());
      for (int k = 0; k < targets;) {
        const double distance = farthest * std::sqrt(random.between(0, 1)), towards = random.between(0, 2 * Angle::pi);
        const int targetColumn = int(std::lround(column + distance / cell * std::sin(towards)));
        const int targetRow = int(std::lround(row + distance / cell * std::cos(towards)));
        // The border has no cells around it.
        if (targetColumn < 1 || targetColumn + 1 >= columns || targetRow < 1 || targetRow + 1 >= rows ||
            (targetColumn == column && targetRow == row) ||
            std::hypot(targetColumn - column, targetRow - row) * cell > farthest)
          continue;
        ++k;
        const Place a = placeOf(from), b = placeOf(centre(targetColumn, targetRow));
        const bool ours = groundLetsSee(terrain.profile(a, b, geodesicBetween(a, b).length),
                                        Length::metres(eyeHeight), Length::metres(markHeight));
        const bool gdals = viewshed.sees(targetColumn, targetRow);
        seen += gdals;
        same += ours == gdals;
        near += viewshed.nearlySays(ours, targetColumn, targetRow);
        if (!viewshed.nearlySays(ours, targetColumn, targetRow))
          qInfo("ours %d, GDAL's %d: cell %d, %d to %d, %d", ours, gdals, column, row, targetColumn, targetRow);
      }
    }
    constexpr int pairs = observers * targets;
    qInfo("%d pairs, %d of them seen: the same answer for %d, within a cell for %d", pairs, seen, same, near);
    QVERIFY2(seen > pairs / 10 && seen < pairs * 9 / 10, "the pairs tell little: nearly all are seen, or nearly none");
    QVERIFY(near >= pairs * 99 / 100);
  }
};

BRUSHLINE_HOST_TEST_MAIN(ViewshedTest)
#include "viewshed_test.moc"
