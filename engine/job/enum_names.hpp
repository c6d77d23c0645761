#pragma once
// Names of the job's choices, as they stand in documents. Kinds of units have theirs in catalogue/series.hpp.
#include <array>
#include <cstddef>
#include <optional>
#include <string_view>

#include "catalogue/series.hpp"
#include "job/job.hpp"

namespace stringcourse {

/// Names in the order of the enum's values, which count from 0.
template <class Enum>
inline constexpr std::array<std::string_view, 0> kEnumNames{};
template <>
inline constexpr std::array<std::string_view, 2> kEnumNames<Tape>{"inches", "millimetres"};
template <>
inline constexpr std::array<std::string_view, 2> kEnumNames<BondWish>{"half", "quarter"};
template <>
inline constexpr std::array<std::string_view, 2> kEnumNames<Turn>{"right", "left"};
template <>
inline constexpr std::array<std::string_view, 2> kEnumNames<Hand>{"right", "left"};
template <>
inline constexpr std::array<std::string_view, 2> kEnumNames<Face>{"near", "far"};
template <>
inline constexpr std::array<std::string_view, 3> kEnumNames<JunctionKind>{"tied", "control-joint", "lapped"};
template <>
inline constexpr std::array<std::string_view, 3> kEnumNames<HalfHighPlace>{"first", "under-head", "top"};
template <>
inline constexpr std::array<std::string_view, 2> kEnumNames<LintelMake>{"one-piece", "built-up"};
template <>
inline constexpr std::array<std::string_view, 3> kEnumNames<JointRule>{"none", "us", "uk"};
template <>
inline constexpr std::array<std::string_view, 2> kEnumNames<TapeMake>{"steel", "class-two"};
template <>
inline constexpr std::array<std::string_view, 3> kEnumNames<Surface>{"bearing", "floor", "other"};
template <>
inline constexpr std::array<std::string_view, 2> kEnumNames<WallRuleSet>{"us", "uk"};
template <>
inline constexpr std::array<std::string_view, 6> kEnumNames<CheckKind>{"plumb", "level", "line", "bed-joint", "head-joint", "position"};
template <>
inline constexpr std::array<std::string_view, 3> kEnumNames<FoundWhat>{"near-jamb", "far-jamb", "wall-end"};
template <>
inline constexpr std::array<std::string_view, 2> kEnumNames<Grout>{"fine", "coarse"};

template <class Enum>
constexpr std::size_t enum_count() {
  static_assert(!kEnumNames<Enum>.empty());
  return kEnumNames<Enum>.size();
}
template <>
constexpr std::size_t enum_count<Kind>() { return kKindCount; }

/// The value's name in documents.
template <class Enum>
constexpr std::string_view enum_name(Enum value) { return kEnumNames<Enum>[static_cast<std::size_t>(value)]; }
inline std::string_view enum_name(Kind value) { return kind_name(value); }

/// The value of that name, or none.
template <class Enum>
constexpr std::optional<Enum> enum_from_name(std::string_view name) {
  for (std::size_t index = 0; index < enum_count<Enum>(); ++index) {
    if (enum_name(static_cast<Enum>(index)) == name) return static_cast<Enum>(index);
  }
  return std::nullopt;
}

}  // namespace stringcourse
