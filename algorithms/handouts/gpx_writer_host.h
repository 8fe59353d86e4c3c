// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "handouts/gpx_values.h"
#include "quantities/place.h"

#include <QString>
#include <QXmlStreamWriter>

#include <optional>
#include <string>

class QIODevice;

namespace brushline {

//! What a list on a small screen shows of a point or a route, and what it shows when asked for more.
struct GpxLabel {
  QString name;
  QString comment;     //!< one line
  QString description; //!< sentences
  QString type;
};

/**
 * Writes GPX 1.1: the parts in the order that the schema wants them, whatever order they are given in a call. Texts
 * must be fit for XML.
 */
class GpxWriter {
public:
  //! \param device borrowed; written to in blocks.
  explicit GpxWriter(QIODevice &device);

  //! \param time as the schema has it, in UTC.
  void begin(const QString &creator, const GpxLabel &file, const QString &time, const GpxBounds &bounds);
  //! A waypoint or a route's point, open for extensions.
  void beginWaypoint(const Place &place, std::optional<double> declination, const GpxLabel &label);
  void beginRoutePoint(const Place &place, std::optional<double> declination, const GpxLabel &label);
  //! A route, open for extensions. Its points come behind them.
  void beginRoute(const GpxLabel &label, long number);

  //! Elements of our own, by the names of the legs' fields; what is not known or empty is left out.
  void beginExtensions();
  void own(const QString &element, const QString &value);
  void own(const QString &element, std::optional<double> value);
  void own(const QString &element, std::optional<long> value);

  //! Ends the innermost part.
  void end();
  //! Ends the file. \returns whether all could be written.
  bool finish();
  bool failed() const { return mFailed; }

private:
  void beginPoint(const QString &element, const Place &place, std::optional<double> declination, const GpxLabel &label);
  void label(const GpxLabel &label);
  void text(const QString &element, const QString &value);
  //! Closes a start tag that the XML writer holds open, so that what needs no escaping can go past it: it takes several
  //! times as long.
  void closeTag();
  template <typename Text> void unescaped(const QString &element, const Text &value);
  void digits(const QString &element, const std::string &value);
  void flush();

  QIODevice &mDevice;
  QString mBlock;
  QXmlStreamWriter mXml; // into mBlock: into a device it would convert sign by sign
  bool mFailed = false;
};

} // namespace brushline
