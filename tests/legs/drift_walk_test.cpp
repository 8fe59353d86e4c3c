// SPDX-License-Identifier: GPL-2.0-or-later
// The drift that annotatelegs tells for the sample's route through its wall of brush, beside 10 000 walks of it by
// dice.
//
// What is walked are the marks as they lie on the map, one hop after the other, each as long as the cover lets it be.
// Nothing of the drift's own computation is used: the errors are drawn, the hops turned and stretched by them, and what
// comes of it counted. All in a plane that touches the ellipsoid at the route's start; it gets lengths and angles wrong
// by less than 1 in 4000 over the route's 1.4 km (distance * tan latitude / Earth's radius), so sigmas by far less than
// their tolerance.
#include "legs/annotate_run.h"

#include "support/random.h"

#include <qgscoordinatetransform.h>

#include <algorithm>
#include <cmath>
#include <optional>

using namespace brushline;
using namespace brushline::test;

namespace {

constexpr double degree = Angle::pi / 180;
constexpr size_t walks = 10000;
// Square root of 5.991, the chi-square distribution's quantile at 95 percent with two degrees of freedom, from any
// table of it.
const double sigmasOf95 = std::sqrt(5.991);

struct Spot {
  double east = 0, north = 0; // metres

  Spot operator+(const Spot &other) const { return {east + other.east, north + other.north}; }
  Spot operator-(const Spot &other) const { return {east - other.east, north - other.north}; }
  double length() const { return std::hypot(east, north); }
  double degrees() const { return std::atan2(east, north) / degree; } // clockwise from north
  //! In the direction of a bearing, and square to it on its right.
  double along(double bearing) const { return east * std::sin(bearing * degree) + north * std::cos(bearing * degree); }
  double across(double bearing) const { return east * std::cos(bearing * degree) - north * std::sin(bearing * degree); }
  //! Turned clockwise.
  Spot turned(double degrees) const {
    const double sine = std::sin(degrees * degree), cosine = std::cos(degrees * degree);
    return {east * cosine + north * sine, north * cosine - east * sine};
  }
};

class TangentPlane {
public:
  TangentPlane(const QString &crs, const QgsPointXY &origin)
      : mToDegrees(QgsCoordinateReferenceSystem(crs), QgsCoordinateReferenceSystem("EPSG:4326"),
                   QgsCoordinateTransformContext()),
        mOrigin(mToDegrees.transform(origin)) {
    // Radii of curvature of the WGS84 ellipsoid (its defining axis and flattening; any textbook of geodesy).
    const double a = 6378137, f = 1 / 298.257223563, e2 = f * (2 - f);
    const double sine = std::sin(mOrigin.y() * degree), w2 = 1 - e2 * sine * sine;
    mEast = a / std::sqrt(w2) * std::cos(mOrigin.y() * degree) * degree;
    mNorth = a * (1 - e2) / std::pow(w2, 1.5) * degree;
  }
  Spot operator()(const QgsPointXY &onMap) const {
    const QgsPointXY place = mToDegrees.transform(onMap);
    return {(place.x() - mOrigin.x()) * mEast, (place.y() - mOrigin.y()) * mNorth};
  }

private:
  QgsCoordinateTransform mToDegrees;
  QgsPointXY mOrigin;
  double mEast, mNorth; // metres of a degree
};

// Box and Muller 1958, from memory.
class Dice {
public:
  explicit Dice(uint64_t seed) : mRandom(seed) {}
  double even(double width) { return mRandom.between(-width / 2, width / 2); }
  double normal() {
    if (mSpare) {
      const double spare = *mSpare;
      mSpare.reset();
      return spare;
    }
    const double radius = std::sqrt(-2 * std::log1p(-mRandom.between(0, 1))), turn = mRandom.between(0, 2 * Angle::pi);
    mSpare = radius * std::sin(turn);
    return radius * std::cos(turn);
  }

private:
  Random mRandom;
  std::optional<double> mSpare;
};

// A leg as annotatelegs gives it.
struct Leg {
  bool found = false; // its start, with certainty
  Spot start, end;
  std::vector<Spot> hops;                             // from mark to mark
  double bearing = 0;                                 // degrees
  double across = 0, along = 0, major = 0, minor = 0; // 1 sigma, metres
  double axis = 0;                                    // degrees
  std::vector<Spot> drawn;                            // the ellipse's corners
};

// Within a convex ring: on the same side of all its edges.
bool within(const std::vector<Spot> &ring, const Spot &spot) {
  int right = 0;
  for (size_t i = 0; i + 1 < ring.size(); ++i) {
    const Spot edge = ring[i + 1] - ring[i], to = spot - ring[i];
    right += edge.east * to.north - edge.north * to.east < 0;
  }
  return right == 0 || right == int(ring.size()) - 1;
}

// What the walks came to at a leg's end.
struct Counted {
  double across, along, major, minor; // standard deviations in the leg's and the ellipse's directions
  double inFields, drawn;             // shares that the ellipse holds, as the fields tell and as it is drawn
  double off;                         // of the mean of the walks from the leg's end, metres
};

Counted count(const std::vector<Spot> &walkers, const Leg &leg) {
  Spot mean;
  for (const Spot &walker : walkers)
    mean = mean + walker;
  mean = {mean.east / double(walks), mean.north / double(walks)};
  Counted counted{};
  for (const Spot &walker : walkers) {
    const Spot strayed = walker - mean, off = walker - leg.end;
    counted.across += std::pow(strayed.across(leg.bearing), 2);
    counted.along += std::pow(strayed.along(leg.bearing), 2);
    counted.major += std::pow(strayed.along(leg.axis), 2);
    counted.minor += std::pow(strayed.across(leg.axis), 2);
    counted.inFields += std::hypot(off.along(leg.axis) / leg.major, off.across(leg.axis) / leg.minor) <= sigmasOf95;
    counted.drawn += within(leg.drawn, walker);
  }
  for (double *sum : {&counted.across, &counted.along, &counted.major, &counted.minor})
    *sum = std::sqrt(*sum / double(walks - 1));
  counted.inFields /= double(walks);
  counted.drawn /= double(walks);
  counted.off = (mean - leg.end).length();
  return counted;
}

} // namespace

