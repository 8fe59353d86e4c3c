// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/line_fan.h"

#include "planning/walker_by_chance.h"
#include "support/near.h"
#include "support/random.h"

#include <map>

using namespace brushline;
using namespace brushline::test;

namespace {

constexpr double degree = Angle::pi / 180;

std::vector<FanEdge> through(const std::vector<PlanePoint> &points) {
  std::vector<FanEdge> edges;
  for (size_t i = 1; i < points.size(); ++i)
    edges.push_back({points[i - 1], points[i]});
  return edges;
}

// What a ray meets first, by trying every edge.
std::optional<LineFan::Met> byHand(const std::vector<FanEdge> &edges, double bearing) {
  std::optional<LineFan::Met> first;
  const double dx = std::sin(bearing), dy = std::cos(bearing);
  for (size_t i = 0; i < edges.size(); ++i) {
    const double ex = edges[i].b.east - edges[i].a.east, ey = edges[i].b.north - edges[i].a.north;
    const double det = ex * dy - ey * dx;
    if (std::abs(det) < 1e-12)
      continue;
    const double s = (ex * edges[i].a.north - ey * edges[i].a.east) / det;
    const double t = (dx * edges[i].a.north - dy * edges[i].a.east) / det;
    if (s > 0 && t >= 0 && t <= 1 && (!first || s < first->metres))
      first = LineFan::Met{i, s};
  }
  return first;
}

LegErrors errorsOf(double sighting, double common) {
  return {Angle::degrees(sighting), Angle::degrees(common), Angle(), 0.05};
}

std::vector<double> marksOf(double hop, double length) {
  std::vector<double> marks;
  for (double at = hop; at < length - 1e-9; at += hop)
    marks.push_back(at);
  marks.push_back(length);
  return marks;
}

} // namespace

class LineFanTest : public QObject {
  Q_OBJECT
private slots:
  void nearestOfManyByHand() {
    Random random(7);
    for (int round = 0; round < 40; ++round) {
      std::vector<FanEdge> edges; // they cross as they like, and lie all round
      const int count = 1 + round * 3;
      for (int i = 0; i < count; ++i) {
        const PlanePoint a{random.between(-1000, 1000), random.between(-1000, 1000)};
        edges.push_back({a, {a.east + random.between(-600, 600), a.north + random.between(-600, 600)}});
      }
      const LineFan fan(edges);
      for (size_t i = 1; i < fan.pieces().size(); ++i)
        QVERIFY(fan.pieces()[i].from >= fan.pieces()[i - 1].to - 1e-11);
      for (int i = 0; i < 500; ++i) {
        const double bearing = random.between(-7, 7);
        const auto met = fan.met(bearing), expected = byHand(edges, bearing);
        const std::string where = "round " + std::to_string(round) + ", bearing " + std::to_string(bearing);
        VERIFY_AT(met.has_value() == expected.has_value(), where);
        if (met)
          VERIFY_NEAR(met->metres, expected->metres, 1e-6, where);
      }
    }
  }

  void nothingToMeet() {
    QVERIFY(LineFan({}).pieces().empty());
    QVERIFY(!LineFan({}).met(1));
    QVERIFY(LineFan(through({{0, 10}, {0, 20}})).pieces().empty()); // points at the walker
    QVERIFY(LineFan(through({{5, 5}, {5, 5}})).pieces().empty());   // no length
    int met = 0;
    LineFan({}).chances(0, AimSpread({100}, errorsOf(3, 0)), 1000, [&](size_t, double) { ++met; });
    QCOMPARE(met, 0);
  }

  // All round the walker: every walk meets it, whatever the error.
  void closedRound() {
    const LineFan fan(through({{-100, -100}, {100, -100}, {100, 100}, {-100, 100}, {-100, -100}}));
    for (const double sigma : {0.5, 5.0, 40.0})
      for (double aim = 0; aim < 360; aim += 17) {
        double all = 0;
        fan.chances(aim * degree, AimSpread({100}, errorsOf(sigma, 0)), 1000,
                    [&](size_t, double share) { all += share; });
        const LineFan::Met behind = *byHand(fan.edges(), aim * degree + Angle::pi); // cut off there
        const double round = 2 * shareBelow(Angle::pi / AimSpread({100}, errorsOf(sigma, 0)).at(behind.metres)) - 1;
        // 1e-6: at 40 degrees the hops' part shrinks so fast with the distance that walks overtake each other.
        VERIFY_NEAR(all, round, 1e-6, std::to_string(sigma) + " at " + std::to_string(aim));
      }
  }

