// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/choose_marks.h"

#include "sighting/extinction.h"

#include <QtTest>

#include <algorithm>
#include <cmath>

using namespace brushline;

namespace {

const Place camp{Angle::degrees(48.8), Angle::degrees(-55.2)};
const TrueBearing east(Angle::degrees(90));

Place at(double along, double offset, const Place &start = camp, TrueBearing bearing = east) {
  const TrueBearing across(bearing.angle() + Angle::degrees(90));
  return geodesicDestination(geodesicDestination(start, bearing, Length::metres(along)), across, Length::metres(offset));
}

ChoiceRule rule() {
  return {{0.5, Length::metres(1.6)}, SpacingRule(), Length::metres(10), Angle::degrees(3)};
}

//! Cover of one sight distance everywhere: a raster of sights in degrees around the camp.
std::unique_ptr<CoverSource> coverOfSight(double sight) {
  auto cover = std::make_unique<CoverSource>(std::vector<double>());
  const GridShape world{-180, 90, 1, 1, 360, 180};
  cover->setSights(TiledGrid(world, [sight](const CellWindow &window) {
                     return std::vector<float>(size_t(window.columns * window.rows), float(sight));
                   }),
                   [](std::vector<double> &, std::vector<double> &) {});
  return cover;
}

double missOf(const std::vector<ChosenMark> &chain, const ChoiceRule &rule) {
  double sum = 0;
  for (const ChosenMark &mark : chain)
    sum += std::pow(mark.from_last.length.metres() * rule.sighting.radians(), 2) + std::pow(standingError.metres(), 2);
  return sum;
}

} // namespace

class ChooseMarksTest : public QObject {
  Q_OBJECT
private slots:
  void candidatesAlongALeg() {
    const std::vector<Place> places = {at(50, 3), at(20, -9.9), at(20, 10.1), at(-1, 0), at(101, 0), at(50, 3), at(80, 0)};
    const auto near = MarkCandidates(places).alongLeg(camp, east, Length::metres(100), Length::metres(10));
    QCOMPARE(near.size(), size_t(3)); // too far off, behind, beyond, and the second at one place are left out
    QCOMPARE(near[0].candidate, size_t(1));
    QVERIFY(std::abs(near[0].along_m - 20) < 0.01 && std::abs(near[0].offset_m + 9.9) < 0.01);
    QCOMPARE(near[1].candidate, size_t(0));
    QCOMPARE(near[2].candidate, size_t(6));
  }

  // Against asking all, over the 180th meridian and near a pole too.
  void indexAgreesWithAskingAll() {
    for (const Place &start : {camp, Place{Angle::degrees(-17), Angle::degrees(179.999)},
                               Place{Angle::degrees(89.99), Angle::degrees(10)}}) {
      std::vector<Place> places;
      unsigned state = 99;
      const auto random = [&state] { return double((state = state * 1664525u + 1013904223u) >> 8) / double(1u << 24); };
      for (int i = 0; i < 3000; ++i)
        places.push_back(at(-100 + 1700 * random(), -60 + 120 * random(), start, TrueBearing(Angle::degrees(72))));
      const TrueBearing bearing(Angle::degrees(72));
      const auto near = MarkCandidates(places).alongLeg(start, bearing, Length::metres(1500), Length::metres(25));
      size_t expected = 0;
      for (const Place &place : places) {
        const GeodesicLeg way = geodesicBetween(start, place);
        const double turn = (way.departure.angle() - bearing.angle()).radians();
        const double along = way.length.metres() * std::cos(turn), across = way.length.metres() * std::sin(turn);
        expected += along > 0 && along < 1500 && std::abs(across) <= 25;
      }
      QVERIFY(expected > 500);
      QCOMPARE(near.size(), expected);
      for (size_t i = 1; i < near.size(); ++i)
        QVERIFY(near[i - 1].along_m <= near[i].along_m);
    }
  }

  void withoutCandidatesTheSpacingRuleServes() {
    const auto cover = coverOfSight(25);
    const auto chain = chooseMarks(camp, at(100, 0), MarkCandidates({}), rule(), nullptr, cover.get(), Progress());
    QCOMPARE(chain.size(), size_t(5)); // hops of 0.8 * 25 m
    for (size_t i = 0; i < chain.size(); ++i) {
      QCOMPARE(chain[i].candidate, ChosenMark::spaced);
      QVERIFY(std::abs(chain[i].along_m - 20.0 * double(i + 1)) < 0.01);
      QVERIFY(std::abs(chain[i].sight_m - 25) < 0.01);
    }
  }

