// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/named_places.h"

#include "shared/geodesic.h"
#include "support/near.h"
#include "support/random.h"

#include <limits>
#include <thread>
#include <utility>

using namespace brushline;
using namespace brushline::test;

class NamedPlacesTest : public QObject {
  Q_OBJECT
private slots:
  void none();
  void nearestByHand();
  void antimeridian();
  void pole();
  void reach();
  void sameSpot();
  void moved();
  void againstBruteForce_data();
  void againstBruteForce();
  void fromManyThreads();
};

namespace {
Place place(double latitude, double longitude) { return {Angle::degrees(latitude), Angle::degrees(longitude)}; }
NamedPlace named(double latitude, double longitude, const char *name) { return {place(latitude, longitude), name}; }
QString nameOf(const NamedPlace *found) { return found ? QString::fromStdString(found->name) : QStringLiteral("none"); }
} // namespace

void NamedPlacesTest::none() {
  const NamedPlaces empty({}, Length::metres(1e7));
  QVERIFY(!empty.nearest(place(0, 0)));
}

void NamedPlacesTest::nearestByHand() {
  const NamedPlaces places({named(47.000, 8.000, "hut"), named(47.010, 8.000, "pass"), named(47.000, 8.020, "bridge")},
                           Length::metres(1000));
  QCOMPARE(nameOf(places.nearest(place(47.004, 8.000))), QStringLiteral("hut"));
  QCOMPARE(nameOf(places.nearest(place(47.006, 8.000))), QStringLiteral("pass"));
  QCOMPARE(nameOf(places.nearest(place(47.000, 8.019))), QStringLiteral("bridge"));
  QCOMPARE(nameOf(places.nearest(place(48.000, 8.000))), QStringLiteral("none"));
  // At 60 north a degree of longitude is half one of latitude: 1.5 to the east are nearer than 1 to the north.
  const NamedPlaces north({named(61, 10, "north"), named(60, 11.5, "east")}, Length::metres(1e6));
  QCOMPARE(nameOf(north.nearest(place(60, 10))), QStringLiteral("east"));
}

void NamedPlacesTest::antimeridian() {
  const NamedPlaces places({named(-17, -179.999, "over the line"), named(-17, 179.99, "this side")},
                           Length::metres(5000));
  QCOMPARE(nameOf(places.nearest(place(-17, 179.999))), QStringLiteral("over the line"));
  QCOMPARE(nameOf(places.nearest(place(-17, -180.001))), QStringLiteral("over the line"));
  QCOMPARE(nameOf(places.nearest(place(-17, 179.991))), QStringLiteral("this side"));
}

void NamedPlacesTest::pole() {
  const NamedPlaces places({named(89.999, 0, "zero"), named(89.99, 180, "far side")}, Length::metres(2000));
  QCOMPARE(nameOf(places.nearest(place(90, 77))), QStringLiteral("zero"));
  QCOMPARE(nameOf(places.nearest(place(89.9999, 180))), QStringLiteral("zero"));
  QCOMPARE(nameOf(places.nearest(place(89.995, 180))), QStringLiteral("far side"));
}

// The farthest distance still counts.
void NamedPlacesTest::reach() {
  const NamedPlace camp = named(47, 8, "camp");
  const Place here = place(47.001, 8.002);
  const double metres = geodesicBetween(here, camp.place).length.metres();
  QCOMPARE(nameOf(NamedPlaces({camp}, Length::metres(metres)).nearest(here)), QStringLiteral("camp"));
  QCOMPARE(nameOf(NamedPlaces({camp}, Length::metres(std::nextafter(metres, 0))).nearest(here)),
           QStringLiteral("none"));
  QCOMPARE(nameOf(NamedPlaces({camp}, Length()).nearest(camp.place)), QStringLiteral("camp"));
  QCOMPARE(nameOf(NamedPlaces({camp}, Length()).nearest(here)), QStringLiteral("none"));
}

void NamedPlacesTest::sameSpot() {
  const NamedPlaces places({named(1, 1, "a"), named(1, 1, "b"), named(1, 1, "c")}, Length::metres(10));
  const QString found = nameOf(places.nearest(place(1, 1)));
  QVERIFY(found == QStringLiteral("a") || found == QStringLiteral("b") || found == QStringLiteral("c"));
}

void NamedPlacesTest::moved() {
  NamedPlaces first({named(1, 1, "a")}, Length::metres(10));
  NamedPlaces second(std::move(first));
  QCOMPARE(nameOf(second.nearest(place(1, 1))), QStringLiteral("a"));
  first = NamedPlaces({named(2, 2, "b")}, Length::metres(10));
  QCOMPARE(nameOf(first.nearest(place(2, 2))), QStringLiteral("b"));
}

void NamedPlacesTest::againstBruteForce_data() {
  QTest::addColumn<int>("kind");
  QTest::newRow("the whole globe") << 0;
  QTest::newRow("a valley") << 1;
  QTest::newRow("round the north pole") << 2;
}

// 1000 random points against the smallest of all distances.
void NamedPlacesTest::againstBruteForce() {
  QFETCH(int, kind);
  Random random(20 + uint64_t(kind));
  const auto somewhere = [&] {
    if (kind == 1)
      return place(random.between(47, 47.05), random.between(179.97, 180.03));
    if (kind == 2)
      return place(random.between(89.95, 90), random.between(-180, 180));
    return random.place();
  };
  const double reachMetres = kind == 0 ? 7e5 : kind == 1 ? 120 : 400;
  std::vector<NamedPlace> all;
  for (int i = 0; i < 200; ++i)
    all.push_back({somewhere(), std::to_string(i)});
  const NamedPlaces places(all, Length::metres(reachMetres));
  int found = 0, missed = 0;
  for (int i = 0; i < 1000; ++i) {
    const Place here = somewhere();
    double least = std::numeric_limits<double>::infinity();
    for (const NamedPlace &other : all)
      least = std::min(least, geodesicBetween(here, other.place).length.metres());
    const NamedPlace *nearest = places.nearest(here);
    QCOMPARE(nearest != nullptr, least <= reachMetres);
    if (nearest)
      VERIFY_NEAR(geodesicBetween(here, nearest->place).length.metres(), least, 1e-7, nearest->name);
    ++(nearest ? found : missed);
  }
  QVERIFY2(found > 100 && missed > 100, qPrintable(QString::number(found))); // both answers were tried
}

// "Safe to ask from several threads": the same answers.
void NamedPlacesTest::fromManyThreads() {
  Random random(24);
  std::vector<NamedPlace> all;
  for (int i = 0; i < 100; ++i)
    all.push_back({random.place(), std::to_string(i)});
  const NamedPlaces places(all, Length::metres(1e6));
  std::vector<Place> asked;
  for (int i = 0; i < 500; ++i)
    asked.push_back(random.place());
  const auto ask = [&](std::vector<const NamedPlace *> &answers) {
    for (const Place &here : asked)
      answers.push_back(places.nearest(here));
  };
  std::vector<const NamedPlace *> alone;
  ask(alone);
  std::vector<std::vector<const NamedPlace *>> together(4);
  std::vector<std::thread> threads;
  for (auto &answers : together)
    threads.emplace_back([&] { ask(answers); });
  for (std::thread &thread : threads)
    thread.join();
  for (const auto &answers : together)
    QVERIFY(answers == alone);
}

QTEST_APPLESS_MAIN(NamedPlacesTest)
#include "named_places_test.moc"
