// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/profile_drawing.h"

#include "handouts/text_fit.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <limits>

namespace brushline {

std::vector<CourseProfile::Point> thinned(const std::vector<CourseProfile::Point> &points, double width) {
  const size_t bins = size_t(std::max(1.0, width * 5));
  if (points.size() <= 2 * bins || !(points.back().along_m > 0))
    return points;
  const double length = points.back().along_m;
  std::vector<CourseProfile::Point> kept;
  for (size_t first = 0; first < points.size();) {
    const auto binOf = [&](size_t i) { return std::min(bins - 1, size_t(points[i].along_m / length * double(bins))); };
    const bool known = !std::isnan(points[first].height_m);
    size_t end = first, low = first, high = first;
    for (; end < points.size() && binOf(end) == binOf(first) && std::isnan(points[end].height_m) != known; ++end) {
      if (points[end].height_m < points[low].height_m)
        low = end;
      if (points[end].height_m > points[high].height_m)
        high = end;
    }
    // The ends too, so that a gap begins where it does.
    std::vector<size_t> some{first, low, high, end - 1};
    std::sort(some.begin(), some.end());
    some.erase(std::unique(some.begin(), some.end()), some.end());
    for (const size_t i : some)
      kept.push_back(points[i]);
    first = end;
  }
  return kept;
}

namespace {

// The largest round number of times that heights can be drawn larger than lengths.
double stretching(double most) {
  double best = 0;
  for (double power = 1e-6; power <= 10; power *= 10)
    for (const double step : {1.0, 1.5, 2.0, 3.0, 4.0, 5.0, 8.0})
      if (const double value = step * power; value <= most && value <= 20)
        best = std::max(best, value);
  return best;
}

std::string plainNumber(double value) {
  char text[32];
  std::snprintf(text, sizeof text, "%.4g", value);
  return text;
}

class ProfileDrawer {
public:
  ProfileDrawer(const CourseProfile &profile, const Area &area, const ProfileWords &words, const CardType &type,
                const TextRuler &ruler)
      : mProfile(profile), mWords(words), mType(type), mRuler(ruler), mArea(area) {
    for (const auto &point : profile.points)
      if (!std::isnan(point.height_m)) {
        mLow = std::min(mLow, point.height_m);
        mHigh = std::max(mHigh, point.height_m);
      }
    mKnown = mLow <= mHigh;
    const Face small = type.small;
    const double gutter =
        mKnown ? std::max(ruler.width(heightText(mLow), small), ruler.width(heightText(mHigh), small)) + 1.2 : 0;
    // A line of words, then the legs' numbers.
    mNumbers = area.top + small.em() * lineHeight + 0.3;
    const double head = mNumbers - area.top + Face{smallestText}.em() * capHeight + 2,
                 cover = small.em() * lineHeight + 0.6;
    mChart = {area.left + gutter, area.top + head, area.width - gutter - 1, area.height - head - cover - 1};
    if (mKnown && profile.length() > 0) {
      const double perMetre = mChart.width / profile.length();
      const double most = mHigh > mLow ? mChart.height * 0.86 / (perMetre * (mHigh - mLow)) : 20;
      mTimes = stretching(most);
      mUp = perMetre * mTimes;
    }
  }

  Drawing draw() {
    drawGround();
    drawLegs();
    drawCover();
    return mDrawing;
  }

private:
  std::string heightText(double height) const { return plainNumber(std::round(height)) + " " + mWords.metres; }
  double xOf(double along) const { return mChart.left + mChart.width * along / std::max(1e-9, mProfile.length()); }
  double yOf(double height) const { return mChart.bottom() - mChart.height * 0.07 - (height - mLow) * mUp; }

  void drawGround() {
    const Face small = mType.small;
    if (!mKnown) {
      mDrawing.add(DrawnText{
          {mChart.left + 1, mChart.centre().y}, inOneLine(mWords.no_heights, small, mChart.width - 1, mRuler), small});
      return;
    }
    std::vector<Spot> stretch;
    const auto finish = [&] {
      if (stretch.size() > 1) {
        std::vector<Spot> ground = stretch;
        ground.push_back({stretch.back().x, mChart.bottom()});
        ground.push_back({stretch.front().x, mChart.bottom()});
        mDrawing.add(DrawnShape{ground, true, 0, 0, 0.86});
        mDrawing.add(DrawnShape{stretch, false, 0.45, 0, {}});
      }
      stretch.clear();
    };
    for (const auto &point : thinned(mProfile.points, mChart.width)) {
      if (std::isnan(point.height_m))
        finish();
      else
        stretch.push_back({xOf(point.along_m), yOf(point.height_m)});
    }
    finish();
    const double low = yOf(mLow), high = yOf(mHigh), cap = small.em() * capHeight;
    mDrawing.add(DrawnText{{mChart.left - 1, low}, heightText(mLow), small, Align::Right});
    if (std::round(mHigh) > std::round(mLow))
      mDrawing.add(
          DrawnText{{mChart.left - 1, std::min(high + cap, low - 1.3 * cap)}, heightText(mHigh), small, Align::Right});
    mDrawing.line({mChart.left, mChart.top}, {mChart.left, mChart.bottom()}, 0.2);
  }

