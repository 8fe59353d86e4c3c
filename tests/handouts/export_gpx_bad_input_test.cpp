// SPDX-License-Identifier: GPL-2.0-or-later
// What exportgpx does with input that is odd or of no use. Messages are regression only: they have to name the
// parameter key, the layer and the remedy.
#include "handouts/gpx_run.h"
#include "support/full_disk.h"

#include <QFileInfo>

#include <cmath>
#include <limits>
#include <sys/stat.h>

using namespace brushline;
using namespace brushline::test;

namespace {

std::vector<LegRow> twoLegs(const QString &route, double latitude = 48.8, const Named &more = {}) {
  return {{leg(route, 1, more), stretch(1, latitude)}, {leg(route, 2, more), stretch(2, latitude)}};
}

Layer legsWithout(const QStringList &fields) {
  QgsFields all = LegLayer::fields();
  for (const QString &field : fields)
    all.remove(all.lookupField(field));
  return layerOf("lean legs", "LineString", all, twoLegs("a"), "EPSG:4326");
}

} // namespace

#define VERIFY_REFUSED(run, words)                                                                                     \
  do {                                                                                                                 \
    QVERIFY2(!(run).outcome.ok, "this should have been refused");                                                      \
    for (const QString &word : QStringList words)                                                                      \
      QVERIFY2((run).outcome.said().contains(word), qPrintable((run).outcome.said() + " -- lacks " + word));           \
    QVERIFY2((run).files().isEmpty(), qPrintable((run).files().join(' ')));                                            \
  } while (false)

class ExportGpxBadInputTest : public QObject {
  Q_OBJECT

private slots:
  void fieldsThatLack() {
    for (const QString field : {"route", "leg", "walker", "direction", "true_brg", "decl", "date", "dial", "dial_text",
                                "back_dial", "dist_m", "paces"}) {
      const Layer legs = legsWithout({field});
      const GpxRun run({{"INPUT", valueOf(legs)}});
      VERIFY_REFUSED(run, ({"INPUT", "lean legs", field, "brushline:annotatelegs"}));
      QVERIFY(!run.outcome.accepted); // before it runs
    }
    const Layer legs = legsOf(twoLegs("a"));
    const Layer points = layer("posts", "Point", "EPSG:4326", {field("name", FieldType::Text)}, {});
    const GpxRun run({{"INPUT", valueOf(legs)}, {"MARKS", valueOf(points)}});
    VERIFY_REFUSED(run, ({"MARKS", "posts", "route, leg, walker, mark", "brushline:choosemarks"}));
    // Those that a handout can do without.
    const Layer lean = legsWithout({"from_name", "to_name", "grid_brg", "mag_brg", "converg", "decl_err", "compass_pt",
                                    "slope_m", "climb_m", "drop_m", "walk_min", "cover", "sight_m", "spacing_m",
                                    "marks", "drift_m", "along_m", "warnings"});
    const GpxRun fine({{"INPUT", valueOf(lean)}});
    VERIFY_EXPORTED(fine);
    QCOMPARE(texts(fine.gpx().points(), "name"), QStringList({"1", "2", "End"}));
  }

  void layersThatAreNone() {
    const GpxRun none({{"INPUT", "/nowhere/legs.gpkg"}});
    VERIFY_REFUSED(none, ({"INPUT"}));
    const Layer flat = legsOf(twoLegs("a"), QString());
    const GpxRun noCrs({{"INPUT", valueOf(flat)}});
    VERIFY_REFUSED(noCrs, ({"INPUT", "coordinate reference system"}));
    const GpxRun noInput({{"TITLE", "x"}});
    VERIFY_REFUSED(noInput, ({"INPUT"}));
  }

  void layersWithoutLegs() {
    const Layer empty = legsOf({});
    VERIFY_REFUSED(GpxRun({{"INPUT", valueOf(empty)}}), ({"INPUT", "legs", "no features"}));
    const Layer bare = legsOf({{leg("a", 1), QString()}, {leg("a", 2), QString()}});
    const GpxRun run({{"INPUT", valueOf(bare)}});
    VERIFY_REFUSED(run, ({"INPUT", "none of the features", "has no line", "feature 1", "feature 2"}));
  }

