// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/card_plan.h"

#include "handouts/text_fit.h"

#include <algorithm>
#include <memory>

namespace brushline {

namespace {

double advance(const Face &face) { return face.em() * lineHeight; }
double baseLine(const Face &face) { return face.em() * 0.96; }

// Paragraphs below each other, measured and then drawn.
class Paragraphs {
public:
  Paragraphs(double width, const TextRuler &ruler) : mWidth(width), mRuler(ruler) {}

  void add(const std::string &text, const Face &face, int most, bool bullet = false) {
    const double indent = bullet ? face.em() * 0.9 : 0;
    const FittedText fitted = fitText(text, face, mWidth - indent, most, mRuler);
    mShortened |= fitted.shortened;
    for (size_t i = 0; i < fitted.lines.size(); ++i)
      mLines.push_back({fitted.lines[i], face, indent, bullet && i == 0});
  }
  double height() const {
    double height = 0;
    for (const Line &line : mLines)
      height += advance(line.face);
    return height;
  }
  size_t lines() const { return mLines.size(); }
  //! Lines from a first one that have room in a height; at least one.
  size_t fitting(size_t first, double height) const {
    size_t end = first;
    for (double used = 0; end < mLines.size(); ++end) {
      used += advance(mLines[end].face);
      if (end > first && used > height + 1e-9)
        break;
    }
    return end - first;
  }
  void draw(Drawing &drawing, Spot corner) const { draw(drawing, corner, 0, mLines.size()); }
  void draw(Drawing &drawing, Spot corner, size_t first, size_t count) const {
    double y = corner.y;
    for (size_t i = first; i < first + count; ++i) {
      const Line &line = mLines[i];
      if (line.bullet)
        drawing.box({corner.x + 0.1, y + line.face.em() * 0.5, line.face.em() * 0.32, line.face.em() * 0.32}, 0, 0.0);
      drawing.add(DrawnText{{corner.x + line.indent, y + baseLine(line.face)}, line.text, line.face});
      y += advance(line.face);
    }
  }
  bool shortened() const { return mShortened; }

private:
  struct Line {
    std::string text;
    Face face;
    double indent;
    bool bullet;
  };
  double mWidth;
  const TextRuler &mRuler;
  std::vector<Line> mLines;
  bool mShortened = false;
};

// A stretch of the table in a place.
struct Stretch {
  const CardTable *table;
  size_t first, count;
  Spot corner;
};

// What one page holds.
struct Page {
  std::vector<Stretch> legs;
  std::optional<Area> map_block; // note, map, strip, profile
  std::optional<Area> notes;
  size_t notes_first = 0, notes_count = allLines; // lines of them
  std::optional<Area> blanks;
  bool more = false;
};

class Planner {
public:
  //! \param enlarged the table's type, by a factor.
  Planner(const CardContents &contents, PaperSize paper, double enlarged, const TextRuler &ruler)
      : mContents(contents), mRuler(ruler), mType(CardType::forPaper(std::min(paper.width, paper.height))),
        mTableType(mType.enlarged(enlarged)),
        mPaper(paper), mInside{mType.margin, mType.margin, paper.width - 2 * mType.margin,
                               paper.height - 2 * mType.margin} {}

  CardPlan plan() {
    const double head = headHeight();
    mBelow = {mInside.left, mInside.top + head, mInside.width, mInside.height - head};
    if (mPaper.width > mPaper.height)
      planAcross();
    else
      planUpright();
    CardPlan plan;
    for (size_t i = 0; i < mPages.size(); ++i)
      plan.pages.push_back(drawn(i));
    plan.shortened = mShortened;
    plan.details_left_out = mLeftOut;
    plan.figures = mPages.front().legs.front().table->bigFace().points;
    return plan;
  }

private:
  // --- heights -------------------------------------------------------------------------------------------------------

  double pageMarkWidth() const {
    return mRuler.width(filledIn(filledIn(mContents.words.page, "%1", 88), "%2", 88), mType.name) + 2;
  }
  Paragraphs title() const {
    Paragraphs texts(mInside.width - pageMarkWidth(), mRuler);
    texts.add(mContents.title, mType.title, 2);
    if (!mContents.route.empty())
      texts.add(mContents.route, mType.name, 2);
    return texts;
  }
  // Who and when: side by side where both have room.
  bool whoBesideWhen() const {
    return mRuler.width(mContents.walker, mType.name) + mRuler.width(mContents.way, mType.body) + 4 <= mInside.width;
  }
  Paragraphs who() const {
    Paragraphs texts(mInside.width, mRuler);
    texts.add(mContents.walker, mType.name, 2);
    if (!whoBesideWhen() || mContents.walker.empty())
      texts.add(mContents.way, mType.body, 1);
    texts.add(mContents.totals, mType.body, 2);
    return texts;
  }
  double headHeight() const { return title().height() + who().height() + 2.2; }

