#include "job/json_tree.hpp"

#include <algorithm>
#include <optional>

#define JSON_NOEXCEPTION 1
#include <nlohmann/json.hpp>

#include "job/read.hpp"
#include "job/words.hpp"

namespace stringcourse {

JsonTree::Node JsonTree::member(Node node, std::string_view wanted) const {
  if (kind(node) != JsonKind::Object) return kNoNode;
  for (Node child = first_child(node); child != kNoNode; child = next(child)) {
    if (key(child) == wanted) return child;
  }
  return kNoNode;
}

namespace {

/// Where in the text: counted from 1.
struct TextPoint {
  std::size_t line = 1;
  std::size_t column = 1;
};

TextPoint point_at(std::string_view text, std::size_t offset) {
  const std::string_view before = text.substr(0, offset);
  const std::size_t last_break = before.rfind('\n');
  const std::size_t line_start = last_break == std::string_view::npos ? 0 : last_break + 1;
  return {1 + static_cast<std::size_t>(std::ranges::count(before, '\n')),
          1 + count_characters(before.substr(line_start))};
}

Fact where_in(std::string_view text, std::size_t offset) {
  const TextPoint point = point_at(text, offset);
  return fact("document-line-column", {point.line, point.column});
}

Refusal document_refusal(Code code, Fact reason, Fact remedy) {
  return {code, "/", std::move(reason), std::move(remedy)};
}

Refusal broken_at(std::string_view text, std::size_t offset) {
  const Fact where = where_in(text, std::min(offset, text.size()));
  return document_refusal("not-json",
                          offset >= text.size()
                              ? fact("document-breaks-off", {where})
                              : fact("document-no-json", {where, FactValue::typed(character_at(text, offset))}),
                          fact("document-look-there"));
}

/// The parser met a sound token where it cannot stand (and has read all of it), not a character that no token can have.
bool is_misplaced(std::string_view message) { return message.find("- unexpected ") < message.find("last read: "); }

/// Gathers what the parser meets. Returning false stops it; `stopped` then says why.
class TreeBuilder {
 public:
  explicit TreeBuilder(std::string_view text) : text_(text) {}

  bool null() { return add({.kind = JsonKind::Null}); }
  bool boolean(bool value) { return add({.kind = JsonKind::Truth, .whole = value ? 1 : 0}); }
  bool number_integer(std::int64_t value) { return add({.kind = JsonKind::Whole, .whole = value}); }
  bool number_unsigned(std::uint64_t value) {
    if (value > static_cast<std::uint64_t>(INT64_MAX)) return add_text(JsonKind::OtherNumber, number_text(value));
    return number_integer(static_cast<std::int64_t>(value));
  }
  bool number_float(double, const std::string& written) { return add_text(JsonKind::OtherNumber, written); }
  bool string(std::string& value) { return add_text(JsonKind::Text, value); }
  bool binary(std::vector<std::uint8_t>&) { return false; }  // never in JSON text
  bool start_object(std::size_t) { return open(JsonKind::Object); }
  bool start_array(std::size_t) { return open(JsonKind::List); }
  bool end_object() { return close(); }
  bool end_array() { return close(); }
  bool key(std::string& value) {
    key_start_ = static_cast<std::uint32_t>(characters_.size());
    key_size_ = static_cast<std::uint32_t>(value.size());
    characters_ += value;
    return true;
  }
  bool parse_error(std::size_t position, const std::string& token, const nlohmann::json::exception& problem) {
    const bool whole_token = is_misplaced(problem.what()) && !is_bracket_or_end(position);
    const std::size_t back = whole_token ? std::max<std::size_t>(1, token.size()) : 1;
    const std::size_t offset = position - std::min(position, back);
    constexpr int kNumberTooLarge = 406;  // the parser's number for a number beyond a double
    stopped_ = problem.id == kNumberTooLarge
                   ? document_refusal("out-of-range", fact("document-number-large", {where_in(text_, offset)}),
                                      fact("document-number-write"))
                   : broken_at(text_, offset);
    return false;
  }

