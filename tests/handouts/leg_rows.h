// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "legs/leg_layer_host.h"
#include "support/host_fixture.h"

#include <QVariantMap>

#include <vector>

namespace brushline::test {

//! A row of annotated legs to be made: a leg that runs 100 m to the east, the n-th leg n * 100 m on, in UTM zone 21.
struct LegRow {
  QVariantMap values;
  QString line; //!< instead of that; "none": no geometry
};

//! Usual values, and others in their place. Give at least the leg's number.
inline LegRow legRow(const QVariantMap &others, const QString &line = QString()) {
  QVariantMap values{{"route", "Loop"},
                     {"leg", 1},
                     {"walker", "Ann"},
                     {"direction", "out"},
                     {"true_brg", 88.625},
                     {"grid_brg", 90.0},
                     {"mag_brg", 105.75},
                     {"converg", -1.375},
                     {"decl", -17.125},
                     {"decl_err", 0.38},
                     {"date", QDate(2026, 11, 25)},
                     {"dial", 106.0},
                     {"dial_text", "106°"},
                     {"back_dial", 286.0},
                     {"compass_pt", "ESE"},
                     {"dist_m", 100.04},
                     {"paces", 130},
                     {"walk_min", 2.5},
                     {"marks", 2},
                     {"drift_m", 3.7},
                     {"along_m", 5.2}};
  for (auto other = others.begin(); other != others.end(); ++other)
    values[other.key()] = other.value();
  return {values, line};
}

inline QString legLine(int number) {
  return QStringLiteral("LINESTRING(%1 5400000, %2 5400000)").arg(500000 + 100LL * number).arg(500100 + 100LL * number);
}

//! A layer of them with the fields of annotated legs, but for those left out, and more.
inline Layer legLayer(const std::vector<LegRow> &rows, const QStringList &without = {},
                      const QList<QgsField> &more = {}) {
  QList<QgsField> fields;
  for (const QgsField &field : LegLayer::fields())
    if (!without.contains(field.name()))
      fields << field;
  fields << more;
  std::vector<Row> made;
  for (const LegRow &row : rows) {
    QVariantList values;
    for (const QgsField &field : fields)
      values << row.values.value(field.name());
    const QString line = row.line.isEmpty() ? legLine(row.values.value("leg").toInt()) : row.line;
    made.push_back({wkt(line == "none" ? QString() : line), values});
  }
  return layer("legs", "LineString", "EPSG:32621", fields, made);
}

//! Two legs, the first of which goes round a tarn as detourlegs writes it: 40 m on, 20 m out to the right, 30 m past,
//! 20 m back, 30 m on. 130 paces to 100 m.
inline std::vector<LegRow> rowsWithDetour(const QVariantMap &others = {}) {
  struct Piece {
    int leg, piece, paces, run_paces;
    double dist_m, count_m, dial;
    const char *part, *turn, *line;
  };
  std::vector<LegRow> rows;
  for (const Piece &one : {Piece{1, 1, 52, 52, 40, 40, 106, "along", "", "500100 5400000,500140 5400000"},
                           Piece{1, 2, 26, 52, 20, 40, 196, "out", "right", "500140 5400000,500140 5399980"},
                           Piece{1, 3, 39, 91, 30, 70, 106, "past", "left", "500140 5399980,500170 5399980"},
                           Piece{1, 4, 26, 91, 20, 70, 16, "back", "left", "500170 5399980,500170 5400000"},
                           Piece{1, 5, 39, 130, 30, 100, 106, "along", "right", "500170 5400000,500200 5400000"},
                           Piece{2, 1, 130, 130, 100, 100, 106, "along", "", "500200 5400000,500300 5400000"}}) {
    const bool aside = QLatin1String(one.part) != QLatin1String("along");
    QVariantMap values{{"leg", one.leg},
                       {"piece", one.piece},
                       {"paces", one.paces},
                       {"run_paces", one.run_paces},
                       {"dist_m", one.dist_m},
                       {"count_m", one.count_m},
                       {"dial", one.dial},
                       {"dial_text", QStringLiteral("%1°").arg(int(one.dial), 3, 10, QLatin1Char('0'))},
                       {"part", one.part},
                       {"turn", *one.turn ? QVariant(one.turn) : QVariant()},
                       {"side", aside ? QVariant("right") : QVariant()},
                       {"obstacle", aside ? QVariant("Tarn") : QVariant()},
                       {"blocked_m", 0.0}};
    for (auto other = others.begin(); other != others.end(); ++other)
      values[other.key()] = other.value();
    rows.push_back(legRow(values, QStringLiteral("LINESTRING(%1)").arg(QLatin1String(one.line))));
  }
  return rows;
}

inline Layer layerWithDetour(const std::vector<LegRow> &rows) {
  return legLayer(rows, {},
                  {field("part", FieldType::Text), field("piece", FieldType::Integer), field("turn", FieldType::Text),
                   field("side", FieldType::Text), field("obstacle", FieldType::Text),
                   field("count_m", FieldType::Real), field("run_paces", FieldType::Integer),
                   field("blocked_m", FieldType::Real)});
}

//! A row of marks to be made, on a leg as above.
struct MarkRow {
  int leg, mark;
  double at_m; // along the leg
  int paces;
  QString name;
  QString walker = "Ann", route = "Loop", direction = "out";
  QString point = {};  // instead of where it says it is
  double offset_m = 0; // to the right
};

//! A layer of them with the fields of marks, but for those left out.
inline Layer markLayer(const std::vector<MarkRow> &rows, const QStringList &without = {}) {
  QList<QgsField> fields;
  for (const QgsField &field : LegLayer::markFields())
    if (!without.contains(field.name()))
      fields << field;
  std::vector<Row> made;
  for (const MarkRow &row : rows) {
    const QVariantMap values{{"route", row.route},
                             {"leg", row.leg},
                             {"walker", row.walker},
                             {"mark", row.mark},
                             {"at_m", row.at_m},
                             {"direction", row.direction},
                             {"paces", row.paces},
                             {"offset_m", row.offset_m},
                             {"name", row.name.isEmpty() ? QVariant() : QVariant(row.name)}};
    QVariantList list;
    for (const QgsField &field : fields)
      list << values.value(field.name());
    const QString there = QStringLiteral("POINT(%1 5400000)").arg(500000 + 100 * row.leg + row.at_m, 0, 'f', 3);
    made.push_back({wkt(row.point.isEmpty() ? there : row.point), list});
  }
  return layer("marks", "Point", "EPSG:32621", fields, made);
}

} // namespace brushline::test
