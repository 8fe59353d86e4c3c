// SPDX-License-Identifier: GPL-2.0-or-later
// Worked by hand: shapes are given by metres along and across a leg; random ones are asked point by point.
#include "planning/features_met.h"
#include "shared/geodesic.h"
#include "shared/local_plane.h"
#include "support/near.h"
#include "support/random.h"

#include <QtTest>

#include <cmath>
#include <limits>

using namespace brushline;

namespace {

using Points = std::vector<std::pair<double, double>>; // along, across (right positive)

struct Scene {
  Place start{Angle::degrees(-46.3), Angle::degrees(179.9995)}; // across the 180th meridian, in the south
  double direction = 60, length = 300;
  MeetRule rule{Length::metres(20), Length::metres(200)};
  std::vector<Shape> shapes;

  LegLine line() const { return {start, TrueBearing(Angle::degrees(direction)), Length::metres(length)}; }
  Place at(double along, double across) const {
    const double a = direction * M_PI / 180;
    return LocalPlane(start).toPlace({along * std::sin(a) + across * std::cos(a),
                                      along * std::cos(a) - across * std::sin(a)});
  }
  void add(ShapeKind kind, std::vector<Points> parts) {
    Shape shape;
    shape.kind = kind;
    for (const Points &points : parts) {
      shape.parts.emplace_back();
      for (const auto &[along, across] : points)
        shape.parts.back().push_back(at(along, across));
      if (kind == ShapeKind::Polygon)
        shape.parts.back().push_back(shape.parts.back().front());
    }
    shapes.push_back(shape);
  }
  std::string met() const {
    std::string text;
    for (const FeatureMet &met : featuresMet(Shapes(shapes), line(), rule)) {
      static const char *const roles[] = {"crossed", "left", "right", "beyond"};
      static const char *const events[] = {"across", "touched", "along", "into", "out", "passed"};
      char words[100];
      std::snprintf(words, sizeof words, "%zu %s %s %.1f", met.shape, roles[int(met.role)], events[int(met.event)],
                    met.at_m + 1e-7);
      text += std::string(text.empty() ? "" : "; ") + words;
      if (met.across_m != 0) {
        std::snprintf(words, sizeof words, "/%.1f", met.across_m);
        text += words;
      }
    }
    return text;
  }
};

Profile profileOf(double step, const std::vector<double> &heights) { return {Length::metres(step), heights}; }

} // namespace

