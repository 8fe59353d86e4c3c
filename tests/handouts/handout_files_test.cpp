// SPDX-License-Identifier: GPL-2.0-or-later
// Check values: regression only, but for the names that Windows keeps for itself: Microsoft, "Naming Files, Paths, and
// Namespaces" (from memory).
#include "handouts/handout_files_host.h"
#include "support/full_disk.h"
#include "support/host_fixture.h"
#include "support/idle_algorithm.h"

#include <QTextCodec>
#include <qgsexception.h>

using namespace brushline;

namespace {

// What a run writes its files with.
struct Desk {
  explicit Desk(const QString &folder, bool replace = true, const QVariant &input = QVariant())
      : parameters{{"FOLDER", folder}, {"REPLACE", replace}, {"INPUT", input}}, reader(algorithm, parameters, context),
        files(reader) {}
  // FOLDER, REPLACE and an input.
  test::IdleAlgorithm algorithm{
      Definitions{new QgsProcessingParameterFeatureSource(QStringLiteral("INPUT"), QStringLiteral("Input"),
                                                          QList<int>{host::anyTable}, QVariant(), true)} +
      HandoutFiles::folderDefinitions()};
  QVariantMap parameters;
  QgsProcessingContext context;
  ParameterReader reader;
  HandoutFiles files;
};

QByteArray contentOf(const QString &path) {
  QFile file(path);
  return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray("(not there)");
}

void put(const QString &path, const QByteArray &content) {
  QFile file(path);
  if (!file.open(QIODevice::WriteOnly) || file.write(content) != content.size())
    qFatal("cannot write %s", qPrintable(path));
}

QStringList everythingIn(const QString &folder) {
  return QDir(folder).entryList(QDir::AllEntries | QDir::Hidden | QDir::System | QDir::NoDotAndDotDot, QDir::Name);
}

// What work says when it throws; empty when it does not.
QString refusalOf(const std::function<void()> &work) {
  try {
    work();
  } catch (const QgsProcessingException &error) {
    return error.what();
  }
  return QString();
}

} // namespace

#define VERIFY_REFUSED(refusal, ...)                                                                                   \
  do {                                                                                                                 \
    const QString verify_refusal = (refusal);                                                                          \
    QVERIFY(!verify_refusal.isEmpty());                                                                                \
    for (const QString &word : QStringList{__VA_ARGS__})                                                               \
      QVERIFY2(verify_refusal.contains(word), qPrintable(verify_refusal));                                             \
  } while (false)

class HandoutFilesTest : public QObject {
  Q_OBJECT

private slots:
  void namesBecomeFileNames_data() {
    QTest::addColumn<QString>("name");
    QTest::addColumn<QString>("file");
    QTest::newRow("plain") << "North loop"
                           << "North loop.pdf";
    QTest::newRow("letters of all kinds") << QString::fromUtf8("Ørret – 狐") << QString::fromUtf8("Ørret – 狐.pdf");
    QTest::newRow("path") << "../../etc/passwd"
                          << "_.._etc_passwd.pdf";
    QTest::newRow("path of Windows") << "C:\\autoexec"
                                     << "C__autoexec.pdf";
    QTest::newRow("absolute") << "/tmp/x"
                              << "_tmp_x.pdf";
    QTest::newRow("nothing") << ""
                             << "_.pdf";
    QTest::newRow("dots") << ".."
                          << "_.pdf";
    QTest::newRow("hidden") << ".profile"
                            << "profile.pdf";
    QTest::newRow("device") << "CON"
                            << "_CON.pdf";
    QTest::newRow("device with ending") << "aux.txt"
                                        << "_aux.txt.pdf";
    QTest::newRow("not a device") << "console"
                                  << "console.pdf";
    QTest::newRow("option") << "-rf"
                            << "_-rf.pdf";
    QTest::newRow("ends in a dot") << "loop. "
                                   << "loop.pdf";
    QTest::newRow("control") << QString::fromUtf8("a\x01\n\tb") << "a b.pdf";
    QTest::newRow("direction") << QString::fromUtf8("a\u202Efdp.exe") << "afdp.exe.pdf";
    QTest::newRow("signs") << "a*b?c\"d<e>f|g"
                           << "a_b_c_d_e_f_g.pdf";
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
    QCOMPARE(names.take({"50%2"}, pdf), QString("50%2.pdf"));
    QCOMPARE(names.take({"50%2"}, pdf), QString("50%2 (2).pdf"));
    QCOMPARE(names.take({"50%2"}, pdf), QString("50%2 (3).pdf"));
  }

