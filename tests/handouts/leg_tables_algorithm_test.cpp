// SPDX-License-Identifier: GPL-2.0-or-later
// Check values: what the rows that go in say; distances to keep from iron and current: US Army, FM 3-25.26, section
// 9-3, read in copies. leg_tables_files_test.sh puts the files before other programs.
#include "handouts/cautions_host.h"
#include "handouts/leg_csv_host.h"
#include "handouts/leg_rows.h"
#include "handouts/sheet_words_host.h"
#include "support/cancelled_run.h"
#include "support/comma_locale.h"
#include "support/full_disk.h"
#include "support/random.h"

#include <QTranslator>
#include <QUrl>

#include <cstring>
#include <tuple>

using namespace brushline;
using namespace brushline::test;

namespace {

const QString id = QStringLiteral("brushline:legtables");

LegRow row(int leg, QVariantMap others = {}, const QString &line = QString()) {
  others["leg"] = leg;
  return legRow(others, line);
}

// A run into a folder of its own.
struct Tables {
  QTemporaryDir folder;
  Outcome outcome;

  explicit Tables(const Layer &legs, QVariantMap parameters = {}, const Surroundings &surroundings = {}) {
    parameters["INPUT"] = valueOf(legs);
    if (!parameters.contains("FOLDER"))
      parameters["FOLDER"] = folder.path();
    outcome = run(id, parameters, surroundings);
  }
  QStringList files() const {
    return QDir(folder.path())
        .entryList(QDir::AllEntries | QDir::Hidden | QDir::System | QDir::NoDotAndDotDot, QDir::Name);
  }
  QByteArray bytes(const QString &name) const {
    QFile file(folder.filePath(name));
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
  }
  QString text(const QString &name) const { return QString::fromUtf8(bytes(name)); }
  QString page() const { return text("Loop - Ann.html"); }
};

void put(const QString &path, const QByteArray &content) {
  QFile file(path);
  if (!file.open(QIODevice::WriteOnly) || file.write(content) != content.size())
    qFatal("cannot write %s", qPrintable(path));
}

// The files that a page links to, as a browser finds them.
QStringList linked(const QString &page) {
  QStringList files;
  auto found = QRegularExpression("href=\"([^\"]*)\"").globalMatch(page);
  while (found.hasNext())
    files << QUrl::fromPercentEncoding(found.next().captured(1).toLatin1());
  return files;
}

// A page's words, without markup.
QString wordsOf(QString page) {
  page.remove(QRegularExpression("<style>.*</style>", QRegularExpression::DotMatchesEverythingOption));
  page.replace(QRegularExpression("<[^>]*>"), " ");
  page.replace("&lt;", "<").replace("&gt;", ">").replace("&quot;", "\"").replace("&amp;", "&");
  return page.replace(QChar(QChar::Nbsp), ' ').simplified();
}

bool sameBits(double a, double b) { return std::memcmp(&a, &b, sizeof a) == 0; }

const QStringList realFields = {"true_brg", "grid_brg",  "mag_brg",   "converg", "decl",    "decl_err",
                                "dial",     "back_dial", "dist_m",    "slope_m", "climb_m", "drop_m",
                                "walk_min", "sight_m",   "spacing_m", "drift_m", "along_m"};

// Legs whose numbers need all their digits.
Layer crookedLegs(int count) {
  Random random(31);
  std::vector<LegRow> rows;
  for (int i = 1; i <= count; ++i) {
    LegRow one = row(i, {{"paces", 100 + i}});
    for (const QString &field : realFields)
      one.values[field] = random.between(-1, 1) * std::pow(10, std::floor(random.between(-20, 20)));
    if (i == 1) {
      one.values["true_brg"] = 0.1 + 0.2;
      one.values["grid_brg"] = -0.0;
      one.values["mag_brg"] = 5e-324;
      one.values["converg"] = 1.7976931348623157e308;
      one.values["decl"] = 1e22;
      one.values["dist_m"] = 1e23;
    }
    one.values["dist_m"] = std::abs(one.values["dist_m"].toDouble());
    rows.push_back(one);
  }
  return legLayer(rows);
}

// Names that could do harm.
const QStringList nastyNames = {"../../etc/passwd",
                                "/absolute",
                                "C:\\Windows\\x",
                                "a/b\\c:d*e?f\"g<h>i|j",
                                "CON",
                                "aux.txt",
                                "index",
                                "INDEX",
                                ".",
                                "..",
                                ".hidden",
                                "-rf",
                                "~root",
                                "%2e%2e%2fx",
                                "50%1%2%3",
                                "#anchor?query=1&x=2",
                                "trailing. ",
                                QString(300, 'n'),
                                "<script>alert(1)</script>",
                                "\"><img src=x onerror=alert(1)>",
                                "' onload='x",
                                "&lt;b&gt; &amp; &#0;",
                                "]]>--><!--",
                                "=cmd|' /C calc'!A0",
                                "+1+1",
                                "-2+3",
                                "@SUM(A1)",
                                "\t=1+1",
                                "loop;=1+1",
                                "say \"hi\", twice",
                                "two\nlines\r\nhere",
                                QString::fromUtf8("🦊 fox 👩‍👩‍👧"),
                                QString::fromUtf8("مسار النهر"),
                                QString::fromUtf8("שביל האורן"),
                                QString::fromUtf8("abc\u202Egnp.exe"),
                                QString::fromUtf8("\u2067isolate"),
                                QString::fromUtf8("＝1+1"),
                                QString::fromUtf8("Ørret – Å"),
                                QString(QChar(0xD83D)) + "half",
                                QString::fromUtf8("nul\0in", 6),
                                QString("bell\a"),
                                QString::fromUtf8("\uFFFE\uFDD0")};

Layer nastyLegs(const QStringList &names = nastyNames) {
  std::vector<LegRow> rows;
  for (const QString &name : names)
    for (const QString &walker : {name, QString("Ann")})
      rows.push_back(row(1, {{"route", name},
                             {"walker", walker},
                             {"from_name", name},
                             {"to_name", name},
                             {"cover", name},
                             {"warnings", name}}));
  return legLayer(rows);
}

} // namespace

