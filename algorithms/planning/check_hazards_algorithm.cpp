// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/check_hazards_algorithm.h"

#include "planning/hazards.h"
#include "shared/ordered_work.h"
#include "shared/place_reader_host.h"
#include "shared/routes_parameters.h"
#include "shared/terrain_parameters.h"

#include <qgsexception.h>
#include <qgsgeometry.h>

#include <algorithm>

namespace brushline {

namespace {
const QString outputKey = QStringLiteral("OUTPUT"), countKey = QStringLiteral("HAZARD_COUNT");

QString whole(double metres) { return QString::number(std::lround(metres)); }
} // namespace

QString CheckHazardsAlgorithm::name() const { return QStringLiteral("checkhazards"); }
QString CheckHazardsAlgorithm::displayName() const { return tr("Check legs for hazards"); }
QString CheckHazardsAlgorithm::group() const { return tr("Planning"); }
QString CheckHazardsAlgorithm::groupId() const { return QStringLiteral("planning"); }
QStringList CheckHazardsAlgorithm::tags() const {
  return tr("hazard,danger,power line,iron,fence,cliff,water,slope,steep,compass,leg,route").split(QLatin1Char(','));
}
QString CheckHazardsAlgorithm::shortDescription() const {
  return tr(
      "Finds the stretches of legs where iron or current draws the needle off, where the ground is too steep, and "
      "which come close to cliffs, water and other hazards.");
}
QgsProcessingAlgorithm *CheckHazardsAlgorithm::createInstance() const { return new CheckHazardsAlgorithm(); }

void CheckHazardsAlgorithm::initAlgorithm(const QVariantMap &) {
  addParameters(routes_parameters::definitions());
  addParameters(hazard_parameters::definitions());
  addParameters(terrain_parameters::definitions());
  addParameters(date_and_field_parameters::definitions());
  addParameters(routes_parameters::gridDefinitions());
  addParameters(KeptStyles::definitions());
  addParameters({new QgsProcessingParameterFeatureSink(outputKey, tr("Stretches to take care on"), host::lineOutput)});
  addOutput(new QgsProcessingOutputNumber(countKey, tr("Hazards found")));
}

void CheckHazardsAlgorithm::check(const ParameterReader &reader) const {
  routes_parameters::check(reader);
  hazard_parameters::check(reader);
  date_and_field_parameters::read(reader);
}

void CheckHazardsAlgorithm::prepare(const ParameterReader &reader, QgsProcessingFeedback *) {
  mDateAndField = date_and_field_parameters::read(reader);
  const auto terrain = terrain_parameters::read(reader);
  for (size_t i = 0; i < workers(); ++i)
    mTerrains.push_back(terrain_parameters::terrainOver(terrain));
}

QgsFields CheckHazardsAlgorithm::fields() {
  using host::FieldType;
  return fieldsOf({{"route", FieldType::Text},
                   {"leg", FieldType::Integer},
                   {"direction", FieldType::Text},
                   {"hazard", FieldType::Text},
                   {"layer", FieldType::Text},
                   {"from_m", FieldType::Real},
                   {"to_m", FieldType::Real},
                   {"limit", FieldType::Real},
                   {"advice", FieldType::Text}});
}

void CheckHazardsAlgorithm::addSlopes(CheckedLeg &leg, const LegLine &line, Terrain &terrain) const {
  const Length step = terrain.profile(leg.from, leg.to, Length::metres(line.length_m())).step;
  const SteepGround ground = steepGround(terrain, line, step, mSetting.slope_limit);
  leg.without_heights = ground.without_data_m;
  for (const LegStretch &stretch : ground.stretches)
    leg.found.push_back(
        {QStringLiteral("slope"), QString(), stretch.from_m, stretch.to_m, mSetting.slope_limit.degrees(),
         tr("From %1 to %2 m the ground is steeper than %3°: go round, or let a qualified leader decide on the "
            "spot.")
             .arg(whole(stretch.from_m), whole(stretch.to_m), plain(mSetting.slope_limit.degrees()))});
}

void CheckHazardsAlgorithm::addZones(CheckedLeg &leg) const {
  const CompassZone zone =
      std::max(mDateAndField.field->at(leg.from, Length()).zone, mDateAndField.field->at(leg.to, Length()).zone);
  const double length = leg.line.length.metres();
  if (zone == CompassZone::Blackout)
    leg.found.push_back({QStringLiteral("blackout zone"), QString(), 0, length, QVariant(),
                         tr("No compass works here, near the magnetic pole: find your way by other means.")});
  else if (zone == CompassZone::Caution)
    leg.found.push_back({QStringLiteral("caution zone"), QString(), 0, length, QVariant(),
                         tr("The needle is weak here, near the magnetic pole: do not rely on it alone.")});
}

void CheckHazardsAlgorithm::find(CheckedLeg &leg, const Shapes &disturbances, const Shapes &hazards,
                                 Terrain *terrain) const {
  const LegLine line(leg.from, leg.line.departure, leg.line.length);
  std::vector<Found> &all = leg.found;
  const auto separation = [&](size_t i) { return mSetting.separation.distance(disturbances[i].name); };
  for (const NearShape &near : shapesNear(disturbances, line, separation, mSetting.separation.most()))
    for (const LegStretch &stretch : near.stretches) {
      const Shape &shape = disturbances[near.shape];
      const QString kind = QString::fromStdString(shape.name);
      const double limit = separation(near.shape)->metres();
      all.push_back(
          {kind, mSetting.disturbances.layers.value(int(shape.source)), stretch.from_m, stretch.to_m, limit,
           tr("Do not trust the needle from %1 to %2 m, within %3 m of: %4. Sight a mark beyond before you get "
              "there, and read the compass again behind it.")
               .arg(whole(stretch.from_m), whole(stretch.to_m), plain(limit), kind)});
    }
  const auto margin = [&](size_t) { return std::optional(mSetting.margin); };
  for (const NearShape &near : shapesNear(hazards, line, margin, mSetting.margin))
    for (const LegStretch &stretch : near.stretches) {
      const Shape &shape = hazards[near.shape];
      const QString layer = mSetting.hazards.layers.value(int(shape.source));
      const QString name = shape.name.empty() ? layer : QString::fromStdString(shape.name);
      all.push_back({name, layer, stretch.from_m, stretch.to_m, mSetting.margin.metres(),
                     tr("From %1 to %2 m the leg is within %3 m of: %4. Stop short of it, look, and go round.")
                         .arg(whole(stretch.from_m), whole(stretch.to_m), plain(mSetting.margin.metres()), name)});
    }
  if (terrain)
    addSlopes(leg, line, *terrain);
  addZones(leg);
  std::stable_sort(all.begin(), all.end(), [](const Found &a, const Found &b) { return a.from_m < b.from_m; });
  for (const Found &each : all)
    leg.ends.push_back({line.placeAt(each.from_m), line.placeAt(each.to_m)});
}

QVariantMap CheckHazardsAlgorithm::run(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  mSetting = hazard_parameters::read(reader, feedback);
  RouteSource routes(reader, feedback);
  const FeedbackProgress progress(feedback);
  const Shapes disturbances(std::move(mSetting.disturbances.shapes), progress);
  const Shapes hazards(std::move(mSetting.hazards.shapes), progress);
  const FromPlaces fromPlaces(routes.crs(), reader.context().transformContext());
  VectorOutput output(reader, outputKey, fields(), host::lineString, routes.crs());
  long count = 0;
  double withoutHeights = 0;
  const auto compute = [&](CheckedLeg leg, size_t worker) {
    find(leg, disturbances, hazards, mTerrains[worker].get());
    return leg;
  };
  const auto write = [&](const CheckedLeg &leg) {
    withoutHeights += leg.without_heights;
    for (size_t i = 0; i < leg.found.size(); ++i) {
      const Found &each = leg.found[i];
      QgsFeature feature;
      feature.setGeometry(fromPlaces.line(leg.ends[i], leg.start_x));
      feature.setAttributes(QVector<QVariant>{leg.route, leg.number, leg.direction, each.hazard,
                                              each.layer.isEmpty() ? QVariant() : QVariant(each.layer), each.from_m,
                                              each.to_m, each.limit, each.advice});
      output.add(feature);
      ++count;
    }
  };
  OrderedWork<CheckedLeg, CheckedLeg> work(mTerrains.size(), compute, write);
  routes.eachLeg([&](const LegInput &leg) {
    work.push({leg.route.name, leg.number, leg.route.direction(), leg.from, leg.to, leg.line, leg.start_x, {}, {}});
  });
  work.finish();
  if (withoutHeights > 0)
    feedback->pushWarning(
        tr("On %1 m of the legs there are no heights: the slope there is not known.").arg(whole(withoutHeights)));
  QVariantMap results;
  results.insert(outputKey, output.finish(QStringLiteral(":/brushline/styles/hazards.qml"), feedback));
  results.insert(countKey, int(count));
  feedback->pushInfo(count == 0 ? tr("No hazard was found. That does not mean that there is none: the layers know only "
                                     "what somebody drew.")
                                : tr("%n stretch(es) to take care on.", nullptr, int(count)));
  return results;
}

} // namespace brushline
