// SPDX-License-Identifier: GPL-2.0-or-later
// Bearings and amounts as people write them down.
#include "fuzz_input.h"

#include "records/bearing_text.h"

using namespace brushline;

FUZZ(input) {
  static const std::vector<std::string> words = {
      "N",    "E",    "S", "W",        "b", " by ", "°",   "'",      "\"",   "´",   "″",  "º",
      "˚",    ",",    ".", "0",        "4", "9",    "359", "360",    "6400", "400", "60", " deg",
      " mil", " gon", " ", "\xC2\xA0", "-", "–",    "−",   " paces", " m",   " km", "\t"};
  const DialUnit unit = input.from({DialUnit::Degrees, DialUnit::Mils, DialUnit::Gon});
  const std::string text = input.flag() ? input.wordsOf(words, 8) : input.rest();
  const auto read = readBearing(text, unit);
  if (const auto *bearing = std::get_if<WrittenBearing>(&read)) {
    PROMISED(fuzz::isBearing(bearing->angle.degrees()));
    PROMISED(bearing->coarseness.degrees() >= 0 && bearing->coarseness.degrees() <= 22.5);
    for (const Angle &swapped : bearing->swapped)
      PROMISED(fuzz::isBearing(swapped.degrees()));
  }
  for (const AmountKind kind : {AmountKind::Paces, AmountKind::Metres})
    if (const auto amount = readAmount(text, kind); const auto *value = std::get_if<double>(&amount))
      PROMISED(*value > 0 && std::isfinite(*value));

  const std::string plain = plainSpelling(text);
  PROMISED(plainSpelling(plain) == plain);
  for (const char c : plain)
    PROMISED((c & 0x80) == 0 && !(c >= 'a' && c <= 'z'));
  std::string_view rest = plain;
  const auto number = takeNumber(rest);
  if (const auto *taken = std::get_if<WrittenNumber>(&number)) {
    PROMISED(rest.size() < plain.size());
    PROMISED(taken->fraction >= 0 && taken->fraction < 1);
    PROMISED(taken->value() >= 0);
  }
}