  // An endless line square to the aim: the chance right of a place x aside is Phi of its angle in sigmas.
  void straightLineByHand() {
    const LineFan fan(through({{-1e6, 1000}, {50, 1000}, {1e6, 1000}}));
    const AimSpread spread({1000}, errorsOf(0, 2));
    std::map<size_t, double> shares;
    fan.chances(0, spread, 1e9, [&](size_t edge, double share) { shares[edge] += share; });
    VERIFY_NEAR(shares[0], shareBelow(std::atan(0.05) / (2 * degree)), 1e-9, "left");
    VERIFY_NEAR(shares[0] + shares[1], 1, 1e-9, "all");
  }

  // The limit cuts a line where it leaves the circle.
  void limitByHand() {
    const LineFan fan(through({{-1e5, 1000}, {1e5, 1000}}));
    const AimSpread spread({1000}, errorsOf(0, 20));
    for (const double limit : {999.0, 1001.0, 1100.0, 1500.0, 4000.0}) {
      double all = 0;
      fan.chances(0.1, spread, limit, [&](size_t, double share) { all += share; });
      double expected = 0;
      if (limit > 1000) {
        const double half = std::acos(1000 / limit);
        expected = shareBelow((half - 0.1) / (20 * degree)) - shareBelow((-half - 0.1) / (20 * degree));
      }
      VERIFY_NEAR(all, expected, 1e-9, std::to_string(limit));
    }
  }

  // Whatever the lines, nobody meets two: the chances are no more than 1 in all.
  void neverMoreThanAll() {
    Random random(11);
    for (int round = 0; round < 300; ++round) {
      std::vector<FanEdge> edges;
      for (int i = 0; i < 60; ++i) {
        const double away = random.between(5, 3000), bearing = random.between(0, 7);
        const PlanePoint a{away * std::sin(bearing), away * std::cos(bearing)};
        edges.push_back({a, {a.east + random.between(-300, 300), a.north + random.between(-300, 300)}});
      }
      const LineFan fan(edges);
      double all = 0;
      fan.chances(random.between(0, 7), AimSpread(marksOf(30, 900), errorsOf(random.between(0.5, 20), 0.6)),
                  random.between(500, 4000), [&](size_t, double share) { all += share; });
      VERIFY_AT(all <= 1 + 1e-12, std::to_string(all));
    }
  }

  // A wall beside the way hides a part of the line behind it: 200 000 walks again.
  void nearOneFirst() {
    for (const double gap : {2.0, 6.0, 12.0}) {
      const std::vector<FanEdge> edges = {{{-3000, 900}, {10, 900}}, {{10, 900}, {3000, 900}}, {{gap, 120}, {60, 100}}};
      std::vector<WalkerByChance::Stretch> lines;
      for (const FanEdge &edge : edges)
        lines.push_back({{edge.a.east, edge.a.north}, {edge.b.east, edge.b.north}});
      WalkerByChance walker(lines, {0.6 * degree, 3 * degree}, 5);
      std::vector<double> counts(3), shares(3);
      for (int i = 0; i < 200000; ++i)
        if (const auto met = walker.walk(0.01, {20}, 1400))
          counts[met->first] += 1 / 200000.0;
      LineFan(edges).chances(0.01, AimSpread(marksOf(20, 900), errorsOf(3, 0.6)), 1400,
                             [&](size_t edge, double share) { shares[edge] += share; });
      VERIFY_NEAR(shares[2], counts[2], 0.01, "wall");
      VERIFY_NEAR(shares[0] + shares[1], counts[0] + counts[1], 0.01, "line");
    }
  }

