#include "job/json_text.hpp"

#include "job/words.hpp"

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

void append_escaped(std::string& out, char c) {
  constexpr std::string_view kDigits = "0123456789abcdef";
  const auto byte = static_cast<unsigned char>(c);
  if (const char letter = short_escape(c)) {
    out += '\\';
    out += letter;
  } else if (byte < 0x20) {
    out += "\\u00";
    out += kDigits[byte >> 4];
    out += kDigits[byte & 0xF];
  } else {
    out += c;
  }
}

}  // namespace

std::string json_string(std::string_view text) {
  std::string out = "\"";
  for (const char c : text) append_escaped(out, c);
  return out + '"';
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
