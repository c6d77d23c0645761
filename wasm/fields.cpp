#include "wasm/fields.hpp"

#include "job/words.hpp"

namespace stringcourse::border {

void Troubles::add(std::string_view place, std::string_view text) {
  if (first_.empty()) first_ = (place.empty() ? "the request" : std::string(place)) + ": " + std::string(text);
}

Fields::Fields(const JsonTree& tree, Node node, std::string place, Troubles& troubles)
    : tree_(&tree), node_(node), place_(std::move(place)), troubles_(&troubles) {
  if (tree.kind(node) != JsonKind::Object) troubles_->add(place_, "an object is wanted.");
}

bool Fields::has(std::string_view name) const { return tree_->member(node_, name) != JsonTree::kNoNode; }

Fields::Node Fields::take(std::string_view name) {
  taken_.emplace(name);
  return tree_->member(node_, name);
}

void Fields::trouble(std::string_view name, std::string_view text) {
  troubles_->add(place_ + "/" + pointer_token(name), text);
}

std::string Fields::text(std::string_view name, std::size_t most_bytes) {
  const Node node = take(name);
  if (node == JsonTree::kNoNode) return trouble(name, "this field is missing."), std::string();
  if (tree_->kind(node) != JsonKind::Text) return trouble(name, "a text is wanted."), std::string();
  const std::string_view text = tree_->text(node);
  if (text.size() > most_bytes) return trouble(name, "this text is too long."), std::string();
  return std::string(text);
}

std::int64_t Fields::whole(std::string_view name, std::int64_t least, std::int64_t most) {
  const Node node = take(name);
  if (node == JsonTree::kNoNode) return trouble(name, "this field is missing."), 0;
  if (tree_->kind(node) != JsonKind::Whole) return trouble(name, "a whole number is wanted."), 0;
  const std::int64_t value = tree_->at(node).whole;
  if (value < least || value > most) return trouble(name, "this number is beyond its limits."), 0;
  return value;
}

bool Fields::truth(std::string_view name) {
  const Node node = take(name);
  if (node == JsonTree::kNoNode) return false;
  if (tree_->kind(node) != JsonKind::Truth) return trouble(name, "true or false is wanted."), false;
  return tree_->at(node).whole != 0;
}

std::vector<Fields::Node> Fields::list(std::string_view name, std::size_t most) {
  const Node node = take(name);
  std::vector<Node> values;
  if (node == JsonTree::kNoNode) return values;
  if (tree_->kind(node) != JsonKind::List) return trouble(name, "a list is wanted."), values;
  if (tree_->at(node).count > most) return trouble(name, "this list is too long."), values;
  for (Node child = tree_->first_child(node); child != JsonTree::kNoNode; child = tree_->next(child)) {
    values.push_back(child);
  }
  return values;
}

void Fields::finish() {
  if (tree_->kind(node_) != JsonKind::Object) return;
  std::set<std::string_view> seen;
  for (Node child = tree_->first_child(node_); child != JsonTree::kNoNode; child = tree_->next(child)) {
    const std::string_view key = tree_->key(child);
    if (!seen.insert(key).second) trouble(key, "this field stands twice.");
    if (!taken_.contains(key)) trouble(key, "there is no such field.");
  }
}

}  // namespace stringcourse::border