#define VERIFY_RAN(tables) QVERIFY2((tables).outcome.ok, qPrintable((tables).outcome.said()))
#define VERIFY_HAS(text, part) QVERIFY2((text).contains(part), qPrintable(QString(part) + " is lacking in: " + (text)))
#define VERIFY_LACKS(text, part) QVERIFY2(!(text).contains(part), qPrintable(QString(part) + " is in: " + (text)))

class LegTablesAlgorithmTest : public QObject {
  Q_OBJECT

private slots:
  // --- which files ---------------------------------------------------------------------------------------------------

  void filesByFormat_data() {
    QTest::addColumn<QVariant>("format");
    QTest::addColumn<QStringList>("files");
    const QStringList pages{"Loop - Ann - back.html", "Loop - Ann.html", "Loop - Bo.html", "index.html"};
    const QStringList csv{"Loop - Ann - back.csv", "Loop - Ann.csv", "Loop - Bo.csv", "index.html"};
    QStringList both = pages + csv;
    both.removeDuplicates();
    both.sort();
    QTest::newRow("CSV") << QVariant(0) << csv;
    QTest::newRow("HTML") << QVariant(1) << pages;
    QTest::newRow("both") << QVariant(2) << both;
    QTest::newRow("not given") << QVariant() << both;
  }
  void filesByFormat() {
    QFETCH(QVariant, format);
    QFETCH(QStringList, files);
    const Layer legs = legLayer({row(1), row(1, {{"walker", "Bo"}}), row(1, {{"direction", "back"}}), row(2)});
    QVariantMap parameters;
    if (format.isValid())
      parameters["FORMAT"] = format;
    const Tables tables(legs, parameters);
    VERIFY_RAN(tables);
    QCOMPARE(tables.files(), files);
    QCOMPARE(tables.outcome.results.value("FILE_COUNT").toInt(), files.size());
    QCOMPARE(tables.outcome.results.value("FOLDER").toString(), tables.folder.path());
    QCOMPARE(tables.outcome.results.value("INDEX").toString(), tables.folder.filePath("index.html"));
    QStringList links = linked(tables.text("index.html")) << "index.html";
    links.sort();
    QCOMPARE(links, files);
    VERIFY_HAS(tables.outcome.infos.join('\n'), QString("%1 file(s) written").arg(files.size()));
  }

  void everyoneHasTheirOwnNumbers() {
    const Layer legs = legLayer({row(1), row(1, {{"walker", "Bo"}, {"paces", 177}})});
    const Tables tables(legs);
    VERIFY_RAN(tables);
    VERIFY_HAS(tables.text("Loop - Ann.html"), ">130<");
    VERIFY_LACKS(tables.text("Loop - Ann.html"), "177");
    VERIFY_HAS(tables.text("Loop - Bo.html"), ">177<");
    VERIFY_HAS(tables.text("Loop - Bo.csv"), ",177,");
  }

  void withoutNames() {
    const Tables tables(legLayer({row(1, {{"walker", QVariant()}, {"route", QVariant()}})}));
    VERIFY_RAN(tables);
    QCOMPARE(tables.files(), (QStringList{"_.csv", "_.html", "index.html"}));
    VERIFY_HAS(wordsOf(tables.text("_.html")), "Route without a name");
  }

  void temporaryFolder() {
    const Tables tables(legLayer({row(1)}), {{"FOLDER", "TEMPORARY_OUTPUT"}});
    VERIFY_RAN(tables);
    const QString index = tables.outcome.results.value("INDEX").toString();
    QVERIFY2(QFileInfo(index).isAbsolute() && QFileInfo::exists(index), qPrintable(index));
  }

  void indexTellsSums() {
    const Layer legs =
        legLayer({row(1), row(2), row(1, {{"route", "Other"}, {"walker", "Bo"}, {"walk_min", QVariant()}})});
    const Tables tables(legs, {{"TITLE", "Autumn <camp>"}});
    VERIFY_RAN(tables);
    const QString words = wordsOf(tables.text("index.html"));
    VERIFY_HAS(words, "Autumn <camp>");
    VERIFY_HAS(words, "Loop – Ann out · 2 legs · 2026-11-25 200 m 260 5 min CSV");
    VERIFY_HAS(words, "Other – Bo out · 1 leg · 2026-11-25 100 m 130 CSV");
    VERIFY_HAS(words, "55 m");
  }

  // --- CSV -----------------------------------------------------------------------------------------------------------

  void csvByteByByte() {
    const Tables tables(legLayer({row(1, {{"from_name", "Camp, \"old\""}, {"true_brg", 0.1}})}));
    VERIFY_RAN(tables);
    QCOMPARE(
        tables.bytes("Loop - Ann.csv"),
        QByteArray("\xEF\xBB\xBF"
                   "route,leg,walker,direction,from_name,to_name,true_brg,grid_brg,mag_brg,converg,decl,decl_err,date,"
                   "dial,dial_text,back_dial,compass_pt,dist_m,slope_m,climb_m,drop_m,paces,walk_min,cover,sight_m,"
                   "spacing_m,marks,drift_m,along_m,warnings\r\n"
                   "Loop,1,Ann,out,\"Camp, \"\"old\"\"\",,0.1,90,105.75,-1.375,-17.125,0.38,2026-11-25,106,"
                   "106\xC2\xB0,286,ESE,100.04,,,,130,2.5,,,,2,3.7,5.2,\r\n"));
  }

  void csvHasAllFieldsOfLegs() {
    const Tables tables(legLayer({row(1)}));
    QCOMPARE(tables.text("Loop - Ann.csv").section("\r\n", 0, 0).split(','), LegLayer::fields().names());
  }

