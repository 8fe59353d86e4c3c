// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/dial_norths_host.h"

#include "shared/compass.h"

#include <limits>

namespace brushline {

namespace {

DialUnit unitOf(const QString &dialText) {
  if (dialText.endsWith(QLatin1String("mil")))
    return DialUnit::Mils;
  return dialText.endsWith(QLatin1String("gon")) ? DialUnit::Gon : DialUnit::Degrees;
}

// A bearing, else the true one less what its north lies east of true north.
std::optional<Angle> angle(const std::optional<double> &bearing, const SheetLeg &leg,
                           const std::optional<double> &east) {
  if (bearing)
    return Angle::degrees(*bearing);
  return leg.true_bearing && east ? std::optional(Angle::degrees(*leg.true_bearing - *east)) : std::nullopt;
}

} // namespace

DialWithBearings dialOf(const SheetLeg &leg) {
  return {leg.dial.value_or(std::numeric_limits<double>::quiet_NaN()), leg.back_dial,
          angle(leg.magnetic_bearing, leg, leg.declination), angle(leg.true_bearing, leg, std::nullopt),
          angle(leg.grid_bearing, leg, leg.convergence)};
}

std::vector<North> northsOf(const LegSheet &sheet) {
  std::vector<DialWithBearings> dials;
  std::optional<DialUnit> unit;
  for (const SheetLeg &leg : sheet.legs) {
    if (leg.dial_text.isEmpty())
      continue;
    if (unit && *unit != unitOf(leg.dial_text))
      return {};
    unit = unitOf(leg.dial_text);
    // Pieces of a leg keep to its number and to quarter turns from it, so that theirs need not be the nearest ones.
    if (!leg.in_pieces || (leg.piece->number == 1 && leg.piece->part == QLatin1String("along")))
      dials.push_back(dialOf(leg));
  }
  return unit ? possibleNorths(dials, fullCircle(*unit)) : std::vector<North>();
}

std::optional<North> northOf(const LegSheet &sheet) {
  const std::vector<North> norths = northsOf(sheet);
  return norths.size() == 1 ? std::optional(norths.front()) : std::nullopt;
}

std::optional<Angle> needleOn(const SheetLeg &leg, North north) {
  const DialWithBearings dial = dialOf(leg);
  const std::optional<Angle> own = north == North::Magnetic ? dial.magnetic
                                   : north == North::True   ? dial.true_
                                                            : dial.grid;
  return own && dial.magnetic ? std::optional((*own - *dial.magnetic).signedTurn()) : std::nullopt;
}

} // namespace brushline
