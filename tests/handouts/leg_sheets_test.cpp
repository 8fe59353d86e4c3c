// SPDX-License-Identifier: GPL-2.0-or-later
// Check values: what the rows that go in say; no outside source.
#include "handouts/leg_rows.h"
#include "handouts/leg_sheets_host.h"
#include "quantities/progress.h"
#include "support/idle_algorithm.h"
#include "support/near.h"

#include <qgsexception.h>

#include <algorithm>
#include <limits>

using namespace brushline;
using namespace brushline::test;

namespace {

struct Read {
  std::vector<LegSheet> sheets;
  QString refusal; // of check() or read()
  QStringList warnings;
};

Read readSheets(const Layer &legs, const Layer &marks = nullptr, Ear *ear = nullptr) {
  const IdleAlgorithm algorithm(leg_sheets::legsDefinitions() + leg_sheets::marksDefinitions());
  QVariantMap parameters{{"INPUT", valueOf(legs)}};
  if (marks)
    parameters["MARKS"] = valueOf(marks);
  QgsProcessingContext context;
  Ear own;
  Ear &used = ear ? *ear : own;
  const ParameterReader reader(algorithm, parameters, context);
  Read result;
  try {
    leg_sheets::check(reader);
    result.sheets = leg_sheets::read(reader, &used);
  } catch (const QgsProcessingException &error) {
    result.refusal = error.what();
  }
  result.warnings = used.warnings;
  return result;
}

std::vector<int> numbers(const LegSheet &sheet) {
  std::vector<int> all;
  for (const SheetLeg &leg : sheet.legs)
    all.push_back(leg.number);
  return all;
}

LegRow row(int leg, QVariantMap others = {}, const QString &line = QString()) {
  others["leg"] = leg;
  return legRow(others, line);
}

} // namespace

#define VERIFY_SAYS(text, word) QVERIFY2((text).contains(QStringLiteral(word)), qPrintable(text))

class LegSheetsTest : public QObject {
  Q_OBJECT

private slots:
  void everyFieldIsRead() {
    const Read read = readSheets(legLayer({row(1, {{"from_name", " Camp "},
                                                   {"to_name", "Split Boulder"},
                                                   {"slope_m", 101.5},
                                                   {"climb_m", 10.25},
                                                   {"drop_m", 0.5},
                                                   {"cover", "brush"},
                                                   {"sight_m", 12.5},
                                                   {"spacing_m", 10.0},
                                                   {"warnings", "Mind the bog."}})}));
    QVERIFY2(read.refusal.isEmpty(), qPrintable(read.refusal));
    QCOMPARE(read.sheets.size(), size_t(1));
    const LegSheet &sheet = read.sheets.front();
    QCOMPARE(sheet.route, QString("Loop"));
    QCOMPARE(sheet.walker, QString("Ann"));
    QVERIFY(!sheet.back);
    QCOMPARE(sheet.copy, 1);
    QVERIFY(sheet.missing.empty());
    const SheetLeg &leg = sheet.legs.front();
    QCOMPARE(leg.number, 1);
    QCOMPARE(leg.from, QString("Camp"));
    QCOMPARE(leg.to, QString("Split Boulder"));
    QCOMPARE(leg.true_bearing.value(), 88.625);
    QCOMPARE(leg.grid_bearing.value(), 90.0);
    QCOMPARE(leg.magnetic_bearing.value(), 105.75);
    QCOMPARE(leg.convergence.value(), -1.375);
    QCOMPARE(leg.declination.value(), -17.125);
    QCOMPARE(leg.declination_error.value(), 0.38);
    QCOMPARE(leg.date, QDate(2026, 11, 25));
    QCOMPARE(leg.dial.value(), 106.0);
    QCOMPARE(leg.dial_text, QString::fromUtf8("106°"));
    QCOMPARE(leg.back_dial.value(), 286.0);
    QCOMPARE(leg.back_text, QString::fromUtf8("286°"));
    QCOMPARE(leg.compass_point, QString("ESE"));
    QCOMPARE(leg.length_m.value(), 100.04);
    QCOMPARE(leg.slope_m.value(), 101.5);
    QCOMPARE(leg.climb_m.value(), 10.25);
    QCOMPARE(leg.drop_m.value(), 0.5);
    QCOMPARE(leg.paces.value(), 130L);
    QCOMPARE(leg.minutes.value(), 2.5);
    QCOMPARE(leg.cover, QString("brush"));
    QCOMPARE(leg.sight_m.value(), 12.5);
    QCOMPARE(leg.spacing_m.value(), 10.0);
    QCOMPARE(leg.sightings.value(), 2L);
    QCOMPARE(leg.drift_m.value(), 3.7);
    QCOMPARE(leg.along_m.value(), 5.2);
    QCOMPARE(leg.warnings, QString("Mind the bog."));
    // Zone 21's middle is 57 degrees west, and the leg starts 100 m east of it, at some 48.75 north.
    VERIFY_NEAR(leg.start.longitude.degrees(), -57 + 100 / (111320 * std::cos(48.75 * Angle::pi / 180)), 1e-4, "start");
    VERIFY_NEAR(leg.start.latitude.degrees(), 48.75, 0.01, "start");
    QVERIFY(leg.end.longitude.degrees() > leg.start.longitude.degrees());
    QVERIFY(leg.marks.empty());
  }