  void csvIsTheSameInEveryLocale() {
    const Layer legs = crookedLegs(20);
    const Tables plain(legs);
    const CommaLocale comma;
    QLocale::setDefault(QLocale(QLocale::German));
    const Tables german(legs);
    QLocale::setDefault(QLocale::c());
    VERIFY_RAN(german);
    for (const char *file : {"Loop - Ann.csv", "Loop - Ann.html", "index.html"})
      QCOMPARE(german.bytes(file), plain.bytes(file));
  }

  void csvIsReadBackBitByBit() {
    const Layer legs = crookedLegs(500);
    const Tables tables(legs);
    VERIFY_RAN(tables);
    QgsVectorLayer back(tables.folder.filePath("Loop - Ann.csv"), "back", "ogr"); // GDAL's reader, types found by it
    QVERIFY(back.isValid());
    const Output made = read(back), given = read(*legs);
    QCOMPARE(made.fields.names(), given.fields.names());
    QCOMPARE(made.rows.size(), given.rows.size());
    for (size_t i = 0; i < made.rows.size(); ++i) {
      for (const QString &field : realFields) {
        const double a = made.rows[i].values[field].toDouble(), b = given.rows[i].values[field].toDouble();
        if (given.rows[i].values[field].isNull())
          QVERIFY(made.rows[i].text(field.toLatin1()).isEmpty());
        else
          QVERIFY2(sameBits(a, b),
                   qPrintable(QString("%1, row %2: %3 %4").arg(field).arg(i).arg(a, 0, 'g', 17).arg(b, 0, 'g', 17)));
      }
      QCOMPARE(made.rows[i].number("paces"), given.rows[i].number("paces"));
      QCOMPARE(made.rows[i].text("dial_text"), QString::fromUtf8("106°"));
      QCOMPARE(made.rows[i]["date"].toDate(), QDate(2026, 11, 25));
    }
  }

  // Signs: OWASP, "CSV Injection" (from memory).
  void formulas_data() {
    QTest::addColumn<QString>("text");
    QTest::addColumn<QString>("written");
    QTest::newRow("equals") << "=1+1"
                            << "'=1+1";
    QTest::newRow("plus") << "+1"
                          << "'+1";
    QTest::newRow("minus") << "-1"
                           << "'-1";
    QTest::newRow("at") << "@SUM(A1)"
                        << "'@SUM(A1)";
    QTest::newRow("behind spaces") << "  =1"
                                   << "'  =1";
    QTest::newRow("behind a hard space") << QString::fromUtf8("\u00A0=1") << QString::fromUtf8("'\u00A0=1");
    QTest::newRow("behind what nobody sees") << QString::fromUtf8("\u200B=1") << QString::fromUtf8("'\u200B=1");
    QTest::newRow("full width") << QString::fromUtf8("＝1") << QString::fromUtf8("'＝1");
    QTest::newRow("full width plus") << QString::fromUtf8("＋1") << QString::fromUtf8("'＋1");
    QTest::newRow("full width minus") << QString::fromUtf8("－1") << QString::fromUtf8("'－1");
    QTest::newRow("full width at") << QString::fromUtf8("＠A") << QString::fromUtf8("'＠A");
    QTest::newRow("tab") << "\tx"
                         << "'\tx";
    QTest::newRow("CR") << "\rx"
                        << "'\rx";
    QTest::newRow("LF") << "\nx"
                        << "'\nx";
    QTest::newRow("next cell by semicolon") << "a;=1"
                                            << "a;'=1";
    QTest::newRow("next cell by tab") << "a\t=1"
                                      << "a\t'=1";
    QTest::newRow("next line") << "a\n=1"
                               << "a\n'=1";
    QTest::newRow("in the middle") << "a=1 - 2"
                                   << "a=1 - 2";
    QTest::newRow("name") << "Mill-End"
                          << "Mill-End";
    QTest::newRow("number") << "12"
                            << "12";
    QTest::newRow("nothing") << ""
                             << "";
    QTest::newRow("apostrophe") << "'t Hoff"
                                << "'t Hoff";
    QTest::newRow("placeholder") << "=%1"
                                 << "'=%1";
    QTest::newRow("backslash") << "=\\1"
                               << "'=\\1";
  }
  void formulas() {
    QFETCH(QString, text);
    QFETCH(QString, written);
    QCOMPARE(withoutFormula(text), written);
  }

  void formulasInCells() {
    const Tables tables(legLayer({row(1, {{"route", "=1+1"},
                                          {"walker", "@A"},
                                          {"from_name", "-x"},
                                          {"to_name", "+y"},
                                          {"cover", "=c"},
                                          {"warnings", "a;=1"},
                                          {"compass_pt", "=p"},
                                          {"dial_text", "=d"}})}));
    VERIFY_RAN(tables);
    const QString csv = tables.text("=1+1 - @A.csv");
    VERIFY_HAS(csv, "\r\n'=1+1,1,'@A,out,'-x,'+y,88.625,");
    VERIFY_HAS(csv, ",-1.375,-17.125,"); // numbers stay numbers
    VERIFY_HAS(csv, ",'=d,");
    VERIFY_HAS(csv, ",'=p,");
    VERIFY_HAS(csv, ",'=c,");
    VERIFY_HAS(csv, ",\"a;'=1\"\r\n");
  }

  // --- pages ---------------------------------------------------------------------------------------------------------

