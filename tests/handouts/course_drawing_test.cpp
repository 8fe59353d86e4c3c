// SPDX-License-Identifier: GPL-2.0-or-later
// Check values: arithmetic and plane geometry; else regression only.
#include "handouts/course_drawing.h"

#include "handouts/plain_ruler.h"
#include "support/near.h"

#include <QtTest>

#include <map>

using namespace brushline;

namespace {

const test::PlainRuler ruler;
const CardType type = CardType::forPaper(148);
const Area map{6, 80, 136, 70};

CoursePicture picture(const std::vector<Spot> &spots) {
  CoursePicture course;
  course.map = map;
  for (size_t i = 1; i < spots.size(); ++i)
    course.legs.push_back({int(i), {spots[i - 1], spots[i]}, {}});
  course.north = MapNorth{-18.4, true};
  course.lines_apart = 30;
  course.start = "start";
  course.end = "end";
  return course;
}

// How often each text is drawn.
std::map<std::string, int> counted(const Drawing &drawing) {
  std::map<std::string, int> counts;
  for (const DrawnText &text : test::textsOf(drawing))
    ++counts[text.text];
  return counts;
}

// An arrow's head: a filled triangle without a line round it.
struct Head {
  Spot tip, base; // the middle of the base
  double x, y;    // from base to tip, of length 1
  double length, width;
};
// Those of a grey, in the order they are drawn.
std::vector<Head> headsOf(const Drawing &drawing, double grey) {
  std::vector<Head> heads;
  for (const DrawnShape &shape : test::partsOf<DrawnShape>(drawing)) {
    if (!shape.closed || shape.corners.size() != 3 || shape.fill != grey || shape.width != 0)
      continue;
    // The tip is the corner between the two sides of one length.
    const auto side = [&](size_t i, size_t k) {
      return std::hypot(shape.corners[i].x - shape.corners[k].x, shape.corners[i].y - shape.corners[k].y);
    };
    size_t tip = 0;
    for (size_t i = 1; i < 3; ++i)
      if (std::abs(side(i, (i + 1) % 3) - side(i, (i + 2) % 3)) <
          std::abs(side(tip, (tip + 1) % 3) - side(tip, (tip + 2) % 3)))
        tip = i;
    const Spot a = shape.corners[(tip + 1) % 3], b = shape.corners[(tip + 2) % 3];
    Head head{shape.corners[tip], {(a.x + b.x) / 2, (a.y + b.y) / 2}, 0, 0, 0, side((tip + 1) % 3, (tip + 2) % 3)};
    head.length = std::hypot(head.tip.x - head.base.x, head.tip.y - head.base.y);
    head.x = (head.tip.x - head.base.x) / head.length;
    head.y = (head.tip.y - head.base.y) / head.length;
    heads.push_back(head);
  }
  return heads;
}

MapStrip strip(double scale, double pacesPerM) {
  MapStrip strip;
  strip.area = {6, 150, 136, 9.5};
  strip.scale = {scale};
  strip.scale_text = "1:" + std::to_string(long(scale));
  strip.paces_per_m = pacesPerM;
  strip.north = MapNorth{-18.4, true};
  strip.north_text = {"magnetic north,", "lines 200 m apart"};
  strip.metres = "m";
  strip.kilometres = "km";
  strip.paces = "paces";
  return strip;
}

} // namespace

