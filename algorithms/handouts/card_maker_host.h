// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "handouts/card_features_host.h"
#include "handouts/card_printer_host.h"
#include "handouts/course_map_host.h"
#include "handouts/leg_cards_parameters.h"
#include "shared/terrain.h"

#include <QStringList>

namespace brushline {

//! Puts the pages of a card together from a sheet of legs: words, plan, course on its map, profile. One thread.
class CardMaker {
public:
  //! \param features, terrain (may be null), fonts outlive it.
  CardMaker(const CardSetting &setting, const CardFeatures &features, Terrain *terrain,
            const QgsCoordinateReferenceSystem &layerCrs, const QgsCoordinateTransformContext &transforms,
            const HandoutFonts &fonts);

  struct Card {
    std::vector<PrintedCard> pages;
    QStringList warnings; //!< that the card says too
    bool shortened = false;
  };
  Card card(const LegSheet &sheet);

  //! Pages on their paper: each on its own, or side by side on sheets to be cut.
  std::vector<PrintedSheet> onPaper(const std::vector<PrintedCard> &pages) const;

private:
  LegSheet printable(LegSheet sheet) const;
  const CourseProfile &profileOf(const LegSheet &sheet);
  void addMap(PrintedCard &printed, const CardPage &page, const LegSheet &sheet, const CourseMap &course,
              MapScale scale, const CourseProfile *profile) const;
  //! The plan, the scale its map has, and a note (in the plan too) where that is not quite what was wanted.
  CardPlan planned(CardContents &contents, GroundSize size, MapScale &scale, QString &note) const;

  const CardSetting mSetting;
  const CardFeatures &mFeatures;
  Terrain *mTerrain;
  const QgsCoordinateReferenceSystem mLayerCrs;
  const QgsCoordinateTransformContext mTransforms;
  const HandoutFonts &mFonts;
  const CardType mType;
  // The course of the sheet before: the next walker's is mostly the same.
  std::vector<Place> mProfilePlaces;
  CourseProfile mProfile;
};

} // namespace brushline