  void everyMarkIsVisibleFromTheOneBefore() {
    std::vector<Place> places;
    unsigned state = 7;
    const auto random = [&state] { return double((state = state * 1664525u + 1013904223u) >> 8) / double(1u << 24); };
    for (int i = 0; i < 200; ++i)
      places.push_back(at(300 * random(), -10 + 20 * random()));
    const auto cover = coverOfSight(25);
    const auto chain = chooseMarks(camp, at(300, 0), MarkCandidates(places), rule(), nullptr, cover.get(), Progress());
    double along = 0;
    int real = 0;
    for (size_t i = 0; i < chain.size(); ++i) {
      QVERIFY(chain[i].along_m > along);
      along = chain[i].along_m;
      QVERIFY(std::abs(chain[i].offset_m) <= 10);
      const double hop = chain[i].from_last.length.metres();
      QVERIFY(hop <= 0.8 * 25 + 0.01);
      if (i + 1 < chain.size()) {
        QVERIFY(hop >= 5 - 0.01);
        real += chain[i].candidate != ChosenMark::spaced;
      }
    }
    QCOMPARE(real, int(chain.size()) - 1); // dense enough for no gap
    QVERIFY(geodesicBetween(chain.back().place, at(300, 0)).length.metres() < 1e-6);
  }

  // Small cases against trying every chain.
  void noChainMissesLess() {
    unsigned state = 31;
    const auto random = [&state] { return double((state = state * 1664525u + 1013904223u) >> 8) / double(1u << 24); };
    int possibleRounds = 0;
    for (int round = 0; round < 20; ++round) {
      std::vector<Place> places;
      for (int i = 0; i < 9; ++i)
        places.push_back(at(5 + 110 * random(), -10 + 20 * random()));
      const MarkCandidates candidates(places);
      const ChoiceRule choice = rule();
      const double most = 0.8 * 60;
      const auto cover = coverOfSight(60);
      const Place end = at(120, 0);
      const auto chain = chooseMarks(camp, end, candidates, choice, nullptr, cover.get(), Progress());
      const auto near = candidates.alongLeg(camp, east, Length::metres(120), choice.offset);
      double best = HUGE_VAL;
      for (unsigned set = 0; set < (1u << near.size()); ++set) {
        double sum = 0;
        Place from = camp;
        bool possible = true;
        const auto hop = [&](const Place &to, bool last) {
          const double length = geodesicBetween(from, to).length.metres();
          possible = possible && length <= most && (last || length >= 5);
          sum += std::pow(length * choice.sighting.radians(), 2) + std::pow(standingError.metres(), 2);
          from = to;
        };
        for (size_t i = 0; i < near.size(); ++i)
          if (set & (1u << i))
            hop(near[i].place, false);
        hop(end, true);
        if (possible)
          best = std::min(best, sum);
      }
      if (std::isfinite(best)) {
        ++possibleRounds;
        for (size_t i = 0; i + 1 < chain.size(); ++i)
          QVERIFY(chain[i].candidate != ChosenMark::spaced);
        QVERIFY2(std::abs(missOf(chain, choice) - best) < 1e-6,
                 qPrintable(QStringLiteral("round %1: %2, best %3").arg(round).arg(missOf(chain, choice)).arg(best)));
      } else {
        QVERIFY(std::any_of(chain.begin(), chain.end(),
                            [](const ChosenMark &mark) { return mark.candidate == ChosenMark::spaced; }));
      }
    }
    QVERIFY2(possibleRounds >= 10, qPrintable(QString::number(possibleRounds)));
  }

  void gapsAreFilledOnTheLine() {
    // Candidates at both ends of the leg only; 25 m of sight in between.
    std::vector<Place> places;
    for (double along : {10.0, 20.0, 30.0, 170.0, 180.0, 190.0})
      places.push_back(at(along, 4));
    const auto cover = coverOfSight(25);
    const auto chain = chooseMarks(camp, at(200, 0), MarkCandidates(places), rule(), nullptr, cover.get(), Progress());
    int spaced = 0;
    for (size_t i = 0; i + 1 < chain.size(); ++i)
      if (chain[i].candidate == ChosenMark::spaced) {
        ++spaced;
        QCOMPARE(chain[i].offset_m, 0.0);
        QVERIFY(chain[i].along_m > 30 && chain[i].along_m < 170);
      }
    QVERIFY(spaced >= 6 && spaced <= 8); // 140 m of hops up to 20 m
    QVERIFY(chain[0].candidate != ChosenMark::spaced);
  }

