#pragma once
// The sheets' two fonts as PDF objects: each embedded once, with only the outlines that were used.
#include <array>
#include <string>
#include <vector>

#include "ink/pdf_objects.hpp"
#include "paper/font.hpp"

namespace stringcourse::ink {

inline constexpr std::array kWeights{paper::Weight::Regular, paper::Weight::Bold};

/// Which glyphs were drawn, and for which character (the lowest, where several share one): what the fonts must hold.
class UsedGlyphs {
 public:
  UsedGlyphs();
  void add(paper::Weight weight, paper::GlyphId glyph, char32_t character);
  void add(const UsedGlyphs& others);
  /// By glyph number; 0: not used.
  [[nodiscard]] const std::vector<char32_t>& characters(paper::Weight weight) const;

 private:
  std::array<std::vector<char32_t>, 2> characters_;
};

/// Object numbers of one font, kept free from the start so that pages can name it before its glyphs are known.
struct FontObjects {
  int font = 0, descendant = 0, descriptor = 0, program = 0, to_unicode = 0;
};
[[nodiscard]] FontObjects reserve_font(PdfObjects& objects);

/// Writes a font: Type 0, Identity-H, CIDFontType0C; glyph numbers are the codes. ISO 32000-1:2008 9.7, 9.9, 9.10.
void write_font(PdfObjects& objects, const FontObjects& numbers, paper::Weight weight, const UsedGlyphs& used,
                const paper::FontFiles& fonts);

}  // namespace stringcourse::ink
