// SPDX-License-Identifier: GPL-2.0-or-later
// Reads the sources as text and holds the house to its own rules.
#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QFileInfo>
#include <QHash>
#include <QRegularExpression>
#include <QSet>
#include <QTest>

namespace {

// Each folder may include itself and those before it.
const QStringList order = {QStringLiteral("quantities"), QStringLiteral("shared"),   QStringLiteral("magnetics"),
                           QStringLiteral("walking"),    QStringLiteral("sighting"), QStringLiteral("legs"),
                           QStringLiteral("planning"),   QStringLiteral("records"),  QStringLiteral("handouts")};

const QString source = QStringLiteral(BRUSHLINE_SOURCE_DIR);

QString textOf(const QString &path) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly))
    qFatal("cannot read %s", qPrintable(path));
  return QString::fromUtf8(file.readAll());
}

QStringList filesBelow(const QString &folder, const QStringList &patterns) {
  QStringList files;
  QDirIterator found(folder, patterns, QDir::Files, QDirIterator::Subdirectories);
  while (found.hasNext())
    files << found.next();
  files.sort();
  return files;
}

QStringList algorithmSources() {
  return filesBelow(source + QStringLiteral("/algorithms"), {QStringLiteral("*.cpp"), QStringLiteral("*.h")});
}

QString folderOf(const QString &path) { return QFileInfo(path).dir().dirName(); }

// The files that may know the host.
bool isHostFile(const QString &path) {
  const QString stem = QFileInfo(path).completeBaseName();
  return stem.endsWith(QLatin1String("_algorithm")) || stem.endsWith(QLatin1String("_parameters")) ||
         stem.endsWith(QLatin1String("_host")) || stem == QLatin1String("algorithms");
}

bool isWrapper(const QString &path) {
  const QString stem = QFileInfo(path).completeBaseName();
  return path.endsWith(QLatin1String(".cpp")) && stem.endsWith(QLatin1String("_algorithm")) &&
         stem != QLatin1String("base_algorithm");
}

// What the head of a table of check values, before its first row, does not tell of where they come from; empty: it
// tells all. Rows that have sources of their own each name one.
QString notToldBy(const QString &table) {
  static const QRegularExpression cell(QStringLiteral("(?:^|,)(\"(?:[^\"]|\"\")*\"|[^,]*)"));
  const auto cellsOf = [](const QString &line) {
    QStringList cells;
    for (auto found = cell.globalMatch(line); found.hasNext();)
      cells << found.next().captured(1).remove(QLatin1Char('"')).trimmed();
    return cells;
  };
  QString source;
  int sourceColumn = -1;
  bool inHead = true, anyRow = false;
  for (QString line : table.split(QLatin1Char('\n'))) {
    line.remove(QLatin1Char('\r'));
    if (line.startsWith(QLatin1String("# source:"))) {
      if (!inHead)
        return QStringLiteral("the source stands below the first row");
      if (!source.isEmpty())
        return QStringLiteral("a second source");
      source = line.mid(9).trimmed();
      // One word says too little: no publication, no page, no way it was computed.
      if (source.count(QLatin1Char(' ')) < 1)
        return QStringLiteral("no source, or one of a single word");
    }
    if (line.isEmpty() || line.startsWith(QLatin1Char('#')))
      continue;
    if (inHead) {
      inHead = false;
      if (source.isEmpty())
        return QStringLiteral("no source");
      sourceColumn = cellsOf(line).indexOf(QStringLiteral("source"));
      if (source.startsWith(QLatin1String("per row")) && sourceColumn < 0)
        return QStringLiteral("no column source");
      continue;
    }
    anyRow = true;
    if (source.startsWith(QLatin1String("per row")) && !cellsOf(line).value(sourceColumn).contains(QLatin1Char(' ')))
      return QStringLiteral("a row without source: ") + line;
  }
  return anyRow ? QString() : QStringLiteral("no rows");
}

} // namespace

class StructureTest : public QObject {
  Q_OBJECT
private slots:
  void thereAreSources() { QVERIFY(algorithmSources().size() > 20); }

