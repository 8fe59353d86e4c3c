// SPDX-License-Identifier: GPL-2.0-or-later
#include "magnetics/field_model.h"

#include "support/check.h"
#include "support/installed_models.h"
#include "support/near.h"
#include "support/random.h"

#include <algorithm>
#include <vector>

using namespace brushline;
using namespace brushline::test;

class FieldModelTest : public QObject {
  Q_OBJECT
private slots:
  void yearsEndsIncluded();
  void noSuchModel();
  void brokenFiles_data();
  void brokenFiles();
  void yearOutside_data();
  void yearOutside();
  void errorModelByName_data();
  void errorModelByName();
  void heightAboveTheSeaIsNearEnough();
};

void FieldModelTest::yearsEndsIncluded() {
  constexpr ModelYears years{2025, 2030};
  QVERIFY(years.contains(DecimalYear(2025)) && years.contains(DecimalYear(2030)));
  QVERIFY(!years.contains(DecimalYear(2024.999)) && !years.contains(DecimalYear(2030.001)));
  QVERIFY(!years.contains(DecimalYear(std::nan(""))));
}

void FieldModelTest::noSuchModel() {
  const InstalledModels installed;
  bool refused = false;
  try {
    installedModel("nowhere2025", DecimalYear(2026));
  } catch (const NoSuchModel &error) {
    QCOMPARE(error.model, std::string("nowhere2025"));
    QVERIFY(!std::string(error.what()).empty());
    refused = true;
  }
  QVERIFY(refused);
}

void FieldModelTest::brokenFiles_data() {
  QTest::addColumn<QString>("file");
  QTest::addColumn<int>("keep");       // bytes left of it
  QTest::addColumn<QByteArray>("add"); // and what stands after them
  const QString about = QStringLiteral(".wmm"), numbers = QStringLiteral(".wmm.cof");
  const QByteArray huge("\x50\xc3\0\0\x50\xc3\0\0", 8); // degree and order 50 000: more than can be counted
  const QByteArray negative("\xfb\xff\xff\xff\xfb\xff\xff\xff", 8);
  QTest::newRow("empty text") << about << 0 << QByteArray();
  QTest::newRow("another kind of file") << about << 0 << QByteArray("GIF89a");
  QTest::newRow("text cut short") << about << 60 << QByteArray();
  QTest::newRow("no coefficients") << numbers << 0 << QByteArray();
  QTest::newRow("other coefficients") << numbers << 0 << QByteArray("WMM2020X");
  QTest::newRow("coefficients cut short") << numbers << 1000 << QByteArray();
  QTest::newRow("coefficients without change") << numbers << 1368 << QByteArray();
  QTest::newRow("something after the coefficients") << numbers << 2728 << QByteArray("more");
  QTest::newRow("huge degree") << numbers << 8 << huge;
  QTest::newRow("negative degree") << numbers << 8 << negative;
}

void FieldModelTest::brokenFiles() {
  QFETCH(QString, file);
  QFETCH(int, keep);
  QFETCH(QByteArray, add);
  const InstalledModels installed;
  installed.write("made2025", worldMagneticModel2025());
  QVERIFY(installedModel("made2025", DecimalYear(2026))); // good as long as it is whole
  const std::string name = "made2025" + file.toStdString();
  const std::string whole = installed.readFile(name);
  QVERIFY(file == QStringLiteral(".wmm") || whole.size() == 2728); // the size of the format
  installed.writeFile(name, whole.substr(0, size_t(keep)) + add.toStdString());
  QVERIFY_EXCEPTION_THROWN(installedModel("made2025", DecimalYear(2026)), NoSuchModel);
}

void FieldModelTest::yearOutside_data() {
  QTest::addColumn<double>("year");
  QTest::addColumn<bool>("inside");
  QTest::newRow("long before") << 1900.0 << false;
  QTest::newRow("just before") << 2024.99 << false;
  QTest::newRow("first") << 2025.0 << true;
  QTest::newRow("within") << 2027.5 << true;
  QTest::newRow("last") << 2030.0 << true;
  QTest::newRow("just after") << 2030.01 << false;
}

void FieldModelTest::yearOutside() {
  QFETCH(double, year);
  QFETCH(bool, inside);
  const InstalledModels installed;
  installed.write("made2025", worldMagneticModel2025());
  bool refused = false;
  try {
    const auto model = installedModel("made2025", DecimalYear(year));
    QCOMPARE(model->name(), std::string("made2025"));
  } catch (const YearOutsideModel &error) {
    QCOMPARE(error.model, std::string("made2025"));
    QVERIFY(error.years.first == 2025 && error.years.last == 2030);
    QVERIFY(std::string(error.what()).find("made2025") != std::string::npos);
    refused = true;
  }
  QCOMPARE(refused, !inside);
}

// Only models with a published error have one.
void FieldModelTest::errorModelByName_data() {
  QTest::addColumn<QString>("name");
  QTest::addColumn<double>("perHorizontal"); // 0: none
  QTest::addColumn<QString>("source");
  QTest::newRow("wmm2025") << "wmm2025" << 5417.0 << "report of WMM2025, equation 43; read second-hand";
  // GeographicLib's name for it: its announcement of version 2.5 (2024-12-28).
  QTest::newRow("wmmhr2025") << "wmmhr2025" << 5417.0 << "taken for that of WMM2025: common practice, no source";
  QTest::newRow("wmm2020") << "wmm2020" << 5625.0 << "report of WMM2020 as its users quote it; read second-hand";
  QTest::newRow("wmm2015") << "wmm2015" << 0.0 << "";
  QTest::newRow("igrf14") << "igrf14" << 0.0 << "";
  QTest::newRow("emm2017") << "emm2017" << 0.0 << "";
}

void FieldModelTest::errorModelByName() {
  QFETCH(QString, name);
  QFETCH(double, perHorizontal);
  const InstalledModels installed;
  installed.write(name.toStdString(), worldMagneticModel2025());
  const auto error = installedModel(name.toStdString(), DecimalYear(2026))->declinationError();
  QFETCH(QString, source);
  QCOMPARE(error.has_value(), perHorizontal > 0);
  if (!error)
    return;
  VERIFY_CHECK(checkOf("declination error, part over H", name.toStdString(), error->per_horizontal, perHorizontal, 0,
                       "deg nT", source.toStdString()));
  VERIFY_CHECK(checkOf("declination error, floor", name.toStdString(), error->floor_degrees, 0.26, 0, "deg",
                       source.toStdString()));
}

// The interface: 100 m change the declination by less than 0.001 degrees in nine places of ten.
void FieldModelTest::heightAboveTheSeaIsNearEnough() {
  const auto model = coefficientModel(worldMagneticModel2025(), DecimalYear(2026));
  Random random(51);
  std::vector<double> changes;
  for (int i = 0; i < 2000; ++i) {
    const Place place = random.place();
    const double low = model->field(place, Length()).declination().east.degrees();
    const double high = model->field(place, Length::metres(100)).declination().east.degrees();
    changes.push_back(turnBetween(low, high));
  }
  std::sort(changes.begin(), changes.end());
  const double ninth = changes[changes.size() * 9 / 10];
  QVERIFY2(ninth < 0.001, qPrintable(QString::number(ninth)));
  QVERIFY(changes[changes.size() / 2] > 0); // but it does change
}

QTEST_APPLESS_MAIN(FieldModelTest)
#include "field_model_test.moc"
