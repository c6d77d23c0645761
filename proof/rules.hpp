#pragma once
// Names of the rules that a violation cites, and small helpers to write one down.
#include <string>
#include <string_view>
#include <vector>

#include "proof/check.hpp"

namespace stringcourse::proof {

using Violations = std::vector<Violation>;

inline constexpr std::string_view kJoints = "1 joints";  // equal, in range, pieces + joints = run
inline constexpr std::string_view kLeastPiece = "2 least piece";
inline constexpr std::string_view kLap = "3 lap";
inline constexpr std::string_view kFaces = "4 faces";  // a cut shows where a factory face must
inline constexpr std::string_view kBars = "5 bars";
inline constexpr std::string_view kLintels = "6 lintels";
inline constexpr std::string_view kControlJoints = "7 control joints";
inline constexpr std::string_view kBuilding = "building";  // the building is not what the job asks for
inline constexpr std::string_view kRuns = "runs";          // a run is missing, too many, or ends elsewhere
inline constexpr std::string_view kPieces = "pieces";      // a piece no saw or yard gives, or misnumbered
inline constexpr std::string_view kKinds = "kinds";        // bought as something it cannot be
inline constexpr std::string_view kCorners = "corners";    // a corner without its uncut corner unit
inline constexpr std::string_view kBands = "bands";        // courses of one parity of a band differ
inline constexpr std::string_view kCost = "cost";          // the stated cost is not the true one

inline constexpr std::string_view kConceded = "conceded";  // listed as given up, and it is not

/// A broken rule that a layout may list as given up.
inline Violation violation(std::string_view rule, std::string where, std::string text, Concession may_be) {
  return {std::string(rule), std::move(where), std::move(text), may_be};
}
inline Violation violation(std::string_view rule, std::string where, std::string text) {
  return {std::string(rule), std::move(where), std::move(text)};
}

/// Adds `more` behind `list`.
inline Violations joined(Violations list, Violations more) {
  if (list.empty()) return more;
  list.insert(list.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
  return list;
}

/// "198.4375 mm": exact, to the nanometre, without trailing zeros.
std::string in_millimetres(Length length);
/// "AB course 3".
std::string place_of(const Building& building, std::int32_t wall, std::int32_t course);
/// "AB".
std::string name_of(const Building& building, std::int32_t wall);

}  // namespace stringcourse::proof