  void dependenciesRunOneWay() {
    const QRegularExpression include(QStringLiteral("#include \"(\\w+)/"));
    for (const QString &path : algorithmSources()) {
      const int own = order.indexOf(folderOf(path));
      QVERIFY2(own >= 0, qPrintable(path + QStringLiteral(" lies in a folder that the order does not name")));
      auto found = include.globalMatch(textOf(path));
      while (found.hasNext()) {
        const QString folder = found.next().captured(1);
        const int other = order.indexOf(folder);
        QVERIFY2(other >= 0 && other <= own, qPrintable(path + QStringLiteral(" includes ") + folder));
      }
    }
  }

  void coreKnowsNoHost() {
    const QRegularExpression host(
        QStringLiteral("#include (<(Q|qgs|qgis)|\"\\w+/\\w+_(host|parameters|algorithm)\\.h)"));
    for (const QString &path : algorithmSources())
      if (!isHostFile(path))
        QVERIFY2(!textOf(path).contains(host), qPrintable(path));
  }

  // Everything lies in one namespace: two types of one name in two headers would share their vectors' code, and one of
  // them would be read as the other.
  void typesHaveNamesOfTheirOwn() {
    const QRegularExpression type(
        QStringLiteral("^(?:template ?<[^>]*> ?)?(?:struct|enum class|class|enum|union) (\\w+)[^;\\n]*\\{"),
        QRegularExpression::MultilineOption);
    QHash<QString, QString> headers;
    for (const QString &path : filesBelow(source + QStringLiteral("/algorithms"), {QStringLiteral("*.h")})) {
      auto found = type.globalMatch(textOf(path));
      while (found.hasNext()) {
        const QString name = found.next().captured(1);
        QVERIFY2(!headers.contains(name),
                 qPrintable(QStringLiteral("%1 is in %2 and in %3").arg(name, headers.value(name), path)));
        headers.insert(name, path);
      }
    }
    QVERIFY(headers.size() > 100);
  }

  void everySourceHasItsTest() {
    for (const QString &path : algorithmSources()) {
      if (!path.endsWith(QLatin1String(".cpp")) || (isHostFile(path) && !isWrapper(path)))
        continue;
      const QString test = source + QStringLiteral("/tests/") + folderOf(path) + QLatin1Char('/') +
                           QFileInfo(path).completeBaseName() + QStringLiteral("_test.cpp");
      QVERIFY2(QFile::exists(test), qPrintable(test + QStringLiteral(" is missing")));
    }
  }

  void wrappersAreThinAndHelpful() {
    const QRegularExpression id(QStringLiteral("::name\\(\\) const \\{ return QStringLiteral\\(\"([a-z]+)\"\\); \\}"));
    QSet<QString> ids;
    for (const QString &path : algorithmSources()) {
      if (!isWrapper(path))
        continue;
      const QString text = textOf(path);
      const auto found = id.match(text);
      QVERIFY2(found.hasMatch(), qPrintable(path + QStringLiteral(" has no plain name()")));
      const QString name = found.captured(1);
      QVERIFY2(!ids.contains(name), qPrintable(name + QStringLiteral(" is taken")));
      ids.insert(name);
      const QString help = QFileInfo(path).path() + QStringLiteral("/help/") + name + QStringLiteral(".txt");
      QVERIFY2(QFile::exists(help), qPrintable(help + QStringLiteral(" is missing")));
      const QString words = textOf(help);
      QVERIFY2(words.contains(QLatin1String("CAUTION")), qPrintable(help + QStringLiteral(" lacks the cautions")));
      QVERIFY2(words.contains(QLatin1String("example"), Qt::CaseInsensitive),
               qPrintable(help + QStringLiteral(" lacks a worked example")));
      QVERIFY2(text.count(QLatin1Char('\n')) <= 200, qPrintable(path + QStringLiteral(" is too long for a wrapper")));
    }
    QVERIFY(!ids.isEmpty());
  }