class CourseDrawingTest : public QObject {
  Q_OBJECT
private slots:
  void endsOfOtherLegsThanTheRoutesAreNotMarked() {
    CoursePicture course = picture({{20, 140}, {60, 100}, {90, 120}, {130, 90}});
    const size_t labels = drawCourse(course, type, ruler).labels.size();
    course.start.clear();
    auto counts = counted(drawCourse(course, type, ruler).drawing);
    QCOMPARE(counts["start"], 0);
    QCOMPARE(counts["end"], 1);
    course.end.clear();
    const DrawnCourse none = drawCourse(course, type, ruler);
    counts = counted(none.drawing);
    QCOMPARE(counts["start"] + counts["end"] + counts[""], 0);
    QCOMPARE(none.labels.size(), labels - 2);
  }
  void everyLegAndNumberIsDrawn() {
    const std::vector<Spot> spots{{20, 140}, {60, 100}, {90, 120}, {130, 90}};
    const DrawnCourse drawn = drawCourse(picture(spots), type, ruler);
    const auto counts = counted(drawn.drawing);
    for (const char *text : {"1", "2", "3", "start", "end"})
      QCOMPARE(counts.count(text) ? counts.at(text) : 0, 1);
    QCOMPARE(counts.size(), size_t(5));
    int legs = 0;
    for (const DrawnShape &shape : test::partsOf<DrawnShape>(drawn.drawing))
      if (shape.width == legWidth && shape.grey == 0 && !shape.closed) {
        QCOMPARE(shape.corners.front().x, spots[size_t(legs)].x);
        QCOMPARE(shape.corners.back().y, spots[size_t(legs) + 1].y);
        ++legs;
      }
    QCOMPARE(legs, 3);
    QCOMPARE(drawn.lines.size(), size_t(3));
    for (const Area &label : drawn.labels)
      QVERIFY(map.holds(label));
  }
  void everyLegHasAnArrowHalfway_data() {
    QTest::addColumn<double>("x"); // of the leg from 70, 110
    QTest::addColumn<double>("y"); // downward
    for (int bearing = 0; bearing < 360; bearing += 15)
      QTest::addRow("%d degrees", bearing)
          << 24 * std::sin(bearing * M_PI / 180) << -24 * std::cos(bearing * M_PI / 180);
  }
  // One black head a leg. Its middle stands halfway along, and it points to where the leg goes. The same leg the other
  // way round has the head turned round.
  void everyLegHasAnArrowHalfway() {
    QFETCH(double, x);
    QFETCH(double, y);
    const Spot a{70, 110}, b{70 + x, 110 + y};
    for (const bool back : {false, true}) {
      const std::vector<Head> heads =
          headsOf(drawCourse(picture(back ? std::vector{b, a} : std::vector{a, b}), type, ruler).drawing, 0);
      QCOMPARE(heads.size(), size_t(1));
      const Head &head = heads.front();
      const double sign = back ? -1 : 1;
      VERIFY_NEAR(head.x, sign * x / 24, 1e-9, "direction");
      VERIFY_NEAR(head.y, sign * y / 24, 1e-9, "direction");
      VERIFY_NEAR((head.tip.x + head.base.x) / 2, 70 + x / 2, 1e-9, "halfway");
      VERIFY_NEAR((head.tip.y + head.base.y) / 2, 110 + y / 2, 1e-9, "halfway");
      // Longer than wide, so that one sees where it points; wider than the line with its white edge.
      QVERIFY(head.length > head.width && head.width > 2.8 * legWidth);
    }
  }
  // Each leg of a course has its own, in the order of the legs.
  void arrowsOfACourse() {
    const std::vector<Spot> spots{{20, 140}, {60, 100}, {90, 120}, {130, 90}};
    const std::vector<Head> heads = headsOf(drawCourse(picture(spots), type, ruler).drawing, 0);
    QCOMPARE(heads.size(), spots.size() - 1);
    for (size_t i = 0; i < heads.size(); ++i) {
      const double x = spots[i + 1].x - spots[i].x, y = spots[i + 1].y - spots[i].y;
      VERIFY_NEAR((heads[i].tip.x + heads[i].base.x) / 2, spots[i].x + x / 2, 1e-9, std::to_string(i));
      VERIFY_NEAR((heads[i].tip.y + heads[i].base.y) / 2, spots[i].y + y / 2, 1e-9, std::to_string(i));
      VERIFY_NEAR(std::remainder(std::atan2(heads[i].y, heads[i].x) - std::atan2(y, x), 2 * M_PI), 0, 1e-9,
                  std::to_string(i));
    }
  }
  // Along 20 mm to the right and 30 mm down: halfway are 25 mm, 5 mm down the second part.
  void theArrowOfABentLeg() {
    CoursePicture course = picture({{40, 100}, {60, 130}});
    course.legs.front().line = {{40, 100}, {60, 100}, {60, 130}};
    const std::vector<Head> heads = headsOf(drawCourse(course, type, ruler).drawing, 0);
    QCOMPARE(heads.size(), size_t(1));
    VERIFY_NEAR((heads[0].tip.x + heads[0].base.x) / 2, 60, 1e-9, "to the right");
    VERIFY_NEAR((heads[0].tip.y + heads[0].base.y) / 2, 105, 1e-9, "down");
    VERIFY_NEAR(heads[0].x, 0, 1e-9, "direction");
    VERIFY_NEAR(heads[0].y, 1, 1e-9, "direction");
  }
  // The signs at both ends and their edges take up to 3 mm each: a leg without room for the head beside them has none,
  // and no other leg loses its own by that.
  void aLegWithoutRoomHasNoArrow() {
    QCOMPARE(headsOf(drawCourse(picture({{60, 100}, {60, 94}}), type, ruler).drawing, 0).size(), size_t(0));
    const std::vector<Head> heads =
        headsOf(drawCourse(picture({{60, 100}, {60, 94}, {100, 94}}), type, ruler).drawing, 0);
    QCOMPARE(heads.size(), size_t(1));
    VERIFY_NEAR((heads[0].tip.x + heads[0].base.x) / 2, 80, 1e-9, "on the second leg");
    QVERIFY(heads[0].x > 0.999);
  }
  void startAndEndDifferInShape() {
    const DrawnCourse drawn = drawCourse(picture({{20, 140}, {60, 100}}), type, ruler);
    bool square = false, diamond = false;
    for (const DrawnShape &shape : test::partsOf<DrawnShape>(drawn.drawing)) {
      if (!shape.closed || shape.corners.size() != 4 || !shape.fill)
        continue;
      const Area box = Area{20, 140, 0, 0}.grown(1.35);
      square |= *shape.fill == 0 && shape.corners[0].x == box.left && shape.corners[2].y == box.bottom();
      diamond |= *shape.fill == 1 && shape.corners[0].x == 60 && shape.corners[1].y == 100;
    }
    QVERIFY(square);
    QVERIFY(diamond);
  }
  void aRoundEndsWhereItStarts() {
    const DrawnCourse drawn = drawCourse(picture({{20, 140}, {60, 100}, {20, 140}}), type, ruler);
    for (size_t i = 0; i < drawn.labels.size(); ++i)
      for (size_t k = 0; k < i; ++k)
        QVERIFY(!drawn.labels[i].meets(drawn.labels[k]));
  }
  void aLegOfNoLengthOnPaper() {
    QVERIFY(test::isFinite(drawCourse(picture({{60, 100}, {60, 100}}), type, ruler).drawing));
    QVERIFY(test::isFinite(drawCourse(picture({{60, 100}, {60.001, 100}, {60, 100.001}}), type, ruler).drawing));
  }
  void northLinesPointNorth() {
    const DrawnCourse drawn = drawCourse(picture({{20, 140}, {60, 100}}), type, ruler);
    int lines = 0;
    for (const DrawnShape &shape : test::partsOf<DrawnShape>(drawn.drawing))
      if (shape.width == northWidth && !shape.closed) {
        const Spot a = shape.corners.front(), b = shape.corners.back();
        VERIFY_NEAR(std::atan2(b.x - a.x, a.y - b.y) * 180 / M_PI, -18.4, 1e-6, "line");
        ++lines;
      }
    QVERIFY(lines >= 4); // 136 mm wide, 30 mm apart
    const std::vector<Head> heads = headsOf(drawn.drawing, 0.25); // as grey as the lines
    QVERIFY(heads.size() >= 4);
    for (const Head &head : heads) {
      VERIFY_NEAR(std::atan2(head.x, -head.y) * 180 / M_PI, -18.4, 1e-6, "head");
      // On a line, and nearer to its northern end.
      double least = 1e9;
      for (const DrawnShape &shape : test::partsOf<DrawnShape>(drawn.drawing))
        if (shape.width == northWidth && !shape.closed)
          least = std::min(least, std::hypot(shape.corners.back().x - head.tip.x, shape.corners.back().y - head.tip.y));
      QVERIFY(least < 3);
    }
  }
  // The arrow below the map.
  void theArrowOfTheStripPointsNorth() {
    for (const double turn : {-18.4, 0.0, 35.0, 120.0, 180.0}) {
      MapStrip wanted = strip(5000, 1.3);
      wanted.north = MapNorth{turn, true};
      const std::vector<Head> heads = headsOf(drawMapStrip(wanted, type, ruler), 0);
      QCOMPARE(heads.size(), size_t(1));
      VERIFY_NEAR(std::remainder(std::atan2(heads[0].x, -heads[0].y) * 180 / M_PI - turn, 360), 0, 1e-6, "head");
      const Area around{heads[0].tip.x, heads[0].tip.y, 0, 0};
      QVERIFY(wanted.area.holds(around));
    }
    MapStrip without = strip(5000, 1.3);
    without.north.reset();
    QVERIFY(headsOf(drawMapStrip(without, type, ruler), 0).empty());
  }
  void noNorthNoLines() {
    CoursePicture course = picture({{20, 140}, {60, 100}});
    course.north.reset();
    for (const DrawnShape &shape : test::partsOf<DrawnShape>(drawCourse(course, type, ruler).drawing))
      QVERIFY(shape.width != northWidth);
  }

