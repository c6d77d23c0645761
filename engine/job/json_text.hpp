#pragma once
// Appending JSON text in one fixed form: two spaces of indent, every entry on its own line, "[]" and "{}" when empty,
// the form of a browser's JSON.stringify(value, null, 2), but for characters that could hide or turn what stands round
// them: those are escaped.
#include <cstdint>
#include <string>
#include <string_view>
#include <utility>

namespace stringcourse {

/// The text as a JSON string with its quotation marks. UTF-8 goes through byte for byte, but characters that is_unshown
/// as \u202e, so that a name cannot turn the document's own text round on a terminal or in an editor.
[[nodiscard]] std::string json_string(std::string_view text);
/// The same, appended.
void append_json_string(std::string& out, std::string_view text);

/// Builds one document. Calls must nest: in an object each value follows its key.
class JsonText {
 public:
  void open_object() { open('{'); }
  void close_object() { close('}'); }
  void open_list() { open('['); }
  void close_list() { close(']'); }
  void key(std::string_view name);
  void text(std::string_view value) { put(json_string(value)); }
  void whole(std::int64_t value);
  void truth(bool value) { put(value ? "true" : "false"); }

  /// key and text in one.
  void text_member(std::string_view name, std::string_view value);
  void whole_member(std::string_view name, std::int64_t value);

  /// The document so far, with a line break at its end.
  std::string finish() && { return std::move(out_) + "\n"; }

 private:
  void open(char bracket);
  void close(char bracket);
  void put(std::string_view value);
  void begin_entry();  // comma and line break before a list's entry or an object's key
  void new_line();

  std::string out_;
  int depth_ = 0;
  bool empty_ = true;  // nothing yet between the last opened bracket and here
  bool after_key_ = false;
};

}  // namespace stringcourse