class DriftWalkTest : public QObject {
  Q_OBJECT
private slots:
  void initTestCase();
  void walksOfTheSample_data();
  void walksOfTheSample();

private:
  QString layerOf(const char *name) const { return mFolder.filePath("sample.gpkg") + "|layername=" + name; }
  void annotateSample(bool namedFound);
  void readLeg(const OutputRow &row, const OutputRow &ellipse, const std::vector<const OutputRow *> &marks);

  QTemporaryDir mFolder; // the sample, lest reading it leaves files beside it
  // Of the row of data at hand.
  QString mWalker, mDirection;
  double mDialStep = 0, mSighting = 0, mPacing = 0, mDeclination = 0; // errors: degrees; a share of the distance
  std::optional<TangentPlane> mPlane;
  std::vector<Spot> mNamed; // the points found with certainty
  std::vector<Leg> mLegs;
};

void DriftWalkTest::initTestCase() {
  for (const char *name : {"sample.gpkg", "terrain.tif"})
    QVERIFY(QFile::copy(QStringLiteral(BRUSHLINE_SOURCE_DIR "/sample-project/") + name, mFolder.filePath(name)));
}

// Runs the algorithm and reads the legs of the route and the walker out of its three outputs.
void DriftWalkTest::annotateSample(bool namedFound) {
  QVariantMap parameters{{"INPUT", layerOf("routes")},  {"ROUTE_FIELD", "route"},
                         {"POINTS", layerOf("points")}, {"DEM", mFolder.filePath("terrain.tif")},
                         {"COVER", layerOf("cover")},   {"COVER_CLASS", "class"},
                         {"NAMED_FOUND", namedFound},   {"DIRECTION", mDirection == "back" ? 1 : 0},
                         {"DIAL_STEP", mDialStep},      {"MARKS", "TEMPORARY_OUTPUT"},
                         {"DRIFT", "TEMPORARY_OUTPUT"}};
  if (mWalker.isEmpty()) {
    mSighting = 3.5;
    mPacing = 0.06;
    parameters["BEARING_ERROR"] = mSighting;
    parameters["PACE_ERROR"] = mPacing * 100;
  } else {
    parameters["WALKERS"] = layerOf("walkers");
    mSighting = mPacing = 0;
    for (const OutputRow &row : read(QgsVectorLayer(layerOf("walkers"), "walkers", "ogr")).rows)
      if (row.text("walker") == mWalker) {
        mSighting = row.number("brg_err");
        mPacing = row.number("pace_err") / 100;
      }
    QVERIFY(mSighting > 0 && mPacing > 0);
  }
  const Outcome outcome = annotate(parameters);
  VERIFY_RAN(outcome);
  QCOMPARE(outcome.output("MARKS").crs, outcome.output().crs);
  QCOMPARE(outcome.output("DRIFT").crs, outcome.output().crs);

  const auto rowsOf = [&](const char *key) {
    std::vector<const OutputRow *> rows;
    for (const OutputRow &row : outcome.rows(key))
      if (row.text("route") == "Camp to stand" && row.text("walker") == mWalker && row.text("direction") == mDirection)
        rows.push_back(&row);
    return rows;
  };
  const auto legs = rowsOf("OUTPUT"), marks = rowsOf("MARKS"), ellipses = rowsOf("DRIFT");
  QCOMPARE(legs.size(), size_t(7)); // the sample's README
  QCOMPARE(ellipses.size(), size_t(7));
  mPlane.emplace(outcome.output().crs, QgsPointXY(legs.front()->geometry.vertexAt(0)));
  mNamed.clear();
  if (namedFound)
    for (const OutputRow &row : read(QgsVectorLayer(layerOf("points"), "points", "ogr")).rows)
      mNamed.push_back((*mPlane)(row.geometry.asPoint())); // in the routes' system, as the sample's README says
  mDeclination = legs.front()->number("decl_err");
  QVERIFY(mDeclination > 0.2); // the model's own, never under a quarter of a degree
  mLegs.clear();
  for (size_t l = 0; l < legs.size() && !QTest::currentTestFailed(); ++l)
    readLeg(*legs[l], *ellipses[l], marks);
}

