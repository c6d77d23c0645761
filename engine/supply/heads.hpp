#pragma once
// Heads that do not come to a course line: what can be done, and what each takes in blocks and cuts.
#include <cstdint>
#include <vector>

#include "supply/shores.hpp"

namespace stringcourse::supply {

enum class HeadWay : std::uint8_t {
  Pack,   // as laid out: what is left over the frame is packed
  Raise,  // the opening is asked for as high as the course line above
  Sill,   // it is set higher, and its sill is bedded up
  Lower,  // it is asked for as high as the course line below
  Cut,    // the lintel lies at the head asked: blocks under its ends are sawn lower, and pieces fill what is over it
};

struct HeadChoice {
  HeadWay way = HeadWay::Pack;
  Length by;               // packed, raised, lowered, sawn off
  std::int64_t units = 0;  // blocks more, by their length: whole ones, the last begun
  std::int64_t cuts = 0;   // saw cuts more
  friend bool operator==(const HeadChoice&, const HeadChoice&) = default;
};

struct OffCourse {
  std::int32_t opening = 0;
  Length asked;                     // its height
  std::vector<HeadChoice> choices;  // the first is what is laid out
  friend bool operator==(const OffCourse&, const OffCourse&) = default;
};

/// Whether more is left over a frame than the joint that its nominal size leaves; over a bare hole, anything.
[[nodiscard]] bool is_off_course(const Building& building, const ResolvedOpening& opening);

/// In the order of the openings. A lower head takes one course more between the jambs: as long as the opening is wide,
/// less a joint at each end and a joint's half-unit grid. Pieces over a lintel are as many as lie on it now.
[[nodiscard]] std::vector<OffCourse> heads_off_course(const Building& building, const Layout& layout,
                                                      const std::vector<Bridged>& bridged);

}  // namespace stringcourse::supply
