// SPDX-License-Identifier: GPL-2.0-or-later
// Distances: US Army FM 3-25.26, section 9-3, read in copies.
#include "planning/separation_table.h"

#include "support/check.h"

#include <stdexcept>

using namespace brushline;
using namespace brushline::test;

class SeparationTableTest : public QObject {
  Q_OBJECT

private slots:
  void published() {
    const SeparationTable &table = builtInSeparation();
    const std::pair<const char *, double> printed[] = {
        {"high_tension_line", 55}, {"vehicle", 18}, {"telephone_line", 10}, {"wire_fence", 10}, {"iron_tool", 0.5}};
    for (const auto &[kind, metres] : printed)
      VERIFY_CHECK(checkOf("distance of a compass from iron", kind, table.distance(kind)->metres(), metres, 0, "m",
                           "US Army FM 3-25.26, section 9-3; read second-hand, in copies"));
    QCOMPARE(table.most().metres(), 55.0);
    QVERIFY(!table.distance("submarine"));
  }
  void waysOfWriting() {
    for (const char *kind : {"high-tension line", "High Tension Line", " HIGH_TENSION-LINE "})
      QCOMPARE(builtInSeparation().distance(kind)->metres(), 55.0);
    QVERIFY(!builtInSeparation().distance(""));
  }
  void badRows() {
    const std::string head = "# remark\nkind,distance_m,note\n";
    QCOMPARE(parseSeparation(head + "mast,12.5,x\r\n").distance("mast")->metres(), 12.5);
    for (const char *row :
         {"mast,", "mast", "mast,far", "mast,1x", "mast,-1", "mast,nan", "mast,1e9", ",5", "a b,1\nA_B,2"})
      QVERIFY_EXCEPTION_THROWN(parseSeparation(head + row), std::invalid_argument);
    QVERIFY_EXCEPTION_THROWN(parseSeparation("mast,5\n"), std::invalid_argument);
  }
};

QTEST_APPLESS_MAIN(SeparationTableTest)
#include "separation_table_test.moc"