  void pageTellsTheLeg() {
    const Tables tables(legLayer({row(1, {{"from_name", "Camp"},
                                          {"to_name", "Split Boulder"},
                                          {"climb_m", 10.4},
                                          {"drop_m", 0.2},
                                          {"cover", "brush"},
                                          {"sight_m", 12.4},
                                          {"spacing_m", 9.9},
                                          {"warnings", "Mind the bog."}}),
                                  row(2, {{"walk_min", 75.0}, {"marks", 1}, {"compass_pt", QVariant()}})}),
                        {{"TITLE", "Autumn camp"}});
    VERIFY_RAN(tables);
    const QString page = tables.page(), words = wordsOf(page);
    VERIFY_HAS(words, "Autumn camp Loop Ann · direction: out · 2026-11-25");
    VERIFY_HAS(words, "2 legs · 200 m · 260 paces · 78 min (1 h 18 min)");
    VERIFY_HAS(words, "Start Turn back at Back by Told to");
    VERIFY_HAS(words,
               "Declination 17.1° west, give or take 0.4°, on 2026-11-25. The dial numbers are from magnetic north");
    VERIFY_HAS(words, "Leg Dial Paces Sight back Distance, time Done");
    VERIFY_HAS(words,
               "1 106° 130 286° 100 m 3 min ESE From Camp to Split Boulder brush 2 sightings, about 10 m apart "
               "a mark is clear to 12 m up 10 m, down <1 m may be off 4 m sideways, 5 m along Warning: Mind the bog.");
    VERIFY_HAS(words, "2 106° 130 286° 100 m 75 min 1 sighting may be off");
    VERIFY_HAS(words, "All 2 legs 260 200 m 78 min (1 h 18 min)");
    VERIFY_LACKS(words, "Marks at paces 1"); // none were given
  }

  void pageTellsMarks() {
    const Layer legs = legLayer({row(1)});
    const Layer marks = markLayer({{1, 1, 50, 65, ""}, {1, 2, 100, 130, "Lone <Pine>"}});
    const Tables tables(legs, {{"MARKS", valueOf(marks)}});
    VERIFY_RAN(tables);
    VERIFY_HAS(wordsOf(tables.page()), "Marks at paces 65 130 Lone <Pine>");
  }

  void pageIsWhole() {
    const Tables tables(legLayer({row(1)}));
    VERIFY_RAN(tables);
    for (const char *file : {"Loop - Ann.html", "index.html"}) {
      const QString page = tables.text(file);
      QVERIFY(page.startsWith("<!DOCTYPE html>\n<html lang=\"en\" dir=\"ltr\">\n"));
      VERIFY_HAS(page, "<meta charset=\"utf-8\">");
      VERIFY_HAS(page, "Content-Security-Policy\" content=\"default-src 'none';");
      VERIFY_HAS(page, "<meta name=\"viewport\"");
      VERIFY_HAS(page, "<caption>");
      VERIFY_HAS(page, "<th scope=\"col\"");
      VERIFY_HAS(page, "@media print"); // the style sheet is there
      for (const char *outside : {"<script", "<link", "<img", "<iframe", "http:", "https:", "url(", "@import", "src="})
        VERIFY_LACKS(page, outside);
      QVERIFY(!page.contains(QRegularExpression("<[^>]*\\son\\w+=")));
      VERIFY_LACKS(page, "SPDX");
      for (const char *figure :
           {"55 m", "18 m", "10 m", "180 degrees", "3200 mils", "200 gon", "turn back", "Tell someone",
            "qualified leader", "cliffs", "Walk a new course yourself", "whose land"})
        VERIFY_HAS(wordsOf(page), figure);
    }
  }

  void cautionsArePlain() {
    QVERIFY(Cautions::full().size() >= 6);
    const QString card = Cautions::onCard().join(' ');
    for (const char *word : {"iron", "Knives", "phones", "power lines", "sight back", "cliffs", "whose land",
                             "Local rules", "qualified leader"})
      VERIFY_HAS(card, word);
    for (const QString &caution : Cautions::full())
      VERIFY_LACKS(caution, QString("<"));
  }

  // A page tells the point of the compass in the letters that a card's dial has: west is O in French; in German E is
  // kept, as most dials sold there have it (common practice, no source). The layer's own field is English everywhere.
  void compassPointsInTheReadersLetters() {
    const auto point = [](const char *text) {
      SheetLeg leg;
      leg.compass_point = QString::fromUtf8(text);
      return SheetWords::compassPoint(leg);
    };
    QCOMPARE(point("WSW"), QStringLiteral("WSW"));
    for (const auto &[language, wsw, ene] :
         {std::tuple("fr", "OSO", "ENE"), std::tuple("de", "WSW", "ENE"), std::tuple("en", "WSW", "ENE")}) {
      QTranslator words;
      QVERIFY(words.load(QStringLiteral(":/brushline/translations/brushline_%1.qm").arg(QLatin1String(language))));
      QCoreApplication::installTranslator(&words); // taken out when it goes
      QCOMPARE(point("WSW"), QLatin1String(wsw));
      QCOMPARE(point("ENE"), QLatin1String(ene));
      for (const char *other : {"", "=p", "WEST", "North", "W by S"})
        QCOMPARE(point(other), QLatin1String(other));
    }
  }

  void northIsToldWhenItIsTheOnlyOne_data() {
    QTest::addColumn<double>("dial");
    QTest::addColumn<QString>("text");
    QTest::addColumn<QVariantMap>("others");
    QTest::addColumn<QString>("words");
    // Bearings: true 88.625, grid 90, magnetic 105.75.
    QTest::newRow("magnetic") << 106.0 << "106°" << QVariantMap() << "The dial numbers are from magnetic north";
    QTest::newRow("true") << 88.5 << "088.5°" << QVariantMap{{"grid_brg", 110.0}}
                          << "The dial numbers are from true north";
    QTest::newRow("grid") << 90.0 << "090°" << QVariantMap{{"true_brg", 70.0}}
                          << "The dial numbers are from grid north";
    QTest::newRow("mils") << 1880.0 << "1880 mil" << QVariantMap() << "The dial numbers are from magnetic north";
    QTest::newRow("gon") << 117.5 << "117.5 gon" << QVariantMap() << "The dial numbers are from magnetic north";
    QTest::newRow("two") << 89.0 << "089°" << QVariantMap{{"grid_brg", 89.2}}
                         << "do not tell for certain from which north the dial numbers are: true north or grid north";
    QTest::newRow("due east") << 90.0 << "090°" << QVariantMap{{"back_dial", 270.0}}
                              << "for certain from which north the dial numbers are: magnetic north or true north or "
                                 "grid north. Ask who made them.";
    // Grid north by the convergence, 88.625 + 1.375.
    QTest::newRow("no grid bearings") << 90.0 << "090°" << QVariantMap{{"back_dial", 271.0}, {"grid_brg", QVariant()}}
                                      << "The dial numbers are from grid north";
    QTest::newRow("none") << 300.0 << "300°" << QVariantMap() << "do not tell from which north the dial numbers are";
    QTest::newRow("no dial") << 0.0 << "" << QVariantMap{{"dial", QVariant()}} << "There are no numbers for the dial";
  }
  void northIsToldWhenItIsTheOnlyOne() {
    QFETCH(double, dial);
    QFETCH(QString, text);
    QFETCH(QVariantMap, others);
    QFETCH(QString, words);
    QVariantMap values{{"dial", dial}, {"dial_text", text}};
    for (auto other = others.begin(); other != others.end(); ++other)
      values[other.key()] = other.value();
    const Tables tables(legLayer({row(1, values)}));
    VERIFY_RAN(tables);
    VERIFY_HAS(wordsOf(tables.page()), words);
  }

