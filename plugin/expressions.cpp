// SPDX-License-Identifier: GPL-2.0-or-later
#include "expressions.h"

#include "magnetics/dial_setting.h"
#include "magnetics/field_at_points.h"
#include "magnetics/world_magnetic_model.h"
#include "shared/compass.h"
#include "shared/place_reader_host.h"
#include "shared/walker.h"
#include "walking/pacing.h"

#include <QCoreApplication>
#include <QDate>
#include <qgsabstractgeometry.h>
#include <qgscoordinatetransform.h>
#include <qgsexception.h>
#include <qgsexpression.h>
#include <qgsexpressioncontext.h>
#include <qgsexpressionfunction.h>
#include <qgsgeometry.h>
#include <qgspoint.h>
#include <qgsreferencedgeometry.h>

#include <cmath>
#include <memory>

namespace brushline {

namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::Expressions)
};

//! An argument that is of no use; the sentence says what to give.
struct BadArgument {
  QString reason;
};

// What stands for an argument left out. No NULL: the host answers NULL for any argument that is NULL, and a feature
// without a date is not to get today's.
const QString leftOut = QStringLiteral("none"), ofLayer = QStringLiteral("layer"), today = QStringLiteral("today");

// --- arguments -------------------------------------------------------------------------------------------------------

QString shown(const QVariant &value) {
  return value.canConvert<QString>() ? value.toString() : QString::fromLatin1(value.typeName());
}

double numberOf(const QVariant &value, const QString &what) {
  bool ok = false;
  const double number =
      value.type() == QVariant::String ? value.toString().trimmed().toDouble(&ok) : value.toDouble(&ok);
  if (!ok || !std::isfinite(number))
    throw BadArgument{Text::tr("%1 is “%2”: give a number, with a decimal point.").arg(what, shown(value))};
  return number;
}

double numberWithin(const QVariant &value, const QString &what, const Limits &limits) {
  const double number = numberOf(value, what);
  if (!limits.contains(number))
    throw BadArgument{
        Text::tr("%1 is %2: give a number from %3 to %4.").arg(what).arg(number).arg(limits.least).arg(limits.most)};
  return number;
}

QDate dayOf(const QVariant &value) {
  if (value.type() == QVariant::Date || value.type() == QVariant::DateTime)
    return value.toDate();
  const QString text = value.type() == QVariant::String ? value.toString().trimmed() : QString();
  if (text == today)
    return QDate::currentDate();
  const QDate day = QDate::fromString(text, Qt::ISODate);
  if (!day.isValid())
    throw BadArgument{Text::tr("The date is “%1”: give a date, or year-month-day as text, for example '2026-05-31'.")
                          .arg(shown(value))};
  return day;
}

QgsCoordinateReferenceSystem crsOf(const QVariant &value, const QgsExpressionContext *context) {
  QVariant given = value;
  if (given.toString() == ofLayer) {
    given = QVariant();
    for (const char *name : {"_layer_crs", "layer_crs", "project_crs"}) {
      const QVariant found = context ? context->variable(QString::fromLatin1(name)) : QVariant();
      if (found.isValid() && (found.canConvert<QgsCoordinateReferenceSystem>() || !found.toString().isEmpty())) {
        given = found;
        break;
      }
    }
    if (!given.isValid())
      throw BadArgument{
          Text::tr("There is no layer or project here whose coordinate reference system could be taken: give "
                   "one, for example crs:='EPSG:4326'.")};
  }
  const auto crs = given.userType() == qMetaTypeId<QgsCoordinateReferenceSystem>()
                       ? given.value<QgsCoordinateReferenceSystem>()
                       : QgsCoordinateReferenceSystem(given.type() == QVariant::String ? given.toString() : QString());
  if (!crs.isValid())
    throw BadArgument{Text::tr("“%1” is no coordinate reference system that this machine knows: give one as text, for "
                               "example 'EPSG:32621'.")
                          .arg(shown(given))};
  return crs;
}

//! A point in its own system.
struct Spot {
  double x, y, z = 0;
};

//! A geometry and the system it brings along, if any.
struct Given {
  QgsGeometry geometry;
  QgsCoordinateReferenceSystem crs;
};

