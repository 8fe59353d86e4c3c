// SPDX-License-Identifier: GPL-2.0-or-later
#include "legs/annotate_run.h"
#include "support/comma_locale.h"
#include "support/random.h"
#include "walking/pacing.h"

#include <QFile>

#include <cmath>

using namespace brushline;
using namespace brushline::test;

namespace {

const QString id = QStringLiteral("brushline:calibratepaces");

Layer tries(const std::vector<QVariantList> &rows) {
  return table("tries",
               {field("who", FieldType::Text), field("m", FieldType::Real), field("n", FieldType::Real),
                field("slope", FieldType::Real)},
               rows);
}
// All columns as text, as a spreadsheet gives them.
Layer texts(const std::vector<QVariantList> &rows) {
  return table("texts",
               {field("who", FieldType::Text), field("m", FieldType::Text), field("n", FieldType::Text),
                field("slope", FieldType::Text)},
               rows);
}

QVariantMap parameters(const Layer &layer, int kind = 0, bool slope = false) {
  QVariantMap parameters{{"INPUT", valueOf(layer)},    {"WALKER_FIELD", "who"}, {"DISTANCE_FIELD", "m"},
                         {"COUNT_FIELD", "n"},         {"PACE_KIND", kind},     {"OUTPUT", "TEMPORARY_OUTPUT"},
                         {"TRIES", "TEMPORARY_OUTPUT"}};
  if (slope)
    parameters["SLOPE_FIELD"] = "slope";
  return parameters;
}

std::vector<QVariantList> over(const char *who, double metres, const std::vector<double> &counts) {
  std::vector<QVariantList> rows;
  for (const double count : counts)
    rows.push_back({who, metres, count, 0.0});
  return rows;
}

std::vector<QVariantList> together(std::vector<std::vector<QVariantList>> parts) {
  std::vector<QVariantList> rows;
  for (const auto &part : parts)
    rows.insert(rows.end(), part.begin(), part.end());
  return rows;
}

Layer again(const Output &output, const QString &type = "None") {
  QList<QgsField> fields;
  for (const QgsField &each : output.fields)
    fields << each;
  std::vector<Row> rows;
  for (const OutputRow &row : output.rows) {
    QVariantList values;
    for (const QgsField &each : fields)
      values << row.values.value(each.name());
    rows.push_back({row.geometry, values});
  }
  return layer("walkers", type, QString(), fields, rows);
}

} // namespace

class CalibratePacesAlgorithmTest : public QObject {
  Q_OBJECT
private slots:
  // By hand: mean 120, sd sqrt(10 / 3), t of 3 degrees of freedom 3.1824.
  void evidence() {
    const Layer input = tries(over("Ann", 100, {121, 119, 122, 118}));
    const Outcome outcome = run(id, parameters(input));
    VERIFY_RAN(outcome);
    const OutputRow &row = outcome.rows()[0];
    QCOMPARE(outcome.rows().size(), size_t(1));
    QCOMPARE(outcome.output().type, host::noGeometry);
    QCOMPARE(row.text("walker"), QStringLiteral("Ann"));
    QCOMPARE(row.number("paces_100m"), 120.0);
    QCOMPARE(row.number("pace_kind"), 0.0);
    const double sd = std::sqrt(10.0 / 3);
    VERIFY_NEAR(row.number("sd_100m"), sd, 1e-9, "sd");
    VERIFY_NEAR(row.number("lo_100m"), 120 - 3.18244631 * sd / 2, 1e-6, "lo");
    VERIFY_NEAR(row.number("hi_100m"), 120 + 3.18244631 * sd / 2, 1e-6, "hi");
    VERIFY_NEAR(row.number("pace_err"), 2.036, 1e-3, "error");
    VERIFY_NEAR(row.number("step_m"), 100 / 120.0, 1e-12, "step");
    QCOMPARE(row.number("tries"), 4.0);
    QCOMPARE(row.number("used"), 4.0);
    QCOMPARE(row.number("flagged"), 0.0);
    QCOMPARE(row.number("paced_m"), 400.0);
    for (const char *name : {"brg_err", "eye_m", "speed_f", "slope_k", "slope_lo", "slope_hi"})
      QVERIFY2(row.null(name), name);
    QVERIFY2(row.text("note").contains("4 of 4"), qPrintable(row.text("note")));
    for (const QgsField &each : outcome.output().fields)
      QVERIFY2(each.name().size() <= 10, qPrintable(each.name()));
    QCOMPARE(outcome.results["WALKER_COUNT"].toInt(), 1);
    QCOMPARE(outcome.results["TRIES_USED"].toInt(), 4);
    QVERIFY(outcome.warnings.isEmpty());
  }