  Paragraphs notes(double width) const {
    Paragraphs texts(width, mRuler);
    for (const std::string &note : mContents.notes)
      texts.add(note, mType.small, allLines);
    for (const std::string &caution : mContents.cautions)
      texts.add(caution, mType.small, allLines, true);
    return texts;
  }
  double notesHeight(double width) const { return notes(width).height() + gap; }
  bool blanksInOneLine(double width) const { return width >= 120; }
  double blanksHeight(double width) const { return (blanksInOneLine(width) ? 1 : 2) * mType.writing + 1; }
  double moreHeight() const { return advance(mType.body) + 0.5; }

  double stripHeight() const { return advance(mType.small) * 2 + 3.4; }
  double profileHeight() const { return mContents.profile ? (mType.margin < 6 ? 21 : mType.margin < 10 ? 24 : 32) : 0; }
  Paragraphs mapNote(double width) const {
    Paragraphs texts(width, mRuler);
    texts.add(mContents.map_note, {mType.body.points, true}, 4);
    return texts;
  }
  // The least that a map of some use takes, with what belongs to it.
  double mapBlockLeast(double width) const {
    const double high = std::max(40.0, std::clamp(mContents.course_aspect, 0.34, 0.55) * width);
    return std::max(high, mContents.map_height) + mapNote(width).height() + stripHeight() + profileHeight() + gap;
  }
  // Below that notes take the map's room from it, and have pages of their own instead.
  double mapBlockSmallest(double width) const {
    return 36 + mapNote(width).height() + stripHeight() + profileHeight() + gap;
  }

  // --- pages ---------------------------------------------------------------------------------------------------------

  void planUpright() {
    const CardTable &table = addTable(mInside.width);
    const size_t all = table.rows();
    const double width = mInside.width, blanks = blanksHeight(width), notes = notesHeight(width);
    if (mBelow.height >= table.height(0, all) + mapBlockLeast(width) + notes + blanks) {
      Page page;
      page.legs.push_back({&table, 0, all, {mBelow.left, mBelow.top}});
      double bottom = mBelow.bottom();
      page.blanks = Area{mBelow.left, bottom - blanks, width, blanks};
      page.notes = Area{mBelow.left, bottom - blanks - notes, width, notes};
      const double top = mBelow.top + table.height(0, all) + gap;
      page.map_block = Area{mBelow.left, top, width, page.notes->top - top};
      mPages.push_back(page);
      return;
    }
    double left = 0; // on the last page
    for (size_t first = 0; first < all;) {
      Page page;
      double room = mBelow.height - moreHeight();
      if (first == 0) {
        room -= blanks;
        page.blanks = Area{mBelow.left, mBelow.bottom() - moreHeight() - blanks, width, blanks};
      }
      const size_t count = table.fitting(first, room);
      page.legs.push_back({&table, first, count, {mBelow.left, mBelow.top}});
      page.more = true;
      left = room - table.height(first, count);
      first += count;
      mPages.push_back(page);
    }
    if (mPages.size() > 1 && left >= mapBlockLeast(width) + notes) {
      Page &last = mPages.back();
      const double bottom = mBelow.bottom();
      last.notes = Area{mBelow.left, bottom - notes, width, notes};
      const double top = bottom - left - moreHeight() + gap;
      last.map_block = Area{mBelow.left, top, width, last.notes->top - top};
      last.more = false;
      return;
    }
    Page page;
    double bottom = mBelow.bottom();
    if (left >= notes + gap) { // beside the last legs
      Page &last = mPages.back();
      const double end = last.blanks ? last.blanks->top : mBelow.bottom() - moreHeight();
      last.notes = Area{mBelow.left, end - notes, width, notes};
    } else if (mBelow.height - notes >= mapBlockSmallest(width)) {
      page.notes = Area{mBelow.left, bottom - notes, width, notes};
      bottom -= notes;
    } else {
      addPagesOfNotes();
    }
    page.map_block = Area{mBelow.left, mBelow.top, width, bottom - mBelow.top};
    mPages.push_back(page);
  }

