// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/card_table.h"

#include "handouts/text_fit.h"

#include <algorithm>
#include <cmath>

namespace brushline {

namespace {

constexpr double padding = 1.1;     // over and under a row's contents
constexpr double gap = 2.2;         // between columns
constexpr double dialGap = 4.5;     // between the two large numbers, with a rule
constexpr double columnsFrom = 100; // a table as wide as this has columns of their own for minutes and metres
constexpr double extrasFrom = 150;  // and one as wide as this has extras
constexpr double overWarning = 0.4; // between one and what stands over it
constexpr double slack = 1e-9;      // of heights that are added up

double advance(const Face &face) { return face.em() * lineHeight; }
// From a line's top to its base line.
double baseLine(const Face &face) { return face.em() * (capHeight + (lineHeight - capHeight - hanging) / 2 + 0.06); }

bool standsApart(const std::string &unit) { return !unit.empty() && unit.front() == ' '; }

} // namespace

CardType CardType::forPaper(double shorter) {
  if (shorter < 120)
    return {{20, true}, {11, true}, {8, true}, {7}, {6.5}, 5, 12, 7};
  if (shorter < 180)
    return {{25, true}, {14, true}, {9.5, true}, {8}, {7}, 6, 15, 8};
  return {{32, true}, {18, true}, {12, true}, {10}, {8.5}, 10, 18, 9};
}

CardType CardType::enlarged(double factor) const {
  CardType larger = *this;
  for (Face *face : {&larger.big, &larger.title, &larger.name, &larger.body, &larger.small})
    face->points = std::max(smallestText, face->points * factor);
  larger.picture *= factor;
  return larger;
}

CardTable::CardTable(const std::vector<CardLeg> &legs, const TableWords &words, const CardType &type, TableRoom room,
                     const TextRuler &ruler)
    : mLegs(legs), mWords(words), mType(type), mRuler(ruler), mWidth(room.width), mHeight(room.height),
      mHead(advance(type.small) + 0.8), mBig(type.big) {
  arrangeColumns(room.width);
  for (const CardLeg &leg : legs)
    addRows(leg);
}

void CardTable::arrangeColumns(double width) {
  mPictures = std::any_of(mLegs.begin(), mLegs.end(), [](const CardLeg &leg) { return leg.picture.has_value(); });
  mOwnColumns = width >= columnsFrom;
  mExtras = width >= extrasFrom;
  const auto widest = [&](const Face &face, auto text) {
    double most = 0;
    for (const CardLeg &leg : mLegs)
      most = std::max(most, mRuler.width(text(leg), face));
    return most;
  };
  const auto dialWidth = [&] {
    return std::max(std::max(mRuler.width(mWords.dial, mType.small),
                             widest(mType.small, [](const CardLeg &leg) { return leg.back; })),
                    widest(mBig, [&](const CardLeg &leg) {
                      return leg.dial.empty() ? mWords.no_dial : standsApart(leg.unit) ? leg.dial : leg.dial + leg.unit;
                    }) + widest(mType.name, [](const CardLeg &leg) { return standsApart(leg.unit) ? leg.unit : ""; }));
  };
  const auto pacesWidth = [&] {
    return std::max({mRuler.width(mWords.paces, mType.small),
                     widest(mBig, [](const CardLeg &leg) { return leg.paces; }),
                     mOwnColumns ? 0 : widest(mType.small, [&](const CardLeg &leg) { return way(leg); })});
  };
  const Face numbers{mType.name.points + 1, true};
  mNumber.width =
      std::max({widest(numbers, [](const CardLeg &leg) { return std::to_string(leg.number) + leg.letter; }) + 2,
                numbers.em() * 1.5, mRuler.width(mWords.leg, mType.small)});
  mPicture.width = mPictures ? mType.picture : 0;
  const double others = mNumber.width + gap + (mPictures ? mPicture.width + gap : 0);
  // The numbers take half of what is left at most, so that names keep some room; they stay the largest.
  while (mBig.points > mType.title.points + 1 && dialWidth() + dialGap + pacesWidth() > 0.55 * (width - others))
    mBig.points -= 0.5;
  mDial.width = dialWidth();
  mPaces.width = pacesWidth();
  if (mOwnColumns) {
    mMinutes.width = std::max(mRuler.width(mWords.minutes, mType.small),
                              widest(mType.name, [](const CardLeg &leg) { return leg.minutes; }));
    mMetres.width = std::max(mRuler.width(mWords.metres, mType.small),
                             widest(mType.name, [](const CardLeg &leg) { return leg.metres; }));
  }
  double x = 0;
  for (Column *column : {&mNumber, &mPicture, &mDial, &mPaces}) {
    column->left = x;
    if (column->width > 0)
      x += column->width + (column == &mDial ? dialGap : gap);
  }
  mWay.left = x + gap / 2;
  mMetres.left = width - mMetres.width;
  mMinutes.left = mOwnColumns ? mMetres.left - gap - mMinutes.width : width;
  mWay.width = std::max(10.0, (mOwnColumns ? mMinutes.left - gap : width) - mWay.left);
}

void CardTable::addLines(std::vector<Line> &lines, const std::string &text, const Face &face, int most) {
  const FittedText fitted = fitText(text, face, mWay.width, most, mRuler);
  mShortened |= fitted.shortened;
  for (const std::string &line : fitted.lines)
    lines.push_back({line, face});
}

double CardTable::heightOf(const std::vector<Line> &lines) {
  double height = 0;
  for (const Line &line : lines)
    height += advance(line.face);
  return height;
}

double CardTable::heightOf(const WarningLine &line) const {
  return advance(warningFace()) + (line.begins ? overWarning : 0);
}

std::vector<CardTable::Line> CardTable::detailsOf(const CardLeg &leg, double room) {
  std::vector<Line> lines;
  std::vector<size_t> ends{0}; // of each detail's lines
  for (const std::string &detail : leg.details) {
    addLines(lines, detail, mType.body, 3);
    ends.push_back(lines.size());
  }
  size_t kept = leg.details.size();
  if (kept == 0 || heightOf(lines) <= room + slack)
    return lines;
  std::vector<Line> note;
  do {
    --kept;
    note.clear();
    addLines(note, filledIn(mWords.left_out, "%1", leg.details.size() - kept), mType.body, 2);
  } while (kept > 0 && double(ends[kept] + note.size()) * advance(mType.body) > room + slack);
  lines.erase(lines.begin() + long(ends[kept]), lines.end());
  lines.insert(lines.end(), note.begin(), note.end());
  mLeftOut += leg.details.size() - kept;
  mShortened = true;
  return lines;
}

void CardTable::addRows(const CardLeg &leg) {
  const double most = mHeight - mHead - 2 * padding; // of what is in a row
  std::vector<WarningLine> warnings;
  double below = 0;
  for (const std::string &text : leg.warnings) {
    bool begins = true;
    for (const std::string &line :
         fitText(text, warningFace(), mWidth - mDial.left - 2 * warningFace().em(), allLines, mRuler).lines) {
      warnings.push_back({line, begins});
      below += heightOf(warnings.back());
      begins = false;
    }
  }
  Row row{&leg, false, {}, {}, 0};
  addLines(row.lines, leg.from, mType.body, 2);
  addLines(row.lines, leg.to, mType.name, 2);
  std::vector<Line> extras;
  if (mExtras)
    for (const std::string &extra : leg.extras)
      addLines(extras, extra, mType.body, 3);
  // Warnings that have to go on to the next page anyway leave the details their room.
  const double room = most - below > numbersHeight(leg) + heightOf(row.lines) ? most - below : most;
  const std::vector<Line> details = detailsOf(leg, room - heightOf(row.lines) - heightOf(extras));
  row.lines.insert(row.lines.end(), details.begin(), details.end());
  row.lines.insert(row.lines.end(), extras.begin(), extras.end());
  double height = std::max(heightOf(row.lines), numbersHeight(leg));
  for (const WarningLine &line : warnings) {
    if (height + heightOf(line) > most + slack && !(row.goes_on && row.warnings.empty())) {
      row.height = height + 2 * padding;
      mRows.push_back(std::move(row));
      row = {&leg, true, {}, {}, 0};
      height = 0;
    }
    row.warnings.push_back(line);
    height += heightOf(line);
  }
  if (row.goes_on)
    height = std::max(height, mBig.em() * (capHeight + 0.12)); // of the leg's number
  row.height = height + 2 * padding;
  mRows.push_back(std::move(row));
}

std::string CardTable::way(const CardLeg &leg) const {
  std::string both = leg.metres.empty() ? "" : leg.metres + " " + mWords.metres;
  if (!leg.minutes.empty())
    both += (both.empty() ? "" : ", ") + leg.minutes + " " + mWords.minutes;
  return both;
}

double CardTable::numbersHeight(const CardLeg &leg) const {
  const double numbers = mBig.em() * (capHeight + 0.12) + (leg.back.empty() && mOwnColumns ? 0 : advance(mType.small));
  return std::max(numbers, leg.picture ? mPicture.width * dialPictureHeight : 0);
}

size_t CardTable::legs(size_t first, size_t count) const {
  return size_t(std::count_if(mRows.begin() + long(first), mRows.begin() + long(first + count),
                              [](const Row &row) { return !row.goes_on; }));
}

double CardTable::height(size_t first, size_t count) const {
  double height = mHead;
  for (size_t row = first; row < first + count; ++row)
    height += mRows[row].height;
  return height;
}

size_t CardTable::fitting(size_t first, double height) const {
  size_t count = 0;
  double used = mHead;
  while (first + count < mRows.size() && (count == 0 || used + mRows[first + count].height <= height + slack))
    used += mRows[first + count++].height;
  return count;
}

Drawing CardTable::draw(size_t first, size_t count, Spot corner) const {
  Drawing drawing;
  const auto head = [&](const std::string &text, double x, Align align) {
    drawing.add(DrawnText{{corner.x + x, corner.y + baseLine(mType.small)}, text, mType.small, align});
  };
  head(mWords.leg, mNumber.left, Align::Left);
  head(mWords.dial, mDial.right(), Align::Right);
  head(mWords.paces, mPaces.right(), Align::Right);
  head(inOneLine(mWords.way, mType.small, mWay.width, mRuler), mWay.left, Align::Left);
  if (mOwnColumns) {
    head(mWords.minutes, mMinutes.right(), Align::Right);
    head(mWords.metres, mMetres.right(), Align::Right);
  }
  double y = corner.y + mHead;
  for (size_t i = first; i < first + count; ++i) {
    drawing.line({corner.x, y}, {corner.x + mWidth, y}, i == first ? 0.4 : 0.15, i == first ? 0 : 0.3);
    drawRow(drawing, mRows[i], {corner.x, y});
    y += mRows[i].height;
  }
  drawing.line({corner.x, y}, {corner.x + mWidth, y}, 0.4);
  return drawing;
}

void CardTable::drawFigures(Drawing &drawing, const CardLeg &leg, Spot corner) const {
  const double top = corner.y + padding;
  const double bigLine = top + mBig.em() * (capHeight + 0.06);
  if (leg.picture)
    drawing.add(drawDial(*leg.picture,
                         {corner.x + mPicture.left, top, mPicture.width, mPicture.width * dialPictureHeight}, mRuler));
  double right = corner.x + mDial.right();
  if (!leg.dial.empty() && standsApart(leg.unit)) {
    drawing.add(DrawnText{{right, bigLine}, leg.unit, mType.name, Align::Right});
    right -= mRuler.width(leg.unit, mType.name);
  }
  drawing.add(DrawnText{{right, bigLine},
                        leg.dial.empty()        ? mWords.no_dial
                        : standsApart(leg.unit) ? leg.dial
                                                : leg.dial + leg.unit,
                        mBig,
                        Align::Right});
  drawing.add(DrawnText{{corner.x + mPaces.right(), bigLine}, leg.paces, mBig, Align::Right});
  if (!leg.back.empty())
    drawing.add(
        DrawnText{{corner.x + mDial.right(), bigLine + advance(mType.small)}, leg.back, mType.small, Align::Right});
  if (!mOwnColumns)
    drawing.add(
        DrawnText{{corner.x + mPaces.right(), bigLine + advance(mType.small)}, way(leg), mType.small, Align::Right});
  const double rule = corner.x + mPaces.left - dialGap / 2;
  drawing.line({rule, bigLine - mBig.em() * capHeight}, {rule, bigLine}, 0.2, 0.3);
  if (mOwnColumns) {
    drawing.add(DrawnText{{corner.x + mMinutes.right(), bigLine}, leg.minutes, {mType.name.points}, Align::Right});
    drawing.add(DrawnText{{corner.x + mMetres.right(), bigLine}, leg.metres, {mType.name.points}, Align::Right});
  }
}

void CardTable::drawRow(Drawing &drawing, const Row &row, Spot corner) const {
  const double top = corner.y + padding;
  const double bigLine = top + mBig.em() * (capHeight + 0.06);
  const Face numbers{mType.name.points + 1, true};

  // The leg's number, white on black, as tall as the figures beside it.
  const double tall = mBig.em() * capHeight;
  drawing.box({corner.x, bigLine - tall, mNumber.width, tall}, 0, 0.0);
  drawing.add(DrawnText{{corner.x + mNumber.width / 2, bigLine - (tall - numbers.em() * capHeight) / 2},
                        std::to_string(row.leg->number) + row.leg->letter,
                        numbers,
                        Align::Centre,
                        1});
  if (!row.goes_on)
    drawFigures(drawing, *row.leg, corner);
  double y = top;
  for (const Line &line : row.lines) {
    drawing.add(DrawnText{{corner.x + mWay.left, y + baseLine(line.face)}, line.text, line.face});
    y += advance(line.face);
  }
  y = row.goes_on ? top : std::max(y, top + numbersHeight(*row.leg));
  const Face warning = warningFace();
  for (const WarningLine &each : row.warnings) {
    const double em = warning.em(), left = corner.x + mDial.left;
    y += heightOf(each) - advance(warning);
    const double line = y + baseLine(warning);
    if (each.begins) { // a warning triangle
      drawing.add(
          DrawnShape{{{left + em * 0.6, line - em * 0.92}, {left, line + em * 0.1}, {left + em * 1.2, line + em * 0.1}},
                     true,
                     0,
                     0,
                     0.0});
      drawing.add(DrawnText{{left + em * 0.6, line - em * 0.02}, "!", {smallestText, true}, Align::Centre, 1});
    }
    drawing.add(DrawnText{{left + 2 * em, line}, each.text, warning});
    y += advance(warning);
  }
}

} // namespace brushline
