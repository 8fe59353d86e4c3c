// SPDX-License-Identifier: GPL-2.0-or-later
// The sample's garden course, as people write one down. Its numbers are made up; what comes of them is reckoned here.
#include "support/host_fixture.h"
#include "support/near.h"

#include <cmath>

using namespace brushline::test;

class GardenSampleTest : public QObject {
  Q_OBJECT
private slots:
  void plots() {
    const QString folder = QStringLiteral(BRUSHLINE_SOURCE_DIR "/sample-project/");
    const QVariantMap given{{"INPUT", folder + "garden_legs.csv"},
                            {"ROUTE_FIELD", "route"},
                            {"ORDER_FIELD", "order"},
                            {"BEARING_FIELD", "bearing"},
                            {"PACES_FIELD", "paces"},
                            {"WALKER_FIELD", "counted"},
                            {"WALKERS", folder + "garden_walkers.csv"},
                            {"STARTS", folder + "garden_start.geojson"},
                            {"CLOSE", 1},
                            {"DATE", "2026-06-20"},
                            {"OUTPUT", "memory:"},
                            {"CLOSURE", "memory:"}};
    const Outcome outcome = run(QStringLiteral("brushline:plotlegs"), given);
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QVERIFY2(outcome.warnings.isEmpty(), qPrintable(outcome.said()));
    QCOMPARE(outcome.output().crs, QStringLiteral("EPSG:32621"));
    QCOMPARE(outcome.rows().size(), size_t(18)); // six legs, three people
    const double bearings[] = {42, 90, 140, 212, 292, 326};
    // 176 and 206 single steps to 100 m, and 126, of which the parent counts every second.
    const double metres[] = {4000 / 176.0, 3200 / 176.0, 3400 / 206.0, 4000 / 126.0, 4000 / 206.0, 3000 / 176.0};
    double east = 0, north = 0, length = 0;
    for (size_t i = 0; i < 6; ++i) {
      const OutputRow &row = outcome.rows()[3 * i];
      QCOMPARE(row.number("read_brg"), bearings[i]);
      VERIFY_NEAR(row.number("dist_m"), metres[i], 1e-6, std::to_string(i));
      VERIFY_NEAR(row.number("mag_brg"), bearings[i], 1e-6, std::to_string(i));
      const double turn = row.number("true_brg") * std::acos(-1) / 180;
      east += metres[i] * std::sin(turn);
      north += metres[i] * std::cos(turn);
      length += metres[i];
    }
    const OutputRow &closure = outcome.rows("CLOSURE").at(0);
    VERIFY_NEAR(closure.number("length_m"), length, 1e-6, "length");
    VERIFY_NEAR(closure.number("miss_m"), std::hypot(east, north), 0.001, "miss");
    QVERIFY(closure.number("miss_m") > 0.5 && closure.number("miss_m") < 2.5);
    QVERIFY(closure.null("hint"));
  }
};

BRUSHLINE_HOST_TEST_MAIN(GardenSampleTest)
#include "garden_sample_test.moc"