void DriftWalkTest::readLeg(const OutputRow &row, const OutputRow &ellipse,
                            const std::vector<const OutputRow *> &marks) {
  const int number = int(mLegs.size()) + 1;
  const std::string where = "leg " + std::to_string(number);
  QCOMPARE(row["leg"].toInt(), number);
  QCOMPARE(ellipse["leg"].toInt(), number);
  QCOMPARE(ellipse.number("share"), 0.95);
  Leg leg;
  leg.start = (*mPlane)(QgsPointXY(row.geometry.vertexAt(0)));
  leg.end = (*mPlane)(QgsPointXY(row.geometry.vertexAt(1)));
  for (const Spot &named : mNamed)
    leg.found = leg.found || (named - leg.start).length() < 0.1;
  leg.bearing = (leg.end - leg.start).degrees();
  leg.across = row.number("drift_m");
  leg.along = row.number("along_m");
  leg.major = ellipse.number("major_m") / sigmasOf95;
  leg.minor = ellipse.number("minor_m") / sigmasOf95;
  leg.axis = ellipse.number("major_brg");
  for (auto corner = ellipse.geometry.vertices_begin(); corner != ellipse.geometry.vertices_end(); ++corner)
    leg.drawn.push_back((*mPlane)(QgsPointXY(*corner)));
  Spot before = leg.start;
  for (const OutputRow *mark : marks)
    if ((*mark)["leg"].toInt() == number) {
      const Spot here = (*mPlane)(mark->geometry.asPoint());
      leg.hops.push_back(here - before);
      before = here;
    }
  // The plane and the outputs tell of one route.
  QCOMPARE(int(leg.hops.size()), row["marks"].toInt());
  VERIFY_NEAR((before - leg.end).length(), 0, 0.01, where + ": the last mark");
  VERIFY_NEAR((leg.end - leg.start).length(), row.number("dist_m"), row.number("dist_m") / 4000, where);
  VERIFY_NEAR(turnBetween(leg.bearing, row.number("true_brg")), 0, 1 / degree / 4000, where);
  VERIFY_NEAR(row.number("decl_err"), mDeclination, mDeclination / 1000, where);
  mLegs.push_back(std::move(leg));
}

