// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/cover_table.h"

#include "support/comma_locale.h"
#include "support/near.h"

#include <set>
#include <stdexcept>

using namespace brushline;
using namespace brushline::test;

class CoverTableTest : public QObject {
  Q_OBJECT
private slots:
  void builtIn_data();
  void builtIn();
  void ownClasses();
  void codes_data();
  void codes();
  void legendsAreApart();
  void water();
  void seasons();
  void cells();
  void quotes();
  void emptyCells();
  void badLines_data();
  void badLines();
  void find();
  void twice();
  void noName();
  void ends();
  void commaLocale();
};

namespace {

const std::string header = "class,label,sight_m,sight_bare,speed_f,pace_f,note\n";

CoverClass named(const std::string &name) {
  CoverClass entry;
  entry.name = name;
  entry.sight = Length::metres(10);
  return entry;
}

// What a bad table says, or nothing when it was read.
QString complaintOf(const std::string &text) {
  try {
    parseCoverTable(text);
  } catch (const std::invalid_argument &error) {
    return QString::fromUtf8(error.what());
  }
  return {};
}

// The codes of CORINE Land Cover, third level: how many classes each group of the second level has (nomenclature of
// the inventory, from memory; 44 in all).
std::vector<std::string> corineCodes() {
  const std::pair<int, int> groups[] = {{11, 2}, {12, 4}, {13, 3}, {14, 2}, {21, 3}, {22, 3}, {23, 1}, {24, 4},
                                        {31, 3}, {32, 4}, {33, 5}, {41, 2}, {42, 3}, {51, 2}, {52, 3}};
  std::vector<std::string> codes;
  for (const auto &[group, classes] : groups)
    for (int i = 1; i <= classes; ++i)
      codes.push_back(std::to_string(group * 10 + i));
  return codes;
}
} // namespace

void CoverTableTest::builtIn_data() {
  QTest::addColumn<int>("legend");
  QTest::addColumn<int>("classes");
  QTest::newRow("own") << 0 << 12;
  QTest::newRow("ESA WorldCover") << 1 << 11;
  QTest::newRow("CORINE") << 2 << 44;
  QTest::newRow("NLCD") << 3 << 20;
  QTest::newRow("map symbols") << 4 << 13;
}

void CoverTableTest::builtIn() {
  QFETCH(int, legend);
  QFETCH(int, classes);
  const CoverTable &table = builtInCover(CoverLegend(legend));
  QCOMPARE(table.classes().size(), size_t(classes));
  for (int i = 0; i < classes; ++i) {
    const CoverClass &entry = table.at(i);
    const std::string where = entry.name;
    VERIFY_AT(table.find(entry.name) == i, where);
    VERIFY_AT(CoverClass::sightLimits.contains(entry.sight.metres()), where);
    // Leaves that fall hide no more than leaves that hang.
    VERIFY_AT(entry.sight_bare && entry.sight_bare->metres() >= entry.sight.metres(), where);
    VERIFY_AT(CoverClass::sightLimits.contains(entry.sight_bare->metres()), where);
    // "Held to 0.1 .. 1.5", the tables' heads.
    VERIFY_AT(!entry.speed_factor || (*entry.speed_factor >= 0.1 && *entry.speed_factor <= 1.5), where);
    VERIFY_AT(CoverClass::paceLimits.contains(entry.pace_factor) && entry.pace_factor >= 1, where);
    VERIFY_AT(!entry.label.empty() && entry.label != entry.name, where); // in plain words
    // Every number says where it comes from.
    VERIFY_AT(entry.note.find("source") != std::string::npos || entry.note.find('(') != std::string::npos, where);
  }
}

// The names that users' layers hold: to lose or to rename one breaks their projects.
void CoverTableTest::ownClasses() {
  const CoverTable &table = builtInCover(CoverLegend::Own);
  for (const char *name : {"open ground", "wet ground", "heath", "scattered trees", "open woods", "tall forest",
                           "mixed forest", "young growth", "brush", "thicket", "water", "bare rock"})
    VERIFY_AT(table.find(name) >= 0, name);
  // From open ground to thicket one sees less and less, and is slower (common practice, no source).
  double sight = 1e9, speed = 1e9;
  for (const char *name : {"open ground", "scattered trees", "open woods", "tall forest", "mixed forest",
                           "young growth", "brush", "thicket"}) {
    const CoverClass &entry = table.at(table.find(name));
    VERIFY_AT(entry.sight.metres() < sight, name);
    VERIFY_AT(entry.speed_factor && *entry.speed_factor <= speed, name);
    sight = entry.sight.metres();
    speed = *entry.speed_factor;
  }
}

