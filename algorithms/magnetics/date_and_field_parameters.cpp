// SPDX-License-Identifier: GPL-2.0-or-later
#include "magnetics/date_and_field_parameters.h"

#include "magnetics/world_magnetic_model.h"

#include <qgsexception.h>

#include <algorithm>

namespace brushline::date_and_field_parameters {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::DateAndFieldParameters)
};
const QString dateKey = QStringLiteral("DATE"), declinationKey = QStringLiteral("DECLINATION"),
              modelKey = QStringLiteral("FIELD_MODEL");
constexpr Limits declinationLimits{-180, 180, 0};

std::unique_ptr<FieldModel> modelFor(const QString &name, DecimalYear year, bool declinationGiven, bool &ofDay) {
  const auto on = [&](DecimalYear day) {
    return name.isEmpty() ? coefficientModel(worldMagneticModel2025(), day) : installedModel(name.toStdString(), day);
  };
  try {
    return on(year);
  } catch (const YearOutsideModel &error) {
    if (!declinationGiven)
      throw;
    // With a declination off a map the model only tells where compasses fail; the nearest day it knows is good enough.
    ofDay = false;
    return on(DecimalYear(std::clamp(year.value(), error.years.first, error.years.last)));
  }
}
} // namespace

Definitions definitions() {
  auto declination = new QgsProcessingParameterNumber(declinationKey,
                                                      Text::tr("Declination read off a map (degrees, east positive)"),
                                                      host::doubleNumber, QVariant(), true, declinationLimits.least,
                                                      declinationLimits.most);
  return {
      helped(new QgsProcessingParameterDateTime(dateKey, Text::tr("Day of the walk (today when empty)"),
                                                host::dateOnly, QVariant(), true),
             Text::tr("Magnetic north moves; the bearings are good for this day. Year-month-day. The built-in World "
                      "Magnetic Model 2025 knows the years 2025 to 2029.")),
      advanced(helped(declination,
                      Text::tr("The bearing of magnetic north from true north: east positive, west negative. Replaces "
                               "the model's value everywhere. Its error is not known, so none is given."))),
      advanced(helped(new QgsProcessingParameterString(modelKey, Text::tr("Magnetic model installed for GeographicLib"),
                                                       QVariant(), false, true),
                      Text::tr("Name of a magnetic model in GeographicLib's folder on this machine, for example igrf14, "
                               "for years or places where the built-in one does not serve. Empty: the built-in World "
                               "Magnetic Model 2025.")))};
}

DateAndField read(const ParameterReader &reader) {
  DateAndField result;
  result.date = reader.maybeDate(dateKey);
  if (!result.date.isValid())
    result.date = QDate::currentDate();
  const DecimalYear year = DecimalYear::of({result.date.year(), result.date.month(), result.date.day()});

  std::optional<Declination> given;
  if (const auto degrees = reader.maybeNumber(declinationKey, declinationLimits))
    given = Declination{Angle::degrees(*degrees)};
  try {
    result.field = std::make_shared<FieldSetting>(
        modelFor(reader.text(modelKey), year, given.has_value(), result.model_of_day), given);
  } catch (const YearOutsideModel &error) {
    throw QgsProcessingException(
        Text::tr("%1: %2 is outside the years of the magnetic model %3 (%4 to %5). Give %6, the declination "
                 "printed on a map of those years, or %7, the name of an installed model that reaches that day.")
            .arg(dateKey, result.date.toString(Qt::ISODate), QString::fromStdString(error.model),
                 plain(error.years.first), plain(error.years.last), declinationKey, modelKey));
  } catch (const NoSuchModel &error) {
    throw QgsProcessingException(
        Text::tr("%1: no magnetic model “%2” can be read on this machine (%3). Install it for GeographicLib, or leave "
                 "%1 empty for the built-in World Magnetic Model 2025.")
            .arg(modelKey, QString::fromStdString(error.model), QString::fromUtf8(error.what())));
  }
  return result;
}

} // namespace brushline::date_and_field_parameters
