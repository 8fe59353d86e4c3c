// SPDX-License-Identifier: GPL-2.0-or-later
// Walks made by walk_by_chance.h, written as GPX text and read through the host's GPX driver.
#include "records/walk_by_chance.h"
#include "support/cancelled_run.h"
#include "support/host_fixture.h"
#include "support/near.h"

#include <QDateTime>
#include <QDir>
#include <QFile>

#include <cmath>

using namespace brushline;
using namespace brushline::test;

namespace {
const QString id = QStringLiteral("brushline:comparetrack");
const Place origin{Angle::degrees(46.5), Angle::degrees(-72.25)}; // declination some 13 degrees west
const std::vector<XY> plan{{0, 0}, {180, 60}, {260, 240}, {100, 330}, {60, 180}, {-120, 150}, {-60, 20}};
const qint64 began = QDateTime(QDate(2026, 6, 1), QTime(9, 0), Qt::UTC).toSecsSinceEpoch();

QString degrees(Angle angle) { return QString::number(angle.signedTurn().degrees(), 'f', 8); }

Layer routes(const std::vector<std::pair<QString, std::vector<XY>>> &all, const Place &at = origin) {
  std::vector<Row> rows;
  for (const auto &[name, turns] : all) {
    std::vector<std::pair<double, double>> points;
    for (const XY &p : turns) {
      const Place place = placeOf(p, at);
      points.emplace_back(at.longitude.degrees() + (place.longitude - at.longitude).signedTurn().degrees(),
                          place.latitude.degrees());
    }
    rows.push_back({line(points), {name}});
  }
  return layer(QStringLiteral("routes"), QStringLiteral("LineString"), QStringLiteral("EPSG:4326"),
               {field("route", FieldType::Text)}, rows);
}

Layer again(const Output &output) {
  QList<QgsField> fields;
  for (const QgsField &one : output.fields)
    fields << one;
  std::vector<Row> rows;
  for (const OutputRow &row : output.rows) {
    QVariantList values;
    for (const QgsField &one : fields)
      values << row.values.value(one.name());
    rows.push_back({row.geometry, values});
  }
  return layer(QStringLiteral("legs"), QStringLiteral("LineString"), output.crs, fields, rows);
}

//! Annotated by our own algorithm, for one walker who takes 130 single steps over 100 m.
Layer annotated(const Layer &of, int direction = 0) {
  const Outcome legs = run(QStringLiteral("brushline:annotatelegs"), {{"INPUT", valueOf(of)},
                                                                      {"ROUTE_FIELD", "route"},
                                                                      {"DATE", "2026-06-01"},
                                                                      {"DIRECTION", direction},
                                                                      {"OUTPUT", "memory:"}});
  return again(legs.output());
}

struct Gpx {
  QString text;
  //! Segments of fixes; a negative time: none.
  Gpx &track(const QString &name, const std::vector<std::vector<TrackFix>> &segments) {
    text += QStringLiteral("<trk>") + (name.isEmpty() ? QString() : QStringLiteral("<name>%1</name>").arg(name));
    for (const auto &segment : segments) {
      text += QStringLiteral("<trkseg>\n");
      for (const TrackFix &fix : segment)
        text += QStringLiteral("<trkpt lat=\"%1\" lon=\"%2\">%3</trkpt>\n")
                    .arg(degrees(fix.place.latitude), degrees(fix.place.longitude),
                         fix.time_s
                             ? QStringLiteral("<time>%1</time>")
                                   .arg(QDateTime::fromSecsSinceEpoch(began + qint64(std::round(*fix.time_s)), Qt::UTC)
                                            .toString(Qt::ISODate))
                             : QString());
      text += QStringLiteral("</trkseg>");
    }
    text += QStringLiteral("</trk>\n");
    return *this;
  }
  void save(const QString &path) const {
    QFile file(path);
    QVERIFY(file.open(QIODevice::WriteOnly));
    file.write((QStringLiteral("<?xml version=\"1.0\"?>\n<gpx version=\"1.1\" creator=\"test\" "
                               "xmlns=\"http://www.topografix.com/GPX/1/1\">\n") +
                text + QStringLiteral("</gpx>\n"))
                   .toUtf8());
  }
};

WalkByChance::Errors calm() {
  WalkByChance::Errors errors;
  errors.fix = 1;
  errors.leg_brg = 1;
  errors.leg_dist = 0.01;
  return errors;
}

std::vector<TrackFix> walk(const WalkByChance::Errors &errors, uint64_t seed = 1, const std::vector<XY> &turns = plan,
                           const Place &at = origin) {
  return fixesOf(WalkByChance(seed).walk(turns, errors), at);
}

QString pointsOf(const QString &path) { return path + QStringLiteral("|layername=track_points"); }
QString linesOf(const QString &path) { return path + QStringLiteral("|layername=tracks"); }

const OutputRow &groupRow(const Outcome &outcome, const QString &group, const QString &of = {}) {
  for (const OutputRow &row : outcome.rows("GROUPS"))
    if (row.text("group") == group && (of.isEmpty() || row.text("track") == of || row.text("walker") == of))
      return row;
  throw std::runtime_error("no such group");
}
} // namespace

