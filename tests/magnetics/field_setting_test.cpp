// SPDX-License-Identifier: GPL-2.0-or-later
#include "magnetics/field_setting.h"

#include "magnetics/world_magnetic_model.h"
#include "support/near.h"
#include "support/random.h"

#include <thread>
#include <vector>

using namespace brushline;
using namespace brushline::test;

class FieldSettingTest : public QObject {
  Q_OBJECT
private slots:
  void fromTheModel();
  void modelWithoutError();
  void given();
  void heightReachesTheModel();
  void sameFromManyThreads();
};

namespace {
// A field that is the same everywhere, and grows with the height.
class Steady final : public FieldModel {
public:
  Steady(FieldVector field, std::optional<DeclinationErrorModel> error) : mField(field), mError(error) {}
  std::string name() const override { return "steady"; }
  FieldVector field(const Place &, Length height) const override {
    return {mField.north, mField.east + height.metres(), mField.down};
  }
  FieldVector changePerYear(const Place &, Length) const override { return {}; }
  std::optional<DeclinationErrorModel> declinationError() const override { return mError; }

private:
  FieldVector mField;
  std::optional<DeclinationErrorModel> mError;
};

FieldSetting steady(FieldVector field, std::optional<DeclinationErrorModel> error,
                    std::optional<Declination> given = std::nullopt) {
  return FieldSetting(std::make_unique<Steady>(field, error), given);
}

const Place here{Angle::degrees(47), Angle::degrees(8)};
} // namespace

// Computed by hand; the error is that of wmm_error.csv, 20 000 nT.
void FieldSettingTest::fromTheModel() {
  const FieldSetting setting = steady({12000, 16000, 40000}, wmm2025Error);
  const LocalField local = setting.at(here, Length());
  VERIFY_NEAR(local.declination.east.degrees(), std::atan2(4, 3) * 180 / Angle::pi, 1e-12, "declination");
  QVERIFY(local.declination_error);
  VERIFY_NEAR(local.declination_error->degrees(), 0.375446, 5e-7, "error");
  QVERIFY(local.zone == CompassZone::Reliable);
  QVERIFY(local.horizontal_nt == 20000);
  QVERIFY(!setting.given());
  QVERIFY(setting.of({0, 1999, 0}).zone == CompassZone::Blackout);
  QCOMPARE(setting.model().name(), std::string("steady"));
  QVERIFY(steady({3000, 4000, 0}, wmm2025Error).at(here, Length()).zone == CompassZone::Caution);
  QVERIFY(steady({0, 1999, 0}, wmm2025Error).at(here, Length()).zone == CompassZone::Blackout);
}

void FieldSettingTest::modelWithoutError() {
  QVERIFY(!steady({12000, 16000, 40000}, std::nullopt).at(here, Length()).declination_error);
}

// A declination read off a map replaces the model's; it has no error, and makes no compass work where none does.
void FieldSettingTest::given() {
  const Declination map{Angle::degrees(-7.5)};
  const FieldSetting setting = steady({12000, 16000, 40000}, wmm2025Error, map);
  QVERIFY(setting.given());
  const LocalField local = setting.at(here, Length());
  QVERIFY(local.declination.east.degrees() == -7.5);
  QVERIFY(!local.declination_error);
  QVERIFY(local.zone == CompassZone::Reliable);
  const LocalField pole = steady({1000, 0, 50000}, wmm2025Error, map).at(here, Length());
  QVERIFY(pole.declination.east.degrees() == -7.5);
  QVERIFY(pole.zone == CompassZone::Blackout);
}

void FieldSettingTest::heightReachesTheModel() {
  const FieldSetting setting = steady({10000, 0, 0}, std::nullopt);
  QVERIFY(setting.at(here, Length()).declination.east.degrees() == 0);
  VERIFY_NEAR(setting.at(here, Length::metres(10000)).declination.east.degrees(), 45, 1e-12, "10 km up");
}

// "Safe to ask from several threads": bit for bit the same.
void FieldSettingTest::sameFromManyThreads() {
  const FieldSetting setting(coefficientModel(worldMagneticModel2025(), DecimalYear(2026.5)));
  Random random(52);
  std::vector<Place> places;
  for (int i = 0; i < 2000; ++i)
    places.push_back(random.place());
  const auto ask = [&](std::vector<double> &answers) {
    for (const Place &place : places)
      answers.push_back(setting.at(place, Length::metres(500)).declination.east.degrees());
  };
  std::vector<double> alone;
  ask(alone);
  std::vector<std::vector<double>> together(4);
  std::vector<std::thread> threads;
  for (auto &answers : together)
    threads.emplace_back([&] { ask(answers); });
  for (std::thread &thread : threads)
    thread.join();
  for (const auto &answers : together)
    QVERIFY(answers == alone);
}

QTEST_APPLESS_MAIN(FieldSettingTest)
#include "field_setting_test.moc"
