// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/compass_parameters.h"

#include <qgsexception.h>

namespace brushline::compass_parameters {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::CompassParameters)
};
const QString north = QStringLiteral("NORTH"), unit = QStringLiteral("DIAL_UNIT"), step = QStringLiteral("DIAL_STEP"),
              error = QStringLiteral("BEARING_ERROR");
} // namespace

Definitions definitions() {
  const QStringList norths = {Text::tr("Magnetic north"), Text::tr("True north (compass set off for declination)"),
                              Text::tr("Grid north")};
  const QStringList units = {Text::tr("Degrees (360)"), Text::tr("Mils (6400)"), Text::tr("Gon (400)")};
  return {
      helped(new QgsProcessingParameterEnum(north, Text::tr("North the dial is set for"), norths, false, 0),
             Text::tr("The north that the numbers for the dial are counted from. Magnetic for a plain compass; true for "
                      "one whose needle house has been set off for declination; grid for working with map grid "
                      "bearings only.")),
      helped(new QgsProcessingParameterEnum(unit, Text::tr("Unit of the dial"), units, false, 0),
             Text::tr("What the dial of the compass is divided in.")),
      helped(numberDefinition(step, Text::tr("Graduation of the dial, in its unit"), Compass::stepLimits),
             Text::tr("Numbers for the dial are rounded to a multiple of this, since nobody can set it finer.")),
      advanced(helped(
          numberDefinition(error, Text::tr("Error of one sighting (degrees, 1 sigma)"), Compass::errorLimits),
          Text::tr("How far a single sighting strays, as a standard deviation in degrees. 3 is usual for a baseplate "
                   "compass in a grown hand, 5 or more for children.")))};
}

Compass read(const ParameterReader &reader) {
  Compass compass;
  compass.north = static_cast<North>(reader.choice(north, 3));
  compass.unit = static_cast<DialUnit>(reader.choice(unit, 3));
  compass.step = reader.number(step, Compass::stepLimits);
  const double coarsest = coarsestStep(compass.unit);
  if (compass.step > coarsest)
    throw QgsProcessingException(Text::tr("%1 (%2) is %3, an eighth of the circle is %4: give the graduation printed "
                                          "on the dial, in the dial's unit.")
                                     .arg(step, reader.definition(step)->description(), plain(compass.step),
                                          plain(coarsest)));
  compass.bearing_error = Angle::degrees(reader.number(error, Compass::errorLimits));
  return compass;
}

} // namespace brushline::compass_parameters
