#include "answer/order_groups.hpp"

#include <algorithm>

namespace stringcourse {
namespace {

struct Family {
  std::string_view of;  // an id's first word
  std::string_view heading;
};
constexpr Family kFamilies[] = {
    {"lintel", "group-lintels"}, {"mortar", "group-mortar"}, {"sand", "group-mortar"}, {"water", "group-mortar"},
    {"grout", "group-mortar"},   {"dowel", "group-steel"},   {"bar", "group-steel"},   {"wire", "group-steel"},
    {"tie", "group-steel"},      {"tool", "group-tools"},
};

/// Units and parts of corner sets: their name is what they are, then the block.
bool is_of_a_block(const Article& article) { return article.name.says == "article-unit"; }

}  // namespace

Fact heading_over(const Article& article) {
  if (is_of_a_block(article)) return fact("group-block", {article.name.values.back()});
  const std::string_view id = article.id;
  const auto family = std::ranges::find(kFamilies, id.substr(0, id.find_first_of("/-")), &Family::of);
  return fact(family == std::end(kFamilies) ? "group-top" : family->heading);
}

Fact called_under_heading(const Article& article) {
  return is_of_a_block(article) ? fact("article-called", {article.name.values.front()}) : article.name;
}

}  // namespace stringcourse
