// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/leg_csv_host.h"

#include "quantities/progress.h"

#include <QLocale>
#include <QRegularExpression>
#include <qgsfeedback.h>

#include <algorithm>
#include <cmath>
#include <vector>

namespace brushline {

namespace {

QString cell(const QString &text) {
  QString kept = withoutFormula(text);
  static const QRegularExpression control(QStringLiteral("[\\x{00}-\\x{08}\\x{0B}\\x{0C}\\x{0E}-\\x{1F}\\x{7F}]"));
  kept.remove(control); // RFC 4180 has none of them, and readers stop at some
  static const QRegularExpression special(QStringLiteral("[\",;\\t\\r\\n]"));
  if (!kept.contains(special))
    return kept;
  return QLatin1Char('"') + kept.replace(QLatin1Char('"'), QLatin1String("\"\"")) + QLatin1Char('"');
}

QString cell(const std::optional<double> &number) {
  if (!number)
    return QString();
  if (*number == 0 && std::signbit(*number))
    return QStringLiteral("-0"); // Qt leaves the sign out
  return QString::number(*number, 'g', QLocale::FloatingPointShortest);
}
QString cell(const std::optional<long> &number) { return number ? QString::number(*number) : QString(); }

struct Column {
  const char *name;
  QString (*value)(const LegSheet &sheet, const SheetLeg &leg);
};

template <auto member> QString of(const LegSheet &, const SheetLeg &leg) { return cell(leg.*member); }
template <auto member> QString ofPiece(const LegSheet &, const SheetLeg &leg) {
  return leg.piece ? cell((*leg.piece).*member) : QString();
}

// In the order of annotated legs.
const Column columns[] = {
    {"route", [](const LegSheet &sheet, const SheetLeg &) { return cell(sheet.route); }},
    {"leg", [](const LegSheet &, const SheetLeg &leg) { return QString::number(leg.number); }},
    {"walker", [](const LegSheet &sheet, const SheetLeg &) { return cell(sheet.walker); }},
    {"direction",
     [](const LegSheet &sheet, const SheetLeg &) {
       return sheet.back ? QStringLiteral("back") : QStringLiteral("out"); // never translated
     }},
    {"from_name", of<&SheetLeg::from>},
    {"to_name", of<&SheetLeg::to>},
    {"true_brg", of<&SheetLeg::true_bearing>},
    {"grid_brg", of<&SheetLeg::grid_bearing>},
    {"mag_brg", of<&SheetLeg::magnetic_bearing>},
    {"converg", of<&SheetLeg::convergence>},
    {"decl", of<&SheetLeg::declination>},
    {"decl_err", of<&SheetLeg::declination_error>},
    {"date", [](const LegSheet &, const SheetLeg &leg) { return leg.date.toString(Qt::ISODate); }},
    {"dial", of<&SheetLeg::dial>},
    {"dial_text", of<&SheetLeg::dial_text>},
    {"back_dial", of<&SheetLeg::back_dial>},
    {"compass_pt", of<&SheetLeg::compass_point>},
    {"dist_m", of<&SheetLeg::length_m>},
    {"slope_m", of<&SheetLeg::slope_m>},
    {"climb_m", of<&SheetLeg::climb_m>},
    {"drop_m", of<&SheetLeg::drop_m>},
    {"paces", of<&SheetLeg::paces>},
    {"walk_min", of<&SheetLeg::minutes>},
    {"cover", of<&SheetLeg::cover>},
    {"sight_m", of<&SheetLeg::sight_m>},
    {"spacing_m", of<&SheetLeg::spacing_m>},
    {"marks", of<&SheetLeg::sightings>},
    {"drift_m", of<&SheetLeg::drift_m>},
    {"along_m", of<&SheetLeg::along_m>},
    {"warnings", of<&SheetLeg::warnings>},
};

// What legs with detours have besides, likewise.
const Column pieceColumns[] = {
    {"part", ofPiece<&SheetPiece::part>},
    {"piece",
     [](const LegSheet &, const SheetLeg &leg) { return leg.piece ? QString::number(leg.piece->number) : QString(); }},
    {"turn", ofPiece<&SheetPiece::turn>},
    {"side", ofPiece<&SheetPiece::side>},
    {"obstacle", ofPiece<&SheetPiece::obstacle>},
    {"count_m", ofPiece<&SheetPiece::count_m>},
    {"run_paces", ofPiece<&SheetPiece::run_paces>},
    {"blocked_m", ofPiece<&SheetPiece::blocked_m>},
};

} // namespace

QString withoutFormula(const QString &text) {
  // Signs that begin a formula, full-width ones included, behind spaces or what nobody sees. A tab or a line's end at
  // the start of a text is taken for one too, as some spreadsheets drop it and look again.
  static const QRegularExpression formula(
      QStringLiteral(
          "(^|[;\\t\\r\\n])(?=[\\s\\p{Z}\\p{C}]*[=+\\-@\\x{FF1D}\\x{FF0B}\\x{FF0D}\\x{FF20}])|^(?=[\\t\\r\\n])"),
      QRegularExpression::UseUnicodePropertiesOption);
  return QString(text).replace(formula, QStringLiteral("\\1'"));
}

QByteArray legCsv(const LegSheet &sheet, const QgsFeedback *feedback) {
  QByteArray text = "\xEF\xBB\xBF";
  std::vector<Column> all(std::begin(columns), std::end(columns));
  if (std::any_of(sheet.legs.begin(), sheet.legs.end(), [](const SheetLeg &leg) { return leg.piece.has_value(); }))
    all.insert(all.end(), std::begin(pieceColumns), std::end(pieceColumns));
  QStringList cells;
  for (const Column &column : all)
    cells << QString::fromLatin1(column.name);
  text += cells.join(QLatin1Char(',')).toUtf8() + "\r\n";
  for (const SheetLeg &leg : sheet.legs) {
    if (feedback->isCanceled())
      throw Cancelled();
    cells.clear();
    for (const Column &column : all)
      cells << column.value(sheet, leg);
    text += cells.join(QLatin1Char(',')).toUtf8() + "\r\n";
  }
  return text;
}

} // namespace brushline
