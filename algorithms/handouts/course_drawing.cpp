// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/course_drawing.h"

#include "handouts/label_places.h"
#include "handouts/text_fit.h"
#include "quantities/angle.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace brushline {

namespace {

double distance(Spot a, Spot b) { return std::hypot(b.x - a.x, b.y - a.y); }

// A number for people, without needless zeros.
std::string plainNumber(double value) {
  char text[32];
  std::snprintf(text, sizeof text, "%.10g", value);
  return text;
}

// An arrow's head with its tip at a spot.
DrawnShape arrowHead(Spot tip, double x, double y, double length) {
  const double half = length * 0.42;
  const Spot back{tip.x - x * length, tip.y - y * length};
  return {{tip, {back.x - y * half, back.y + x * half}, {back.x + y * half, back.y - x * half}}, true, 0, 0, 0.0};
}

// The spot halfway along a line, and the direction there.
struct Midway {
  Spot spot;
  double x, y;
};
std::optional<Midway> midway(const std::vector<Spot> &line, double atLeast) {
  double whole = 0;
  for (size_t i = 1; i < line.size(); ++i)
    whole += distance(line[i - 1], line[i]);
  if (whole < atLeast)
    return std::nullopt;
  double rest = whole / 2;
  for (size_t i = 1; i < line.size(); ++i) {
    const double length = distance(line[i - 1], line[i]);
    if (length >= rest && length > 0) {
      const double x = (line[i].x - line[i - 1].x) / length, y = (line[i].y - line[i - 1].y) / length;
      return Midway{{line[i - 1].x + x * rest, line[i - 1].y + y * rest}, x, y};
    }
    rest -= length;
  }
  return std::nullopt;
}

void drawNorthLines(Drawing &drawing, const CoursePicture &course) {
  if (!course.north || course.lines_apart <= 0)
    return;
  const double turn = Angle::degrees(course.north->turn_degrees).radians();
  for (const auto &[from, to] : parallelsAcross(course.map, course.north->turn_degrees, course.lines_apart)) {
    drawing.line(from, to, northWidth * 3, 1);
    drawing.line(from, to, northWidth, 0.25);
    if (distance(from, to) > 8) {
      const Spot tip{to.x - std::sin(turn) * 1.5, to.y + std::cos(turn) * 1.5};
      DrawnShape head = arrowHead(tip, std::sin(turn), -std::cos(turn), 2.2);
      head.fill = 0.25;
      drawing.add(head);
    }
  }
}

void drawMarks(Drawing &drawing, const LegOnMap &leg) {
  const Spot a = leg.line.front(), b = leg.line.back();
  const double length = distance(a, b);
  if (length < 0.5)
    return;
  const double x = (b.x - a.x) / length, y = (b.y - a.y) / length;
  const bool crowded = length / double(leg.marks.size() + 1) < 1.5;
  const double half = crowded ? 0.65 : 0.95, width = crowded ? 0.12 : 0.3;
  for (const Spot &mark : leg.marks)
    drawing.line({mark.x + y * half, mark.y - x * half}, {mark.x - y * half, mark.y + x * half}, width);
}

void drawStart(Drawing &drawing, Spot spot) { drawing.box(Area{spot.x, spot.y, 0, 0}.grown(1.35), 0.3, 0.0, 1); }

void drawEnd(Drawing &drawing, Spot spot, bool isStart) {
  const double reach = isStart ? 3.0 : 2.3;
  drawing.add(DrawnShape{
      {{spot.x, spot.y - reach}, {spot.x + reach, spot.y}, {spot.x, spot.y + reach}, {spot.x - reach, spot.y}},
      true,
      0.5,
      0,
      1.0});
  if (!isStart)
    drawing.add(DrawnDisc{spot, 0.6, 0, 0, 0.0});
}

} // namespace

DrawnCourse drawCourse(const CoursePicture &course, const CardType &type, const TextRuler &ruler) {
  Drawing drawing;
  drawing.add(DrawnClip{course.map});
  drawNorthLines(drawing, course);
  for (const LegOnMap &leg : course.legs)
    drawing.add(DrawnShape{leg.line, false, legWidth * 2.8, 1, {}});
  for (const LegOnMap &leg : course.legs) {
    drawMarks(drawing, leg);
    drawing.add(DrawnShape{leg.line, false, legWidth, 0, {}});
    if (const auto middle = midway(leg.line, 9))
      drawing.add(
          arrowHead({middle->spot.x + middle->x * 1.4, middle->spot.y + middle->y * 1.4}, middle->x, middle->y, 2.8));
  }
  const Spot start = course.legs.front().line.front(), end = course.legs.back().line.back();
  const bool closed = distance(start, end) < 1.5;
  for (const LegOnMap &leg : course.legs)
    drawing.add(DrawnDisc{leg.line.front(), 0.8, 0.25, 1, 0.0});
  if (!course.end.empty())
    drawEnd(drawing, end, closed);
  if (!course.start.empty())
    drawStart(drawing, start);

  const Face number{type.body.points, true}, word{smallestText, true};
  std::vector<LabelWish> wishes;
  std::vector<std::pair<Spot, Spot>> lines;
  for (const LegOnMap &leg : course.legs) {
    const double width = ruler.width(std::to_string(leg.number) + leg.letter, number) + 1.2;
    const double height = number.em() * capHeight + 1.2;
    wishes.push_back({leg.line.front(), std::max(width, height), height,
                      &leg != &course.legs.front() ? 1.2
                      : closed                     ? 3.3
                                                   : 1.9});
    for (size_t i = 1; i < leg.line.size(); ++i)
      lines.push_back({leg.line[i - 1], leg.line[i]});
  }
  const double tall = word.em() * capHeight + 1.4;
  std::vector<std::string> words; // behind the numbers
  if (!course.start.empty()) {
    wishes.push_back({start, ruler.width(course.start, word) + 1.4, tall, closed ? 3.3 : 2.0});
    words.push_back(course.start);
  }
  if (!course.end.empty()) {
    wishes.push_back({end, ruler.width(course.end, word) + 1.4, tall, closed ? 3.3 : 2.6});
    words.push_back(course.end);
  }
  const std::vector<PlacedLabel> places = placeLabels(wishes, lines, course.map.grown(-1));
  for (size_t i = 0; i < places.size(); ++i)
    if (places[i].far) {
      drawing.line(wishes[i].anchor, places[i].area.centre(), 0.7, 1);
      drawing.line(wishes[i].anchor, places[i].area.centre(), 0.25);
    }
  for (size_t i = 0; i < places.size(); ++i) {
    const Area &area = places[i].area;
    const bool isNumber = i < course.legs.size();
    const Face &face = isNumber ? number : word;
    drawing.box(area, 0.25, isNumber ? 0.0 : 1.0, isNumber ? 1 : 0);
    drawing.add(DrawnText{{area.centre().x, area.centre().y + face.em() * capHeight / 2},
                          isNumber ? std::to_string(course.legs[i].number) + course.legs[i].letter
                                   : words[i - course.legs.size()],
                          face,
                          Align::Centre,
                          isNumber ? 1.0 : 0.0});
  }
  drawing.add(DrawnClip{});
  drawing.box(course.map, 0.35, {});
  DrawnCourse drawn{std::move(drawing), {}, std::move(lines)};
  for (const PlacedLabel &place : places)
    drawn.labels.push_back(place.area);
  return drawn;
}

