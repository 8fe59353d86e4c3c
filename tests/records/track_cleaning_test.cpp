// SPDX-License-Identifier: GPL-2.0-or-later
// What is left out and kept: cases by hand.
#include "records/track_cleaning.h"
#include "records/walk_by_chance.h"
#include "support/near.h"
#include "support/work.h"

using namespace brushline;
using namespace brushline::test;

namespace {
const Place origin{Angle::degrees(-41), Angle::degrees(179.999)};

TrackFix fix(double east, double north, std::optional<double> time = {}) {
  return {placeOf({east, north}, origin), time, false};
}

CleanTrack clean(const std::vector<TrackFix> &fixes) {
  return cleanTrack(fixes, LocalPlane(origin), TrackRule(), Progress());
}
} // namespace

class TrackCleaningTest : public QObject {
  Q_OBJECT
private slots:
  void nothing() {
    QCOMPARE(clean({}).fixes.size(), size_t(0));
    QCOMPARE(clean({fix(0, 0, 1)}).fixes.size(), size_t(1));
    QVERIFY(clean({fix(0, 0), fix(9, 0)}).times == TrackTimes::None);
  }

  // East at 1 m/s, across the 180th meridian (83 m on); everything is kept as it is.
  void plainWalk() {
    std::vector<TrackFix> fixes;
    for (int i = 0; i <= 200; ++i)
      fixes.push_back(fix(i, 0, 1000 + i));
    const CleanTrack track = clean(fixes);
    QCOMPARE(track.fixes.size(), size_t(201));
    QCOMPARE(track.spikes + track.duplicates + track.lost_times + track.stands, size_t(0));
    for (int i = 0; i <= 200; ++i) {
      VERIFY_NEAR(track.fixes[i].at.east, i, 1e-6, std::to_string(i));
      VERIFY_NEAR(track.fixes[i].at.north, 0, 1e-6, std::to_string(i));
    }
  }

  void spikes() {
    std::vector<TrackFix> fixes;
    for (int i = 0; i <= 60; ++i)
      fixes.push_back(fix(i, i == 20 || i == 40 || i == 41 ? 80 : 0, i));
    QCOMPARE(clean(fixes).spikes, size_t(3));
    for (const CleanFix &each : clean(fixes).fixes)
      QVERIFY(std::abs(each.at.north) < 1e-6);
    // At either end.
    fixes = {fix(300, 0, 0), fix(0, 0, 1), fix(1, 0, 2), fix(2, 0, 3), fix(3, 300, 4)};
    QCOMPARE(clean(fixes).spikes, size_t(2));
    // A jump from which nobody comes back is a gap.
    fixes.clear();
    for (int i = 0; i <= 60; ++i)
      fixes.push_back(fix(i, i >= 30 ? 500 : 0, i));
    QCOMPARE(clean(fixes).spikes, size_t(0));
    // Without times, by the usual step of 1 m.
    fixes.clear();
    for (int i = 0; i <= 60; ++i)
      fixes.push_back(fix(i, i == 20 ? 80 : 0));
    QCOMPARE(clean(fixes).spikes, size_t(1));
    // There and back with few points is no spike.
    QCOMPARE(clean({fix(0, 0), fix(0, 200), fix(0, 400), fix(0, 200), fix(0, 0)}).spikes, size_t(0));
  }

  void duplicatesKeepTheirGap() {
    std::vector<TrackFix> fixes = {fix(0, 0, 0), fix(0, 0, 0), fix(5, 0, 5), fix(5, 0, 5), fix(10, 0, 10)};
    QCOMPARE(clean(fixes).duplicates, size_t(2));
    QCOMPARE(clean(fixes).fixes.size(), size_t(3));
    fixes[3].after_gap = true;
    QVERIFY(clean(fixes).fixes[2].after_gap);
  }

  void timesThatRunBackwards() {
    std::vector<TrackFix> fixes;
    for (int i = 0; i <= 60; ++i) // the clock is set back by an hour on the way
      fixes.push_back(fix(i, 0, i < 20 ? 3600 + i : i));
    CleanTrack track = clean(fixes);
    QCOMPARE(track.lost_times, size_t(20));
    QVERIFY(track.times == TrackTimes::Kept && !track.fixes[0].arrived_s && track.fixes[30].arrived_s);
    QCOMPARE(track.fixes.size(), size_t(61));
    for (int i = 0; i <= 60; ++i)
      fixes[i].time_s = 1000 - i;
    track = clean(fixes);
    QVERIFY(track.times == TrackTimes::Backwards);
    QCOMPARE(track.fixes.size(), size_t(61));
    for (const CleanFix &each : track.fixes)
      QVERIFY(!each.arrived_s && !each.left_s);
  }

  // 100 m, two minutes of standing with 3 m of noise, 100 m; and a recorder that stops itself meanwhile.
  void stands() {
    WalkByChance chance(4);
    std::vector<TrackFix> fixes, paused;
    for (int t = 0; t <= 320; ++t) {
      const double east = t < 100 ? t : t < 220 ? 100 : t - 120;
      fixes.push_back(fix(east + 3 * chance.normal(), 3 * chance.normal(), t));
      if (t <= 100 || t >= 220)
        paused.push_back(fix(east, 0, t));
    }
    for (const auto &each : {fixes, paused}) {
      const CleanTrack track = clean(each);
      QCOMPARE(track.stands, size_t(1));
      int marked = 0;
      for (const CleanFix &one : track.fixes)
        if (one.stand) {
          ++marked;
          VERIFY_NEAR(one.at.east, 100, 2, "stand");
          VERIFY_NEAR(one.at.north, 0, 1, "stand");
          VERIFY_NEAR(*one.arrived_s, 100, 5, "stand");
          VERIFY_NEAR(*one.left_s, 220, 5, "stand");
        }
      QCOMPARE(marked, 1);
    }
    // Crawling through a thicket at 0.3 m/s is walking.
    fixes.clear();
    for (int t = 0; t <= 600; ++t)
      fixes.push_back(fix(0.3 * t + 3 * chance.normal(), 3 * chance.normal(), t));
    QCOMPARE(clean(fixes).stands, size_t(0));
  }

  // n log n: with noise, stands and lost times. Four times as many fixes take some five times as long; with their
  // square it would be sixteen. The hundred thousand take less than a second of work.
  void manyFixes() {
    const auto noisy = [](int count) {
      WalkByChance chance(5);
      std::vector<TrackFix> fixes;
      for (int t = 0; t < count; ++t)
        fixes.push_back(
            fix(t % 1000 < 500 ? t * 0.1 : (t / 1000) * 100 + 50, 4 * chance.normal(), t - (t % 7 == 0 ? 50 : 0)));
      return fixes;
    };
    const std::vector<TrackFix> few = noisy(25000), many = noisy(100000);
    QVERIFY(clean(many).lost_times > 10000);
    const double a_part = secondsOfWork([&] { clean(few); }), all = secondsOfWork([&] { clean(many); });
    QVERIFY2(all < 1 * slower, qPrintable(QString::number(all)));
    QVERIFY2(all < 9 * a_part, qPrintable(QStringLiteral("%1 s, and %2 s for a quarter").arg(all).arg(a_part)));
  }

  void cancelled() {
    struct Stop : Progress {
      bool cancelled() const override { return true; }
    };
    QVERIFY_EXCEPTION_THROWN(cleanTrack({fix(0, 0)}, LocalPlane(origin), TrackRule(), Stop()), Cancelled);
  }
};

QTEST_GUILESS_MAIN(TrackCleaningTest)
#include "track_cleaning_test.moc"