  void legsThatCannotBeUsedArePassedOver() {
    std::vector<LegRow> rows = twoLegs("a");
    rows.push_back({leg("a", 3), QString()});
    rows.push_back({leg("a", 4, {{"paces", QVariant()}}), stretch(4)});
    rows.push_back({leg("a", 0), stretch(5)});
    rows.push_back({leg("a", 6, {{"dist_m", QVariant()}}), stretch(6)});
    rows.push_back({leg("a", 7), QStringLiteral("LINESTRING(0 91, 0 92)")});
    rows.push_back({leg("a", 8), stretch(8)});
    const Layer legs = legsOf(rows);
    const GpxRun run({{"INPUT", valueOf(legs)}});
    VERIFY_EXPORTED(run);
    QCOMPARE(run.outcome.results.value("POINT_COUNT").toDouble(), 5.0); // two legs, a gap, a leg, the end
    for (const char *part : {"feature 3", "feature 4", "feature 5", "feature 6", "feature 7", "5 feature(s)"})
      QVERIFY2(run.warnings().contains(part), qPrintable(run.warnings()));
    QCOMPARE(texts(run.gpx().points(), "type"), QStringList({"leg", "leg", "gap", "leg", "end"}));
  }

  void marksWithoutPlace() {
    const Layer legs = legsOf(twoLegs("a"));
    const Named mark{{"route", "a"}, {"leg", 1}, {"direction", "out"}, {"mark", 1}, {"paces", 3}};
    const Layer marks = marksOf({{mark, QString()}, {mark, "POINT(0 95)"}, {mark, "POINT(-55.1995 48.8)"}});
    const GpxRun run({{"INPUT", valueOf(legs)}, {"MARKS", valueOf(marks)}});
    VERIFY_EXPORTED(run);
    QCOMPARE(run.gpx().waypoints.size(), size_t(1));
    QVERIFY2(run.warnings().contains("2 mark(s) of layer “marks” have no usable place"), qPrintable(run.warnings()));
    const Layer nobody = marksOf({});
    const GpxRun none({{"INPUT", valueOf(legs)}, {"MARKS", valueOf(nobody)}});
    VERIFY_EXPORTED(none);
    QCOMPARE(none.gpx().waypoints.size(), size_t(0));
  }

  void names_data() {
    QTest::addColumn<QString>("name");
    QTest::newRow("slashes") << "a/b\\c//d";
    QTest::newRow("way up") << "../../../tmp/away";
    QTest::newRow("quotes") << "The \"old\" 'mill' `x`";
    QTest::newRow("markup") << "<b>Camp</b> & <script/>";
    QTest::newRow("entity") << "&amp; &lt; &#0; &x;";
    QTest::newRow("end of CDATA") << "a]]>b<![CDATA[c";
    QTest::newRow("comment") << "<!-- -- -->";
    QTest::newRow("instruction") << "<?xml version=\"1.0\"?>";
    QTest::newRow("letters of all kinds") << QString::fromUtf8("Ørret – 狐 שלום Ñandú");
    QTest::newRow("pictures") << QString::fromUtf8("🦊👩‍👩‍👧 camp 🏕️");
    QTest::newRow("300 letters") << QString::fromUtf8("ä").repeated(300);
    QTest::newRow("placeholder") << "%1 %2 %n %L1";
    QTest::newRow("long and odd") << QString("<&>\"'%1").repeated(60);
  }
  // Names come back as they were, wherever they stand.
  void names() {
    QFETCH(QString, name);
    const Layer legs = legsOf(twoLegs(
        name, 48.8, {{"walker", name}, {"from_name", name}, {"to_name", name}, {"cover", name}, {"warnings", name}}));
    const Named mark{{"route", name}, {"walker", name}, {"leg", 1},  {"direction", "out"},
                     {"mark", 1},     {"name", name},   {"paces", 3}};
    const Layer marks = marksOf({{mark, "POINT(-55.1995 48.8)"}});
    const GpxRun run({{"INPUT", valueOf(legs)}, {"MARKS", valueOf(marks)}, {"TITLE", name}});
    VERIFY_EXPORTED(run);
    QVERIFY2(run.outcome.warnings.isEmpty(), qPrintable(run.warnings()));
    const Gpx gpx = run.gpx();
    QCOMPARE(text(gpx.metadata, "name"), name);
    QCOMPARE(text(gpx.routes[0], "name"), name + ": " + name);
    QCOMPARE(own(gpx.routes[0], "route"), name);
    QCOMPARE(own(gpx.routes[0], "walker"), name);
    QCOMPARE(texts(gpx.points(), "name"), QStringList({name, name, name}));
    QCOMPARE(own(gpx.points()[0], "cover"), name);
    QCOMPARE(own(gpx.points()[0], "warnings"), name);
    QVERIFY(text(gpx.points()[0], "desc").contains("CAUTION: " + name + " Set the dial to"));
    QVERIFY(text(gpx.points()[0], "desc").contains(QString("from %1 to ").replace("%1", name) + name));
    QCOMPARE(text(gpx.waypoints[0], "name"), name);
    QCOMPARE(run.files(), QStringList("legs.gpx"));
    const std::unique_ptr<QgsVectorLayer> routes = std::make_unique<QgsVectorLayer>(run.path + "|layername=routes");
    QCOMPARE(read(*routes).rows.at(0).text("leg_route"), name);
  }

