// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/drawing_host.h"

#include <QFontDatabase>
#include <QFontMetricsF>
#include <QPainter>
#include <QPen>
#include <QTextBoundaryFinder>
#include <qgsexception.h>
#include <qgslayoutitemregistry.h>
#include <qgsstringutils.h>

#include <algorithm>
#include <cmath>

namespace brushline {

namespace {

// Fonts in hundredths of a millimetre, so that whole numbers are fine enough.
constexpr double perMm = 100;

QColor greyColour(double grey) {
  const int level = int(std::lround(std::clamp(grey, 0.0, 1.0) * 255));
  return QColor(level, level, level);
}

std::vector<size_t> borders(const std::string &text, QTextBoundaryFinder::BoundaryType type) {
  const QString whole = QString::fromStdString(text);
  QTextBoundaryFinder finder(type, whole);
  std::vector<size_t> ends;
  size_t bytes = 0;
  int done = 0;
  for (int next = int(finder.toNextBoundary()); next > 0; next = int(finder.toNextBoundary())) {
    bytes += size_t(whole.midRef(done, next - done).toUtf8().size());
    done = next;
    ends.push_back(bytes);
  }
  return ends;
}

class Painting {
public:
  Painting(QPainter &painter, const HandoutFonts &fonts) : mPainter(painter), mFonts(fonts) {}

  void operator()(const DrawnText &text) {
    const QString words = QString::fromStdString(text.text);
    const double width = mFonts.width(text.text, text.face);
    const double left = text.at.x - (text.align == Align::Left ? 0 : text.align == Align::Right ? width : width / 2);
    mPainter.save();
    mPainter.scale(1 / perMm, 1 / perMm);
    mPainter.setFont(mFonts.font(text.face));
    mPainter.setPen(greyColour(text.grey));
    mPainter.drawText(QPointF(left * perMm, text.at.y * perMm), words);
    mPainter.restore();
  }
  void operator()(const DrawnShape &shape) {
    setPen(shape.width, shape.grey, shape.dashed);
    mPainter.setBrush(shape.fill ? QBrush(greyColour(*shape.fill)) : QBrush(Qt::NoBrush));
    QPolygonF corners;
    for (const Spot &spot : shape.corners)
      corners << QPointF(spot.x, spot.y);
    if (shape.closed)
      mPainter.drawPolygon(corners);
    else
      mPainter.drawPolyline(corners);
  }
  void operator()(const DrawnDisc &disc) {
    setPen(disc.width, disc.grey, false);
    mPainter.setBrush(disc.fill ? QBrush(greyColour(*disc.fill)) : QBrush(Qt::NoBrush));
    mPainter.drawEllipse(QPointF(disc.centre.x, disc.centre.y), disc.radius, disc.radius);
  }
  void operator()(const DrawnClip &clip) {
    if (clip.area)
      mPainter.setClipRect(QRectF(clip.area->left, clip.area->top, clip.area->width, clip.area->height));
    else
      mPainter.setClipping(false);
  }

private:
  void setPen(double width, double grey, bool dashed) {
    if (width <= 0) {
      mPainter.setPen(Qt::NoPen);
      return;
    }
    QPen pen(greyColour(grey), width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
    if (dashed)
      pen.setDashPattern({1.2 / width, 0.8 / width});
    mPainter.setPen(pen);
  }

  QPainter &mPainter;
  const HandoutFonts &mFonts;
};

} // namespace

HandoutFonts::HandoutFonts() {
  const QString wanted = QStringLiteral("DejaVu Sans");
  mFamily = QFontDatabase().families().contains(wanted)
                ? wanted
                : QFontDatabase::systemFont(QFontDatabase::GeneralFont).family();
  // Without any font the host still names some, which have no letters.
  const QFontMetricsF metrics(font(Face{10}));
  for (const char needed : {'0', '9', 'A', 'z'})
    if (!metrics.inFontUcs4(uint(needed)))
      throw QgsProcessingException(
          tr("No font is installed, so nothing can be printed but empty boxes. Install one, for "
             "example DejaVu Sans (on Debian and Ubuntu the package fonts-dejavu-core)."));
}

QFont HandoutFonts::font(const Face &face) const {
  QFont font(mFamily);
  font.setStyleHint(QFont::SansSerif);
  font.setPixelSize(std::max(1, int(std::lround(face.em() * perMm))));
  font.setBold(face.bold);
  font.setHintingPreference(QFont::PreferNoHinting);
  // A spacing that nobody sees keeps Qt from ligatures, which would be copied and searched as signs of their own.
  font.setLetterSpacing(QFont::AbsoluteSpacing, 0.05);
  return font;
}

double HandoutFonts::width(const std::string &text, const Face &face) const {
  return QFontMetricsF(font(face)).horizontalAdvance(QString::fromStdString(text)) / perMm;
}

std::vector<size_t> HandoutFonts::letterEnds(const std::string &text) const {
  return borders(text, QTextBoundaryFinder::Grapheme);
}

std::vector<size_t> HandoutFonts::lineEnds(const std::string &text) const {
  // After a blank always; Qt keeps numbers in a row together.
  std::vector<size_t> ends = borders(text, QTextBoundaryFinder::Line);
  for (size_t i = 1; i < text.size(); ++i)
    if (text[i - 1] == ' ' && text[i] != ' ')
      ends.push_back(i);
  std::sort(ends.begin(), ends.end());
  ends.erase(std::unique(ends.begin(), ends.end()), ends.end());
  return ends;
}

QString HandoutFonts::printableWarnings(const QString &warnings) const {
  return printable(QgsStringUtils::truncateMiddleOfString(warnings, longestWarnings), longestWarnings);
}

QString HandoutFonts::printable(const QString &text, int longest) const {
  const QFontMetricsF metrics(font(Face{10}));
  QString kept;
  bool lacking = false;
  for (const uint code : text.left(longest).toUcs4()) {
    const QChar::Category category = QChar::category(code);
    if (code == '\t' || code == '\n' || code == '\r' || category == QChar::Separator_Line ||
        category == QChar::Separator_Paragraph) {
      kept += QLatin1Char(' ');
      continue;
    }
    const bool joiner = code == 0x200C || code == 0x200D || (code >= 0xFE00 && code <= 0xFE0F);
    if (category == QChar::Other_Control || category == QChar::Other_Surrogate ||
        (category == QChar::Other_Format && !joiner))
      continue; // direction signs, among others
    auto letter = mLetters.find(code);
    if (letter == mLetters.end())
      letter = mLetters.insert(code, joiner || metrics.inFontUcs4(code));
    lacking |= !*letter;
    kept += *letter ? QString::fromUcs4(&code, 1) : QStringLiteral("?");
  }
  mUnprintable += lacking;
  return kept.simplified();
}

DrawingItem::DrawingItem(QgsLayout *layout, Drawing drawing, const HandoutFonts &fonts)
    : QgsLayoutItem(layout), mDrawing(std::move(drawing)), mFonts(fonts) {
  setBackgroundEnabled(false);
}

int DrawingItem::type() const { return QgsLayoutItemRegistry::PluginItem + 4711; }

void DrawingItem::draw(QgsLayoutItemRenderContext &context) {
  QPainter *painter = context.renderContext().painter();
  painter->save();
  const double scale = context.renderContext().scaleFactor(); // dots to the millimetre
  painter->scale(scale, scale);
  Painting painting(*painter, mFonts);
  for (const auto &part : mDrawing.parts)
    std::visit(painting, part);
  painter->restore();
}

} // namespace brushline
