#pragma once
// What the page asks for in one call: read strictly from one JSON object.
#include <cstdint>
#include <expected>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "document/page_parts.hpp"
#include "edits/begun.hpp"
#include "edits/edit.hpp"
#include "paper/display.hpp"
#include "wasm/lengths.hpp"

namespace stringcourse::border {

inline constexpr std::int64_t kBorderVersion = 1;
inline constexpr std::size_t kMostEdits = 100;
inline constexpr std::size_t kMostDrawings = 500;
inline constexpr std::size_t kMostWritten = 1000;  // lengths
inline constexpr std::size_t kLongestName = 200;   // bytes: of a drawing, a unit, a typed measure

struct Request {
  std::variant<std::string, Measures> from;  // the text of a job document, or the measures of a new one
  std::optional<LengthsAsked> lengths;       // instead of both, and of all that follows
  std::vector<Edit> edits;
  std::optional<std::string> merge;  // the text of another copy of the job, whose logs are united with this one's
  std::vector<std::string> drawings;
  bool solids = false;
  std::optional<std::string> piece;
  std::optional<CourseAsked> course;
  std::optional<paper::Paper> set;
  std::optional<HoldPoint> of;                // with a set: the sheets of one hold point
  std::optional<paper::Paper> sheets;         // the names of a set's sheets, without the set
  bool templates = false, standards = false;  // with either: these sheets too (sheet::Wanted)
  std::vector<std::uint8_t> regular, bold;    // the whole font files, for a set made in the page's module
  bool offers = false;
  std::optional<std::int64_t> budget;
  bool brief = false;   // without a search and without what is told of the layout later: see brief.hpp
  bool moving = false;  // a hand is moving something: shorter pictures, the answer without its placed units
};

/// The error is a sentence with the place: an unknown or doubled field, a wrong type, a number or list beyond its
/// limits, none or more than one of job, begin and lengths, `brief` beside what no brief answer has. Lengths: at most
/// kLongest either way.
[[nodiscard]] std::expected<Request, std::string> read_request(std::string_view text);

}  // namespace stringcourse::border
