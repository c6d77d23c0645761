#pragma once
// Strict reading of one JSON object, field by field. The first thing that is wrong is kept; reading goes on harmlessly.
#include <cstdint>
#include <expected>
#include <set>
#include <span>
#include <string>
#include <string_view>

#include "job/json_tree.hpp"

namespace stringcourse::border {

/// What is wrong with a request so far: its first trouble, or "".
class Troubles {
 public:
  void add(std::string_view place, std::string_view text);
  [[nodiscard]] const std::string& first() const { return first_; }

 private:
  std::string first_;
};

/// The fields of one object. Each is taken at most once; finish() complains about those that nobody took.
class Fields {
 public:
  using Node = JsonTree::Node;
  Fields(const JsonTree& tree, Node node, std::string place, Troubles& troubles);

  [[nodiscard]] bool has(std::string_view name) const;
  /// kNoNode if it is not there.
  Node take(std::string_view name);
  /// Required; "" and 0 after a trouble.
  std::string text(std::string_view name, std::size_t most_bytes);
  std::int64_t whole(std::string_view name, std::int64_t least, std::int64_t most);
  /// Not required: false if it is not there.
  bool truth(std::string_view name);
  /// The values of a list; none if it is not there.
  std::vector<Node> list(std::string_view name, std::size_t most);
  void trouble(std::string_view name, std::string_view text);
  /// Fields that are doubled, or that nothing has taken.
  void finish();

  [[nodiscard]] const JsonTree& tree() const { return *tree_; }
  [[nodiscard]] const std::string& place() const { return place_; }

 private:
  const JsonTree* tree_;
  Node node_;
  std::string place_;
  Troubles* troubles_;
  std::set<std::string, std::less<>> taken_;
};

}  // namespace stringcourse::border