  void whatIsNotKnownIsNone() {
    LegRow empty = row(1);
    for (const char *field :
         {"true_brg", "grid_brg", "mag_brg", "converg", "decl", "decl_err", "date", "dial", "dial_text", "back_dial",
          "compass_pt", "walk_min", "marks", "drift_m", "along_m", "walker", "route"})
      empty.values[field] = QVariant();
    empty.values["sight_m"] = std::numeric_limits<double>::quiet_NaN();
    const Read read = readSheets(legLayer({empty}));
    QVERIFY2(read.refusal.isEmpty(), qPrintable(read.refusal));
    const SheetLeg &leg = read.sheets.front().legs.front();
    for (const auto &value : {leg.true_bearing, leg.grid_bearing, leg.magnetic_bearing, leg.convergence,
                              leg.declination, leg.declination_error, leg.dial, leg.back_dial, leg.slope_m, leg.climb_m,
                              leg.drop_m, leg.minutes, leg.sight_m, leg.spacing_m, leg.drift_m, leg.along_m})
      QVERIFY(!value);
    QVERIFY(!leg.sightings && leg.date.isNull() && leg.dial_text.isEmpty() && leg.back_text.isEmpty());
    QVERIFY(read.sheets.front().walker.isEmpty() && read.sheets.front().route.isEmpty());
    QVERIFY(!read.sheets.front().declination() && read.sheets.front().date().isNull());
    QVERIFY(!read.sheets.front().minutes());
  }

  void backNumbersAreWrittenLikeTheDial_data() {
    QTest::addColumn<QString>("dialText");
    QTest::addColumn<double>("back");
    QTest::addColumn<QString>("backText");
    QTest::newRow("degrees") << "106°" << 286.0 << "286°";
    QTest::newRow("zeros") << "186°" << 6.0 << "006°";
    QTest::newRow("half degrees") << "106.5°" << 7.5 << "007.5°";
    QTest::newRow("mils") << "1879 mil" << 79.0 << "0079 mil";
    QTest::newRow("gon") << "106 gon" << 306.0 << "306 gon";
    QTest::newRow("no number") << "" << 286.0 << "";
  }
  void backNumbersAreWrittenLikeTheDial() {
    QFETCH(QString, dialText);
    QFETCH(double, back);
    QFETCH(QString, backText);
    const Read read = readSheets(legLayer({row(1, {{"dial_text", dialText}, {"back_dial", back}})}));
    QCOMPARE(read.sheets.front().legs.front().back_text, backText);
  }

  void sheetsByRouteWalkerAndDirection() {
    const Read read = readSheets(legLayer({row(2), row(1), row(1, {{"walker", "Bo"}}), row(1, {{"direction", "back"}}),
                                           row(1, {{"route", "Other"}}), row(2, {{"walker", "Bo"}})}));
    QVERIFY2(read.refusal.isEmpty(), qPrintable(read.refusal));
    QCOMPARE(read.sheets.size(), size_t(4));
    QCOMPARE(numbers(read.sheets[0]), (std::vector<int>{1, 2}));
    QCOMPARE(read.sheets[1].walker, QString("Bo"));
    QCOMPARE(numbers(read.sheets[1]), (std::vector<int>{1, 2}));
    QVERIFY(read.sheets[2].back);
    QCOMPARE(read.sheets[3].route, QString("Other"));
    QCOMPARE(read.sheets[0].paces().value(), 260L);
    QCOMPARE(read.sheets[0].length_m().value(), 200.08);
    QCOMPARE(read.sheets[0].minutes().value(), 5.0);
    QVERIFY(!read.sheets[0].climb_m());
  }