  void charactersThatXmlCannotHold() {
    const QString control = QString::fromUtf8("a\x01\x1F\x7F z"), half = QString(QChar(0xD83D)) + "x",
                  none = QString(QChar(0xFFFE));
    const Layer legs = legsOf(twoLegs(control, 48.8, {{"walker", half}, {"cover", none}}));
    const GpxRun run({{"INPUT", valueOf(legs)}});
    VERIFY_EXPORTED(run);
    const Gpx gpx = run.gpx();
    const QString stand = QChar(0xFFFD);
    QCOMPARE(own(gpx.routes[0], "route"), "a" + stand + stand + stand + " z");
    QCOMPARE(own(gpx.routes[0], "walker"), stand + "x");
    QCOMPARE(own(gpx.points()[1], "cover"), stand);
    QVERIFY2(run.warnings().contains("4 text(s) held characters that no XML file can hold"),
             qPrintable(run.warnings()));
  }

  void directionSignsAreLeftOut() {
    const QString turned = QString::fromUtf8("Camp \u202E06\u202C\u200F");
    const Layer legs = legsOf(twoLegs(turned));
    const GpxRun run({{"INPUT", valueOf(legs)}});
    VERIFY_EXPORTED(run);
    QCOMPARE(own(run.gpx().routes[0], "route"), QString("Camp 06"));
    QVERIFY2(run.warnings().contains("1 text(s) held characters that turn the direction"), qPrintable(run.warnings()));
    const Layer lines = legsOf(twoLegs("a\nb\tc"));
    const GpxRun one({{"INPUT", valueOf(lines)}});
    VERIFY_EXPORTED(one);
    QCOMPARE(text(one.gpx().routes[0], "name"), QString("a b c"));
    QVERIFY2(one.outcome.warnings.isEmpty(), qPrintable(one.warnings()));
  }

  void routesOfOneNameStayApart() {
    std::vector<LegRow> rows = twoLegs("Loop", 48.8, {{"to_name", "east"}});
    for (const LegRow &row : twoLegs("Loop", 48.9, {{"to_name", "north"}}))
      rows.push_back(row);
    // In orders that tell which leg belongs to which route: one route after the other.
    const std::vector<std::vector<size_t>> orders = {{0, 1, 2, 3}};
    for (const auto &order : orders) {
      std::vector<LegRow> turned;
      for (const size_t i : order)
        turned.push_back(rows[i]);
      const Layer legs = legsOf(turned);
      const Named mark{{"route", "Loop"}, {"leg", 2}, {"direction", "out"}, {"mark", 1}, {"at_m", 14.7}, {"paces", 3}};
      const Layer marks = marksOf({{mark, "POINT(-55.1988 48.9)"}});
      const GpxRun run({{"INPUT", valueOf(legs)}, {"MARKS", valueOf(marks)}});
      VERIFY_EXPORTED(run);
      const Gpx gpx = run.gpx();
      QCOMPARE(texts(gpx.routes, "name"), QStringList({"A: Loop", "B: Loop (2)"}));
      QCOMPARE(texts(gpx.points(0), "name"), QStringList({"A1", "east", "east"}));
      QCOMPARE(texts(gpx.points(1), "name"), QStringList({"B1", "north", "north"}));
      QCOMPARE(text(gpx.waypoints.at(0), "name"), QString("B2.1")); // the mark lies on the northern one
      QVERIFY2(
          run.warnings().contains("INPUT: several routes are called “Loop”; they are kept apart as “Loop”, “Loop (2)”"),
          qPrintable(run.warnings()));
    }
    std::vector<LegRow> taken = rows;
    for (const LegRow &row : twoLegs("Loop (2)", 49))
      taken.push_back(row);
    const Layer legs = legsOf(taken);
    const GpxRun run({{"INPUT", valueOf(legs)}});
    VERIFY_EXPORTED(run);
    QCOMPARE(texts(run.gpx().routes, "name"), QStringList({"A: Loop", "B: Loop (3)", "C: Loop (2)"}));
  }

