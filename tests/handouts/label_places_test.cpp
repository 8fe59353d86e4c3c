// SPDX-License-Identifier: GPL-2.0-or-later
// Check values: regression only.
#include "handouts/label_places.h"

#include "support/near.h"
#include "support/random.h"

#include <QtTest>

using namespace brushline;

namespace {
double shared(const Area &a, const Area &b) {
  const double width = std::min(a.right(), b.right()) - std::max(a.left, b.left);
  const double height = std::min(a.bottom(), b.bottom()) - std::max(a.top, b.top);
  return width > 0 && height > 0 ? width * height : 0;
}
} // namespace

class LabelPlacesTest : public QObject {
  Q_OBJECT
private slots:
  void lengthsInsideAnArea() {
    const Area area{0, 0, 10, 10};
    VERIFY_NEAR(lengthInside({{-5, 5}, {15, 5}}, area), 10, 1e-9, "through");
    VERIFY_NEAR(lengthInside({{5, 5}, {8, 9}}, area), 5, 1e-9, "within");
    VERIFY_NEAR(lengthInside({{5, 5}, {5, 25}}, area), 5, 1e-9, "out of it");
    VERIFY_NEAR(lengthInside({{-5, -1}, {15, -1}}, area), 0, 1e-9, "beside");
    VERIFY_NEAR(lengthInside({{-5, 12}, {12, -5}}, area), std::hypot(7.0, 7.0), 1e-9, "slanting");
    VERIFY_NEAR(lengthInside({{3, 3}, {3, 3}}, area), 0, 1e-9, "a spot");
  }
  void aLabelStandsBesideItsSpotOffTheLines() {
    const std::vector<std::pair<Spot, Spot>> cross{{{20, 50}, {80, 50}}, {{50, 20}, {50, 80}}};
    const auto places = placeLabels({{{50, 50}, 4, 3, 1}}, cross, {0, 0, 100, 100});
    QCOMPARE(places.size(), size_t(1));
    for (const auto &line : cross)
      QCOMPARE(lengthInside(line, places[0].area), 0.0);
    QVERIFY(!shared(places[0].area, Area{50, 50, 0, 0}.grown(0.9)));
    QVERIFY(std::hypot(places[0].area.centre().x - 50, places[0].area.centre().y - 50) < 8);
    QVERIFY(!places[0].far);
  }
  void manyAtOneSpotDoNotHideEachOther() {
    std::vector<LabelWish> wishes(14, LabelWish{{50, 50}, 4, 3, 1.2});
    const auto places = placeLabels(wishes, {}, {0, 0, 100, 100});
    for (size_t i = 0; i < places.size(); ++i)
      for (size_t k = 0; k < i; ++k)
        QCOMPARE(shared(places[i].area, places[k].area), 0.0);
    QVERIFY(std::any_of(places.begin(), places.end(), [](const PlacedLabel &place) { return place.far; }));
  }
  void noneLeavesTheMap() {
    test::Random random(8);
    const Area map{10, 10, 60, 40};
    for (int round = 0; round < 200; ++round) {
      std::vector<LabelWish> wishes;
      std::vector<std::pair<Spot, Spot>> lines;
      Spot last{random.between(10, 70), random.between(10, 50)};
      for (int i = 0; i < 12; ++i) {
        const Spot next{random.between(10, 70), random.between(10, 50)};
        wishes.push_back({last, random.between(2, 9), 3, 1.2});
        lines.push_back({last, next});
        last = next;
      }
      const auto places = placeLabels(wishes, lines, map), again = placeLabels(wishes, lines, map);
      QCOMPARE(places.size(), wishes.size());
      for (size_t i = 0; i < places.size(); ++i) {
        QVERIFY(map.holds(places[i].area));
        QCOMPARE(places[i].area.width, wishes[i].width);
        QCOMPARE(places[i].area.left, again[i].area.left);
      }
    }
  }
  void aLabelLargerThanTheMapIsStillGivenAPlace() {
    const auto places = placeLabels({{{5, 5}, 50, 3, 1}}, {}, {0, 0, 10, 10});
    QCOMPARE(places[0].area.left, 0.0);
    QVERIFY(std::isfinite(places[0].area.top));
  }
};

QTEST_APPLESS_MAIN(LabelPlacesTest)
#include "label_places_test.moc"
