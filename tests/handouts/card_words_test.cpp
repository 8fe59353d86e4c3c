// SPDX-License-Identifier: GPL-2.0-or-later
// What cards say of legs, before it is laid out. Check values: what the legs that go in say; bearings from magnetic and
// grid north by the definitions of declination and convergence (quantities/bearing.h); wordings are regression only.
#include "handouts/card_words_host.h"
#include "handouts/dial_norths_host.h"
#include "handouts/sheet_words_host.h"
#include "support/host_fixture.h"
#include "support/near.h"

using namespace brushline;
using namespace brushline::test;

namespace {

// The n-th leg of a course that runs east on the equator: declination 17 west, convergence 1.4.
SheetLeg leg(int number, double true_, double dial, double back) {
  SheetLeg leg;
  leg.number = number;
  leg.true_bearing = true_;
  leg.magnetic_bearing = true_ + 17;
  leg.grid_bearing = true_ - 1.4;
  leg.declination = -17;
  leg.convergence = 1.4;
  leg.date = QDate(2026, 11, 25);
  leg.dial = dial;
  leg.back_dial = back;
  leg.dial_text = QStringLiteral("%1°").arg(int(dial), 3, 10, QLatin1Char('0'));
  leg.length_m = 100;
  leg.paces = 130;
  leg.start.longitude = Angle::degrees(0.001 * (number - 1));
  leg.end.longitude = Angle::degrees(0.001 * number);
  return leg;
}

// Of legs that are set from magnetic north, in steps of 2 degrees.
LegSheet sheet(const std::vector<int> &numbers, const std::vector<int> &missing = {}) {
  LegSheet sheet;
  sheet.route = "Loop";
  for (const int number : numbers)
    sheet.legs.push_back(leg(number, 79.4, 96, 276));
  sheet.missing = missing;
  return sheet;
}

CardContents contents(const LegSheet &sheet) { return card_words::contents(sheet, QString(), {}, true); }

std::string notesOf(const LegSheet &sheet) {
  std::string all;
  for (const std::string &note : contents(sheet).notes)
    all += note + "\n";
  return all;
}

bool has(const std::string &text, const std::string &words) { return text.find(words) != std::string::npos; }

} // namespace

class CardWordsTest : public QObject {
  Q_OBJECT

private slots:
  void northThatIsCertain() {
    const LegSheet magnetic = sheet({1, 2});
    QVERIFY(northOf(magnetic) == North::Magnetic);
    QVERIFY(has(notesOf(magnetic), "in the dial numbers already"));
    VERIFY_NEAR(contents(magnetic).legs[0].picture->needle->degrees(), 0, 1e-9, "magnetic");
    LegSheet other = sheet({1});
    other.legs[0] = leg(1, 90.4, 90, 271);
    QVERIFY(northOf(other) == North::True);
    QVERIFY(has(notesOf(other), "count from true north"));
    // The needle points 17 degrees west of true north, and grid north lies 1.4 east of it.
    VERIFY_NEAR(contents(other).legs[0].picture->needle->degrees(), -17, 1e-9, "true");
    other.legs[0] = leg(1, 91.4, 90, 271);
    QVERIFY(northOf(other) == North::Grid);
    VERIFY_NEAR(contents(other).legs[0].picture->needle->degrees(), -18.4, 1e-9, "grid");
  }

  void northThatCannotBeTold() {
    std::vector<LegSheet> sheets(2);
    sheets[0].legs = {leg(1, 90, 90, 270)}; // due east, set from true north
    sheets[1].legs = {leg(1, 0, 0, 180), leg(2, 90, 90, 270), leg(3, 180, 180, 0), leg(4, 270, 270, 90)};
    for (const LegSheet &each : sheets) {
      QCOMPARE(northsOf(each), (std::vector<North>{North::Magnetic, North::True, North::Grid}));
      const CardContents card = contents(each);
      const std::string table = SheetWords::north(each).toStdString();
      QVERIFY(has(table, "Ask who made them"));
      QVERIFY(std::find(card.notes.begin(), card.notes.end(), table) != card.notes.end());
      for (const CardLeg &row : card.legs) {
        QVERIFY(row.picture.has_value());
        QVERIFY(!row.picture->needle);
      }
    }
  }