  // A mark that names no direction belongs to the leg it lies on.
  void marksWithoutDirection() {
    std::vector<LegRow> rows = twoLegs("a");
    rows.push_back({leg("a", 1, {{"direction", "back"}}), "LINESTRING(-55.198 48.8, -55.199 48.8)"});
    rows.push_back({leg("a", 2, {{"direction", "back"}}), "LINESTRING(-55.199 48.8, -55.2 48.8)"});
    const Layer legs = legsOf(rows);
    QgsFields fields = LegLayer::markFields();
    fields.remove(fields.lookupField("direction"));
    const Named mark{{"route", "a"}, {"leg", 1}, {"mark", 1}, {"paces", 20}, {"at_m", 15.0}};
    const Layer marks = layerOf("marks", "Point", fields,
                                {{mark, "POINT(-55.1998 48.8)"}, {mark, "POINT(-55.1982 48.8)"}}, "EPSG:4326");
    const GpxRun run({{"INPUT", valueOf(legs)}, {"MARKS", valueOf(marks)}});
    VERIFY_EXPORTED(run);
    const auto waypoints = run.gpx().waypoints;
    QCOMPARE(texts(waypoints, "name"), QStringList({"A1.1", "B1.1"}));
    QCOMPARE(own(waypoints[0], "direction"), QString("out"));
    QCOMPARE(own(waypoints[1], "direction"), QString("back"));
    QVERIFY2(run.outcome.warnings.isEmpty(), qPrintable(run.warnings()));
  }

  void placesThatCannotBeWritten() {
    const Layer legs = legsOf(twoLegs("a"));
    const QTemporaryDir folder;
    const GpxRun nowhere({{"INPUT", valueOf(legs)}, {"OUTPUT", folder.filePath("not/there/legs.gpx")}});
    VERIFY_REFUSED(nowhere, ({"OUTPUT", "not/there/legs.gpx", "Is its folder there"}));
    QCOMPARE(QDir(folder.path()).count(), uint(2)); // the two dots
    const GpxRun aFolder({{"INPUT", valueOf(legs)}, {"OUTPUT", folder.path()}});
    VERIFY_REFUSED(aFolder, ({"OUTPUT", "is a folder"}));
    const QString pipe = folder.filePath("pipe.gpx");
    QCOMPARE(::mkfifo(QFile::encodeName(pipe), 0600), 0);
    const GpxRun toPipe({{"INPUT", valueOf(legs)}, {"OUTPUT", pipe}});
    VERIFY_REFUSED(toPipe, ({"OUTPUT", "pipe.gpx", "a device or a pipe"}));
    QVERIFY(!QFileInfo(pipe).isFile() && QFileInfo::exists(pipe));
    const GpxRun nothing({{"INPUT", valueOf(legs)}, {"OUTPUT", ""}});
    VERIFY_REFUSED(nothing, ({"OUTPUT"}));
  }

  void inputsAreNotWrittenOver() {
    const QTemporaryDir folder;
    const QString path = folder.filePath("legs.gpkg"), marksPath = folder.filePath("marks.gpkg");
    const Layer legs = legsOf(twoLegs("a")), marks = marksOf({});
    save(legs, path);
    save(marks, marksPath);
    const auto sizes = [&] { return QList<qint64>{QFileInfo(path).size(), QFileInfo(marksPath).size()}; };
    const auto before = sizes();
    QVERIFY(QFile::link(path, folder.filePath("link.gpx")));
    for (const QString &target : {path, folder.filePath("../") + QFileInfo(folder.path()).fileName() + "/legs.gpkg",
                                  folder.filePath("link.gpx"), marksPath}) {
      const GpxRun run({{"INPUT", path}, {"MARKS", marksPath}, {"OUTPUT", target}});
      VERIFY_REFUSED(run, ({"OUTPUT", target}));
      QCOMPARE(sizes(), before);
    }
  }

  void replacing() {
    const QTemporaryDir folder;
    const QString path = folder.filePath("legs.gpx");
    const Layer legs = legsOf(twoLegs("a"));
    const auto put = [&](const QByteArray &content) {
      QFile file(path);
      file.open(QIODevice::WriteOnly);
      file.write(content);
    };
    put("someone's own");
    const GpxRun kept({{"INPUT", valueOf(legs)}, {"OUTPUT", path}, {"REPLACE", false}});
    VERIFY_REFUSED(kept, ({"OUTPUT", path, "REPLACE"}));
    QCOMPARE(kept.bytes(), QByteArray("someone's own"));
    const GpxRun replaced({{"INPUT", valueOf(legs)}, {"OUTPUT", path}});
    VERIFY_EXPORTED(replaced);
    QVERIFY(replaced.bytes().startsWith("<?xml"));
    QVERIFY(replaced.outcome.infos.join('\n').contains("in the place of an older one"));
    // An older file stays when nothing comes of the run.
    put("someone's own");
    const Layer empty = legsOf({});
    const GpxRun failed({{"INPUT", valueOf(empty)}, {"OUTPUT", path}});
    VERIFY_REFUSED(failed, ({"INPUT"}));
    QCOMPARE(failed.bytes(), QByteArray("someone's own"));
    QCOMPARE(QDir(folder.path()).entryList(QDir::Files | QDir::Hidden), QStringList("legs.gpx"));
    QFile::remove(path);
    const GpxRun fresh({{"INPUT", valueOf(legs)}, {"OUTPUT", path}, {"REPLACE", false}});
    VERIFY_EXPORTED(fresh);
  }