  void routesOfOneNameAreTakenApart() {
    // Leg by leg for two walkers, then the second route, as annotated legs come.
    std::vector<LegRow> rows;
    for (const int leg : {1, 2, 3, 1, 2})
      for (const char *walker : {"Ann", "Bo"})
        rows.push_back(row(leg, {{"walker", walker}}));
    const Read read = readSheets(legLayer(rows));
    QVERIFY2(read.refusal.isEmpty(), qPrintable(read.refusal));
    QCOMPARE(read.sheets.size(), size_t(4));
    QCOMPARE(numbers(read.sheets[0]), (std::vector<int>{1, 2, 3}));
    QCOMPARE(numbers(read.sheets[1]), (std::vector<int>{1, 2, 3}));
    QCOMPARE(numbers(read.sheets[2]), (std::vector<int>{1, 2}));
    QCOMPARE(numbers(read.sheets[3]), (std::vector<int>{1, 2}));
    QCOMPARE(read.sheets[1].copy, 1);
    QCOMPARE(read.sheets[3].copy, 2);
    QCOMPARE(read.sheets[3].walker, QString("Bo"));
    QCOMPARE(read.sheets[3].route, QString("Loop (2)"));
  }

  void routesOfOneNameThatCannotBeTold_data() {
    QTest::addColumn<QList<int>>("legs");
    QTest::newRow("put in order by leg") << QList<int>{1, 1, 2, 2};
    QTest::newRow("backwards") << QList<int>{2, 1, 2, 1};
    QTest::newRow("a leg of the second is lacking") << QList<int>{1, 2, 3, 1, 3};
    QTest::newRow("without first legs") << QList<int>{2, 3, 2, 3};
  }
  void routesOfOneNameThatCannotBeTold() {
    QFETCH(QList<int>, legs);
    std::vector<LegRow> rows;
    for (const int leg : legs)
      rows.push_back(row(leg));
    const Read read = readSheets(legLayer(rows));
    QVERIFY(read.sheets.empty());
    for (const char *word : {"INPUT", "Loop", "name"})
      QVERIFY2(read.refusal.contains(QLatin1String(word)), qPrintable(read.refusal));
  }

  // Numbers follow each other, but the lines do not: a first leg of one route, a second leg of the other.
  void routesOfOneNameThatDoNotMeet() {
    const Read read = readSheets(legLayer({row(1), row(1, {}, "LINESTRING(500000 5410000,500100 5410000)"), row(2)}));
    VERIFY_SAYS(read.refusal, "Loop");
  }

  // A selection of two routes: the fourth leg begins 10 km from where the third ends.
  void legsThatDoNotMeetAreOfTwoRoutes() {
    const auto far = [](int leg) {
      return QStringLiteral("LINESTRING(%1 5410000,%2 5410000)").arg(500000 + 100 * leg).arg(500100 + 100 * leg);
    };
    // In no order: numbers tell it.
    const Read read = readSheets(legLayer({row(5, {}, far(5)), row(2), row(1), row(4, {}, far(4)), row(3)}));
    QVERIFY2(read.refusal.isEmpty(), qPrintable(read.refusal));
    QCOMPARE(read.sheets.size(), size_t(2));
    const bool first = read.sheets[0].route == QLatin1String("Loop");
    const LegSheet &one = read.sheets[first ? 0 : 1], &other = read.sheets[first ? 1 : 0];
    QCOMPARE(one.route, QString("Loop"));
    QCOMPARE(numbers(one), (std::vector<int>{1, 2, 3}));
    QVERIFY(one.missing.empty());
    QCOMPARE(other.route, QString("Loop (2)"));
    QCOMPARE(numbers(other), (std::vector<int>{4, 5}));
    QCOMPARE(other.missing, (std::vector<int>{1, 2, 3}));
    VERIFY_SAYS(read.warnings.join('\n'), "several routes are called “Loop”");
  }