Drawing drawMapStrip(const MapStrip &strip, const CardType &type, const TextRuler &ruler) {
  Drawing drawing;
  const Area &area = strip.area;
  const Face small = type.small, scale{type.name.points, true};
  const double middle = area.top + area.height / 2;

  drawing.add(DrawnText{{area.left, middle + scale.em() * capHeight / 2}, strip.scale_text, scale});
  const double left = area.left + ruler.width(strip.scale_text, scale) + 4;

  double right = area.right();
  if (strip.north) {
    double width = 0;
    for (const std::string &text : strip.north_text)
      width = std::max(width, ruler.width(text, small));
    right -= width;
    double y = middle - 0.15;
    for (const std::string &text : strip.north_text) {
      drawing.add(DrawnText{{right, y}, text, small});
      y += small.em() * lineHeight;
    }
    const double turn = Angle::degrees(strip.north->turn_degrees).radians(), reach = area.height * 0.42;
    const Spot centre{right - 1.5 - reach, middle},
        tip{centre.x + std::sin(turn) * reach, centre.y - std::cos(turn) * reach};
    drawing.line({centre.x - std::sin(turn) * reach, centre.y + std::cos(turn) * reach},
                 {tip.x - std::sin(turn) * reach * 0.5, tip.y + std::cos(turn) * reach * 0.5}, 0.4);
    drawing.add(arrowHead(tip, std::sin(turn), -std::cos(turn), reach * 0.95));
    right = centre.x - reach - 3;
  }

  // The bar: metres above it in boxes, paces below it as ticks, each of its own round length.
  const double high = 1.1, barTop = middle - high / 2;
  const auto lengthOf = [&](double perMm, const std::string &unit) {
    const double room = right - left - ruler.width(" " + unit, small) - 2;
    return roundDown(std::max(1e-6, perMm * std::max(8.0, room)));
  };
  const auto labels = [&](double length, double perMm, const std::string &unit, double line) {
    double end = left;
    for (const double share : {0.0, 0.5, 1.0}) {
      const double value = length * share;
      if (share == 0.5 && value != std::floor(value))
        continue;
      const std::string number = plainNumber(value);
      const double x = left + value / perMm;
      const double wide = ruler.width(number, small);
      if (share == 0.5 && (x - wide / 2 < end + 1 || x + wide * 1.6 + 1 > left + length / perMm))
        continue;
      drawing.add(DrawnText{{x, line}, number, small, Align::Centre});
      end = x + wide / 2;
      if (share == 1)
        drawing.add(DrawnText{{end + ruler.width(" ", small), line}, unit, small});
    }
  };
  const bool inKm = strip.scale.toGround(std::max(8.0, right - left)) >= 5000;
  const double perMm = strip.scale.number / 1000 / (inKm ? 1000 : 1);
  const std::string unit = inKm ? strip.kilometres : strip.metres;
  const double length = lengthOf(perMm, unit), paper = length / perMm;
  constexpr int boxes = 4;
  for (int i = 0; i < boxes; ++i)
    drawing.box({left + paper * i / boxes, barTop, paper / boxes, high}, 0.2, i % 2 == 0 ? 0.0 : 1.0);
  labels(length, perMm, unit, barTop - 0.7);
  if (strip.paces_per_m) {
    const double pacesPerMm = *strip.paces_per_m * strip.scale.number / 1000;
    const double paces = lengthOf(pacesPerMm, strip.paces), end = left + paces / pacesPerMm;
    const double line = barTop + high + 0.5;
    drawing.line({left, line}, {end, line}, 0.25);
    for (int i = 0; i <= boxes; ++i) {
      const double x = left + (end - left) * i / boxes;
      drawing.line({x, line}, {x, line + (i % 2 == 0 ? 0.9 : 0.6)}, 0.25);
    }
    labels(paces, pacesPerMm, strip.paces, line + 1.2 + small.em() * capHeight);
  }
  return drawing;
}

} // namespace brushline
