// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/handout_files_host.h"

#include "shared/input_files_host.h"
#include "shared/unfinished_files_host.h"

#include <QDir>
#include <QFileInfo>
#include <QRegularExpression>
#include <QTextBoundaryFinder>
#include <qgsexception.h>

#ifdef Q_OS_LINUX
#include <fcntl.h>
#include <unistd.h>
#endif

#include <algorithm>
#include <cerrno>

namespace brushline {

namespace {

const QString folderKey = QStringLiteral("FOLDER"), outputKey = QStringLiteral("OUTPUT"),
              replaceKey = QStringLiteral("REPLACE");

constexpr int longestName = 120; // bytes in UTF-8; file systems take 255, some of that is for endings and folders

// Whether file names can hold a letter here: not all can where the locale knows ASCII only.
bool writable(const QString &letter) { return QFile::decodeName(QFile::encodeName(letter)) == letter; }

// What may stand in a file name on every system, of a name that people gave.
QString harmless(const QString &name) {
  QString kept;
  for (const uint code : name.normalized(QString::NormalizationForm_C).toUcs4()) {
    const QChar::Category category = QChar::category(code);
    if (code == '\t' || code == '\n' || code == '\r' || category == QChar::Separator_Space ||
        category == QChar::Separator_Line || category == QChar::Separator_Paragraph)
      kept += QLatin1Char(' ');
    else if (category == QChar::Other_Control || category == QChar::Other_Format ||
             category == QChar::Other_Surrogate || category == QChar::Other_PrivateUse ||
             category == QChar::Other_NotAssigned || code == 0xFFFD)
      continue; // direction signs, among others
    else if (code < 128 && QLatin1String("/\\:*?\"<>|").contains(QLatin1Char(char(code))))
      kept += QLatin1Char('_');
    else if (const QString letter = QString::fromUcs4(&code, 1); code < 128 || writable(letter))
      kept += letter;
    else
      kept += QLatin1Char('_');
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

// A file of which a part could not be written, on a full disk, is never committed. Qt takes a short write for a good
// one.
class WholeFile final : public QSaveFile {
public:
  using QSaveFile::QSaveFile;

  //! Writes what is still held back and waits until the disk has it. \returns whether it has.
  bool sync() {
    if (!flush())
      return false;
#ifdef Q_OS_LINUX
    if (::fsync(handle()) != 0 && errno != EINVAL && errno != ENOTSUP) { // those: not that kind of disk
      setErrorString(qt_error_string(errno));
      return false;
    }
#endif
    return true;
  }

protected:
  qint64 writeData(const char *data, qint64 size) override {
    const qint64 written = QSaveFile::writeData(data, size);
    if (written != size) {
      cancelWriting();
      setErrorString(HandoutFiles::tr("only a part of it could be written"));
    }
    return written;
  }
};

// Brings what was written in a folder onto the disk, so that no file is empty after the power fails, or the stick is
// pulled. All at once: one by one takes a hundredth of a second each. False when that failed.
bool synced(const QString &folder) {
#ifdef Q_OS_LINUX
  const int file = open(QFile::encodeName(folder).constData(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  if (file < 0)
    return true; // it could be written to, and that is enough
  const bool failed = syncfs(file) != 0 && (errno == EIO || errno == ENOSPC || errno == EDQUOT);
  close(file);
  return !failed;
#else
  Q_UNUSED(folder)
  return true;
#endif
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
    name = QStringLiteral("%1 (%2)%3").arg(stem, QString::number(i), dotted);
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
    mFolder =
        QgsProcessingParameters::parameterAsString(reader.definition(folderKey), reader.parameters(), reader.context());
}

HandoutFiles::~HandoutFiles() {
  mAside.reset();
  if (mWritten == 0)
    for (const QString &made : mMadeFolders)
      if (QFileInfo::exists(made) && !QDir().rmdir(made)) // something is in it
        break;
}

QString HandoutFiles::inFolder(const QString &name) const { return QDir(mFolder).filePath(name); }

QString HandoutFiles::folder() {
  const QFileInfo here(mFolder);
  if (!mFolder.isEmpty())
    for (QString path = QDir::cleanPath(here.absoluteFilePath()); !QFileInfo::exists(path) && mMadeFolders.size() < 100;
         path = QFileInfo(path).path())
      mMadeFolders << path;
  if (mFolder.isEmpty() || (here.exists() && !here.isDir()) || !QDir().mkpath(mFolder) ||
      !QFileInfo(mFolder).isWritable())
    throw QgsProcessingException(
        tr("%1: the folder “%2” cannot be made or written to. Give another folder, or the right to write there.")
            .arg(mKey, mFolder));
  removeUnfinished(mFolder);
  return mFolder;
}

void HandoutFiles::checkFree(const QString &path) const {
  if (mInputs.contains(onePath(path)))
    throw QgsProcessingException(
        tr("%1: “%2” would be written over, but an input is read from it. Give another place.").arg(mKey, path));
  const QFileInfo file(path);
  if (file.isDir())
    throw QgsProcessingException(tr("%1: “%2” is a folder, so no file of that name can be written.").arg(mKey, path));
  if (file.exists() && !file.isFile()) // renaming would put a plain file in the place of a device
    throw QgsProcessingException(
        tr("%1: “%2” is a device or a pipe, so no file can take its place. Give another place.").arg(mKey, path));
  if (file.exists() && !mReplace)
    throw QgsProcessingException(
        tr("%1: “%2” is there already. Switch on %3 to have it replaced, or give another place.")
            .arg(mKey, path, replaceKey));
  if (file.exists() && !file.isWritable())
    throw QgsProcessingException(
        tr("%1: “%2” is there and may not be written to. Give another place, or the right to write there.")
            .arg(mKey, path));
}

std::unique_ptr<QSaveFile> HandoutFiles::begin(const QString &path) {
  checkFree(path);
  auto file = std::make_unique<WholeFile>(path);
  if (!file->open(QIODevice::WriteOnly))
    throw QgsProcessingException(tr("%1: “%2” cannot be written (%3). Is its folder there, and may it be written to?")
                                     .arg(mKey, path, file->errorString()));
  return file;
}

void HandoutFiles::commit(QSaveFile &file) {
  const bool there = QFileInfo::exists(file.fileName());
  QString reason;
  auto *whole = dynamic_cast<WholeFile *>(&file);
  if (!(whole ? whole->sync() : file.flush())) { // commit() would not notice
    reason = file.errorString();
    file.cancelWriting();
  }
  if (!file.commit())
    throw QgsProcessingException(tr("%1: “%2” could not be written whole (%3), so it was left out. Is the disk full?")
                                     .arg(mKey, file.fileName(), reason.isEmpty() ? file.errorString() : reason));
  ++mWritten;
  mReplaced += there;
}

void HandoutFiles::write(const QString &path, const QByteArray &content) {
  const auto file = begin(path);
  file->write(content);
  commit(*file);
}

void HandoutFiles::stage(const QString &path, const QByteArray &content) {
  checkFree(path);
  if (!mAside)
    mAside = std::make_unique<QTemporaryDir>(inFolder(unfinishedName(QStringLiteral("XXXXXX"))));
  const QString aside = mAside->filePath(QString::number(mStaged.size()));
  QFile file(aside);
  if (!mAside->isValid() || !file.open(QIODevice::WriteOnly))
    throw QgsProcessingException(
        tr("%1: nothing can be written in “%2” (%3). Give another folder, or the right to write there.")
            .arg(mKey, mFolder, mAside->isValid() ? file.errorString() : mAside->errorString()));
  if (file.write(content) != content.size() || !file.flush())
    throw QgsProcessingException(
        tr("%1: “%2” could not be written whole (%3), so nothing was written. Is the disk full?")
            .arg(mKey, path, file.errorString()));
  mStaged.emplace_back(aside, path);
}

void HandoutFiles::publish() {
  if (!mStaged.empty() && !synced(mFolder))
    throw QgsProcessingException(
        tr("%1: the files could not be written to “%2”, so nothing was. Is the disk full, or damaged?")
            .arg(mKey, mFolder));
  std::vector<QString> older; // where the file is kept whose place one takes; empty: there is none
  for (const auto &[aside, path] : mStaged) {
    older.push_back(QFileInfo::exists(path) ? aside + QLatin1String("-older") : QString());
    if (!older.back().isEmpty() && !keepAs(path, older.back()))
      throw QgsProcessingException(
          tr("%1: “%2” is there and could not be kept until the run is through, so nothing was "
             "written. Is the disk full?")
              .arg(mKey, path));
  }
  size_t named = 0;
  QString reason;
  while (named < mStaged.size() && (reason = moveOver(mStaged[named].first, mStaged[named].second)).isEmpty())
    ++named;
  if (named < mStaged.size()) {
    const QString &failed = mStaged[named].second;
    int left = 0;
    while (named-- > 0)
      left += !(older[named].isEmpty() ? QFile::remove(mStaged[named].second)
                                       : moveOver(older[named], mStaged[named].second).isEmpty());
    mAside->setAutoRemove(left == 0); // else the older files are in there
    throw QgsProcessingException(
        left == 0 ? tr("%1: “%2” could not be given its name (%3), so no file was written. Give another folder.")
                        .arg(mKey, failed, reason)
                  : tr("%1: “%2” could not be given its name (%3), and %n file(s) written before it could not be taken "
                       "back: do not use them.",
                       nullptr, left)
                        .arg(mKey, failed, reason));
  }
  mWritten += long(mStaged.size());
  mReplaced += std::count_if(older.begin(), older.end(), [](const QString &each) { return !each.isEmpty(); });
  mStaged.clear();
  mAside.reset();
}

void HandoutFiles::report(QgsProcessingFeedback *feedback) const {
  QString text = tr("%n file(s) written", nullptr, int(mWritten));
  if (mReplaced > 0)
    text += tr(", %n of them in the place of an older one", nullptr, int(mReplaced));
  feedback->pushInfo(text + QLatin1Char('.'));
}

} // namespace brushline
