// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "shared/parameter_reader_host.h"

#include <QSaveFile>
#include <QSet>
#include <QString>
#include <QStringList>
#include <QTemporaryDir>

#include <memory>
#include <utility>
#include <vector>

namespace brushline {

/**
 * Names for files that any file system takes, none like another: of path separators, signs that some systems keep for
 * themselves, control and direction signs nothing is left; names of devices are given another; long ones are cut
 * between letters.
 */
class FileNames {
public:
  //! \param ending without a dot; empty: none. \returns parts joined by " - ", with the ending; different from all
  //! given before, also where case and the writing of accents do not count.
  QString take(const QStringList &parts, const QString &ending);

private:
  QSet<QString> mTaken;
};

/**
 * The files that a run writes. Each appears whole or not at all: it is written under another name, synced and renamed.
 * Either one by one (begin, commit, write), or all together at the end (stage, publish).
 */
class HandoutFiles {
  Q_DECLARE_TR_FUNCTIONS(brushline::HandoutFiles)

public:
  //! FOLDER, REPLACE.
  static Definitions folderDefinitions();
  //! REPLACE alone, for an algorithm with an output file.
  static Definitions replaceDefinitions();

  //! Main thread; remembers the files of the inputs, which are never written over.
  explicit HandoutFiles(const ParameterReader &reader);
  //! Removes what was staged and not published, and a folder that was made and stays empty.
  ~HandoutFiles();

  //! The path of a file in FOLDER, whether or not that is there yet.
  QString inFolder(const QString &name) const;
  //! Makes the folder FOLDER where there is none. Throws when it cannot be written to.
  QString folder();

  //! Throws when a file may not be written: it is an input's, or is there and REPLACE is off.
  void checkFree(const QString &path) const;

  //! Begins a file. Throws when it cannot be made.
  std::unique_ptr<QSaveFile> begin(const QString &path);
  //! Ends it: from now on it is there under its name. Throws when something could not be written; then it is not.
  void commit(QSaveFile &file);
  //! Both at once.
  void write(const QString &path, const QByteArray &content);

  //! Writes a file of FOLDER, which folder() has made, to a place aside: nobody sees it until publish(). Throws when it
  //! could not be written whole.
  void stage(const QString &path, const QByteArray &content);
  //! Gives all that was staged their names, old files' places included: all of a run's files, or none of them. They get
  //! them one after the other; when one cannot, those before it are taken back and throws. Only what ends the process
  //! in between leaves a part.
  void publish();

  long written() const { return mWritten; }
  //! Tells how many were written, and how many of these took the place of an older one.
  void report(QgsProcessingFeedback *feedback) const;

private:
  QString mKey; // the parameter that says where
  QString mFolder;
  bool mReplace;
  QSet<QString> mInputs;
  long mWritten = 0, mReplaced = 0;
  QStringList mMadeFolders;                         // the inmost first
  std::unique_ptr<QTemporaryDir> mAside;            // within FOLDER, so that its files need no copying
  std::vector<std::pair<QString, QString>> mStaged; // where it lies, where it belongs
};

} // namespace brushline
