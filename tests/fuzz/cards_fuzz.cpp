// SPDX-License-Identifier: GPL-2.0-or-later
// Cards: what goes where, tables, dials, courses over maps, profiles, sheets.
#include "fuzz_text.h"

#include "handouts/card_plan.h"
#include "handouts/course_drawing.h"
#include "handouts/label_places.h"
#include "handouts/map_scale.h"
#include "handouts/profile_drawing.h"
#include "handouts/sheet_plan.h"

using namespace brushline;
using fuzz::Input;
using fuzz::name;

namespace {

void checkSpot(const Spot &spot) { PROMISED(std::isfinite(spot.x) && std::isfinite(spot.y)); }

void checkDrawing(const Drawing &drawing) {
  for (const auto &part : drawing.parts) {
    if (const auto *text = std::get_if<DrawnText>(&part)) {
      checkSpot(text->at);
      PROMISED(text->face.points > 0);
    } else if (const auto *shape = std::get_if<DrawnShape>(&part)) {
      for (const Spot &corner : shape->corners)
        checkSpot(corner);
    } else if (const auto *disc = std::get_if<DrawnDisc>(&part)) {
      checkSpot(disc->centre);
      PROMISED(disc->radius >= 0);
    }
  }
}

std::vector<std::string> names(Input &input, size_t most) {
  std::vector<std::string> all;
  for (size_t count = input.upTo(most); count > 0; --count)
    all.push_back(name(input, 60));
  return all;
}

void card(Input &input) {
  const fuzz::PlainRuler ruler;
  CardContents card;
  card.title = name(input, 60);
  card.route = name(input, 30);
  card.walker = name(input, 30);
  card.way = name(input, 30);
  card.totals = name(input, 60);
  for (size_t count = 1 + input.upTo(20); count > 0; --count) {
    CardLeg leg;
    leg.number = int(input.upTo(1000));
    leg.dial = input.from({"", "042", "6399"});
    leg.unit = input.from({"", "mil"});
    leg.paces = input.from({"", "0", "62", "123456"});
    leg.minutes = input.from({"", "1"});
    leg.metres = input.from({"", "1000"});
    leg.back = input.from({"", "222"});
    leg.from = name(input, 20);
    leg.to = name(input, 20);
    leg.details = names(input, input.upTo(7) == 0 ? 60 : 3);
    leg.extras = names(input, 2);
    leg.warnings = names(input, input.upTo(7) == 0 ? 60 : 2);
    if (input.flag())
      leg.picture = DialPicture{leg.dial,
                                Angle::degrees(input.between(0, 360)),
                                Angle::degrees(input.between(-180, 180)),
                                {"N", "E", "S", "W"}};
    card.legs.push_back(std::move(leg));
  }
  card.notes = names(input, input.upTo(7) == 0 ? 60 : 4);
  card.cautions = names(input, 4);
  card.map_note = name(input, 20);
  card.profile = input.flag();
  card.course_aspect = input.scaled(1e-6, 1e6);
  card.map_width = input.between(0, 300);
  card.map_height = input.between(0, 300);
  card.words = {{"Leg", "Dial", "Paces", "Way", "Minutes", "Metres", "no dial", "and %1 more"},
                "Page %1 of %2",
                "More on %1",
                "Turn back",
                "Told",
                "Back by"};
  const PaperSize paper{input.between(90, 420), input.between(90, 420)};
  const CardPlan plan = planCard(card, paper, ruler);
  PROMISED(!plan.pages.empty());
  size_t legs = 0;
  for (const CardPage &page : plan.pages) {
    legs += page.leg_count;
    checkDrawing(page.drawing);
    const double margin = CardType::forPaper(std::min(paper.width, paper.height)).margin;
    for (const auto &part : page.drawing.parts) // however much there is to tell
      if (const auto *text = std::get_if<DrawnText>(&part))
        PROMISED(text->at.y - text->face.em() * capHeight >= margin - 0.01 &&
                 text->at.y <= paper.height - margin + 0.01);
    for (const auto &area : {page.map, page.strip, page.profile})
      PROMISED(!area || (area->width > 0 && area->height > 0 && Area{0, 0, paper.width, paper.height}.holds(*area)));
  }
  PROMISED(legs == card.legs.size());
}

std::vector<Spot> spots(Input &input, const Area &area, size_t least, size_t most) {
  std::vector<Spot> all;
  for (size_t count = least + input.upTo(most - least); count > 0; --count)
    all.push_back({input.between(area.left - 5, area.right() + 5), input.between(area.top - 5, area.bottom() + 5)});
  return all;
}

void course(Input &input) {
  const fuzz::PlainRuler ruler;
  const CardType type = CardType::forPaper(input.between(90, 420));
  CoursePicture picture;
  picture.map = {input.between(0, 50), input.between(0, 50), input.between(1, 300), input.between(1, 300)};
  for (size_t count = 1 + input.upTo(11); count > 0; --count)
    picture.legs.push_back({int(count), spots(input, picture.map, 2, 6), spots(input, picture.map, 0, 5)});
  if (input.flag())
    picture.north = MapNorth{input.between(-360, 360), input.flag()};
  picture.lines_apart = input.flag() ? 0 : input.scaled(0.5, 500);
  picture.start = name(input, 10);
  picture.end = name(input, 10);
  const DrawnCourse drawn = drawCourse(picture, type, ruler);
  checkDrawing(drawn.drawing);

  MapStrip strip;
  strip.area = picture.map;
  strip.scale = roundScale({input.scaled(1e-3, 1e7), input.scaled(1e-3, 1e7)}, picture.map);
  PROMISED(strip.scale.number >= 250 && std::isfinite(strip.scale.number));
  strip.scale_text = name(input, 20);
  if (input.flag())
    strip.paces_per_m = input.scaled(0.1, 10);
  strip.north = picture.north;
  strip.north_text = {name(input, 20), name(input, 20)};
  strip.metres = "m";
  strip.kilometres = "km";
  strip.paces = name(input, 10);
  checkDrawing(drawMapStrip(strip, type, ruler));

  std::vector<LabelWish> wishes;
  for (const Spot &spot : spots(input, picture.map, 0, 10))
    wishes.push_back({spot, input.between(0, 400), input.between(0, 30), input.between(0, 10)});
  std::vector<std::pair<Spot, Spot>> lines;
  const std::vector<Spot> ends = spots(input, picture.map, 0, 8);
  for (size_t i = 1; i < ends.size(); ++i)
    lines.push_back({ends[i - 1], ends[i]});
  const std::vector<PlacedLabel> labels = placeLabels(wishes, lines, picture.map);
  PROMISED(labels.size() == wishes.size());
  for (size_t i = 0; i < labels.size(); ++i)
    if (wishes[i].width <= picture.map.width && wishes[i].height <= picture.map.height)
      PROMISED(picture.map.holds(labels[i].area));
  for (const auto &line : lines)
    PROMISED(lengthInside(line, picture.map) >= 0);
}

void profile(Input &input) {
  const fuzz::PlainRuler ruler;
  CourseProfile course;
  double at = 0;
  for (size_t count = input.upTo(40); count > 0; --count) {
    course.points.push_back(
        {at, input.upTo(9) == 0 ? std::numeric_limits<double>::quiet_NaN() : input.between(-400, 9000)});
    at += input.between(0, 500);
  }
  double start = 0;
  for (size_t count = input.upTo(10); count > 0; --count) {
    const double end = start + input.between(0.001, 3000);
    ProfileLeg leg{int(count), start, end, name(input, 12), {}};
    for (size_t marks = input.upTo(5); marks > 0; --marks)
      leg.marks.push_back(input.between(start, end));
    course.legs.push_back(std::move(leg));
    start = end;
  }
  const Area area{10, 10, input.between(5, 400), input.between(5, 200)};
  checkDrawing(drawProfile(course, area, {"m", "heights drawn %1 times", "to scale", "no heights"},
                           CardType::forPaper(input.between(90, 420)), ruler));
  PROMISED(thinned(course.points, area.width).size() <= course.points.size());
}

void sheets(Input &input) {
  const PaperSize sheet{input.between(50, 1200), input.between(50, 1200)},
      card{input.between(50, 1200), input.between(50, 1200)};
  const int most = int(input.upTo(50));
  const SheetPlan plan = planSheet(sheet, card, most);
  PROMISED(most == 0 || plan.cards.size() <= size_t(most));
  for (const Area &area : plan.cards)
    PROMISED(Area({-1, -1, plan.sheet.width + 2, plan.sheet.height + 2}).holds(area));
  checkDrawing(cuttingLines(plan));
  const double down = input.scaled(1e-300, 1e300), round = roundDown(down);
  PROMISED(round > 0 && round <= down && round > down / 5);
  const Area area{input.between(-10, 10), input.between(-10, 10), input.between(0, 500), input.between(0, 500)};
  for (const auto &line : parallelsAcross(area, input.between(-400, 400), input.scaled(0.5, 1000))) {
    checkSpot(line.first);
    checkSpot(line.second);
  }
}

} // namespace

FUZZ(input) {
  switch (input.upTo(3)) {
  case 0:
    return card(input);
  case 1:
    return course(input);
  case 2:
    return profile(input);
  default:
    sheets(input);
  }
}