void DriftWalkTest::walksOfTheSample_data() {
  QTest::addColumn<QString>("walker"); // of the sample's table; empty: by the parameters
  QTest::addColumn<bool>("namedFound");
  QTest::addColumn<QString>("direction");
  QTest::addColumn<double>("dialStep");
  QTest::addColumn<int>("seed");
  QTest::newRow("leader, errors add up") << "Ressa (leader)" << false << "out" << 2.0 << 1;
  QTest::newRow("leader, named points found") << "Ressa (leader)" << true << "out" << 2.0 << 2;
  QTest::newRow("aged 12, errors add up") << "Joff (12)" << false << "out" << 2.0 << 3;
  QTest::newRow("aged 12, named points found") << "Joff (12)" << true << "out" << 2.0 << 4;
  QTest::newRow("aged 8, errors add up") << "Minka (8)" << false << "out" << 2.0 << 5;
  QTest::newRow("aged 8, named points found") << "Minka (8)" << true << "out" << 2.0 << 6;
  QTest::newRow("by the parameters, coarse dial") << "" << false << "out" << 5.0 << 7;
  QTest::newRow("by the parameters, coarse dial, way back") << "" << false << "back" << 5.0 << 8;
}

void DriftWalkTest::walksOfTheSample() {
  QFETCH(bool, namedFound);
  QFETCH(int, seed);
  QFETCH(QString, walker);
  QFETCH(QString, direction);
  QFETCH(double, dialStep);
  mWalker = walker;
  mDirection = direction;
  mDialStep = dialStep;
  annotateSample(namedFound);
  if (QTest::currentTestFailed())
    return;
  // It is the route through the brush: hops of some metres there, and of more than ten times that elsewhere.
  double shortest = 1e9, longest = 0;
  for (const Leg &leg : mLegs)
    for (const Spot &hop : leg.hops) {
      shortest = std::min(shortest, hop.length());
      longest = std::max(longest, hop.length());
    }
  VERIFY_AT(shortest < 10 && longest > 10 * shortest, std::to_string(shortest) + " to " + std::to_string(longest));

  Dice dice{uint64_t(seed)};
  std::vector<Spot> walkers(walks, mLegs.front().start);
  std::vector<double> misread(walks); // declination, degrees
  for (double &error : misread)
    error = mDeclination * dice.normal();
  const double turned = std::hypot(mSighting, mDialStep / std::sqrt(12.0), mDeclination) * degree; // a hop, 1 sigma
  double distance = 0; // since the last place found, metres
  for (size_t l = 0; l < mLegs.size(); ++l) {
    const Leg &leg = mLegs[l];
    distance = (leg.found ? 0 : distance) + (leg.end - leg.start).length();
    for (size_t w = 0; w < walks; ++w) {
      const double dial = dice.even(mDialStep), stretched = 1 + mPacing * dice.normal();
      if (leg.found)
        walkers[w] = leg.start;
      for (const Spot &hop : leg.hops) {
        const Spot walked = hop.turned(misread[w] + dial + mSighting * dice.normal());
        walkers[w] = walkers[w] + Spot{stretched * walked.east, stretched * walked.north};
      }
    }
    const Counted counted = count(walkers, leg);
    const std::string where = "leg " + std::to_string(l + 1);
    VERIFY_NEAR(counted.across, leg.across, 0.03 * leg.across, where);
    VERIFY_NEAR(counted.along, leg.along, 0.03 * leg.along, where);
    VERIFY_NEAR(counted.major, leg.major, 0.03 * leg.major, where);
    VERIFY_NEAR(counted.minor, leg.minor, 0.03 * leg.minor, where);
    VERIFY_NEAR(counted.inFields, 0.95, 0.01, where);
    VERIFY_NEAR(counted.drawn, 0.95, 0.01, where);
    // Whoever strays from the line falls short by square(angle) / 2 on average, which the formula leaves out; the rest
    // is chance (4 standard errors of a mean).
    VERIFY_AT(counted.off < distance * turned * turned / 2 + 4 * leg.major / std::sqrt(double(walks)), where);
  }
}

BRUSHLINE_HOST_TEST_MAIN(DriftWalkTest)
#include "drift_walk_test.moc"
