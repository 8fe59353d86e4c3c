// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace brushline {

//! A spot on paper in millimetres: x to the right, y downward.
struct Spot {
  double x, y;
};

//! An upright rectangle on paper, in millimetres.
struct Area {
  double left = 0, top = 0, width = 0, height = 0;

  double right() const { return left + width; }
  double bottom() const { return top + height; }
  Spot centre() const { return {left + width / 2, top + height / 2}; }
  bool holds(const Area &other) const {
    return other.left >= left - 1e-6 && other.top >= top - 1e-6 && other.right() <= right() + 1e-6 &&
           other.bottom() <= bottom() + 1e-6;
  }
  bool meets(const Area &other) const {
    return left < other.right() && other.left < right() && top < other.bottom() && other.top < bottom();
  }
  Area grown(double margin) const { return {left - margin, top - margin, width + 2 * margin, height + 2 * margin}; }
};

constexpr double pointsToMm = 25.4 / 72;

//! How text is set.
struct Face {
  double points;
  bool bold = false;

  double em() const { return points * pointsToMm; } //!< millimetres
};

enum class Align { Left, Centre, Right };

//! Text in one line.
struct DrawnText {
  Spot at;          //!< on the base line
  std::string text; //!< UTF-8
  Face face;
  Align align = Align::Left; //!< of the text at the spot
  double grey = 0;           //!< 0 black, 1 white
};

//! A line or an area with straight edges.
struct DrawnShape {
  std::vector<Spot> corners;
  bool closed = false;
  double width = 0;           //!< of its line, millimetres; 0: none
  double grey = 0;            //!< of its line
  std::optional<double> fill; //!< grey
  bool dashed = false;
};

struct DrawnDisc {
  Spot centre;
  double radius;
  double width = 0;
  double grey = 0;
  std::optional<double> fill;
};

//! From now on only what lies in the area is seen; without an area everything.
struct DrawnClip {
  std::optional<Area> area;
};

//! What is drawn, in this order.
struct Drawing {
  std::vector<std::variant<DrawnText, DrawnShape, DrawnDisc, DrawnClip>> parts;

  template <typename Part> void add(Part part) { parts.emplace_back(std::move(part)); }
  void line(Spot from, Spot to, double width, double grey = 0) { add(DrawnShape{{from, to}, false, width, grey, {}}); }
  void box(const Area &area, double width, std::optional<double> fill, double grey = 0) {
    add(DrawnShape{
        {{area.left, area.top}, {area.right(), area.top}, {area.right(), area.bottom()}, {area.left, area.bottom()}},
        true,
        width,
        grey,
        fill});
  }
  void add(const Drawing &other) { parts.insert(parts.end(), other.parts.begin(), other.parts.end()); }
};

//! Knows how wide text is and where it may be parted.
class TextRuler {
public:
  virtual ~TextRuler() = default;
  //! Millimetres.
  virtual double width(const std::string &text, const Face &face) const = 0;
  //! Where letters end: bytes from the text's start, the last one at its end.
  virtual std::vector<size_t> letterEnds(const std::string &text) const = 0;
  //! Where a line may end, likewise; blanks before belong to the line.
  virtual std::vector<size_t> lineEnds(const std::string &text) const = 0;
};

//! Smaller text nobody reads in the rain: points.
constexpr double smallestText = 6.5;

// Of a face's em: the height of capitals and figures, the distance of base lines, and how far letters hang below them.
constexpr double capHeight = 0.73, lineHeight = 1.22, hanging = 0.24;

} // namespace brushline