// The published legends' codes, from memory: ESA WorldCover 10 m v200; CORINE, above; NLCD 2019; of the symbols for
// vegetation in ISOM 2017-2 those of areas.
void CoverTableTest::codes_data() {
  QTest::addColumn<int>("legend");
  QTest::addColumn<QStringList>("codes");
  const auto row = [](const char *name, CoverLegend legend, const QString &codes) {
    QTest::newRow(name) << int(legend) << codes.split(QLatin1Char(' '));
  };
  row("ESA WorldCover", CoverLegend::EsaWorldCover, QStringLiteral("10 20 30 40 50 60 70 80 90 95 100"));
  QStringList corine;
  for (const std::string &code : corineCodes())
    corine << QString::fromStdString(code);
  row("CORINE", CoverLegend::Corine, corine.join(QLatin1Char(' ')));
  row("NLCD", CoverLegend::Nlcd, QStringLiteral("11 12 21 22 23 24 31 41 42 43 51 52 71 72 73 74 81 82 90 95"));
  row("map symbols", CoverLegend::MapSymbols, QStringLiteral("401 402 403 404 405 406 407 408 409 410 412 413 414"));
}

void CoverTableTest::codes() {
  QFETCH(int, legend);
  QFETCH(QStringList, codes);
  const CoverTable &table = builtInCover(CoverLegend(legend));
  std::set<int> found;
  for (const QString &code : codes) {
    // As a raster's whole numbers come: without spaces, sign or decimals.
    const int index = table.find(std::to_string(code.toLong()));
    VERIFY_AT(index >= 0, code.toStdString());
    VERIFY_AT(table.at(index).name == code.toStdString(), code.toStdString());
    found.insert(index);
  }
  QCOMPARE(found.size(), table.classes().size()); // and no others
  QCOMPARE(table.find("0"), -1);
  QCOMPARE(table.find("999"), -1);
}

void CoverTableTest::legendsAreApart() {
  QCOMPARE(builtInCover(CoverLegend::Own).find("10"), -1);
  QCOMPARE(builtInCover(CoverLegend::EsaWorldCover).find("thicket"), -1);
  // 90 is marsh in one legend and a wooded wetland in the other.
  const CoverTable &esa = builtInCover(CoverLegend::EsaWorldCover), &nlcd = builtInCover(CoverLegend::Nlcd);
  QVERIFY(esa.at(esa.find("90")).label != nlcd.at(nlcd.find("90")).label);
}

// Nobody walks over water, and over nothing else.
void CoverTableTest::water() {
  const std::set<std::string> water[] = {{"water"}, {"80"}, {"511", "512", "521", "522", "523"}, {"11"}, {}};
  for (int legend = 0; legend < 5; ++legend)
    for (const CoverClass &entry : builtInCover(CoverLegend(legend)).classes())
      VERIFY_AT(!entry.speed_factor == (water[legend].count(entry.name) == 1), entry.name);
}

// The row "young growth" of cover_own.csv: 20 m in leaf, 28 m bare.
void CoverTableTest::seasons() {
  const CoverTable &table = builtInCover(CoverLegend::Own);
  const CoverClass &young = table.at(table.find("young growth"));
  QVERIFY(young.sightIn(Season::InLeaf).metres() == 20 && young.sightIn(Season::Bare).metres() == 28);
  CoverClass evergreen = named("spruce");
  QVERIFY(evergreen.sightIn(Season::InLeaf).metres() == 10 && evergreen.sightIn(Season::Bare).metres() == 10);
  evergreen.sight_bare = Length::metres(9); // may be less: snow on the branches
  QVERIFY(evergreen.sightIn(Season::InLeaf).metres() == 10 && evergreen.sightIn(Season::Bare).metres() == 9);
}

void CoverTableTest::cells() {
  const CoverTable table = parseCoverTable("# a remark\n\n" + header +
                                           "# another\nfern,deep fern,12.5,20,0.25,1.35,seen\nmoor,,200,,,1.1,\n");
  QCOMPARE(table.classes().size(), size_t(2));
  const CoverClass &fern = table.at(table.find("fern")), &moor = table.at(table.find("moor"));
  QVERIFY(fern.name == "fern" && fern.label == "deep fern" && fern.note == "seen");
  QVERIFY(fern.sight.metres() == 12.5 && fern.sight_bare->metres() == 20);
  QVERIFY(*fern.speed_factor == 0.25 && fern.pace_factor == 1.35);
  QVERIFY(moor.label == "moor" && moor.sight.metres() == 200 && moor.pace_factor == 1.1);
}

