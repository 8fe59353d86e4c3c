// SPDX-License-Identifier: GPL-2.0-or-later
// Check values: regression only, but for the names that Windows keeps for itself: Microsoft, "Naming Files, Paths, and
// Namespaces" (from memory).
#include "handouts/handout_files_host.h"
#include "support/host_fixture.h"

using namespace brushline;

class HandoutFilesTest : public QObject {
  Q_OBJECT

private slots:
  void namesBecomeFileNames_data() {
    QTest::addColumn<QString>("name");
    QTest::addColumn<QString>("file");
    QTest::newRow("plain") << "North loop" << "North loop.pdf";
    QTest::newRow("letters of all kinds") << QString::fromUtf8("Ørret – 狐") << QString::fromUtf8("Ørret – 狐.pdf");
    QTest::newRow("path") << "../../etc/passwd" << "_.._etc_passwd.pdf";
    QTest::newRow("path of Windows") << "C:\\autoexec" << "C__autoexec.pdf";
    QTest::newRow("absolute") << "/tmp/x" << "_tmp_x.pdf";
    QTest::newRow("nothing") << "" << "_.pdf";
    QTest::newRow("dots") << ".." << "_.pdf";
    QTest::newRow("hidden") << ".profile" << "profile.pdf";
    QTest::newRow("device") << "CON" << "_CON.pdf";
    QTest::newRow("device with ending") << "aux.txt" << "_aux.txt.pdf";
    QTest::newRow("not a device") << "console" << "console.pdf";
    QTest::newRow("option") << "-rf" << "_-rf.pdf";
    QTest::newRow("ends in a dot") << "loop. " << "loop.pdf";
    QTest::newRow("control") << QString::fromUtf8("a\x01\n\tb") << "a b.pdf";
    QTest::newRow("direction") << QString::fromUtf8("a\u202Efdp.exe") << "afdp.exe.pdf";
    QTest::newRow("signs") << "a*b?c\"d<e>f|g" << "a_b_c_d_e_f_g.pdf";
    QTest::newRow("half a pair") << QString(QChar(0xD83D)) << "_.pdf";
    QTest::newRow("picture") << QString::fromUtf8("🦊") << QString::fromUtf8("🦊.pdf");
  }
  void namesBecomeFileNames() {
    QFETCH(QString, name);
    QFETCH(QString, file);
    QCOMPARE(FileNames().take({name}, QStringLiteral("pdf")), file);
  }

  void longNamesAreCutBetweenLetters() {
    const QString family = QString::fromUtf8("👩‍👩‍👧"); // one letter of several signs
    QString name = FileNames().take({family.repeated(300)}, QStringLiteral("pdf"));
    QVERIFY(name.toUtf8().size() <= 124);
    QVERIFY(name.size() > 20);
    name.chop(4);
    // Joiners are direction and format signs, so they go; what is left are whole people.
    QCOMPARE(name.size() % 2, 0);
    QVERIFY(!name.contains(QChar::ReplacementCharacter));
    const QString two = FileNames().take({QString(300, 'a'), QString(300, 'b')}, QStringLiteral("pdf"));
    QVERIFY(two.contains(QLatin1String("a - b"))); // both are told
  }

  void namesAreDistinct() {
    FileNames names;
    const QString pdf = QStringLiteral("pdf");
    QCOMPARE(names.take({"Loop"}, pdf), QString("Loop.pdf"));
    QCOMPARE(names.take({"loop"}, pdf), QString("loop (2).pdf"));
    QCOMPARE(names.take({"LOOP"}, pdf), QString("LOOP (3).pdf"));
    QCOMPARE(names.take({"loop (2)"}, pdf), QString("loop (2) (2).pdf"));
    QCOMPARE(names.take({QString::fromUtf8("\u00e9")}, pdf), QString::fromUtf8("\u00e9.pdf"));
    QCOMPARE(names.take({QString::fromUtf8("e\u0301")}, pdf), QString::fromUtf8("\u00e9 (2).pdf"));
    QCOMPARE(names.take({"a/b"}, pdf), QString("a_b.pdf"));
    QCOMPARE(names.take({"a:b"}, pdf), QString("a_b (2).pdf"));
    QCOMPARE(names.take({"Loop", "Mia"}, pdf), QString("Loop - Mia.pdf"));
  }
};

BRUSHLINE_HOST_TEST_MAIN(HandoutFilesTest)
#include "handout_files_test.moc"