  void declinationInWords_data() {
    QTest::addColumn<QVariant>("first");
    QTest::addColumn<QVariant>("second");
    QTest::addColumn<QString>("words");
    QTest::newRow("west") << QVariant(-17.04) << QVariant(-17.01) << "Declination 17.0° west, ";
    QTest::newRow("east") << QVariant(3.26) << QVariant(3.26) << "Declination 3.3° east, ";
    QTest::newRow("none to speak of") << QVariant(-0.02) << QVariant(0.01) << "Declination 0.0°, ";
    QTest::newRow("range") << QVariant(-0.3) << QVariant(0.4) << "Declination 0.3° west to 0.4° east, ";
    QTest::newRow("not known") << QVariant() << QVariant() << "Declination not known.";
  }
  void declinationInWords() {
    QFETCH(QVariant, first);
    QFETCH(QVariant, second);
    QFETCH(QString, words);
    const Tables tables(legLayer({row(1, {{"decl", first}}), row(2, {{"decl", second}})}));
    VERIFY_HAS(wordsOf(tables.page()), words);
  }

  void whatIsNotKnownIsLeftOut() {
    QVariantMap nothing;
    for (const char *field : {"decl_err", "date", "dial", "dial_text", "back_dial", "compass_pt", "walk_min", "marks",
                              "drift_m", "along_m", "mag_brg"})
      nothing[field] = QVariant();
    nothing["warnings"] = "No compass works here: too near the magnetic pole.";
    const Tables tables(legLayer({row(1, nothing)}));
    VERIFY_RAN(tables);
    const QString words = wordsOf(tables.page());
    VERIFY_HAS(words, "Ann · direction: out · day not known 1 leg · 100 m · 130 paces Start");
    VERIFY_HAS(words, "Declination 17.1° west, on a day not known.");
    VERIFY_HAS(words, "1 no number 130 100 m Warning: No compass works here");
    VERIFY_LACKS(words, "sightings,");
    VERIFY_LACKS(words, "nan");
    VERIFY_LACKS(words, "sideways");
  }

  void daysThatDiffer() {
    const Tables tables(legLayer({row(1), row(2, {{"date", QDate(2027, 1, 2)}}), row(3, {{"date", QVariant()}})}));
    VERIFY_HAS(wordsOf(tables.page()), "2026-11-25, 2027-01-02, a day that is not known");
  }

  void lackingLegsAreTold() {
    const Tables tables(legLayer({row(1), row(2, {{"paces", QVariant()}}), row(5), row(7, {}, "none")}));
    VERIFY_RAN(tables);
    const QString words = wordsOf(tables.page());
    VERIFY_HAS(words, "Legs 2–4, 6–7 are not in this table."); // above all
    QVERIFY(words.indexOf("Legs 2–4 are not in this table. Do not walk on past them") >
            words.indexOf("1 106° 130")); // and in its place
    VERIFY_HAS(words, "Legs 6–7 are not in this table.");
    VERIFY_HAS(words, "The 2 legs here 260");
    VERIFY_LACKS(words, "All 2 legs");
    VERIFY_HAS(wordsOf(tables.text("index.html")), "2 legs · without 2–4, 6–7 ·");
  }

