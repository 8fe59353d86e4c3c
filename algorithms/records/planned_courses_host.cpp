// SPDX-License-Identifier: GPL-2.0-or-later
#include "records/planned_courses_host.h"

#include "quantities/progress.h"
#include "shared/routes_parameters.h"
#include "shared/source_features_host.h"

#include <qgsexception.h>
#include <qgsfeatureiterator.h>

#include <algorithm>
#include <cmath>
#include <map>

namespace brushline {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::PlannedCourses)
};
const QString inputKey = QStringLiteral("INPUT");
constexpr double joined_m = 1; // legs that end and start so near to each other share their turn

struct Leg {
  PlannedLeg leg;
  PlannedLegInfo info;
};
using Way = std::vector<Leg>;

QString plainName(const QString &name) { return name.simplified().toCaseFolded(); }

QString legKey(const QString &route, int leg, bool back) {
  return QStringLiteral("%1\n%2\n%3")
      .arg(route, QString::number(leg), back ? QStringLiteral("back") : QStringLiteral("out"));
}

// What annotated legs tell, by route, leg and direction; nothing for plain routes.
QHash<QString, PlannedLegInfo> readInfo(const ParameterReader &reader, QStringList &walkers,
                                        QgsProcessingFeedback *feedback) {
  QHash<QString, PlannedLegInfo> result;
  const auto source = reader.source(inputKey);
  const auto index = [&](const char *name) { return source->fields().lookupField(QString::fromLatin1(name)); };
  const int route = index("route"), leg = index("leg"), walker = index("walker"), direction = index("direction"),
            declination = index("decl"), convergence = index("converg"), paces = index("paces"), date = index("date");
  if (route < 0 || leg < 0 || walker < 0 || direction < 0)
    return result;
  const auto number = [](const QgsFeature &feature, int field) {
    bool ok = false;
    const double value = field >= 0 && !feature.attribute(field).isNull() ? feature.attribute(field).toDouble(&ok) : 0;
    return ok && std::isfinite(value) ? std::optional(value) : std::nullopt;
  };
  QgsFeature feature;
  SourceFeatures features(inputKey, *source, feedback);
  while (features.next(feature)) {
    const QString name = feature.attribute(walker).toString().trimmed();
    const bool back = feature.attribute(direction).toString() == QLatin1String("back");
    PlannedLegInfo &info =
        result[legKey(feature.attribute(route).toString().trimmed(), feature.attribute(leg).toInt(), back)];
    if (!info.declination)
      info.declination = number(feature, declination);
    if (!info.convergence)
      info.convergence = number(feature, convergence);
    if (!info.date.isValid() && date >= 0)
      info.date = feature.attribute(date).toDate();
    if (const auto count = number(feature, paces); count && *count > 0)
      info.paces.insert(name, *count);
    if (!name.isEmpty() && !walkers.contains(name))
      walkers << name;
  }
  return result;
}

void join(Way &way, Leg next) {
  if (!way.empty()) {
    const Place &from = way.back().leg.to, &to = next.leg.from;
    if (const GeodesicLeg gap = geodesicBetween(from, to); gap.length.metres() > joined_m)
      way.push_back({{from, to, gap, true}, PlannedLegInfo()});
  }
  way.push_back(std::move(next));
}

Way reversed(const Way &way) {
  Way result;
  int number = 0;
  for (auto leg = way.rbegin(); leg != way.rend(); ++leg) {
    if (leg->leg.any_way)
      continue;
    Leg turned = *leg;
    std::swap(turned.leg.from, turned.leg.to);
    turned.leg.geodesic = geodesicBetween(turned.leg.from, turned.leg.to);
    turned.info.number = ++number;
    turned.info.back = !turned.info.back;
    turned.info.paces.clear(); // up is not down
    join(result, turned);
  }
  return result;
}

// Annotated legs that follow one another by their numbers are one way, across gaps too. Where numbers come again
// (routes of one name, aims of several walkers) only those are that meet.
std::vector<Way> chained(std::vector<Way> ways) {
  std::stable_sort(ways.begin(), ways.end(),
                   [](const Way &a, const Way &b) { return a.front().info.number < b.front().info.number; });
  bool again = false;
  for (size_t i = 1; i < ways.size(); ++i)
    again = again || ways[i].front().info.number <= ways[i - 1].back().info.number;
  const auto goesOn = [again](const Way &before, const Way &way) {
    constexpr double joint_m = 1;
    return before.back().info.number < way.front().info.number &&
           (!again || geodesicBetween(before.back().leg.to, way.front().leg.from).length.metres() <= joint_m);
  };
  std::vector<Way> chains;
  for (const Way &way : ways) {
    auto chain = std::find_if(chains.begin(), chains.end(), [&](const Way &each) { return goesOn(each, way); });
    if (chain == chains.end())
      chain = chains.insert(chains.end(), Way());
    for (const Leg &leg : way)
      if (!leg.leg.any_way)
        join(*chain, leg);
  }
  return chains;
}