  // The tables that are built in are printed in the help of every language, row by row.
  void helpsPrintTheBuiltInTables() {
    const auto helpsPrint = [](const QString &stem, const QString &row) {
      for (const char *language : {"", "_de", "_fr"}) {
        const QString help =
            source + QStringLiteral("/algorithms/") + stem + QLatin1String(language) + QStringLiteral(".txt");
        QVERIFY2(textOf(help).contains(row), qPrintable(help + QStringLiteral(" lacks: ") + row));
      }
    };
    int rows = 0;
    const QRegularExpression cover(
        QStringLiteral("(?m)^([a-z ]+),(?:\"[^\"]*\"|[^,\"]*),(\\d+),(\\d+),([\\d.]*),([\\d.]+),"));
    auto found = cover.globalMatch(textOf(source + QStringLiteral("/algorithms/sighting/data/cover_own.csv")));
    for (; found.hasNext(); ++rows) {
      const QStringList cells = found.next().capturedTexts();
      const QString sights = QStringLiteral("%1 %2 / %3 m, ").arg(cells[1], cells[2], cells[3]);
      const QString factors = cells[4] + QStringLiteral(", ") + cells[5];
      for (const char *stem : {"legs/help/annotatelegs", "sighting/help/sightsurface"}) {
        helpsPrint(QLatin1String(stem), cells[4].isEmpty() ? sights : sights + factors);
      }
    }
    QCOMPARE(rows, 12);
    const QRegularExpression separation(QStringLiteral("(?m)^([a-z_]+),([\\d.]+),"));
    found = separation.globalMatch(textOf(source + QStringLiteral("/algorithms/planning/data/separation.csv")));
    for (rows = 0; found.hasNext(); ++rows) {
      const QStringList cells = found.next().capturedTexts();
      helpsPrint(QStringLiteral("planning/help/checkhazards"), QStringLiteral("%1 %2 m").arg(cells[1], cells[2]));
    }
    QCOMPARE(rows, 9);
  }

  void checkValuesNameTheirSource() {
    const QStringList files = filesBelow(source + QStringLiteral("/tests"), {QStringLiteral("*.csv")});
    QVERIFY(files.size() > 10);
    for (const QString &path : files) {
      const QString text = textOf(path), lack = notToldBy(text);
      QVERIFY2(lack.isEmpty(), qPrintable(path + QStringLiteral(": ") + lack));
      // Each of them is refused as soon as it lacks its source.
      QString without = text;
      without.remove(QRegularExpression(QStringLiteral("(?m)^# source:.*\n")));
      QVERIFY2(!notToldBy(without).isEmpty(), qPrintable(path));
      if (path.contains(QLatin1String("/tests/plugin/")))
        continue; // rules of our own and what we gave before: no figures of others
      for (const char *word : {"licence", "sure"}) {
        const QString told = QStringLiteral("(?m)\\A(?:#.*\n)*# %1: \\S").arg(QLatin1String(word));
        QVERIFY2(text.contains(QRegularExpression(told)), qPrintable(path + QStringLiteral(": no ") + word));
      }
    }
  }

  void tablesWithoutSourceAreFound_data() {
    QTest::addColumn<QString>("table");
    QTest::addColumn<bool>("told");
    const auto row = [](const char *name, const char *table, bool told) {
      QTest::newRow(name) << QString::fromLatin1(table) << told;
    };
    row("source in the head", "# source: A book, page 3\na,b\n1,2\n", true);
    row("Windows' line ends", "# source: A book, page 3\r\na,b\r\n1,2\r\n", true);
    row("no comment at all", "a,b\n1,2\n", false);
    row("other comments", "# note: source unknown\n# a source: A book, page 3\na,b\n1,2\n", false);
    row("nothing behind the word", "# source:\na,b\n1,2\n", false);
    row("blanks behind the word", "# source:  \na,b\n1,2\n", false);
    row("a mark for later", "# source: TODO\na,b\n1,2\n", false);
    row("not as a comment", "source: A book, page 3\n1,2\n", false);
    row("below the rows", "a,b\n1,2\n# source: A book, page 3\n", false);
    row("between the rows", "a,b\n1,2\n# source: A book, page 3\n3,4\n", false);
    row("two", "# source: A book, page 3\n# source: A map, sheet 2\na,b\n1,2\n", false);
    row("no rows", "# source: A book, page 3\na,b\n", false);
    row("row by row", "# source: per row, column source\na,source\n1,\"A book, page 3\"\n2,A map of ours\n", true);
    row("row by row, no column", "# source: per row, column source\na,b\n1,A book\n", false);
    row("row by row, one empty", "# source: per row, column source\na,source,b\n1,\"A book, p. 3\",2\n2,,3\n", false);
    row("row by row, a short row", "# source: per row, column source\na,source\n1,A book\n2\n", false);
  }