class FeaturesMetTest : public QObject {
  Q_OBJECT

private slots:
  void byHand_data() {
    QTest::addColumn<int>("kind");
    QTest::addColumn<QList<QList<double>>>("parts"); // along, across, along, across ...
    QTest::addColumn<QString>("met");
    const int point = int(ShapeKind::Point), line = int(ShapeKind::Line), area = int(ShapeKind::Polygon);
    using Parts = QList<QList<double>>;
    QTest::newRow("crossed") << line << Parts{{120, -50, 120, 50}} << "0 crossed across 120.0";
    QTest::newRow("crossed aslant") << line << Parts{{100, -50, 140, 50}} << "0 crossed across 120.0";
    QTest::newRow("three times") << line << Parts{{50, -9, 60, 9, 70, -9, 80, 9}}
                                 << "0 crossed across 55.0; 0 crossed across 65.0; 0 crossed across 75.0";
    QTest::newRow("two parts") << line << Parts{{50, -9, 50, 9}, {90, 9, 90, -9}}
                               << "0 crossed across 50.0; 0 crossed across 90.0";
    QTest::newRow("crossed in a vertex") << line << Parts{{50, -9, 60, 0, 70, 9}} << "0 crossed across 60.0";
    QTest::newRow("touched in a vertex") << line << Parts{{50, 9, 60, 0, 70, 9}} << "0 crossed touched 60.0";
    QTest::newRow("touched from the left") << line << Parts{{50, -9, 60, 0, 70, -9}} << "0 crossed touched 60.0";
    QTest::newRow("begins on the leg") << line << Parts{{60, 0, 70, -9}} << "0 crossed touched 60.0";
    QTest::newRow("ends on the leg") << line << Parts{{70, -9, 60, 0}} << "0 crossed touched 60.0";
    QTest::newRow("along") << line << Parts{{50, -9, 60, 0, 90, 0, 95, 9}} << "0 crossed along 60.0";
    QTest::newRow("along and back") << line << Parts{{50, -9, 60, 0, 90, 0, 95, -9}} << "0 crossed along 60.0";
    QTest::newRow("at the start") << line << Parts{{0, -9, 0, 9}} << "";
    QTest::newRow("before the start") << line << Parts{{-5, -9, -5, 9}} << "";
    QTest::newRow("at the end") << line << Parts{{300, -9, 300, 9}} << "0 crossed across 300.0";
    QTest::newRow("beyond") << line << Parts{{340, -9, 340, 9}} << "0 beyond across 340.0";
    QTest::newRow("just beyond") << line << Parts{{305, -9, 305, 9}} << "0 beyond across 305.0";
    QTest::newRow("out of reach") << line << Parts{{501, -9, 501, 9}} << "";
    QTest::newRow("beside") << line << Parts{{50, 15, 90, 12}} << "0 right passed 90.0/12.0";
    QTest::newRow("beside on the left") << line << Parts{{50, -12, 90, -15}} << "0 left passed 50.0/-12.0";
    QTest::newRow("too far off") << line << Parts{{50, 21, 90, 22}} << "";
    QTest::newRow("point right") << point << Parts{{70, 8}} << "0 right passed 70.0/8.0";
    QTest::newRow("point left") << point << Parts{{70, -8}} << "0 left passed 70.0/-8.0";
    QTest::newRow("point on the line") << point << Parts{{70, 0}} << "0 crossed touched 70.0";
    QTest::newRow("point behind") << point << Parts{{-3, 5}} << "";
    QTest::newRow("point far") << point << Parts{{70, 30}} << "";
    QTest::newRow("handrail") << line << Parts{{-50, 10, 350, 10}} << "0 right passed 0.0/10.0";
    QTest::newRow("handrail from the start") << line << Parts{{0, 10, 300, 10}} << "0 right passed 0.0/10.0";
    // 8 m in 400 m: 11 m off where the leg starts.
    QTest::newRow("handrail that draws away") << line << Parts{{-50, 10, 350, 18}} << "0 right passed 0.0/11.0";
    QTest::newRow("handrail that comes nearer") << line << Parts{{-50, 18, 350, 10}} << "0 right passed 300.0/11.0";
    QTest::newRow("handrail for 60 m") << line << Parts{{-50, -5, 60, -5}} << "0 left passed 0.0/-5.0";
    QTest::newRow("beside the start for 40 m") << line << Parts{{-50, -5, 40, -5}} << "";
    QTest::newRow("leaves the start aslant") << line << Parts{{0, 0, 100, 100}} << "";
    QTest::newRow("comes back") << line << Parts{{-5, 9, 10, 9, 20, 90, 200, 90, 210, 15, 220, 90}}
                                << "0 right passed 210.0/15.0";
    QTest::newRow("along from behind the start") << line << Parts{{-50, 0, 100, 0}} << "0 crossed along 0.0";
    // Nearest where the leg ends; it comes nearer only ahead of there.
    QTest::newRow("ends ahead of the end") << line << Parts{{290, 25, 310, 3}} << "0 right passed 300.0/14.0";
    QTest::newRow("shore") << area << Parts{{-50, 10, 350, 10, 350, 90, -50, 90}} << "0 right passed 0.0/10.0";
    QTest::newRow("pond beside the start") << area << Parts{{-50, 10, 20, 10, 20, 90, -50, 90}} << "";
    QTest::newRow("area") << area << Parts{{100, -50, 150, -50, 150, 50, 100, 50}}
                          << "0 crossed into 100.0; 0 crossed out 150.0";
    QTest::newRow("area with an island") << area
                                         << Parts{{100, -50, 150, -50, 150, 50, 100, 50}, {110, -9, 120, -9, 120, 9, 110, 9}}
                                         << "0 crossed into 100.0; 0 crossed out 110.0; 0 crossed into 120.0; 0 crossed "
                                            "out 150.0";
    QTest::newRow("starts inside") << area << Parts{{-10, -50, 150, -50, 150, 50, -10, 50}} << "0 crossed out 150.0";
    QTest::newRow("starts on the border, in") << area << Parts{{0, -50, 150, -50, 150, 50, 0, 50}}
                                              << "0 crossed out 150.0";
    QTest::newRow("starts on the border, away") << area << Parts{{-90, -50, 0, -50, 0, 50, -90, 50}} << "";
    QTest::newRow("all inside") << area << Parts{{-10, -50, 350, -50, 350, 50, -10, 50}} << "0 beyond out 350.0";
    QTest::newRow("area beside") << area << Parts{{50, 10, 90, 10, 90, 90, 50, 90}} << "0 right passed 50.0/10.0";
    QTest::newRow("corner touched") << area << Parts{{60, 0, 90, 40, 30, 40}} << "0 crossed touched 60.0";
    QTest::newRow("through corners") << area << Parts{{60, 0, 80, 20, 100, 0, 80, -20}}
                                     << "0 crossed into 60.0; 0 crossed out 100.0";
    QTest::newRow("border along the leg") << area << Parts{{60, 0, 90, 0, 90, 40, 60, 40}} << "0 crossed touched 60.0";
  }
  void byHand() {
    QFETCH(int, kind);
    QFETCH(QList<QList<double>>, parts);
    QFETCH(QString, met);
    for (double direction : {0.0, 60.0, 90.0, 200.0, 315.0})
      for (const Place &start : {Place{Angle::degrees(-46.3), Angle::degrees(179.9995)},
                                 Place{Angle::degrees(60), Angle::degrees(-20)}, Place{}}) {
        Scene scene;
        scene.start = start;
        scene.direction = direction;
        std::vector<Points> given;
        for (const QList<double> &part : parts) {
          given.emplace_back();
          for (int i = 0; i + 1 < part.size(); i += 2)
            given.back().emplace_back(part[i], part[i + 1]);
        }
        scene.add(ShapeKind(kind), given);
        QCOMPARE(QString::fromStdString(scene.met()), met);
      }
  }

