// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/cautions_host.h"

namespace brushline {

// Distances from iron and current: US Army, FM 3-25.26, section 9-3, read in copies. The model's error: that of the
// World Magnetic Model, never under a quarter of a degree (magnetics/world_magnetic_model.h). The rest: common
// practice, no source.
QStringList Cautions::full() {
  return {
      tr("The bearings rest on a model of the Earth’s magnetic field, or on a declination read off a map, and are good "
         "for the day named. The model has an error of its own, a quarter of a degree or more, and knows nothing of "
         "iron "
         "in the ground or near the compass."),
      tr("Keep the compass away from iron and electric current: knives, phones, vehicles, wire fences, power lines. "
         "Stay "
         "at least 55 m from a high-tension line, 18 m from a vehicle and 10 m from a wire fence when you read it."),
      tr("Check every leg by its back bearing: from the leg’s end sight back to where you came from. The two numbers "
         "must "
         "differ by half a turn, that is 180 degrees, 3200 mils or 200 gon. If they do not, something draws the needle "
         "aside or you are not where you think: stop and find out before you go on."),
      tr("A leg is a straight line. It takes no heed of cliffs, water, bogs and thickets: look at the map and at the "
         "ground, and go round what is dangerous."),
      tr("Tell someone who stays behind where you go and when you will be back."),
      tr("Set a time at which you turn back, wherever you are then, and keep to it."),
      tr("Ask whose land it is, and whether there is hunting on it. Local rules and the word of a qualified leader "
         "stand "
         "above anything written here."),
      tr("Walk a new course yourself before children do."),
  };
}

QStringList Cautions::onCard() {
  return {tr("Knives, phones, cars, wire fences and power lines turn the needle: keep away from iron and current."),
          tr("At the end of a leg sight back. If its back number does not fit, stop and think."),
          tr("The line knows nothing of cliffs, water or thicket: look, go round, come back to it."),
          tr("Not sure? Stay together, and go back to the last place you knew."),
          tr("Local rules and the word of a qualified leader come first. Ask whose land it is.")};
}

} // namespace brushline
