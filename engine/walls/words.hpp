#pragma once
// Small makers of sentences and JSON pointers.
#include <cstdint>
#include <initializer_list>
#include <string>
#include <string_view>

namespace stringcourse::walls {

/// The parts, one after the other.
[[nodiscard]] std::string joined(std::initializer_list<std::string_view> parts);
/// "12"
[[nodiscard]] std::string count_text(std::int64_t count);
/// "/openings/2", or with a field "/openings/2/width".
[[nodiscard]] std::string pointer(std::string_view list, std::size_t index, std::string_view field = {});
/// A rule of the catalogue as findings cite it: its sentence and its source. "" if the catalogue has no such rule.
[[nodiscard]] std::string cited(std::string_view rule_id);

}  // namespace stringcourse::walls