  // What comes out is taken as WALKERS, and the walker counts over a leg what was counted over such a distance.
  void readBackByAnnotateLegs_data() {
    QTest::addColumn<int>("kind");
    QTest::addColumn<QString>("ending");
    for (const int kind : {0, 1})
      for (const char *ending : {"", "csv", "gpkg"})
        QTest::addRow("%d %s", kind, ending) << kind << ending;
  }
  void readBackByAnnotateLegs() {
    QFETCH(int, kind);
    QFETCH(QString, ending);
    // Single steps over 100 m, from long legs to a small child; around the numbers that could be read two ways.
    const std::vector<double> level = {91, 98, 100, 108, 110, 110.5, 112, 130, 178, 180, 182, 210, 230};
    std::vector<QVariantList> rows;
    for (size_t i = 0; i < level.size(); ++i)
      for (const double stray : {-1.0, 0.0, 1.0})
        rows.push_back({QStringLiteral("w%1").arg(i), 300, (level[i] * 3 + stray) / (kind ? 2 : 1), 0.0});
    const Layer input = tries(rows);
    QTemporaryDir folder;
    QVariantMap given = parameters(input, kind);
    if (!ending.isEmpty())
      given["OUTPUT"] = folder.filePath("walkers." + ending);
    const Outcome outcome = run(id, given);
    VERIFY_RAN(outcome);
    QCOMPARE(outcome.rows().size(), level.size());
    const Layer table = again(outcome.output());
    const Layer routes = routesOf("EPSG:4326", {lineText({place(48, -56), onwards(place(48, -56), 77, 300)})});
    const Outcome legs = annotate({{"INPUT", valueOf(routes)},
                                   {"PACE_KIND", 1 - kind},
                                   {"WALKERS", ending.isEmpty() ? valueOf(table) : given["OUTPUT"]}});
    VERIFY_RAN(legs);
    QCOMPARE(legs.rows().size(), level.size());
    for (size_t i = 0; i < level.size(); ++i) {
      const double counted = level[i] * 3 / (kind ? 2 : 1);
      QVERIFY2(std::abs(legs.rows()[i].number("paces") - counted) <= 0.5 + 1e-6, qPrintable(QString::number(level[i])));
      QCOMPARE(legs.rows()[i].text("walker"), outcome.rows()[i].text("walker"));
      // along_m is the error of pacing alone.
      VERIFY_NEAR(legs.rows()[i].number("along_m"), 3 * outcome.rows()[i].number("pace_err"), 1e-3, "error");
    }
  }

  void doublePacesThatCouldBeMisread() {
    const Layer input = tries(together({over("Long", 100, {50, 51, 49}), over("Short", 100, {65, 66, 64})}));
    const Outcome outcome = run(id, parameters(input, 1));
    VERIFY_RAN(outcome);
    const OutputRow &first = outcome.rows()[0], &second = outcome.rows()[1];
    QCOMPARE(first.number("paces_100m"), 50.0);
    VERIFY_NEAR(first.number("sd_100m"), 1, 1e-12, "in double paces");
    QVERIFY(first.number("lo_100m") < 50 && first.number("hi_100m") > 50 && first.number("hi_100m") < 60);
    QVERIFY2(first.text("note").contains("double paces here"), qPrintable(first.text("note")));
    VERIFY_NEAR(first.number("step_m"), 1, 1e-12, "step");
    QCOMPARE(second.number("paces_100m"), 130.0);
    VERIFY_NEAR(second.number("sd_100m"), 2, 1e-12, "in single steps");
  }

  void oneTryAndTwo() {
    const Layer input = tries(together({over("One", 100, {130}), over("Two", 100, {130, 132})}));
    const Outcome outcome = run(id, parameters(input));
    VERIFY_RAN(outcome);
    for (const char *name : {"pace_err", "sd_100m", "lo_100m", "hi_100m"}) {
      QVERIFY2(outcome.rows()[0].null(name), name);
      QVERIFY2(!outcome.rows()[1].null(name), name);
    }
    QVERIFY(outcome.rows()[0].text("note").contains("no error"));
    QVERIFY(outcome.rows()[1].text("note").contains("wide"));
    // The run's own error serves.
    const Layer table = again(outcome.output());
    const Layer routes = routesOf("EPSG:4326", {lineText({place(48, -56), onwards(place(48, -56), 77, 300)})});
    const Outcome legs = annotate({{"INPUT", valueOf(routes)}, {"PACE_ERROR", 7}, {"WALKERS", valueOf(table)}});
    VERIFY_RAN(legs);
    VERIFY_NEAR(legs.rows()[0].number("along_m"), 21, 1e-3, "7 percent");
  }

