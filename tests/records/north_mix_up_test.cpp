// SPDX-License-Identifier: GPL-2.0-or-later
// Each mix-up is walked: a number is worked out and set, and the compass leads where it leads.
#include "records/north_mix_up.h"
#include "support/near.h"

#include <QtTest>

using namespace brushline;

namespace {
constexpr MixUp all[] = {MixUp::TrueOnMagnetic,       MixUp::MagneticWrongWay, MixUp::MagneticOnTrue,
                         MixUp::GridOnTrue,           MixUp::TrueOnGrid,       MixUp::GridOnMagnetic,
                         MixUp::GridMagneticWrongWay, MixUp::MagneticOnGrid};

// Where a walker comes to walk who should walk a true bearing and mixes up norths.
TrueBearing walkedBy(MixUp mixUp, TrueBearing meant, Declination d, Convergence g) {
  // A dial counted from a north: the number set stands for a bearing from that north.
  const auto onMagnetic = [&](Angle set) { return toTrue(MagneticBearing(set), d); };
  const auto onTrue = [](Angle set) { return TrueBearing(set); };
  const auto onGrid = [&](Angle set) { return toTrue(GridBearing(set), g); };
  switch (mixUp) {
  case MixUp::TrueOnMagnetic:
    return onMagnetic(meant.angle());
  case MixUp::MagneticWrongWay: // adds what is to be taken off
    return onMagnetic(meant.angle() + d.east);
  case MixUp::MagneticOnTrue:
    return onTrue(toMagnetic(meant, d).angle());
  case MixUp::GridOnTrue:
    return onTrue(toGrid(meant, g).angle());
  case MixUp::TrueOnGrid:
    return onGrid(meant.angle());
  case MixUp::GridOnMagnetic:
    return onMagnetic(toGrid(meant, g).angle());
  case MixUp::GridMagneticWrongWay: // magnetic = grid - (D - G); adds instead
    return onMagnetic(toGrid(meant, g).angle() + (d.east - g.east));
  case MixUp::MagneticOnGrid:
    return onGrid(toMagnetic(meant, d).angle());
  }
  return meant;
}
} // namespace

class NorthMixUpTest : public QObject {
  Q_OBJECT
private slots:
  void walked() {
    for (const MixUp mixUp : all)
      for (const double d : {-17.5, -8., 8., 20.})
        for (const double g : {-2.5, 0., 1.5})
          for (const double meant : {0.5, 90., 181., 359.}) {
            const Declination declination{Angle::degrees(d)};
            const Convergence convergence{Angle::degrees(g)};
            const TrueBearing bearing(Angle::degrees(meant));
            const Angle off = walkedBy(mixUp, bearing, declination, convergence).angle() - bearing.angle();
            VERIFY_NEAR((off - errorOf(mixUp, declination, convergence)).signedTurn().degrees(), 0, 1e-9,
                        std::to_string(static_cast<int>(mixUp)));
          }
  }

  // Computed by hand: declination 8 east, convergence 3 west, so the grid magnetic angle is 11.
  void signs() {
    const Declination d{Angle::degrees(8)};
    const Convergence g{Angle::degrees(-3)};
    const double expected[] = {8, 16, -8, 3, -3, 11, 22, -11};
    for (size_t i = 0; i < 8; ++i)
      VERIFY_NEAR(errorOf(all[i], d, g).degrees(), expected[i], 1e-12, std::to_string(i));
    for (size_t i = 0; i < 8; ++i) {
      const auto found = explain(Angle::degrees(expected[i] + 0.4), Angle::degrees(1.2), d, g);
      QCOMPARE(found.size(), size_t(1));
      QVERIFY(found[0].mix_up == all[i]);
    }
  }

  void whatExplainsNothing() {
    const Declination d{Angle::degrees(8)};
    const auto count = [&](double error, double within,
                           std::optional<Convergence> g = Convergence{Angle::degrees(-3)}) {
      return explain(Angle::degrees(error), Angle::degrees(within), d, g).size();
    };
    QCOMPARE(count(0.5, 0.1), size_t(0)); // less than half a graduation
    QCOMPARE(count(5.5, 6), size_t(0));   // nought lies within
    QCOMPARE(count(5.3, 1), size_t(0));   // nothing near
    QCOMPARE(count(9.5, 2), size_t(2));   // 8 or 11: cannot be told apart, nearest first
    QVERIFY(explain(Angle::degrees(9.4), Angle::degrees(2), d, Convergence{Angle::degrees(-3)})[0].mix_up ==
            MixUp::TrueOnMagnetic);
    QCOMPARE(count(11, 1, std::nullopt), size_t(0)); // convergence is not known
    QCOMPARE(count(8, 1, std::nullopt), size_t(1));
    // No declination to speak of: it explains nothing.
    QVERIFY(explain(Angle::degrees(1.5), Angle::degrees(1.2), Declination{Angle::degrees(0.5)}, {}).empty());
  }
};

QTEST_GUILESS_MAIN(NorthMixUpTest)
#include "north_mix_up_test.moc"