  void tablesWithoutSourceAreFound() {
    QFETCH(QString, table);
    QFETCH(bool, told);
    QVERIFY2(notToldBy(table).isEmpty() == told, qPrintable(notToldBy(table)));
  }

  // The manual's table of checks (make_checks.py) forgets no file, and is not older than its rows. What goes through
  // the installed plugin as a whole (tests/plugin) holds no check values.
  void checkValuesStandInTheManual() {
    const QString table = textOf(source + QStringLiteral("/sample-project/manual/checks-table.md"));
    const QRegularExpression row(QStringLiteral("^[^#\\s]"));
    for (const QString &path : filesBelow(source + QStringLiteral("/tests"), {QStringLiteral("*.csv")})) {
      if (path.contains(QLatin1String("/tests/plugin/")))
        continue;
      const int rows = textOf(path).split(QLatin1Char('\n')).filter(row).size() - 1; // less the header
      const QString told = QStringLiteral("`%1`, %2 rows,").arg(path.mid(source.size() + 1)).arg(rows);
      QVERIFY2(table.contains(told), qPrintable(told + QStringLiteral(" run make_checks.py")));
    }
  }

  // Symbols and labels are drawn in threads of their own, where the host's aggregate functions are not safe (QGIS 3.22
  // was seen to crash). Map tips are made in the main thread.
  void stylesDrawWithoutAggregates() {
    const QRegularExpression aggregate(
        QStringLiteral("\\b(aggregate|relation_aggregate|array_agg|concatenate(_unique)?|count(_distinct|_missing)?|"
                       "minimum|maximum|sum|"
                       "mean|median|stdev|range|minority|majority|q1|q3|iqr|min_length|max_length|collect)\\("));
    QVERIFY(aggregate.match(QStringLiteral("x = minimum(\"x\")")).hasMatch());
    const QStringList files = filesBelow(source + QStringLiteral("/algorithms"), {QStringLiteral("*.qml")});
    QVERIFY(files.size() >= 2);
    for (const QString &path : files) {
      QString drawn = textOf(path);
      drawn.remove(
          QRegularExpression(QStringLiteral("<mapTip>.*</mapTip>"), QRegularExpression::DotMatchesEverythingOption));
      const auto found = aggregate.match(drawn);
      QVERIFY2(!found.hasMatch(), qPrintable(path + QStringLiteral(": ") + found.captured()));
    }
  }

  void everyFileNamesItsLicence() {
    const QStringList patterns = {QStringLiteral("*.cpp"), QStringLiteral("*.h"),   QStringLiteral("*.py"),
                                  QStringLiteral("*.sh"),  QStringLiteral("*.csv"), QStringLiteral("*.txt"),
                                  QStringLiteral("*.qrc"), QStringLiteral("*.svg")};
    int count = 0;
    for (const QString &folder : {QStringLiteral("algorithms"), QStringLiteral("plugin"), QStringLiteral("tests"),
                                  QStringLiteral("sample-project")})
      for (const QString &path : filesBelow(source + QLatin1Char('/') + folder, patterns)) {
        if (path.contains(QLatin1String("/help/")) || path.contains(QLatin1String("/result/")))
          continue; // shown to people as it stands; made by a run
        ++count;
        // A table that other programs read has no room for a comment; the licence stands beside it.
        const QString beside = path + QStringLiteral(".license");
        QVERIFY2(textOf(QFile::exists(beside) ? beside : path)
                     .left(400)
                     .contains(QLatin1String("SPDX-License-Identifier: GPL-2.0-or-later")),
                 qPrintable(path));
      }
    QVERIFY(count > 40);
  }
};

QTEST_GUILESS_MAIN(StructureTest)
#include "structure_test.moc"