  // Where file names hold Latin letters only, others must not all become the same sign behind our back.
  void namesWhereNotAllLettersCanBeWritten() {
    QTextCodec *before = QTextCodec::codecForLocale();
    QTextCodec::setCodecForLocale(QTextCodec::codecForName("ISO-8859-1"));
    FileNames names;
    const QString first = names.take({QString::fromUtf8("Ørret شمال")}, QStringLiteral("pdf"));
    const QString second = names.take({QString::fromUtf8("Ørret جنوب")}, QStringLiteral("pdf"));
    QTextCodec::setCodecForLocale(before);
    QCOMPARE(first, QString::fromUtf8("Ørret ____.pdf"));
    QCOMPARE(second, QString::fromUtf8("Ørret ____ (2).pdf"));
  }

  void writtenWhole() {
    const QTemporaryDir folder;
    Desk desk(folder.path());
    QCOMPARE(desk.files.folder(), folder.path());
    desk.files.write(folder.filePath("one.txt"), "one");
    auto file = desk.files.begin(folder.filePath("two.txt"));
    file->write("tw");
    QVERIFY(!QFileInfo::exists(folder.filePath("two.txt"))); // not before it is whole
    file->write("o");
    desk.files.commit(*file);
    QCOMPARE(contentOf(folder.filePath("one.txt")), QByteArray("one"));
    QCOMPARE(contentOf(folder.filePath("two.txt")), QByteArray("two"));
    QCOMPARE(desk.files.written(), 2L);
    QCOMPARE(everythingIn(folder.path()), (QStringList{"one.txt", "two.txt"}));
  }

  void abandonedFilesLeaveNothing() {
    const QTemporaryDir folder;
    put(folder.filePath("old.txt"), "old");
    {
      Desk desk(folder.path());
      for (const char *name : {"old.txt", "new.txt"}) {
        auto file = desk.files.begin(folder.filePath(name));
        file->write("half");
      }
      desk.files.stage(folder.filePath("old.txt"), "staged");
      desk.files.stage(folder.filePath("other.txt"), "staged");
    }
    QCOMPARE(everythingIn(folder.path()), QStringList{"old.txt"});
    QCOMPARE(contentOf(folder.filePath("old.txt")), QByteArray("old"));
  }

  void stagedFilesAppearTogether() {
    const QTemporaryDir folder;
    put(folder.filePath("old.txt"), "old");
    Desk desk(folder.path());
    desk.files.folder();
    desk.files.stage(folder.filePath("new.txt"), "new");
    desk.files.stage(folder.filePath("old.txt"), "replaced");
    QCOMPARE(contentOf(folder.filePath("old.txt")), QByteArray("old"));
    QVERIFY(!QFileInfo::exists(folder.filePath("new.txt")));
    desk.files.publish();
    QCOMPARE(contentOf(folder.filePath("old.txt")), QByteArray("replaced"));
    QCOMPARE(contentOf(folder.filePath("new.txt")), QByteArray("new"));
    QCOMPARE(everythingIn(folder.path()), (QStringList{"new.txt", "old.txt"}));
    QCOMPARE(desk.files.written(), 2L);
    test::Ear ear;
    desk.files.report(&ear);
    QVERIFY2(ear.infos.join(' ').contains("2 file(s) written, 1 of them"), qPrintable(ear.infos.join(' ')));
    // As everybody's files are, not only for the one who ran it.
    QCOMPARE(QFileInfo(folder.filePath("new.txt")).permissions(), QFileInfo(folder.filePath("old.txt")).permissions());
    put(folder.filePath("mine.txt"), "");
    QCOMPARE(QFileInfo(folder.filePath("new.txt")).permissions(), QFileInfo(folder.filePath("mine.txt")).permissions());
  }