  // Parts of one route lie apart, and their warnings say how far, in the language of who made them: 50 m here.
  void partsOfARouteStayTogether_data() {
    QTest::addColumn<QString>("warnings");
    QTest::addColumn<bool>("together");
    QTest::newRow("English") << "Mind the bog. Starts 50 m from where the leg before ends." << true;
    QTest::newRow("German") << "Beginnt 50 m von dort entfernt, wo die vorige Teilstrecke endet." << true;
    QTest::newRow("other metres") << "Starts 500 m from where the leg before ends." << false;
    QTest::newRow("other words") << "Mind the bog." << false;
    QTest::newRow("minutes") << "Wait 50 minutes." << false;
    QTest::newRow("nothing") << "" << false;
  }
  void partsOfARouteStayTogether() {
    QFETCH(QString, warnings);
    QFETCH(bool, together);
    const Read read =
        readSheets(legLayer({row(1), row(2, {{"warnings", warnings}}, "LINESTRING(500250 5400000,500350 5400000)")}));
    QVERIFY2(read.refusal.isEmpty(), qPrintable(read.refusal));
    QCOMPARE(read.sheets.size(), size_t(together ? 1 : 2));
  }

  void legsInDisorderAreRefused() {
    std::vector<LegRow> rows;
    for (int leg = 1; leg <= 150; ++leg) // ten kilometres apart by turns
      rows.push_back(row(leg, {}, QStringLiteral("LINESTRING(500000 %1,500100 %1)").arg(5400000 + leg % 2 * 10000)));
    const Read read = readSheets(legLayer(rows));
    for (const char *word : {"INPUT", "Loop", "name"})
      QVERIFY2(read.refusal.contains(QLatin1String(word)), qPrintable(read.refusal));
  }

  void piecesOfALegStayTogether() {
    std::vector<LegRow> rows = rowsWithDetour();
    for (const LegRow &one : rowsWithDetour({{"walker", "Bo"}}))
      rows.push_back(one);
    std::reverse(rows.begin(), rows.end());
    const Read read = readSheets(layerWithDetour(rows));
    QVERIFY2(read.refusal.isEmpty(), qPrintable(read.refusal));
    QVERIFY2(read.warnings.isEmpty(), qPrintable(read.warnings.join('\n')));
    QCOMPARE(read.sheets.size(), size_t(2));
    for (const LegSheet &sheet : read.sheets) {
      QCOMPARE(sheet.route, QString("Loop"));
      QVERIFY(sheet.missing.empty());
      QCOMPARE(sheet.legs.size(), size_t(6));
      QCOMPARE(sheet.legCount(), size_t(2));
      QStringList labels;
      for (const SheetLeg &leg : sheet.legs)
        labels << leg.label();
      QCOMPARE(labels, (QStringList{"1a", "1b", "1c", "1d", "1e", "2"}));
      QCOMPARE(sheet.paces().value(), 52L + 26 + 39 + 26 + 39 + 130);
      const SheetPiece &past = sheet.legs[2].piece.value();
      QCOMPARE(past.part, QString("past"));
      QCOMPARE(past.turn, QString("left"));
      QCOMPARE(past.side, QString("right"));
      QCOMPARE(past.obstacle, QString("Tarn"));
      QCOMPARE(past.count_m.value(), 70.0);
      QCOMPARE(past.run_paces.value(), 91L);
      QCOMPARE(past.blocked_m.value(), 0.0);
      QVERIFY(!sheet.legs[5].in_pieces);
    }
  }

  // Routes of one name, each with a detour, are told apart as without.
  void piecesOfRoutesOfOneName() {
    std::vector<LegRow> rows = rowsWithDetour();
    for (const LegRow &one : rowsWithDetour({{"paces", 77}}))
      rows.push_back(one);
    const Read read = readSheets(layerWithDetour(rows));
    QVERIFY2(read.refusal.isEmpty(), qPrintable(read.refusal));
    QCOMPARE(read.sheets.size(), size_t(2));
    QCOMPARE(read.sheets[1].route, QString("Loop (2)"));
    QCOMPARE(read.sheets[1].legs.size(), size_t(6));
    QCOMPARE(read.sheets[1].legs[1].label(), QString("1b"));
  }