void CoverTableTest::quotes() {
  const CoverTable table = parseCoverTable(
      header + "\"reeds, tall\",\"they say \"\"hay\"\"\",\"8\",\"9.5\",0.3,1.2,\"a, b, and \"\"c\"\"\"\n");
  const CoverClass &reeds = table.at(table.find("reeds, tall"));
  QCOMPARE(QString::fromStdString(reeds.label), QStringLiteral("they say \"hay\""));
  QCOMPARE(QString::fromStdString(reeds.note), QStringLiteral("a, b, and \"c\""));
  QVERIFY(reeds.sight.metres() == 8 && reeds.sight_bare->metres() == 9.5);
}

void CoverTableTest::emptyCells() {
  const CoverTable table = parseCoverTable(header + "lake,,400,,,,\nmoss,,  80 , ,1, ,\n");
  const CoverClass &lake = table.at(0), &moss = table.at(1);
  QVERIFY(!lake.sight_bare && !lake.speed_factor && lake.pace_factor == 1 && lake.label == "lake");
  QVERIFY(moss.sight.metres() == 80 && !moss.sight_bare && *moss.speed_factor == 1 && moss.pace_factor == 1);
}

void CoverTableTest::badLines_data() {
  QTest::addColumn<QString>("text");
  QTest::addColumn<int>("line");
  const QString head = QString::fromStdString(header);
  const auto row = [&](const char *name, const QString &text, int line) { QTest::newRow(name) << text << line; };
  row("no header", QStringLiteral("# remark\nfern,,12,,1,1,\n"), 2);
  row("another header", QStringLiteral("class,sight_m\n"), 1);
  row("its columns in another order", QStringLiteral("label,class,sight_m,sight_bare,speed_f,pace_f,note\n"), 1);
  row("too few cells", head + QStringLiteral("fern,,12,,1,1\n"), 2);
  row("too many", head + QStringLiteral("ok,,12,,1,1,\n\n# remark\nfern,,12,,1,1,note,more\n"), 5);
  row("a quote that does not end", head + QStringLiteral("fern,\"deep,12,,1,1,\n"), 2);
  row("no sight", head + QStringLiteral("fern,,,12,1,1,\n"), 2);
  row("a sight of nothing", head + QStringLiteral("fern,,0,,1,1,\n"), 2);
  row("a sight below the limit", head + QStringLiteral("fern,,0.49,,1,1,\n"), 2);
  row("a sight beyond the limit", head + QStringLiteral("fern,,10000.1,,1,1,\n"), 2);
  row("a negative sight", head + QStringLiteral("fern,,-12,,1,1,\n"), 2);
  row("words for a sight", head + QStringLiteral("fern,,far,,1,1,\n"), 2);
  row("a sight with its unit", head + QStringLiteral("fern,,12 m,,1,1,\n"), 2);
  row("a decimal comma", head + QStringLiteral("fern,,\"12,5\",,1,1,\n"), 2);
  row("not a number", head + QStringLiteral("fern,,nan,,1,1,\n"), 2);
  row("infinite", head + QStringLiteral("fern,,inf,,1,1,\n"), 2);
  row("too great to hold", head + QStringLiteral("fern,,1e999,,1,1,\n"), 2);
  row("sight_bare", head + QStringLiteral("ok,,12,,1,1,\nfern,,12,0.1,1,1,\n"), 3);
  row("speed of nothing", head + QStringLiteral("fern,,12,,0,1,\n"), 2);
  row("speed beyond", head + QStringLiteral("fern,,12,,3.01,1,\n"), 2);
  row("pace below", head + QStringLiteral("fern,,12,,1,0.49,\n"), 2);
  row("pace beyond", head + QStringLiteral("fern,,12,,1,3.01,\n"), 2);
  row("no name", head + QStringLiteral("ok,,12,,1,1,\n,,12,,1,1,\n"), 3);
  row("a name of spaces", head + QStringLiteral("  ,,12,,1,1,\n"), 2);
  row("a name twice", head + QStringLiteral("fern,,12,,1,1,\nmoss,,12,,1,1,\n Fern ,,13,,1,1,\n"), 4);
}

