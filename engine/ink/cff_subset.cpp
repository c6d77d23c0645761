#include "ink/cff_subset.hpp"

#include <algorithm>
#include <optional>

namespace stringcourse::ink {
namespace {

using paper::Bytes;
using paper::read_u16;
using paper::read_u32;

/// An INDEX: a counted list of byte strings.
struct Index {
  std::size_t count = 0;
  std::size_t offsets_at = 0;  // of its offset array
  std::size_t offset_size = 1;
  std::size_t end = 0;  // first byte after it
};

std::size_t read_offset(Bytes table, const Index& index, std::size_t k) {
  std::size_t value = 0;
  for (std::size_t b = 0; b < index.offset_size; ++b) {
    const std::size_t at = index.offsets_at + k * index.offset_size + b;
    value = value << 8 | (at < table.size() ? table[at] : 0u);
  }
  return value;
}

std::size_t entry_at(Bytes table, const Index& index, std::size_t k) {
  return index.offsets_at + (index.count + 1) * index.offset_size - 1 + read_offset(table, index, k);
}

std::optional<Index> read_index(Bytes table, std::size_t at) {
  if (at + 2 > table.size()) return std::nullopt;
  const std::size_t count = read_u16(table, at);
  if (count == 0) return Index{0, at + 2, 1, at + 2};
  if (at + 3 > table.size()) return std::nullopt;
  Index index{count, at + 3, table[at + 2], 0};
  if (index.offset_size < 1 || index.offset_size > 4) return std::nullopt;
  index.end = entry_at(table, index, count);
  if (index.end > table.size()) return std::nullopt;
  for (std::size_t k = 0; k < count; ++k) {
    if (read_offset(table, index, k) < 1 || read_offset(table, index, k) > read_offset(table, index, k + 1)) {
      return std::nullopt;
    }
  }
  return index;
}

/// One number of a dictionary: its value, where it stands, how many bytes it takes.
struct Operand {
  std::int64_t value = 0;
  std::size_t at = 0, length = 1;
};

/// Length of a real number (nibbles up to an 0xF).
std::size_t real_length(Bytes table, std::size_t at) {
  std::size_t k = at + 1;
  while (k < table.size() && (table[k] & 0x0F) != 0x0F && (table[k] >> 4) != 0x0F) ++k;
  return k + 1 - at;
}

Operand read_operand(Bytes table, std::size_t at) {
  const int first = table[at];
  const int next = at + 1 < table.size() ? table[at + 1] : 0;
  if (first == 28) return {static_cast<std::int16_t>(read_u16(table, at + 1)), at, 3};
  if (first == 29) return {static_cast<std::int32_t>(read_u32(table, at + 1)), at, 5};
  if (first == 30) return {0, at, real_length(table, at)};
  if (first <= 246) return {first - 139, at, 1};
  if (first <= 250) return {(first - 247) * 256 + next + 108, at, 2};
  return {-(first - 251) * 256 - next - 108, at, 2};
}

/// What the top dictionary says of places: charset (operator 15), Encoding (16), CharStrings (17), Private (18: size
/// and place).
struct TopDictionary {
  std::size_t last_before = 0;  // the later of charset and Encoding
  std::size_t outlines = 0;
  Operand private_place;
};

TopDictionary read_top_dictionary(Bytes table, std::size_t at, std::size_t end) {
  TopDictionary top;
  Operand last;
  while (at < end) {
    const int first = table[at];
    if (first <= 21) {
      const auto value = static_cast<std::size_t>(last.value);
      if (first == 15 || first == 16) top.last_before = std::max(top.last_before, value);
      if (first == 17) top.outlines = value;
      if (first == 18) top.private_place = last;
      at += first == 12 ? 2 : 1;
      continue;
    }
    last = read_operand(table, at);
    at += last.length;
  }
  return top;
}

void append_number(std::string& out, std::size_t value, int bytes) {
  for (int shift = 8 * (bytes - 1); shift >= 0; shift -= 8) out += static_cast<char>((value >> shift) & 0xFF);
}

std::string_view text_of(Bytes table, std::size_t from, std::size_t to) {
  return {reinterpret_cast<const char*>(table.data()) + from, to - from};
}

/// The outlines anew; an emptied one is the single operator "endchar".
std::string subset_outlines(Bytes table, const Index& outlines, const std::vector<bool>& used) {
  std::string head, body;
  append_number(head, outlines.count, 2);
  append_number(head, 3, 1);  // three-byte offsets reach 16 MB
  append_number(head, 1, 3);
  for (std::size_t k = 0; k < outlines.count; ++k) {
    const bool kept = k == 0 || (k < used.size() && used[k]);
    if (kept) body += text_of(table, entry_at(table, outlines, k), entry_at(table, outlines, k + 1));
    else body += '\x0E';
    append_number(head, body.size() + 1, 3);
  }
  return head + body;
}

}  // namespace

std::string subset_cff(Bytes table, const std::vector<bool>& used) {
  const std::string whole(text_of(table, 0, table.size()));
  if (table.size() < 4) return whole;
  const auto names = read_index(table, table[2]);
  if (!names) return whole;
  const auto tops = read_index(table, names->end);
  if (!tops || tops->count != 1) return whole;
  const TopDictionary top = read_top_dictionary(table, entry_at(table, *tops, 0), tops->end);
  const auto outlines = read_index(table, top.outlines);
  const auto private_at = static_cast<std::size_t>(top.private_place.value);
  if (!outlines || top.outlines < tops->end || top.last_before >= top.outlines) return whole;
  if (top.private_place.length != 5 || private_at != outlines->end) return whole;

  std::string subset(text_of(table, 0, top.outlines));
  subset += subset_outlines(table, *outlines, used);
  std::string place;
  append_number(place, subset.size(), 4);
  subset.replace(top.private_place.at + 1, 4, place);
  subset += text_of(table, private_at, table.size());
  return subset;
}

}  // namespace stringcourse::ink
