// SPDX-License-Identifier: GPL-2.0-or-later
// Lines that follow magnetic north over a rectangle of a grid.
#include "fuzz_land.h"

#include "magnetics/north_lines.h"
#include "shared/local_plane.h"

#include <stdexcept>

using namespace brushline;

FUZZ(input) {
  fuzz::Land land(input, 1000);
  const double factor = input.scaled(1, 1e6);
  NorthLinesArea area;
  if (input.flag()) { // in degrees, with each place where it is
    const double x = land.origin.longitude.signedTurn().degrees(), y = land.origin.latitude.degrees();
    const double half = std::min(factor / 1e5, 5.0);
    area = {x - half * input.between(0, 1), y - half * input.between(0, 1), x + half * input.between(0, 1),
            y + half * input.between(0, 1), fuzz::Land::inDegrees(),        fuzz::Land::inDegrees()};
    area.to_places = [](std::vector<double> &, std::vector<double> &latitudes) {
      for (double &latitude : latitudes)
        if (std::abs(latitude) > 90)
          latitude = std::numeric_limits<double>::quiet_NaN();
    };
  } else { // metres round a place
    const LocalPlane plane(land.origin);
    area = {-factor * input.between(0, 1),
            -factor * input.between(0, 1),
            factor * input.between(0, 1),
            factor * input.between(0, 1),
            [plane](std::vector<double> &x, std::vector<double> &y) {
              for (size_t i = 0; i < x.size(); ++i) {
                const PlanePoint point = plane.toPlane({Angle::degrees(y[i]), Angle::degrees(x[i])});
                x[i] = point.east;
                y[i] = point.north;
              }
            },
            [plane](std::vector<double> &x, std::vector<double> &y) {
              for (size_t i = 0; i < x.size(); ++i) {
                const Place place = plane.toPlace({x[i], y[i]});
                x[i] = place.longitude.degrees();
                y[i] = place.latitude.degrees();
              }
            }};
  }
  if (input.upTo(15) == 0)
    area.left = input.any();
  const Length spacing = Length::metres(input.upTo(15) == 0 ? input.any() : factor * input.scaled(0.05, 10));
  int last = 0;
  try {
    const NorthLinesReport report =
        northLines(fuzz::field(input), area, spacing, fuzz::Patience(20), [&](const NorthLine &line) {
          PROMISED(line.number >= last && line.points.size() >= 2 && line.done >= 0 && line.done <= 1);
          PROMISED(std::isfinite(line.declination.east.degrees()) && line.zone != CompassZone::Blackout);
          for (const ProjectedPoint &point : line.points)
            PROMISED(std::isfinite(point.x) && std::isfinite(point.y));
          last = line.number;
        });
    PROMISED(report.lines >= last && report.lines <= mostNorthLines);
    PROMISED(report.lines > 0 || report.blackout || report.edge);
  } catch (const std::invalid_argument &) {
  } catch (const TooManyLines &) {
  } catch (const AreaOutOfReach &) {
  } catch (const Cancelled &) {
  }
}