  // What detourlegs makes: each row of the layer is one of the table, with all its fields; the page says what to do.
  void legsWithDetours() {
    const Layer routes = layer("routes", "LineString", "EPSG:32621", {field("route", FieldType::Text)},
                               {{wkt("LINESTRING(600000 5400000,600300 5400000,600300 5400200)"), {QString("Loop")}}});
    const Layer ponds =
        layer("ponds", "Polygon", "EPSG:32621", {field("name", FieldType::Text)},
              {{wkt("POLYGON((600100 5399980,600140 5399980,600140 5400020,600100 5400020,600100 5399980))"),
                {QString("<Tarn>")}}});
    const QTemporaryDir folder;
    const QString file = folder.filePath("legs.gpkg");
    const Outcome made = run("brushline:detourlegs", {{"INPUT", valueOf(routes)},
                                                      {"ROUTE_FIELD", "route"},
                                                      {"OBSTACLES", valueOf(ponds)},
                                                      {"DATE", "2026-06-01"},
                                                      {"OUTPUT", file}});
    QVERIFY2(made.ok, qPrintable(made.said()));
    const Output given = made.output();
    const auto &rows = given.rows;
    QCOMPARE(rows.size(), size_t(6)); // five pieces, and the second leg
    const Outcome outcome = run(id, {{"INPUT", file}, {"FOLDER", folder.filePath("out")}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QVERIFY2(outcome.warnings.isEmpty(), qPrintable(outcome.said()));
    QCOMPARE(outcome.results.value("FILE_COUNT").toInt(), 3);

    QgsVectorLayer back(folder.filePath("out/Loop.csv"), "back", "ogr");
    QVERIFY(back.isValid());
    const Output csv = read(back);
    QStringList names = given.fields.names();
    names.removeAll("fid");
    QCOMPARE(csv.fields.names(), names);
    QCOMPARE(csv.rows.size(), rows.size());
    for (size_t i = 0; i < rows.size(); ++i)
      for (const QString &name : names) {
        const QByteArray key = name.toLatin1();
        if (rows[i].null(key))
          QVERIFY2(csv.rows[i].text(key).isEmpty(), key);
        else if (given.fields.field(name).isNumeric())
          QVERIFY2(sameBits(csv.rows[i].number(key), rows[i].number(key)), key);
        else if (name != QLatin1String("date"))
          QCOMPARE(csv.rows[i].text(key), rows[i].text(key));
      }

    QFile page(folder.filePath("out/Loop.html"));
    QVERIFY(page.open(QIODevice::ReadOnly));
    const QString words = wordsOf(QString::fromUtf8(page.readAll()));
    const QStringList labels{"1a", "1b", "1c", "1d", "1e", "2"};
    for (size_t i = 0; i < rows.size(); ++i)
      VERIFY_HAS(words,
                 QStringLiteral("%1 %2 %3").arg(labels[int(i)], rows[i].text("dial_text"), rows[i].text("paces")));
    const auto run_paces = [&](size_t i) { return rows[i].text("run_paces"); };
    VERIFY_HAS(words, QStringLiteral("Along the line. Count from 0 to %1.").arg(run_paces(0)));
    // The detour is to the right: detour_legs_algorithm_test.cpp.
    VERIFY_HAS(words, "Turn right, a quarter turn. Out from the line, round <Tarn>. These paces do not count");
    VERIFY_HAS(words, QStringLiteral("Turn left, a quarter turn. Past <Tarn>. Count on from %1 to %2.")
                          .arg(run_paces(0), run_paces(2)));
    VERIFY_HAS(words, "Turn left, a quarter turn. Back to the line. These paces do not count for the leg.");
    VERIFY_HAS(words, QStringLiteral("Turn right, a quarter turn. On along the line. Count on from %1 to %2.")
                          .arg(run_paces(2), run_paces(4)));
    VERIFY_HAS(words, "All 2 legs");
  }

  // A leg that starts with the way out: whoever comes from the leg before has nothing to turn from.
  void aDetourAtTheStart() {
    std::vector<LegRow> rows = rowsWithDetour();
    rows.erase(rows.begin());
    for (size_t i = 0; i < 4; ++i)
      rows[i].values["piece"] = int(i) + 1;
    const Tables tables(layerWithDetour(rows));
    VERIFY_RAN(tables);
    const QString words = wordsOf(tables.page());
    VERIFY_HAS(words, "1a 196° 26");
    VERIFY_HAS(words, "Out to the right of the line, round Tarn.");
    VERIFY_LACKS(words, "Turn right, a quarter turn. Out");
  }

  void aLackingLeg() {
    const Tables tables(legLayer({row(1), row(3)}));
    VERIFY_HAS(wordsOf(tables.page()), "Leg 2 is not in this table. Do not walk on past it by these numbers.");
  }

  // --- names ---------------------------------------------------------------------------------------------------------

  void nastyNamesStayInTheFolder() {
    const QTemporaryDir around;
    QDir(around.path()).mkdir("in");
    const QString folder = around.filePath("in");
    const Tables tables(nastyLegs(), {{"FOLDER", folder}});
    VERIFY_RAN(tables);
    QCOMPARE(QDir(around.path()).entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot), QStringList{"in"});
    const QStringList files = QDir(folder).entryList(QDir::Files | QDir::Hidden, QDir::Name);
    QCOMPARE(QDir(folder).entryList(QDir::Dirs | QDir::Hidden | QDir::NoDotAndDotDot), QStringList());
    const int sheets = nastyNames.size() * 2;
    QCOMPARE(files.size(), 2 * sheets + 1);
    QCOMPARE(tables.outcome.results.value("FILE_COUNT").toInt(), files.size());
    QFile index(QDir(folder).filePath("index.html"));
    QVERIFY(index.open(QIODevice::ReadOnly));
    const QString page = QString::fromUtf8(index.readAll());
    const QStringList links = linked(page);
    QCOMPARE(links.size(), 2 * sheets);
    QCOMPARE(QSet<QString>(links.begin(), links.end()).size(), links.size());
    for (const QString &link : links)
      QVERIFY2(files.contains(link), qPrintable(link));
    // Links are paths of this folder and nothing else.
    auto found = QRegularExpression("href=\"([^\"]*)\"").globalMatch(page);
    while (found.hasNext())
      QVERIFY(found.next().captured(1).contains(QRegularExpression("^[A-Za-z0-9%._~-]+$")));
  }

  void markupIsShownAndDoesNothing() {
    const Tables tables(nastyLegs());
    VERIFY_RAN(tables);
    for (const QString &file : tables.files()) {
      if (!file.endsWith(".html"))
        continue;
      const QString page = tables.text(file);
      for (const char *tag : {"<script", "<img", "<!--", "]]>--><"})
        VERIFY_LACKS(page, tag);
      for (const uint sign : {0x202Eu, 0x2067u, 0u, 7u, 0xFFFEu, 0xFDD0u}) // direction, control, no characters
        QVERIFY2(!page.contains(QChar(ushort(sign))), qPrintable(file + ' ' + QString::number(sign, 16)));
    }
    VERIFY_HAS(tables.text("index.html"), "<bdi dir=\"auto\">&lt;script&gt;alert(1)&lt;/script&gt;</bdi>");
  }

  void namesStandApart() {
    const QString arabic = QString::fromUtf8("مسار النهر");
    const Tables tables(legLayer({row(1, {{"route", arabic}, {"from_name", arabic}, {"to_name", "Camp"}})}));
    VERIFY_RAN(tables);
    const QString page = tables.text(arabic + " - Ann.html");
    VERIFY_HAS(page, "<h1><bdi dir=\"auto\">" + arabic + "</bdi></h1>");
    VERIFY_HAS(page, "From <b><bdi dir=\"auto\">" + arabic + "</bdi></b> to <b><bdi dir=\"auto\">Camp</bdi></b>");
  }

  void routesOfOneName() {
    const Tables tables(legLayer({row(1), row(2), row(1, {{"paces", 177}})}));
    VERIFY_RAN(tables);
    QCOMPARE(tables.files(), (QStringList{"Loop (2) - Ann.csv", "Loop (2) - Ann.html", "Loop - Ann.csv",
                                          "Loop - Ann.html", "index.html"}));
    VERIFY_HAS(tables.text("Loop - Ann.html"), "<h1><bdi dir=\"auto\">Loop</bdi></h1>");
    VERIFY_HAS(tables.text("Loop (2) - Ann.html"), "<h1><bdi dir=\"auto\">Loop (2)</bdi></h1>");
    VERIFY_HAS(tables.text("Loop (2) - Ann.html"), ">177<");
  }

  void aRouteCalledIndex() {
    const Tables tables(legLayer({row(1, {{"route", "index"}, {"walker", QVariant()}}),
                                  row(1, {{"route", "INDEX.HTML"}, {"walker", QVariant()}})}));
    VERIFY_RAN(tables);
    QCOMPARE(tables.files(),
             (QStringList{"INDEX.HTML.csv", "INDEX.HTML.html", "index (2).csv", "index (2).html", "index.html"}));
    VERIFY_HAS(wordsOf(tables.text("index.html")), "Leg tables");
  }

  // --- refusals, and nothing half done -------------------------------------------------------------------------------

  void refusals() {
    const Layer good = legLayer({row(1)}), none = legLayer({}), bare = legLayer({row(1)}, {"paces", "dial_text"});
    const QTemporaryDir folder;
    put(folder.filePath("file"), "x");
    const std::vector<std::pair<QVariantMap, QStringList>> cases = {
        {{{"INPUT", valueOf(none)}, {"FOLDER", folder.filePath("a")}}, {"INPUT", "legs", "no features"}},
        {{{"INPUT", valueOf(bare)}, {"FOLDER", folder.filePath("a")}},
         {"INPUT", "legs", "paces", "dial_text", "annotatelegs"}},
        {{{"INPUT", valueOf(good)}, {"FOLDER", folder.filePath("file")}}, {"FOLDER", "file"}},
        {{{"INPUT", valueOf(good)}, {"FOLDER", folder.filePath("file/x")}}, {"FOLDER", "cannot be made"}},
        {{{"INPUT", valueOf(good)}, {"FOLDER", "/proc/self"}}, {"FOLDER", "/proc/self"}},
        {{{"INPUT", valueOf(good)}, {"FOLDER", folder.filePath("a")}, {"FORMAT", 3}}, {"FORMAT"}},
        {{{"INPUT", valueOf(good)}, {"FOLDER", folder.filePath("a")}, {"MARKS", valueOf(good)}}, {"MARKS"}},
    };
    for (const auto &[parameters, words] : cases) {
      const Outcome outcome = run(id, parameters);
      QVERIFY2(!outcome.ok, qPrintable(words.join(' ')));
      for (const QString &word : words)
        VERIFY_HAS(outcome.said(), word);
    }
    QCOMPARE(QDir(folder.path()).entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot),
             QStringList{"file"});
  }

