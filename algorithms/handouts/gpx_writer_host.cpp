// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/gpx_writer_host.h"

#include <QIODevice>

#include <algorithm>
#include <cmath>
#include <string>

namespace brushline {

namespace {
constexpr int blockSize = 1 << 16; // signs
const QString newLine = QStringLiteral("\n");

QString number(const std::string &digits) { return QString::fromLatin1(digits.data(), int(digits.size())); }
} // namespace

GpxWriter::GpxWriter(QIODevice &device) : mDevice(device), mXml(&mBlock) { mBlock.reserve(2 * blockSize); }

void GpxWriter::flush() {
  const QByteArray bytes = mBlock.toUtf8();
  mFailed = mFailed || mDevice.write(bytes) != bytes.size();
  mBlock.resize(0); // keeps its memory
}

void GpxWriter::closeTag() { mXml.writeCharacters(QString()); }

template <typename Text> void GpxWriter::unescaped(const QString &element, const Text &value) {
  mBlock += QLatin1Char('<');
  mBlock += element;
  mBlock += QLatin1Char('>');
  mBlock += value;
  mBlock += QLatin1String("</");
  mBlock += element;
  mBlock += QLatin1Char('>');
}

void GpxWriter::text(const QString &element, const QString &value) {
  const auto special = [](QChar c) { return c == QLatin1Char('<') || c == QLatin1Char('>') || c == QLatin1Char('&'); };
  if (value.isEmpty())
    return;
  if (std::none_of(value.begin(), value.end(), special))
    unescaped(element, value);
  else
    mXml.writeTextElement(element, value);
}

void GpxWriter::begin(const QString &creator, const GpxLabel &file, const QString &time, const GpxBounds &bounds) {
  // The writer leaves the encoding out for a string.
  mBlock += QLatin1String("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
  mXml.writeStartElement(QStringLiteral("gpx"));
  const QString space = QStringLiteral("http://www.topografix.com/GPX/1/1");
  mXml.writeAttribute(QStringLiteral("xmlns"), space);
  mXml.writeAttribute(QStringLiteral("xmlns:leg"), QStringLiteral("urn:brushline:legs:1"));
  mXml.writeAttribute(QStringLiteral("xmlns:xsi"), QStringLiteral("http://www.w3.org/2001/XMLSchema-instance"));
  mXml.writeAttribute(QStringLiteral("xsi:schemaLocation"),
                      space + QLatin1Char(' ') + space + QLatin1String("/gpx.xsd"));
  mXml.writeAttribute(QStringLiteral("version"), QStringLiteral("1.1"));
  mXml.writeAttribute(QStringLiteral("creator"), creator);
  mXml.writeCharacters(newLine);
  mXml.writeStartElement(QStringLiteral("metadata"));
  closeTag();
  text(QStringLiteral("name"), file.name);
  text(QStringLiteral("desc"), file.description);
  text(QStringLiteral("time"), time);
  if (!bounds.empty()) {
    mXml.writeEmptyElement(QStringLiteral("bounds"));
    mXml.writeAttribute(QStringLiteral("minlat"), number(bounds.south()));
    mXml.writeAttribute(QStringLiteral("minlon"), number(bounds.west()));
    mXml.writeAttribute(QStringLiteral("maxlat"), number(bounds.north()));
    mXml.writeAttribute(QStringLiteral("maxlon"), number(bounds.east()));
  }
  mXml.writeEndElement();
}

void GpxWriter::label(const GpxLabel &label) {
  static const QString name = QStringLiteral("name"), comment = QStringLiteral("cmt"),
                       description = QStringLiteral("desc");
  text(name, label.name);
  text(comment, label.comment);
  text(description, label.description);
}

void GpxWriter::beginPoint(const QString &element, const Place &place, std::optional<double> declination,
                           const GpxLabel &about) {
  static const QString latitude = QStringLiteral("lat"), longitude = QStringLiteral("lon"),
                       variation = QStringLiteral("magvar"), type = QStringLiteral("type");
  mXml.writeCharacters(newLine);
  mXml.writeStartElement(element);
  mXml.writeAttribute(latitude, number(gpxLatitude(place.latitude)));
  mXml.writeAttribute(longitude, number(gpxLongitude(place.longitude)));
  closeTag();
  if (declination)
    digits(variation, gpxMagneticVariation({Angle::degrees(*declination)}));
  label(about);
  text(type, about.type);
}

void GpxWriter::beginWaypoint(const Place &place, std::optional<double> declination, const GpxLabel &label) {
  beginPoint(QStringLiteral("wpt"), place, declination, label);
}

void GpxWriter::beginRoutePoint(const Place &place, std::optional<double> declination, const GpxLabel &label) {
  beginPoint(QStringLiteral("rtept"), place, declination, label);
}

void GpxWriter::beginRoute(const GpxLabel &about, long count) {
  mXml.writeCharacters(newLine);
  mXml.writeStartElement(QStringLiteral("rte"));
  closeTag();
  label(about);
  text(QStringLiteral("number"), QString::number(count));
  text(QStringLiteral("type"), about.type);
}

void GpxWriter::beginExtensions() {
  mXml.writeStartElement(QStringLiteral("extensions"));
  closeTag();
}

void GpxWriter::digits(const QString &element, const std::string &value) {
  unescaped(element, QLatin1String(value.data(), int(value.size())));
}

void GpxWriter::own(const QString &element, const QString &value) { text(element, value); }

void GpxWriter::own(const QString &element, std::optional<double> value) {
  if (value && std::isfinite(*value))
    digits(element, shortestNumber(*value));
}

void GpxWriter::own(const QString &element, std::optional<long> value) {
  if (value)
    digits(element, std::to_string(*value));
}

void GpxWriter::end() {
  mXml.writeEndElement();
  if (mBlock.size() > blockSize)
    flush();
}

bool GpxWriter::finish() {
  mXml.writeCharacters(newLine);
  mXml.writeEndElement();
  mXml.writeCharacters(newLine);
  flush();
  return !mFailed;
}

} // namespace brushline