  // The ground's height at a mark: straight between the points beside it; none in a gap.
  std::optional<double> heightAt(double along) const {
    const auto &points = mProfile.points;
    const auto after = std::lower_bound(points.begin(), points.end(), along,
                                        [](const CourseProfile::Point &p, double at) { return p.along_m < at; });
    if (after == points.end() || std::isnan(after->height_m))
      return std::nullopt;
    if (after == points.begin() || after->along_m <= along)
      return after->height_m;
    const auto before = after - 1;
    const double share = (along - before->along_m) / (after->along_m - before->along_m);
    const double height = before->height_m + share * (after->height_m - before->height_m);
    return std::isnan(height) ? std::nullopt : std::optional(height);
  }

  void drawLegs() {
    const Face number{smallestText, true};
    const double tall = number.em() * capHeight + 1;
    double free = mArea.left;
    for (const ProfileLeg &leg : mProfile.legs) {
      const double x = xOf(leg.start_m);
      mDrawing.add(DrawnShape{{{x, mChart.top - 0.6}, {x, mChart.bottom()}}, false, 0.15, 0.4, {}, true});
      for (const double at : leg.marks)
        if (const auto height = mKnown ? heightAt(at) : std::nullopt)
          mDrawing.line({xOf(at), yOf(*height)}, {xOf(at), yOf(*height) - 1.3}, 0.2);
      const std::string text = std::to_string(leg.number) + leg.letter;
      const double wide = std::max(tall, mRuler.width(text, number) + 1);
      if (x < free)
        continue; // the one before stands there
      mDrawing.box({x, mNumbers, wide, tall}, 0, 0.0);
      mDrawing.add(DrawnText{{x + wide / 2, mNumbers + tall - 0.5}, text, number, Align::Centre, 1});
      free = x + wide + 0.6;
    }
    if (!mKnown || mTimes <= 0)
      return;
    std::string text = mTimes == 1 ? mWords.level : mWords.stretched;
    if (const size_t at = text.find("%1"); at != std::string::npos)
      text.replace(at, 2, plainNumber(mTimes));
    mDrawing.add(DrawnText{{mArea.left, mArea.top + mType.small.em() * 0.96}, text, mType.small});
  }

  // Legs of the same cover together, so that its name has room.
  void drawCover() {
    const Face small = mType.small;
    const double top = mChart.bottom(), bottom = mArea.bottom() - 0.6;
    mDrawing.line({mChart.left, top}, {mChart.right(), top}, 0.3);
    for (size_t first = 0; first < mProfile.legs.size();) {
      size_t end = first + 1;
      while (end < mProfile.legs.size() && mProfile.legs[end].cover == mProfile.legs[first].cover)
        ++end;
      const double left = xOf(mProfile.legs[first].start_m), right = xOf(mProfile.legs[end - 1].end_m);
      const std::string &cover = mProfile.legs[first].cover;
      mDrawing.line({left, top}, {left, bottom}, 0.3);
      if (!cover.empty() && right - left > 6)
        mDrawing.add(DrawnText{
            {left + 0.6, bottom - small.em() * hanging}, inOneLine(cover, small, right - left - 1, mRuler), small});
      first = end;
    }
    mDrawing.line({mChart.right(), top}, {mChart.right(), bottom}, 0.3);
  }

  const CourseProfile &mProfile;
  const ProfileWords &mWords;
  const CardType &mType;
  const TextRuler &mRuler;
  Area mArea, mChart;
  double mNumbers; // top of the legs' numbers
  double mLow = std::numeric_limits<double>::infinity(), mHigh = -mLow;
  bool mKnown = false;
  double mTimes = 0, mUp = 0; // millimetres for a metre of height
  Drawing mDrawing;
};

} // namespace

Drawing drawProfile(const CourseProfile &profile, const Area &area, const ProfileWords &words, const CardType &type,
                    const TextRuler &ruler) {
  return ProfileDrawer(profile, area, words, type, ruler).draw();
}

} // namespace brushline