  // Half of a leg under 100 m is enough.
  void handrailOfAShortLeg() {
    for (const auto &[end, met] : {std::pair(31.0, "0 right passed 0.0/5.0"), {29.0, ""}}) {
      Scene scene;
      scene.length = 60;
      scene.add(ShapeKind::Line, {{{-10, 5}, {end, 5}}});
      QCOMPARE(QString::fromStdString(scene.met()), QString(met));
    }
  }

  // The first thing beyond the end catches; others lie behind it.
  void beyondTheFirst() {
    Scene scene;
    scene.add(ShapeKind::Line, {{{420, -50}, {420, 50}}});
    scene.add(ShapeKind::Line, {{{340, -50}, {340, 50}}});
    scene.add(ShapeKind::Point, {{{310, 0}}}); // a boulder catches nobody
    QCOMPARE(QString::fromStdString(scene.met()), QString("1 beyond across 340.0"));
  }

  // Long shapes of many stretches, random: each crossing is one, and in its place.
  void randomLines() {
    test::Random random(8);
    for (int i = 0; i < 100; ++i) {
      Scene scene;
      scene.direction = random.between(0, 360);
      scene.length = random.between(100, 2500);
      Points points;
      for (int k = 0; k < 200; ++k)
        points.emplace_back(random.between(-300, scene.length + 600), random.between(-400, 400));
      scene.add(ShapeKind::Line, {points});
      std::vector<double> expected;
      for (size_t k = 1; k < points.size(); ++k) {
        const auto [a0, c0] = points[k - 1];
        const auto [a1, c1] = points[k];
        if ((c0 > 0) != (c1 > 0))
          if (const double at = a0 + c0 / (c0 - c1) * (a1 - a0); at > 0.01 && at <= scene.length)
            expected.push_back(at);
      }
      std::sort(expected.begin(), expected.end());
      std::vector<double> found;
      for (const FeatureMet &met : featuresMet(Shapes(scene.shapes), scene.line(), scene.rule))
        if (met.role == MetRole::Crossed)
          found.push_back(met.at_m);
      QCOMPARE(found.size(), expected.size());
      for (size_t k = 0; k < found.size(); ++k)
        VERIFY_NEAR(found[k], expected[k], 1e-4, std::to_string(i));
    }
  }

  // Areas with random borders: inside between "into" and "out of", asked every few metres.
  void randomAreas() {
    test::Random random(9);
    int changes = 0;
    for (int i = 0; i < 60; ++i) {
      Scene scene;
      scene.direction = random.between(0, 360);
      scene.length = random.between(100, 1500);
      Points points;
      for (int k = 0; k < 60; ++k) { // a star, crooked
        const double turn = k * 2 * M_PI / 60, radius = random.between(60, 500);
        points.emplace_back(scene.length / 2 + radius * std::sin(turn), radius * std::cos(turn));
      }
      scene.add(ShapeKind::Polygon, {points});
      std::vector<std::pair<double, bool>> events;
      for (const FeatureMet &met : featuresMet(Shapes(scene.shapes), scene.line(), scene.rule))
        if (met.event == MetEvent::Into || met.event == MetEvent::OutOf)
          events.emplace_back(met.at_m, met.event == MetEvent::Into);
      bool inside = isInside(scene.shapes[0], scene.line().placeAt(0));
      size_t next = 0;
      for (double at = 0.5; at < scene.length; at += 3) {
        while (next < events.size() && events[next].first < at) {
          QVERIFY(events[next].second != inside);
          inside = events[next++].second;
          ++changes;
        }
        bool close = false;
        for (const auto &[where, into] : events)
          close = close || std::abs(where - at) < 0.01;
        if (!close)
          VERIFY_AT(isInside(scene.shapes[0], scene.line().placeAt(at)) == inside, std::to_string(i));
      }
    }
    QVERIFY(changes > 60);
  }

