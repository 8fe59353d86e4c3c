// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/unfinished_files_host.h"

#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QUuid>

#include <filesystem>
#include <system_error>

namespace brushline {

namespace {
const QString prefix = QStringLiteral(".brushline-");

std::filesystem::path native(const QString &path) {
#ifdef Q_OS_WIN
  return path.toStdWString();
#else
  return QFile::encodeName(path).toStdString();
#endif
}
} // namespace

QString unfinishedName(const QString &rest) { return prefix + rest; }

QString unfinishedFile(const QString &folder, const QString &ending) {
  const QString own = QUuid::createUuid().toString(QUuid::Id128).left(8);
  return folder + QLatin1Char('/') + unfinishedName(own + QLatin1Char('.') + ending);
}

void removeUnfinished(const QString &folder) {
  const QDateTime dayAgo = QDateTime::currentDateTimeUtc().addDays(-1);
  const QDir::Filters all = QDir::Files | QDir::Dirs | QDir::Hidden | QDir::NoDotAndDotDot | QDir::NoSymLinks;
  for (const QFileInfo &left : QDir(folder).entryInfoList({prefix + QLatin1Char('*')}, all)) {
    if (left.lastModified() > dayAgo)
      continue;
    if (left.isDir())
      QDir(left.filePath()).removeRecursively();
    else
      QFile::remove(left.filePath());
  }
}

QString moveOver(const QString &from, const QString &to) {
  std::error_code error;
  std::filesystem::rename(native(from), native(to), error); // Qt's removes the older one first
  return error ? QString::fromLocal8Bit(error.message().c_str()) : QString();
}

bool keepAs(const QString &path, const QString &kept) {
  std::error_code error;
  std::filesystem::create_hard_link(native(path), native(kept), error);
  return !error || QFile::copy(path, kept);
}

} // namespace brushline
