// SPDX-License-Identifier: GPL-2.0-or-later
#include "records/calibrated_walkers_host.h"

#include <qgsexception.h>

#include <algorithm>
#include <array>

namespace brushline {

namespace {
using host::FieldType;
const QString outputKey = QStringLiteral("OUTPUT"), triesKey = QStringLiteral("TRIES"),
              walkersKey = QStringLiteral("WALKER_COUNT"), usedKey = QStringLiteral("TRIES_USED");
constexpr long toldEach = 20;
// Steps over 100 m that make one look again: longer than 1.1 m, shorter than 0.4 m. Common practice, no source.
constexpr double fewSteps = 90, manySteps = 250;
constexpr std::array flags = {TryFlag::TooSteep, TryFlag::Half,   TryFlag::Twice,
                              TryFlag::Feet,     TryFlag::FarOff, TryFlag::Outlier};

// The word of the field flag; never translated.
QVariant wordOf(TryFlag flag) {
  static const char *const words[] = {"", "too steep", "half", "twice", "feet", "far off", "outlier"};
  return flag == TryFlag::None ? QVariant() : QVariant(QString::fromLatin1(words[static_cast<int>(flag)]));
}

QVariant timesOrNull(const std::optional<double> &value, double factor) {
  return value ? QVariant(factor * *value) : QVariant();
}
QVariantList ends(const std::optional<Interval95> &interval, double factor = 1) {
  return interval ? QVariantList{factor * interval->low, factor * interval->high}
                  : QVariantList{QVariant(), QVariant()};
}

bool nobodySteps(double stepsPer100m, PaceKind kind) {
  return (kind == PaceKind::Single && stepsPer100m < fewSteps) || stepsPer100m > manySteps;
}

QString rounded(double value) { return QString::number(value, 'f', 1); }
QString twoPlaces(double value) { return QString::number(value, 'f', 2); }
} // namespace

CalibratedWalkers::CalibratedWalkers(const ParameterReader &reader, PaceKind kind, QgsProcessingFeedback *feedback)
    : mReader(reader), mKind(kind), mFeedback(feedback) {}

Definitions CalibratedWalkers::definitions() {
  return {
      new QgsProcessingParameterFeatureSink(outputKey, tr("Calibrated walkers"), host::tableOutput),
      new QgsProcessingParameterFeatureSink(triesKey, tr("Tries, judged"), host::tableOutput, QVariant(), true, false)};
}

QgsFields CalibratedWalkers::fields() {
  return fieldsOf({{"walker", FieldType::Text},
                   {"paces_100m", FieldType::Real},
                   {"pace_kind", FieldType::Integer},
                   {"pace_err", FieldType::Real},
                   {"brg_err", FieldType::Real},
                   {"eye_m", FieldType::Real},
                   {"speed_f", FieldType::Real},
                   {"tries", FieldType::Integer},
                   {"used", FieldType::Integer},
                   {"flagged", FieldType::Integer},
                   {"paced_m", FieldType::Real},
                   {"sd_100m", FieldType::Real},
                   {"lo_100m", FieldType::Real},
                   {"hi_100m", FieldType::Real},
                   {"step_m", FieldType::Real},
                   {"slope_k", FieldType::Real},
                   {"slope_lo", FieldType::Real},
                   {"slope_hi", FieldType::Real},
                   {"note", FieldType::Text}});
}

QgsFields CalibratedWalkers::tryFields() {
  return fieldsOf({{"walker", FieldType::Text},
                   {"try", FieldType::Integer},
                   {"row", FieldType::Integer},
                   {"dist_m", FieldType::Real},
                   {"count", FieldType::Real},
                   {"slope_deg", FieldType::Real},
                   {"steps_100m", FieldType::Real},
                   {"resid_pct", FieldType::Real},
                   {"flag", FieldType::Text},
                   {"used", FieldType::Integer},
                   {"reason", FieldType::Text}});
}

QString CalibratedWalkers::inWords(NoPaces none, const PaceCalibration &calibration) const {
  switch (none) {
  case NoPaces::NoTry:
    return tr("no try on ground of 30 degrees or less, where the slope table ends. Are the slopes in percent?");
  case NoPaces::Disagree:
    return tr("the tries do not agree, and nothing tells which are right (%1 steps over 100 m, give or take %2). Count "
              "again, over the same distance.")
        .arg(rounded(calibration.steps_per_100m), rounded(calibration.spread.value_or(0)));
  case NoPaces::NoSteps:
    return tr("steps of %1 m are nobody's. Are the distances in feet, or is PACE_KIND not what was counted?")
        .arg(twoPlaces(100 / calibration.steps_per_100m));
  }
  return QString();
}

QString CalibratedWalkers::inWords(TryFlag flag) const {
  switch (flag) {
  case TryFlag::None:
    return QString();
  case TryFlag::TooSteep:
    return tr("steeper than 30 degrees, where the slope table ends (percent, not degrees?)");
  case TryFlag::Half:
    return tr("about half the others' count (double paces among single steps, or twice the distance?)");
  case TryFlag::Twice:
    return tr("about twice the others' count (single steps among double paces, or half the distance?)");
  case TryFlag::Feet:
    return tr("about 0.3 of the others' count (distance in feet?)");
  case TryFlag::FarOff:
    return tr("far off the others' count");
  case TryFlag::Outlier:
    return tr("an outlier by the test (count lost?)");
  }
  return QString();
}

QStringList CalibratedWalkers::flagWords(const PaceCalibration &calibration) const {
  QStringList words;
  for (const TryFlag flag : flags)
    for (const bool used : {false, true}) {
      const auto count = std::count_if(calibration.tries.begin(), calibration.tries.end(),
                                       [&](const JudgedTry &each) { return each.flag == flag && each.used == used; });
      if (count > 0)
        words << (used ? tr("%n try(s) kept, as too few would be left: %1.", nullptr, int(count)).arg(inWords(flag))
                       : tr("%n try(s) left out: %1.", nullptr, int(count)).arg(inWords(flag)));
    }
  return words;
}

QStringList CalibratedWalkers::slopeWords(const PaceCalibration &calibration) const {
  if (!calibration.slope)
    return calibration.sloped == 0 ? QStringList()
                                   : QStringList{tr("%n sloped try(s) brought to the level by the slope table.",
                                                    nullptr, int(calibration.sloped))};
  const auto &slope = *calibration.slope;
  QStringList words{
      slope.interval
          ? tr("Slope changes the count %1 times as much as the slope table says (95 %: %2 to %3).")
                .arg(twoPlaces(slope.factor), twoPlaces(slope.interval->low), twoPlaces(slope.interval->high))
          : tr("The tries hardly tell how slope changes the count.")};
  words << (calibration.own_slope ? tr("The table does not hold for this walker: paces on slopes will be off, and "
                                       "those of level ground are "
                                       "taken from the tries' own line. Count level tries.")
                                  : tr("Sloped tries brought to the level by the table."));
  return words;
}

QString CalibratedWalkers::note(const PaceCalibration &calibration) const {
  const double steps = calibration.steps_per_100m;
  QStringList words{tr("%1 of %n try(s) used, %2 m.", nullptr, int(calibration.tries.size()))
                        .arg(calibration.used)
                        .arg(rounded(calibration.paced.metres()))};
  if (!calibration.spread)
    words << tr("One try tells no error: pace_err and the interval are empty. Walk it again, at least twice.");
  else if (calibration.used < 4)
    words << tr("Only %n tries: the interval is wide. Four or more tell much more.", nullptr, int(calibration.used));
  if (calibration.spread_is_rounding)
    words << tr("The tries agree better than whole paces can tell; the spread is that of rounding.");
  words << flagWords(calibration) << slopeWords(calibration);
  if (mKind == PaceKind::Single && steps < fewSteps)
    words
        << tr("CHECK: steps of %1 m are longer than anybody's. If these are double paces, run again with PACE_KIND 1.")
               .arg(twoPlaces(100 / steps));
  if (steps > manySteps)
    words << tr("CHECK: steps of %1 m are short even for a small child. Are the distances in metres, and is PACE_KIND "
                "what "
                "was counted?")
                 .arg(twoPlaces(100 / steps));
  if (countGiven(steps, mKind) != steps)
    words << tr("paces_100m, sd_100m, lo_100m and hi_100m are in double paces here: %1 single steps could be read two "
                "ways.")
                 .arg(rounded(steps));
  return words.join(QLatin1Char(' '));
}

void CalibratedWalkers::write(const WalkerTries &walker, const PaceCalibration &calibration) {
  if (!walker.spellings.isEmpty())
    mFeedback->pushInfo(
        tr("Walker “%1”: also written %2; taken for one.")
            .arg(walker.name, QStringLiteral("“%1”").arg(walker.spellings.join(QStringLiteral("”, “")))));
  if (mReader.given(triesKey) && !mTries)
    mTries = std::make_unique<VectorOutput>(mReader, triesKey, tryFields(), host::noGeometry,
                                            QgsCoordinateReferenceSystem());
  if (mTries)
    writeTries(walker, calibration);
  if (calibration.none) {
    const QString message = tr("Walker “%1” is left out: %2").arg(walker.name, inWords(*calibration.none, calibration));
    if (mLeftOut == 0)
      mFirst = message;
    if (++mLeftOut <= toldEach)
      mFeedback->pushWarning(message);
    return;
  }
  const QString words = note(calibration);
  if ((calibration.flagged > 0 || nobodySteps(calibration.steps_per_100m, mKind)) && ++mTold <= toldEach)
    mFeedback->pushWarning(tr("Walker “%1”: %2").arg(walker.name, words));
  mFlagged += long(calibration.flagged);
  mUsed += long(calibration.used);
  ++mWritten;

  if (!mOutput)
    mOutput =
        std::make_unique<VectorOutput>(mReader, outputKey, fields(), host::noGeometry, QgsCoordinateReferenceSystem());
  const double given = countGiven(calibration.steps_per_100m, mKind), share = given / calibration.steps_per_100m;
  const QVariantList interval = ends(calibration.interval, share);
  const QVariantList slopes = calibration.slope
                                  ? QVariantList{calibration.slope->factor} + ends(calibration.slope->interval)
                                  : QVariantList{QVariant(), QVariant(), QVariant()};
  QgsFeature row;
  row.setAttributes(QVector<QVariant>{
      walker.name, given, static_cast<int>(mKind), orNull(calibration.pace_error_percent), QVariant(), QVariant(),
      QVariant(), int(calibration.tries.size()), int(calibration.used), int(calibration.flagged),
      calibration.paced.metres(), timesOrNull(calibration.spread, share), interval[0], interval[1],
      100 / calibration.steps_per_100m, slopes[0], slopes[1], slopes[2], words});
  mOutput->add(row);
}

void CalibratedWalkers::writeTries(const WalkerTries &walker, const PaceCalibration &calibration) {
  for (size_t i = 0; i < calibration.tries.size(); ++i) {
    const JudgedTry &judged = calibration.tries[i];
    const PaceTry &each = walker.tries[i];
    QStringList reasons;
    if (judged.flag != TryFlag::None)
      reasons
          << (judged.used ? tr("Kept, as too few would be left: %1.") : tr("Left out: %1.")).arg(inWords(judged.flag));
    if (calibration.none)
      reasons << tr("Walker left out: %1").arg(inWords(*calibration.none, calibration));
    QgsFeature row;
    row.setAttributes(QVector<QVariant>{walker.name, int(i + 1), int(walker.features[i]), each.distance.metres(),
                                        each.count, each.slope.degrees(), judged.steps_per_100m,
                                        calibration.none ? QVariant() : QVariant(judged.residual_percent),
                                        wordOf(judged.flag), int(judged.used && !calibration.none),
                                        reasons.isEmpty() ? QVariant() : QVariant(reasons.join(QLatin1Char(' ')))});
    mTries->add(row);
  }
}

QVariantMap CalibratedWalkers::finish() {
  if (!mOutput)
    throw QgsProcessingException(
        tr("There is no number for any of the %n walker(s). %1", nullptr, int(mLeftOut)).arg(mFirst));
  QVariantMap results = VectorOutput::finishAll({{mOutput.get(), QString()}, {mTries.get(), QString()}}, mFeedback);
  results.insert(walkersKey, double(mWritten));
  results.insert(usedKey, double(mUsed));
  mFeedback->pushInfo(tr("Walkers: %1; tries used: %2, flagged: %3.").arg(mWritten).arg(mUsed).arg(mFlagged));
  if (mLeftOut > 0)
    mFeedback->pushWarning(
        tr("%n walker(s) left out in all. They are not in the output, and Annotate legs will have no "
           "legs for them.",
           nullptr, int(mLeftOut)));
  return results;
}

} // namespace brushline
