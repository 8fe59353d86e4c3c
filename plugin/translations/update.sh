#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-2.0-or-later
# Brings the translations up to date with the texts in the sources: new ones come in unfinished, those that are gone
# go. Then translate them (linguist brushline_de.ts) and run the tests, which want every one of them finished. English
# has its plurals alone: the texts in the sources say "leg(s)".
set -euo pipefail
cd -P "$(dirname "${BASH_SOURCE[0]}")/../.."
for language in de fr; do
  lupdate -silent -locations none -no-obsolete -source-language en -target-language "$language" -extensions cpp,h \
    algorithms plugin -ts "plugin/translations/brushline_$language.ts"
done
lupdate -silent -locations none -no-obsolete -pluralonly -source-language en -target-language en -extensions cpp,h \
  algorithms plugin -ts plugin/translations/brushline_en.ts
