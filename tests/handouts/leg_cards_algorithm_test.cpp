// SPDX-License-Identifier: GPL-2.0-or-later
// What is in the PDF files is tested by leg_cards_pdf_test.sh. Check values: regression only.
#include "handouts/leg_rows.h"
#include "support/full_disk.h"
#include "support/host_fixture.h"

#include <QDir>
#include <QPainter>
#include <QProcess>
#include <QRegularExpression>
#include <QTranslator>
#include <qgsfillsymbol.h>
#include <qgsfillsymbollayer.h>
#include <qgsproject.h>
#include <qgsrendercontext.h>
#include <qgsrenderer.h>
#include <qgssinglesymbolrenderer.h>

#include <tuple>

using namespace brushline::test;

namespace {

const QString id = QStringLiteral("brushline:legcards");

// Routes, annotated, in a file; kept as long as this object.
class Legs {
public:
  Legs(const QString &crs, const std::vector<std::pair<QString, QString>> &nameAndLine, QVariantMap more = {}) {
    std::vector<Row> rows;
    for (const auto &[name, line] : nameAndLine)
      rows.push_back({wkt(line), {name}});
    const Layer routes =
        layer(QStringLiteral("routes"), QStringLiteral("LineString"), crs, {field("route", FieldType::Text)}, rows);
    more.insert({{"INPUT", valueOf(routes)},
                 {"ROUTE_FIELD", "route"},
                 {"DATE", "2026-11-25"},
                 {"OUTPUT", mFolder.filePath("legs.gpkg")},
                 {"MARKS", mFolder.filePath("marks.gpkg")}});
    const Outcome outcome = run(QStringLiteral("brushline:annotatelegs"), more, {nullptr, nullptr, false, true});
    if (!outcome.ok)
      throw std::runtime_error(outcome.said().toStdString());
  }
  QString legs() const { return mFolder.filePath("legs.gpkg"); }
  QString marks() const { return mFolder.filePath("marks.gpkg"); }

private:
  QTemporaryDir mFolder;
};

const QString utm = QStringLiteral("EPSG:32621");
const QString loop =
    QStringLiteral("LINESTRING(632200 5406800,632300 5406900,632500 5406850,632450 5406700,632200 5406800)");

Legs oneRoute() { return Legs(utm, {{"North loop", loop}}); }

Layer walkers() {
  return table(QStringLiteral("walkers"), {field("walker", FieldType::Text), field("paces_100m", FieldType::Real)},
               {{"Ada", 130.0}, {"Bo", 160.0}});
}

QStringList filesIn(const QString &folder) { return QDir(folder).entryList(QDir::Files | QDir::Hidden, QDir::Name); }

QByteArray contentOf(const QString &path) {
  QFile file(path);
  return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

bool isPdf(const QString &path) {
  const QByteArray content = contentOf(path);
  return content.startsWith("%PDF") && content.trimmed().endsWith("%%EOF");
}

int pagesOf(const QString &path) {
  // "/Type /Page" and a line's end, but not "/Type /Pages".
  return int(contentOf(path).count("/Type /Page\n"));
}

// The text of a card, its lines one after the other; throws when it cannot be read.
QString textOf(const QString &path) {
  QProcess reader;
  reader.start("pdftotext", {"-raw", path, "-"});
  if (!reader.waitForFinished() || reader.exitCode() != 0)
    throw std::runtime_error(path.toStdString());
  return QString::fromUtf8(reader.readAllStandardOutput()).simplified();
}

// A layer with the fields that are needed, and one leg on each line.
Layer bare(const QString &crs, const QString &line, const QVariantList &values) {
  return layer(QStringLiteral("legs"), QStringLiteral("LineString"), crs,
               {field("route", FieldType::Text), field("leg", FieldType::Integer), field("walker", FieldType::Text),
                field("direction", FieldType::Text), field("true_brg", FieldType::Real), field("decl", FieldType::Real),
                field("date", FieldType::Text), field("dial", FieldType::Real), field("dial_text", FieldType::Text),
                field("back_dial", FieldType::Real), field("dist_m", FieldType::Real),
                field("paces", FieldType::Integer)},
               {{wkt(line), values}});
}

} // namespace

class LegCardsAlgorithmTest : public QObject {
  Q_OBJECT

private slots:
  void aCardForEachRouteAndWalker() {
    const Layer people = walkers();
    const Legs legs(utm, {{"North loop", loop}, {"South", "LINESTRING(632200 5406800,632300 5406500)"}},
                    {{"WALKERS", valueOf(people)}, {"DIRECTION", 2}});
    const QTemporaryDir folder;
    const Outcome outcome =
        run(id, {{"INPUT", legs.legs()}, {"MARKS", legs.marks()}, {"FOLDER", folder.filePath("new/cards")}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.said(), QString());
    const QStringList files = filesIn(folder.filePath("new/cards"));
    QCOMPARE(files, QStringList({"North loop - Ada - back.pdf", "North loop - Ada.pdf", "North loop - Bo - back.pdf",
                                 "North loop - Bo.pdf", "South - Ada - back.pdf", "South - Ada.pdf",
                                 "South - Bo - back.pdf", "South - Bo.pdf", "cards.html"}));
    QCOMPARE(outcome.results.value("FILE_COUNT").toInt(), 8); // PDF files
    QCOMPARE(QDir(outcome.results.value("FOLDER").toString()), QDir(folder.filePath("new/cards")));
    for (const QString &file : files)
      QVERIFY2(file == "cards.html" || isPdf(folder.filePath("new/cards/" + file)), qPrintable(file));
    const QByteArray list = contentOf(folder.filePath("new/cards/cards.html"));
    QVERIFY(list.contains("href=\"./North%20loop%20-%20Ada%20-%20back.pdf\""));
    QCOMPARE(list.count("<tr>"), 9);
  }

  void allPapers_data() {
    QTest::addColumn<int>("paper");
    QTest::addColumn<int>("way");
    for (int paper = 0; paper < 5; ++paper)
      for (int way = 0; way < 2; ++way)
        QTest::newRow(qPrintable(QStringLiteral("%1 %2").arg(paper).arg(way))) << paper << way;
  }
  void allPapers() {
    QFETCH(int, paper);
    QFETCH(int, way);
    const Legs legs = oneRoute();
    const QTemporaryDir folder;
    const Outcome outcome = run(id, {{"INPUT", legs.legs()},
                                     {"MARKS", legs.marks()},
                                     {"PAPER", paper},
                                     {"ORIENTATION", way},
                                     {"DIAGRAMS", true},
                                     {"TITLE", "Autumn camp"},
                                     {"FOLDER", folder.path()}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QVERIFY(isPdf(folder.filePath("North loop.pdf")));
  }

  void withoutTheList() {
    const Legs legs = oneRoute();
    const QTemporaryDir folder;
    const Outcome outcome = run(id, {{"INPUT", legs.legs()}, {"INDEX", false}, {"FOLDER", folder.path()}});
    QCOMPARE(filesIn(folder.path()), QStringList("North loop.pdf"));
    QCOMPARE(outcome.results.value("FILE_COUNT").toInt(), 1);
  }

  void sheetsHoldTheCardsOfAllWalkers() {
    const Layer people = walkers();
    const Legs legs(utm, {{"North loop", loop}}, {{"WALKERS", valueOf(people)}});
    const QTemporaryDir folder;
    const Outcome outcome =
        run(id, {{"INPUT", legs.legs()}, {"PAPER", 0}, {"SHEET", 1}, {"FOLDER", folder.path()}, {"INDEX", false}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(filesIn(folder.path()), QStringList("North loop - cards.pdf"));
    QCOMPARE(pagesOf(folder.filePath("North loop - cards.pdf")), 1); // four sides of A6 on A4
    const Outcome fewer = run(id, {{"INPUT", legs.legs()},
                                   {"PAPER", 0},
                                   {"SHEET", 1},
                                   {"CARDS_PER_SHEET", 2},
                                   {"FOLDER", folder.path()},
                                   {"INDEX", false}});
    QVERIFY(fewer.ok);
    QCOMPARE(pagesOf(folder.filePath("North loop - cards.pdf")), 2);
    const Outcome none =
        run(id, {{"INPUT", legs.legs()}, {"PAPER", 2}, {"ORIENTATION", 0}, {"SHEET", 2}, {"FOLDER", folder.path()}});
    QVERIFY(!none.accepted); // A4 is longer than letter
    QVERIFY2(none.refusal.contains("SHEET"), qPrintable(none.refusal));
  }

  // --- what is refused -----------------------------------------------------------------------------------------------

  void legsWithoutTheFieldsAreRefused() {
    const Layer routes = layer("routes", "LineString", utm, {field("route", FieldType::Text)}, {{wkt(loop), {"a"}}});
    const QTemporaryDir folder;
    const Outcome outcome = run(id, {{"INPUT", valueOf(routes)}, {"FOLDER", folder.path()}});
    QVERIFY(!outcome.accepted);
    for (const char *word : {"INPUT", "routes", "dial_text", "paces", "brushline:annotatelegs"})
      QVERIFY2(outcome.refusal.contains(QLatin1String(word)), qPrintable(outcome.refusal));
    QVERIFY(filesIn(folder.path()).isEmpty());
  }
  void layersThatCannotBeReadAreNamed() {
    const Legs legs = oneRoute();
    const QTemporaryDir folder;
    const Outcome outcome = run(id, {{"INPUT", legs.legs()},
                                     {"LAYERS", QVariantList{legs.marks(), "/no/such/layer.gpkg"}},
                                     {"FOLDER", folder.path()}});
    QVERIFY(!outcome.accepted);
    QVERIFY2(outcome.refusal.contains("LAYERS") && outcome.refusal.contains("/no/such/layer.gpkg"),
             qPrintable(outcome.refusal));
  }
  void scalesThatAreNone() {
    const Legs legs = oneRoute();
    const QTemporaryDir folder;
    for (const QVariant &scale : {QVariant(-1), QVariant(0.5), QVariant(1e9), QVariant("1:5000")}) {
      const Outcome outcome = run(id, {{"INPUT", legs.legs()}, {"SCALE", scale}, {"FOLDER", folder.path()}});
      QVERIFY2(!outcome.accepted && outcome.refusal.contains("SCALE"), qPrintable(scale.toString() + outcome.refusal));
    }
  }
  void anEmptyLayerIsAnError() {
    const Layer empty = layer("legs", "LineString", utm, {}, {});
    const Layer fields = bare(utm, loop, {"r", 1, "w", "out", 10.0, 0.0, "2026-11-25", 10.0, "010", 190.0, 100.0, 130});
    fields->dataProvider()->truncate();
    const QTemporaryDir folder;
    const Outcome outcome = run(id, {{"INPUT", valueOf(fields)}, {"FOLDER", folder.filePath("x")}});
    QVERIFY(!outcome.ok);
    QVERIFY2(outcome.said().contains("no features"), qPrintable(outcome.said()));
    QVERIFY(!QDir(folder.filePath("x")).exists());
  }
  void foldersThatCannotBeWrittenTo() {
    const Legs legs = oneRoute();
    const QTemporaryDir folder;
    QFile(folder.filePath("file")).open(QIODevice::WriteOnly);
    for (const QString &path : {folder.filePath("file"), folder.filePath("file/below"), QStringLiteral("/proc/no")}) {
      const Outcome outcome = run(id, {{"INPUT", legs.legs()}, {"FOLDER", path}});
      QVERIFY2(!outcome.ok && outcome.said().contains("FOLDER"), qPrintable(outcome.said()));
    }
  }
  void filesAreReplacedOnlyWhenThatIsWanted() {
    const Legs legs = oneRoute();
    const QTemporaryDir folder;
    QFile old(folder.filePath("North loop.pdf"));
    QVERIFY(old.open(QIODevice::WriteOnly) && old.write("old") == 3);
    old.close();
    const Outcome refused = run(id, {{"INPUT", legs.legs()}, {"FOLDER", folder.path()}, {"REPLACE", false}});
    QVERIFY2(!refused.ok && refused.said().contains("REPLACE"), qPrintable(refused.said()));
    QCOMPARE(filesIn(folder.path()), QStringList("North loop.pdf"));
    QCOMPARE(contentOf(folder.filePath("North loop.pdf")), QByteArray("old"));
    const Outcome replaced = run(id, {{"INPUT", legs.legs()}, {"FOLDER", folder.path()}});
    QVERIFY(replaced.ok && isPdf(folder.filePath("North loop.pdf")));
  }
  void anInputIsNotWrittenOver() {
    const Legs legs = oneRoute();
    const QTemporaryDir folder;
    const QString odd = folder.filePath("North loop.pdf"); // legs in a file of that name
    QVERIFY(QFile::copy(legs.legs(), odd));
    const QByteArray before = contentOf(odd);
    const Outcome outcome = run(id, {{"INPUT", odd}, {"FOLDER", folder.path()}});
    QVERIFY(!outcome.ok);
    QCOMPARE(contentOf(odd), before);
  }
  void aFullDiskLeavesNoHalfFile() {
    const Legs legs = oneRoute();
    const QTemporaryDir folder;
    const Outcome outcome = [&] {
      const FullDisk full(4096);
      return run(id, {{"INPUT", legs.legs()}, {"FOLDER", folder.path()}});
    }();
    QVERIFY(!outcome.ok);
    QVERIFY2(outcome.said().contains("full"), qPrintable(outcome.said()));
    QCOMPARE(filesIn(folder.path()), QStringList());
  }

  // --- odd names, places, sizes --------------------------------------------------------------------------------------

  void namesOfAllKinds() {
    QStringList odd{"../../etc/x",
                    "a/b \\ c",
                    "say \"hello\" 'you'",
                    QString::fromUtf8("fox 🦊 den"),
                    QString(300, 'W'),
                    "CON",
                    "<b>bold</b> &amp;",
                    QString::fromUtf8("שלום עולם"),
                    QString::fromUtf8("مرحبا"),
                    "%1 %2",
                    "-rf",
                    QString::fromUtf8("up\u202Eside")};
    std::vector<std::pair<QString, QString>> routes;
    for (const QString &name : odd)
      routes.push_back({name, loop});
    const Legs legs(utm, routes);
    const QTemporaryDir folder;
    QVERIFY(QDir(folder.path()).mkpath("in/here"));
    const Outcome outcome =
        run(id, {{"INPUT", legs.legs()}, {"FOLDER", folder.filePath("in/here")}, {"TITLE", "<i>%1</i>"}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    const QStringList files = filesIn(folder.filePath("in/here"));
    QCOMPARE(files.size(), odd.size() + 1);
    QCOMPARE(QDir(folder.path()).entryList(QDir::AllEntries | QDir::NoDotAndDotDot), QStringList("in"));
    const QByteArray list = contentOf(folder.filePath("in/here/cards.html"));
    QVERIFY(!list.contains("<b>") && list.contains("&lt;b&gt;bold"));
    QVERIFY(list.contains("&lt;i&gt;%1&lt;/i&gt;"));
    QVERIFY2(outcome.said().contains("ellipsis"), qPrintable(outcome.said())); // of the 300 letters
  }
  void routesOfOneNameAreKeptApart() {
    const Legs legs(utm, {{"same", loop}, {"same", "LINESTRING(633200 5406800,633300 5406500)"}});
    const QTemporaryDir folder;
    const Outcome outcome = run(id, {{"INPUT", legs.legs()}, {"MARKS", legs.marks()}, {"FOLDER", folder.path()}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QVERIFY2(outcome.said().contains("several routes"), qPrintable(outcome.said()));
    QCOMPARE(filesIn(folder.path()), QStringList({"cards.html", "same (2).pdf", "same.pdf"}));
    const QByteArray list = contentOf(folder.filePath("cards.html"));
    QVERIFY(list.contains("<td>4</td>") && list.contains("<td>1</td>")); // legs
  }
  void moreLegsThanAPageHolds() {
    QString line = QStringLiteral("LINESTRING(632200 5406800");
    for (int i = 1; i <= 60; ++i)
      line += QStringLiteral(",%1 %2").arg(632200 + 40 * i).arg(5406800 + (i % 2) * 60);
    const Legs legs(utm, {{"long", line + ")"}});
    const QTemporaryDir folder;
    const Outcome outcome = run(id, {{"INPUT", legs.legs()}, {"PAPER", 0}, {"FOLDER", folder.path()}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QVERIFY(pagesOf(folder.filePath("long.pdf")) >= 6);
  }
  void places_data() {
    QTest::addColumn<QString>("crs");
    QTest::addColumn<QString>("line");
    QTest::newRow("10 m") << utm << "LINESTRING(632200 5406800,632206 5406808)";
    QTest::newRow("50 km") << "EPSG:4326"
                           << "LINESTRING(-55.2 48.8,-55 49,-54.9 48.9,-54.6 49.1)";
    QTest::newRow("antimeridian") << "EPSG:4326"
                                  << "LINESTRING(179.995 52,-179.99 52.003,-179.98 51.998)";
    QTest::newRow("antimeridian, Mercator") << "EPSG:3832"
                                            << "LINESTRING(3339000 6800000,3340000 6801000)";
    QTest::newRow("pole") << "EPSG:4326"
                          << "LINESTRING(10 89.99,100 89.99,-170 89.985)";
    QTest::newRow("at the pole") << "EPSG:4326"
                                 << "LINESTRING(0 90,30 89.99)";
    QTest::newRow("south") << "EPSG:4326"
                           << "LINESTRING(166 -77.8,166.1 -77.81)";
    QTest::newRow("web Mercator") << "EPSG:3857"
                                  << "LINESTRING(-6144000 6240000,-6143000 6241000)";
    QTest::newRow("degrees as units") << "EPSG:4326"
                                      << "LINESTRING(7 46,7.01 46.01)";
    QTest::newRow("feet") << "EPSG:2263"
                          << "LINESTRING(980000 200000,981000 201000)";
    QTest::newRow("unequal scales") << "EPSG:6933"
                                    << "LINESTRING(675000 5300000,676000 5301000)";
    QTest::newRow("there and back") << utm << "LINESTRING(632200 5406800,632300 5406800,632200 5406800)";
  }
  void places() {
    QFETCH(QString, crs);
    QFETCH(QString, line);
    const Legs legs(crs, {{"route", line}});
    const QTemporaryDir folder;
    const Outcome outcome =
        run(id, {{"INPUT", legs.legs()}, {"MARKS", legs.marks()}, {"DIAGRAMS", true}, {"FOLDER", folder.path()}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QVERIFY(isPdf(folder.filePath("route.pdf")));
    QCOMPARE(outcome.said(), QString());
  }
  void scalesAtWhichTheCourseDoesNotFit() {
    const Legs legs = oneRoute();
    const QTemporaryDir folder;
    const Outcome large = run(id, {{"INPUT", legs.legs()}, {"SCALE", 500}, {"FOLDER", folder.path()}});
    QVERIFY(large.ok);
    QVERIFY2(large.said().contains("larger than this map") && large.said().contains("1:500"), qPrintable(large.said()));
    const Outcome small = run(id, {{"INPUT", legs.legs()}, {"SCALE", 1000000}, {"FOLDER", folder.path()}});
    QVERIFY(small.ok);
    QVERIFY2(small.said().contains("0.3 mm long"), qPrintable(small.said()));
    const Outcome right = run(id, {{"INPUT", legs.legs()}, {"SCALE", 5000}, {"FOLDER", folder.path()}});
    QCOMPARE(right.said(), QString());
  }
  void legsWithHolesInTheirRows() {
    const QVariant none;
    const Layer poor = bare(utm, "LINESTRING(632200 5406800,632300 5406900)",
                            {none, 1, none, none, none, none, none, none, none, none, 141.4, 180});
    const QTemporaryDir folder;
    const Outcome outcome = run(id, {{"INPUT", valueOf(poor)}, {"FOLDER", folder.path()}, {"DIAGRAMS", true}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(filesIn(folder.path()), QStringList({"cards.html", "course.pdf"}));
  }

  void longWarningsAreWhole() {
    QString warnings;
    for (int i = 0; i < 700; ++i) // more than 2000 letters
      warnings += QStringLiteral("w%1 ").arg(i);
    const Layer warned =
        layer(QStringLiteral("legs"), QStringLiteral("LineString"), utm,
              {field("route", FieldType::Text), field("leg", FieldType::Integer), field("walker", FieldType::Text),
               field("direction", FieldType::Text), field("true_brg", FieldType::Real), field("decl", FieldType::Real),
               field("date", FieldType::Text), field("dial", FieldType::Real), field("dial_text", FieldType::Text),
               field("back_dial", FieldType::Real), field("dist_m", FieldType::Real),
               field("paces", FieldType::Integer), field("warnings", FieldType::Text)},
              {{wkt("LINESTRING(632200 5406800,632300 5406900)"),
                {"r", 1, "Ada", "out", 46.0, -17.0, "2026-11-25", 64.0, "064", 243.0, 141.4, 180, warnings}}});
    const QTemporaryDir folder;
    const Outcome outcome = run(id, {{"INPUT", valueOf(warned)}, {"FOLDER", folder.path()}, {"PAPER", 0}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.said(), QString());
    QProcess reader;
    reader.start("pdftotext", {"-raw", folder.filePath("r - Ada.pdf"), "-"});
    QVERIFY(reader.waitForFinished() && reader.exitCode() == 0);
    QStringList told =
        QString::fromUtf8(reader.readAllStandardOutput()).split(QRegularExpression("\\s+"), Qt::SkipEmptyParts);
    told = told.filter(QRegularExpression("^w\\d+$"));
    QCOMPARE(told.join(' '), warnings.trimmed());
  }

  // --- layers --------------------------------------------------------------------------------------------------------

  void layersStayAsTheyAre() {
    const Legs legs = oneRoute();
    const Layer cover =
        layer("cover", "Polygon", utm, {field("class", FieldType::Text)},
              {{wkt("POLYGON((632000 5406500,632600 5406500,632600 5407000,632000 5407000,632000 5406500))"), {"x"}}});
    auto *hatch = new QgsLinePatternFillSymbolLayer();
    auto *symbol = static_cast<QgsFillSymbol *>(QgsSymbol::defaultSymbol(cover->geometryType()));
    symbol->changeSymbolLayer(0, hatch);
    cover->setRenderer(new QgsSingleSymbolRenderer(symbol));
    cover->setBlendMode(QPainter::CompositionMode_Multiply);
    const Layer note = table("note", {field("a", FieldType::Text)}, {{"x"}});
    const QTemporaryDir folder;
    const Outcome outcome = run(
        id,
        {{"INPUT", legs.legs()}, {"LAYERS", QVariantList{valueOf(cover), valueOf(note)}}, {"FOLDER", folder.path()}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QVERIFY2(outcome.said().contains("note") && outcome.said().contains("without geometry"),
             qPrintable(outcome.said()));
    QVERIFY2(outcome.infos.join(' ').contains("cover"), "blending is told");
    QgsRenderContext context;
    QCOMPARE(cover->renderer()->symbols(context).first()->symbolLayer(0)->layerType(),
             QStringLiteral("LinePatternFill"));
    QVERIFY(!contentOf(folder.filePath("North loop.pdf")).contains("/Subtype /Image"));
  }
  void rastersAreDrawnAsPictures() {
    const Legs legs = oneRoute();
    const QTemporaryDir folder;
    writeRaster(folder.filePath("heights.tif"), {utm, {632000, 5, 0, 5407100, 0, -5}, 160, 120, {}, {}, {}, false, 1},
                [](double x, double y, int) { return 100 + (x - 632000) / 20 + (y - 5406500) / 50; });
    const Outcome outcome = run(id, {{"INPUT", legs.legs()},
                                     {"LAYERS", QVariantList{folder.filePath("heights.tif")}},
                                     {"DEM", folder.filePath("heights.tif")},
                                     {"FOLDER", folder.filePath("out")}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QVERIFY(contentOf(folder.filePath("out/North loop.pdf")).contains("/Subtype /Image"));
  }
  void featuresOnTheWay() {
    const Legs legs = oneRoute();
    const QList<QgsField> fields{field("route", FieldType::Text), field("leg", FieldType::Integer),
                                 field("feature", FieldType::Text), field("at_m", FieldType::Real),
                                 field("role", FieldType::Text)};
    const Layer met = layer("met", "Point", utm, fields,
                            {{wkt("POINT(632250 5406850)"), {"North loop", 1, "Spring Rill", 70.7, "crossed"}},
                             {wkt("POINT(632250 5406850)"), {"North loop", 9, "nothing", 70.7, "crossed"}},
                             {wkt("POINT(632250 5406850)"), {"North loop", 1, "nowhere", QVariant(), "crossed"}}});
    const QTemporaryDir folder;
    const Outcome outcome = run(id, {{"INPUT", legs.legs()}, {"FEATURES", valueOf(met)}, {"FOLDER", folder.path()}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QVERIFY2(outcome.said().contains("2 row(s)"), qPrintable(outcome.said()));

    // However long its name, the row tells where it is.
    const Layer named = layer("named", "Point", utm, fields,
                              {{wkt("POINT(632250 5406850)"),
                                {"North loop", 1, QString("Spring Rill of the ").repeated(30), 70.7, "crossed"}}});
    QVERIFY(run(id, {{"INPUT", legs.legs()}, {"FEATURES", valueOf(named)}, {"FOLDER", folder.path()}}).ok);
    const QString text = textOf(folder.filePath("North loop.pdf"));
    QVERIFY2(text.contains(QRegularExpression("crosses Spring Rill.*….*Rill of the at \\d+ paces")), qPrintable(text));

    const Layer wrong = layer("wrong", "Point", utm, {field("route", FieldType::Text)}, {});
    const Outcome refused = run(id, {{"INPUT", legs.legs()}, {"FEATURES", valueOf(wrong)}, {"FOLDER", folder.path()}});
    QVERIFY2(!refused.accepted && refused.refusal.contains("at_m"), qPrintable(refused.refusal));
  }

  // The words of role and event are those of featuresmet; a card tells them in its reader's language.
  void featuresInTheReadersLanguage_data() {
    QTest::addColumn<QString>("language");
    QTest::addColumn<QStringList>("told");
    QTest::newRow("English") << QString() << QStringList{"crosses Spring Rill at",    "Flat Rock to the left at",
                                                         "Tall Pine to the right at", "gone too far: Mill Track at",
                                                         "enters Black Pond at",      "leaves Black Pond at",
                                                         "goes along Old Fence at",   "comes to Ditch at",
                                                         "the ground rises at",       "under Old Bridge at"};
    QTest::newRow("German") << QStringLiteral("de")
                            << QStringList{"quert Spring Rill bei",    "Flat Rock links bei",
                                           "Tall Pine rechts bei",     "zu weit gegangen: Mill Track bei",
                                           "hinein in Black Pond bei", "heraus aus Black Pond bei",
                                           "entlang an Old Fence bei", "stößt auf Ditch bei",
                                           "the ground rises bei",     "under Old Bridge bei"};
    QTest::newRow("French") << QStringLiteral("fr")
                            << QStringList{"traverse Spring Rill à",  "Flat Rock à gauche à",
                                           "Tall Pine à droite à",    "allé trop loin : Mill Track à",
                                           "entre dans Black Pond à", "sort de Black Pond à",
                                           "longe Old Fence à",       "atteint Ditch à",
                                           "the ground rises à",      "under Old Bridge à"};
  }
  void featuresInTheReadersLanguage() {
    QFETCH(QString, language);
    QFETCH(QStringList, told);
    const Legs legs = oneRoute();
    std::vector<Row> rows;
    const auto met = [&rows](const char *name, const char *role, const char *event) {
      rows.push_back(
          {wkt("POINT(632250 5406850)"), {"North loop", 1, name, 10.0 * (double(rows.size()) + 1), role, event}});
    };
    met("Spring Rill", "crossed", "across");
    met("Flat Rock", "left", "passed");
    met("Tall Pine", "right", "passed");
    met("Black Pond", "crossed", "into");
    met("Black Pond", "crossed", "out of");
    met("Old Fence", "crossed", "along");
    met("Ditch", "crossed", "touched");
    met("the ground rises", "crossed", "ground rises");
    met("Old Bridge", "under", ""); // a word of somebody's own
    met("Mill Track", "beyond", "across");
    const Layer layerMet =
        layer("met", "Point", utm,
              {field("route", FieldType::Text), field("leg", FieldType::Integer), field("feature", FieldType::Text),
               field("at_m", FieldType::Real), field("role", FieldType::Text), field("event", FieldType::Text)},
              rows);
    QTranslator words;
    if (!language.isEmpty()) {
      QVERIFY(words.load(QStringLiteral(":/brushline/translations/brushline_%1.qm").arg(language)));
      QCoreApplication::installTranslator(&words); // taken out when it goes
    }
    const QTemporaryDir folder;
    const Outcome outcome =
        run(id, {{"INPUT", legs.legs()}, {"FEATURES", valueOf(layerMet)}, {"FOLDER", folder.path()}, {"PAPER", 2}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    const QString text = textOf(folder.filePath("North loop.pdf"));
    for (const QString &each : told)
      QVERIFY2(text.contains(each), qPrintable(each + "\n" + text));
  }

  // The leg's head says where it goes; the thing that stands there is not told again. The first leg is 141.4 m long.
  void whereALegGoesIsToldOnce() {
    const Layer named = layer("named", "Point", utm, {field("name", FieldType::Text)},
                              {{wkt("POINT(632300 5406900)"), {"Split Boulder"}}});
    const Legs legs(utm, {{"North loop", loop}}, {{"POINTS", valueOf(named)}});
    const auto cardWith = [&legs](const char *name, double at_m, const char *role) {
      const Layer met =
          layer("met", "Point", utm,
                {field("route", FieldType::Text), field("leg", FieldType::Integer), field("feature", FieldType::Text),
                 field("at_m", FieldType::Real), field("role", FieldType::Text), field("event", FieldType::Text)},
                {{wkt("POINT(632250 5406850)"), {"North loop", 1, name, at_m, role, "touched"}}});
      const QTemporaryDir folder;
      const Outcome outcome =
          run(id, {{"INPUT", legs.legs()}, {"FEATURES", valueOf(met)}, {"FOLDER", folder.path()}, {"PAPER", 2}});
      if (!outcome.ok)
        throw std::runtime_error(outcome.said().toStdString());
      return textOf(folder.filePath("North loop.pdf"));
    };
    const QString told = cardWith("Split Boulder", 141.4, "crossed");
    QVERIFY2(told.contains("to Split Boulder") && !told.contains("comes to"), qPrintable(told));
    for (const auto &[name, at, role, words] :
         {std::tuple("Split Boulder", 70., "crossed", "comes to Split Boulder at"),
          std::tuple("Ditch", 141.4, "crossed", "comes to Ditch at"),
          std::tuple("Split Boulder", 141.4, "left", "Split Boulder to the left"),
          std::tuple("Split Boulder", 150., "beyond", "far: Split Boulder at")}) {
      const QString card = cardWith(name, at, role);
      QVERIFY2(card.contains(words), qPrintable(card));
    }
  }

  // Nobody can tell from the start of which piece the metres of a thing count.
  void featuresOfLegsInPieces() {
    const Layer legs = layerWithDetour(rowsWithDetour());
    const Layer met = layer("met", "Point", utm,
                            {field("route", FieldType::Text), field("leg", FieldType::Integer),
                             field("feature", FieldType::Text), field("at_m", FieldType::Real)},
                            {{wkt("POINT(632250 5406850)"), {"Loop", 1, "Spring Rill", 10}},
                             {wkt("POINT(632250 5406850)"), {"Loop", 2, "Spring Rill", 10}}});
    const QTemporaryDir folder;
    const Outcome outcome = run(id, {{"INPUT", valueOf(legs)}, {"FEATURES", valueOf(met)}, {"FOLDER", folder.path()}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QVERIFY2(outcome.said().contains("1 row(s) of layer “met”"), qPrintable(outcome.said()));
    QCOMPARE(textOf(folder.filePath(filesIn(folder.path()).first())).count("Spring Rill"), 1);
  }

  // At 40 m on the second leg out is at 60 m on the first leg back: 52 and 78 paces of 130 to 100 m.
  void featuresOfTheWayBack() {
    const Legs legs(utm, {{"North loop", "LINESTRING(632200 5406800,632200 5406900,632300 5406900)"}},
                    {{"DIRECTION", 2}});
    const QTemporaryDir folder;
    const Layer rills = layer("rills", "LineString", utm, {field("name", FieldType::Text)},
                              {{wkt("LINESTRING(632240 5406850,632240 5406950)"), {"Rill"}}});
    const Outcome met = run(
        "brushline:featuresmet",
        {{"INPUT", legs.legs()}, {"FEATURES", QVariantList{valueOf(rills)}}, {"OUTPUT", folder.filePath("met.gpkg")}},
        {nullptr, nullptr, false, true});
    QVERIFY2(met.ok, qPrintable(met.said()));
    const Outcome outcome = run(
        id, {{"INPUT", legs.legs()}, {"FEATURES", folder.filePath("met.gpkg")}, {"FOLDER", folder.filePath("cards")}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QVERIFY2(!outcome.said().contains("row(s)"), qPrintable(outcome.said()));
    const QString out = textOf(folder.filePath("cards/North loop.pdf")),
                  back = textOf(folder.filePath("cards/North loop - back.pdf"));
    QVERIFY2(out.contains("crosses Rill at 52 paces") && out.count("Rill") == 1, qPrintable(out));
    QVERIFY2(back.contains("crosses Rill at 78 paces") && back.count("Rill") == 1, qPrintable(back));
  }
  // Nobody can tell on which of the first legs the rill lies; there is one second leg.
  void featuresOfRoutesOfOneName() {
    const Legs legs(utm, {{"same", "LINESTRING(633200 5406800,633300 5406800)"},
                          {"same", "LINESTRING(634200 5406800,634300 5406800,634300 5406900)"}});
    const Layer met = layer("met", "Point", utm,
                            {field("route", FieldType::Text), field("leg", FieldType::Integer),
                             field("feature", FieldType::Text), field("at_m", FieldType::Real)},
                            {{wkt("POINT(634250 5406800)"), {"same", 1, "Rill", 50.0}},
                             {wkt("POINT(634300 5406850)"), {"same", 2, "Brook", 50.0}}});
    const QTemporaryDir folder;
    const Outcome outcome = run(id, {{"INPUT", legs.legs()}, {"FEATURES", valueOf(met)}, {"FOLDER", folder.path()}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QVERIFY2(outcome.said().contains("1 row(s)"), qPrintable(outcome.said()));
    const QString first = textOf(folder.filePath("same.pdf")), second = textOf(folder.filePath("same (2).pdf"));
    QVERIFY2(!first.contains("Rill") && !first.contains("Brook"), qPrintable(first));
    QVERIFY2(!second.contains("Rill") && second.contains("Brook at 65 paces"), qPrintable(second));
  }

  // --- stopping ------------------------------------------------------------------------------------------------------

  void aCancelEndsBetweenCards() {
    std::vector<std::pair<QString, QString>> routes;
    for (int i = 0; i < 20; ++i)
      routes.push_back({QStringLiteral("route %1").arg(i), loop});
    const Legs legs(utm, routes);
    double least = 1e9; // seconds; of three tries, since other programs run on the machine too
    for (int attempt = 0; attempt < 3; ++attempt) {
      const QTemporaryDir folder;
      Ear ear;
      QElapsedTimer since;
      connect(&ear, &QgsFeedback::progressChanged, [&](double progress) {
        if (progress >= 25 && !ear.isCanceled()) {
          since.start();
          ear.cancel();
        }
      });
      run(id, {{"INPUT", legs.legs()}, {"FOLDER", folder.path()}}, {nullptr, &ear});
      QVERIFY(since.isValid());
      least = std::min(least, double(since.nsecsElapsed()) * 1e-9);
      const QStringList files = filesIn(folder.path());
      QCOMPARE(files.size(), 5); // a quarter of 20, and no list
      for (const QString &file : files)
        QVERIFY2(isPdf(folder.filePath(file)), qPrintable(file));
      QVERIFY2(ear.infos.join(' ').contains("5 whole file"), qPrintable(ear.infos.join(' ')));
    }
    QVERIFY2(least < soon, qPrintable(QString::number(least)));
  }
};

BRUSHLINE_HOST_TEST_MAIN(LegCardsAlgorithmTest)
#include "leg_cards_algorithm_test.moc"
