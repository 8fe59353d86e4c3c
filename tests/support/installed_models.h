// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "magnetics/world_magnetic_model.h"

#include <QtTest>

#include <fstream>
#include <sstream>
#include <stdexcept>
#include <string>

namespace brushline::test {

/**
 * While it lives, GeographicLib looks for magnetic models in a folder of our own, where it finds those written here
 * and no others.
 */
class InstalledModels {
public:
  InstalledModels() : mBefore(qgetenv(variable)), mWasSet(qEnvironmentVariableIsSet(variable)) {
    if (!mFolder.isValid())
      throw std::runtime_error("no temporary folder");
    qputenv(variable, mFolder.path().toLocal8Bit());
  }
  ~InstalledModels() {
    if (mWasSet)
      qputenv(variable, mBefore);
    else
      qunsetenv(variable);
  }
  InstalledModels(const InstalledModels &) = delete;
  InstalledModels &operator=(const InstalledModels &) = delete;

  std::string file(const std::string &name) const { return mFolder.path().toStdString() + "/" + name; }

  //! The coefficients in GeographicLib's format (its manual, "The format of the magnetic model files").
  void write(const std::string &name, const FieldCoefficients &coefficients) const {
    std::ostringstream about;
    about.imbue(std::locale::classic());
    about << "WMMF-1\n# made by a test\nName " << name << "\nDescription a test\nReleaseDate 2024-11-13\nRadius "
          << std::fixed << coefficients.radius_m << "\nNumModels 1\nEpoch " << coefficients.epoch << "\nMinTime "
          << coefficients.years.first << "\nMaxTime " << coefficients.years.last
          << "\nMinHeight -1000\nMaxHeight 850000\nNormalization schmidt\nByteOrder "
          << (Q_BYTE_ORDER == Q_LITTLE_ENDIAN ? "little" : "big") << "\nID WMM2025A\n";
    writeFile(name + ".wmm", about.str());

    std::string numbers = "WMM2025A";
    const auto add = [&](const auto &value) { numbers.append(reinterpret_cast<const char *>(&value), sizeof value); };
    const auto addBlock = [&](const std::vector<double> &c, const std::vector<double> &s) {
      add(int32_t(coefficients.degree));
      add(int32_t(coefficients.degree));
      for (double value : c)
        add(value);
      for (double value : s)
        add(value);
    };
    addBlock(coefficients.c, coefficients.s);
    addBlock(coefficients.c_change, coefficients.s_change);
    writeFile(name + ".wmm.cof", numbers);
  }

  void writeFile(const std::string &name, const std::string &content) const {
    std::ofstream out(file(name), std::ios::binary);
    out << content;
    if (!out.flush())
      throw std::runtime_error("cannot write " + name);
  }

  std::string readFile(const std::string &name) const {
    std::ifstream in(file(name), std::ios::binary);
    std::ostringstream content;
    content << in.rdbuf();
    if (!in)
      throw std::runtime_error("cannot read " + name);
    return content.str();
  }

private:
  static constexpr const char *variable = "GEOGRAPHICLIB_MAGNETIC_PATH";
  QTemporaryDir mFolder;
  QByteArray mBefore;
  bool mWasSet;
};

} // namespace brushline::test
