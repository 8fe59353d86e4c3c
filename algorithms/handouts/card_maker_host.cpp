// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/card_maker_host.h"

#include <algorithm>

namespace brushline {

namespace {

constexpr double roomAround = 8;  // millimetres between the course and the map's edges, for labels
constexpr double leastCourse = 8; // millimetres: a shorter course cannot be read

Area insideOf(const Area &map) {
  const double margin = std::min({roomAround, map.width / 5, map.height / 5});
  return map.grown(-margin);
}

bool samePlaces(const std::vector<Place> &a, const std::vector<Place> &b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](const Place &p, const Place &q) {
    return p.latitude.degrees() == q.latitude.degrees() && p.longitude.degrees() == q.longitude.degrees();
  });
}

} // namespace

CardMaker::CardMaker(const CardSetting &setting, const CardFeatures &features, Terrain *terrain,
                     const QgsCoordinateReferenceSystem &layerCrs, const QgsCoordinateTransformContext &transforms,
                     const HandoutFonts &fonts)
    : mSetting(setting), mFeatures(features), mTerrain(terrain), mLayerCrs(layerCrs), mTransforms(transforms),
      mFonts(fonts), mType(CardType::forPaper(std::min(setting.paper.width, setting.paper.height))) {}

LegSheet CardMaker::printable(LegSheet sheet) const {
  for (QString *text : {&sheet.route, &sheet.walker})
    *text = mFonts.printable(*text);
  for (SheetLeg &leg : sheet.legs) {
    for (QString *text : {&leg.from, &leg.to, &leg.dial_text, &leg.back_text, &leg.cover})
      *text = mFonts.printable(*text);
    if (leg.piece)
      leg.piece->obstacle = mFonts.printable(leg.piece->obstacle);
    leg.warnings = mFonts.printableWarnings(leg.warnings);
    for (SheetMark &mark : leg.marks)
      mark.name = mFonts.printable(mark.name);
  }
  return sheet;
}

const CourseProfile &CardMaker::profileOf(const LegSheet &sheet) {
  std::vector<Place> places;
  for (const SheetLeg &leg : sheet.legs) {
    places.push_back(leg.start);
    places.push_back(leg.end);
  }
  if (!samePlaces(places, mProfilePlaces)) {
    mProfile.points = groundAlong(sheet, *mTerrain);
    mProfilePlaces = places;
  }
  mProfile.legs = profileLegs(sheet);
  return mProfile;
}

CardPlan CardMaker::planned(CardContents &contents, GroundSize size, MapScale &scale, QString &note) const {
  const auto mapOf = [](const CardPlan &plan) {
    const auto page =
        std::find_if(plan.pages.begin(), plan.pages.end(), [](const CardPage &one) { return one.map.has_value(); });
    return insideOf(*page->map);
  };
  const MapScale wanted{mSetting.scale};
  if (wanted.number > 0) { // a map of its own page if need be
    contents.map_width = wanted.toPaper(size.width) + 2 * roomAround;
    contents.map_height = wanted.toPaper(size.height) + 2 * roomAround;
  }
  CardPlan plan = planCard(contents, mSetting.paper, mFonts);
  if (wanted.number <= 0) {
    scale = roundScale(size, mapOf(plan));
    return plan;
  }
  scale = wanted;
  if (!hasRoom(size, mapOf(plan), wanted)) {
    // It stays as large as it can be. The note takes some of its room; its length changes little by the number in it.
    for (int i = 0; i < 2; ++i) {
      plan = planCard(contents, mSetting.paper, mFonts);
      scale = roundScale(size, mapOf(plan));
      note = card_words::tooLarge(wanted, scale);
      contents.map_note = note.toStdString();
    }
  } else if (const double longest = wanted.toPaper(std::max(size.width, size.height)); longest < leastCourse) {
    note = card_words::tooSmall(wanted, longest);
    contents.map_note = note.toStdString();
  } else {
    return plan;
  }
  return planCard(contents, mSetting.paper, mFonts);
}

CardMaker::Card CardMaker::card(const LegSheet &raw) {
  const LegSheet sheet = printable(raw);
  const CourseMap course(sheet, mLayerCrs, mTransforms);
  const CourseProfile *profile = mTerrain ? &profileOf(sheet) : nullptr;
  auto met = mFeatures.of(raw);
  for (auto &leg : met)
    for (MetFeature &feature : leg) {
      feature.name = mFonts.printable(feature.name);
      feature.role = mFonts.printable(feature.role);
    }

  CardContents contents = card_words::contents(sheet, mFonts.printable(mSetting.title), met, mSetting.pictures);
  contents.profile = profile != nullptr;
  const GroundSize size = course.size();
  contents.course_aspect = size.width > 0 ? size.height / size.width : 10;
  Card card;
  QString note;
  MapScale scale{};
  CardPlan plan = planned(contents, size, scale, note);
  if (!note.isEmpty())
    card.warnings << note;
  card.shortened = plan.shortened || std::any_of(raw.legs.begin(), raw.legs.end(), [](const SheetLeg &leg) {
                     return HandoutFonts::isTooLongForWarnings(leg.warnings);
                   });
  for (CardPage &page : plan.pages) {
    PrintedCard printed;
    printed.drawing = std::move(page.drawing);
    if (page.map)
      addMap(printed, page, sheet, course, scale, profile);
    card.pages.push_back(std::move(printed));
  }
  return card;
}

void CardMaker::addMap(PrintedCard &printed, const CardPage &page, const LegSheet &sheet, const CourseMap &course,
                       MapScale scale, const CourseProfile *profile) const {
  const double apart = roundDown(scale.toGround(40)); // metres
  CoursePicture picture;
  picture.map = *page.map;
  picture.legs = course.legs(*page.map, scale);
  picture.north = course.north();
  if (picture.north && picture.north->magnetic)
    picture.lines_apart = scale.toPaper(apart);
  card_words::nameEnds(picture, sheet);
  DrawnCourse drawn = drawCourse(picture, mType, mFonts);
  printed.drawing.add(drawn.drawing);
  printed.map = PrintedMap{*page.map, course.extent(*page.map, scale), course.crs(), std::move(drawn.labels),
                           std::move(drawn.lines)};
  MapStrip strip = card_words::strip(sheet, scale, picture.north, apart);
  strip.area = *page.strip;
  printed.drawing.add(drawMapStrip(strip, mType, mFonts));
  if (profile && page.profile)
    printed.drawing.add(drawProfile(*profile, *page.profile, card_words::profile(), mType, mFonts));
}

std::vector<PrintedSheet> CardMaker::onPaper(const std::vector<PrintedCard> &pages) const {
  std::vector<PrintedSheet> sheets;
  if (!mSetting.sheet) {
    for (const PrintedCard &page : pages)
      sheets.push_back({mSetting.paper, {{{0, 0}, mSetting.paper, page}}, {}});
    return sheets;
  }
  const SheetPlan plan = planSheet(*mSetting.sheet, mSetting.paper, mSetting.per_sheet);
  for (size_t i = 0; i < pages.size(); ++i) {
    const size_t at = i % plan.cards.size();
    if (at == 0)
      sheets.push_back({plan.sheet, {}, cuttingLines(plan)});
    sheets.back().cards.push_back({{plan.cards[at].left, plan.cards[at].top}, mSetting.paper, pages[i]});
  }
  return sheets;
}

} // namespace brushline
