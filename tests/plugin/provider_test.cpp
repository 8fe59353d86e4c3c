// SPDX-License-Identifier: GPL-2.0-or-later
// The provider and all its algorithms, as the host's registry knows them.
#include "registration.h"
#include "support/host_fixture.h"

#include <QFile>
#include <QIcon>
#include <QPointer>
#include <QRegularExpression>
#include <QSet>
#include <qgsapplication.h>
#include <qgsprocessingprovider.h>
#include <qgsprocessingregistry.h>

using namespace brushline;
using namespace brushline::test;

namespace {

const QString id = QStringLiteral("brushline");

QgsProcessingRegistry *registry() { return QgsApplication::processingRegistry(); }
QgsProcessingProvider *provider() { return registry()->providerById(id); }

void eachAlgorithm() {
  QTest::addColumn<QString>("id");
  for (const QgsProcessingAlgorithm *algorithm : provider()->algorithms())
    QTest::newRow(qPrintable(algorithm->name())) << algorithm->id();
}

// What people read: one sentence or more, without the host's place holders.
bool readable(const QString &text) {
  static const QRegularExpression holder(QStringLiteral("%\\d|%n"));
  return text.trimmed().size() > 3 && text == text.trimmed() && !text.contains(holder);
}

} // namespace

class ProviderTest : public QObject {
  Q_OBJECT
private slots:
  void itself() {
    QVERIFY(provider());
    QCOMPARE(provider()->id(), id);
    QCOMPARE(provider()->name(), QStringLiteral("Brushline"));
    QVERIFY(readable(provider()->longName()));
    QVERIFY(provider()->versionInfo().contains(QRegularExpression(QStringLiteral("^\\d+\\.\\d+\\.\\d+$"))));
    QVERIFY(!provider()->icon().isNull());
    QVERIFY(QFile::exists(provider()->svgIconPath()));
  }

  // The ids that the project has promised; scripts and models call them.
  void promisedAlgorithms_data() {
    QTest::addColumn<QString>("id");
    for (const char *name : {"annotatelegs", "fieldatpoints", "legtables", "northlines", "plotlegs"})
      QTest::newRow(name) << QStringLiteral("brushline:%1").arg(QLatin1String(name));
  }
  void promisedAlgorithms() {
    QFETCH(QString, id);
    QVERIFY(registry()->algorithmById(id));
  }

  void idsAreUnique() {
    QSet<QString> names, titles;
    for (const QgsProcessingAlgorithm *algorithm : provider()->algorithms()) {
      QVERIFY2(!names.contains(algorithm->name()), qPrintable(algorithm->name()));
      QVERIFY2(!titles.contains(algorithm->displayName()), qPrintable(algorithm->displayName()));
      names << algorithm->name();
      titles << algorithm->displayName();
    }
    QVERIFY(!names.isEmpty());
  }

  void words_data() { eachAlgorithm(); }
  void words() {
    QFETCH(QString, id);
    const QgsProcessingAlgorithm *algorithm = registry()->algorithmById(id);
    QVERIFY(algorithm->name().contains(QRegularExpression(QStringLiteral("^[a-z]+$"))));
    QVERIFY(readable(algorithm->displayName()));
    QVERIFY(readable(algorithm->shortDescription()));
    QVERIFY(algorithm->shortDescription().endsWith(QLatin1Char('.')));
    QVERIFY(readable(algorithm->group()));
    QVERIFY(algorithm->groupId().contains(QRegularExpression(QStringLiteral("^[a-z]+$"))));
    QVERIFY(algorithm->tags().size() >= 3);
    for (const QString &tag : algorithm->tags())
      QVERIFY2(!tag.trimmed().isEmpty() && tag == tag.trimmed(), qPrintable(tag));
    QStringList tags = algorithm->tags();
    QCOMPARE(tags.removeDuplicates(), 0);
    QVERIFY(algorithm->shortHelpString().size() > 200);
    QVERIFY(!algorithm->icon().isNull());
    QVERIFY(QFile::exists(algorithm->svgIconPath()));
    // The host shows "<" as the start of markup.
    QVERIFY(!algorithm->shortHelpString().contains(QLatin1Char('<')));
  }

  void parameters_data() { eachAlgorithm(); }
  void parameters() {
    QFETCH(QString, id);
    const QgsProcessingAlgorithm *algorithm = registry()->algorithmById(id);
    QSet<QString> keys, labels;
    for (const QgsProcessingParameterDefinition *definition : algorithm->parameterDefinitions()) {
      const QByteArray key = definition->name().toUtf8();
      QVERIFY2(definition->name().contains(QRegularExpression(QStringLiteral("^[A-Z][A-Z0-9_]*$"))), key);
      QVERIFY2(!keys.contains(definition->name()), key);
      QVERIFY2(readable(definition->description()), key);
      QVERIFY2(!labels.contains(definition->description()), key);
      QVERIFY2(definition->isDestination() || readable(definition->help()), key);
      keys << definition->name();
      labels << definition->description();
    }
    QVERIFY(!keys.isEmpty());
    for (const QgsProcessingOutputDefinition *definition : algorithm->outputDefinitions()) {
      const QByteArray key = definition->name().toUtf8();
      QVERIFY2(definition->name().contains(QRegularExpression(QStringLiteral("^[A-Z][A-Z0-9_]*$"))), key);
      QVERIFY2(readable(definition->description()), key);
    }
  }