class CompareTrackAlgorithmTest : public QObject {
  Q_OBJECT

  QTemporaryDir mFolder;
  QString path(const char *name) const { return mFolder.filePath(QString::fromLatin1(name)); }

private slots:
  // Declination forgotten: the walker sets the true bearing on a plain compass. And 6 % short by the pace count.
  void declinationForgotten() {
    const Layer plain = routes({{"north loop", plan}});
    const Layer legs = annotated(plain);
    const double decl = read(*legs).rows[0].number("decl");
    QVERIFY(decl < -10);
    WalkByChance::Errors errors = calm();
    errors.common_brg = decl;
    errors.common_dist = -0.06;
    Gpx().track("north loop", {walk(errors)}).save(path("forgotten.gpx"));
    const Outcome outcome = run(id, {{"TRACKS", pointsOf(path("forgotten.gpx"))},
                                     {"INPUT", valueOf(legs)},
                                     {"OUTPUT", "memory:"},
                                     {"PROFILE", "memory:"},
                                     {"GROUPS", "memory:"}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.rows().size(), size_t(6));
    for (const OutputRow &row : outcome.rows()) {
      QCOMPARE(row.text("route"), QStringLiteral("north loop"));
      QCOMPARE(row.text("track"), QStringLiteral("north loop")); // the layer tracks tells it, by itself
      QCOMPARE(row.text("direction"), QStringLiteral("out"));
      VERIFY_NEAR(row.number("brg_diff"), decl, 4, row.text("leg").toStdString());
      VERIFY_NEAR(row.number("dist_pct"), -6, 4, row.text("leg").toStdString());
      VERIFY_NEAR(turnBetween(row.number("walked_mag"), row.number("walked_brg") - row.number("decl")), 0, 1e-9, "mag");
      VERIFY_NEAR(row.number("minutes"), row.number("walked_m") / 0.8 / 60, 0.2, row.text("leg").toStdString());
      QVERIFY2(row.null("remark"), qPrintable(row.text("remark")));
      QVERIFY(row.geometry.constGet()->nCoordinates() == 2);
    }
    QVERIFY(outcome.rows("PROFILE").size() > 500);
    const OutputRow all = groupRow(outcome, QStringLiteral("all"));
    VERIFY_NEAR(all.number("brg_err"), decl, 3 * all.number("brg_se"), "common");
    VERIFY_NEAR(all.number("dist_err"), -6, 3 * all.number("dist_se"), "common");
    QVERIFY2(all.text("hint").contains("declination forgotten"), qPrintable(all.text("hint")));
    // 130 paces for 100 m, 6 % short: 138.
    const OutputRow track = groupRow(outcome, QStringLiteral("track"));
    VERIFY_NEAR(track.number("paces_100m"), 138.3, 2, "paces");
    QVERIFY2(track.text("hint").contains("instead of 130"), qPrintable(track.text("hint")));
    QVERIFY(outcome.infos.join(QLatin1Char('\n')).contains("declination forgotten"));
    QCOMPARE(outcome.results.value("MATCHED_COUNT").toInt(), 1);
  }

  // The other signs: nothing wrong, the wrong way round, set off twice.
  void otherCauses() {
    const Layer plain = routes({{"north loop", plan}});
    const Layer legs = annotated(plain);
    const double decl = read(*legs).rows[0].number("decl");
    for (const auto &[error, word] :
         {std::pair(0., "No common error of bearing"), std::pair(2 * decl, "the wrong way round"),
          std::pair(-decl, "already set off"), std::pair(6., "No mix-up of norths")}) {
      WalkByChance::Errors errors = calm();
      errors.common_brg = error;
      Gpx().track("north loop", {walk(errors)}).save(path("cause.gpx"));
      const Outcome outcome = run(id, {{"TRACKS", pointsOf(path("cause.gpx"))},
                                       {"INPUT", valueOf(legs)},
                                       {"OUTPUT", "memory:"},
                                       {"GROUPS", "memory:"}});
      QVERIFY2(outcome.ok, qPrintable(outcome.said()));
      const QString hint = groupRow(outcome, QStringLiteral("all")).text("hint");
      QVERIFY2(hint.contains(QLatin1String(word)), qPrintable(hint));
    }
  }

  // Two segments with a gap on leg 2, a spike, double points, a stand at the first turn and one on leg 3.
  void roughTrack() {
    WalkByChance::Errors errors = calm();
    std::vector<std::vector<TrackFix>> segments(2);
    const auto made = WalkByChance(3).walk(plan, errors);
    const auto fixes = fixesOf(made, origin);
    double later = 0;
    for (size_t i = 0; i < fixes.size(); ++i) {
      TrackFix fix = fixes[i];
      const double t = *fix.time_s;
      *fix.time_s += later;
      if (i == 350)
        fix.place = placeOf({2000, 2000}, origin);
      if (t > 280 && t < 330)
        continue;
      auto &segment = segments[t < 300 ? 0 : 1];
      segment.push_back(fix);
      if (i % 50 == 0)
        segment.push_back(fix);
      if (std::abs(t - std::round(made.turn_times[1])) < 0.5 || i == 600)
        for (int k = 0; k < 90; ++k, ++later) // a minute and a half
          segment.push_back({fix.place, t + later + 1, false});
    }
    const Layer plain = routes({{"north loop", plan}});
    Gpx().track("Ann", {segments[0], segments[1]}).save(path("rough.gpx"));
    const Outcome outcome = run(id, {{"TRACKS", pointsOf(path("rough.gpx"))},
                                     {"INPUT", valueOf(plain)},
                                     {"ROUTE_FIELD", "route"},
                                     {"OUTPUT", "memory:"}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.rows().size(), size_t(6));
    for (size_t i = 0; i < 6; ++i) {
      const OutputRow &row = outcome.rows()[i];
      const double dx = made.turns[i + 1][0] - made.turns[i][0], dy = made.turns[i + 1][1] - made.turns[i][1];
      VERIFY_NEAR(row.number("walked_m"), std::hypot(dx, dy), 4, std::to_string(i));
      VERIFY_NEAR(turnBetween(row.number("walked_brg"), Angle::radians(std::atan2(dx, dy)).degrees()), 0, 1.5,
                  std::to_string(i));
    }
    VERIFY_NEAR(outcome.rows()[1].number("stand_min"), 1.5, 0.2, "at the turn");
    const QString said = outcome.infos.join(QLatin1Char('\n'));
    QVERIFY2(said.contains("1 spike"), qPrintable(said));
    QVERIFY2(said.contains("double point"), qPrintable(said));
  }

  // Lines: the layer tracks (no times, gaps as parts), and M values.
  void lines() {
    const Layer plain = routes({{"north loop", plan}});
    const auto fixes = walk(calm());
    Gpx().track("north loop", {fixes}).save(path("lines.gpx"));
    const Outcome without = run(id, {{"TRACKS", linesOf(path("lines.gpx"))},
                                     {"INPUT", valueOf(plain)},
                                     {"ROUTE_FIELD", "route"},
                                     {"OUTPUT", "memory:"}});
    QVERIFY2(without.ok, qPrintable(without.said()));
    QCOMPARE(without.rows().size(), size_t(6));
    for (const OutputRow &row : without.rows()) {
      QVERIFY(row.null("minutes") && !row.null("walked_m") && row.null("decl") && row.null("walked_mag"));
      QVERIFY2(row.text("remark").contains("no times"), qPrintable(row.text("remark")));
    }
    QString text = QStringLiteral("LINESTRING M(");
    for (const TrackFix &fix : fixes)
      text += QStringLiteral("%1 %2 %3,")
                  .arg(degrees(fix.place.longitude), degrees(fix.place.latitude))
                  .arg(began + qint64(*fix.time_s));
    text.chop(1);
    const Layer measured = layer(QStringLiteral("lines"), QStringLiteral("LineStringM"), QStringLiteral("EPSG:4326"),
                                 {field("name", FieldType::Text)}, {{wkt(text + QLatin1Char(')')), {"Bo"}}});
    const Outcome with = run(
        id,
        {{"TRACKS", valueOf(measured)}, {"INPUT", valueOf(plain)}, {"ROUTE_FIELD", "route"}, {"OUTPUT", "memory:"}});
    QVERIFY2(with.ok, qPrintable(with.said()));
    for (const OutputRow &row : with.rows())
      VERIFY_NEAR(row.number("minutes"), row.number("walked_m") / 0.8 / 60, 0.2, "M");
    QCOMPARE(with.rows()[0].text("track"), QStringLiteral("Bo"));
  }

  // Fields of one's own, in a projected system, points shuffled; across the 180th meridian in the south.
  void ownFields() {
    const Place far{Angle::degrees(-41), Angle::degrees(179.9995)};
    const Layer plain = routes({{"north loop", plan}}, far);
    const auto fixes = walk(calm(), 1, plan, far);
    std::vector<Row> rows;
    for (size_t i = 0; i < fixes.size(); ++i) {
      const TrackFix &fix = fixes[i * 7 % fixes.size()]; // shuffled, as 7 does not divide their number
      rows.push_back({QgsGeometry::fromPointXY(
                          QgsPointXY(fix.place.longitude.signedTurn().degrees(), fix.place.latitude.degrees())),
                      {"Cy", "north loop", double(began) + *fix.time_s, int(i * 7 % fixes.size())}});
    }
    QVERIFY(fixes.size() % 7 != 0);
    const Layer points = layer(QStringLiteral("log"), QStringLiteral("Point"), QStringLiteral("EPSG:4326"),
                               {field("who", FieldType::Text), field("course", FieldType::Text),
                                field("stamp", FieldType::Real), field("no", FieldType::Integer)},
                               rows);
    const Outcome outcome = run(id, {{"TRACKS", valueOf(points)},
                                     {"TRACK_FIELD", "who"},
                                     {"TRACK_WALKER", "who"},
                                     {"TRACK_ROUTE", "course"},
                                     {"TRACK_ORDER", "no"},
                                     {"TIME_FIELD", "stamp"},
                                     {"INPUT", valueOf(plain)},
                                     {"ROUTE_FIELD", "route"},
                                     {"OUTPUT", "memory:"},
                                     {"GROUPS", "memory:"}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.rows().size(), size_t(6));
    for (const OutputRow &row : outcome.rows()) {
      QCOMPARE(row.text("walker"), QStringLiteral("Cy"));
      QVERIFY(row.geometry.length() < 0.01); // degrees: not round the Earth
      VERIFY_NEAR(row.number("minutes"), row.number("walked_m") / 0.8 / 60, 0.2, "time");
    }
    QCOMPARE(groupRow(outcome, QStringLiteral("walker"), QStringLiteral("Cy")).number("legs"), 6.);
  }

  // Two routes, five tracks: by name, by nearness, back, elsewhere, and without points; then a track of the year 2006.
  void severalTracks() {
    std::vector<XY> other;
    for (const XY &p : plan)
      other.push_back({p[1] + 700, p[0]});
    std::vector<XY> back(plan.rbegin(), plan.rend()), away;
    for (const XY &p : plan)
      away.push_back({p[0] + 9000, p[1]});
    const Layer plain = routes({{"north loop", plan}, {"pond loop", other}});
    const Layer legs = annotated(plain, 2);
    Gpx gpx;
    gpx.track("Pond  Loop", {walk(calm(), 1, other)})
        .track("Dan", {walk(calm(), 2)})
        .track("Eve", {walk(calm(), 3, back)});
    gpx.track("Fay", {walk(calm(), 4, away)}).track("Gus", {{walk(calm(), 5).front()}});
    gpx.save(path("several.gpx"));
    const Outcome outcome = run(id, {{"TRACKS", pointsOf(path("several.gpx"))},
                                     {"INPUT", valueOf(legs)},
                                     {"OUTPUT", "memory:"},
                                     {"GROUPS", "memory:"}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.rows().size(), size_t(18));
    QCOMPARE(outcome.rows()[0].text("route"), QStringLiteral("pond loop"));
    QCOMPARE(outcome.rows()[6].text("route"), QStringLiteral("north loop"));
    QCOMPARE(outcome.rows()[6].text("direction"), QStringLiteral("out"));
    QCOMPARE(outcome.rows()[12].text("direction"), QStringLiteral("back"));
    QCOMPARE(outcome.rows()[12].text("leg"), QStringLiteral("1"));
    for (const OutputRow &row : outcome.rows())
      VERIFY_NEAR(row.number("brg_diff"), 0, 5, row.text("track").toStdString());
    QCOMPARE(outcome.results.value("TRACK_COUNT").toInt(), 5);
    QCOMPARE(outcome.results.value("MATCHED_COUNT").toInt(), 3);
    const QString said = outcome.warnings.join(QLatin1Char('\n'));
    QVERIFY2(said.contains("Fay") && said.contains("another place"), qPrintable(said));
    QVERIFY2(said.contains("Gus") && said.contains("two usable points"), qPrintable(said));

    Gpx old;
    std::vector<TrackFix> fixes = walk(calm(), 2);
    for (TrackFix &fix : fixes)
      *fix.time_s -= 619315200; // 1024 weeks, as receivers do whose clock turns over
    old.track("Dan", {fixes}).save(path("old.gpx"));
    const Outcome refused =
        run(id, {{"TRACKS", pointsOf(path("old.gpx"))}, {"INPUT", valueOf(legs)}, {"OUTPUT", path("none.geojson")}});
    QVERIFY(!refused.ok);
    QVERIFY2(refused.said().contains("2006-10-16") && refused.said().contains("MAX_DAYS"), qPrintable(refused.said()));
    QVERIFY(!QFile::exists(path("none.geojson")));
  }

  void refusals() {
    const Layer plain = routes({{"north loop", plan}});
    Gpx().track("north loop", {walk(calm())}).save(path("good.gpx"));
    const QVariantMap good = {{"TRACKS", pointsOf(path("good.gpx"))}, {"INPUT", valueOf(plain)}, {"OUTPUT", "memory:"}};
    QVERIFY(run(id, good).ok);
    const Layer pieces = layer(QStringLiteral("detours"), QStringLiteral("LineString"), QStringLiteral("EPSG:4326"),
                               {field("part", FieldType::Text), field("piece", FieldType::Integer)},
                               {{line({{0, 0}, {1, 1}}), {"out", 1}}});
    const Layer areas = layer(QStringLiteral("areas"), QStringLiteral("Polygon"), QStringLiteral("EPSG:4326"), {}, {});
    const Layer nowhere = layer(QStringLiteral("nowhere"), QStringLiteral("LineString"), QString(), {}, {});
    const Layer legs = annotated(plain);
    const Layer none = layer(QStringLiteral("none"), QStringLiteral("Point"), QStringLiteral("EPSG:4326"), {}, {});
    const auto with = [&](const QString &key, const QVariant &value) {
      QVariantMap parameters = good;
      parameters[key] = value;
      return parameters;
    };
    QVariantMap twice = with("INPUT", valueOf(legs));
    twice["ROUTE_FIELD"] = "route"; // which they have anyway
    QVERIFY(run(id, twice).ok);
    twice["ROUTE_FIELD"] = "walker";
    const std::vector<std::pair<QVariantMap, QStringList>> cases = {
        {with("INPUT", valueOf(pieces)), {"INPUT", "detours"}},
        {with("TRACKS", valueOf(areas)), {"TRACKS", "areas", "neither lines nor points"}},
        {with("TRACKS", valueOf(nowhere)), {"TRACKS", "nowhere", "coordinate reference system"}},
        {with("TRACKS", valueOf(none)), {"TRACKS", "no track"}},
        {with("TIME_FIELD", "when"), {"TIME_FIELD", "when"}},
        {with("TOLERANCE", 1), {"TOLERANCE"}},
        {with("TRACK_ERROR", 0), {"TRACK_ERROR"}},
        {with("MAX_SPEED", -1), {"MAX_SPEED"}},
        {with("MAX_DAYS", -1), {"MAX_DAYS"}},
        {twice, {"ROUTE_FIELD", "annotated"}},
    };
    for (const auto &[parameters, words] : cases) {
      const Outcome outcome = run(id, parameters);
      QVERIFY2(!outcome.ok, qPrintable(words.join(QLatin1Char(' '))));
      for (const QString &word : words)
        QVERIFY2(outcome.said().contains(word), qPrintable(word + QStringLiteral(" in: ") + outcome.said()));
    }
  }

  // Within a tenth of a second, and no file is left; of three tries the fastest counts, since other programs run too.
  void cancelledInTheMiddle() {
    const Layer plain = routes({{"north loop", plan}});
    std::vector<Row> rows;
    QString text = QStringLiteral("LINESTRING(");
    for (const TrackFix &fix : walk(calm()))
      text += QStringLiteral("%1 %2,").arg(degrees(fix.place.longitude), degrees(fix.place.latitude));
    text.chop(1);
    const QgsGeometry geometry = wkt(text + QLatin1Char(')'));
    for (int i = 0; i < 3000; ++i)
      rows.push_back({geometry, {}});
    const Layer tracks =
        layer(QStringLiteral("tracks"), QStringLiteral("LineString"), QStringLiteral("EPSG:4326"), {}, rows);
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("out.geojson"));
    double fastest = 1e9;
    for (int tries = 0; tries < 3 && fastest > soon; ++tries) {
      Ear ear;
      CancelAfter finger(ear, 0.7);
      const Outcome outcome = run(id, {{"TRACKS", valueOf(tracks)}, {"INPUT", valueOf(plain)}, {"OUTPUT", file}}, {{}, &ear, false, false});
      const std::optional<double> seconds = finger.over();
      QVERIFY(outcome.outputs.empty());
      QVERIFY2(seconds, "too small an input: done before it was cancelled");
      fastest = std::min(fastest, *seconds);
      QCOMPARE(QDir(folder.path()).entryList(QDir::Files), QStringList());
    }
    QVERIFY2(fastest < soon, qPrintable(QString::number(fastest)));
  }
};

BRUSHLINE_HOST_TEST_MAIN(CompareTrackAlgorithmTest)
#include "compare_track_algorithm_test.moc"
