// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/gpx_export_host.h"

#include "handouts/courses_host.h"
#include "handouts/dial_norths_host.h"
#include "handouts/gpx_writer_host.h"
#include "handouts/leg_words_host.h"
#include "handouts/sheet_words_host.h"
#include "handouts/xml_text.h"
#include "quantities/progress.h"
#include "shared/base_algorithm.h"

namespace brushline {

namespace {

using Walked = std::vector<const LegSheet *>;
constexpr long toldEach = 20; // warnings

// Our own elements, named as the fields are.
namespace element {
const QString route = QStringLiteral("leg:route");
const QString walker = QStringLiteral("leg:walker");
const QString direction = QStringLiteral("leg:direction");
const QString leg = QStringLiteral("leg:leg");
const QString mark = QStringLiteral("leg:mark");
const QString name = QStringLiteral("leg:name");
const QString from_name = QStringLiteral("leg:from_name");
const QString to_name = QStringLiteral("leg:to_name");
const QString true_brg = QStringLiteral("leg:true_brg");
const QString grid_brg = QStringLiteral("leg:grid_brg");
const QString mag_brg = QStringLiteral("leg:mag_brg");
const QString converg = QStringLiteral("leg:converg");
const QString decl = QStringLiteral("leg:decl");
const QString decl_err = QStringLiteral("leg:decl_err");
const QString date = QStringLiteral("leg:date");
const QString dial = QStringLiteral("leg:dial");
const QString dial_text = QStringLiteral("leg:dial_text");
const QString back_dial = QStringLiteral("leg:back_dial");
const QString compass_pt = QStringLiteral("leg:compass_pt");
const QString dist_m = QStringLiteral("leg:dist_m");
const QString slope_m = QStringLiteral("leg:slope_m");
const QString climb_m = QStringLiteral("leg:climb_m");
const QString drop_m = QStringLiteral("leg:drop_m");
const QString paces = QStringLiteral("leg:paces");
const QString walk_min = QStringLiteral("leg:walk_min");
const QString cover = QStringLiteral("leg:cover");
const QString sight_m = QStringLiteral("leg:sight_m");
const QString spacing_m = QStringLiteral("leg:spacing_m");
const QString marks = QStringLiteral("leg:marks");
const QString drift_m = QStringLiteral("leg:drift_m");
const QString along_m = QStringLiteral("leg:along_m");
const QString warnings = QStringLiteral("leg:warnings");
const QString part = QStringLiteral("leg:part");
const QString piece = QStringLiteral("leg:piece");
const QString turn = QStringLiteral("leg:turn");
const QString side = QStringLiteral("leg:side");
const QString obstacle = QStringLiteral("leg:obstacle");
const QString count_m = QStringLiteral("leg:count_m");
const QString run_paces = QStringLiteral("leg:run_paces");
const QString blocked_m = QStringLiteral("leg:blocked_m");
const QString at_m = QStringLiteral("leg:at_m");
const QString offset_m = QStringLiteral("leg:offset_m");
} // namespace element

// The element for one walker of several: flat, since table readers take the last of elements that repeat, and that
// would be another walker's paces.
QString numbered(const QString &name, int walker) {
  return walker == 0 ? name : name + QLatin1Char('_') + QString::number(walker);
}

class Export {
  Q_DECLARE_TR_FUNCTIONS(brushline::GpxExport)

public:
  Export(QIODevice &device, const std::vector<LegSheet> &sheets, const GpxSettings &settings,
         QgsProcessingFeedback *feedback);
  GpxCounts write();

private:
  //! A route to write.
  struct Line {
    const SheetCourse *course;
    Walked walked;
    std::optional<North> north; // that its dials count from, if that is certain
    int legs;                   // the route's, with those that are lacking
  };

  void plan(const std::vector<LegSheet> &sheets);
  std::vector<Walked> walkedTogether(const SheetCourse &course);
  GpxLabel about() const;
  void waypoint(const CourseMark &mark);
  void route(const Line &line);
  void legPoint(const Line &line, size_t leg, const LegWords &words);
  void endPoint(const Line &line, size_t leg);
  void common(const SheetLeg &leg);
  void forWalker(const SheetLeg &leg, int walker);
  // Throws Cancelled.
  void step() {
    mProgress.check();
    if (++mDone % 500 == 0)
      mFeedback->setProgress(100 * double(mDone) / double(mSteps));
  }