  void aLegOfWhichAPieceIsLacking_data() {
    QTest::addColumn<int>("lacking"); // the how many-eth row, from 0
    QTest::addColumn<bool>("useless");
    for (const bool useless : {false, true})
      for (int i = 0; i < 5; ++i)
        QTest::newRow(qPrintable(QStringLiteral("%1 %2").arg(useless ? "without paces" : "not there").arg(i)))
            << i << useless;
  }
  void aLegOfWhichAPieceIsLacking() {
    QFETCH(int, lacking);
    QFETCH(bool, useless);
    std::vector<LegRow> rows = rowsWithDetour();
    if (useless)
      rows[size_t(lacking)].values["paces"] = QVariant();
    else
      rows.erase(rows.begin() + lacking);
    const Read read = readSheets(layerWithDetour(rows));
    QVERIFY2(read.refusal.isEmpty(), qPrintable(read.refusal));
    QCOMPARE(read.sheets.size(), size_t(1));
    QCOMPARE(numbers(read.sheets.front()), std::vector<int>{2});
    QCOMPARE(read.sheets.front().missing, std::vector<int>{1});
    VERIFY_SAYS(read.warnings.join('\n'), "leg 1");
  }

  // They count from the start of a whole leg.
  void marksOfLegsInPiecesArePassedOver() {
    const Read read =
        readSheets(layerWithDetour(rowsWithDetour()), markLayer({{1, 1, 30, 39, ""}, {2, 1, 50, 65, ""}}));
    QVERIFY2(read.refusal.isEmpty(), qPrintable(read.refusal));
    for (size_t i = 0; i < 5; ++i)
      QVERIFY(read.sheets.front().legs[i].marks.empty());
    QCOMPARE(read.sheets.front().legs[5].marks.size(), size_t(1));
    VERIFY_SAYS(read.warnings.join('\n'), "1 mark(s)");
  }

  void legsOfNoUseArePassedOverAndTold() {
    const Read read = readSheets(
        legLayer({row(1), row(2, {{"paces", QVariant()}}), row(3), row(4, {}, "none"), row(5, {{"dist_m", QVariant()}}),
                  row(6, {}, "LINESTRING EMPTY"), row(0), legRow({{"leg", QVariant()}}, legLine(1)), row(2000000000)}));
    QVERIFY2(read.refusal.isEmpty(), qPrintable(read.refusal));
    QCOMPARE(numbers(read.sheets.front()), (std::vector<int>{1, 3}));
    QCOMPARE(read.sheets.front().missing, (std::vector<int>{2, 4, 5, 6}));
    const QString said = read.warnings.join('\n');
    for (const char *word : {"feature 2 has no paces", "feature 4 has no line", "feature 7 has no number", "7 feature"})
      QVERIFY2(said.contains(QLatin1String(word)), qPrintable(said));
  }

  void nothingLeft() {
    const Read none = readSheets(legLayer({}));
    VERIFY_SAYS(none.refusal, "no features");
    const Read useless = readSheets(legLayer({row(1, {{"paces", QVariant()}})}));
    VERIFY_SAYS(useless.refusal, "none of the features");
  }

  void lackingFieldsAreNamed() {
    const Read read = readSheets(legLayer({row(1)}, {"paces", "dial"}));
    for (const char *word : {"INPUT", "legs", "paces", "dial", "annotatelegs"})
      QVERIFY2(read.refusal.contains(QLatin1String(word)), qPrintable(read.refusal));
    const Layer points = layer("spots", "Point", "EPSG:32621", {field("name", FieldType::Text)}, {});
    const Read marks = readSheets(legLayer({row(1)}), points);
    for (const char *word : {"MARKS", "spots", "mark", "choosemarks"})
      QVERIFY2(marks.refusal.contains(QLatin1String(word)), qPrintable(marks.refusal));
  }

  void fieldsNobodyNeedsMayLack() {
    const Read read =
        readSheets(legLayer({row(1)}, {"grid_brg", "converg", "decl_err", "slope_m", "cover", "warnings"}));
    QVERIFY2(read.refusal.isEmpty(), qPrintable(read.refusal));
    QVERIFY(!read.sheets.front().legs.front().grid_bearing);
  }