  // Numbers have bounds and a default within them; choices a default that is one of them.
  void defaultsAreOfUse_data() { eachAlgorithm(); }
  void defaultsAreOfUse() {
    QFETCH(QString, id);
    const QgsProcessingAlgorithm *algorithm = registry()->algorithmById(id);
    QgsProcessingContext context;
    int checked = 0; // numbers, choices and defaults; every algorithm has one
    for (const QgsProcessingParameterDefinition *definition : algorithm->parameterDefinitions()) {
      const QByteArray key = definition->name().toUtf8();
      const bool optional = definition->checkValueIsAcceptable(QVariant(), &context);
      if (const auto *number = dynamic_cast<const QgsProcessingParameterNumber *>(definition)) {
        ++checked;
        QVERIFY2(number->minimum() < number->maximum(), key);
        QVERIFY2(number->minimum() > -1e9 && number->maximum() < 1e9, key);
        QVERIFY2(optional || number->defaultValue().isValid(), key);
      }
      if (const auto *choice = dynamic_cast<const QgsProcessingParameterEnum *>(definition))
        QVERIFY2(++checked > 0 && choice->options().size() > 1, key);
      if (definition->defaultValue().isValid())
        QVERIFY2(++checked > 0 && definition->checkValueIsAcceptable(definition->defaultValue(), &context), key);
    }
    QVERIFY(checked > 0);
  }

  void instancesAreTheSame_data() { eachAlgorithm(); }
  void instancesAreTheSame() {
    QFETCH(QString, id);
    const QgsProcessingAlgorithm *algorithm = registry()->algorithmById(id);
    const std::unique_ptr<QgsProcessingAlgorithm> other(algorithm->create());
    QVERIFY(other);
    QVERIFY(other.get() != algorithm);
    QVERIFY(typeid(*other) == typeid(*algorithm));
    QCOMPARE(other->id(), algorithm->id());
    QCOMPARE(other->displayName(), algorithm->displayName());
    QCOMPARE(other->shortHelpString(), algorithm->shortHelpString());
    QCOMPARE(other->parameterDefinitions().size(), algorithm->parameterDefinitions().size());
    for (int i = 0; i < other->parameterDefinitions().size(); ++i) {
      const auto *a = other->parameterDefinitions().at(i), *b = algorithm->parameterDefinitions().at(i);
      QVERIFY2(a->toVariantMap() == b->toVariantMap(), qPrintable(a->name()));
      QVERIFY2(a != b, qPrintable(a->name()));
    }
    QCOMPARE(other->outputDefinitions().size(), algorithm->outputDefinitions().size());
  }

  // Desktop plugin and loader register beside each other; the provider stays until the last one takes it back.
  void registeredAsOftenAsTakenBack() {
    registry()->removeProvider(id);
    QVERIFY(!provider());
    for (int round = 0; round < 2; ++round) {
      QCOMPARE(brushline_register(), 0);
      const QPointer<QgsProcessingProvider> first = provider();
      QVERIFY(first);
      QVERIFY(!first->algorithms().isEmpty());
      QCOMPARE(brushline_register(), 0);
      QCOMPARE(provider(), first.data());
      QCOMPARE(registry()->providers().count(first.data()), 1);
      brushline_unregister();
      QCOMPARE(provider(), first.data());
      QVERIFY(registry()->algorithmById(QStringLiteral("brushline:annotatelegs")));
      brushline_unregister();
      QVERIFY(!provider());
      QVERIFY(first.isNull());
      QVERIFY(!registry()->algorithmById(QStringLiteral("brushline:annotatelegs")));
      brushline_unregister(); // once too often is harmless
      QVERIFY(!provider());
    }
  }

  // The host, or a script, may take the provider away itself.
  void takenAwayByOthers() {
    QCOMPARE(brushline_register(), 0);
    registry()->removeProvider(id);
    QCOMPARE(brushline_register(), 0);
    QVERIFY(provider());
    brushline_unregister();
    QVERIFY(provider());
    brushline_unregister();
    QVERIFY(!provider());
  }

  void face() {
    QCOMPARE(brushline_abi(), 1);
    QVERIFY(QString::fromUtf8(brushline_built_for()).contains(QRegularExpression(QStringLiteral("^3\\.\\d+\\.\\d+"))));
  }
};

BRUSHLINE_HOST_TEST_MAIN(ProviderTest)
#include "provider_test.moc"
