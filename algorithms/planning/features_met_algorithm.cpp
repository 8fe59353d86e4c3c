// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/features_met_algorithm.h"

#include "planning/leg_way.h"
#include "shared/compass.h"
#include "shared/ordered_work.h"
#include "shared/place_reader_host.h"
#include "shared/routes_parameters.h"
#include "shared/terrain_parameters.h"
#include "shared/walker_parameters.h"
#include "walking/pacing.h"

#include <qgsexception.h>
#include <qgsgeometry.h>

#include <cmath>
#include <optional>
#include <vector>

namespace brushline {

namespace {
const QString featuresKey = QStringLiteral("FEATURES"), reachKey = QStringLiteral("REACH"),
              widthKey = QStringLiteral("WIDTH"), outputKey = QStringLiteral("OUTPUT"),
              countKey = QStringLiteral("MET_COUNT");
constexpr Limits reachLimits{0, 10000, 200}, widthLimits{0, 1000, 20};

// The words of the fields role and event; never translated.
QString word(MetRole role) {
  static const char *const words[] = {"crossed", "left", "right", "beyond"};
  return QString::fromLatin1(words[static_cast<int>(role)]);
}
QString word(MetEvent event) {
  static const char *const words[] = {"across", "touched",      "along",        "into",         "out of",
                                      "passed", "ground rises", "ground falls", "ground levels"};
  return QString::fromLatin1(words[static_cast<int>(event)]);
}
} // namespace

// A leg, and what is met along it.
struct FeaturesMetAlgorithm::MetLeg {
  QString route;
  int number;
  QString direction;
  Place from, to;
  GeodesicLeg line;
  double start_x; // as the input has it

