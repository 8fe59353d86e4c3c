// SPDX-License-Identifier: GPL-2.0-or-later
// Every language has every word, and changes words only: ids, keys, field names and numbers stay as they are.
#include "support/comma_locale.h"
#include "support/host_fixture.h"

#include <QDomDocument>
#include <QFile>
#include <QLocale>
#include <QRegularExpression>
#include <QSet>
#include <QTranslator>
#include <qgsapplication.h>
#include <qgsprocessingprovider.h>
#include <qgsprocessingregistry.h>

#include <algorithm>

using namespace brushline::test;

namespace {

// The host in another language while it lives, and with decimal commas.
class Abroad {
public:
  explicit Abroad(const QString &language) {
    const bool loaded = mWords.load(QStringLiteral(":/brushline/translations/brushline_%1.qm").arg(language));
    if (!loaded)
      throw std::runtime_error("no words for " + language.toStdString());
    QCoreApplication::installTranslator(&mWords);
    QLocale::setDefault(QLocale(language));
  }
  ~Abroad() {
    QCoreApplication::removeTranslator(&mWords);
    QLocale::setDefault(mBefore);
  }

private:
  QTranslator mWords;
  CommaLocale mCommas;
  QLocale mBefore;
};

using Algorithm = std::unique_ptr<QgsProcessingAlgorithm>;

// New ones, with the words of the language of now.
std::vector<Algorithm> algorithms() {
  std::vector<Algorithm> all;
  for (const auto *each : QgsApplication::processingRegistry()->providerById(QStringLiteral("brushline"))->algorithms())
    all.emplace_back(each->create());
  return all;
}

QStringList placeHolders(const QString &text) {
  static const QRegularExpression holder(QStringLiteral("%L?\\d+|%n"));
  QSet<QString> found;
  auto matches = holder.globalMatch(text);
  while (matches.hasNext())
    found << matches.next().captured();
  QStringList sorted(found.begin(), found.end());
  sorted.sort();
  return sorted;
}

QString sample(const char *name) {
  return QStringLiteral("%1/sample-project/sample.gpkg|layername=%2")
      .arg(QStringLiteral(BRUSHLINE_SOURCE_DIR), QLatin1String(name));
}

void eachLanguage() {
  QTest::addColumn<QString>("language");
  QTest::newRow("German") << QStringLiteral("de");
  QTest::newRow("French") << QStringLiteral("fr");
}

} // namespace

class TranslationsTest : public QObject {
  Q_OBJECT
private slots:
  void nothingIsLeftOut_data() {
    eachLanguage();
    QTest::newRow("English plurals") << QStringLiteral("en");
  }
  void nothingIsLeftOut() {
    QFETCH(QString, language);
    QFile file(
        QStringLiteral("%1/plugin/translations/brushline_%2.ts").arg(QStringLiteral(BRUSHLINE_SOURCE_DIR), language));
    QVERIFY(file.open(QIODevice::ReadOnly));
    QDomDocument document;
    QVERIFY(document.setContent(&file));
    const QDomNodeList messages = document.elementsByTagName(QStringLiteral("message"));
    QVERIFY(messages.size() > (language == QLatin1String("en") ? 60 : 800));
    for (int i = 0; i < messages.size(); ++i) {
      const QDomElement message = messages.at(i).toElement();
      const QString source = message.firstChildElement(QStringLiteral("source")).text();
      const QDomElement translation = message.firstChildElement(QStringLiteral("translation"));
      QVERIFY2(translation.attribute(QStringLiteral("type")).isEmpty(), qPrintable(source));
      QStringList forms;
      for (QDomElement form = translation.firstChildElement(QStringLiteral("numerusform")); !form.isNull();
           form = form.nextSiblingElement(QStringLiteral("numerusform")))
        forms << form.text();
      if (forms.isEmpty())
        forms << translation.text();
      for (const QString &form : qAsConst(forms)) {
        QVERIFY2(!form.trimmed().isEmpty(), qPrintable(source));
        QVERIFY2(!form.contains(QLatin1String("(s)")), qPrintable(form));
        QVERIFY2(placeHolders(form) == placeHolders(source), qPrintable(source + QStringLiteral(" / ") + form));
      }
    }
  }