  void byChance_data() {
    QTest::addColumn<QString>("line");
    QTest::addColumn<double>("aim");
    QTest::addColumn<double>("sighting");
    QTest::addColumn<double>("common");
    QTest::addColumn<double>("hop");
    QTest::addColumn<double>("length");
    QTest::addColumn<double>("limit");
    const auto row = [](const char *name, const char *line, double aim, double sighting, double common, double hop,
                        double length, double limit) {
      QTest::newRow(name) << line << aim << sighting << common << hop << length << limit;
    };
    row("square, common", "-2000 800,30 800,2000 800", 0, 0, 3, 50, 800, 1200);
    row("square, hops", "-2000 800,10 800,2000 800", 0, 3, 0.6, 40, 800, 1200);
    row("one hop", "-2000 300,12 300,2000 300", 0, 3, 0.6, 300, 300, 450);
    row("oblique 45", "-1500 -700,8 808,1500 2300", 0, 3, 0.6, 40, 800, 1200);
    row("oblique 30", "-1500 -66,12 807,1500 1666", 0, 3, 0.6, 40, 800, 1200);
    row("short", "-25 600,0 600,20 600", 0, 3, 0.6, 30, 600, 900);
    row("end of a line", "-2000 700,10 700,18 705", 0, 3, 1, 60, 700, 1050);
    row("bends away, straight", "-2000 500,5 500,25 530,30 700,25 1500", 0.01, 0, 1.6, 25, 500, 750);
    row("bends away", "-2000 500,5 500,25 530,30 700,25 1500", 0.01, 4, 1, 25, 500, 750);
    row("comes along, wrong side", "-2000 500,12 500,30 480,30 150,60 100", -0.01, 4, 1, 25, 500, 750);
    row("comes along, far", "-2000 900,0 900,60 880,60 300,100 250", -0.03, 4, 1, 25, 900, 1350);
    row("hairpin", "-2000 640,15 640,15 600,-10 600", 0, 3, 0.6, 40, 600, 900);
    row("zigzag", "-200 500,-30 480,-10 520,5 470,20 525,40 480,200 500", 0.5 * degree, 3, 0.6, 33, 480, 720);
  }
  // 200 000 walks, hop by hop, each hop with its own error: to within a hundredth. Where a line runs along beside the
  // walk, hops that stray and return touch it on the way, which the fan, by where walks are at each distance, does not
  // see: there it may claim up to two hundredths too little, but still no more than one too much.
  void byChance() {
    QFETCH(QString, line);
    QFETCH(double, aim);
    QFETCH(double, sighting);
    QFETCH(double, common);
    QFETCH(double, hop);
    QFETCH(double, length);
    QFETCH(double, limit);
    const bool alongside = QByteArray(QTest::currentDataTag()) == "bends away";
    std::vector<PlanePoint> points;
    for (const QString &text : line.split(QLatin1Char(',')))
      points.push_back(
          {text.section(QLatin1Char(' '), 0, 0).toDouble(), text.section(QLatin1Char(' '), 1, 1).toDouble()});
    const std::vector<FanEdge> edges = through(points);
    std::vector<WalkerByChance::Stretch> lines;
    for (const FanEdge &edge : edges)
      lines.push_back({{edge.a.east, edge.a.north}, {edge.b.east, edge.b.north}});
    WalkerByChance walker(lines, {common * degree, sighting * degree}, 4711);
    constexpr int walks = 200000;
    std::vector<int> counts(edges.size());
    for (int i = 0; i < walks; ++i)
      if (const auto met = walker.walk(aim, {hop}, limit))
        ++counts[met->first];

    std::vector<double> shares(edges.size());
    LineFan(edges).chances(aim, AimSpread(marksOf(hop, length), errorsOf(sighting, common)), limit,
                           [&](size_t edge, double share) { shares[edge] += share; });
    double counted = 0, claimed = 0;
    for (size_t i = 0; i < edges.size(); ++i) { // from one end up to each vertex
      counted += double(counts[i]) / walks;
      claimed += shares[i];
      const std::string where = "up to the end of edge " + std::to_string(i);
      if (alongside)
        VERIFY_NEAR(claimed, counted - 0.005, 0.015, where);
      else
        VERIFY_NEAR(claimed, counted, 0.01, where);
    }
  }
};

QTEST_GUILESS_MAIN(LineFanTest)
#include "line_fan_test.moc"