  void planAcross() {
    constexpr double between = 5;
    const double leftWidth = (mInside.width - between) * 0.54, rightWidth = mInside.width - between - leftWidth;
    const double right = mInside.right() - rightWidth;
    const double blanks = blanksHeight(mInside.width);
    {
      const CardTable &table = addTable(leftWidth);
      // Texts are not shortened for want of width where a table of its own would have it.
      const bool tooNarrow = table.shortened() && !addTable(mInside.width).shortened();
      const size_t all = table.rows();
      const double room = mBelow.height - blanks, left = room - table.height(0, all);
      const bool notesLeft = left >= notesHeight(leftWidth) + gap;
      const double rightNotes = notesLeft ? 0 : notesHeight(rightWidth);
      if (!tooNarrow && left >= 0 && mContents.map_width <= rightWidth &&
          room >= mapBlockLeast(rightWidth) + rightNotes) {
        Page page;
        page.legs.push_back({&table, 0, all, {mBelow.left, mBelow.top}});
        page.blanks = Area{mBelow.left, mBelow.bottom() - blanks, mInside.width, blanks};
        const double bottom = page.blanks->top;
        if (notesLeft)
          page.notes = Area{mBelow.left, bottom - notesHeight(leftWidth), leftWidth, notesHeight(leftWidth)};
        else
          page.notes = Area{right, bottom - rightNotes, rightWidth, rightNotes};
        page.map_block = Area{right, mBelow.top, rightWidth, room - rightNotes};
        mPages.push_back(page);
        return;
      }
    }
    // Two tables beside each other on large paper only: elsewhere the figures would have to be small.
    const double half = (mInside.width - between) / 2;
    std::vector<double> lefts =
        half >= 120 ? std::vector<double>{mBelow.left, mBelow.left + half + between} : std::vector<double>{mBelow.left};
    if (lefts.size() > 1 && addTable(half).shortened() && !addTable(mInside.width).shortened())
      lefts.pop_back();
    const CardTable &table = addTable(lefts.size() > 1 ? half : mInside.width);
    const size_t all = table.rows();
    for (size_t first = 0; first < all;) {
      Page page;
      double room = mBelow.height - moreHeight();
      if (first == 0) {
        room -= blanks;
        page.blanks = Area{mBelow.left, mBelow.bottom() - moreHeight() - blanks, mInside.width, blanks};
      }
      for (const double x : lefts) {
        if (first >= all)
          break;
        const size_t count = table.fitting(first, room);
        page.legs.push_back({&table, first, count, {x, mBelow.top}});
        first += count;
      }
      page.more = true;
      mPages.push_back(page);
    }
    Page page;
    double notesWidth = std::max(44.0, mInside.width * 0.24);
    const double widest = std::max(notesWidth, mInside.width * 0.4);
    while (notesWidth < widest && notesHeight(notesWidth) > mBelow.height)
      notesWidth = std::min(notesWidth + 4, widest);
    double mapWidth = mInside.width;
    if (notesHeight(notesWidth) <= mBelow.height) {
      page.notes = Area{mBelow.right() - notesWidth, mBelow.top, notesWidth, mBelow.height};
      mapWidth -= between + notesWidth;
    } else {
      addPagesOfNotes();
    }
    page.map_block = Area{mBelow.left, mBelow.top, mapWidth, mBelow.height};
    mPages.push_back(page);
  }

  void addPagesOfNotes() {
    const Paragraphs texts = notes(mInside.width);
    for (size_t first = 0; first < texts.lines();) {
      Page page;
      page.notes = Area{mBelow.left, mBelow.top, mInside.width, mBelow.height - moreHeight()};
      page.notes_first = first;
      page.notes_count = texts.fitting(first, page.notes->height - gap);
      page.more = true;
      first += page.notes_count;
      mPages.push_back(page);
    }
  }

  const CardTable &addTable(double width) {
    // What is on a page with legs at the most: on the first the blanks, on others what says that it goes on.
    const double height = mBelow.height - moreHeight() - blanksHeight(mInside.width);
    mTables.push_back(std::make_unique<CardTable>(mContents.legs, mContents.words.table, mTableType,
                                                  TableRoom{width, height}, mRuler));
    return *mTables.back();
  }

  // --- drawing -------------------------------------------------------------------------------------------------------

  CardPage drawn(size_t number) {
    const Page &page = mPages[number];
    CardPage result;
    drawHead(result.drawing, number);
    for (const Stretch &stretch : page.legs) {
      result.drawing.add(stretch.table->draw(stretch.first, stretch.count, stretch.corner));
      result.leg_count += stretch.table->legs(stretch.first, stretch.count);
      mShortened |= stretch.table->shortened();
      mLeftOut = stretch.table->detailsLeftOut();
    }
    if (page.map_block)
      placeMap(result, *page.map_block);
    if (page.notes) {
      const Paragraphs texts = notes(page.notes->width);
      texts.draw(result.drawing, {page.notes->left, page.notes->top + gap / 2}, page.notes_first,
                 std::min(page.notes_count, texts.lines() - page.notes_first));
    }
    if (page.blanks)
      drawBlanks(result.drawing, *page.blanks);
    if (page.more)
      result.drawing.add(DrawnText{{mInside.right(), mInside.bottom() - mType.body.em() * hanging},
                                   filledIn(mContents.words.more, "%1", number + 2),
                                   {mType.body.points, true},
                                   Align::Right});
    return result;
  }

