// SPDX-License-Identifier: GPL-2.0-or-later
// Check values: how a dial is set, common practice: the number is turned to the index line, so N comes to lie as many
// degrees left of it.
#include "handouts/dial_drawing.h"

#include "handouts/plain_ruler.h"
#include "support/near.h"

#include <QtTest>

#include <algorithm>

using namespace brushline;

namespace {
const test::PlainRuler ruler;
const Area area{100, 50, 12, 12 * dialPictureHeight};

// The middle of the housing: the white disc.
Spot middleOf(const Drawing &drawing) { return test::partsOf<DrawnDisc>(drawing).front().centre; }
double turnOf(Spot middle, Spot at) { return std::atan2(at.x - middle.x, middle.y - at.y) * 180 / Angle::pi; }
} // namespace

class DialDrawingTest : public QObject {
  Q_OBJECT
private slots:
  void lettersAreTurnedAgainstTheNumber() {
    for (const double dial : {0.0, 42.0, 96.0, 180.0, 271.5, 359.0}) {
      const Drawing drawing = drawDial({"042", Angle::degrees(dial), {}}, area, ruler);
      const Spot middle = middleOf(drawing);
      const std::string letters = "NESW";
      std::string found;
      for (const DrawnText &text : test::textsOf(drawing))
        if (const size_t i = letters.find(text.text); text.text.size() == 1 && i != std::string::npos) {
          const Area box = test::boxOf(text, ruler);
          VERIFY_NEAR(test::turnBetween(turnOf(middle, box.centre()), 90.0 * double(i) - dial), 0, 0.5, text.text);
          found += text.text;
        }
      std::sort(found.begin(), found.end());
      QCOMPARE(found, std::string("ENSW")); // each once
    }
  }
  void theNeedleLiesOverNorthOrBesideIt() {
    for (const double off : {0.0, -17.0}) {
      const Drawing drawing = drawDial({"096", Angle::degrees(96), Angle::degrees(off)}, area, ruler);
      const Spot middle = middleOf(drawing);
      bool found = false;
      for (const DrawnShape &shape : test::partsOf<DrawnShape>(drawing))
        if (shape.closed && shape.fill == 0.0 && shape.width > 0) { // the needle's black end: left, tip, right
          VERIFY_NEAR(test::turnBetween(turnOf(middle, shape.corners[1]), off - 96), 0, 1e-6, std::to_string(off));
          found = true;
        }
      QVERIFY(found);
    }
  }
  void noNeedleWhereItsPlaceIsNotKnown() {
    const auto shapes = [](std::optional<Angle> needle) {
      return test::partsOf<DrawnShape>(drawDial({"096", Angle::degrees(96), needle}, area, ruler)).size();
    };
    QCOMPARE(shapes(Angle()), shapes(std::nullopt) + 2); // its two halves
  }
  void theNumberStandsAtTheIndexAndAllStaysInside() {
    for (const std::string number : {"096\xC2\xB0", "1707", "047"}) {
      const Drawing drawing = drawDial({number, Angle::degrees(96), {}}, area, ruler);
      const auto texts = test::textsOf(drawing);
      QVERIFY(std::any_of(texts.begin(), texts.end(), [&](const DrawnText &text) { return text.text == number; }));
      for (const DrawnText &text : texts)
        QVERIFY(text.face.points >= smallestText);
      for (const DrawnText &text : texts)
        if (text.text.size() <= 5) // a unit behind a blank is not for pictures
          VERIFY_AT(area.grown(0.01).holds(test::boxOf(text, ruler)), text.text);
      for (const DrawnShape &shape : test::partsOf<DrawnShape>(drawing))
        for (const Spot &spot : shape.corners)
          QVERIFY(area.grown(0.01).holds(Area{spot.x, spot.y, 0, 0}));
      QVERIFY(test::isFinite(drawing));
    }
  }
};

QTEST_APPLESS_MAIN(DialDrawingTest)
#include "dial_drawing_test.moc"
