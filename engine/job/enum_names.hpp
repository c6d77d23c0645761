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
inline constexpr std::array<std::string_view, 2> kEnumNames<LintelPiece>{"precast", "steel-section"};
template <>
inline constexpr std::array<std::string_view, 3> kEnumNames<JointRule>{"none", "us", "uk"};
template <>
inline constexpr std::array<std::string_view, 2> kEnumNames<TapeMake>{"steel", "class-two"};
template <>
inline constexpr std::array<std::string_view, 4> kEnumNames<Surface>{"bearing", "floor", "other", "top"};
template <>
inline constexpr std::array<std::string_view, 2> kEnumNames<WallRuleSet>{"us", "uk"};
template <>
inline constexpr std::array<std::string_view, 6> kEnumNames<CheckKind>{"plumb",     "level",      "line",
                                                                       "bed-joint", "head-joint", "position"};
template <>
inline constexpr std::array<std::string_view, 3> kEnumNames<FoundWhat>{"near-jamb", "far-jamb", "wall-end"};
template <>
inline constexpr std::array<std::string_view, 2> kEnumNames<GroutWork>{"filled", "again"};
template <>
inline constexpr std::array<std::string_view, 5> kEnumNames<LookedAtWhat>{"bar", "cleanout", "floor", "beam", "lintel"};
template <>
inline constexpr std::array<std::string_view, 2> kEnumNames<WireCorners>{"pieces", "bent"};
template <>
inline constexpr std::array<std::string_view, 2> kEnumNames<WireTees>{"tees", "none"};
template <>
inline constexpr std::array<std::string_view, 2> kEnumNames<Grout>{"fine", "coarse"};
template <>
inline constexpr std::array<std::string_view, 9> kEnumNames<BedRemedy>{
    "level", "grout-first-course", "tilt-course", "grind", "rip-units", "levelling-strip", "half-high", "step", "curb"};
template <>
inline constexpr std::array<std::string_view, 2> kEnumNames<Taped>{"lines", "poured"};
template <>
inline constexpr std::array<std::string_view, 7> kEnumNames<LapRule>{
    "tms-402-to-2008", "tms-402-from-2011", "ibc", "florida-2017", "40-bars", "48-bars", "as-drawn"};
template <>
inline constexpr std::array<std::string_view, 2> kEnumNames<AtControlJoint>{"stop", "pass"};
template <>
inline constexpr std::array<std::string_view, 2> kEnumNames<ShapeRemedy>{"move-pegs", "square-lines"};

template <>
inline constexpr std::array<std::string_view, 3> kEnumNames<MortarOf>{"premix", "masonry-cement", "cement-lime"};
template <>
inline constexpr std::array<std::string_view, 4> kEnumNames<MortarType>{"m", "s", "n", "o"};
template <>
inline constexpr std::array<std::string_view, 4> kEnumNames<MortarBy>{"joints", "litres-a-block", "feet-a-hundred",
                                                                      "blocks-a-bag"};
template <>
inline constexpr std::array<std::string_view, 2> kEnumNames<GroutAs>{"bags", "truck"};
template <>
inline constexpr std::array<std::string_view, 2> kEnumNames<Crew>{"beginners", "mason"};
template <>
inline constexpr std::array<std::string_view, 7> kEnumNames<Weekday>{"monday", "tuesday",  "wednesday", "thursday",
                                                                     "friday", "saturday", "sunday"};
template <>
inline constexpr std::array<std::string_view, 11> kEnumNames<WorkKind>{
    "boards",  "footing",      "footing-cure", "strike-lines", "leads", "course",
    "lintels", "masonry-cure", "grout-lift",   "grout-cure",   "bolts"};

template <class Enum>
constexpr std::size_t enum_count() {
  static_assert(!kEnumNames<Enum>.empty());
  return kEnumNames<Enum>.size();
}
template <>
constexpr std::size_t enum_count<UnitKind>() {
  return kKindCount;
}

/// The value's name in documents.
template <class Enum>
constexpr std::string_view enum_name(Enum value) {
  return kEnumNames<Enum>[static_cast<std::size_t>(value)];
}
inline std::string_view enum_name(UnitKind value) { return kind_name(value); }

/// The value of that name, or none.
template <class Enum>
constexpr std::optional<Enum> enum_from_name(std::string_view name) {
  for (std::size_t index = 0; index < enum_count<Enum>(); ++index) {
    if (enum_name(static_cast<Enum>(index)) == name) return static_cast<Enum>(index);
  }
  return std::nullopt;
}

}  // namespace stringcourse