  void barsAreAsLongAsTheirNumbersSay_data() {
    QTest::addColumn<double>("scale");
    QTest::addColumn<double>("pacesPerM");
    for (const double scale : {250.0, 1250.0, 5000.0, 10000.0, 12500.0, 75000.0, 1000000.0})
      for (const double paces : {0.6, 1.31, 1.74, 2.9})
        QTest::newRow(qPrintable(QStringLiteral("1:%1, %2").arg(scale).arg(paces))) << scale << paces;
  }
  void barsAreAsLongAsTheirNumbersSay() {
    QFETCH(double, scale);
    QFETCH(double, pacesPerM);
    const MapStrip wanted = strip(scale, pacesPerM);
    const Drawing drawing = drawMapStrip(wanted, type, ruler);
    // The numbers above the bar are metres, those below it paces; the first of each is 0.
    const double middle = wanted.area.top + wanted.area.height / 2;
    double zero = 0, longestM = 0, longestPaces = 0;
    bool km = false;
    for (const DrawnText &text : test::textsOf(drawing)) {
      km |= text.text == "km";
      if (text.align != Align::Centre)
        continue;
      const double value = std::stod(text.text);
      if (value == 0)
        zero = text.at.x;
    }
    for (const DrawnText &text : test::textsOf(drawing)) {
      if (text.align != Align::Centre)
        continue;
      const double value = std::stod(text.text), paper = text.at.x - zero;
      const bool above = text.at.y < middle;
      const double metres = above ? value * (km ? 1000 : 1) : value / pacesPerM;
      VERIFY_NEAR(paper, metres * 1000 / scale, 1e-6 * scale, text.text);
      (above ? longestM : longestPaces) = std::max(above ? longestM : longestPaces, paper);
    }
    QVERIFY(longestM > 15);
    QVERIFY(longestPaces > 15);
    // Boxes end where the last number stands.
    double end = 0;
    for (const DrawnShape &shape : test::partsOf<DrawnShape>(drawing))
      if (shape.closed && shape.width == 0.2)
        for (const Spot &spot : shape.corners)
          end = std::max(end, spot.x - zero);
    VERIFY_NEAR(end, longestM, 1e-6, "boxes");
  }
  void withoutPacesNoPaces() {
    MapStrip wanted = strip(5000, 1);
    wanted.paces_per_m.reset();
    QCOMPARE(counted(drawMapStrip(wanted, type, ruler)).count("paces"), size_t(0));
  }
};

QTEST_APPLESS_MAIN(CourseDrawingTest)
#include "course_drawing_test.moc"
