#include "walls/words.hpp"

#include <charconv>

#include "catalogue/series.hpp"

namespace stringcourse::walls {

std::string joined(std::initializer_list<std::string_view> parts) {
  std::string text;
  for (const std::string_view part : parts) text.append(part);
  return text;
}

std::string count_text(std::int64_t count) {
  char digits[24];
  const auto end = std::to_chars(digits, digits + sizeof digits, count).ptr;
  return std::string(digits, end);
}

std::string pointer(std::string_view list, std::size_t index, std::string_view field) {
  std::string text = joined({list, "/", count_text(static_cast<std::int64_t>(index))});
  if (!field.empty()) text.append("/").append(field);
  return text;
}

std::string cited(std::string_view rule_id) {
  const Rule* rule = find_rule(rule_id);
  return rule ? joined({rule->text, " (", rule->source.text, ")"}) : std::string();
}

}  // namespace stringcourse::walls
