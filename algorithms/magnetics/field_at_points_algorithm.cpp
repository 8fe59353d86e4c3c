// SPDX-License-Identifier: GPL-2.0-or-later
#include "magnetics/field_at_points_algorithm.h"

#include "magnetics/field_at_points.h"
#include "shared/grid_parameters.h"
#include "shared/vector_output_host.h"

#include <qgsprocessingutils.h>

namespace brushline {

namespace {
using host::FieldType;
const QString inputKey = QStringLiteral("INPUT"), outputKey = QStringLiteral("OUTPUT");

QgsFields ownFields() {
  return fieldsOf({{"decl", FieldType::Real},
                   {"decl_err", FieldType::Real},
                   {"incl", FieldType::Real},
                   {"h_nt", FieldType::Real},
                   {"f_nt", FieldType::Real},
                   {"decl_year", FieldType::Real},
                   {"converg", FieldType::Real},
                   {"grid_mag", FieldType::Real},
                   {"zone", FieldType::Text}});
}

QVariant degreesOrNull(const std::optional<Angle> &angle) { return angle ? QVariant(angle->degrees()) : QVariant(); }

QVector<QVariant> valuesOf(const PointField &field) {
  return {field.declination.east.degrees(),
          degreesOrNull(field.declination_error),
          degreesOrNull(field.inclination),
          orNull(field.horizontal_nt),
          orNull(field.total_nt),
          degreesOrNull(field.declination_change),
          field.convergence ? QVariant(field.convergence->east.degrees()) : QVariant(),
          degreesOrNull(field.grid_magnetic),
          QString::fromLatin1(zoneWord(field.zone))};
}
} // namespace

QString FieldAtPointsAlgorithm::name() const { return QStringLiteral("fieldatpoints"); }
QString FieldAtPointsAlgorithm::displayName() const { return tr("Magnetic field at points"); }
QString FieldAtPointsAlgorithm::group() const { return tr("Magnetics"); }
QString FieldAtPointsAlgorithm::groupId() const { return QStringLiteral("magnetics"); }
QStringList FieldAtPointsAlgorithm::tags() const {
  return tr("magnetic,declination,variation,inclination,dip,convergence,grid magnetic angle,compass,north,field,"
            "geomagnetic")
      .split(QLatin1Char(','));
}
QString FieldAtPointsAlgorithm::shortDescription() const {
  return tr("Gives each point the declination of its day and how it changes, the dip and strength of the field, the "
            "convergence of the grid and the angle between grid and magnetic north.");
}
QgsProcessingAlgorithm *FieldAtPointsAlgorithm::createInstance() const { return new FieldAtPointsAlgorithm(); }

void FieldAtPointsAlgorithm::initAlgorithm(const QVariantMap &) {
  addParameter(
      helped(new QgsProcessingParameterFeatureSource(inputKey, tr("Points"), QList<int>() << host::pointLayers),
             tr("A point's own height (Z, in metres above the sea) is allowed for; without one it is taken to "
                "lie at 0. A multipoint gives a row for each of its points.")));
  addParameters(date_and_field_parameters::definitions());
  addParameters(grid_parameters::definitions(
      {tr("Grid of the map (for the convergence)"),
       tr("The projected system whose grid lines are printed on the map. Empty: the points' own when it is projected, "
          "else each point's UTM zone.")}));
  addParameters(KeptStyles::definitions());
  addParameter(new QgsProcessingParameterFeatureSink(outputKey, tr("Magnetic field at points"), host::pointOutput));
}

void FieldAtPointsAlgorithm::check(const ParameterReader &reader) const {
  PointSource points(reader, inputKey);
  date_and_field_parameters::read(reader);
  grid_parameters::read(reader);
}

void FieldAtPointsAlgorithm::prepare(const ParameterReader &reader, QgsProcessingFeedback *) {
  mDateAndField = date_and_field_parameters::read(reader);
  mPoints = std::make_unique<PointSource>(reader, inputKey);
  QgsCoordinateReferenceSystem grid = grid_parameters::read(reader);
  if (!grid.isValid() && !mPoints->crs().isGeographic()) {
    grid = mPoints->crs();
    grid_parameters::check(grid);
  }
  mGrid = grid.isValid() ? grid_parameters::definitionOf(grid) : std::string();
}

QVariantMap FieldAtPointsAlgorithm::run(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  const QgsFields fields = QgsProcessingUtils::combineFields(mPoints->fields(), ownFields());
  QStringList renamed;
  for (int i = 0, first = mPoints->fields().size(); i < ownFields().size(); ++i)
    if (fields.at(first + i).name() != ownFields().at(i).name())
      renamed << tr("%1 as %2").arg(ownFields().at(i).name(), fields.at(first + i).name());
  if (!renamed.isEmpty())
    feedback->pushWarning(tr("%1: layer “%2” has fields of these names already, so the new ones are written under "
                             "others: %3.")
                              .arg(inputKey, mPoints->name(), renamed.join(QLatin1String(", "))));

  VectorOutput output(reader, outputKey, fields, mPoints->type(), mPoints->crs(),
                      mPoints->splits() ? QgsFeatureSink::RegeneratePrimaryKey : QgsFeatureSink::SinkFlags());
  FieldAtPoints model(*mDateAndField.field, mGrid,
                      mDateAndField.model_of_day ? FieldAtPoints::ModelDay::Asked : FieldAtPoints::ModelDay::Nearest);
  Counts counts;
  grid_parameters::GridWatch grid(grid_parameters::read(reader), feedback);
  PointInput point;
  while (mPoints->next(point, feedback)) {
    const Length height = point.height.value_or(Length());
    QVector<QVariant> values(ownFields().size());
    if (!point.place) {
      ++counts.no_place;
    } else if (!FieldAtPoints::reaches(height)) {
      ++counts.bad_height;
    } else {
      grid.see(*point.place, [&] { return tr("row %1 of layer “%2”").arg(counts.rows + 1).arg(mPoints->name()); });
      const PointField field = model.at(*point.place, height);
      values = valuesOf(field);
      counts.no_height += !point.height;
      counts.no_grid += !field.convergence;
      counts.no_error += !field.declination_error;
      counts.caution += field.zone == CompassZone::Caution;
      counts.blackout += field.zone == CompassZone::Blackout;
    }
    QVector<QVariant> attributes = point.feature.attributes();
    attributes.resize(mPoints->fields().size());
    point.feature.setFields(fields, false);
    point.feature.setAttributes(attributes + values);
    output.add(point.feature);
    if (++counts.rows % 256 == 0)
      feedback->setProgress(100 * mPoints->fraction());
  }
  report(counts, feedback);
  return {{outputKey, output.finish(QStringLiteral(":/brushline/styles/field_at_points.qml"), feedback)}};
}

void FieldAtPointsAlgorithm::report(const Counts &counts, QgsProcessingFeedback *feedback) const {
  const long done = counts.rows - counts.no_place - counts.bad_height;
  const auto &model = mDateAndField.field->model();
  feedback->pushInfo(tr("%n row(s); model %1, day %2.", nullptr, int(counts.rows))
                         .arg(QString::fromStdString(model.name()), mDateAndField.date.toString(Qt::ISODate)));
  const auto warn = [&](long count, const QString &message) {
    if (count > 0)
      feedback->pushWarning(message);
  };
  warn(counts.rows == 0, tr("%1: layer “%2” has no features.").arg(inputKey, mPoints->name()));
  warn(counts.no_place,
       tr("%1: %n row(s) of layer “%2” without a usable place; their new fields are empty. They have no geometry, or "
          "coordinates that are no place on the Earth: is the layer's coordinate reference system the right one?",
          nullptr, int(counts.no_place))
           .arg(inputKey, mPoints->name()));
  warn(
      counts.bad_height,
      tr("%1: %n row(s) of layer “%2” with a height outside -1000 to 850 000 m, where the models end; their new fields "
         "are empty. Is their Z in metres?",
         nullptr, int(counts.bad_height))
          .arg(inputKey, mPoints->name()));
  if (counts.no_height > 0)
    feedback->pushInfo(
        tr("%n point(s) without a height of their own are taken to lie at 0 m.", nullptr, int(counts.no_height)));
  warn(counts.no_grid,
       tr("%1: %n point(s) lie where this grid does not reach; converg and grid_mag are empty. Give another grid.",
          nullptr, int(counts.no_grid))
           .arg(grid_parameters::key()));
  if (done > 0 && !mDateAndField.model_of_day)
    feedback->pushWarning(
        tr("%1 is outside the years of the model %2: decl is the declination given, zone is judged by "
           "the nearest day of the model, and incl, h_nt, f_nt and decl_year are empty.")
            .arg(mDateAndField.date.toString(Qt::ISODate), QString::fromStdString(model.name())));
  if (counts.no_error > 0)
    feedback->pushInfo(mDateAndField.field->given()
                           ? tr("decl_err is empty: the error of a declination read off a map is not known.")
                           : tr("decl_err is empty: no error of this model is known."));
  warn(counts.caution,
       tr("%n point(s) where the field along the ground is under 6000 nT (zone “caution”): the needle is "
          "slow and easily drawn off.",
          nullptr, int(counts.caution)));
  warn(counts.blackout,
       tr("%n point(s) where the field along the ground is under 2000 nT (zone “blackout”): no compass "
          "can be used there, whatever decl and grid_mag say.",
          nullptr, int(counts.blackout)));
}

} // namespace brushline