  const GpxSettings &mSettings;
  QgsProcessingFeedback *mFeedback;
  FeedbackProgress mProgress;
  GpxWriter mWriter;
  std::vector<SheetCourse> mCourses;
  std::vector<Line> mLines;
  std::vector<CourseMark> mMarks;
  GpxBounds mBounds;
  GpxCounts mCounts;
  long mDone = 0, mSteps = 1;
  long mLacking = 0; // routes that lack legs
  QDate mDay;        // the last one that was written
  QString mDayText;
};

Export::Export(QIODevice &device, const std::vector<LegSheet> &sheets, const GpxSettings &settings,
               QgsProcessingFeedback *feedback)
    : mSettings(settings), mFeedback(feedback), mProgress(feedback), mWriter(device) {
  plan(sheets);
}

void Export::plan(const std::vector<LegSheet> &sheets) {
  mCourses = courses::of(sheets);
  for (const SheetCourse &course : mCourses) {
    for (Walked &walked : walkedTogether(course)) {
      mSteps += long(walked.front()->legs.size());
      for (const SheetLeg &leg : walked.front()->legs) {
        mProgress.check();
        mBounds.add(leg.start);
        mBounds.add(leg.end);
      }
      const std::optional<North> north = northOf(*walked.front());
      const LegSheet &sheet = *walked.front();
      const int last = std::max(sheet.legs.back().number, sheet.missing.empty() ? 0 : sheet.missing.back());
      mLines.push_back({&course, std::move(walked), north, std::max(int(sheet.legCount()), last)});
    }
    std::vector<CourseMark> marks = courses::marks(course, mProgress);
    for (const CourseMark &mark : marks)
      mBounds.add(mark.counted.front().mark->place);
    mSteps += long(marks.size());
    std::move(marks.begin(), marks.end(), std::back_inserter(mMarks));
  }
}

std::vector<Walked> Export::walkedTogether(const SheetCourse &course) {
  std::vector<Walked> groups;
  if (!mSettings.one_route) {
    for (const LegSheet *sheet : course.sheets)
      groups.push_back({sheet});
    return groups;
  }
  groups = courses::together(course);
  if (groups.size() > 1)
    mFeedback->pushWarning(
        tr("ONE_ROUTE: the legs of route “%1” are not the same for all its walkers, so it is written as "
           "%2 routes.")
            .arg(course.sheets.front()->route)
            .arg(groups.size()));
  return groups;
}

GpxLabel Export::about() const {
  GpxLabel label;
  label.name = mSettings.title;
  if (label.name.isEmpty())
    label.name = mCourses.size() == 1 && !mCourses.front().sheets.front()->route.isEmpty()
                     ? mCourses.front().sheets.front()->route
                     : tr("Compass legs");
  label.description = tr(
      "Legs to walk by compass and pace count. CAUTION: magnetic north moves, and the legs are for the day they were "
      "worked out for. The lines are straight and know nothing of cliffs, water, thickets or whose land it is. A "
      "receiver can fail or err under trees: carry the map and the legs on paper, keep the compass away from iron and "
      "power lines, check each leg by its back bearing, tell someone where you go and when you will be back, set a "
      "time at which you turn round, and keep to local rules and the word of a qualified leader. Walk a new course "
      "yourself before children do.");
  return label;
}

GpxCounts Export::write() {
  mWriter.begin(mSettings.creator, about(), mSettings.time, mBounds);
  for (const CourseMark &mark : mMarks)
    waypoint(mark);
  for (const Line &line : mLines)
    route(line);
  mWriter.finish();
  if (mLacking > toldEach)
    mFeedback->pushWarning(tr("%n route(s) lack legs: see their descriptions.", nullptr, int(mLacking)));
  return mCounts;
}

void Export::waypoint(const CourseMark &mark) {
  step();
  const CountedMark &first = mark.counted.front();
  mWriter.beginWaypoint(first.mark->place, std::nullopt,
                        {mark.name, LegWords::shortMark(mark), LegWords::mark(mark), tr("mark")});
  mWriter.beginExtensions();
  mWriter.own(element::route, first.sheet->route);
  mWriter.own(element::direction, first.sheet->back ? QStringLiteral("back") : QStringLiteral("out"));
  mWriter.own(element::leg, std::optional<long>(mark.leg->number));
  mWriter.own(element::mark, std::optional<long>(first.mark->number));
  mWriter.own(element::name, first.mark->name);
  mWriter.own(element::at_m, first.mark->at_m);
  mWriter.own(element::offset_m, first.mark->offset_m);
  for (const CountedMark &each : mark.counted) {
    const int walker = mark.counted.size() > 1 ? each.walker : 0;
    mWriter.own(numbered(element::walker, walker), each.sheet->walker);
    mWriter.own(numbered(element::paces, walker), each.mark->paces);
    mWriter.own(numbered(element::sight_m, walker), each.mark->sight_m);
  }
  mWriter.end();
  mWriter.end();
  ++mCounts.waypoints;
}

void Export::route(const Line &line) {
  const LegSheet &sheet = *line.walked.front();
  const LegWords words(line.north);
  const QString name = courses::routeName(*line.course, line.walked);
  if (const std::vector<int> missing = LegWords::missing(line.walked); !missing.empty() && ++mLacking <= toldEach)
    mFeedback->pushWarning((missing.size() == 1 ? tr("Route “%1”: leg %2 is not in the file.")
                                                : tr("Route “%1”: legs %2 are not in the file."))
                               .arg(name, SheetWords::numbers(missing)));
  mWriter.beginRoute({name, LegWords::shortRoute(line.walked), words.route(line.walked), tr("compass legs")},
                     ++mCounts.routes);
  mWriter.beginExtensions();
  mWriter.own(element::route, sheet.route);
  mWriter.own(element::direction, sheet.back ? QStringLiteral("back") : QStringLiteral("out"));
  for (size_t i = 0; i < line.walked.size(); ++i)
    mWriter.own(numbered(element::walker, line.walked.size() > 1 ? int(i) + 1 : 0), line.walked[i]->walker);
  mWriter.end();
  for (size_t i = 0; i < sheet.legs.size() && !mWriter.failed(); ++i) {
    step();
    legPoint(line, i, words);
    if (i + 1 == sheet.legs.size() || !samePlace(sheet.legs[i].end, sheet.legs[i + 1].start))
      endPoint(line, i);
  }
  mWriter.end();
}

void Export::legPoint(const Line &line, size_t i, const LegWords &words) {
  const LegSheet &sheet = *line.walked.front();
  const SheetLeg &leg = sheet.legs[i];
  std::vector<LegOnSheet> walked;
  for (const LegSheet *each : line.walked)
    walked.push_back({each, &each->legs[i]});
  static const QString type = tr("leg");
  mWriter.beginRoutePoint(
      leg.start, leg.declination,
      {courses::startName(*line.course, sheet, i), LegWords::shortLeg(walked), words.leg(walked, line.legs), type});
  mWriter.beginExtensions();
  common(leg);
  for (size_t k = 0; k < walked.size(); ++k) {
    const int walker = walked.size() > 1 ? int(k) + 1 : 0;
    if (walker > 0)
      mWriter.own(numbered(element::walker, walker), walked[k].sheet->walker);
    forWalker(*walked[k].leg, walker);
  }
  mWriter.end();
  mWriter.end();
  ++mCounts.points;
}

void Export::endPoint(const Line &line, size_t i) {
  const LegSheet &sheet = *line.walked.front();
  const SheetLeg &leg = sheet.legs[i];
  GpxLabel label{courses::endName(*line.course, sheet, i), tr("End"),
                 tr("The route ends here, with leg %1.").arg(leg.label()), tr("end")};
  if (i + 1 == sheet.legs.size()) {
    const std::vector<int> missing = LegWords::missing(line.walked);
    const auto behind = std::upper_bound(missing.begin(), missing.end(), leg.number);
    if (behind != missing.end()) {
      label.comment = tr("End of leg %1").arg(leg.label());
      label.description =
          tr("Leg %1 ends here.").arg(leg.label()) + QLatin1Char(' ') + LegWords::lacking({behind, missing.end()});
    }
  } else {
    const SheetLeg &next = sheet.legs[i + 1];
    const QString gap = LegWords::metres(metresBetween(leg.end, next.start));
    label.comment = tr("End of leg %1, then a gap of %2 m").arg(leg.label(), gap);
    label.description =
        tr("Leg %1 ends here. CAUTION: leg %2 starts %3 m away, at “%4”. Neither bearing nor paces are given "
           "for the way there.")
            .arg(leg.label(), next.label(), gap, courses::startName(*line.course, sheet, i + 1));
    label.type = tr("gap");
  }
  if (!leg.back_text.isEmpty())
    label.description += QLatin1Char(' ') + tr("From here the leg's start is sighted at %1.").arg(leg.back_text);
  mWriter.beginRoutePoint(leg.end, std::nullopt, label);
  mWriter.end();
  ++mCounts.points;
}

void Export::common(const SheetLeg &leg) {
  mWriter.own(element::leg, std::optional<long>(leg.number));
  mWriter.own(element::from_name, leg.from);
  mWriter.own(element::to_name, leg.to);
  mWriter.own(element::true_brg, leg.true_bearing);
  mWriter.own(element::grid_brg, leg.grid_bearing);
  mWriter.own(element::mag_brg, leg.magnetic_bearing);
  mWriter.own(element::converg, leg.convergence);
  mWriter.own(element::decl, leg.declination);
  mWriter.own(element::decl_err, leg.declination_error);
  if (leg.date != mDay) {
    mDay = leg.date;
    mDayText = leg.date.toString(Qt::ISODate);
  }
  mWriter.own(element::date, mDayText);
  mWriter.own(element::dial, leg.dial);
  mWriter.own(element::dial_text, leg.dial_text);
  mWriter.own(element::back_dial, leg.back_dial);
  mWriter.own(element::compass_pt, leg.compass_point);
  mWriter.own(element::dist_m, leg.length_m);
  mWriter.own(element::slope_m, leg.slope_m);
  mWriter.own(element::climb_m, leg.climb_m);
  mWriter.own(element::drop_m, leg.drop_m);
  mWriter.own(element::cover, leg.cover);
  if (!leg.piece)
    return;
  mWriter.own(element::part, leg.piece->part);
  mWriter.own(element::piece, std::optional<long>(leg.piece->number));
  mWriter.own(element::turn, leg.piece->turn);
  mWriter.own(element::side, leg.piece->side);
  mWriter.own(element::obstacle, leg.piece->obstacle);
  mWriter.own(element::count_m, leg.piece->count_m);
  mWriter.own(element::blocked_m, leg.piece->blocked_m);
}

void Export::forWalker(const SheetLeg &leg, int walker) {
  mWriter.own(numbered(element::paces, walker), leg.paces);
  mWriter.own(numbered(element::walk_min, walker), leg.minutes);
  mWriter.own(numbered(element::sight_m, walker), leg.sight_m);
  mWriter.own(numbered(element::spacing_m, walker), leg.spacing_m);
  mWriter.own(numbered(element::marks, walker), leg.sightings);
  mWriter.own(numbered(element::drift_m, walker), leg.drift_m);
  mWriter.own(numbered(element::along_m, walker), leg.along_m);
  mWriter.own(numbered(element::warnings, walker), leg.warnings);
  if (leg.piece)
    mWriter.own(numbered(element::run_paces, walker), leg.piece->run_paces);
}

// Makes texts fit, and counts those that were changed.
class Fitting {
  Q_DECLARE_TR_FUNCTIONS(brushline::GpxExport)

public:
  void operator()(QString &text) {
    const auto fit = forXml({reinterpret_cast<const char16_t *>(text.utf16()), size_t(text.size())});
    if (!fit)
      return;
    text = QString::fromStdU16String(fit->text);
    mReplaced += fit->replaced;
    mTurned += fit->directions_removed;
  }
  void tell(QgsProcessingFeedback *feedback) const {
    if (mReplaced > 0)
      feedback->pushWarning(tr("%n text(s) held characters that no XML file can hold or nobody can read; “�” stands in "
                               "their place.",
                               nullptr, int(mReplaced)));
    if (mTurned > 0)
      feedback->pushWarning(
          tr("%n text(s) held characters that turn the direction of writing, which can make a name look "
             "like another; they were left out.",
             nullptr, int(mTurned)));
  }

private:
  long mReplaced = 0, mTurned = 0;
};

} // namespace

void makeFitForXml(std::vector<LegSheet> &sheets, QString &title, QgsProcessingFeedback *feedback) {
  Fitting fit;
  fit(title);
  for (LegSheet &sheet : sheets) {
    fit(sheet.route);
    fit(sheet.walker);
    for (SheetLeg &leg : sheet.legs) {
      if (feedback->isCanceled())
        throw Cancelled();
      for (QString SheetLeg::*text : {&SheetLeg::from, &SheetLeg::to, &SheetLeg::dial_text, &SheetLeg::back_text,
                                      &SheetLeg::compass_point, &SheetLeg::cover, &SheetLeg::warnings})
        fit(leg.*text);
      if (leg.piece)
        for (QString SheetPiece::*text : {&SheetPiece::turn, &SheetPiece::side, &SheetPiece::obstacle})
          fit((*leg.piece).*text);
      for (SheetMark &mark : leg.marks)
        fit(mark.name);
    }
  }
  fit.tell(feedback);
}

GpxCounts writeGpx(QIODevice &device, const std::vector<LegSheet> &sheets, const GpxSettings &settings,
                   QgsProcessingFeedback *feedback) {
  return Export(device, sheets, settings, feedback).write();
}

} // namespace brushline