// None: the value is no geometry.
std::optional<Given> geometryOf(const QVariant &value) {
  if (value.userType() == qMetaTypeId<QgsReferencedGeometry>()) {
    const auto referenced = value.value<QgsReferencedGeometry>();
    return Given{referenced, referenced.crs()};
  }
  if (value.userType() == qMetaTypeId<QgsGeometry>())
    return Given{value.value<QgsGeometry>(), {}};
  return std::nullopt;
}

// Where a geometry's compass is read: a point itself, a line's first vertex (as for a leg, at height 0 as there), else
// the centroid. None for an empty geometry.
std::optional<Spot> spotOf(const QgsGeometry &geometry) {
  if (geometry.isNull() || geometry.isEmpty())
    return std::nullopt;
  const bool line = static_cast<int>(geometry.type()) == 1;
  const bool point = static_cast<int>(geometry.type()) == 0 && geometry.constGet()->nCoordinates() == 1;
  if (line || point) {
    const QgsPoint first = *geometry.vertices_begin();
    return Spot{first.x(), first.y(), point && std::isfinite(first.z()) ? first.z() : 0}; // NaN without one
  }
  const QgsGeometry centroid = geometry.centroid();
  if (centroid.isNull())
    return std::nullopt;
  return Spot{centroid.asPoint().x(), centroid.asPoint().y()};
}

// The field at a spot on a day.
LocalField fieldAt(const Spot &spot, const QgsCoordinateReferenceSystem &crs, const QDate &day,
                   const QgsExpressionContext *context) {
  const QVariant transforms = context ? context->variable(QStringLiteral("_project_transform_context")) : QVariant();
  const auto place = ToPlaces(crs, transforms.value<QgsCoordinateTransformContext>())(spot.x, spot.y);
  if (!place)
    throw BadArgument{Text::tr("%1, %2 in %3 is no place on the Earth: give the coordinate reference system of these "
                               "coordinates, for example crs:='EPSG:4326'.")
                          .arg(spot.x, 0, 'g', 10)
                          .arg(spot.y, 0, 'g', 10)
                          .arg(crs.authid())};
  const Length height = Length::metres(spot.z);
  if (!FieldAtPoints::reaches(height))
    throw BadArgument{
        Text::tr("The point's height (Z) of %1 m is beyond -1000 to 850 000 m, where the magnetic model ends.")
            .arg(spot.z)};
  try {
    const FieldSetting field(
        coefficientModel(worldMagneticModel2025(), DecimalYear::of({day.year(), day.month(), day.day()})));
    return field.at(*place, height);
  } catch (const YearOutsideModel &error) {
    throw BadArgument{Text::tr("%1 is outside the years of the magnetic model %2 (%3 to %4): give a date within them.")
                          .arg(day.toString(Qt::ISODate), QString::fromStdString(error.model))
                          .arg(error.years.first)
                          .arg(error.years.last)};
  }
}

// --- functions -------------------------------------------------------------------------------------------------------

using Values = QVariantList;

// (geometry, crs, date), or (x, y, crs, date).
QVariant declination(const Values &values, const QgsExpressionContext *context) {
  QVariant crs = values[2], date = values[3];
  std::optional<Spot> spot;
  if (const auto given = geometryOf(values[0])) {
    if (values[1].toString() != leftOut) { // what follows a geometry is its system
      if (crs.toString() != ofLayer)
        date = crs;
      crs = values[1];
    }
    if (crs.toString() == ofLayer && given->crs.isValid())
      crs = QVariant::fromValue(given->crs);
    spot = spotOf(given->geometry);
  } else {
    if (values[1].toString() == leftOut)
      throw BadArgument{Text::tr("The place is “%1”: give a geometry, or x and y.").arg(shown(values[0]))};
    spot = Spot{numberOf(values[0], Text::tr("x")), numberOf(values[1], Text::tr("y"))};
  }
  if (!spot)
    return QVariant();
  const LocalField field = fieldAt(*spot, crsOf(crs, context), dayOf(date), context);
  return field.zone == CompassZone::Blackout ? QVariant() : QVariant(field.declination.east.degrees());
}