void CoverTableTest::badLines() {
  QFETCH(QString, text);
  QFETCH(int, line);
  const QString complaint = complaintOf(text.toStdString());
  QVERIFY2(complaint.contains(QStringLiteral("line %1 ").arg(line)), qPrintable(complaint));
  // The same in a file from elsewhere.
  const QString other = complaintOf(QString(text).replace(QLatin1Char('\n'), QStringLiteral("\r\n")).toStdString());
  QCOMPARE(other, complaint);
}

void CoverTableTest::find() {
  CoverTable table;
  QCOMPARE(table.find("fern"), -1);
  table.add(named("Deep Fern"));
  table.add(named("  b\xC3\xA4"
                  "che\t")); // with an umlaut
  for (const char *name : {"Deep Fern", "deep fern", "DEEP FERN", " deep fern", "deep fern\t \n", "\r\ndEEp fERn"})
    VERIFY_AT(table.find(name) == 0, name);
  // Spaces within the name count.
  for (const char *name : {"deepfern", "deep  fern", "deep", "", " ", "deep fern."})
    VERIFY_AT(table.find(name) == -1, name);
  QCOMPARE(table.find("B\xC3\xA4"
                      "CHE"),
           1);
  QCOMPARE(table.find("B\xC3\x84"
                      "CHE"),
           -1); // other letters' case is left alone
  QCOMPARE(table.find("bache"), -1);
  QCOMPARE(QString::fromStdString(table.at(0).name), QStringLiteral("Deep Fern")); // kept as it was given
}

void CoverTableTest::twice() {
  CoverTable table;
  table.add(named("fern"));
  table.add(named("moss"));
  QVERIFY_EXCEPTION_THROWN(table.add(named("fern")), std::invalid_argument);
  QVERIFY_EXCEPTION_THROWN(table.add(named(" FERN ")), std::invalid_argument);
  QCOMPARE(table.classes().size(), size_t(2)); // and nothing came of it
  table.add(named("ferns"));
  QVERIFY(table.find("fern") == 0 && table.find("moss") == 1 && table.find("ferns") == 2);
}

void CoverTableTest::noName() {
  CoverTable table;
  QVERIFY_EXCEPTION_THROWN(table.add(named("")), std::invalid_argument);
  QVERIFY_EXCEPTION_THROWN(table.add(named(" \t")), std::invalid_argument);
  QVERIFY(table.classes().empty());
}

// Lines end as they do elsewhere, and the last one needs no end.
void CoverTableTest::ends() {
  const CoverTable plain = parseCoverTable(header + "fern,,12,,1,1,a\nmoss,,13,,1,1,b");
  const CoverTable windows = parseCoverTable(
      "class,label,sight_m,sight_bare,speed_f,pace_f,note\r\nfern,,12,,1,1,a\r\nmoss,,13,,1,1,b\r\n\r\n");
  for (const CoverTable *table : {&plain, &windows}) {
    QCOMPARE(table->classes().size(), size_t(2));
    QVERIFY(table->at(1).name == "moss" && table->at(1).note == "b" && table->at(1).sight.metres() == 13);
  }
}

// Numbers and lines are read and told alike where people write 1,5 and 1.000.
void CoverTableTest::commaLocale() {
  const std::string text = header + "fern,,12.5,1000.25,0.25,1.5,\n";
  std::string longer = header;
  for (int i = 2; i < 1234; ++i)
    longer += "# remark\n";
  longer += "fern,,12;5,,1,1,\n";
  const QString before = complaintOf(longer);
  const CommaLocale locale;
  const CoverTable table = parseCoverTable(text);
  const CoverClass &fern = table.at(0);
  QVERIFY(fern.sight.metres() == 12.5 && fern.sight_bare->metres() == 1000.25);
  QVERIFY(*fern.speed_factor == 0.25 && fern.pace_factor == 1.5);
  QVERIFY2(before.contains(QStringLiteral("line 1234 ")), qPrintable(before));
  QCOMPARE(complaintOf(longer), before);
  QVERIFY(!complaintOf(header + "fern,,\"12,5\",,1,1,\n").isEmpty());
  QVERIFY(!complaintOf(header + "fern,,1.000.25,,1,1,\n").isEmpty());
}

QTEST_APPLESS_MAIN(CoverTableTest)
#include "cover_table_test.moc"