  void flaggedAndTold() {
    const Layer input = tries({{"Ann", 100, 124, 0},
                               {"Ann", 100, 62, 0},
                               {"Ann", 200, 250, 0},
                               {"Ann", 100, 125, 0},
                               {"Ann", 200, 76, 0},
                               {"Ann", 100, 200, 60}});
    const Outcome outcome = run(id, parameters(input, 0, true));
    VERIFY_RAN(outcome);
    QCOMPARE(outcome.rows()[0].number("used"), 3.0);
    QCOMPARE(outcome.rows()[0].number("flagged"), 3.0);
    VERIFY_NEAR(outcome.rows()[0].number("paces_100m"), 499 / 4.0, 1e-12, "without them");
    const QString note = outcome.rows()[0].text("note");
    for (const char *word : {"3 of 6", "half the others' count", "feet", "percent"})
      QVERIFY2(note.contains(word), qPrintable(note));
    QVERIFY(outcome.warnings.join(' ').contains(note));
    const auto &judged = outcome.rows("TRIES");
    QCOMPARE(outcome.output("TRIES").texts("flag"), (QStringList{"", "half", "", "", "feet", "too steep"}));
    QCOMPARE(outcome.output("TRIES").texts("used"), (QStringList{"1", "0", "1", "1", "0", "0"}));
    QCOMPARE(outcome.output("TRIES").texts("try"), (QStringList{"1", "2", "3", "4", "5", "6"}));
    QCOMPARE(judged[1].number("steps_100m"), 62.0);
    VERIFY_NEAR(judged[1].number("resid_pct"), 100 * (62 / 124.75 - 1), 1e-9, "off");
    QVERIFY(judged[0].null("reason") && judged[1].text("reason").startsWith("Left out"));
    QCOMPARE(judged[2].number("count"), 250.0);
    QCOMPARE(judged[2].number("dist_m"), 200.0);
    QCOMPARE(judged[5].number("slope_deg"), 60.0);
    QCOMPARE(judged[0].number("row"), 1.0);
  }

  void slopes() {
    Random random(3);
    std::vector<QVariantList> rows;
    for (const char *who : {"table", "flat"})
      for (const double slope : {0.0, 0.0, 10.0, 12.0, 15.0, -10.0, -15.0, 5.0}) {
        const double effect = *who == 't' ? 1 / stepLengthRatio(Angle::degrees(slope)) : 1;
        rows.push_back({who, 100, 130 * effect * (1 + random.between(-0.005, 0.005)), slope});
      }
    rows.push_back({"some", 100, 130, 0});
    rows.push_back({"some", 100, 160, 10});
    const Layer input = tries(rows);
    const Outcome outcome = run(id, parameters(input, 0, true));
    VERIFY_RAN(outcome);
    const OutputRow &table = outcome.rows()[0], &flat = outcome.rows()[1], &some = outcome.rows()[2];
    QVERIFY(table.number("slope_lo") < 1 && table.number("slope_hi") > 1);
    VERIFY_NEAR(table.number("slope_k"), 1, 0.1, "k");
    QVERIFY(flat.number("slope_lo") < 0 && flat.number("slope_hi") > 0 && flat.number("slope_hi") < 0.3);
    QVERIFY2(flat.text("note").contains("does not hold for this walker"), qPrintable(flat.text("note")));
    VERIFY_NEAR(flat.number("paces_100m"), 130, 1, "level");
    QVERIFY(some.null("slope_k"));
    QVERIFY2(some.text("note").contains("1 sloped try(s) brought to the level"), qPrintable(some.text("note")));
    // Without the field every try is taken as level.
    const Outcome level = run(id, parameters(input));
    VERIFY_RAN(level);
    VERIFY_NEAR(level.rows()[2].number("paces_100m"), 145, 1e-9, "290 over 200 m");
  }