  void legsFromText() { // as from CSV: every value is text
    QList<QgsField> fields;
    for (const QgsField &each : LegLayer::fields())
      fields << host::field(each.name(), FieldType::Text);
    const LegRow one = row(1, {{"date", "2026/11/25"}, {"dist_m", "100.0625"}});
    QVariantList values;
    for (const QgsField &each : fields)
      values << (one.values.contains(each.name()) ? QVariant(one.values.value(each.name()).toString()) : QVariant());
    const Read read = readSheets(layer("text", "LineString", "EPSG:32621", fields, {{wkt(legLine(1)), values}}));
    QVERIFY2(read.refusal.isEmpty(), qPrintable(read.refusal));
    const SheetLeg &leg = read.sheets.front().legs.front();
    QCOMPARE(leg.date, QDate(2026, 11, 25));
    QCOMPARE(leg.length_m.value(), 100.0625);
    QCOMPARE(leg.paces.value(), 130L);
  }

  void marksFindTheirLegs() {
    const Layer legs = legLayer({row(1), row(2), row(1, {{"walker", "Bo"}})});
    const Layer marks =
        markLayer({{1, 2, 100, 130, "Stump"}, {1, 1, 50, 65, ""}, {2, 1, 100, 130, ""}, {1, 1, 40, 60, "Pine", "Bo"}});
    const Read read = readSheets(legs, marks);
    QVERIFY2(read.refusal.isEmpty(), qPrintable(read.refusal));
    QVERIFY2(read.warnings.isEmpty(), qPrintable(read.warnings.join('\n')));
    const auto &first = read.sheets[0].legs[0].marks;
    QCOMPARE(first.size(), size_t(2));
    QCOMPARE(first[0].number, 1);
    QCOMPARE(first[0].paces.value(), 65L);
    QCOMPARE(first[1].name, QString("Stump"));
    QCOMPARE(first[1].at_m.value(), 100.0);
    QCOMPARE(read.sheets[0].legs[1].marks.size(), size_t(1));
    QCOMPARE(read.sheets[1].legs[0].marks.front().name, QString("Pine"));
  }

  void marksOfOtherLegsArePassedOver() {
    const Layer legs = legLayer({row(1)});
    const Layer marks = markLayer({{1, 1, 50, 65, ""},
                                   {7, 1, 50, 65, "no such leg"},
                                   {1, 2, 50, 65, "no such walker", "Zed"},
                                   {1, 3, 60, 65, "elsewhere", "Ann", "Loop", "out", "POINT(500160 5400200)"},
                                   {1, 4, 300, 400, "behind the end"}});
    const Read read = readSheets(legs, marks);
    QVERIFY2(read.refusal.isEmpty(), qPrintable(read.refusal));
    QCOMPARE(read.sheets.front().legs.front().marks.size(), size_t(1));
    VERIFY_SAYS(read.warnings.join('\n'), "4 mark(s)");
  }

  // To the right of a leg to the east is south.
  void marksBesideTheirLeg() {
    const Layer legs = legLayer({row(1)});
    const QString north = "POINT(500150 5400012)", south = "POINT(500150 5399988)";
    const Layer marks = markLayer({{1, 1, 50, 65, "right", "Ann", "Loop", "out", south, 12},
                                   {1, 2, 50, 65, "left", "Ann", "Loop", "out", north, -12},
                                   {1, 3, 50, 65, "wrong side", "Ann", "Loop", "out", north, 12}});
    const Read read = readSheets(legs, marks);
    QVERIFY2(read.refusal.isEmpty(), qPrintable(read.refusal));
    const auto &taken = read.sheets.front().legs.front().marks;
    QCOMPARE(taken.size(), size_t(2));
    QCOMPARE(taken[0].name, QString("right"));
    QCOMPARE(taken[1].name, QString("left"));
    VERIFY_SAYS(read.warnings.join('\n'), "1 mark(s)");
  }

  // The leg ran north when its marks were made.
  void marksOfALegThatWasSwungRound() {
    const Layer legs = legLayer({row(1)});
    const Layer marks = markLayer({{1, 1, 50, 65, "old", "Ann", "Loop", "out", "POINT(500100 5400050)"}});
    const Read read = readSheets(legs, marks);
    QVERIFY2(read.refusal.isEmpty(), qPrintable(read.refusal));
    QVERIFY(read.sheets.front().legs.front().marks.empty());
    VERIFY_SAYS(read.warnings.join('\n'), "1 mark(s)");
  }