  // Two blocks of a wood. The border of the second begins 2 km off, so that only its other end is near the leg: it does
  // not go on with that of the first.
  void partsApart() {
    Scene scene;
    Points second{{200, 2000}};
    for (double across = 2000; across > -50; across -= 50)
      second.emplace_back(250, across);
    second.emplace_back(250, -30);
    second.emplace_back(200, -30);
    scene.add(ShapeKind::Polygon, {{{100, -20}, {150, -20}, {150, 20}, {100, 20}}, second});
    QCOMPARE(scene.met(),
             std::string("0 crossed into 100.0; 0 crossed out 150.0; 0 crossed into 200.0; 0 crossed out 250.0"));
  }

  // A leg that starts half a metre before a straight border of 10 km goes into the area, and out of the one on this
  // side.
  void beforeALongBorder() {
    for (const double latitude : {-60.0, 46.5, 80.0})
      for (const double direction : {0.0, 180.0}) {
        Scene scene;
        scene.start = {Angle::degrees(latitude), Angle::degrees(179.9995)};
        scene.direction = direction;
        scene.add(ShapeKind::Polygon, {{{0.5, -5000}, {9000, -5000}, {9000, 5000}, {0.5, 5000}}});
        scene.add(ShapeKind::Polygon, {{{0.5, -5000}, {-9000, -5000}, {-9000, 5000}, {0.5, 5000}}});
        const std::string met = scene.met();
        QVERIFY2(met == "0 crossed into 0.5; 1 crossed out 0.5", met.c_str());
      }
  }

  void slopeBreaksByHand() {
    std::vector<double> heights; // level for 100 m, down one in five for 100 m, level for 100 m; every 5 m
    for (int i = 0; i <= 60; ++i)
      heights.push_back(i <= 20 ? 500 : i <= 40 ? 500 - (i - 20) : 480);
    const auto breaks = slopeBreaks(profileOf(5, heights));
    QCOMPARE(breaks.size(), size_t(2));
    QVERIFY(breaks[0].event == MetEvent::GroundFalls && breaks[1].event == MetEvent::GroundLevels);
    // The grade over 30 m passes 15 in 100 when three quarters of the window are on the slope: 7.5 m past its begin.
    VERIFY_NEAR(breaks[0].at_m, 107.5, 5, "falls");
    VERIFY_NEAR(breaks[1].at_m, 207.5, 5, "levels");
    std::vector<double> up = heights;
    std::reverse(up.begin(), up.end());
    const auto rises = slopeBreaks(profileOf(5, up));
    QVERIFY(rises.size() == 2 && rises[0].event == MetEvent::GroundRises);
    // A bump of half a metre is none, nor is an even slope, nor a profile shorter than the window.
    std::vector<double> bump(61, 500);
    bump[30] = 500.5;
    QVERIFY(slopeBreaks(profileOf(5, bump)).empty());
    std::vector<double> even;
    for (int i = 0; i <= 60; ++i)
      even.push_back(500 - i);
    QVERIFY(slopeBreaks(profileOf(5, even)).empty());
    QVERIFY(slopeBreaks(profileOf(5, {500, 400})).empty());
    QVERIFY(slopeBreaks(profileOf(5, {500})).empty());
    // Where the fall lies in a gap nothing is told of it.
    std::vector<double> gap = heights;
    for (int i = 19; i <= 42; ++i)
      gap[size_t(i)] = std::numeric_limits<double>::quiet_NaN();
    QVERIFY(slopeBreaks(profileOf(5, gap)).empty());
  }

  void groundAndFeaturesTogether() {
    Scene scene;
    scene.add(ShapeKind::Line, {{{250, -50}, {250, 50}}});
    std::vector<double> heights;
    for (int i = 0; i <= 100; ++i)
      heights.push_back(i <= 20 ? 500 : i <= 40 ? 500 - (i - 20) : i <= 70 ? 480 : 480 + (i - 70));
    const auto met = allMet(Shapes(scene.shapes), scene.line(), nullptr, scene.rule);
    QCOMPARE(met.size(), size_t(1));
    const Profile profile = profileOf(5, heights);
    const auto all = allMet(Shapes(scene.shapes), scene.line(), &profile, scene.rule);
    QCOMPARE(all.size(), size_t(4));
    QVERIFY(all[0].event == MetEvent::GroundFalls && all[1].event == MetEvent::GroundLevels);
    QVERIFY(all[2].shape == 0 && all[3].event == MetEvent::GroundRises && all[3].role == MetRole::Beyond);
  }
};

QTEST_APPLESS_MAIN(FeaturesMetTest)
#include "features_met_test.moc"
