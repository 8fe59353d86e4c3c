// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/courses_host.h"

#include "handouts/gpx_values.h"
#include "shared/geodesic.h"

#include <QHash>

#include <algorithm>
#include <cmath>
#include <map>

namespace brushline {

double metresBetween(const Place &a, const Place &b) { return geodesicBetween(a, b).length.metres(); }

bool samePlace(const Place &a, const Place &b) {
  if (a.latitude.degrees() == b.latitude.degrees() && a.longitude.degrees() == b.longitude.degrees())
    return true;
  if (std::abs(a.latitude.degrees() - b.latitude.degrees()) > 1e-5) // a metre
    return false;
  return metresBetween(a, b) < samePlaceWithin_m;
}

namespace courses {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::Courses)
};

// Whether a walker goes by another's legs.
bool sameLegs(const LegSheet &a, const LegSheet &b) {
  return std::equal(a.legs.begin(), a.legs.end(), b.legs.begin(), b.legs.end(),
                    [](const SheetLeg &x, const SheetLeg &y) {
                      return x.number == y.number && x.dial_text == y.dial_text && samePlace(x.start, y.start) &&
                             samePlace(x.end, y.end);
                    });
}

// The marks of one leg number.
struct LegMarks {
  std::vector<CourseMark> marks;

  void add(const CountedMark &counted, const SheetLeg &leg) {
    const SheetMark &mark = *counted.mark;
    for (CourseMark &known : marks) {
      const SheetMark &first = *known.counted.front().mark;
      if (first.number == mark.number && first.name == mark.name && known.counted.back().sheet != counted.sheet &&
          samePlace(first.place, mark.place)) {
        known.counted.push_back(counted);
        return;
      }
    }
    marks.push_back({QString(), &leg, false, {counted}});
  }

  void name(const QString &letter) {
    std::stable_sort(marks.begin(), marks.end(), [](const CourseMark &a, const CourseMark &b) {
      return a.counted.front().mark->number < b.counted.front().mark->number;
    });
    std::map<int, int> times;
    for (const CourseMark &mark : marks)
      times[mark.counted.front().mark->number] += mark.counted.front().mark->name.isEmpty();
    for (CourseMark &mark : marks) {
      const SheetMark &first = *mark.counted.front().mark;
      mark.name = first.name;
      if (!mark.name.isEmpty())
        continue;
      mark.name = letter + QString::number(mark.leg->number) + QLatin1Char('.') + QString::number(first.number);
      if (times[first.number] > 1) { // walkers see differently far, and have marks of their own
        QStringList walkers;
        for (const CountedMark &each : mark.counted)
          walkers << each.sheet->walker;
        mark.name += QLatin1Char(' ') + walkers.join(QLatin1String(", "));
      }
    }
  }
};

} // namespace

std::vector<SheetCourse> of(const std::vector<LegSheet> &sheets) {
  std::vector<SheetCourse> all;
  QHash<QString, size_t> byName;
  for (const LegSheet &sheet : sheets) {
    const QString name = QLatin1Char(sheet.back ? '-' : '+') + sheet.route;
    auto found = byName.find(name);
    if (found == byName.end()) {
      found = byName.insert(name, all.size());
      all.emplace_back();
    }
    all[*found].sheets.push_back(&sheet);
  }
  if (all.size() > 1)
    for (size_t i = 0; i < all.size(); ++i)
      all[i].letter = QString::fromStdString(letterOf(i));
  return all;
}

std::vector<std::vector<const LegSheet *>> together(const SheetCourse &course) {
  std::vector<std::vector<const LegSheet *>> groups;
  for (const LegSheet *sheet : course.sheets) {
    const auto group =
        std::find_if(groups.begin(), groups.end(), [&](const auto &other) { return sameLegs(*other.front(), *sheet); });
    if (group == groups.end())
      groups.push_back({sheet});
    else
      group->push_back(sheet);
  }
  return groups;
}

QString routeName(const SheetCourse &course, const std::vector<const LegSheet *> &walked) {
  QStringList walkers, head;
  for (const LegSheet *sheet : walked)
    if (!sheet->walker.isEmpty())
      walkers << sheet->walker;
  if (walkers.size() == int(course.sheets.size()) && walkers.size() > 1)
    walkers.clear(); // everybody's
  for (const QString &part :
       {course.letter, walked.front()->back ? Text::tr("back") : QString(), walkers.join(QLatin1String(", "))})
    if (!part.isEmpty())
      head << part;
  const QString route = walked.front()->route.isEmpty() ? Text::tr("Legs") : walked.front()->route;
  return head.isEmpty() ? route : head.join(QLatin1Char(' ')) + QLatin1String(": ") + route;
}

QString startName(const SheetCourse &course, const LegSheet &sheet, size_t leg) {
  if (!sheet.legs[leg].from.isEmpty())
    return sheet.legs[leg].from;
  if (leg > 0 && !sheet.legs[leg - 1].to.isEmpty() && samePlace(sheet.legs[leg - 1].end, sheet.legs[leg].start))
    return sheet.legs[leg - 1].to;
  return course.letter + sheet.legs[leg].label();
}

QString endName(const SheetCourse &course, const LegSheet &sheet, size_t leg) {
  if (!sheet.legs[leg].to.isEmpty())
    return sheet.legs[leg].to;
  if (leg + 1 < sheet.legs.size() || (!sheet.missing.empty() && sheet.missing.back() > sheet.legs[leg].number))
    return Text::tr("%1 end").arg(course.letter + sheet.legs[leg].label());
  return course.letter.isEmpty() ? Text::tr("End") : Text::tr("%1 end").arg(course.letter);
}

std::vector<CourseMark> marks(const SheetCourse &course, const Progress &progress) {
  std::map<int, LegMarks> byLeg;
  for (size_t i = 0; i < course.sheets.size(); ++i)
    for (const SheetLeg &leg : course.sheets[i]->legs) {
      progress.check();
      for (const SheetMark &mark : leg.marks)
        if (!samePlace(mark.place, leg.end))
          byLeg[leg.number].add({course.sheets[i], &mark, int(i) + 1}, leg);
    }
  std::vector<CourseMark> all;
  for (auto &[number, marks] : byLeg) {
    marks.name(course.letter);
    for (CourseMark &mark : marks.marks)
      mark.one_of_several = course.sheets.size() > 1;
    std::move(marks.marks.begin(), marks.marks.end(), std::back_inserter(all));
  }
  return all;
}

} // namespace courses

} // namespace brushline