  void replaceOffLeavesNothingHalfDone_data() {
    QTest::addColumn<QString>("there");
    for (const char *name : {"index.html", "Loop - Ann.csv", "Loop - Zed.html"})
      QTest::newRow(name) << QString(name);
  }
  void replaceOffLeavesNothingHalfDone() {
    QFETCH(QString, there);
    const QTemporaryDir folder;
    put(folder.filePath(there), "old");
    const Layer legs = legLayer({row(1), row(1, {{"walker", "Bo"}}), row(1, {{"walker", "Zed"}})});
    QVariantMap parameters{{"FOLDER", folder.path()}, {"REPLACE", false}};
    const Tables refused(legs, parameters);
    QVERIFY(!refused.outcome.ok);
    for (const char *word : {"FOLDER", "REPLACE"})
      VERIFY_HAS(refused.outcome.said(), word);
    VERIFY_HAS(refused.outcome.said(), there);
    QCOMPARE(QDir(folder.path()).entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot), QStringList{there});
    QFile file(folder.filePath(there));
    QVERIFY(file.open(QIODevice::ReadOnly));
    QCOMPARE(file.readAll(), QByteArray("old"));
    file.close();

    parameters["REPLACE"] = true;
    const Tables replaced(legs, parameters);
    VERIFY_RAN(replaced);
    VERIFY_HAS(replaced.outcome.infos.join('\n'), "7 file(s) written, 1 of them in the place of an older one");
    QCOMPARE(QDir(folder.path()).entryList(QDir::Files).size(), 7);
  }

  void theInputIsNeverWrittenOver() {
    const QTemporaryDir folder;
    const QString path = folder.filePath("Loop - Ann.csv"); // the name of the table that would come
    const QByteArray content =
        "WKT,route,leg,walker,direction,true_brg,decl,date,dial,dial_text,back_dial,dist_m,paces\n"
        "\"LINESTRING(500100 5400000,500200 5400000)\",Loop,1,Ann,out,88.6,-17,2026-11-25,106,"
        "106,286,100,130\n";
    put(path, content);
    const auto input = std::make_unique<QgsVectorLayer>(path, "legs", "ogr");
    QVERIFY(input->isValid());
    input->setCrs(QgsCoordinateReferenceSystem("EPSG:32621"));
    QVariantMap parameters{{"INPUT", QVariant::fromValue(input.get())}, {"FOLDER", folder.path()}};
    const Outcome refused = run(id, parameters);
    QVERIFY(!refused.ok);
    VERIFY_HAS(refused.said(), "input");
    VERIFY_HAS(refused.said(), "Loop - Ann.csv");
    QCOMPARE(QDir(folder.path()).entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot),
             QStringList{"Loop - Ann.csv"});
    QFile file(path);
    QVERIFY(file.open(QIODevice::ReadOnly));
    QCOMPARE(file.readAll(), content);
    parameters["FORMAT"] = 1; // pages alone are no danger to it
    QVERIFY(run(id, parameters).ok);
  }