QVariant dial(const Values &values, const QgsExpressionContext *context) {
  const double bearing = numberOf(values[0], Text::tr("The bearing"));
  const auto given = geometryOf(values[1]);
  if (!given)
    throw BadArgument{Text::tr("The place is “%1”: give a geometry, for example $geometry.").arg(shown(values[1]))};
  const auto spot = spotOf(given->geometry);
  if (!spot)
    return QVariant();
  Compass compass;
  compass.step = numberWithin(values[3], Text::tr("The dial's graduation"),
                              {Compass::stepLimits.least, coarsestStep(compass.unit), Compass::stepLimits.usual});
  const QVariant crs =
      values[4].toString() == ofLayer && given->crs.isValid() ? QVariant::fromValue(given->crs) : values[4];
  const auto setting = dialSetting(compass, TrueBearing(Angle::degrees(bearing)), GridBearing(),
                                   fieldAt(*spot, crsOf(crs, context), dayOf(values[2]), context));
  return setting ? QVariant(*setting) : QVariant();
}

QVariant compassPointOf(const Values &values, const QgsExpressionContext *) {
  return QString::fromLatin1(compassPoint(Angle::degrees(numberOf(values[0], Text::tr("The bearing")))));
}

QVariant paces(const Values &values, const QgsExpressionContext *) {
  constexpr Limits metresLimits{0, 1e8, 100};
  Walker walker;
  const Length distance = Length::metres(numberWithin(values[0], Text::tr("The distance in metres"), metresLimits));
  walker.steps_per_100m = numberWithin(values[1], Text::tr("The number of steps over 100 m"), Walker::countLimits);
  return qlonglong(pacesCounted(stepsOver(distance, Length(), walker), PaceKind::Single));
}

//! One of the functions above, as the host knows it. Nothing in it changes: several threads may ask at once.
class Function final : public QgsExpressionFunction {
public:
  using Work = QVariant (*)(const Values &, const QgsExpressionContext *);

  Function(const QString &name, const ParameterList &parameters, const QString &help, Work work)
      : QgsExpressionFunction(name, parameters, QStringLiteral("Brushline"), help), mWork(work) {}

  // Of its own it needs neither geometry nor fields; what its arguments need the host asks them.
  bool usesGeometry(const QgsExpressionNodeFunction *) const override { return false; }
  QSet<QString> referencedColumns(const QgsExpressionNodeFunction *) const override { return {}; }

  QVariant func(const QVariantList &values, const QgsExpressionContext *context, QgsExpression *parent,
                const QgsExpressionNodeFunction *) override {
    QString reason;
    try {
      return mWork(values, context);
    } catch (const BadArgument &bad) {
      reason = bad.reason;
    } catch (const std::exception &error) {
      reason = QString::fromUtf8(error.what());
    }
    if (parent)
      parent->setEvalErrorString(QStringLiteral("%1: %2").arg(name(), reason));
    return QVariant();
  }

private:
  Work mWork;
};

QString help(const QString &call, const QString &what, const QStringList &arguments, const QStringList &examples) {
  const auto list = [](const QStringList &items) {
    return QStringLiteral("<ul><li>%1</li></ul>").arg(items.join(QStringLiteral("</li><li>")));
  };
  return QStringLiteral("<h3>%1</h3><p>%2</p><h4>%3</h4>%4<h4>%5</h4>%6")
      .arg(call, what, Text::tr("Arguments"), list(arguments), Text::tr("Examples"), list(examples));
}

