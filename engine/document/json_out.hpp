#pragma once
// JSON, written as it goes: nothing is held but one buffer. Brackets close themselves, commas come by themselves.
//   out.object([&] { out.field("name", "AB"); out.list("heights", [&] { out.number(8); }); });
#include <cstdint>
#include <functional>
#include <string>
#include <string_view>
#include <utility>

namespace stringcourse {

/// Takes the next bytes of a document; false ends the writing early.
using ByteSink = std::function<bool(std::string_view bytes)>;

class JsonOut {
 public:
  explicit JsonOut(ByteSink sink) : sink_(std::move(sink)) {}

  template <typename Fill>
  void object(Fill&& fill) {
    open('{');
    fill();
    close('}');
  }
  template <typename Fill>
  void list(Fill&& fill) {
    open('[');
    fill();
    close(']');
  }
  template <typename Fill>
  void object(std::string_view key, Fill&& fill) {
    name(key);
    object(fill);
  }
  template <typename Fill>
  void list(std::string_view key, Fill&& fill) {
    name(key);
    list(fill);
  }

  void text(std::string_view value);
  void number(std::int64_t value);
  void truth(bool value);
  /// A value that is JSON already.
  void raw(std::string_view json);
  void name(std::string_view key);

  void field(std::string_view key, std::string_view value) { name(key), text(value); }
  void field(std::string_view key, const char* value) { name(key), text(value); }
  void field(std::string_view key, std::int64_t value) { name(key), number(value); }
  void field(std::string_view key, std::int32_t value) { name(key), number(value); }
  void field(std::string_view key, bool value) { name(key), truth(value); }

  /// A line break between values, so that a long document can be read line by line.
  void line_break() { break_next_ = true; }
  /// A line break after the document.
  void end_line() { buffer_ += '\n'; }
  /// Hands the rest to the sink. False if the sink has ended the writing.
  [[nodiscard]] bool finish();

 private:
  void open(char bracket);
  void close(char bracket);
  void before_value();
  void pass_on_when_full();

  ByteSink sink_;
  std::string buffer_;
  bool going_ = true;
  bool comma_next_ = false;
  bool break_next_ = false;
};

/// A document as one text.
template <typename Fill>
[[nodiscard]] std::string json_text(Fill&& fill) {
  std::string text;
  JsonOut out([&](std::string_view bytes) {
    text += bytes;
    return true;
  });
  fill(out);
  out.end_line();
  return out.finish() ? text : std::string();
}

}  // namespace stringcourse
