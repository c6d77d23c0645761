#include "document/json_out.hpp"

#include <charconv>

#include "job/json_text.hpp"

namespace stringcourse {

namespace {

constexpr std::size_t kBuffer = 1 << 16;

}  // namespace

void JsonOut::pass_on_when_full() {
  if (buffer_.size() < kBuffer) return;
  going_ = going_ && sink_(buffer_);
  buffer_.clear();
}

bool JsonOut::finish() {
  going_ = going_ && sink_(buffer_);
  buffer_.clear();
  return going_;
}

void JsonOut::before_value() {
  if (comma_next_) buffer_ += ',';
  if (break_next_) buffer_ += '\n';
  comma_next_ = true;
  break_next_ = false;
}

void JsonOut::open(char bracket) {
  before_value();
  buffer_ += bracket;
  comma_next_ = false;
}

void JsonOut::close(char bracket) {
  buffer_ += bracket;
  comma_next_ = true;
  pass_on_when_full();
}

void JsonOut::name(std::string_view key) {
  before_value();
  append_json_string(buffer_, key);
  buffer_ += ':';
  comma_next_ = false;
}

void JsonOut::text(std::string_view value) {
  before_value();
  append_json_string(buffer_, value);
}

void JsonOut::number(std::int64_t value) {
  before_value();
  char digits[24];
  const auto end = std::to_chars(digits, digits + sizeof digits, value).ptr;
  buffer_.append(digits, static_cast<std::size_t>(end - digits));
}

void JsonOut::truth(bool value) {
  before_value();
  buffer_ += value ? "true" : "false";
}

void JsonOut::raw(std::string_view json) {
  before_value();
  buffer_ += json;
}

}  // namespace stringcourse
