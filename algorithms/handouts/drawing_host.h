// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "handouts/drawing.h"

#include <QFont>
#include <QHash>
#include <QString>
#include <qgslayoutitem.h>

namespace brushline {

//! The fonts of handouts: DejaVu Sans where it is installed, else what the system has without serifs.
class HandoutFonts final : public TextRuler {
  Q_DECLARE_TR_FUNCTIONS(brushline::HandoutFonts)

public:
  //! Throws QgsProcessingException when there is no font with figures and letters.
  HandoutFonts();

  QFont font(const Face &face) const; //!< in hundredths of a millimetre
  double width(const std::string &text, const Face &face) const override;
  std::vector<size_t> letterEnds(const std::string &text) const override;
  std::vector<size_t> lineEnds(const std::string &text) const override;

  //! A text as it can be printed: in one line, without control and direction signs; a letter that no font here has
  //! becomes a question mark. A name is cut where it is longer than the place for any.
  QString printable(const QString &name) const { return printable(name, longestName); }
  //! Warnings: whole, unless they are as long as no words are, but names in them. Then letters in the middle are
  //! lacking.
  QString printableWarnings(const QString &warnings) const;
  static bool isTooLongForWarnings(const QString &warnings) { return warnings.size() > longestWarnings; }
  //! How many texts had such letters, up to now.
  long unprintable() const { return mUnprintable; }

private:
  // More than the place for any name takes, so that it ends in an ellipsis there; measuring a text of a million letters
  // time and again takes minutes.
  static constexpr int longestName = 2000, longestWarnings = 20000;
  QString printable(const QString &text, int longest) const;

  QString mFamily;
  mutable QHash<uint, bool> mLetters;
  mutable long mUnprintable = 0;
};

//! A drawing in a layout, as large as its card.
class DrawingItem final : public QgsLayoutItem {
public:
  DrawingItem(QgsLayout *layout, Drawing drawing, const HandoutFonts &fonts);
  int type() const override;

protected:
  void draw(QgsLayoutItemRenderContext &context) override;

private:
  const Drawing mDrawing;
  const HandoutFonts &mFonts;
};

} // namespace brushline
