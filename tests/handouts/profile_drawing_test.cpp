// SPDX-License-Identifier: GPL-2.0-or-later
// Check values: arithmetic; else regression only.
#include "handouts/profile_drawing.h"

#include "handouts/plain_ruler.h"
#include "support/near.h"

#include <QtTest>

#include <cmath>
#include <limits>

using namespace brushline;

namespace {

const test::PlainRuler ruler;
const CardType type = CardType::forPaper(148);
const Area area{6, 150, 136, 24};
const ProfileWords words{"m", "drawn %1 times", "as lengths", "no heights"};
constexpr double nothing = std::numeric_limits<double>::quiet_NaN();

// 1000 m, a point each 5 m.
CourseProfile profile(double (*height)(double along)) {
  CourseProfile result;
  for (int i = 0; i <= 200; ++i)
    result.points.push_back({5.0 * i, height(5.0 * i)});
  result.legs = {{1, 0, 400, "forest", {100, 200}}, {2, 400, 1000, "thicket", {}}};
  return result;
}

// The lines of the ground, each unbroken.
std::vector<DrawnShape> ground(const Drawing &drawing) {
  std::vector<DrawnShape> lines;
  for (const DrawnShape &shape : test::partsOf<DrawnShape>(drawing))
    if (!shape.closed && shape.width == 0.45)
      lines.push_back(shape);
  return lines;
}

bool says(const Drawing &drawing, const std::string &wanted) {
  const auto texts = test::textsOf(drawing);
  return std::any_of(texts.begin(), texts.end(), [&](const DrawnText &text) { return text.text == wanted; });
}

} // namespace

class ProfileDrawingTest : public QObject {
  Q_OBJECT
private slots:
  // Found by the fuzzer: a course without length, as where somebody drew every vertex at one place.
  void manyPointsAtOnePlace() {
    CourseProfile still;
    for (int i = 0; i < 5000; ++i)
      still.points.push_back({0, double(i % 7)});
    still.legs = {{1, 0, 0.001, "forest", {}}};
    QVERIFY(!thinned(still.points, 20).empty());
    drawProfile(still, area, words, type, ruler);
  }

  void heightsAreDrawnAsOftenAsIsTold() {
    const Drawing drawing =
        drawProfile(profile([](double along) { return 100 + along / 20; }), area, words, type, ruler);
    const auto lines = ground(drawing);
    QCOMPARE(lines.size(), size_t(1));
    const Spot a = lines[0].corners.front(), b = lines[0].corners.back();
    // 50 m of height over 1000 m of way.
    const double times = (a.y - b.y) / (b.x - a.x) * 1000 / 50;
    bool told = false;
    for (const DrawnText &text : test::textsOf(drawing))
      if (text.text.rfind("drawn ", 0) == 0) {
        VERIFY_NEAR(times, std::stod(text.text.substr(6)), 1e-6, text.text);
        told = true;
      }
    QVERIFY(told);
    QVERIFY(says(drawing, "100 m"));
    QVERIFY(says(drawing, "150 m"));
    QVERIFY(says(drawing, "1"));
    QVERIFY(says(drawing, "2"));
    QVERIFY(says(drawing, "forest"));
    QVERIFY(says(drawing, "thicket"));
  }
  void steepGroundIsNotStretched() {
    const Drawing drawing = drawProfile(profile([](double along) { return 1 * along; }), area, words, type, ruler);
    for (const DrawnShape &line : ground(drawing))
      for (const Spot &spot : line.corners)
        QVERIFY(area.holds(Area{spot.x, spot.y, 0, 0}));
    QVERIFY(!says(drawing, "as lengths")); // smaller than lengths, since 1000 m up have no room
    QVERIFY(says(drawing, "drawn 0.08 times") || says(drawing, "drawn 0.1 times"));
  }
  void levelGroundLooksLevel() {
    const auto lines = ground(drawProfile(profile([](double) { return 42.0; }), area, words, type, ruler));
    QCOMPARE(lines.size(), size_t(1));
    for (const Spot &spot : lines[0].corners)
      QCOMPARE(spot.y, lines[0].corners.front().y);
    const auto nearly =
        ground(drawProfile(profile([](double along) { return 42 + along * 1e-4; }), area, words, type, ruler));
    QVERIFY(nearly[0].corners.front().y - nearly[0].corners.back().y < 0.5); // a tenth of a metre, 20 times at most
  }
  void gapsStayOpen() {
    const Drawing drawing =
        drawProfile(profile([](double along) { return along > 300 && along < 600 ? nothing : 100 + along / 20; }), area,
                    words, type, ruler);
    const auto lines = ground(drawing);
    QCOMPARE(lines.size(), size_t(2));
    QVERIFY(test::isFinite(drawing));
    // 300 m of 1000 m are open.
    const double whole = lines[1].corners.back().x - lines[0].corners.front().x;
    VERIFY_NEAR((lines[1].corners.front().x - lines[0].corners.back().x) / whole, 0.3, 1e-6, "gap");
  }
  void noHeightsAtAll() {
    const Drawing drawing = drawProfile(profile([](double) { return nothing; }), area, words, type, ruler);
    QVERIFY(ground(drawing).empty());
    QVERIFY(says(drawing, "no heights"));
    QVERIFY(test::isFinite(drawing));
    CourseProfile empty;
    empty.legs = {{1, 0, 0, "", {}}};
    QVERIFY(test::isFinite(drawProfile(empty, area, words, type, ruler)));
  }
  void marksStandOnTheGround() {
    const Drawing drawing =
        drawProfile(profile([](double along) { return 100 + along / 20; }), area, words, type, ruler);
    const auto line = ground(drawing)[0];
    const Spot a = line.corners.front(), b = line.corners.back();
    int marks = 0;
    for (const DrawnShape &shape : test::partsOf<DrawnShape>(drawing))
      if (shape.width == 0.2 && shape.corners.size() == 2 &&
          std::abs(shape.corners[0].y - shape.corners[1].y - 1.3) < 1e-9) {
        const double share = (shape.corners[0].x - a.x) / (b.x - a.x);
        VERIFY_NEAR(shape.corners[0].y, a.y + share * (b.y - a.y), 1e-6, "mark");
        VERIFY_NEAR(share, marks == 0 ? 0.1 : 0.2, 1e-9, "mark's place");
        ++marks;
      }
    QCOMPARE(marks, 2);
  }
  void thinningKeepsExtremesAndGaps() {
    std::vector<CourseProfile::Point> points;
    for (int i = 0; i <= 100000; ++i)
      points.push_back({double(i), i > 30000 && i < 30003 ? nothing : std::sin(i / 5000.0) * 10});
    points[54321].height_m = 99;
    points[65432].height_m = -99;
    const auto kept = thinned(points, 100);
    QVERIFY(kept.size() < 3000);
    QCOMPARE(kept.front().along_m, 0.0);
    QCOMPARE(kept.back().along_m, 100000.0);
    bool high = false, low = false, gap = false;
    double last = -1;
    for (const auto &point : kept) {
      QVERIFY(point.along_m > last);
      last = point.along_m;
      high |= point.height_m == 99;
      low |= point.height_m == -99;
      gap |= std::isnan(point.height_m);
    }
    QVERIFY(high && low && gap);
    QCOMPARE(thinned({points.begin(), points.begin() + 100}, 100).size(), size_t(100)); // few stay as they are
  }
};

QTEST_APPLESS_MAIN(ProfileDrawingTest)
#include "profile_drawing_test.moc"
