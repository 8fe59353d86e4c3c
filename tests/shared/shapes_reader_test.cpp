// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/shapes_reader_host.h"
#include "support/host_fixture.h"

using namespace brushline;

class ShapesReaderTest : public QObject {
  Q_OBJECT

private:
  std::vector<Shape> read(const test::Layer &layer, test::Ear &ear) {
    std::vector<Shape> shapes;
    QgsProcessingContext context;
    const std::unique_ptr<QgsProcessingFeatureSource> source(
        new QgsProcessingFeatureSource(layer.get(), context, false));
    addShapes(shapes, QStringLiteral("FEATURES"), *source, layer->fields().lookupField(QStringLiteral("name")), 3,
              QgsCoordinateTransformContext(), &ear);
    return shapes;
  }

private slots:
  void kindsAndParts() {
    test::Ear ear;
    const QList<QgsField> fields = {test::field("name", test::FieldType::Text)};
    const auto lines = test::layer("streams", "MultiLineString", "EPSG:4326", fields,
                                   {{test::wkt("MultiLineString((1 2, 3 4),(5 6, 7 8, 9 10))"), {"Brook"}},
                                    {QgsGeometry(), {"Nowhere"}},
                                    {test::wkt("MultiLineString((1 95, 3 4))"), {"Off the Earth"}}});
    const auto shapes = read(lines, ear);
    QCOMPARE(shapes.size(), size_t(1));
    QVERIFY(shapes[0].kind == ShapeKind::Line && shapes[0].name == "Brook" && shapes[0].source == 3);
    QCOMPARE(shapes[0].parts.size(), size_t(2));
    QCOMPARE(shapes[0].parts[1].size(), size_t(3));
    QCOMPARE(shapes[0].parts[1][2].latitude.degrees(), 10.0);
    QCOMPARE(ear.warnings.size(), 1);
    QVERIFY(ear.warnings[0].contains(QLatin1String("2 feature")) || ear.warnings[0].contains(QLatin1String("streams")));

    const auto polygons =
        test::layer("ponds", "CurvePolygon", "EPSG:32632", fields,
                    {{test::wkt("CurvePolygon(CircularString(500000 5000000, 500010 5000010, 500020 5000000, 500010 "
                                "4999990, 500000 5000000))"),
                      {QVariant()}}});
    const auto ponds = read(polygons, ear);
    QCOMPARE(ponds.size(), size_t(1));
    QVERIFY(ponds[0].kind == ShapeKind::Polygon && ponds[0].name.empty());
    QVERIFY(ponds[0].parts[0].size() > 20);
    QVERIFY(ponds[0].parts[0].front().longitude.degrees() == ponds[0].parts[0].back().longitude.degrees());
    // 500000 is the zone's central meridian, 9 degrees east.
    QVERIFY(std::abs(ponds[0].parts[0].front().longitude.degrees() - 9) < 1e-9);
  }

  void withoutCoordinateSystem() {
    test::Ear ear;
    const auto points = test::layer("trees", "Point", "", {}, {{test::wkt("Point(1 2)"), {}}});
    QVERIFY_EXCEPTION_THROWN(read(points, ear), QgsProcessingException);
  }
};

BRUSHLINE_HOST_TEST_MAIN(ShapesReaderTest)
#include "shapes_reader_test.moc"
