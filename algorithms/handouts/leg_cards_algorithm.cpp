// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/leg_cards_algorithm.h"

#include "handouts/card_maker_host.h"
#include "handouts/cards_index_host.h"
#include "handouts/handout_files_host.h"
#include "handouts/leg_sheets_host.h"
#include "shared/terrain_parameters.h"

#include <QDir>

namespace brushline {

namespace {

const QString folderKey = QStringLiteral("FOLDER"), countKey = QStringLiteral("FILE_COUNT");

// What goes into one file: the card of one sheet, or those of all walkers of a route on sheets to be cut.
struct Job {
  std::vector<const LegSheet *> sheets;
  QString file;
};

std::vector<Job> jobsFor(const std::vector<LegSheet> &sheets, bool together) {
  std::vector<Job> jobs;
  QHash<QString, size_t> known;
  for (const LegSheet &sheet : sheets) {
    const QString key = sheet.route + (sheet.back ? QStringLiteral("\nback") : QStringLiteral("\nout"));
    if (together && known.contains(key)) {
      jobs[known[key]].sheets.push_back(&sheet);
      continue;
    }
    known.insert(key, jobs.size());
    jobs.push_back({{&sheet}, QString()});
  }
  return jobs;
}

QStringList nameParts(const LegSheet &sheet, bool together) {
  QStringList parts{sheet.route.isEmpty() ? LegCardsAlgorithm::tr("course") : sheet.route};
  if (together)
    parts << LegCardsAlgorithm::tr("cards");
  else if (!sheet.walker.isEmpty())
    parts << sheet.walker;
  if (sheet.back)
    parts << LegCardsAlgorithm::tr("back");
  return parts;
}

} // namespace

QString LegCardsAlgorithm::name() const { return QStringLiteral("legcards"); }
QString LegCardsAlgorithm::displayName() const { return tr("Leg cards"); }
QString LegCardsAlgorithm::group() const { return tr("Handouts"); }
QString LegCardsAlgorithm::groupId() const { return QStringLiteral("handouts"); }
QStringList LegCardsAlgorithm::tags() const {
  return tr("card,pdf,print,map,compass,bearing,dial,paces,leg,route,profile,handout").split(QLatin1Char(','));
}
QString LegCardsAlgorithm::shortDescription() const {
  return tr("Makes a PDF card for each route and walker: the numbers for the dial, the paces, a map of the course with "
            "magnetic north lines.");
}
host::AlgorithmFlags LegCardsAlgorithm::flags() const { return BaseAlgorithm::flags() | host::mainThreadOnly; }
QgsProcessingAlgorithm *LegCardsAlgorithm::createInstance() const { return new LegCardsAlgorithm(); }

void LegCardsAlgorithm::initAlgorithm(const QVariantMap &) {
  addParameters(leg_sheets::legsDefinitions());
  addParameters(leg_sheets::marksDefinitions());
  addParameters(leg_cards_parameters::definitions());
  addParameters(terrain_parameters::definitions());
  addParameters(CardFeatures::definitions());
  addParameters(HandoutFiles::folderDefinitions());
  addOutput(new QgsProcessingOutputNumber(countKey, tr("Number of PDF files")));
}

void LegCardsAlgorithm::check(const ParameterReader &reader) const {
  leg_sheets::check(reader);
  leg_cards_parameters::read(reader);
  CardFeatures::check(reader);
  HandoutFonts();
}

void LegCardsAlgorithm::prepare(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  mSetting = leg_cards_parameters::read(reader);
  mLayers = leg_cards_parameters::layers(reader, feedback);
  mTerrain = terrain_parameters::terrainOver(terrain_parameters::read(reader));
}

QVariantMap LegCardsAlgorithm::run(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  const std::vector<LegSheet> sheets = leg_sheets::read(reader, feedback);
  const CardFeatures features(reader, sheets, feedback);
  HandoutFiles files(reader);
  const QDir folder(files.folder());
  std::vector<Job> jobs = jobsFor(sheets, mSetting.sheet.has_value());
  // All names first: nothing is made when a file must not be written.
  FileNames names;
  const QString index = folder.filePath(names.take({QStringLiteral("cards")}, QStringLiteral("html")));
  if (mSetting.index)
    files.checkFree(index);
  for (Job &job : jobs) {
    job.file = names.take(nameParts(*job.sheets.front(), mSetting.sheet.has_value()), QStringLiteral("pdf"));
    files.checkFree(folder.filePath(job.file));
  }

  const HandoutFonts fonts;
  const QgsCoordinateTransformContext transforms = reader.context().transformContext();
  CardMaker maker(mSetting, features, mTerrain.get(), reader.source(QStringLiteral("INPUT"))->sourceCrs(), transforms,
                  fonts);
  CardPrinter printer(std::move(mLayers), transforms, fonts);
  std::vector<ListedCard> listed;
  long shortened = 0;
  for (const Job &job : jobs) {
    if (feedback->isCanceled()) {
      feedback->pushInfo(
          tr("Cancelled: %n whole file(s) were made before, and stay. They are not listed in cards.html.", nullptr,
             int(files.written())));
      return {};
    }
    std::vector<PrintedCard> pages;
    QStringList walkers;
    for (const LegSheet *sheet : job.sheets) {
      const CardMaker::Card card = maker.card(*sheet);
      pages.insert(pages.end(), card.pages.begin(), card.pages.end());
      for (const QString &warning : card.warnings)
        feedback->pushWarning(tr("“%1”, walker “%2”: %3").arg(job.file, sheet->walker, warning));
      shortened += card.shortened;
      walkers << sheet->walker;
    }
    files.write(folder.filePath(job.file), printer.pdf(maker.onPaper(pages)));
    const LegSheet &sheet = *job.sheets.front();
    listed.push_back({job.file, sheet.route, walkers.join(QLatin1String(", ")), sheet.back ? tr("back") : tr("out"),
                      sheet.legCount(), sheet.length_m()});
    for (const QString &error : printer.takeErrors())
      feedback->pushWarning(tr("“%1”: %2").arg(job.file, error));
    feedback->setProgress(100 * double(listed.size()) / double(jobs.size()));
  }
  if (mSetting.index)
    files.write(index, cardsIndex(mSetting.title, listed));
  feedback->pushInfo(tr("Cards: %n PDF file(s).", nullptr, int(listed.size())));
  if (shortened > 0)
    feedback->pushWarning(
        tr("On %n card(s) texts were too long for their place; an ellipsis (…) stands where they end.", nullptr,
           int(shortened)));
  if (fonts.unprintable() > 0)
    feedback->pushWarning(tr("%n text(s) have letters that no installed font has; a question mark stands for each.",
                             nullptr, int(fonts.unprintable())));
  files.report(feedback);
  return {{folderKey, folder.path()}, {countKey, double(listed.size())}};
}

} // namespace brushline
