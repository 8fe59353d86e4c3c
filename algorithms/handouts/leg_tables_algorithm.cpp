// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/leg_tables_algorithm.h"

#include "handouts/leg_csv_host.h"
#include "handouts/leg_index_host.h"
#include "handouts/leg_page_host.h"
#include "handouts/sheet_words_host.h"

#include <qgsprocessingoutputs.h>

namespace brushline {

namespace {
const QString formatKey = QStringLiteral("FORMAT"), titleKey = QStringLiteral("TITLE"),
              folderKey = QStringLiteral("FOLDER"), countKey = QStringLiteral("FILE_COUNT"),
              indexKey = QStringLiteral("INDEX");
constexpr int formatCount = 3, csvOnly = 0, pagesOnly = 1, both = 2;
} // namespace

QString LegTablesAlgorithm::name() const { return QStringLiteral("legtables"); }
QString LegTablesAlgorithm::displayName() const { return tr("Leg tables"); }
QString LegTablesAlgorithm::group() const { return tr("Handouts"); }
QString LegTablesAlgorithm::groupId() const { return QStringLiteral("handouts"); }
QStringList LegTablesAlgorithm::tags() const {
  return tr("table,print,csv,html,spreadsheet,handout,leg,bearing,paces,compass,route").split(QLatin1Char(','));
}
QString LegTablesAlgorithm::shortDescription() const {
  return tr(
      "Writes annotated legs as tables to print, to read on a phone or to open in a spreadsheet: one for each route "
      "and walker, and a page that lists them.");
}
QgsProcessingAlgorithm *LegTablesAlgorithm::createInstance() const { return new LegTablesAlgorithm(); }

void LegTablesAlgorithm::initAlgorithm(const QVariantMap &) {
  addParameters(leg_sheets::legsDefinitions());
  addParameters(leg_sheets::marksDefinitions());
  addParameters(
      {helped(new QgsProcessingParameterEnum(
                  formatKey, tr("Format"),
                  {tr("Comma-separated values (CSV)"), tr("Web pages to print (HTML)"), tr("Both")}, false, both),
              tr("CSV opens in spreadsheets and other programs; the pages print on A5 and on US letter.")),
       helped(new QgsProcessingParameterString(titleKey, tr("Title"), QVariant(), false, true),
              tr("Stands at the head of every page, for example the name of the camp."))});
  addParameters(HandoutFiles::folderDefinitions());
  addOutput(new QgsProcessingOutputNumber(countKey, tr("Number of files written, the index among them")));
  addOutput(new QgsProcessingOutputHtml(indexKey, tr("Index (the page that lists the tables)")));
}

void LegTablesAlgorithm::check(const ParameterReader &reader) const {
  leg_sheets::check(reader);
  reader.choice(formatKey, formatCount);
}

void LegTablesAlgorithm::prepare(const ParameterReader &reader, QgsProcessingFeedback *) {
  mFiles = std::make_unique<HandoutFiles>(reader);
  const int format = reader.choice(formatKey, formatCount);
  mCsv = format != pagesOnly;
  mPages = format != csvOnly;
  mTitle = reader.text(titleKey).trimmed();
}

QVariantMap LegTablesAlgorithm::run(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  const std::vector<LegSheet> sheets = leg_sheets::read(reader, feedback);
  const FeedbackProgress progress(feedback);
  const std::unique_ptr<HandoutFiles> files = std::move(mFiles); // what it staged goes with it

  // All names first: nothing is written where one of them is not free.
  FileNames names;
  const QString index = names.take({QStringLiteral("index")}, QString()) + QStringLiteral(".html");
  std::vector<IndexedSheet> indexed;
  files->checkFree(files->inFolder(index));
  for (const LegSheet &sheet : sheets) {
    progress.check();
    QStringList parts{sheet.route, sheet.walker};
    if (sheet.back)
      parts << SheetWords::direction(sheet);
    const QString stem = names.take(parts, QString());
    indexed.push_back({&sheet, mPages ? stem + QStringLiteral(".html") : QString(),
                       mCsv ? stem + QStringLiteral(".csv") : QString()});
    for (const QString &file : {indexed.back().page, indexed.back().csv})
      if (!file.isEmpty())
        files->checkFree(files->inFolder(file));
  }

  files->folder();
  long done = 0;
  for (const IndexedSheet &file : indexed) {
    progress.check();
    if (!file.page.isEmpty())
      files->stage(files->inFolder(file.page), legPage(*file.sheet, mTitle, feedback));
    progress.check();
    if (!file.csv.isEmpty())
      files->stage(files->inFolder(file.csv), legCsv(*file.sheet, feedback));
    feedback->setProgress(100.0 * double(++done) / double(indexed.size()));
  }
  files->stage(files->inFolder(index), legIndex(indexed, mTitle, feedback));
  progress.check();
  files->publish();
  files->report(feedback);
  return {{folderKey, files->inFolder(QString())},
          {countKey, double(files->written())},
          {indexKey, files->inFolder(index)}};
}

} // namespace brushline
