// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/geodesic_chords.h"

#include "shared/geodesic.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace brushline {

namespace {

constexpr double longestChord = 1000; // metres

std::vector<GeodesicChord> chords(const Place &from, const std::optional<Place> &to, std::optional<TrueBearing> departure,
                                  double length, const Project &project) {
  const auto placeAt = [&](double metres) {
    if (metres <= 0)
      return from;
    if (to && metres >= length)
      return *to;
    if (!departure)
      departure = geodesicBetween(from, *to).departure;
    return geodesicDestination(from, *departure, Length::metres(metres));
  };
  const auto longitudeOf = [](const Place &place) { return place.longitude.signedTurn().degrees(); };

  std::vector<GeodesicChord> result;
  std::vector<double> x, y;
  const auto add = [&](double start, double end, double x0, double y0, double x1, double y1) {
    result.push_back({start, end, 0, 0, 0, 0});
    x.insert(x.end(), {x0, x1});
    y.insert(y.end(), {y0, y1});
  };
  const size_t count = size_t(std::max(1.0, std::ceil(length / longestChord)));
  Place before = from;
  double start = 0;
  for (size_t i = 1; i <= count; ++i) {
    const double end = i == count ? length : length * double(i) / double(count);
    const Place here = placeAt(end);
    const double x0 = longitudeOf(before), x1 = longitudeOf(here);
    const double y0 = before.latitude.degrees(), y1 = here.latitude.degrees();
    // Close to a pole a chord may also turn by more than half a circle; it is then cut in vain and to no harm.
    if (std::abs(x1 - x0) > 180) {
      double low = start, high = end; // where the sign of the longitude changes
      for (int step = 0; step < 60 && high - low > 1e-6; ++step) {
        const double middle = (low + high) / 2;
        (std::signbit(longitudeOf(placeAt(middle))) == std::signbit(x0) ? low : high) = middle;
      }
      const double y = placeAt(low).latitude.degrees();
      add(start, low, x0, y0, std::copysign(180, x0), y);
      add(low, end, std::copysign(180, x1), y, x1, y1);
    } else {
      add(start, end, x0, y0, x1, y1);
    }
    before = here;
    start = end;
  }
  project(x, y);
  for (size_t i = 0; i < result.size(); ++i) {
    result[i].x0 = x[2 * i];
    result[i].y0 = y[2 * i];
    result[i].x1 = x[2 * i + 1];
    result[i].y1 = y[2 * i + 1];
  }
  return result;
}

} // namespace

std::vector<GeodesicChord> chordsAlong(const Place &from, const Place &to, Length length, const Project &project) {
  return chords(from, to, std::nullopt, length.metres(), project);
}

std::vector<GeodesicChord> chordsAlong(const Place &from, TrueBearing departure, Length length,
                                       const Project &project) {
  return chords(from, std::nullopt, departure, length.metres(), project);
}

} // namespace brushline
