#pragma once
// Names of the engine's own choices, as they stand in documents. Those of the job are in job/enum_names.hpp.
#include <array>
#include <string_view>

#include "answer/answer.hpp"
#include "job/enum_names.hpp"

namespace stringcourse {

template <>
inline constexpr std::array<std::string_view, 3> kEnumNames<GroutInto>{"cell", "beam", "lintel"};
template <>
inline constexpr std::array<std::string_view, 7> kEnumNames<steel::WireEnd>{
    "corner", "control-joint", "jamb", "free", "junction", "tee", "lintel"};
template <>
inline constexpr std::array<std::string_view, 5> kEnumNames<supply::HeadWay>{"pack", "raise", "sill", "lower", "cut"};
template <>
inline constexpr std::array<std::string_view, 4> kEnumNames<ground::TopWork>{"stands", "pack", "bed", "plane"};
template <>
inline constexpr std::array<std::string_view, 10> kEnumNames<RunEnd>{
    "through-corner", "butt-corner",       "jamb",      "free-end",  "control-joint", "tied-junction",
    "lapped-butt",    "entering-junction", "slot-side", "lintel-end"};
template <>
inline constexpr std::array<std::string_view, 3> kEnumNames<CutEnd>{"none", "start", "end"};
template <>
inline constexpr std::array<std::string_view, 6> kEnumNames<BarReason>{"corner",      "jamb", "beside-control-joint",
                                                                       "dimensioned", "cast", "spaced"};
template <>
inline constexpr std::array<std::string_view, 4> kEnumNames<OpeningUse>{"door", "overhead", "window", "plain"};
template <>
inline constexpr std::array<std::string_view, 4> kEnumNames<Heading>{"west", "north", "east", "south"};
template <>
inline constexpr std::array<std::string_view, 9> kEnumNames<setout::RodEvent>{
    "floor", "sill", "course-top", "wire", "head", "lintel-course", "bond-beam", "pour-stop", "top"};
template <>
inline constexpr std::array<std::string_view, 4> kEnumNames<supply::Soffit>{"one-piece", "floor", "form",
                                                                            "nothing-spans"};
template <>
inline constexpr std::array<std::string_view, 3> kEnumNames<supply::PartWork>{"none", "webs-cut-down",
                                                                              "sawn-half-high"};
template <>
inline constexpr std::array<std::string_view, 10> kEnumNames<Concession::What>{
    "joints",    "bar",      "bar-cells",   "bar-spacing", "cut-under-bearing",
    "short-lap", "cut-face", "stacked-lap", "corner",      "bare"};
template <>
inline constexpr std::array<std::string_view, 6> kEnumNames<NewPart>{"door",     "window",          "overhead",
                                                                     "man-door", "single-overhead", "inner-wall"};
template <>
inline constexpr std::array<std::string_view, 4> kEnumNames<NextReading::What>{"tape", "rod", "edge", "dowel"};
template <>
inline constexpr std::array<std::string_view, 6> kEnumNames<OfferWhat>{
    "move-opening", "move-near-jamb", "move-far-jamb", "move-head", "change-side", "change-width"};
template <>
inline constexpr std::array<std::string_view, 4> kEnumNames<Answered>{"yes", "no", "cannot-tell", "not-read"};
template <>
inline constexpr std::array<std::string_view, 4> kEnumNames<ground::Verdict>{"fits", "does-not-fit", "cannot-tell",
                                                                             "not-read"};
template <>
inline constexpr std::array<std::string_view, 5> kEnumNames<ground::TapeAsFound::State>{
    "no-readings", "adjusted", "not-determinate", "impossible", "too-large"};
template <>
inline constexpr std::array<std::string_view, 6> kEnumNames<setout::MarkKind>{
    "block-end", "near-jamb", "far-jamb", "joint-near-edge", "joint-far-edge", "bar-centre"};
template <>
inline constexpr std::array<std::string_view, 4> kEnumNames<laying::WallMark::State>{"unread", "read", "doubtful",
                                                                                     "disputed"};
template <>
inline constexpr std::array<std::string_view, 4> kEnumNames<laying::Correction::What>{"joints", "saw-cut", "lay-again",
                                                                                      "cannot-be"};
template <>
inline constexpr std::array<std::string_view, 4> kEnumNames<laying::UnitCorner>{"near-outer", "near-inner", "far-outer",
                                                                                "far-inner"};
template <>
inline constexpr std::array<std::string_view, 3> kEnumNames<laying::ClosurePiece::Kind>{"whole", "half", "cut"};
template <>
inline constexpr std::array<std::string_view, 6> kEnumNames<HoldPoint>{"order",   "pour",  "first-course",
                                                                       "lintels", "grout", "top"};
template <>
inline constexpr std::array<std::string_view, 10> kEnumNames<SoldIn>{
    "each",    "bags",   "lengths", "cubic-feet", "tenths-of-a-cubic-metre", "quarters-of-a-cubic-yard",
    "gallons", "litres", "feet",    "metres"};
template <>
inline constexpr std::array<std::string_view, 3> kEnumNames<PaceFrom>{"assumed", "log", "stated"};
template <>
inline constexpr std::array<std::string_view, 3> kEnumNames<UnsureBy>{"assumed", "log", "stated"};
/// Hold points count from 1.
[[nodiscard]] inline std::string_view enum_name(HoldPoint point) { return hold_point_name(point); }

}  // namespace stringcourse
