#include "paper/font.hpp"

#include <array>

#include "paper/font_text.hpp"
#include "unit/ink/outside_tools.hpp"

namespace stringcourse::ink_test {
namespace {

using paper::Bytes;
using paper::Font;
using paper::text_width;
using paper::Weight;

/// Widths as Python reads them from the font file itself: struct only, cmap format 4 walked segment by segment.
/// One line of `texts` each, to one number each.
std::string widths_read_by_python(const std::string& file, const std::string& texts) {
  const std::string script = write_file(
      "widths.py",
      "import struct, sys\n"
      "d = open(sys.argv[1], 'rb').read()\n"
      "t = {}\n"
      "for i in range(struct.unpack_from('>H', d, 4)[0]):\n"
      "    tag, _, at, _ = struct.unpack_from('>4sIII', d, 12 + 16 * i); t[tag] = at\n"
      "metrics = struct.unpack_from('>H', d, t[b'hhea'] + 34)[0]\n"
      "s = t[b'cmap'] + struct.unpack_from('>I', d, t[b'cmap'] + 8)[0]\n"
      "n = struct.unpack_from('>H', d, s + 6)[0] // 2\n"
      "end = struct.unpack_from('>%dH' % n, d, s + 14)\n"
      "start = struct.unpack_from('>%dH' % n, d, s + 16 + 2 * n)\n"
      "delta = struct.unpack_from('>%dH' % n, d, s + 16 + 4 * n)\n"
      "offset = struct.unpack_from('>%dH' % n, d, s + 16 + 6 * n)\n"
      "def glyph(c):\n"
      "    for k in range(n):\n"
      "        if start[k] <= c <= end[k]:\n"
      "            if offset[k] == 0: return (c + delta[k]) % 65536\n"
      "            g = struct.unpack_from('>H', d, s + 16 + 6 * n + 2 * k + offset[k] + 2 * (c - start[k]))[0]\n"
      "            return (g + delta[k]) % 65536 if g else 0\n"
      "    return 0\n"
      "def advance(g): return struct.unpack_from('>H', d, t[b'hmtx'] + 4 * min(g, metrics - 1))[0]\n"
      "for line in open(sys.argv[2], encoding='utf-8'):\n"
      "    print(sum(advance(glyph(ord(c))) for c in line.rstrip('\\n')))\n");
  return run("python3 " + script + " " + file + " " + write_file("words.txt", texts)).output;
}

TEST(Font, WidthsAgreeWithAnIndependentReadingOfTheFile) {
  const std::array files{std::pair{Weight::Regular, "B612-Regular.otf"}, std::pair{Weight::Bold, "B612-Bold.otf"}};
  for (const auto& [weight, name] : files) {
    const std::string file = std::string(STRINGCOURSE_ROOT) + "/engine/paper/fonts/" + name;
    std::string lines, widths;
    for (const char* text :
         {"14'-7 5/16\" = 175 5/16\"", "Wall AB, course 3", "Größe ½ ⅜ ′ ″ Ø → ✓ ☐", "\u25B3\u2044 lacking", ""}) {
      // At a capital height of 1500 micrometres one font unit (of 2000 to the em, capitals 1500) is one micrometre.
      lines += std::string(text) + '\n';
      widths += std::to_string(text_width(text, 1'500, weight)) + '\n';
    }
    EXPECT_EQ(widths, widths_read_by_python(file, lines));
  }
}

TEST(Font, WidthGrowsWithHeightAndRoundsOnce) {
  const paper::Micrometres units = text_width("5/16\"", 1'500, Weight::Regular);
  EXPECT_EQ(text_width("5/16\"", 3'000, Weight::Regular), 2 * units);
  EXPECT_EQ(text_width("5/16\"", 15'000, Weight::Regular), 10 * units);
}

TEST(Font, KnowsWhatItLacks) {
  EXPECT_EQ(paper::missing_characters("1\u2044"
                                      "2 \u25B3 5/8\"",
                                      Weight::Regular),
            U"\u2044\u25B3");
  EXPECT_EQ(paper::missing_characters("14'-7 5/16\" ½ ¼ ¾ ⅛ ⅜ ⅝ ⅞ ′ ″ Ø ≥ ± × ° – — → ✓ ☐", Weight::Bold), U"");
}

TEST(Font, IllFormedTextIsReplacedAndControlsLeftOut) {
  using paper::drawable_characters;
  EXPECT_EQ(drawable_characters("a\x80z"), U"a\uFFFDz");            // tail byte without a lead
  EXPECT_EQ(drawable_characters("a\xC3"), U"a\uFFFD");              // cut short
  EXPECT_EQ(drawable_characters("\xE2\x82z"), U"\uFFFDz");          // cut short within a text
  EXPECT_EQ(drawable_characters("\xC0\xAF"), U"\uFFFD\uFFFD");      // overlong: C0 is never a lead
  EXPECT_EQ(drawable_characters("\xE0\x80\xAF!"), U"\uFFFD!");      // overlong in three bytes
  EXPECT_EQ(drawable_characters("\xED\xA0\x80!"), U"\uFFFD!");      // a surrogate
  EXPECT_EQ(drawable_characters("\xF4\x90\x80\x80!"), U"\uFFFD!");  // above U+10FFFF
  EXPECT_EQ(drawable_characters("\xF0\x9F\x98\x80"), U"\U0001F600");
  EXPECT_EQ(drawable_characters("a\n\t\x7F\u202E\u200Bb"), U"ab");
}

TEST(Font, EveryCharacterSurvivesWritingAndReading) {
  for (char32_t c : {U'A', U'\u00BD', U'\u2033', U'\U0001F600', U'\U0010FFFD'}) {
    EXPECT_EQ(paper::drawable_characters(paper::utf8_of(c)), std::u32string(1, c));
  }
  EXPECT_EQ(paper::utf8_of(0xD800), "\uFFFD");
}

TEST(Font, CutOrDamagedFilesAreRefusedOrMisreadButNeverOverrun) {
  const Bytes whole = paper::font_file(Weight::Regular);
  EXPECT_FALSE(Font::read({}).has_value());
  int refused = 0;
  for (std::size_t length = 0; length < whole.size(); length += 397) {
    const std::vector<std::uint8_t> cut(whole.begin(), whole.begin() + static_cast<std::ptrdiff_t>(length));
    const auto face = Font::read(cut);
    if (!face) ++refused;
    else EXPECT_EQ(face->advance(face->glyph(U'5')), paper::font(Weight::Regular).advance(face->glyph(U'5')));
  }
  EXPECT_GT(refused, 0);
  std::uint64_t seed = 7;
  for (int round = 0; round < 300; ++round) {
    std::vector<std::uint8_t> bytes(whole.begin(), whole.begin() + 3'000);
    for (int k = 0; k < 20; ++k) {
      seed = seed * 6364136223846793005u + 1442695040888963407u;
      bytes[(seed >> 33) % bytes.size()] = static_cast<std::uint8_t>(seed >> 20);
    }
    if (const auto face = Font::read(bytes)) EXPECT_LT(face->glyph(U'\u2044'), face->glyph_count());
  }
}

}  // namespace
}  // namespace stringcourse::ink_test
