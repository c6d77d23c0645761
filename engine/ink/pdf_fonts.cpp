#include "ink/pdf_fonts.hpp"

#include <algorithm>

#include "ink/cff_subset.hpp"
#include "ink/paint.hpp"
#include "paper/font_text.hpp"

namespace stringcourse::ink {

using paper::Font;
using paper::Weight;

namespace {

std::size_t slot(Weight weight) { return weight == Weight::Bold ? 1 : 0; }

/// Six letters that tell one subset from another (ISO 32000-1:2008 9.6.4), from a hash of the glyphs used.
std::string subset_tag(const std::vector<char32_t>& characters) {
  std::uint64_t hash = 0xCBF29CE484222325;
  for (const char32_t c : characters) hash = (hash ^ (c == 0 ? 0u : 1u)) * 0x100000001B3;
  std::string tag;
  for (int k = 0; k < 6; ++k, hash /= 26) tag += static_cast<char>('A' + hash % 26);
  return tag + '+';
}

std::string font_name(Weight weight, const std::vector<char32_t>& characters) {
  return subset_tag(characters) + (weight == Weight::Bold ? "B612-Bold" : "B612-Regular");
}

/// Font units as thousandths of an em, with decimals.
void append_em_thousandths(std::string& out, const Font& face, std::int32_t units) {
  append_thousandths(out, nearest_quotient(std::int64_t{units} * 1'000'000, face.units_per_em()));
}

std::string widths_text(const Font& face, const std::vector<char32_t>& characters) {
  std::string text;
  for (std::size_t glyph = 0; glyph < characters.size(); ++glyph) {
    if (characters[glyph] == 0) continue;
    append_whole(text, static_cast<std::int64_t>(glyph));
    text += " [";
    append_em_thousandths(text, face, face.advance(static_cast<paper::GlyphId>(glyph)));
    text += "] ";
  }
  return text;
}

std::string character_lines(const std::vector<std::size_t>& glyphs, const std::vector<char32_t>& characters) {
  std::string text;
  for (std::size_t first = 0; first < glyphs.size(); first += 100) {  // at most 100 in one block
    const std::size_t end = std::min(glyphs.size(), first + 100);
    append_whole(text, static_cast<std::int64_t>(end - first));
    text += " beginbfchar\n";
    for (std::size_t k = first; k < end; ++k) {
      text += '<';
      append_hexadecimal(text, glyphs[k], 4);
      text += "> <";
      append_hexadecimal(text, characters[glyphs[k]], 4);  // all of the font's characters fit 16 bits
      text += ">\n";
    }
    text += "endbfchar\n";
  }
  return text;
}

/// From codes back to characters, so that a search finds 47 5/8".
std::string to_unicode_map(const std::vector<char32_t>& characters) {
  std::vector<std::size_t> glyphs;
  for (std::size_t glyph = 0; glyph < characters.size(); ++glyph) {
    if (characters[glyph] != 0) glyphs.push_back(glyph);
  }
  return "/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n"
         "/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def\n"
         "/CMapName /Adobe-Identity-UCS def\n/CMapType 2 def\n"
         "1 begincodespacerange\n<0000> <FFFF>\nendcodespacerange\n" +
         character_lines(glyphs, characters) + "endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend";
}

std::string descriptor_text(const Font& face, Weight weight, const std::string& name, int program) {
  const paper::Bytes head = face.table("head"), hhea = face.table("hhea");
  const auto signed_at = [](paper::Bytes table, std::size_t at) {
    return static_cast<std::int16_t>(paper::read_u16(table, at));
  };
  std::string text = "<< /Type /FontDescriptor /FontName /" + name + " /Flags 4 /ItalicAngle 0 /FontBBox [";
  for (std::size_t at = 36; at < 44; at += 2) {
    append_em_thousandths(text, face, signed_at(head, at));
    text += ' ';
  }
  text += "] /Ascent ";
  append_em_thousandths(text, face, signed_at(hhea, 4));
  text += " /Descent ";
  append_em_thousandths(text, face, signed_at(hhea, 6));
  text += " /CapHeight ";
  append_em_thousandths(text, face, face.capital_height());
  text += weight == Weight::Bold ? " /StemV 150" : " /StemV 90";  // only a hint for a reader that lacks the font
  return text + " /FontFile3 " + reference(program) + " >>";
}

}  // namespace

UsedGlyphs::UsedGlyphs() {
  for (const Weight weight : kWeights) {
    characters_[slot(weight)].assign(static_cast<std::size_t>(paper::font(weight).glyph_count()), 0);
    add(weight, paper::kMissingGlyph, paper::kReplacement);
  }
}

void UsedGlyphs::add(Weight weight, paper::GlyphId glyph, char32_t character) {
  char32_t& known = characters_[slot(weight)][glyph];
  if (known == 0 || character < known) known = character;
}

void UsedGlyphs::add(const UsedGlyphs& others) {
  for (const Weight weight : kWeights) {
    const std::vector<char32_t>& more = others.characters(weight);
    for (std::size_t glyph = 0; glyph < more.size(); ++glyph) {
      if (more[glyph] != 0) add(weight, static_cast<paper::GlyphId>(glyph), more[glyph]);
    }
  }
}

const std::vector<char32_t>& UsedGlyphs::characters(Weight weight) const { return characters_[slot(weight)]; }

FontObjects reserve_font(PdfObjects& objects) {
  return {objects.reserve(), objects.reserve(), objects.reserve(), objects.reserve(), objects.reserve()};
}

void write_font(PdfObjects& objects, const FontObjects& numbers, Weight weight, const UsedGlyphs& used,
                const paper::FontFiles& fonts) {
  const Font& face = paper::font(weight);
  const std::vector<char32_t>& characters = used.characters(weight);
  const std::string name = font_name(weight, characters);
  objects.write(numbers.font, "<< /Type /Font /Subtype /Type0 /BaseFont /" + name +
                                  "-Identity-H /Encoding /Identity-H /DescendantFonts [" +
                                  reference(numbers.descendant) + "] /ToUnicode " + reference(numbers.to_unicode) +
                                  " >>");
  objects.write(numbers.descendant,
                "<< /Type /Font /Subtype /CIDFontType0 /BaseFont /" + name +
                    " /CIDSystemInfo << /Registry (Adobe) /Ordering (Identity) /Supplement 0 >> /FontDescriptor " +
                    reference(numbers.descriptor) + " /W [" + widths_text(face, characters) + "] >>");
  objects.write(numbers.descriptor, descriptor_text(face, weight, name, numbers.program));
  std::vector<bool> kept;
  for (const char32_t character : characters) kept.push_back(character != 0);
  objects.write_stream(numbers.program, "/Subtype /CIDFontType0C",
                       subset_cff(Font::read(fonts.of(weight))->table("CFF "), kept));
  objects.write_stream(numbers.to_unicode, "/Type /CMap /CMapName /Adobe-Identity-UCS", to_unicode_map(characters));
}

}  // namespace stringcourse::ink