  void bearingsThatAreNotToldFollowFromOthers() {
    LegSheet some = sheet({1, 2});
    for (SheetLeg &each : some.legs)
      each.magnetic_bearing = each.grid_bearing = std::nullopt;
    QVERIFY(northOf(some) == North::Magnetic);
    for (SheetLeg &each : some.legs)
      each.convergence = std::nullopt; // nothing is known of grid north, so nothing speaks against it
    QCOMPARE(northsOf(some), (std::vector<North>{North::Magnetic, North::Grid}));
    QVERIFY(!northOf(some));
  }

  void dialsOfSeveralUnitsTellNothing() {
    LegSheet mixed = sheet({1, 2});
    mixed.legs[1].dial_text = "0096 mil";
    QVERIFY(northsOf(mixed).empty());
    QVERIFY(has(notesOf(mixed), "do not tell from which north"));
    LegSheet written = sheet({1, 2});
    written.legs[1].dial = std::nullopt; // but it has a text
    QVERIFY(northsOf(written).empty());
    LegSheet none = sheet({1, 2});
    for (SheetLeg &each : none.legs)
      each.dial_text.clear();
    QVERIFY(has(notesOf(none), "No compass can be used here."));
  }

  void endsAreCalledByWhatStandsThere() {
    const auto legs = contents(sheet({1, 2, 3})).legs;
    QCOMPARE(legs[0].from, std::string("from the start"));
    QCOMPARE(legs[0].to, std::string("to point 2"));
    QCOMPARE(legs[1].from, std::string("from point 2"));
    QCOMPARE(legs[2].to, std::string("to the end"));
    QVERIFY(legs[0].warnings.empty() && legs[2].warnings.empty());
  }

  void missingLegsAreTold() {
    LegSheet part = sheet({2, 4}, {1, 3, 5, 6, 7});
    part.legs[0].warnings = "Mind the bog.";
    const CardContents card = contents(part);
    QCOMPARE(card.notes[0], std::string("Legs 1, 3, 5–7 are not on this card. Do not walk on past them by these "
                                        "numbers."));
    QCOMPARE(card.legs[0].from, std::string("from point 2"));
    QCOMPARE(card.legs[0].to, std::string()); // leg 4 starts elsewhere
    QCOMPARE(card.legs[1].from, std::string("from point 4"));
    QCOMPARE(card.legs[1].to, std::string());
    QCOMPARE(card.legs[0].warnings,
             (std::vector<std::string>{"Mind the bog.",
                                       "Legs 1, 3 are not on this card. Do not walk on past them by these numbers."}));
    QCOMPARE(card.legs[1].warnings,
             (std::vector<std::string>{"Legs 5–7 are not on this card. Do not walk on past them by these numbers."}));
    CoursePicture course;
    card_words::nameEnds(course, part);
    QVERIFY(course.start.empty() && course.end.empty());
    card_words::nameEnds(course, sheet({1, 3}, {2}));
    QVERIFY(!course.start.empty() && !course.end.empty());
    QCOMPARE(contents(sheet({1, 3}, {2})).notes[0],
             std::string("Leg 2 is not on this card. Do not walk on past it by these numbers."));
  }

  void partsOfARouteAreNotJoined() {
    LegSheet parts = sheet({1, 2});
    parts.legs[1].start.latitude = Angle::degrees(0.001); // 111 m away
    QCOMPARE(contents(parts).legs[0].to, std::string());
    QCOMPARE(contents(parts).legs[1].from, std::string("from point 2"));
    parts.legs[0].to = "Old Stump";
    QCOMPARE(contents(parts).legs[0].to, std::string("to Old Stump"));
  }

  void daysThatDiffer() {
    LegSheet one = sheet({1, 2, 3});
    QCOMPARE(contents(one).way, std::string("way out, 2026-11-25"));
    QVERIFY(!has(notesOf(one), "same day"));
    one.legs[2].date = QDate(2027, 6, 1);
    QCOMPARE(contents(one).way, std::string("way out, several days"));
    QVERIFY(has(notesOf(one), "The legs are not all for the same day, but for 2026-11-25, 2027-06-01."));
    one.legs[2].date = QDate();
    QCOMPARE(contents(one).way, std::string("way out, several days"));
    QVERIFY(has(notesOf(one), "for 2026-11-25, a day that is not known."));
    for (SheetLeg &each : one.legs)
      each.date = QDate();
    QCOMPARE(contents(one).way, std::string("way out"));
  }
};

BRUSHLINE_HOST_TEST_MAIN(CardWordsTest)
#include "card_words_test.moc"
