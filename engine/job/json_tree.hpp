#pragma once
// A parsed JSON document as a flat tree, and nothing more: no job, no meaning. Numbers keep whether they are whole.
#include <cstddef>
#include <cstdint>
#include <expected>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "job/trouble.hpp"

namespace stringcourse {

enum class JsonKind : std::uint8_t { Null, Truth, Whole, OtherNumber, Text, List, Object };

/// One value. Text and key are stretches of the tree's characters. Indices: kNoNode for none.
struct JsonNode {
  JsonKind kind = JsonKind::Null;
  std::int64_t whole = 0;                       // Whole: the number. Truth: 0 or 1
  std::uint32_t text_start = 0, text_size = 0;  // Text: the text. OtherNumber: its digits as written
  std::uint32_t key_start = 0, key_size = 0;    // in an object
  std::uint32_t first_child = 0, next = 0;
  std::uint32_t count = 0;  // List, Object: how many values stand directly in it
};

/// The values of a document in the order of the text; node 0 is the document.
class JsonTree {
 public:
  using Node = std::uint32_t;
  static constexpr Node kNoNode = 0xFFFF'FFFF;

  JsonTree(std::vector<JsonNode> nodes, std::string characters)
      : nodes_(std::move(nodes)), characters_(std::move(characters)) {}

  const JsonNode& at(Node node) const { return nodes_[node]; }
  JsonKind kind(Node node) const { return nodes_[node].kind; }
  std::string_view text(Node node) const { return stretch(nodes_[node].text_start, nodes_[node].text_size); }
  std::string_view key(Node node) const { return stretch(nodes_[node].key_start, nodes_[node].key_size); }
  Node first_child(Node node) const { return nodes_[node].first_child; }
  Node next(Node node) const { return nodes_[node].next; }
  /// The first member of that key in an object; kNoNode if there is none, or `node` is no object.
  Node member(Node node, std::string_view wanted) const;

 private:
  std::string_view stretch(std::uint32_t start, std::uint32_t size) const {
    return std::string_view(characters_).substr(start, size);
  }
  std::vector<JsonNode> nodes_;
  std::string characters_;
};

/// Parses strict JSON (RFC 8259; a leading byte order mark is passed over). One refusal: "too-large", "not-utf-8",
/// "not-json" with line and column, counted from 1 in characters, of the character that cannot stand there, "too-deep".
[[nodiscard]] std::expected<JsonTree, Refusal> parse_json(std::string_view text);

}  // namespace stringcourse
