#include "paper/font.hpp"

#include <algorithm>
#include <utility>

#include "paper/font_text.hpp"

namespace stringcourse::paper {
namespace {

constexpr std::uint32_t kOpenTypeWithCff = 0x4F54544F;  // "OTTO"

/// The part of `bytes` from `at` on, at most `length` long.
Bytes part(Bytes bytes, std::size_t at, std::size_t length) {
  if (at >= bytes.size()) return {};
  return bytes.subspan(at, std::min(length, bytes.size() - at));
}

bool is_tag(Bytes bytes, std::size_t at, std::string_view tag) {
  const Bytes name = part(bytes, at, 4);
  return std::ranges::equal(name, tag, {}, {}, [](char c) { return static_cast<std::uint8_t>(c); });
}

/// The Unicode subtable to use: the last of formats 4 and 12, which stand in rising order of reach.
Bytes unicode_subtable(Bytes map) {
  Bytes chosen;
  const int count = read_u16(map, 2);
  for (int k = 0; k < count; ++k) {
    const std::size_t record = 4 + 8 * static_cast<std::size_t>(k);
    const Bytes candidate = part(map, read_u32(map, record + 4), map.size());
    const int format = read_u16(candidate, 0);
    if (format == 4 || format == 12) chosen = candidate;
  }
  return chosen;
}

/// First index below `count` whose 16- or 32-bit end code is not below `code`; `count` if there is none.
template <typename EndAt>
std::size_t first_segment(std::size_t count, std::uint32_t code, EndAt end_at) {
  std::size_t low = 0, high = count;
  while (low < high) {
    const std::size_t middle = (low + high) / 2;
    if (end_at(middle) < code) low = middle + 1;
    else high = middle;
  }
  return low;
}

GlyphId glyph_by_segments(Bytes map, std::uint32_t code) {  // format 4
  if (code > 0xFFFF) return kMissingGlyph;
  const std::size_t doubled = read_u16(map, 6) & ~std::size_t{1};
  const std::size_t starts = 16 + doubled, deltas = starts + doubled, offsets = deltas + doubled;
  const std::size_t k = first_segment(doubled / 2, code, [&](std::size_t i) { return read_u16(map, 14 + 2 * i); });
  if (k == doubled / 2) return kMissingGlyph;
  const std::uint32_t start = read_u16(map, starts + 2 * k);
  if (code < start) return kMissingGlyph;
  const std::uint32_t delta = read_u16(map, deltas + 2 * k), offset = read_u16(map, offsets + 2 * k);
  if (offset == 0) return static_cast<GlyphId>(code + delta);
  const GlyphId listed = read_u16(map, offsets + 2 * k + offset + 2 * (code - start));
  return listed == 0 ? kMissingGlyph : static_cast<GlyphId>(listed + delta);
}

GlyphId glyph_by_groups(Bytes map, std::uint32_t code) {  // format 12
  const std::size_t count = std::min<std::size_t>(read_u32(map, 12), map.size() / 12);
  const std::size_t k = first_segment(count, code, [&](std::size_t i) { return read_u32(map, 16 + 12 * i + 4); });
  if (k == count || code < read_u32(map, 16 + 12 * k)) return kMissingGlyph;
  return static_cast<GlyphId>(read_u32(map, 16 + 12 * k + 8) + (code - read_u32(map, 16 + 12 * k)));
}

}  // namespace

std::uint16_t read_u16(Bytes bytes, std::size_t at) {
  if (at >= bytes.size() || bytes.size() - at < 2) return 0;
  return static_cast<std::uint16_t>((bytes[at] << 8) | bytes[at + 1]);
}

std::uint32_t read_u32(Bytes bytes, std::size_t at) {
  if (at >= bytes.size() || bytes.size() - at < 4) return 0;
  return (std::uint32_t{read_u16(bytes, at)} << 16) | read_u16(bytes, at + 2);
}

Bytes Font::table(std::string_view tag) const {
  const int count = read_u16(file_, 4);
  for (int k = 0; k < count; ++k) {
    const std::size_t record = 12 + 16 * static_cast<std::size_t>(k);
    if (is_tag(file_, record, tag)) return part(file_, read_u32(file_, record + 8), read_u32(file_, record + 12));
  }
  return {};
}

std::optional<Font> Font::read(Bytes file) {
  if (read_u32(file, 0) != kOpenTypeWithCff) return std::nullopt;
  Font face(file);
  face.units_per_em_ = read_u16(face.table("head"), 18);
  face.width_count_ = read_u16(face.table("hhea"), 34);
  face.glyph_count_ = read_u16(face.table("maxp"), 4);
  face.capital_height_ = static_cast<std::int16_t>(read_u16(face.table("OS/2"), 88));
  face.widths_ = face.table("hmtx");
  face.character_map_ = unicode_subtable(face.table("cmap"));
  const bool whole = face.units_per_em_ > 0 && face.capital_height_ > 0 && face.width_count_ > 0 &&
                     face.glyph_count_ > 0 && !face.character_map_.empty() &&
                     face.widths_.size() >= 4 * static_cast<std::size_t>(face.width_count_);
  if (!whole) return std::nullopt;
  for (std::size_t character = 0; character < face.plain_.size(); ++character) {
    face.plain_[character] = face.glyph_in_map(static_cast<char32_t>(character));
  }
  return face;
}

GlyphId Font::glyph(char32_t character) const {
  return character < plain_.size() ? plain_[character] : glyph_in_map(character);
}

GlyphId Font::glyph_in_map(char32_t character) const {
  const GlyphId found = read_u16(character_map_, 0) == 12 ? glyph_by_groups(character_map_, character)
                                                          : glyph_by_segments(character_map_, character);
  return found < glyph_count_ ? found : kMissingGlyph;
}

std::int32_t Font::advance(GlyphId glyph) const {
  const std::size_t entry = static_cast<std::size_t>(std::min<std::int32_t>(glyph, width_count_ - 1));
  return read_u16(widths_, 4 * entry);
}

FontFiles embedded_fonts() { return {font_file(Weight::Regular), font_file(Weight::Bold)}; }

bool FontFiles::whole() const {
  return std::ranges::all_of(std::array{Weight::Regular, Weight::Bold}, [&](Weight weight) {
    const std::optional<Font> face = Font::read(of(weight));
    return face && !face->table("CFF ").empty() && face->glyph_count() == font(weight).glyph_count();
  });
}

const Font& font(Weight weight) {
  // An embedded file that cannot be read is our own fault: the build carries the wrong bytes.
  const auto embedded = [](Weight w) {
    const std::optional<Font> face = Font::read(font_file(w));
    if (!face) __builtin_trap();
    return *face;
  };
  static const Font regular = embedded(Weight::Regular);
  static const Font bold = embedded(Weight::Bold);
  return weight == Weight::Bold ? bold : regular;
}

std::u32string missing_characters(std::string_view text, Weight weight) {
  std::u32string characters = drawable_characters(text);
  std::erase_if(characters, [&](char32_t c) { return font(weight).glyph(c) != kMissingGlyph; });
  return characters;
}

/// Sum of advances, scaled so that capitals are `height` tall; rounded once, to the nearest micrometre.
std::int64_t text_units(const std::string& text, Weight weight) {
  const Font& face = font(weight);
  std::int64_t units = 0;
  const bool plain = std::ranges::all_of(text, [](char byte) { return byte >= ' ' && byte <= '~'; });
  if (plain) {  // nothing is left out of it
    for (const char byte : text) units += face.advance(face.glyph(static_cast<unsigned char>(byte)));
  } else {
    for (const char32_t character : drawable_characters(text)) units += face.advance(face.glyph(character));
  }
  return units;
}

Micrometres width_of_units(std::int64_t units, Micrometres height, Weight weight) {
  const std::int64_t capital = font(weight).capital_height();
  const std::int64_t width = (2 * units * height + capital) / (2 * capital);
  return static_cast<Micrometres>(std::min<std::int64_t>(width, INT32_MAX));
}

Micrometres text_width(const std::string& text, Micrometres height, Weight weight) {
  return width_of_units(text_units(text, weight), height, weight);
}

}  // namespace stringcourse::paper
