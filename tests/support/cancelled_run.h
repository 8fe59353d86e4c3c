// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "support/host_fixture.h"

#include <QDir>
#include <QElapsedTimer>
#include <QPoint>
#include <QTemporaryDir>

#include <algorithm>
#include <stdexcept>

namespace brushline::test {

//! A thousand lines alike, 40 m apart in both directions from 600000, 5400000, with a text each.
inline std::vector<Row> latticeOfLines(const QString &text, QPoint from, QPoint to) {
  std::vector<Row> rows;
  for (int i = 0; i < 1000; ++i) {
    const QPoint at(600000 + i % 60 * 40, 5400000 + i / 60 * 40), a = at + from, b = at + to;
    rows.push_back(
        {wkt(QStringLiteral("LINESTRING(%1 %2,%3 %4)").arg(a.x()).arg(a.y()).arg(b.x()).arg(b.y())), {text}});
  }
  return rows;
}

/**
 * How many seconds an algorithm goes on once it is cancelled, which happens when its progress passes a share.
 *
 * \param parameters without OUTPUT, which is a file. \param percent of the progress; 0: at the first word of it.
 * \returns the least of three tries, since other programs run on the machine too. Throws when the run ended before it
 * could be cancelled, or left a file.
 */
inline double secondsAfterCancel(const QString &algorithm, QVariantMap parameters, double percent) {
  double least = 1e9;
  for (int attempt = 0; attempt < 3; ++attempt) {
    const QTemporaryDir folder;
    parameters["OUTPUT"] = folder.filePath(QStringLiteral("output.geojson"));
    Ear ear;
    QElapsedTimer since;
    QObject::connect(&ear, &QgsFeedback::progressChanged, &ear, [&](double progress) {
      if (progress < percent || ear.isCanceled())
        return;
      since.start();
      ear.cancel();
    });
    const Outcome outcome = run(algorithm, parameters, {nullptr, &ear, false, true});
    if (!since.isValid() || outcome.results.contains(QStringLiteral("OUTPUT")))
      throw std::runtime_error("not cancelled in the middle: " + outcome.said().toStdString());
    least = std::min(least, double(since.nsecsElapsed()) * 1e-9);
    if (const QStringList left = QDir(folder.path()).entryList(QDir::Files); !left.isEmpty())
      throw std::runtime_error("left " + left.join(' ').toStdString());
  }
  return least;
}

} // namespace brushline::test