QList<QgsExpressionFunction *> made() {
  using Parameter = QgsExpressionFunction::Parameter;
  const QString place = Text::tr("<b>geometry</b>: a point; of a line its first vertex is taken, of anything else the "
                                 "centroid. A point's own Z counts as its height (m).");
  const QString crs =
      Text::tr("<b>crs</b>: the system of the coordinates, for example 'EPSG:4326'; left out: the layer's, "
               "without a layer the project's. In a layout's label give it.");
  const QString date = Text::tr("<b>date</b>: a date, or year-month-day as text; left out: today. The built-in World "
                                "Magnetic Model 2025 knows the years 2025 to 2029.");
  const QString caution =
      Text::tr("NULL where no compass can be used, near the magnetic poles. Iron and electric current "
               "draw a needle off, and no model knows of them: check by the back bearing.");
  return {
      new Function(
          QStringLiteral("brushline_declination"),
          {Parameter(QStringLiteral("place")), Parameter(QStringLiteral("y"), true, leftOut),
           Parameter(QStringLiteral("crs"), true, ofLayer), Parameter(QStringLiteral("date"), true, today)},
          help(
              QStringLiteral(
                  "brushline_declination(geometry, [crs], [date])<br>brushline_declination(x, y, [crs], [date])"),
              Text::tr("The magnetic declination: the bearing of magnetic north from true north in degrees, east "
                       "positive.") +
                  QLatin1Char(' ') + caution,
              {place, Text::tr("<b>x, y</b>: coordinates instead; longitude first where they are degrees."), crs, date},
              {QStringLiteral("brushline_declination($geometry)"),
               QStringLiteral("brushline_declination($geometry, date:='2026-06-20')"),
               QStringLiteral("brushline_declination(-57, 49.5, 'EPSG:4326', \"day\")")}),
          declination),
      new Function(
          QStringLiteral("brushline_dial"),
          {Parameter(QStringLiteral("true_bearing")), Parameter(QStringLiteral("geometry")),
           Parameter(QStringLiteral("date"), true, today),
           Parameter(QStringLiteral("step"), true, Compass::stepLimits.usual),
           Parameter(QStringLiteral("crs"), true, ofLayer)},
          help(QStringLiteral("brushline_dial(true_bearing, geometry, [date], [step], [crs])"),
               Text::tr(
                   "The number to set on a compass's dial, in degrees: the bearing from magnetic north, rounded to the "
                   "dial's graduation.") +
                   QLatin1Char(' ') + caution,
               {Text::tr(
                    "<b>true_bearing</b>: degrees clockwise from true north, as the field true_brg has it. A bearing "
                    "from grid north is another."),
                place, date, Text::tr("<b>step</b>: the dial's graduation in degrees, from 0.01 to 45; left out: 2."),
                crs},
               {QStringLiteral("brushline_dial(\"true_brg\", $geometry)"),
                QStringLiteral("brushline_dial(105, $geometry, '2026-06-20', 5)")}),
          dial),
      new Function(QStringLiteral("brushline_compass_point"), {Parameter(QStringLiteral("bearing"))},
                   help(QStringLiteral("brushline_compass_point(bearing)"),
                        Text::tr("The nearest of the sixteen points of the compass, as text: N, NNE, NE … NNW."),
                        {Text::tr("<b>bearing</b>: degrees clockwise, any turn. The number of a dial in mils or gon is "
                                  "no such bearing: of a leg take the field compass_pt, or a bearing as in mag_brg.")},
                        {QStringLiteral("brushline_compass_point(100)"),
                         QStringLiteral("brushline_compass_point(\"mag_brg\")")}),
                   compassPointOf),
      new Function(
          QStringLiteral("brushline_paces"),
          {Parameter(QStringLiteral("metres")), Parameter(QStringLiteral("paces_per_100m"))},
          help(QStringLiteral("brushline_paces(metres, paces_per_100m)"),
               Text::tr("The single steps to count over a distance on level ground, as a whole number. One who counts "
                        "every second step counts half of it. Slopes and brush take more."),
               {Text::tr("<b>metres</b>: the distance."),
                Text::tr("<b>paces_per_100m</b>: single steps the walker takes over 100 m, from 20 to 1000.")},
               {QStringLiteral("brushline_paces(250, 130)"), QStringLiteral("brushline_paces(\"dist_m\", 122)")}),
          paces)};
}

QStringList registered;

} // namespace

void registerExpressions() {
  for (QgsExpressionFunction *each : made()) {
    std::unique_ptr<QgsExpressionFunction> function(each);
    if (!QgsExpression::registerFunction(each, true))
      continue; // the name is taken
    registered << each->name();
    function.release(); // the host's
  }
}

void unregisterExpressions() {
  for (const QString &name : registered)
    QgsExpression::unregisterFunction(name);
  registered.clear();
}

} // namespace brushline
