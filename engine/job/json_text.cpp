#include "job/json_text.hpp"

#include "job/words.hpp"
#include "measure/characters.hpp"

namespace stringcourse {
namespace {

/// The letter of a control character's short escape, or 0.
char short_escape(char c) {
  switch (c) {
    case '\b': return 'b';
    case '\t': return 't';
    case '\n': return 'n';
    case '\f': return 'f';
    case '\r': return 'r';
    case '"': return '"';
    case '\\': return '\\';
    default: return 0;
  }
}

void append_code_unit(std::string& out, std::uint32_t unit) {
  constexpr std::string_view kDigits = "0123456789abcdef";
  out += "\\u";
  for (int shift = 12; shift >= 0; shift -= 4) out += kDigits[(unit >> shift) & 0xF];
}

/// A character beyond U+FFFF is two code units.
void append_code(std::string& out, std::uint32_t point) {
  if (point > 0xFFFF) append_code_unit(out, 0xD800 + ((point - 0x10000) >> 10));
  append_code_unit(out, point > 0xFFFF ? 0xDC00 + ((point - 0x10000) & 0x3FF) : point);
}

/// Whether a character that must be escaped can begin with this byte; most texts hold none.
bool may_need_escape(unsigned char byte) {
  return byte < 0x20 || byte == '"' || byte == '\\' || byte == 0x7F || byte == 0xC2 || byte == 0xD8 || byte == 0xE1 ||
         byte == 0xE2 || byte == 0xEF || byte == 0xF3;
}

}  // namespace

void append_json_string(std::string& out, std::string_view text) {
  out += '"';
  for (std::size_t at = 0; at < text.size(); ++at) {
    const char c = text[at];
    if (!may_need_escape(static_cast<unsigned char>(c))) {
      out += c;
    } else if (const char letter = short_escape(c)) {
      out.append(1, '\\').append(1, letter);
    } else {
      const std::string_view character = character_at(text, at);
      const std::uint32_t point = code_point(character);
      if (point != kBroken && is_unshown(point)) append_code(out, point);
      else out += character;
      at += character.size() - 1;
    }
  }
  out += '"';
}

std::string json_string(std::string_view text) {
  std::string out;
  append_json_string(out, text);
  return out;
}

void JsonText::key(std::string_view name) {
  begin_entry();
  out_ += json_string(name);
  out_ += ": ";
  after_key_ = true;
}

void JsonText::whole(std::int64_t value) { put(number_text(value)); }

void JsonText::text_member(std::string_view name, std::string_view value) {
  key(name);
  text(value);
}

void JsonText::whole_member(std::string_view name, std::int64_t value) {
  key(name);
  whole(value);
}

void JsonText::put(std::string_view value) {
  if (!after_key_) begin_entry();
  after_key_ = false;
  out_ += value;
}

void JsonText::open(char bracket) {
  if (!after_key_) begin_entry();
  after_key_ = false;
  out_ += bracket;
  ++depth_;
  empty_ = true;
}

void JsonText::close(char bracket) {
  --depth_;
  if (!empty_) new_line();
  out_ += bracket;
  empty_ = false;
}

void JsonText::begin_entry() {
  if (depth_ == 0) return;
  if (!empty_) out_ += ',';
  new_line();
  empty_ = false;
}

void JsonText::new_line() {
  out_ += '\n';
  out_.append(2 * static_cast<std::size_t>(depth_), ' ');
}

}  // namespace stringcourse