void add(PlannedCourses &all, size_t route, const Way &way) {
  PlannedCourse course{route, {}};
  std::vector<PlannedLegInfo> info;
  for (const Leg &leg : way) {
    course.legs.push_back(leg.leg);
    info.push_back(leg.info);
  }
  all.courses.push_back(std::move(course));
  all.info.push_back(std::move(info));
}
} // namespace

std::optional<size_t> PlannedCourses::routeCalled(const QString &name) const {
  for (int i = 0; i < routes.size(); ++i)
    if (plainName(routes.at(i)) == plainName(name))
      return size_t(i);
  return std::nullopt;
}

QString PlannedCourses::walkerCalled(const QString &name) const {
  for (const QString &walker : walkers)
    if (plainName(walker) == plainName(name))
      return walker;
  return QString();
}

void checkCourses(const ParameterReader &reader) {
  const auto source = reader.source(inputKey);
  if (source && source->fields().lookupField(QStringLiteral("piece")) >= 0 &&
      source->fields().lookupField(QStringLiteral("part")) >= 0)
    throw QgsProcessingException(
        Text::tr("%1: layer “%2” has legs with detours, in pieces. Give the legs as they were before the detours.")
            .arg(inputKey, source->sourceName()));
  if (source && reader.given(QStringLiteral("ROUTE_FIELD")) &&
      reader.fieldIndex(QStringLiteral("ROUTE_FIELD"), *source) !=
          source->fields().lookupField(QStringLiteral("route")) &&
      source->fields().lookupField(QStringLiteral("leg")) >= 0 &&
      source->fields().lookupField(QStringLiteral("direction")) >= 0)
    throw QgsProcessingException(
        Text::tr("ROUTE_FIELD: layer “%1” has annotated legs, which name their route themselves. Leave it empty.")
            .arg(source->sourceName()));
}

PlannedCourses readCourses(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  PlannedCourses result;
  const QHash<QString, PlannedLegInfo> known = readInfo(reader, result.walkers, feedback);
  RouteSource source(reader, feedback);
  result.crs = source.crs();

  struct Ways {
    std::vector<Way> out, back; // features, or legs, each
  };
  std::map<int, Ways> byRoute;
  QHash<QString, int> numbers;
  RouteInput route;
  long used = 0;
  while (source.next(route)) {
    Way way;
    int number = route.first_leg;
    for (const auto &part : route.route.parts)
      for (size_t i = 1; i < part.size(); ++i) {
        const GeodesicLeg line = geodesicBetween(part[i - 1].place, part[i].place);
        if (line.length.metres() < 0.001)
          continue;
        Leg leg{{part[i - 1].place, part[i].place, line, false}, known.value(legKey(route.name, number, route.back))};
        leg.info.number = number++;
        leg.info.back = route.back;
        leg.info.start_x = route.x[part[i - 1].source];
        join(way, leg);
      }
    if (way.empty()) {
      source.skip(route.where, Text::tr("has no two vertices apart, so no leg."));
      continue;
    }
    if (!numbers.contains(route.name)) {
      numbers.insert(route.name, result.routes.size());
      result.routes << route.name;
    }
    Ways &ways = byRoute[numbers.value(route.name)];
    (route.back ? ways.back : ways.out).push_back(std::move(way));
    ++used;
  }
  source.finish(used);

  for (auto &[number, ways] : byRoute) {
    // Annotated legs come one by one and make one way; plain routes are a way each.
    if (!known.isEmpty())
      for (std::vector<Way> *each : {&ways.out, &ways.back})
        *each = chained(std::move(*each));
    const size_t count = std::max(ways.out.size(), ways.back.size());
    for (size_t i = 0; i < count; ++i) {
      const Way out = i < ways.out.size() ? ways.out[i] : reversed(ways.back[i]);
      const Way back = i < ways.back.size() ? ways.back[i] : reversed(out);
      Way both = out;
      for (const Leg &leg : back)
        if (!leg.leg.any_way)
          join(both, leg);
      add(result, size_t(number), out);
      add(result, size_t(number), back);
      add(result, size_t(number), both);
    }
  }
  if (result.courses.empty())
    throw QgsProcessingException(Text::tr("%1: there is no leg to hold tracks against.").arg(inputKey));
  return result;
}

} // namespace brushline