  void namesOfOneWalker() {
    const Layer input = tries({{"Ann  Lee", 100, 120, 0},
                               {" ann lee ", 100, 122, 0},
                               {"ANN LEE", 100, 121, 0},
                               {QString::fromUtf8("Zo\u00eb"), 100, 140, 0},
                               {QString::fromUtf8("ZOE\u0308"), 100, 142, 0},
                               {"Ann", 100, 150, 0}});
    const Outcome outcome = run(id, parameters(input));
    VERIFY_RAN(outcome);
    QCOMPARE(outcome.output().texts("walker"), (QStringList{"Ann Lee", QString::fromUtf8("Zo\u00eb"), "Ann"}));
    QCOMPARE(outcome.output().texts("tries"), (QStringList{"3", "2", "1"}));
    QVERIFY(outcome.infos.join(' ').contains("taken for one"));
  }

  void textsAreRead() {
    const Layer numbers = tries({{"Ann", 100, 124, 3}, {"Ann", 200.5, 250.5, -4}});
    const Layer words = texts({{"Ann", "100", " 124 ", "3"}, {"Ann", "200.5", "250.5", "-4.0"}});
    const Outcome one = run(id, parameters(numbers, 0, true)), other = run(id, parameters(words, 0, true));
    VERIFY_RAN(one);
    VERIFY_RAN(other);
    QVERIFY(one.output().sameBits(other.output()));
    QVERIFY(one.output("TRIES").sameBits(other.output("TRIES")));
    const CommaLocale comma;
    QVERIFY(one.output().sameBits(run(id, parameters(words, 0, true)).output()));
  }

  void badRowsArePassedOver() {
    const QVariant null;
    const Layer input = texts({{"Ann", "100", "62,5", "0"},
                               {"Ann", "100", "many", "0"},
                               {"Ann", "100", null, "0"},
                               {"Ann", "0", "120", "0"},
                               {"Ann", "-100", "120", "0"},
                               {"Ann", "100", "-1", "0"},
                               {"Ann", "100", "nan", "0"},
                               {"Ann", "inf", "120", "0"},
                               {"", "100", "120", "0"},
                               {null, "100", "120", "0"},
                               {"  ", "100", "120", "0"},
                               {"Ann", "100", "0", "0"},
                               {"Ann", "100", "120", null},
                               {"Ann", "100", "120", "90"},
                               {"Ann", "100", "120", "steep"},
                               {"Ann", "1,000", "1200", "0"},
                               {"Ann", "1e9", "120", "0"},
                               {"Ann", "100", "120", "0"},
                               {"Ann", "100", "122", "0"}});
    const Outcome outcome = run(id, parameters(input, 0, true));
    VERIFY_RAN(outcome);
    QCOMPARE(outcome.rows().size(), size_t(1));
    QCOMPARE(outcome.rows()[0].number("tries"), 2.0);
    QCOMPARE(outcome.rows()[0].number("paces_100m"), 121.0);
    QCOMPARE(outcome.warnings.size(), 18);
    const QString said = outcome.warnings.join('\n');
    for (const char *word : {"feature 1 passed over", "“62,5”: write numbers with a decimal point",
                             "“many”, which is no number", "its count is empty", "its distance is 0", "names no walker",
                             "write 0 for level ground", "degrees, not percent", "17 row(s)"})
      QVERIFY2(said.contains(QString::fromUtf8(word)), qPrintable(said));
  }

  void reasonsAreNotWithoutEnd() {
    std::vector<QVariantList> rows = over("Ann", 100, {120, 121});
    for (int i = 0; i < 500; ++i)
      rows.push_back({"Ann", 100, -1, 0});
    const Outcome outcome = run(id, parameters(tries(rows)));
    VERIFY_RAN(outcome);
    QCOMPARE(outcome.warnings.size(), 21);
    QVERIFY(outcome.warnings.last().contains("500 row(s)"));
  }

  // Left out, not written with an empty number, for which WALKERS would take the usual one.
  void walkersWithoutANumber() {
    const Layer input = tries(together({over("Ann", 100, {120, 121}),
                                        over("Bo", 100, {124, 62}),
                                        over("Cy", 100, {38, 39, 38}),
                                        {{"Di", 100, 200, 50}}}));
    const Outcome outcome = run(id, parameters(input, 0, true));
    VERIFY_RAN(outcome);
    QCOMPARE(outcome.output().texts("walker"), (QStringList{"Ann"}));
    const QString said = outcome.warnings.join('\n');
    for (const char *word : {"“Bo” is left out: the tries do not agree", "“Cy” is left out: steps of 2.61 m",
                             "“Di” is left out", "3 walker(s) left out in all"})
      QVERIFY2(said.contains(QString::fromUtf8(word)), qPrintable(said));
    QCOMPARE(outcome.rows("TRIES").size(), size_t(8));
    for (size_t i = 2; i < 8; ++i) {
      QCOMPARE(outcome.rows("TRIES")[i].number("used"), 0.0);
      QVERIFY(outcome.rows("TRIES")[i].null("resid_pct"));
      QVERIFY(outcome.rows("TRIES")[i].text("reason").contains("Walker left out"));
    }
  }