  // One of them cannot have its name: those before it are taken back.
  void stagedFilesAppearTogetherOrNotAtAll() {
    const QTemporaryDir folder;
    put(folder.filePath("old.txt"), "old");
    {
      Desk desk(folder.path());
      desk.files.folder();
      desk.files.stage(folder.filePath("old.txt"), "replaced");
      desk.files.stage(folder.filePath("new.txt"), "new");
      desk.files.stage(folder.filePath("gone/last.txt"), "last"); // of a folder that is not there
      desk.files.stage(folder.filePath("after.txt"), "after");
      VERIFY_REFUSED(refusalOf([&] { desk.files.publish(); }), "FOLDER", "last.txt", "no file was written");
      QCOMPARE(desk.files.written(), 0L);
      QCOMPARE(contentOf(folder.filePath("old.txt")), QByteArray("old"));
      QVERIFY(!QFileInfo::exists(folder.filePath("new.txt")));
    }
    QCOMPARE(everythingIn(folder.path()), QStringList{"old.txt"});
    QCOMPARE(contentOf(folder.filePath("old.txt")), QByteArray("old"));
  }

  void replaceOff() {
    const QTemporaryDir folder;
    const QString path = folder.filePath("old.txt");
    put(path, "old");
    Desk desk(folder.path(), false);
    desk.files.folder();
    VERIFY_REFUSED(refusalOf([&] { desk.files.checkFree(path); }), "FOLDER", "old.txt", "REPLACE");
    VERIFY_REFUSED(refusalOf([&] { desk.files.begin(path); }), "FOLDER", "old.txt", "REPLACE");
    VERIFY_REFUSED(refusalOf([&] { desk.files.write(path, "new"); }), "FOLDER", "old.txt", "REPLACE");
    VERIFY_REFUSED(refusalOf([&] { desk.files.stage(path, "new"); }), "FOLDER", "old.txt", "REPLACE");
    QCOMPARE(contentOf(path), QByteArray("old"));
    QCOMPARE(refusalOf([&] { desk.files.checkFree(folder.filePath("new.txt")); }), QString());
    desk.files.write(folder.filePath("new.txt"), "new");
    QCOMPARE(contentOf(folder.filePath("new.txt")), QByteArray("new"));
  }

  void replaceOn() {
    const QTemporaryDir folder;
    put(folder.filePath("old.txt"), "old");
    Desk desk(folder.path());
    desk.files.write(folder.filePath("old.txt"), "new");
    QCOMPARE(contentOf(folder.filePath("old.txt")), QByteArray("new"));
  }

  void foldersAreMade() {
    const QTemporaryDir folder;
    const QString inner = folder.filePath("a/b/c");
    {
      Desk desk(inner);
      desk.files.folder();
      QVERIFY(QFileInfo(inner).isDir());
    }
    QVERIFY(!QFileInfo::exists(folder.filePath("a"))); // nothing came of it
    {
      Desk desk(inner);
      desk.files.folder();
      desk.files.write(desk.files.inFolder("x.txt"), "x");
    }
    QCOMPARE(contentOf(folder.filePath("a/b/c/x.txt")), QByteArray("x"));
    { // one that was there stays
      Desk desk(folder.filePath("a/b"));
      desk.files.folder();
    }
    QVERIFY(QFileInfo(inner).isDir());
  }

  void foldersThatCannotBeMade_data() {
    QTest::addColumn<QString>("place");
    QTest::newRow("none") << "";
    QTest::newRow("a file") << "file.txt";
    QTest::newRow("below a file") << "file.txt/below";
    QTest::newRow("of the system") << "/proc/brushline";
    QTest::newRow("without right") << "closed";
    QTest::newRow("name too long") << "made/" + QString(300, 'x');
  }
  void foldersThatCannotBeMade() {
    QFETCH(QString, place);
    const QTemporaryDir folder;
    put(folder.filePath("file.txt"), "file");
    QDir(folder.path()).mkdir("closed");
    QFile::setPermissions(folder.filePath("closed"), QFile::ReadOwner | QFile::ExeOwner);
    const QString path = place.isEmpty() || place.startsWith('/') ? place : folder.filePath(place);
    auto desk = std::make_unique<Desk>(path);
    if (place == "closed" && QFileInfo(path).isWritable()) { // for root nothing is closed
      desk->files.folder();
      return;
    }
    VERIFY_REFUSED(refusalOf([&] { desk->files.folder(); }), "FOLDER", "cannot be made", path);
    desk.reset();
    QCOMPARE(everythingIn(folder.path()), (QStringList{"closed", "file.txt"}));
    QCOMPARE(contentOf(folder.filePath("file.txt")), QByteArray("file"));
  }

