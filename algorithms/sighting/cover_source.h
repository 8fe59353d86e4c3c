// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/bearing.h"
#include "quantities/length.h"
#include "quantities/place.h"
#include "shared/geodesic_chords.h"
#include "shared/tiled_grid.h"
#include "sighting/cover_map.h"

#include <functional>
#include <memory>
#include <optional>
#include <set>
#include <vector>

namespace brushline {

//! A piece of a line through the land, of one cover.
struct CoverPiece {
  double to_m;                      //!< its end from the line's start; it starts where the one before ends
  int cover;                        //!< a class of the table; -1: not known
  std::optional<double> extinction; //!< 1/m; none: not known
  bool overlapping;                 //!< more than one patch lies here; the first one counts
};

//! How much of the land beyond a line's end is looked at.
struct LookBeyond {
  Length unknown;   //!< past this only as long as the cover is known
  Length farthest;  //!< never more than this, unless unknown is
  double depth = 0; //!< no farther than to where the optical depth from the line's end comes to this
};

/**
 * All that is known of the cover, asked along lines on the WGS84 ellipsoid: patches, a raster of class codes where no
 * patch lies, and a raster of sight distances, which takes precedence where it has data. One thread at a time.
 */
class CoverSource {
public:
  //! \param extinctions of the table's classes, 1/m.
  explicit CoverSource(std::vector<double> extinctions) : mExtinctions(std::move(extinctions)) {}

  void setPatches(std::shared_ptr<const CoverMap> map, Project project);
  //! \param classOf the class of a code, or -1.
  void setCodes(TiledGrid codes, Project project, std::function<int(long)> classOf);
  //! Sight distances in metres; values of 0 and less count as no data.
  void setSights(TiledGrid sights, Project project);

  /**
   * The cover along the geodesic from a place.
   * \param length > 0.
   * \returns pieces in order, the last one ending at length; neighbours differ, and none but a lone one is shorter than
   * a thousandth of a millimetre.
   */
  std::vector<CoverPiece> along(const Place &from, TrueBearing departure, Length length) {
    return along(from, departure, length, {});
  }

  //! As above, and on beyond the length as far as asked for; the last piece ends where that is known to be enough.
  std::vector<CoverPiece> along(const Place &from, TrueBearing departure, Length length, const LookBeyond &beyond);

  //! Codes met that the table does not have.
  const std::set<long> &unknownCodes() const { return mUnknownCodes; }
  //! Whether sight distances of 0 or less were met.
  bool metBadSights() const { return mBadSights; }

private:
  struct Raster {
    TiledGrid grid;
    Project project;
  };
  struct Chords; // of one line, in the sources' own systems
  // Adds the pieces between two places of the line, in metres from its start.
  void addPieces(const Chords &chords, double from_m, double to_m, std::vector<CoverPiece> &pieces);

  std::vector<double> mExtinctions;
  std::shared_ptr<const CoverMap> mMap;
  Project mMapProject;
  std::optional<Raster> mCodes, mSights;
  std::function<int(long)> mClassOf;
  std::set<long> mUnknownCodes;
  bool mBadSights = false;
};

} // namespace brushline