  void doubtfulSteps() {
    const Layer input = tries(together({over("Doubles", 100, {62, 63}), over("Tiny", 100, {300, 301})}));
    const Outcome outcome = run(id, parameters(input));
    VERIFY_RAN(outcome);
    QVERIFY(outcome.rows()[0].text("note").contains("run again with PACE_KIND 1"));
    QVERIFY(outcome.rows()[1].text("note").contains("small child"));
    QCOMPARE(outcome.warnings.size(), 2);
  }

  void nothingLeftFails_data() {
    QTest::addColumn<int>("which");
    QTest::newRow("no rows") << 0;
    QTest::newRow("no good rows") << 1;
    QTest::newRow("no walker with a number") << 2;
  }
  void nothingLeftFails() {
    QFETCH(int, which);
    const std::vector<std::vector<QVariantList>> inputs = {{}, {{"Ann", 0, 100, 0}}, over("Ann", 100, {124, 62})};
    const Layer input = tries(inputs[size_t(which)]);
    QTemporaryDir folder;
    QVariantMap given = parameters(input);
    given["OUTPUT"] = folder.filePath("walkers.gpkg");
    given["TRIES"] = folder.filePath("tries.csv");
    const Outcome outcome = run(id, given);
    QVERIFY(outcome.accepted && !outcome.ok);
    QVERIFY(!outcome.errors.isEmpty());
    QVERIFY(!QFile::exists(folder.filePath("walkers.gpkg")) && !QFile::exists(folder.filePath("tries.csv")));
  }

  void refused() {
    const Layer input = tries(over("Ann", 100, {120}));
    for (const char *key : {"WALKER_FIELD", "DISTANCE_FIELD", "COUNT_FIELD"}) {
      QVariantMap given = parameters(input);
      given.remove(key);
      const Outcome lacking = run(id, given);
      QVERIFY2(!lacking.accepted && lacking.refusal.contains(key), qPrintable(lacking.refusal));
      given[key] = "nobody";
      const Outcome wrong = run(id, given);
      QVERIFY2(!wrong.accepted && wrong.refusal.contains("who, m, n, slope"), qPrintable(wrong.refusal));
    }
    QVariantMap given = parameters(input, 2);
    QVERIFY(!run(id, given).accepted);
    given["INPUT"] = "nowhere.csv";
    QVERIFY(!run(id, given).accepted);
  }

  void triesOnRequest() {
    const Layer input = tries(over("Ann", 100, {120, 122}));
    QVariantMap given = parameters(input);
    given.remove("TRIES");
    const Outcome outcome = run(id, given);
    VERIFY_RAN(outcome);
    QVERIFY(outcome.outputs.find("TRIES") == outcome.outputs.end());
  }

  void manyWalkers() {
    Random random(9);
    std::vector<QVariantList> rows;
    for (int i = 0; i < 300000; ++i)
      rows.push_back({QStringLiteral("walker %1").arg(i % 3000), 100 + 50 * (i % 5),
                      (1.3 + random.between(-0.05, 0.05)) * (100 + 50 * (i % 5)), double(i % 20)});
    const Layer input = tries(rows);
    QVariantMap given = parameters(input, 0, true);
    const Outcome outcome = run(id, given, {nullptr, nullptr, true, false});
    VERIFY_RAN(outcome);
    QCOMPARE(outcome.rows().size(), size_t(3000));
    QCOMPARE(outcome.rows("TRIES").size(), size_t(300000));
    qInfo("%.2f s", outcome.seconds);
    QVERIFY(outcome.seconds < 30);
  }

  void cancelled() {
    const Layer input = tries(over("Ann", 100, std::vector<double>(5000, 120)));
    QTemporaryDir folder;
    QVariantMap given = parameters(input);
    given["OUTPUT"] = folder.filePath("walkers.gpkg");
    Ear ear;
    ear.cancel();
    const Outcome outcome = run(id, given, {nullptr, &ear, false, true});
    QVERIFY(outcome.results.isEmpty());
    QVERIFY(!QFile::exists(folder.filePath("walkers.gpkg")));
  }
};

BRUSHLINE_HOST_TEST_MAIN(CalibratePacesAlgorithmTest)
#include "calibrate_paces_algorithm_test.moc"