  struct Count {
    int paces;
    std::optional<Duration> time;
  };
  std::vector<FeatureMet> met;
  std::vector<Place> places;                 // of what is met
  std::vector<std::vector<Count>> by_walker; // to each place
};

QString FeaturesMetAlgorithm::name() const { return QStringLiteral("featuresmet"); }
QString FeaturesMetAlgorithm::displayName() const { return tr("Features met along legs"); }
QString FeaturesMetAlgorithm::group() const { return tr("Planning"); }
QString FeaturesMetAlgorithm::groupId() const { return QStringLiteral("planning"); }
QStringList FeaturesMetAlgorithm::tags() const {
  return tr("cross,pass,stream,trail,catching feature,handrail,slope,expect,leg,route").split(QLatin1Char(','));
}
QString FeaturesMetAlgorithm::shortDescription() const {
  return tr("Tells what one crosses and passes along each leg, after how many paces and minutes, and what catches one "
            "who has gone too far.");
}
QgsProcessingAlgorithm *FeaturesMetAlgorithm::createInstance() const { return new FeaturesMetAlgorithm(); }

void FeaturesMetAlgorithm::initAlgorithm(const QVariantMap &) {
  addParameters(routes_parameters::definitions());
  addParameters(features_parameters::definitions(
      featuresKey, tr("Features to meet"), tr("Trails, streams, ponds, boulders: layers of points, lines or polygons."),
      false));
  addParameters(features_parameters::nameDefinitions());
  addParameters(
      {helped(numberDefinition(widthKey, tr("How far to either side features are passed (m)"), widthLimits),
              tr("What lies farther off the line is not told; in metres. In thick cover take what can be seen.")),
       helped(numberDefinition(reachKey, tr("How far beyond the leg's end to look (m)"), reachLimits),
              tr("The first line or area met there tells one who has gone too far; in metres."))});
  addParameters(routes_parameters::gridDefinitions());
  addParameters(walker_parameters::definitions());
  addParameters(terrain_parameters::definitions());
  addParameters(cover_parameters::definitions());
  addParameters(KeptStyles::definitions());
  addParameters({new QgsProcessingParameterFeatureSink(outputKey, tr("Features met"), host::pointOutput)});
  addOutput(new QgsProcessingOutputNumber(countKey, tr("Features met")));
}

void FeaturesMetAlgorithm::check(const ParameterReader &reader) const {
  routes_parameters::check(reader);
  features_parameters::check(reader, featuresKey);
  reader.number(widthKey, widthLimits);
  reader.number(reachKey, reachLimits);
  walker_parameters::read(reader, Walker().bearing_error, nullptr);
  cover_parameters::check(reader);
}

void FeaturesMetAlgorithm::prepare(const ParameterReader &reader, QgsProcessingFeedback *) {
  mTerrain = terrain_parameters::read(reader);
  mCover = cover_parameters::read(reader);
}

void FeaturesMetAlgorithm::readRest(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  mRule = {Length::metres(reader.number(widthKey, widthLimits)), Length::metres(reader.number(reachKey, reachLimits))};
  mFeatures = features_parameters::read(reader, featuresKey, features_parameters::nameField(reader), feedback);
  mWalkers = walker_parameters::read(reader, Walker().bearing_error, feedback);
  cover_parameters::readPolygons(mCover, reader, feedback);
  mLands = mCover.lands(workers(), mTerrain);
}

QgsFields FeaturesMetAlgorithm::fields() {
  using host::FieldType;
  return fieldsOf({{"route", FieldType::Text},
                   {"leg", FieldType::Integer},
                   {"walker", FieldType::Text},
                   {"direction", FieldType::Text},
                   {"feature", FieldType::Text},
                   {"layer", FieldType::Text},
                   {"event", FieldType::Text},
                   {"role", FieldType::Text},
                   {"at_m", FieldType::Real},
                   {"paces", FieldType::Integer},
                   {"at_min", FieldType::Real},
                   {"off_m", FieldType::Real}});
}

QVariant FeaturesMetAlgorithm::nameOf(const FeatureMet &met, const Shapes &shapes) const {
  if (met.shape == FeatureMet::noShape)
    return met.event == MetEvent::GroundRises   ? tr("the ground rises")
           : met.event == MetEvent::GroundFalls ? tr("the ground falls away")
                                                : tr("the ground levels out");
  const Shape &shape = shapes[met.shape];
  return shape.name.empty() ? mFeatures.layers.at(int(shape.source)) : QString::fromStdString(shape.name);
}

void FeaturesMetAlgorithm::compute(MetLeg &leg, const Shapes &shapes, const Land &land) const {
  const LegLine line(leg.from, leg.line.departure, leg.line.length);
  const LegWay way(leg.from, leg.to, leg.line, mRule.reach, land.terrain.get(), land.cover.get(), mCover.table.get());
  leg.met = allMet(shapes, line, way.profile() ? &*way.profile() : nullptr, mRule);
  for (const FeatureMet &each : leg.met)
    leg.places.push_back(line.placeAt(each.at_m));
  for (const Walker &walker : mWalkers) {
    const LegWay::Walked walked = way.walkedBy(walker);
    std::vector<MetLeg::Count> &counts = leg.by_walker.emplace_back();
    for (const FeatureMet &each : leg.met)
      counts.push_back({int(pacesCounted(walked.stepsTo(each.at_m), walker.kind)), walked.timeTo(each.at_m)});
  }
}

QVariantMap FeaturesMetAlgorithm::run(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  readRest(reader, feedback);
  RouteSource routes(reader, feedback);
  const Shapes shapes(std::move(mFeatures.shapes), FeedbackProgress(feedback));
  const FromPlaces fromPlaces(routes.crs(), reader.context().transformContext());
  std::unique_ptr<VectorOutput> output;
  long count = 0;

  const auto write = [&](const MetLeg &leg) {
    if (!output)
      output = std::make_unique<VectorOutput>(reader, outputKey, fields(), host::point, routes.crs());
    for (size_t w = 0; w < mWalkers.size(); ++w)
      for (size_t i = 0; i < leg.met.size(); ++i) {
        const FeatureMet &each = leg.met[i];
        const auto &[paces, time] = leg.by_walker[w][i];
        QgsFeature feature;
        feature.setGeometry(fromPlaces.point(leg.places[i], leg.start_x));
        feature.setAttributes(QVector<QVariant>{
            leg.route, leg.number, orNull(mWalkers[w].name), leg.direction, nameOf(each, shapes),
            each.shape == FeatureMet::noShape ? QVariant()
                                              : QVariant(mFeatures.layers.at(int(shapes[each.shape].source))),
            word(each.event), word(each.role), each.at_m, paces, time ? QVariant(time->minutes()) : QVariant(),
            std::abs(each.across_m)});
        output->add(feature);
        ++count;
      }
  };
  OrderedWork<MetLeg, MetLeg> work(
      mLands.size(),
      [&](MetLeg leg, size_t worker) {
        compute(leg, shapes, mLands[worker]);
        return leg;
      },
      write);
  routes.eachLeg([&](const LegInput &leg) {
    work.push(
        {leg.route.name, leg.number, leg.route.direction(), leg.from, leg.to, leg.line, leg.start_x, {}, {}, {}});
  });
  work.finish();
  cover_parameters::report(mLands, feedback);
  if (!output)
    output = std::make_unique<VectorOutput>(reader, outputKey, fields(), host::point, routes.crs());
  const QString written = output->finish(QStringLiteral(":/brushline/styles/features_met.qml"), feedback);
  feedback->pushInfo(tr("%n feature(s) met.", nullptr, int(count)));
  return {{outputKey, written}, {countKey, int(count)}};
}

} // namespace brushline
