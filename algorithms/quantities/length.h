// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

namespace brushline {

//! A length or a height, metres inside.
class Length {
public:
  constexpr Length() = default;
  static constexpr Length metres(double value) { return Length(value); }
  constexpr double metres() const { return mMetres; }

  constexpr Length operator+(Length other) const { return Length(mMetres + other.mMetres); }
  constexpr Length operator-(Length other) const { return Length(mMetres - other.mMetres); }
  constexpr bool operator<(Length other) const { return mMetres < other.mMetres; }
  constexpr bool operator>(Length other) const { return mMetres > other.mMetres; }

private:
  constexpr explicit Length(double metres) : mMetres(metres) {}
  double mMetres = 0;
};

} // namespace brushline