  // A mark on the line may be walked to unseen, but neither farther nor nearer than the spacing asks for: from a
  // candidate beside the line it can be both.
  void hopsToMarksOnTheLineKeepTheSpacing() {
    unsigned state = 5;
    const auto random = [&state] { return double((state = state * 1664525u + 1013904223u) >> 8) / double(1u << 24); };
    int spaced = 0, chosen = 0;
    for (int round = 0; round < 200; ++round) {
      ChoiceRule choice = rule();
      choice.offset = Length::metres(20);
      choice.spacing.least = Length::metres(4 + 4 * random());
      choice.spacing.most = Length::metres(choice.spacing.least.metres() + 8 * random());
      std::vector<Place> places;
      for (int i = 0; i < 40; ++i)
        places.push_back(at(150 * random(), -20 + 40 * random()));
      const auto cover = coverOfSight(8 + 12 * random());
      const auto chain =
          chooseMarks(camp, at(150, 0), MarkCandidates(places), choice, nullptr, cover.get(), Progress());
      QVERIFY(!chain.empty());
      for (size_t i = 0; i < chain.size(); ++i) {
        const double hop = chain[i].from_last.length.metres();
        const bool end = i + 1 == chain.size();
        ++(chain[i].candidate == ChosenMark::spaced ? spaced : chosen);
        QVERIFY2(hop <= choice.spacing.most.metres() + 1e-6 && (end || hop >= choice.spacing.least.metres() - 1e-6),
                 qPrintable(QStringLiteral("round %1: a hop of %2 m, not %3 to %4 m")
                                .arg(round)
                                .arg(hop)
                                .arg(choice.spacing.least.metres())
                                .arg(choice.spacing.most.metres())));
      }
      QVERIFY(geodesicBetween(chain.back().place, at(150, 0)).length.metres() < 1e-6);
    }
    QVERIFY2(spaced > 300 && chosen > 300, qPrintable(QStringLiteral("%1, %2").arg(spaced).arg(chosen)));
  }

  void markOnTheStartAndEqualEnds() {
    const auto chain = chooseMarks(camp, at(60, 0), MarkCandidates({camp, at(30, 0)}), rule(), nullptr, nullptr, Progress());
    QCOMPARE(chain.size(), size_t(2)); // the one on the start leads nowhere
    QCOMPARE(chain[0].candidate, size_t(1));
    QVERIFY(std::isinf(chain[0].sight_m));
    QVERIFY(chooseMarks(camp, camp, MarkCandidates({}), rule(), nullptr, nullptr, Progress()).empty());
  }

  void groundHidesMarks() {
    // A ridge of 20 m across the line at 50 m: no mark beyond it is seen from before it. The candidates lie on both
    // sides of it, so that one is spaced near its top only since the ground asks for it.
    const GridShape shape{-55.21, 48.81, 0.0001, 0.0001, 200, 200};
    const auto heights = [shape](const CellWindow &window) {
      std::vector<float> cells;
      for (int64_t row = 0; row < window.rows; ++row)
        for (int64_t column = 0; column < window.columns; ++column) {
          const double longitude = shape.left + (double(window.column + column) + 0.5) * shape.cell_width;
          const double along = (longitude + 55.2) * 73500; // metres a degree at this latitude, near enough
          cells.push_back(float(std::max(0.0, 20 - std::abs(along - 50))));
        }
      return cells;
    };
    Terrain terrain(TiledGrid(shape, heights), [](std::vector<double> &, std::vector<double> &) {});
    std::vector<Place> places;
    for (double along : {20.0, 80.0})
      places.push_back(at(along, 0));
    const auto onTop = [&](Terrain *ground) {
      bool top = false;
      for (const ChosenMark &mark :
           chooseMarks(camp, at(100, 0), MarkCandidates(places), rule(), ground, nullptr, Progress()))
        top = top || std::abs(mark.along_m - 50) < 15;
      return top;
    };
    QVERIFY(!onTop(nullptr));
    QVERIFY(onTop(&terrain)); // nobody sees from one side to the other
  }

  void stops() {
    struct Stopped : Progress {
      bool cancelled() const override { return true; }
    };
    QVERIFY_EXCEPTION_THROWN(chooseMarks(camp, at(100, 0), MarkCandidates({}), rule(), nullptr, nullptr, Stopped()),
                             Cancelled);
  }
};

QTEST_APPLESS_MAIN(ChooseMarksTest)
#include "choose_marks_test.moc"