  void folderThatTakesNoFiles() {
    Desk desk("/proc/self"); // there, and writable for root, but nothing can be made in it
    VERIFY_REFUSED(refusalOf([&] {
                     desk.files.folder();
                     desk.files.stage(desk.files.inFolder("x.txt"), "x");
                   }),
                   "FOLDER", "/proc/self");
    VERIFY_REFUSED(refusalOf([&] { desk.files.write(desk.files.inFolder("x.txt"), "x"); }), "FOLDER", "x.txt");
  }

  void pathIsAFolder() {
    const QTemporaryDir folder;
    QDir(folder.path()).mkdir("taken.txt");
    Desk desk(folder.path());
    VERIFY_REFUSED(refusalOf([&] { desk.files.checkFree(folder.filePath("taken.txt")); }), "FOLDER", "taken.txt",
                   "is a folder");
    VERIFY_REFUSED(refusalOf([&] { desk.files.write(folder.filePath("taken.txt"), "x"); }), "is a folder");
    VERIFY_REFUSED(refusalOf([&] { desk.files.stage(folder.filePath("taken.txt"), "x"); }), "is a folder");
  }

  void writeProtectedFilesStay() {
    const QTemporaryDir folder;
    put(folder.filePath("old.txt"), "old");
    QFile::setPermissions(folder.filePath("old.txt"), QFile::ReadOwner);
    if (QFileInfo(folder.filePath("old.txt")).isWritable())
      return; // for root nothing is write-protected
    Desk desk(folder.path());
    VERIFY_REFUSED(refusalOf([&] { desk.files.stage(folder.filePath("old.txt"), "new"); }), "FOLDER", "old.txt");
  }

  void inputsAreNeverWrittenOver_data() {
    QTest::addColumn<QString>("way");
    QTest::newRow("plainly") << "legs.csv";
    QTest::newRow("round about") << "inner/../legs.csv";
    QTest::newRow("by a link") << "link.csv";
  }
  void inputsAreNeverWrittenOver() {
    QFETCH(QString, way);
    const QTemporaryDir folder;
    QDir(folder.path()).mkdir("inner");
    put(folder.filePath("legs.csv"), "a,b\n1,2\n");
    QVERIFY(QFile::link(folder.filePath("legs.csv"), folder.filePath("link.csv")));
    QgsVectorLayer layer(folder.filePath("legs.csv"), "legs", "ogr");
    QVERIFY(layer.isValid());
    Desk desk(folder.path(), true, QVariant::fromValue(&layer));
    desk.files.folder();
    const QString path = folder.path() + '/' + way;
    VERIFY_REFUSED(refusalOf([&] { desk.files.checkFree(path); }), "FOLDER", "input");
    VERIFY_REFUSED(refusalOf([&] { desk.files.write(path, "x"); }), "FOLDER", "input");
    VERIFY_REFUSED(refusalOf([&] { desk.files.stage(path, "x"); }), "FOLDER", "input");
    QCOMPARE(contentOf(folder.filePath("legs.csv")), QByteArray("a,b\n1,2\n"));
    desk.files.write(folder.filePath("legs2.csv"), "x");
  }

#ifdef Q_OS_UNIX
  void fullDisk() {
    const QTemporaryDir folder;
    put(folder.filePath("old.txt"), "old");
    QString staged, written;
    {
      Desk desk(folder.path());
      const test::FullDisk full(1000);
      desk.files.stage(folder.filePath("small.txt"), QByteArray(900, 'x'));
      staged = refusalOf([&] { desk.files.stage(folder.filePath("old.txt"), QByteArray(100000, 'x')); });
      written = refusalOf([&] { desk.files.write(folder.filePath("old.txt"), QByteArray(100000, 'x')); });
    }
    VERIFY_REFUSED(staged, "FOLDER", "old.txt", "whole", "disk full");
    VERIFY_REFUSED(written, "FOLDER", "old.txt", "whole", "disk full");
    QCOMPARE(everythingIn(folder.path()), QStringList{"old.txt"});
    QCOMPARE(contentOf(folder.filePath("old.txt")), QByteArray("old"));
  }
#endif
};

BRUSHLINE_HOST_TEST_MAIN(HandoutFilesTest)
#include "handout_files_test.moc"
