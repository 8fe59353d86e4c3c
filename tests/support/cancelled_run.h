// SPDX-License-Identifier: GPL-2.0-or-later
// How soon a run ends that is cancelled. Other programs run on the machine too, so that of several tries the fastest
// counts throughout.
#pragma once

#include "support/host_fixture.h"

#include <QDir>
#include <QElapsedTimer>
#include <QPoint>
#include <QSemaphore>
#include <QTemporaryDir>

#include <algorithm>
#include <chrono>
#include <functional>
#include <initializer_list>
#include <optional>
#include <stdexcept>
#include <thread>

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
 * \returns the least of three tries. Throws when the run ended before it could be cancelled, or left a file.
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

//! Cancels a run from a thread of its own after some seconds, unless the run is over before.
class CancelAfter final {
public:
  CancelAfter(QgsFeedback &feedback, double seconds)
      : mCanceller([this, &feedback, seconds] {
          if (mOver.tryAcquire(1, int(seconds * 1000)))
            return;
          mAsked = Clock::now();
          feedback.cancel();
        }) {}
  ~CancelAfter() {
    if (mCanceller.joinable())
      over();
  }
  CancelAfter(const CancelAfter &) = delete;
  CancelAfter &operator=(const CancelAfter &) = delete;

  //! To be called once, when the run is over. \returns the seconds since the cancel; nothing when none came before.
  std::optional<double> over() {
    const Clock::time_point ended = Clock::now();
    mOver.release();
    mCanceller.join();
    if (!mAsked || *mAsked > ended)
      return std::nullopt;
    return std::chrono::duration<double>(ended - *mAsked).count();
  }

private:
  using Clock = std::chrono::steady_clock;
  QSemaphore mOver;
  std::optional<Clock::time_point> mAsked;
  std::thread mCanceller; // last, since it uses the others
};

//! What came of runs that were cancelled at several moments.
struct CancelTimes {
  double whole = 1e9; //!< seconds of an undisturbed run
  double slowest = 0; //!< seconds from the cancel to the end, at the moment where that is longest
  int moments = 0;    //!< at which a run was cancelled in its middle
};

/**
 * Cancels a run at some moments.
 *
 * \param run does the work once, and clears away what it made. It returns the seconds of it, or nothing when it did not
 * come to its end; it throws when it then left something. \param shares the moments, of an undisturbed run's time.
 * Throws when an undisturbed run does not come to its end, or is too short to have a middle.
 */
inline CancelTimes cancelAt(std::initializer_list<double> shares,
                            const std::function<std::optional<double>(Ear &)> &run) {
  CancelTimes times;
  for (int attempt = 0; attempt < 3; ++attempt) { // the first warms things up
    Ear ear;
    const std::optional<double> seconds = run(ear);
    if (!seconds)
      throw std::runtime_error("it does not even run: " + ear.errors.join('\n').toStdString());
    times.whole = std::min(times.whole, *seconds);
  }
  if (times.whole < 0.05)
    throw std::runtime_error("too small an input: " + std::to_string(times.whole) + " s");
  for (const double share : shares) {
    std::optional<double> fastest;
    for (int attempt = 0; attempt < 6 && fastest.value_or(1e9) > soon; ++attempt) {
      Ear ear;
      CancelAfter finger(ear, share * times.whole);
      const bool cancelled = !run(ear);
      const std::optional<double> seconds = finger.over();
      if (cancelled && seconds)
        fastest = std::min(*seconds, fastest.value_or(1e9));
    }
    times.slowest = std::max(times.slowest, fastest.value_or(0));
    times.moments += bool(fastest);
  }
  return times;
}

} // namespace brushline::test
