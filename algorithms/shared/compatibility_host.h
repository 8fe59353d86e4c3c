// SPDX-License-Identifier: GPL-2.0-or-later
// The one place that knows how the host's versions differ (3.22 to 3.44).
#pragma once

#include <qgis.h>
#include <qgsconfig.h>
#include <qgscoordinatereferencesystem.h>
#include <qgsfeaturerequest.h>
#include <qgsfeaturesink.h>
#include <qgsfield.h>
#include <qgsprocessing.h>
#include <qgsprocessingalgorithm.h>
#include <qgsprocessingparameters.h>
#include <qgsprocessingutils.h>
#include <qgsrasterfilewriter.h>
#include <qgsrasterinterface.h>
#include <qgsunittypes.h>
#include <qgswkbtypes.h>

namespace brushline::host {

#if _QGIS_VERSION_INT >= 33600
constexpr int lineLayers = static_cast<int>(Qgis::ProcessingSourceType::VectorLine);
constexpr int pointLayers = static_cast<int>(Qgis::ProcessingSourceType::VectorPoint);
constexpr int polygonLayers = static_cast<int>(Qgis::ProcessingSourceType::VectorPolygon);
constexpr int anyTable = static_cast<int>(Qgis::ProcessingSourceType::Vector);
constexpr auto anyMapLayer = Qgis::ProcessingSourceType::MapLayer;
constexpr auto anyGeometryLayers = Qgis::ProcessingSourceType::VectorAnyGeometry;
constexpr auto lineOutput = Qgis::ProcessingSourceType::VectorLine;
constexpr auto pointOutput = Qgis::ProcessingSourceType::VectorPoint;
constexpr auto polygonOutput = Qgis::ProcessingSourceType::VectorPolygon;
constexpr auto tableOutput = Qgis::ProcessingSourceType::Vector;
constexpr auto doubleNumber = Qgis::ProcessingNumberParameterType::Double;
constexpr auto integerNumber = Qgis::ProcessingNumberParameterType::Integer;
constexpr auto anyField = Qgis::ProcessingFieldParameterDataType::Any;
constexpr auto dateOnly = Qgis::ProcessingDateTimeParameterDataType::Date;
constexpr auto advanced = Qgis::ProcessingParameterFlag::Advanced;
constexpr auto skipValidityChecks = Qgis::ProcessingFeatureSourceFlag::SkipGeometryValidityChecks;
using AlgorithmFlags = Qgis::ProcessingAlgorithmFlags;
constexpr auto mainThreadOnly = Qgis::ProcessingAlgorithmFlag::NoThreading;
#else
constexpr int lineLayers = static_cast<int>(QgsProcessing::TypeVectorLine);
constexpr int pointLayers = static_cast<int>(QgsProcessing::TypeVectorPoint);
constexpr int polygonLayers = static_cast<int>(QgsProcessing::TypeVectorPolygon);
constexpr int anyTable = static_cast<int>(QgsProcessing::TypeVector);
constexpr auto anyMapLayer = QgsProcessing::TypeMapLayer;
constexpr auto anyGeometryLayers = QgsProcessing::TypeVectorAnyGeometry;
constexpr auto lineOutput = QgsProcessing::TypeVectorLine;
constexpr auto pointOutput = QgsProcessing::TypeVectorPoint;
constexpr auto polygonOutput = QgsProcessing::TypeVectorPolygon;
constexpr auto tableOutput = QgsProcessing::TypeVector;
constexpr auto doubleNumber = QgsProcessingParameterNumber::Double;
constexpr auto integerNumber = QgsProcessingParameterNumber::Integer;
constexpr auto anyField = QgsProcessingParameterField::Any;
constexpr auto dateOnly = QgsProcessingParameterDateTime::Date;
constexpr auto advanced = QgsProcessingParameterDefinition::FlagAdvanced;
constexpr auto skipValidityChecks = QgsProcessingFeatureSource::FlagSkipGeometryValidityChecks;
using AlgorithmFlags = QgsProcessingAlgorithm::Flags;
constexpr auto mainThreadOnly = QgsProcessingAlgorithm::FlagNoThreading;
#endif

#if _QGIS_VERSION_INT >= 33000
using WkbType = Qgis::WkbType;
constexpr WkbType lineString = Qgis::WkbType::LineString;
constexpr WkbType point = Qgis::WkbType::Point;
constexpr WkbType polygon = Qgis::WkbType::Polygon;
constexpr WkbType noGeometry = Qgis::WkbType::NoGeometry;
#else
using WkbType = QgsWkbTypes::Type;
constexpr WkbType lineString = QgsWkbTypes::LineString;
constexpr WkbType point = QgsWkbTypes::Point;
constexpr WkbType polygon = QgsWkbTypes::Polygon;
constexpr WkbType noGeometry = QgsWkbTypes::NoGeometry;
#endif

//! Whether a geometry type is made of points, of lines.
inline bool isPointType(WkbType type) { return static_cast<int>(QgsWkbTypes::geometryType(type)) == 0; }
inline bool isLineType(WkbType type) { return static_cast<int>(QgsWkbTypes::geometryType(type)) == 1; }

#if _QGIS_VERSION_INT >= 33000
using RenderUnit = Qgis::RenderUnit;
#else
using RenderUnit = QgsUnitTypes::RenderUnit;
#endif

//! Whether the host draws hatches as lines where it is asked for vectors.
constexpr bool hatchesAreLines = _QGIS_VERSION_INT >= 32400;

enum class FieldType { Text, Integer, Real, Date };

inline QgsField field(const QString &name, FieldType type) {
#if _QGIS_VERSION_INT >= 33800
  const QMetaType::Type types[] = {QMetaType::QString, QMetaType::Int, QMetaType::Double, QMetaType::QDate};
#else
  const QVariant::Type types[] = {QVariant::String, QVariant::Int, QVariant::Double, QVariant::Date};
#endif
  return QgsField(name, types[static_cast<int>(type)]);
}

constexpr auto float32 = Qgis::DataType::Float32;
constexpr auto textAsText = Qgis::TextRenderFormat::AlwaysText;

#if _QGIS_VERSION_INT >= 33000
constexpr auto fixedSize = Qgis::RasterInterfaceCapability::Size;
constexpr auto metres = Qgis::DistanceUnit::Meters;
#else
constexpr auto fixedSize = QgsRasterInterface::Size;
constexpr auto metres = QgsUnitTypes::DistanceMeters;
#endif

inline void setCreationOptions(QgsRasterFileWriter &writer, const QStringList &options) {
#if _QGIS_VERSION_INT >= 34400
  writer.setCreationOptions(options);
#else
  writer.setCreateOptions(options);
#endif
}

//! A coordinate system's definition, as complete as the host has it.
inline QString wkt(const QgsCoordinateReferenceSystem &crs) {
#if _QGIS_VERSION_INT >= 33600
  return crs.toWkt(Qgis::CrsWktVariant::Preferred);
#else
  return crs.toWkt(QgsCoordinateReferenceSystem::WKT_PREFERRED);
#endif
}

//! Lets late write errors of a sink surface, where the host can; false when the last writes failed.
inline bool finalize(QgsFeatureSink &sink) {
#if _QGIS_VERSION_INT >= 34200
  sink.finalize();
  return sink.lastError().isEmpty();
#else
  return sink.flushBuffer();
#endif
}

} // namespace brushline::host
