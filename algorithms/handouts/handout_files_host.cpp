// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/handout_files_host.h"

#include "shared/input_files_host.h"

#include <QDir>
#include <QFileInfo>
#include <QRegularExpression>
#include <QTextBoundaryFinder>
#include <qgsexception.h>

namespace brushline {

namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::HandoutFiles)
};
const QString folderKey = QStringLiteral("FOLDER"), outputKey = QStringLiteral("OUTPUT"),
              replaceKey = QStringLiteral("REPLACE");

constexpr int longestName = 120; // bytes in UTF-8; file systems take 255, some of that is for endings and folders

// What may stand in a file name on every system, of a name that people gave.
QString harmless(const QString &name) {
  QString kept;
  for (const uint code : name.normalized(QString::NormalizationForm_C).toUcs4()) {
    const QChar::Category category = QChar::category(code);
    if (code == '\t' || code == '\n' || code == '\r' || category == QChar::Separator_Space ||
        category == QChar::Separator_Line || category == QChar::Separator_Paragraph)
      kept += QLatin1Char(' ');
    else if (category == QChar::Other_Control || category == QChar::Other_Format || category == QChar::Other_Surrogate ||
             category == QChar::Other_PrivateUse || category == QChar::Other_NotAssigned || code == 0xFFFD)
      continue; // direction signs, among others
    else if (code < 128 && QLatin1String("/\\:*?\"<>|").contains(QLatin1Char(char(code))))
      kept += QLatin1Char('_');
    else
      kept += QString::fromUcs4(&code, 1);
  }
  return kept.simplified();
}

// Cut to so many bytes, between letters.
QString cut(const QString &name, int bytes) {
  if (name.toUtf8().size() <= bytes)
    return name;
  QTextBoundaryFinder borders(QTextBoundaryFinder::Grapheme, name);
  int end = 0;
  for (int next = int(borders.toNextBoundary()); next > 0 && name.leftRef(next).toUtf8().size() <= bytes;
       next = int(borders.toNextBoundary()))
    end = next;
  return name.left(end);
}

// A name that is neither hidden nor a device's, and ends in no dot or space.
QString settled(QString name) {
  static const QRegularExpression edges(QStringLiteral("^[. ]+|[. ]+$"));
  static const QRegularExpression devices(QStringLiteral("^(con|prn|aux|nul|com[0-9¹²³]|lpt[0-9¹²³]|conin\\$|conout\\$)"
                                                         "(\\..*)?$"),
                                          QRegularExpression::CaseInsensitiveOption);
  name.remove(edges);
  if (name.isEmpty())
    return QStringLiteral("_");
  if (devices.match(name).hasMatch() || name.startsWith(QLatin1Char('-')) || name.startsWith(QLatin1Char('~')))
    name.prepend(QLatin1Char('_'));
  return name;
}

} // namespace

QString FileNames::take(const QStringList &parts, const QString &ending) {
  QStringList clean;
  for (const QString &part : parts)
    if (const QString kept = cut(harmless(part), longestName / parts.size()); !kept.isEmpty())
      clean << kept;
  const QString stem = settled(clean.join(QLatin1String(" - ")));
  const QString dotted = ending.isEmpty() ? QString() : QLatin1Char('.') + ending;
  QString name = stem + dotted;
  for (int i = 2; mTaken.contains(name.toCaseFolded().normalized(QString::NormalizationForm_KD)); ++i)
    name = QStringLiteral("%1 (%2)%3").arg(stem).arg(i).arg(dotted);
  mTaken.insert(name.toCaseFolded().normalized(QString::NormalizationForm_KD));
  return name;
}

Definitions HandoutFiles::folderDefinitions() {
  return Definitions{helped(new QgsProcessingParameterFolderDestination(folderKey, tr("Folder")),
                            tr("Where the files go; made when it is not there."))} +
         replaceDefinitions();
}

Definitions HandoutFiles::replaceDefinitions() {
  return {advanced(helped(new QgsProcessingParameterBoolean(replaceKey, tr("Replace files that are there"), true),
                          tr("Off: a file that would be replaced is an error, and nothing is written.")))};
}

HandoutFiles::HandoutFiles(const ParameterReader &reader)
    : mKey(reader.has(folderKey) ? folderKey : outputKey), mReplace(reader.flag(replaceKey)),
      mInputs(inputFiles(reader)) {
  if (mKey == folderKey)
    mFolder = QgsProcessingParameters::parameterAsString(reader.definition(folderKey), reader.parameters(),
                                                         reader.context());
}

QString HandoutFiles::folder() {
  const QFileInfo here(mFolder);
  if (mFolder.isEmpty() || (here.exists() && !here.isDir()) || !QDir().mkpath(mFolder) ||
      !QFileInfo(mFolder).isWritable())
    throw QgsProcessingException(
        tr("%1: the folder “%2” cannot be made or written to. Give another folder, or the right to write there.")
            .arg(mKey, mFolder));
  return mFolder;
}

void HandoutFiles::checkFree(const QString &path) const {
  if (mInputs.contains(onePath(path)))
    throw QgsProcessingException(
        tr("%1: “%2” would be written over, but an input is read from it. Give another place.").arg(mKey, path));
  const QFileInfo file(path);
  if (file.isDir())
    throw QgsProcessingException(tr("%1: “%2” is a folder, so no file of that name can be written.").arg(mKey, path));
  if (file.exists() && !mReplace)
    throw QgsProcessingException(
        tr("%1: “%2” is there already. Switch on %3 to have it replaced, or give another place.")
            .arg(mKey, path, replaceKey));
}

std::unique_ptr<QSaveFile> HandoutFiles::begin(const QString &path) {
  checkFree(path);
  auto file = std::make_unique<QSaveFile>(path);
  if (!file->open(QIODevice::WriteOnly))
    throw QgsProcessingException(tr("%1: “%2” cannot be written (%3). Is its folder there, and may it be written to?")
                                     .arg(mKey, path, file->errorString()));
  return file;
}

void HandoutFiles::commit(QSaveFile &file) {
  const bool there = QFileInfo::exists(file.fileName());
  if (!file.commit())
    throw QgsProcessingException(tr("%1: “%2” could not be written whole (%3), so it was left out. Is the disk full?")
                                     .arg(mKey, file.fileName(), file.errorString()));
  ++mWritten;
  mReplaced += there;
}

void HandoutFiles::write(const QString &path, const QByteArray &content) {
  const auto file = begin(path);
  file->write(content);
  commit(*file);
}

void HandoutFiles::report(QgsProcessingFeedback *feedback) const {
  QString text = tr("%n file(s) written", nullptr, int(mWritten));
  if (mReplaced > 0)
    text += tr(", %n of them in the place of an older one", nullptr, int(mReplaced));
  feedback->pushInfo(text + QLatin1Char('.'));
}

} // namespace brushline
