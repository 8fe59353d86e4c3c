// SPDX-License-Identifier: GPL-2.0-or-later
// Names into markup and into lines that fit.
#include "fuzz_text.h"

#include "handouts/text_fit.h"
#include "handouts/xml_text.h"

using namespace brushline;

FUZZ(input) {
  std::u16string wide;
  for (size_t count = input.upTo(40); count > 0; --count)
    wide += input.flag() ? char16_t(input.upTo(0xFFFF))
                         : input.from({u'a',
                                       u'<',
                                       u' ',
                                       u'\n',
                                       u'\r',
                                       u'\t',
                                       u'\0',
                                       u'\x1F',
                                       u'\x7F',
                                       u'\x85',
                                       u'\xA0',
                                       char16_t(0xD800),
                                       char16_t(0xDBFF),
                                       char16_t(0xDC00),
                                       char16_t(0xDFFF),
                                       char16_t(0x202E),
                                       char16_t(0x2066),
                                       char16_t(0x061C),
                                       char16_t(0xFFFE),
                                       char16_t(0xFFFF),
                                       char16_t(0x2028)});
  if (const auto changed = forXml(wide)) {
    PROMISED(changed->text != wide && changed->text.size() <= wide.size());
    PROMISED(!forXml(changed->text)); // what came out needs no more changing
    for (const char16_t c : changed->text)
      PROMISED(c >= 0x20 && c < 0xFFFE);
  }

  const fuzz::PlainRuler ruler;
  const Face face{input.between(0.1, 100), input.flag()};
  const double width = input.from({0.0, -1.0, 1e-9, 1e300}) + input.between(0, 200);
  const int most = 1 + int(input.upTo(5));
  const std::string text = fuzz::name(input, 60);
  const FittedText fitted = fitText(text, face, width, most, ruler);
  PROMISED(fitted.lines.size() <= size_t(most));
  for (const std::string &line : fitted.lines)
    PROMISED(!line.empty());
  PROMISED(inOneLine(text, face, width, ruler).find('\n') == std::string::npos || text.find('\n') != std::string::npos);
  const Face small = narrowed(text, face, width, ruler);
  PROMISED(small.points <= face.points && (small.points >= smallestText || small.points == face.points));
}
