// SPDX-License-Identifier: GPL-2.0-or-later
#include "records/common_error.h"
#include "records/walk_by_chance.h"
#include "support/near.h"

using namespace brushline;
using namespace brushline::test;

class CommonErrorTest : public QObject {
  Q_OBJECT
private slots:
  void degenerate() {
    QVERIFY(!commonError({}));
    const auto one = commonError({{3, 2}});
    QVERIFY(one && one->legs == 1 && one->mean == 3 && !one->se && !one->half_width);
    const auto equal = commonError({{3, 2}, {3, 2}, {3, 2}});
    VERIFY_NEAR(equal->mean, 3, 1e-12, "equal");
    VERIFY_NEAR(*equal->se, 0, 1e-12, "equal");
  }

  // Computed by hand: equal weights. 2, 4, 9: mean 5, squares 9 + 1 + 16 = 26; each from the mean of the other two by a
  // third of the weight: 1/2 of its distance from the mean, so se sqrt(26) / 2 = 2.5495; Student's t for 2 degrees of
  // freedom at 97.5 % is 4.3027 (printed tables).
  void equalWeights() {
    for (const double sigma : {0.1, 1., 3.}) { // with scatter beyond the measuring
      const auto error = commonError({{2, sigma}, {4, sigma}, {9, sigma}});
      VERIFY_NEAR(error->mean, 5, 1e-9, "mean");
      VERIFY_NEAR(*error->se, 2.5495, 1e-4, "se");
      VERIFY_NEAR(*error->half_width, 2.5495 * 4.3027, 1e-3, "interval");
      VERIFY_NEAR(error->scatter, std::sqrt(std::max(0., 13 - sigma * sigma)), 1e-6, "scatter");
    }
  }

  // Computed by hand: no scatter beyond measuring. Weights 1 and 1 / 4, shares 0.8 and 0.2: mean 0.2; 0.8 * 0.2 / 0.2 =
  // 0.8 and 0.2 * 0.8 / 0.8 = 0.2; se sqrt(0.64 + 0.04) = 0.8246; t for 1 degree 12.706.
  void measuringOnly() {
    const auto error = commonError({{0, 1}, {1, 2}});
    VERIFY_NEAR(error->mean, 0.2, 1e-12, "mean");
    VERIFY_NEAR(*error->se, 0.8246, 1e-4, "se");
    VERIFY_NEAR(*error->half_width, 0.8246 * 12.706, 1e-3, "interval");
    QCOMPARE(error->scatter, 0.);
  }

  // Computed by hand: one error has all the weight that a double can tell. Its distance from the mean of the others,
  // 10, is the standard error; 50 and -30 have shares of 1e-16 and add nothing. t for 2 degrees 4.3027.
  void oneOutweighsTheOthers() {
    const auto error = commonError({{0, 1e-6}, {50, 200}, {-30, 200}});
    VERIFY_NEAR(error->mean, 0, 1e-9, "mean");
    VERIFY_NEAR(*error->se, 10, 1e-6, "se");
    VERIFY_NEAR(*error->half_width, 43.027, 1e-3, "interval");
  }

  void coverage_data() {
    QTest::addColumn<double>("scatter");
    QTest::addColumn<double>("said"); // sigmas, as shares of the true ones
    for (const double scatter : {0., 1., 2., 4.})
      for (const double said : {0.5, 1., 2.})
        QTest::addRow("scatter %g, said %g", scatter, said) << scatter << said;
  }
  // Measured with sigmas of 1 to 4, as legs between 60 and 240 m are: the mean is not off, and the interval holds it 93
  // to 97 times of 100 (10 000 samples: sigma 0.2 of 100).
  void coverage() {
    QFETCH(double, scatter);
    QFETCH(double, said);
    WalkByChance chance(17);
    constexpr int samples = 10000;
    int held = 0;
    double sum = 0, squares = 0;
    for (int i = 0; i < samples; ++i) {
      std::vector<LegError> errors;
      for (const double sigma : {1., 1.3, 1.6, 2., 3., 4.})
        errors.push_back({7 + scatter * chance.normal() + sigma * chance.normal(), said * sigma});
      const auto error = commonError(errors);
      held += std::abs(error->mean - 7) <= *error->half_width ? 1 : 0;
      sum += error->mean - 7;
      squares += (error->mean - 7) * (error->mean - 7);
    }
    const double deviation = std::sqrt(squares / samples / samples);
    VERIFY_NEAR(sum / samples, 0, 3 * deviation, "bias");
    VERIFY_NEAR(double(held) / samples, 0.95, 0.02, "coverage");
  }
};

QTEST_GUILESS_MAIN(CommonErrorTest)
#include "common_error_test.moc"
