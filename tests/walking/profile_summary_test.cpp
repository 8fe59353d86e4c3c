// SPDX-License-Identifier: GPL-2.0-or-later
#include "walking/profile_summary.h"

#include "support/near.h"
#include "support/random.h"

#include <limits>

using namespace brushline;
using namespace brushline::test;

class ProfileSummaryTest : public QObject {
  Q_OBJECT
private slots:
  void byHand();
  void flat();
  void withoutData();
  void onlyAPoint();
  void reversed();
  void properties();
};

namespace {
constexpr double missing = std::numeric_limits<double>::quiet_NaN();
Profile profileOf(double step, std::vector<double> heights) { return {Length::metres(step), std::move(heights)}; }
} // namespace

// Computed by hand: 3, 4, 5 and 5, 12, 13 are right triangles.
void ProfileSummaryTest::byHand() {
  const ProfileSummary up = summarize(profileOf(4, {100, 103, 106}));
  QVERIFY(up.slope_length.metres() == 10 && up.climb.metres() == 6 && up.drop.metres() == 0);
  QVERIFY(up.without_data.metres() == 0);
  const ProfileSummary hill = summarize(profileOf(12, {0, 5, 0, 0, -5}));
  QVERIFY(hill.slope_length.metres() == 13 * 3 + 12 && hill.climb.metres() == 5 && hill.drop.metres() == 10);
}

void ProfileSummaryTest::flat() {
  const ProfileSummary flat = summarize(profileOf(10, {7, 7, 7, 7}));
  QVERIFY(flat.slope_length.metres() == 30 && flat.climb.metres() == 0 && flat.drop.metres() == 0);
}

// Steps with an end that has no height count there and nowhere else.
void ProfileSummaryTest::withoutData() {
  const ProfileSummary gap = summarize(profileOf(4, {0, 3, missing, 9, 6}));
  QVERIFY(gap.without_data.metres() == 8);
  QVERIFY(gap.slope_length.metres() == 10 && gap.climb.metres() == 3 && gap.drop.metres() == 3);
  const ProfileSummary nothing = summarize(profileOf(4, {missing, missing, missing}));
  QVERIFY(nothing.without_data.metres() == 8 && nothing.slope_length.metres() == 0);
  QVERIFY(nothing.climb.metres() == 0 && nothing.drop.metres() == 0);
}

void ProfileSummaryTest::onlyAPoint() {
  const ProfileSummary point = summarize(profileOf(0, {100}));
  QVERIFY(point.slope_length.metres() == 0 && point.climb.metres() == 0 && point.drop.metres() == 0);
  const ProfileSummary empty = summarize(Profile{});
  QVERIFY(empty.slope_length.metres() == 0 && empty.without_data.metres() == 0);
}

void ProfileSummaryTest::reversed() {
  const Profile back = brushline::reversed(profileOf(4, {0, 3, 9}));
  QVERIFY(back.step.metres() == 4);
  QVERIFY((back.heights == std::vector<double>{9, 3, 0}));
}

// What is climbed one way is dropped the other; the difference is that of the ends.
void ProfileSummaryTest::properties() {
  Random random(71);
  for (int i = 0; i < 500; ++i) {
    std::vector<double> heights;
    for (int k = 0; k < 40; ++k)
      heights.push_back(random.between(0, 100));
    const Profile profile = profileOf(random.between(1, 30), heights);
    const ProfileSummary there = summarize(profile), back = summarize(brushline::reversed(profile));
    const std::string where = std::to_string(i);
    VERIFY_NEAR(there.climb.metres(), back.drop.metres(), 1e-9, where);
    VERIFY_NEAR(there.drop.metres(), back.climb.metres(), 1e-9, where);
    VERIFY_NEAR(there.slope_length.metres(), back.slope_length.metres(), 1e-9, where);
    VERIFY_NEAR(there.climb.metres() - there.drop.metres(), heights.back() - heights.front(), 1e-9, where);
    VERIFY_AT(there.slope_length.metres() >= profile.step.metres() * 39 - 1e-9, where);
    VERIFY_AT(there.slope_length.metres() <= profile.step.metres() * 39 + there.climb.metres() + there.drop.metres(),
              where);
  }
}

QTEST_APPLESS_MAIN(ProfileSummaryTest)
#include "profile_summary_test.moc"
