#pragma once
// Reader of the sheets' font, B612 Regular and Bold (OpenType with CFF outlines, SIL Open Font License 1.1). Only what
// drawings need: which glyph draws a character, how wide it is, how tall capitals are, and the raw tables to embed.
// Table layouts: OpenType specification 1.9 (head, hhea, hmtx, maxp, cmap formats 4 and 12, OS/2).
#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

#include "paper/display.hpp"

namespace stringcourse::paper {

using Bytes = std::span<const std::uint8_t>;
using GlyphId = std::uint16_t;

/// Draws a hollow box in B612: what stands for a character that the font lacks.
inline constexpr GlyphId kMissingGlyph = 0;

/// Big-endian numbers of a table; 0 where the table is too short, so that a damaged font is misread, never overrun.
[[nodiscard]] std::uint16_t read_u16(Bytes bytes, std::size_t at);
[[nodiscard]] std::uint32_t read_u32(Bytes bytes, std::size_t at);

/// One face. A view: the bytes must outlive it.
class Font {
 public:
  /// Reads a face; nothing if the bytes are no OpenType font with the tables named above (outlines may be missing).
  [[nodiscard]] static std::optional<Font> read(Bytes file);

  /// The glyph that draws `character`; kMissingGlyph if the font lacks it.
  [[nodiscard]] GlyphId glyph(char32_t character) const;
  /// Advance width in font units.
  [[nodiscard]] std::int32_t advance(GlyphId glyph) const;
  [[nodiscard]] std::int32_t units_per_em() const { return units_per_em_; }
  /// Height of capitals in font units (OS/2 sCapHeight).
  [[nodiscard]] std::int32_t capital_height() const { return capital_height_; }
  [[nodiscard]] std::int32_t glyph_count() const { return glyph_count_; }
  /// A table's bytes by its four-letter tag; empty if there is none.
  [[nodiscard]] Bytes table(std::string_view tag) const;

 private:
  explicit Font(Bytes file) : file_(file) {}
  [[nodiscard]] GlyphId glyph_in_map(char32_t character) const;

  Bytes file_, character_map_, widths_;
  std::int32_t units_per_em_ = 0, capital_height_ = 0, glyph_count_ = 0, width_count_ = 0;
  std::array<GlyphId, 128> plain_{};  // those of ASCII, looked up once
};

/// The embedded OpenType file of a weight. In the page's module it has no outlines.
[[nodiscard]] Bytes font_file(Weight weight);
/// Both whole files, for what embeds them. Views: the bytes must outlive them.
struct FontFiles {
  Bytes regular, bold;
  [[nodiscard]] Bytes of(Weight weight) const { return weight == Weight::Bold ? bold : regular; }
  /// Both are the fonts that drawings are measured with, outlines included.
  [[nodiscard]] bool whole() const;
};
/// Those that are embedded; not whole in the page's module.
[[nodiscard]] FontFiles embedded_fonts();
/// The embedded face of a weight.
[[nodiscard]] const Font& font(Weight weight);

/// Characters of `text` that the font lacks: drawn as boxes.
[[nodiscard]] std::u32string missing_characters(std::string_view text, Weight weight);

/// How far a text goes on, in the font's own units: those of texts set one after the other add up.
[[nodiscard]] std::int64_t text_units(const std::string& text, Weight weight);
/// The width of so many units in letters so high; see text_width().
[[nodiscard]] Micrometres width_of_units(std::int64_t units, Micrometres height, Weight weight);

}  // namespace stringcourse::paper