  // From A (0, 0) over B (100, 0) to C (100, 100) and back: the second legs out and back both start at B.
  void marksWithoutDirection() {
    const QString a = "500000 5400000", b = "500100 5400000", c = "500100 5400100", pine = "POINT(500050 5400002)";
    const auto line = [](const QString &from, const QString &to) {
      return QStringLiteral("LINESTRING(%1, %2)").arg(from, to);
    };
    const QVariantMap back{{"direction", "back"}};
    const Layer legs =
        legLayer({row(1, {}, line(a, b)), row(2, {}, line(b, c)), row(1, back, line(c, b)), row(2, back, line(b, a))});
    for (const QStringList &without : {QStringList(), QStringList("direction")}) {
      const Layer marks = markLayer(
          {{1, 1, 50, 65, "Pine", "Ann", "Loop", "", pine, -2}, {2, 1, 50, 65, "Pine", "Ann", "Loop", "", pine, 2}},
          without);
      const Read read = readSheets(legs, marks);
      QVERIFY2(read.refusal.isEmpty(), qPrintable(read.refusal));
      QVERIFY2(read.warnings.isEmpty(), qPrintable(read.warnings.join('\n')));
      QCOMPARE(read.sheets.size(), size_t(2));
      QCOMPARE(read.sheets[0].legs[0].marks.size(), size_t(1));
      QVERIFY(read.sheets[0].legs[1].marks.empty() && read.sheets[1].legs[0].marks.empty());
      QVERIFY(read.sheets[1].back);
      QCOMPARE(read.sheets[1].legs[1].marks.size(), size_t(1));
    }
  }

  // In the middle of a leg both ways have their mark; that of the way out comes first.
  void marksInTheMiddleWithoutDirection() {
    const Layer legs = legLayer({row(1), row(1, {{"direction", "back"}}, "LINESTRING(500200 5400000,500100 5400000)")});
    const Layer marks = markLayer({{1, 1, 50, 65, ""}, {1, 1, 50, 70, ""}}, {"direction"});
    const Read read = readSheets(legs, marks);
    QVERIFY2(read.refusal.isEmpty(), qPrintable(read.refusal));
    QCOMPARE(read.sheets[0].legs[0].marks.size(), size_t(1));
    QCOMPARE(read.sheets[0].legs[0].marks[0].paces.value(), 65L);
    QCOMPARE(read.sheets[1].legs[0].marks.size(), size_t(1));
    QCOMPARE(read.sheets[1].legs[0].marks[0].paces.value(), 70L);
  }

  void marksOfRoutesOfOneName() {
    const QString other = "LINESTRING(510100 5400000,510200 5400000)";
    const Layer legs = legLayer({row(1), row(1, {}, other)});
    const Layer marks =
        markLayer({{1, 1, 50, 65, "second", "Ann", "Loop", "out", "POINT(510150 5400000)"}, {1, 1, 50, 65, "first"}});
    const Read read = readSheets(legs, marks);
    QVERIFY2(read.refusal.isEmpty(), qPrintable(read.refusal));
    QCOMPARE(read.sheets.size(), size_t(2));
    QCOMPARE(read.sheets[0].legs.front().marks.size(), size_t(1));
    QCOMPARE(read.sheets[0].legs.front().marks.front().name, QString("first"));
    QCOMPARE(read.sheets[1].legs.front().marks.size(), size_t(1));
    QCOMPARE(read.sheets[1].legs.front().marks.front().name, QString("second"));
  }

  void placesBeyondTheEarth() {
    const Layer beyond = legLayer({row(1, {}, "LINESTRING(1e30 1e30,2e30 2e30)")});
    const Read read = readSheets(beyond);
    VERIFY_SAYS(read.refusal, "none of the features");
    VERIFY_SAYS(read.warnings.join('\n'), "no place on the Earth");
  }

  void namesThatLookLikePlaceholders() {
    Layer legs = legLayer({row(1), row(2, {{"paces", QVariant()}})});
    legs->setName("100%2 %3");
    const Read read = readSheets(legs);
    VERIFY_SAYS(read.warnings.join('\n'), "100%2 %3");
  }

  void cancelled() {
    Ear ear;
    ear.cancel();
    const Layer legs = legLayer({row(1)});
    QVERIFY_EXCEPTION_THROWN(readSheets(legs, nullptr, &ear), Cancelled);
  }
};

BRUSHLINE_HOST_TEST_MAIN(LegSheetsTest)
#include "leg_sheets_test.moc"