  void drawHead(Drawing &drawing, size_t number) {
    const Paragraphs top = title(), below = who();
    top.draw(drawing, {mInside.left, mInside.top});
    if (mPages.size() > 1)
      drawing.add(DrawnText{{mInside.right(), mInside.top + baseLine(mType.title)},
                            filledIn(filledIn(mContents.words.page, "%1", number + 1), "%2", mPages.size()),
                            mType.name,
                            Align::Right});
    const double y = mInside.top + top.height();
    below.draw(drawing, {mInside.left, y});
    if (whoBesideWhen() && !mContents.walker.empty())
      drawing.add(DrawnText{{mInside.right(), y + baseLine(mType.name)}, mContents.way, mType.body, Align::Right});
    drawing.line({mInside.left, y + below.height() + 0.6}, {mInside.right(), y + below.height() + 0.6}, 0.7);
    mShortened |= top.shortened() || below.shortened();
  }

  void placeMap(CardPage &result, const Area &block) {
    const Paragraphs note = mapNote(block.width);
    note.draw(result.drawing, {block.left, block.top});
    const double top = block.top + note.height() + (note.height() > 0 ? 0.6 : 0);
    const double profile = profileHeight(), strip = stripHeight();
    result.map = Area{block.left, top, block.width, block.bottom() - profile - strip - top};
    result.strip = Area{block.left, result.map->bottom(), block.width, strip};
    if (mContents.profile)
      result.profile = Area{block.left, result.strip->bottom(), block.width, profile};
  }

  // Lines to write on.
  void drawBlanks(Drawing &drawing, const Area &area) {
    const CardWords &words = mContents.words;
    const Face face{mType.body.points, true};
    double x = area.left, y = area.top + mType.writing;
    const auto blank = [&](const std::string &text, double end) {
      drawing.add(DrawnText{{x, y}, text, face});
      x += mRuler.width(text, face) + 1;
      drawing.line({x, y + 0.5}, {std::max(end, x + 5), y + 0.5}, 0.25);
      x = std::max(end, x + 5) + 2.5;
    };
    const bool one = blanksInOneLine(area.width);
    blank(words.turn_back, one ? area.left + area.width * 0.3 : area.right());
    if (!one) {
      x = area.left;
      y += mType.writing;
    }
    blank(words.told, area.right() - (one ? area.width * 0.27 : area.width * 0.36));
    blank(words.back_by, area.right());
  }

  static constexpr double gap = 2;

  const CardContents &mContents;
  const TextRuler &mRuler;
  const CardType mType, mTableType;
  const PaperSize mPaper;
  const Area mInside; // the margins
  Area mBelow;        // the head
  std::vector<std::unique_ptr<CardTable>> mTables;
  std::vector<Page> mPages;
  bool mShortened = false;
  size_t mLeftOut = 0;
};

} // namespace

CardPlan planCard(const CardContents &contents, PaperSize paper, const TextRuler &ruler) {
  const auto mapRoom = [](const CardPlan &plan) {
    double room = 0;
    for (const CardPage &page : plan.pages)
      if (page.map)
        room += page.map->width * page.map->height;
    return room;
  };
  CardPlan plan = Planner(contents, paper, 1, ruler).plan();
  if (plan.pages.size() == 1)
    return plan;
  // A little smaller, where that saves a page or keeps a last leg from taking the map's room.
  const double title = CardType::forPaper(std::min(paper.width, paper.height)).title.points;
  bool isSmaller = false;
  for (const double factor : {0.95, 0.9, 0.85}) {
    CardPlan smaller = Planner(contents, paper, factor, ruler).plan();
    const bool better = smaller.pages.size() < plan.pages.size() ||
                        (smaller.pages.size() == plan.pages.size() && mapRoom(smaller) > 1.15 * mapRoom(plan));
    if (better && smaller.figures > title && smaller.shortened <= plan.shortened) {
      plan = std::move(smaller);
      isSmaller = true;
    }
  }
  if (isSmaller)
    return plan;
  constexpr double largeEnough = 33; // points; from there on width is of more use to names
  for (const double factor : {1.4, 1.3, 1.2, 1.1}) {
    CardPlan larger = Planner(contents, paper, factor, ruler).plan();
    if (larger.figures <= largeEnough && larger.pages.size() == plan.pages.size() &&
        mapRoom(larger) >= mapRoom(plan) * 0.99 && larger.figures > plan.figures &&
        larger.shortened == plan.shortened && larger.details_left_out == 0)
      return larger;
  }
  return plan;
}

} // namespace brushline