  void dialogs_data() { eachLanguage(); }
  void dialogs() {
    QFETCH(QString, language);
    const std::vector<Algorithm> english = algorithms();
    QStringList names, sentences; // asked for, not kept: they would be told in the language of then
    for (const Algorithm &each : english) {
      names << each->displayName();
      sentences << each->shortDescription();
    }
    const Abroad abroad(language);
    const std::vector<Algorithm> translated = algorithms();
    QCOMPARE(translated.size(), english.size());
    for (size_t i = 0; i < english.size(); ++i) {
      const QgsProcessingAlgorithm &here = *english[i], &there = *translated[i];
      QCOMPARE(there.id(), here.id());
      QCOMPARE(there.groupId(), here.groupId());
      QVERIFY2(there.displayName() != names.at(int(i)), qPrintable(here.id()));
      QVERIFY2(there.shortDescription() != sentences.at(int(i)), qPrintable(here.id()));
      const auto definitions = there.parameterDefinitions();
      QCOMPARE(definitions.size(), here.parameterDefinitions().size());
      QSet<QString> labels;
      int same = 0;
      for (int k = 0; k < definitions.size(); ++k) {
        const auto *before = here.parameterDefinitions().at(k), *after = definitions.at(k);
        QCOMPARE(after->name(), before->name());
        QCOMPARE(after->defaultValue(), before->defaultValue());
        QVERIFY2(!labels.contains(after->description()),
                 qPrintable(here.id() + QLatin1Char(' ') + after->description()));
        labels << after->description();
        same += after->description() == before->description() ? 1 : 0;
      }
      QVERIFY2(same <= 2, qPrintable(here.id())); // "Routes" is French too
      for (const auto *output : here.outputDefinitions())
        QVERIFY(there.outputDefinition(output->name()));
      QVERIFY2(QFile::exists(QStringLiteral(":/brushline/help/%1_%2.txt").arg(here.name(), language)),
               qPrintable(here.id()));
    }
  }

  // The same legs, field by field and bit by bit; only the words of warnings and the like may differ.
  void numbersStay_data() { eachLanguage(); }
  void numbersStay() {
    QFETCH(QString, language);
    const QVariantMap parameters{
        {"INPUT", sample("routes")},
        {"ROUTE_FIELD", "route"},
        {"POINTS", sample("points")},
        {"DEM", QStringLiteral("%1/sample-project/terrain.tif").arg(QStringLiteral(BRUSHLINE_SOURCE_DIR))},
        {"COVER", sample("cover")},
        {"COVER_CLASS", "class"},
        {"WALKERS", sample("walkers")},
        {"DATE", "2026-06-20"},
        {"DIAL_STEP", 0.5},
        {"OUTPUT", "TEMPORARY_OUTPUT"},
        {"MARKS", "TEMPORARY_OUTPUT"}};
    const QString id = QStringLiteral("brushline:annotatelegs");
    const Outcome here = run(id, parameters);
    QVERIFY2(here.ok, qPrintable(here.said()));
    const Abroad abroad(language);
    const Outcome there = run(id, parameters);
    QVERIFY2(there.ok, qPrintable(there.said()));
    for (const char *key : {"OUTPUT", "MARKS"}) {
      const Output &before = here.output(key), &after = there.output(key);
      QCOMPARE(after.fields.names(), before.fields.names());
      QCOMPARE(after.rows.size(), before.rows.size());
      for (size_t row = 0; row < before.rows.size(); ++row) {
        QVERIFY(after.rows[row].geometry.asWkb() == before.rows[row].geometry.asWkb());
        for (const QString &field : before.fields.names())
          if (field != QLatin1String("warnings"))
            QVERIFY2(after.rows[row].values.value(field) == before.rows[row].values.value(field), qPrintable(field));
      }
    }
  }

  // What is told does not hang on the words it is told in: steps of 1.7 m are nobody's.
  void warningsStay_data() { eachLanguage(); }
  void warningsStay() {
    QFETCH(QString, language);
    const Layer tries = table(QStringLiteral("tries"),
                              {field("who", FieldType::Text), field("m", FieldType::Real), field("n", FieldType::Real)},
                              {{"Ina", 100, 60}, {"Ina", 100, 61}, {"Ina", 100, 60}});
    const QVariantMap parameters{{"INPUT", valueOf(tries)},
                                 {"WALKER_FIELD", "who"},
                                 {"DISTANCE_FIELD", "m"},
                                 {"COUNT_FIELD", "n"},
                                 {"OUTPUT", "TEMPORARY_OUTPUT"}};
    const QString id = QStringLiteral("brushline:calibratepaces");
    const Outcome here = run(id, parameters);
    QCOMPARE(here.warnings.size(), 1);
    const Abroad abroad(language);
    const Outcome there = run(id, parameters);
    QCOMPARE(there.warnings.size(), 1);
    QVERIFY(there.warnings != here.warnings);
  }

  // Of the same run in English: one row, then two.
  void plurals() {
    const Abroad english(QStringLiteral("en"));
    for (const auto &[rows, words] : {std::pair(1, "1 row; model"), std::pair(2, "2 rows; model")}) {
      const std::vector<Row> places(size_t(rows), {wkt(QStringLiteral("Point (15 50)")), {}});
      const Layer points =
          layer(QStringLiteral("points"), QStringLiteral("Point"), QStringLiteral("EPSG:4326"), {}, places);
      const Outcome told = run(QStringLiteral("brushline:fieldatpoints"),
                               {{"INPUT", valueOf(points)}, {"DATE", "2026-06-20"}, {"OUTPUT", "TEMPORARY_OUTPUT"}});
      QVERIFY2(told.infos.join(QLatin1Char(' ')).contains(QLatin1String(words)), qPrintable(told.said()));
    }
  }
};

BRUSHLINE_HOST_TEST_MAIN(TranslationsTest)
#include "translations_test.moc"
