// SPDX-License-Identifier: GPL-2.0-or-later
// Legs of a route: bearings, dials, paces, minutes, marks and drift.
#include "fuzz_land.h"

#include <stdexcept>

using namespace brushline;

FUZZ(input) {
  fuzz::Land land(input, input.scaled(1, 5000));
  const CoverTable &table = builtInCover(CoverLegend::Own);
  std::vector<NamedPlace> named;
  for (const Place &place : land.line(0, 4))
    named.push_back({place, "x"});
  const NamedPlaces names(std::move(named), Length::metres(input.between(0, 100)));

  AnnotateSettings settings;
  settings.field = &fuzz::field(input);
  settings.compass = fuzz::compass(input);
  for (size_t count = 1 + input.upTo(2); count > 0; --count)
    settings.walkers.push_back(fuzz::walker(input));
  settings.direction = input.from({Direction::Out, Direction::Back, Direction::Both});
  settings.names = input.flag() ? &names : nullptr;
  settings.named_found = input.flag();
  settings.clear_sight = input.between(SpacingRule::clearLimits.least, SpacingRule::clearLimits.most);
  settings.spacing = fuzz::spacing(input);
  settings.spacing.least = Length::metres(std::max(5.0, settings.spacing.least.metres()));
  settings.spacing.most = Length::metres(std::max(5.0, settings.spacing.most.metres()));
  settings.cover_table = &table;
  settings.keep_marks = input.flag();

  LegAnnotator annotator(settings, input.flag() ? land.terrain(land.heights()) : nullptr,
                         input.flag() ? land.source(land.cover(int(table.classes().size())), table) : nullptr);
  const Route route = land.route(3, 5);
  try {
    int number = 1;
    bool back = settings.direction == Direction::Back;
    for (const AnnotatedLeg &leg : annotator.annotate(route, fuzz::Patience(300))) {
      if (leg.back != back) { // each way counts anew
        number = 1;
        back = true;
      }
      PROMISED(leg.back == back && leg.number == number++);
      fuzz::checkLeg(leg, settings.compass, settings.walkers.size());
      for (const LegForWalker &one : leg.by_walker)
        PROMISED(!settings.keep_marks || (!one.marks.empty() && one.marks.back().paces == one.paces));
    }
  } catch (const Cancelled &) {
  }
}