#ifdef Q_OS_UNIX
  void fullDisk() {
    const QTemporaryDir folder;
    put(folder.filePath("index.html"), "old");
    std::vector<LegRow> rows{row(1)};
    for (int i = 1; i <= 200; ++i)
      rows.push_back(row(i, {{"walker", "Bo"}}));
    const Layer legs = legLayer(rows);
    Outcome outcome;
    {
      const FullDisk full(30000); // room for the first files, not for the long one
      outcome = run(id, {{"INPUT", valueOf(legs)}, {"FOLDER", folder.path()}});
    }
    QVERIFY(!outcome.ok);
    for (const char *word : {"FOLDER", "Loop - Bo.html", "disk full"})
      VERIFY_HAS(outcome.said(), word);
    QCOMPARE(QDir(folder.path()).entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot),
             QStringList{"index.html"});
    QFile file(folder.filePath("index.html"));
    QVERIFY(file.open(QIODevice::ReadOnly));
    QCOMPARE(file.readAll(), QByteArray("old"));
  }
#endif

  void cancelledBeforehand() {
    Ear ear;
    ear.cancel();
    const QTemporaryDir around;
    const Tables tables(legLayer({row(1)}), {{"FOLDER", around.filePath("new")}}, {{}, &ear, false, false});
    QCOMPARE(QDir(around.path()).entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot), QStringList());
  }

  void cancelledInTheMiddle_data() {
    QTest::addColumn<int>("sheets");
    QTest::addColumn<int>("legs");
    QTest::newRow("many sheets") << 200 << 5;
    QTest::newRow("one long sheet") << 1 << 30000;
  }
  // Ends within a tenth of a second and leaves nothing.
  void cancelledInTheMiddle() {
    QFETCH(int, sheets);
    QFETCH(int, legs);
    std::vector<LegRow> rows;
    for (int i = 0; i < sheets; ++i)
      for (int leg = 1; leg <= legs; ++leg)
        rows.push_back(row(leg, {{"route", QString("Route %1").arg(i)}}));
    const Layer layer = legLayer(rows);
    const CancelTimes times = cancelAt({0.15, 0.5, 0.8}, [&](Ear &ear) -> std::optional<double> {
      const QTemporaryDir around;
      const QString folder = around.filePath("new");
      const Outcome outcome = run(id, {{"INPUT", valueOf(layer)}, {"FOLDER", folder}}, {{}, &ear, false, false});
      if (outcome.results.contains("FILE_COUNT"))
        return outcome.seconds;
      if (QFileInfo::exists(folder))
        throw std::runtime_error("left " + folder.toStdString());
      return std::nullopt;
    });
    QVERIFY2(times.slowest < soon, qPrintable(QString("%1 s after being cancelled").arg(times.slowest)));
    QVERIFY2(times.moments > 0, "never cancelled in the middle");
  }

  void inAThreadOfTheHosts() {
    const Tables tables(legLayer({row(1)}), {}, {{}, nullptr, true, false});
    VERIFY_RAN(tables);
    QCOMPARE(tables.files().size(), 3);
  }

  void progressGrows() {
    std::vector<LegRow> rows;
    for (int i = 0; i < 20; ++i)
      rows.push_back(row(1, {{"walker", QString::number(i)}}));
    Ear ear;
    std::vector<double> seen;
    connect(&ear, &QgsFeedback::progressChanged, this, [&](double progress) { seen.push_back(progress); });
    const Tables tables(legLayer(rows), {}, {{}, &ear, false, false});
    VERIFY_RAN(tables);
    QVERIFY(seen.size() >= 20 && std::is_sorted(seen.begin(), seen.end()));
  }

  // --- for leg_tables_files_test.sh ----------------------------------------------------------------------------------

  void filesForOtherPrograms() {
    const QString folder = qEnvironmentVariable("BRUSHLINE_FILES");
    if (folder.isEmpty())
      return; // called by itself
    const auto made = [&folder](const char *name, const Layer &legs, const QVariantMap &others = {}) {
      QVariantMap parameters = others;
      parameters["INPUT"] = valueOf(legs);
      parameters["FOLDER"] = folder + '/' + name;
      save(legs, folder + '/' + name + ".gpkg");
      return run(id, parameters).ok;
    };
    QVERIFY(made("crooked", crookedLegs(300)));
    QStringList names = nastyNames;
    for (QString &name : names)
      name.remove(QChar(QChar::Null)); // no database keeps it
    QVERIFY(made("nasty", nastyLegs(names), {{"TITLE", "<Camp> & \"friends\""}}));
    const Layer marks = markLayer({{1, 1, 50, 65, ""}, {1, 2, 100, 130, "Lone <Pine>"}});
    QVERIFY(made("full",
                 legLayer({row(1, {{"from_name", "Camp"},
                                   {"to_name", "Boulder"},
                                   {"cover", "brush"},
                                   {"sight_m", 12.0},
                                   {"spacing_m", 9.0},
                                   {"climb_m", 3.0},
                                   {"drop_m", 4.0},
                                   {"warnings", "Mind the bog."}}),
                           row(3), row(1, {{"direction", "back"}, {"dial_text", "1880 mil"}})}),
                 {{"MARKS", valueOf(marks)}, {"TITLE", "Autumn camp"}}));
    QVariantMap nothing;
    for (const char *field : {"decl", "decl_err", "date", "dial", "dial_text", "back_dial", "compass_pt", "walk_min",
                              "marks", "drift_m", "along_m", "mag_brg", "walker", "route"})
      nothing[field] = QVariant();
    QVERIFY(made("bare", legLayer({row(1, nothing)})));
  }
};

BRUSHLINE_HOST_TEST_MAIN(LegTablesAlgorithmTest)
#include "leg_tables_algorithm_test.moc"
