// SPDX-License-Identifier: GPL-2.0-or-later
// What names in messages could do to a log.
#include "shared/clean_feedback_host.h"

#include <QtTest>

using namespace brushline;

class CleanFeedbackTest : public QObject {
  Q_OBJECT
private slots:
  void plainMessagesStay() {
    const QString message = QString::fromUtf8("Route “Ørret שביל 🦊”, leg 2: 3 m, <b> & %1");
    QCOMPARE(CleanFeedback::text(message), message);
  }
  void nothingThatActsIsLeft() {
    QCOMPARE(CleanFeedback::text(QString::fromUtf8("a\x1b[31mb\nERROR:\tc\x07 \u202Ed\u2066e\u0085f\u2028g")),
             QStringLiteral("a [31mb ERROR: c  de f g"));
  }
  void theEndOfALongMessageIsKept() {
    const QString clean =
        CleanFeedback::text(QStringLiteral("Route “") + QString(1000000, 'x') + QStringLiteral("”: move it."));
    QVERIFY(clean.size() < 11000);
    QVERIFY(clean.startsWith(QStringLiteral("Route “x")));
    QVERIFY(clean.endsWith(QStringLiteral("x”: move it.")));
  }
  void progressAndMessagesGoThrough() {
    QgsProcessingFeedback host(false);
    CleanFeedback clean(&host);
    clean.setProgress(40);
    QCOMPARE(host.progress(), 40.0);
    clean.pushInfo(QStringLiteral("one\x1btwo"));
    clean.pushWarning(QStringLiteral("three\nfour"));
    clean.reportError(QStringLiteral("five\u202Esix"), false);
    const QString log = host.textLog();
    QVERIFY2(log.contains(QLatin1String("one two")) && log.contains(QLatin1String("three four")) &&
                 log.contains(QLatin1String("fivesix")),
             qPrintable(log));
  }
  void cancellingIsHeard() {
    QgsProcessingFeedback host(false), stopped(false);
    CleanFeedback clean(&host);
    QVERIFY(!clean.isCanceled());
    host.cancel();
    QVERIFY(clean.isCanceled());
    stopped.cancel();
    QVERIFY(CleanFeedback(&stopped).isCanceled());
  }
};

QTEST_GUILESS_MAIN(CleanFeedbackTest)
#include "clean_feedback_test.moc"
