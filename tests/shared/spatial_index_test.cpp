// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/spatial_index.h"

#include "shared/space.h"
#include "support/near.h"
#include "support/random.h"

#include <boost/geometry/algorithms/intersects.hpp>
#include <boost/geometry/geometries/point_xy.hpp>

#include <algorithm>

using namespace brushline;
using namespace brushline::test;

namespace bg = boost::geometry;
using FlatPoint = bg::model::d2::point_xy<double>;
using FlatBox = bg::model::box<FlatPoint>;

namespace {
// Says after so many looks that it is time to stop.
class StopsLater final : public Progress {
public:
  explicit StopsLater(int looks) : mLooks(looks) {}
  bool cancelled() const override { return ++looked > mLooks; }
  mutable int looked = 0;

private:
  int mLooks;
};

template <typename Key> std::vector<size_t> found(const SpatialIndex<Key, size_t> &index, const Key &where) {
  std::vector<size_t> values;
  for (const auto &entry : index.meeting(where))
    values.push_back(entry.second);
  std::sort(values.begin(), values.end());
  return values;
}

std::vector<std::pair<FlatBox, size_t>> boxes(size_t count, double spread, uint64_t seed) {
  Random random(seed);
  std::vector<std::pair<FlatBox, size_t>> entries;
  for (size_t i = 0; i < count; ++i) {
    const double x = random.between(0, spread), y = random.between(0, spread);
    entries.emplace_back(FlatBox({x, y}, {x + random.between(0, 5), y + random.between(0, 5)}), i);
  }
  return entries;
}
} // namespace

class SpatialIndexTest : public QObject {
  Q_OBJECT
private slots:
  void none() {
    QVERIFY((SpatialIndex<FlatBox, size_t>().meeting(FlatPoint(0, 0)).empty()));
    QVERIFY((SpatialIndex<FlatBox, size_t>(boxes(0, 1, 1)).meeting(FlatPoint(0, 0)).empty()));
  }

  void allThatMeet_data() {
    QTest::addColumn<int>("count");
    for (const int count : {1, 17, 16384, 16385, 100000}) // one part, two, eight
      QTest::newRow(qPrintable(QString::number(count))) << count;
  }
  // Against looking at each, boxes and points; the borders count.
  void allThatMeet() {
    QFETCH(int, count);
    const auto entries = boxes(size_t(count), 1000, 1);
    const SpatialIndex<FlatBox, size_t> index(entries);
    for (const auto &[where, value] : boxes(50, 1000, 2)) {
      std::vector<size_t> expected;
      for (const auto &[box, each] : entries)
        if (bg::intersects(box, where))
          expected.push_back(each);
      QCOMPARE(found(index, where), expected);
    }
    const auto &last = entries.back();
    const auto atCorner = found(index, FlatBox(last.first.max_corner(), last.first.max_corner()));
    QVERIFY(std::binary_search(atCorner.begin(), atCorner.end(), last.second));

    Random random(3);
    std::vector<std::pair<SpacePoint, size_t>> points;
    for (size_t i = 0; i < size_t(count); ++i)
      points.emplace_back(inSpace(random.place()), i);
    const SpatialIndex<SpacePoint, size_t> inSpaceIndex(points);
    for (int i = 0; i < 20; ++i) {
      const SpacePoint at = inSpace(random.place());
      const SpaceBox near = grown(SpaceBox(at, at), 300000);
      std::vector<size_t> expected, is;
      for (const auto &[point, each] : points)
        if (bg::intersects(point, near))
          expected.push_back(each);
      for (const auto &entry : inSpaceIndex.meeting(near))
        is.push_back(entry.second);
      std::sort(is.begin(), is.end());
      QCOMPARE(is, expected);
    }
  }

  // What was found before goes.
  void usedAgain() {
    const SpatialIndex<FlatBox, size_t> index(boxes(1000, 100, 4));
    std::vector<std::pair<FlatBox, size_t>> entries;
    index.meeting(FlatBox({0, 0}, {200, 200}), entries);
    QCOMPARE(entries.size(), size_t(1000));
    index.meeting(FlatPoint(-1, -1), entries);
    QVERIFY(entries.empty());
  }

  // Parting cannot tell them apart, and need not.
  void allAtOnePlace() {
    std::vector<std::pair<FlatBox, size_t>> entries;
    for (size_t i = 0; i < 40000; ++i)
      entries.emplace_back(FlatBox({5, 5}, {6, 6}), i);
    const SpatialIndex<FlatBox, size_t> index(entries);
    QCOMPARE(index.meeting(FlatPoint(5.5, 6)).size(), size_t(40000));
    QVERIFY(index.meeting(FlatPoint(5.5, 6.001)).empty());
  }

  // It looks often, and at each look it can be stopped.
  void stopped() {
    const auto entries = boxes(200000, 3000, 5);
    const StopsLater never(1000000);
    const SpatialIndex<FlatBox, size_t> whole(entries, never);
    QVERIFY2(never.looked > 30, qPrintable(QString::number(never.looked)));
    for (int looks = 0; looks < never.looked; ++looks)
      QVERIFY_EXCEPTION_THROWN((SpatialIndex<FlatBox, size_t>(entries, StopsLater(looks))), Cancelled);
  }
};

QTEST_APPLESS_MAIN(SpatialIndexTest)
#include "spatial_index_test.moc"