  Refusal stopped() const { return *stopped_; }
  JsonTree finish() && { return JsonTree(std::move(nodes_), std::move(characters_)); }

 private:
  /// Before `position` stands a token of one character, or the text has ended; the parser's token is then not exact.
  bool is_bracket_or_end(std::size_t position) const {
    constexpr std::string_view kBrackets = "[]{}:,";
    return position == 0 || position > text_.size() || kBrackets.find(text_[position - 1]) != std::string_view::npos;
  }

  struct Level {
    JsonTree::Node node;
    JsonTree::Node last_child;
  };

  bool add_text(JsonKind kind, std::string_view value) {
    const auto start = static_cast<std::uint32_t>(characters_.size());
    characters_ += value;
    return add({.kind = kind, .text_start = start, .text_size = static_cast<std::uint32_t>(value.size())});
  }

  bool add(JsonNode node) {
    if (nodes_.size() >= kMostValues) {
      stopped_ = document_refusal("too-large", fact("document-many-values", {kMostValues}), fact("document-split"));
      return false;
    }
    const auto index = static_cast<JsonTree::Node>(nodes_.size());
    node.first_child = node.next = JsonTree::kNoNode;
    if (!levels_.empty()) hang(node, index);
    nodes_.push_back(node);
    return true;
  }

  void hang(JsonNode& node, JsonTree::Node index) {
    Level& level = levels_.back();
    JsonNode& parent = nodes_[level.node];
    if (parent.kind == JsonKind::Object) {
      node.key_start = key_start_;
      node.key_size = key_size_;
    }
    (level.last_child == JsonTree::kNoNode ? parent.first_child : nodes_[level.last_child].next) = index;
    level.last_child = index;
    ++parent.count;
  }

  bool open(JsonKind kind) {
    if (levels_.size() >= static_cast<std::size_t>(kDeepestNesting)) {
      stopped_ = document_refusal("too-deep", fact("document-deep", {kDeepestNesting}), fact("document-take-out"));
      return false;
    }
    if (!add({.kind = kind})) return false;
    levels_.push_back({static_cast<JsonTree::Node>(nodes_.size() - 1), JsonTree::kNoNode});
    return true;
  }

  bool close() {
    levels_.pop_back();
    return true;
  }

  std::string_view text_;
  std::vector<JsonNode> nodes_;
  std::string characters_;
  std::vector<Level> levels_;
  std::uint32_t key_start_ = 0, key_size_ = 0;
  std::optional<Refusal> stopped_;
};

Refusal too_large(std::size_t bytes) {
  return document_refusal("too-large", fact("document-bytes", {bytes, kLargestDocument}), fact("document-split"));
}

Refusal not_utf8(std::string_view text, std::size_t offset) {
  return document_refusal("not-utf-8", fact("document-not-utf8", {where_in(text, offset)}), fact("document-save-utf8"));
}

}  // namespace

std::expected<JsonTree, Refusal> parse_json(std::string_view text) {
  if (text.size() > kLargestDocument) return std::unexpected(too_large(text.size()));
  constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";
  if (text.starts_with(kByteOrderMark)) text.remove_prefix(kByteOrderMark.size());
  const std::size_t valid = valid_utf8_prefix(text);
  if (valid < text.size()) return std::unexpected(not_utf8(text, valid));
  // The parser below takes a zero byte for the end of the text and would not see what follows it.
  const std::size_t zero = text.find('\0');
  TreeBuilder builder(text);
  const bool whole = nlohmann::json::sax_parse(text.begin(), text.begin() + std::min(zero, text.size()), &builder);
  if (whole && zero != std::string_view::npos) return std::unexpected(broken_at(text, zero));
  if (!whole) return std::unexpected(builder.stopped());
  return std::move(builder).finish();
}

}  // namespace stringcourse
