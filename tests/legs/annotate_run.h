// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "magnetics/field_setting.h"
#include "magnetics/world_magnetic_model.h"
#include "quantities/decimal_year.h"
#include "shared/geodesic.h"
#include "support/host_fixture.h"
#include "support/near.h"

#include <vector>

namespace brushline::test {

constexpr CalendarDate walkDay{2026, 6, 15};

//! Runs annotatelegs: into memory and for the day above, unless the parameters say otherwise.
inline Outcome annotate(QVariantMap parameters, const Surroundings &surroundings = {}) {
  if (!parameters.contains("OUTPUT"))
    parameters["OUTPUT"] = "TEMPORARY_OUTPUT";
  if (!parameters.contains("DATE"))
    parameters["DATE"] = QDate(walkDay.year, walkDay.month, walkDay.day);
  return run("brushline:annotatelegs", parameters, surroundings);
}

inline Place place(double latitude, double longitude) { return {Angle::degrees(latitude), Angle::degrees(longitude)}; }

//! The place reached by a bearing (degrees) and a distance (metres).
inline Place onwards(const Place &from, double bearing, double metres) {
  return geodesicDestination(from, TrueBearing(Angle::degrees(bearing)), Length::metres(metres));
}

//! "x y" in degrees, longitude first, for a text of geometry.
inline QString xy(const Place &place) {
  return QStringLiteral("%1 %2").arg(place.longitude.degrees(), 0, 'g', 17).arg(place.latitude.degrees(), 0, 'g', 17);
}

inline QString lineText(const std::vector<Place> &places) {
  QStringList points;
  for (const Place &place : places)
    points << xy(place);
  return QStringLiteral("LINESTRING(%1)").arg(points.join(QLatin1String(", ")));
}

//! A layer of lines without fields.
inline Layer routesOf(const QString &crs, const QStringList &texts, const QString &type = "LineString") {
  std::vector<Row> rows;
  for (const QString &text : texts)
    rows.push_back({wkt(text), {}});
  return layer("routes", type, crs, {}, rows);
}

inline FieldSetting walkField() {
  return FieldSetting(coefficientModel(worldMagneticModel2025(), DecimalYear::of(walkDay)));
}

} // namespace brushline::test

//! Stops the test when the algorithm did not run.
#define VERIFY_RAN(outcome) QVERIFY2((outcome).ok, qPrintable((outcome).said()))