  // The system tells a full disk in three ways: at once, by writing less than asked for, or when what was held back is
  // written in the end. A limit on the size of files does the same.
  void fullDisks_data() {
    QTest::addColumn<int>("legs");
    QTest::addColumn<int>("limit");
    QTest::newRow("nothing can be written") << 3 << 0;
    QTest::newRow("held back to the end") << 3 << 2000;
    QTest::newRow("in the middle of a block") << 400 << 50000;
    QTest::newRow("at a block's end") << 400 << 65536;
    QTest::newRow("in the last block") << 150 << 90000;
  }
  void fullDisks() {
    QFETCH(int, legs);
    QFETCH(int, limit);
    std::vector<LegRow> rows;
    for (int i = 1; i <= legs; ++i)
      rows.push_back({leg("a", i), stretch(i)});
    const Layer layer = legsOf(rows);
    const GpxRun whole({{"INPUT", valueOf(layer)}});
    VERIFY_EXPORTED(whole);
    QVERIFY2(whole.bytes().size() > limit, qPrintable(QString::number(whole.bytes().size())));
    for (const bool older : {false, true}) {
      const QTemporaryDir folder;
      const QString path = folder.filePath("legs.gpx");
      if (older)
        QVERIFY(QFile::copy(whole.path, path));
      const Outcome outcome = [&] {
        const FullDisk full{rlim_t(limit)};
        return run("brushline:exportgpx", {{"INPUT", valueOf(layer)}, {"OUTPUT", path}, {"TITLE", "new"}});
      }();
      QVERIFY2(!outcome.ok, "half a file passed for a whole one");
      for (const char *word : {"OUTPUT", "legs.gpx", "could not be written whole", "Is the disk full?"})
        QVERIFY2(outcome.said().contains(word), qPrintable(outcome.said()));
      QCOMPARE(QDir(folder.path()).entryList(QDir::Files | QDir::Hidden),
               older ? QStringList("legs.gpx") : QStringList());
      if (older) {
        QFile file(path);
        QVERIFY(file.open(QIODevice::ReadOnly));
        QCOMPARE(file.readAll(), whole.bytes());
      }
    }
  }

  void otherEndings() {
    const QTemporaryDir folder;
    const Layer legs = legsOf(twoLegs("a"));
    const GpxRun odd({{"INPUT", valueOf(legs)}, {"OUTPUT", folder.filePath("legs.txt")}});
    VERIFY_EXPORTED(odd);
    QVERIFY2(odd.warnings().contains("does not end in .gpx"), qPrintable(odd.warnings()));
    const GpxRun loud({{"INPUT", valueOf(legs)}, {"OUTPUT", folder.filePath(QString::fromUtf8("Füchse 🦊.GPX"))}});
    VERIFY_EXPORTED(loud);
    QVERIFY2(loud.outcome.warnings.isEmpty(), qPrintable(loud.warnings()));
  }

  void numbersThatAreNone() {
    const double infinite = std::numeric_limits<double>::infinity();
    const Layer legs = legsOf(twoLegs("a", 48.8,
                                      {{"drift_m", infinite},
                                       {"along_m", std::nan("")},
                                       {"climb_m", 1e300},
                                       {"drop_m", 1e-300},
                                       {"true_brg", 359.96},
                                       {"sight_m", 1e9}}));
    const GpxRun run({{"INPUT", valueOf(legs)}});
    VERIFY_EXPORTED(run);
    const QDomElement point = run.gpx().points()[0];
    QCOMPARE(own(point, "drift_m"), QString());
    QCOMPARE(own(point, "along_m"), QString());
    QCOMPARE(own(point, "drop_m").toDouble(), 1e-300);
    QVERIFY(text(point, "desc").contains(QString::fromUtf8("true 000.0°")));
  }
};

BRUSHLINE_HOST_TEST_MAIN(ExportGpxBadInputTest)
#include "export_gpx_bad_input_test.moc"
