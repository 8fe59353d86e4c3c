// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/practice_course_writer_host.h"

#include <QSet>
#include <qgsexception.h>
#include <qgsgeometry.h>
#include <qgsprocessingoutputs.h>

#include <algorithm>
#include <cmath>

namespace brushline {

namespace {
const QString outputKey = QStringLiteral("OUTPUT"), controlsKey = QStringLiteral("CONTROLS"),
              countKey = QStringLiteral("COURSE_COUNT"), controlCountKey = QStringLiteral("CONTROL_COUNT"),
              sharedKey = QStringLiteral("SHARED_LEGS"), balanceKey = QStringLiteral("BALANCE");

using host::FieldType;

QString percent(double share) { return QString::number(share * 100, 'f', 1); }
QString short_(double value) { return QString::number(value, 'f', value < 100 ? 1 : 0); }

// A, B ... Z, AA, AB ..., without I and O, which are read as 1 and 0.
QString letters(size_t number) {
  static const QString alphabet = QStringLiteral("ABCDEFGHJKLMNPQRSTUVWXYZ");
  const auto count = size_t(alphabet.size());
  QString text;
  for (size_t rest = number + 1; rest > 0; rest = (rest - 1) / count)
    text.prepend(alphabet[int((rest - 1) % count)]);
  return text;
}
} // namespace

Definitions PracticeCourseWriter::definitions() {
  return {
      helped(new QgsProcessingParameterFeatureSink(outputKey, tr("Course lines"), host::lineOutput),
             tr("A line for each course, a vertex at each control; Annotate legs takes it as it is.")),
      helped(new QgsProcessingParameterFeatureSink(controlsKey, tr("Controls"), host::pointOutput),
             tr("A point for each start, control and finish of each course, with its name; named points for Annotate "
                "legs."))};
}

QList<QgsProcessingOutputDefinition *> PracticeCourseWriter::numbers() {
  return {new QgsProcessingOutputNumber(countKey, tr("Courses laid out")),
          new QgsProcessingOutputNumber(controlCountKey, tr("Places that controls stand at")),
          new QgsProcessingOutputNumber(sharedKey, tr("Legs that more than one course has")),
          new QgsProcessingOutputNumber(balanceKey, tr("Farthest that courses are out of balance (percent)"))};
}

PracticeCourseWriter::PracticeCourseWriter(const ParameterReader &reader, const PracticeInput &input,
                                           const PracticeCourses &courses, QgsProcessingFeedback *feedback)
    : mReader(reader), mInput(input), mCourses(courses), mFeedback(feedback),
      mFromPlaces(input.crs, reader.context().transformContext()) {}

void PracticeCourseWriter::tellSpots() const {
  const auto tell = [&](const QString &key, const SpotCounts &counts, size_t crowded, const QString &crowdedWords) {
    QStringList parts;
    if (counts.outside > 0)
      parts << tr("%1 outside the area").arg(counts.outside);
    if (counts.avoided > 0)
      parts << tr("%1 in or too near to what is kept away from").arg(counts.avoided);
    if (counts.closed > 0)
      parts << tr("%1 on ground that nobody walks, or of which nothing is known").arg(counts.closed);
    if (crowded > 0)
      parts << crowdedWords.arg(crowded);
    if (counts.surplus > 0)
      parts << tr("%1 beyond the %2 that can be looked at").arg(counts.surplus).arg(mostSites);
    if (!parts.isEmpty())
      mFeedback->pushWarning(
          tr("%1: points passed over: %2. Left: %3.").arg(key, parts.join(QLatin1String(", "))).arg(counts.usable));
  };
  tell(QStringLiteral("STARTS"), mCourses.starts, mCourses.starts.crowded, tr("%1 at the place of another"));
  if (mInput.setting.sites)
    tell(QStringLiteral("SITES"), mCourses.sites, mCourses.sites.crowded,
         tr("%1 within %2 m of another or of a start, where walkers could take one for the other")
             .arg(QStringLiteral("%1"), short_(mCourses.spacing_m)));
  if (mCourses.failure)
    return;
  const size_t starts = mCourses.starts.usable;
  if (starts > mCourses.set.courses.size())
    mFeedback->pushInfo(tr("STARTS: there are %1 starts for %2 courses; not all are used.")
                            .arg(starts)
                            .arg(mCourses.set.courses.size()));
}

QString PracticeCourseWriter::barred() const {
  const auto tried = mCourses.legs_tried;
  const QStringList words = {QString(),
                             tr("%1 are too short or too long when measured"),
                             tr("%1 leave the area"),
                             tr("%1 come too near to what is kept away from"),
                             tr("%1 cross ground that nobody walks"),
                             tr("%1 cross ground whose cover is not known"),
                             tr("%1 cross ground without heights"),
                             tr("%1 cross ground that is too steep")};
  QStringList parts;
  for (size_t i = 1; i < legBars; ++i)
    if (mCourses.barred[i] > 0)
      parts << words[int(i)].arg(mCourses.barred[i]);
  if (tried == 0)
    return tr("No two places lie %1 to %2 m apart.")
        .arg(plain(mInput.setting.rule.window.least_m), plain(mInput.setting.rule.window.most_m));
  return parts.isEmpty() ? tr("Of %1 legs tried all are open.").arg(tried)
                         : tr("Of %1 legs tried %2.").arg(tried).arg(parts.join(QLatin1String(", ")));
}

QString PracticeCourseWriter::failure() const {
  const CourseRule &rule = mInput.setting.rule;
  switch (*mCourses.failure) {
  case CourseFailure::NoStart:
    return tr(
        "STARTS: none of the starts can be used. Put one inside the area, away from what is kept away from and on "
        "ground that can be walked; or leave STARTS empty.");
  case CourseFailure::FewSpots:
    if (mInput.setting.sites)
      return tr("SITES: a course of %1 legs needs %2 sites beside its start, but only %3 can be used that lie farther "
                "than %4 m from each other and from the starts. Give more sites, fewer or shorter legs, or better "
                "walkers.")
          .arg(rule.legs)
          .arg(rule.controls() + (mInput.setting.starts.empty() ? 1 : 0))
          .arg(mCourses.sites.usable)
          .arg(short_(mCourses.spacing_m));
    return tr("AREA: layer “%1” has room for %2 controls only that lie farther than %3 m from each other (so far "
              "walkers "
              "may be off after the shortest leg); a course of %4 legs needs %5. Give a larger area, fewer or shorter "
              "legs.")
        .arg(mInput.area_name, QString::number(mCourses.sites.usable), short_(mCourses.spacing_m),
             QString::number(rule.legs), QString::number(rule.controls()));
  case CourseFailure::NoCourse:
    return tr("No course of %1 legs of %2 to %3 m was found. %4 Give a larger area, more sites, another length of "
              "legs, "
              "fewer legs, or a smaller TURN_MIN.")
        .arg(rule.legs)
        .arg(plain(rule.window.least_m), plain(rule.window.most_m), barred());
  }
  return QString();
}

void PracticeCourseWriter::tell() const {
  tellSpots();
  if (mCourses.failure)
    throw QgsProcessingException(failure());
  const CourseRule &rule = mInput.setting.rule;
  const CourseSet &set = mCourses.set;
  if (int(set.courses.size()) < rule.courses)
    mFeedback->pushWarning(tr("COURSES: only %1 of %2 courses were found that differ from each other. %3 Give a larger "
                              "area, more sites, or legs of more different lengths.")
                               .arg(set.courses.size())
                               .arg(rule.courses)
                               .arg(barred()));
  const QStringList words = {tr("Length %1 to %2 m"), tr("Climb %1 to %2 m"), tr("Walking %1 to %2 minutes"),
                             tr("Slowed by cover %1 to %2 times"), tr("Drift %1 to %2 m a leg")};
  for (size_t m = 0; m < measures; ++m) {
    const MeasureSpread &spread = set.spreads[m];
    if (!spread.counts)
      continue;
    const double scale = Measure(m) == Measure::Time ? 1.0 / 60 : 1;
    const int decimals = Measure(m) == Measure::Cover || Measure(m) == Measure::Drift ? 2 : 1;
    const QString range = words[int(m)].arg(QString::number(spread.least * scale, 'f', decimals),
                                            QString::number(spread.most * scale, 'f', decimals));
    if (spread.spread > balanceShare)
      mFeedback->pushWarning(tr("%1: out of balance by %2 percent, more than the 10 aimed at. Give more room, more "
                                "sites, or a wider range of "
                                "lengths.")
                                 .arg(range, percent(spread.spread)));
    else
      mFeedback->pushInfo(tr("%1: within %2 percent.").arg(range, percent(spread.spread)));
  }
  if (set.shared_legs > 0)
    mFeedback->pushWarning(
        tr("%n leg(s) are walked by more than one course: let those groups set out at different times.", nullptr,
           set.shared_legs));
  const auto crossing =
      std::count_if(set.courses.begin(), set.courses.end(), [](const Course &course) { return course.crossings > 0; });
  if (crossing > 0)
    mFeedback->pushWarning(tr("%n course(s) come over their own ground twice.", nullptr, int(crossing)));
  int passes = 0;
  for (const Course &course : set.courses)
    passes += course.passes;
  if (passes > 0)
    mFeedback->pushWarning(tr("%n time(s) a leg passes by another control, within twice the drift there: "
                              "tell walkers to look for the letter of their own.",
                              nullptr, passes));
}

UnknownCover PracticeCourseWriter::unknownCover() const {
  UnknownCover unknown;
  std::set<std::pair<size_t, size_t>> counted;
  for (const Course &course : mCourses.set.courses)
    for (size_t i = 1; i < course.spots.size(); ++i)
      if (counted.insert(std::minmax(course.spots[i - 1], course.spots[i])).second)
        unknown.add(mCourses.effort(course.spots[i - 1], course.spots[i]).unknown_m);
  return unknown;
}

void PracticeCourseWriter::nameSpots() {
  const size_t count = mCourses.spots.size();
  std::vector<size_t> used;
  for (size_t i = 0; i < count; ++i) {
    mNames << QString::fromStdString(mCourses.spots[i].name);
    mLetters << QString();
    if (!mCourses.spots[i].is_start && mCourses.reach_m[i] > 0)
      used.push_back(i);
  }
  // From north to south, so that the letters do not give the way away.
  std::sort(used.begin(), used.end(), [&](size_t a, size_t b) {
    const double north = mCourses.spots[a].place.latitude.degrees(), other = mCourses.spots[b].place.latitude.degrees();
    return north != other ? north > other : a < b;
  });
  for (size_t i = 0; i < used.size(); ++i)
    mLetters[int(used[i])] = letters(i);
  QSet<QString> names;
  int twice = 0;
  for (const size_t i : used) {
    QString &name = mNames[int(i)];
    if (name.isEmpty())
      name = mLetters[int(i)];
    twice += names.contains(name);
    names.insert(name);
  }
  if (twice > 0)
    mFeedback->pushWarning(
        tr("SITES: %n control(s) have the name of another one. Their letters tell them apart; better "
           "give each site a name of its own.",
           nullptr, twice));
  const auto starts = std::count_if(mCourses.spots.begin(), mCourses.spots.end(),
                                    [](const PracticeSpot &spot) { return spot.is_start; });
  for (size_t i = 0; i < count; ++i)
    if (mCourses.spots[i].is_start && mNames[int(i)].isEmpty())
      mNames[int(i)] = starts > 1 ? tr("Start %1").arg(i + 1) : tr("Start");
}

QString PracticeCourseWriter::routeName(size_t course) const {
  const int digits = QString::number(mCourses.set.courses.size()).size();
  return tr("Course %1").arg(course + 1, digits, 10, QLatin1Char('0'));
}

std::vector<double> PracticeCourseWriter::meansOf() const {
  std::vector<double> means(measures, 0);
  for (const Course &course : mCourses.set.courses)
    for (size_t m = 0; m < measures; ++m)
      means[m] += course.measure[m] / double(mCourses.set.courses.size());
  return means;
}

QString PracticeCourseWriter::note(const Course &course) const {
  QStringList notes;
  if (course.shared > 0)
    notes << tr("shares %1 of %2 legs with other courses").arg(course.shared).arg(mInput.setting.rule.legs);
  if (course.crossings > 0)
    notes << tr("comes over its own ground %n time(s)", nullptr, course.crossings);
  if (course.passes > 0)
    notes << tr("passes by %n other control(s)", nullptr, course.passes);
  const QStringList words = {tr("length"), tr("climb"), tr("minutes"), tr("cover"), tr("drift")};
  const std::vector<double> means = meansOf();
  for (size_t m = 0; m < measures; ++m) {
    const MeasureSpread &spread = mCourses.set.spreads[m];
    if (!spread.counts || spread.spread <= balanceShare || !(means[m] > 0))
      continue;
    const double off = course.measure[m] / means[m] - 1;
    if (course.measure[m] <= spread.least || course.measure[m] >= spread.most)
      notes << (off > 0 ? tr("%1 %2 percent over the mean") : tr("%1 %2 percent under the mean"))
                   .arg(words[int(m)], percent(std::abs(off)));
  }
  return notes.join(QLatin1String("; "));
}

// What the map shows at a place: once, however many courses come by.
QVariant PracticeCourseWriter::labelOf(size_t spot) {
  if (!mLabelled.insert(spot).second)
    return QVariant();
  const PracticeSpot &what = mCourses.spots[spot];
  const QString letter = mLetters[int(spot)];
  if (letter.isEmpty())
    return mNames[int(spot)];
  return what.is_site && !what.name.empty() ? letter + QLatin1Char(' ') + QString::fromStdString(what.name) : letter;
}

void PracticeCourseWriter::writeControls(VectorOutput &output, size_t number) {
  const Course &course = mCourses.set.courses[number];
  const size_t last = course.spots.size() - 1;
  for (size_t i = 0; i <= last; ++i) {
    const size_t spot = course.spots[i];
    const PracticeSpot &what = mCourses.spots[spot];
    QgsFeature feature;
    feature.setGeometry(QgsGeometry::fromPointXY(mFromPlaces(what.place, mInput.middle_x)));
    const double apart = mCourses.apart_m[spot];
    feature.setAttributes(
        QVector<QVariant>{mNames[int(spot)], routeName(number), int(i),
                          i == 0      ? QStringLiteral("start")
                          : i == last ? QStringLiteral("finish")
                                      : QStringLiteral("control"),
                          mLetters[int(spot)].isEmpty() ? QVariant() : QVariant(mLetters[int(spot)]),
                          what.is_site && !what.name.empty() ? QVariant(QString::fromStdString(what.name)) : QVariant(),
                          i > 0 ? QVariant(mCourses.effort(course.spots[i - 1], spot).reach_m) : QVariant(),
                          std::isfinite(apart) ? QVariant(apart) : QVariant(), labelOf(spot)});
    output.add(feature);
  }
}

QVariantMap PracticeCourseWriter::write() {
  nameSpots();
  VectorOutput routes(mReader, outputKey,
                      fieldsOf({{"route", FieldType::Text},
                                {"start", FieldType::Text},
                                {"legs", FieldType::Integer},
                                {"length_m", FieldType::Real},
                                {"climb_m", FieldType::Real},
                                {"minutes", FieldType::Real},
                                {"cover_f", FieldType::Real},
                                {"drift_m", FieldType::Real},
                                {"reach_m", FieldType::Real},
                                {"shared", FieldType::Real},
                                {"crossings", FieldType::Integer},
                                {"passes", FieldType::Integer},
                                {"off_pct", FieldType::Real},
                                {"controls", FieldType::Text},
                                {"note", FieldType::Text}}),
                      host::lineString, mInput.crs);
  VectorOutput controls(mReader, controlsKey,
                        fieldsOf({{"name", FieldType::Text},
                                  {"route", FieldType::Text},
                                  {"number", FieldType::Integer},
                                  {"kind", FieldType::Text},
                                  {"letter", FieldType::Text},
                                  {"site", FieldType::Text},
                                  {"reach_m", FieldType::Real},
                                  {"apart_m", FieldType::Real},
                                  {"label", FieldType::Text}}),
                        host::point, mInput.crs);
  const CourseSet &set = mCourses.set;
  const std::vector<double> means = meansOf();
  for (size_t i = 0; i < set.courses.size(); ++i) {
    if (mFeedback->isCanceled())
      throw Cancelled();
    const Course &course = set.courses[i];
    const auto value = [&](Measure m, double scale) {
      return set.spreads[size_t(m)].counts ? QVariant(course.measure[size_t(m)] * scale) : QVariant();
    };
    std::vector<Place> places;
    QStringList names;
    double reach = 0, off = 0;
    for (size_t k = 0; k < course.spots.size(); ++k) {
      places.push_back(mCourses.spots[course.spots[k]].place);
      if (k > 0) {
        names << mNames[int(course.spots[k])];
        reach = std::max(reach, mCourses.effort(course.spots[k - 1], course.spots[k]).reach_m);
      }
    }
    for (size_t m = 0; m < measures; ++m)
      if (set.spreads[m].counts && means[m] > 0)
        off = std::max(off, std::abs(course.measure[m] / means[m] - 1));
    const QString said = note(course);
    QgsFeature feature;
    feature.setGeometry(QgsGeometry::fromPolylineXY(mFromPlaces(places, mInput.middle_x)));
    feature.setAttributes(QVector<QVariant>{
        routeName(i), mNames[int(course.spots.front())], mInput.setting.rule.legs, value(Measure::Length, 1),
        value(Measure::Climb, 1), value(Measure::Time, 1.0 / 60), value(Measure::Cover, 1), value(Measure::Drift, 1),
        reach, double(course.shared) / mInput.setting.rule.legs, course.crossings, course.passes, off * 100,
        names.join(QLatin1String(", ")), said.isEmpty() ? QVariant() : QVariant(said)});
    routes.add(feature);
    writeControls(controls, i);
  }
  QVariantMap results = VectorOutput::finishAll({{&routes, QStringLiteral(":/brushline/styles/practice_courses.qml")},
                                                 {&controls, QStringLiteral(":/brushline/styles/course_controls.qml")}},
                                                mFeedback);
  results.insert(countKey, int(set.courses.size()));
  results.insert(controlCountKey, int(std::count_if(mLetters.begin(), mLetters.end(),
                                                    [](const QString &letter) { return !letter.isEmpty(); })));
  results.insert(sharedKey, set.shared_legs);
  results.insert(balanceKey, set.worstSpread() * 100);
  return results;
}

} // namespace brushline
