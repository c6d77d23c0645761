#include "solve/concession_findings.hpp"

#include <algorithm>
#include <array>
#include <string>

#include "measure/notation.hpp"
#include "walls/words.hpp"

namespace stringcourse {
namespace {

using What = Concession::What;
using walls::count_text;
using walls::joined;

constexpr std::size_t kShownPlaces = 6;  // the answer lists them all

/// How one kind of concession is told.
struct Telling {
  What what;
  std::string_view code;
  std::string_view says;    // what is given up, before the places
  std::string_view remedy;  // what mends it, or who is to be asked
  std::string_view rule;
  HoldPoint point;
};

constexpr std::array kTellings{
    Telling{What::Joints, "conceded-joints", "no pieces close these runs with joints in the range asked for; joints as wide as this do",
            "Cut one unit to fit, or change the length by what they are off.", "joint range of the job; head joints within 1/4 in less, 3/8 in more (TMS 602, as others quote it)", HoldPoint::Order},
    Telling{What::Bar, "conceded-bar", "no whole cell takes these bars in these courses",
            "Move the bar to the nearest cell with your engineer's word, or break the web out there and fill it as your engineer says.", "bars in whole cells with their clearance", HoldPoint::Pour},
    Telling{What::BarCells, "conceded-bar-cells", "the cells of these bars lie too far off the cells of the course below for grout to flow",
            "Move the bar or break the web out between them, as your engineer says.", "cells of neighbouring courses share the least grout space", HoldPoint::Pour},
    Telling{What::BarSpacing, "conceded-bar-spacing", "no cell that all courses share lies within the spacing asked for; bars stand farther apart",
            "Ask your engineer whether that will do, or move the opening beside it to a half-unit line.", "greatest spacing asked for", HoldPoint::Pour},
    Telling{What::CutUnderBearing, "conceded-bearing", "a saw cut without a whole cell stands under a lintel's end",
            "Ask your engineer; or move the opening to a half-unit line, or ask for another bearing.", "uncut, filled units under a bearing", HoldPoint::Lintels},
    Telling{What::ShortLap, "conceded-lap", "head joints lap less than a quarter unit",
            "The usual remedy is joint reinforcement in the bed between: ask your engineer.", "laps of at least a quarter unit", HoldPoint::Order},
    Telling{What::CutFace, "conceded-face", "one saw cut fills this run, and its sawn end shows",
            "Turn it to the side that a frame or the joint's sealant hides, or move the opening.", "factory ends at jambs, free ends and control joints", HoldPoint::Order},
    Telling{What::StackedLap, "conceded-stack", "head joints stand nearly above one another",
            "Ask your engineer: such a stretch counts as stack bond and wants reinforcement in the beds.", "laps of at least a quarter unit", HoldPoint::Order},
    Telling{What::Corner, "conceded-corner", "no uncut unit turns the corner",
            "Ask your engineer how the corner is tied; or change the length of this side.", "an uncut unit at each corner, by turns", HoldPoint::Order},
    Telling{What::Bare, "bare-stretch", "no unit fills these stretches, and they are drawn bare: all else is laid",
            "Fill it with mortar, brick or sawn solid units as your yard has them; if a lintel or a bar depends on it, ask your engineer.", "pieces of at least the least length, with joints in range", HoldPoint::Order},
};

const Telling& telling_of(What what) { return *std::ranges::find(kTellings, what, &Telling::what); }

/// "course 3 from 4'-0" to 5'-4" (1/2")".
std::string place_text(const Building& building, const Concession& c) {
  const auto say = [&](Length length) { return tape_text(rounded_to(length, tape_step(building.tape)), building.tape); };
  const std::string course = c.what == What::BarSpacing ? "" : joined({"course ", count_text(c.course), " "});
  if (c.from == c.to) return joined({course, "at ", say(c.from)});
  const std::string place = joined({course, "from ", say(c.from), " to ", say(c.to)});
  return c.what == What::Bare ? place : joined({place, " (", say(c.amount), ")"});
}

/// A one-piece lintel of this wall that is asked to bear a little more than a half unit leaves too little beside it.
std::string bearing_remedy(const Building& building, std::int32_t wall) {
  const Series& series = building.series_of(building.walls[static_cast<std::size_t>(wall)]);
  std::string text;
  for (const ResolvedOpening& opening : building.openings) {
    if (opening.wall != wall || !opening.lintel || opening.lintel->make != LintelMake::OnePiece) continue;
    const Length over = opening.lintel->least_bearing - series.half;
    if (over <= Length() || over > series.joint) continue;
    text += joined({" Or ask for a bearing of ", tape_text(series.half, building.tape), ", one half unit, at ", opening.name, "."});
  }
  return text;
}

Finding told(const Building& building, const std::vector<Concession>& alike) {
  const Concession& first = alike.front();
  const Telling& telling = telling_of(first.what);
  const Wall& wall = building.walls[static_cast<std::size_t>(first.wall)];
  std::string places;
  for (std::size_t i = 0; i < std::min(alike.size(), kShownPlaces); ++i) places += (i == 0 ? "" : "; ") + place_text(building, alike[i]);
  if (alike.size() > kShownPlaces) places += joined({"; and ", count_text(static_cast<std::int64_t>(alike.size() - kShownPlaces)), " more"});
  return {std::string(telling.code), wall.place,
          joined({"On ", wall.name, " ", telling.says, ": ", places, ", from ", wall.start_name, ". ", telling.remedy, bearing_remedy(building, first.wall)}), std::string(telling.rule), telling.point};
}

}  // namespace

std::optional<What> conceded_in(const Finding& finding) {
  const auto telling = std::ranges::find(kTellings, finding.code, &Telling::code);
  if (telling == kTellings.end()) return std::nullopt;
  return telling->what;
}

std::vector<Finding> concession_findings(const Building& building, const Layout& layout) {
  std::vector<Finding> found;
  for (std::int32_t wall = 0; wall < static_cast<std::int32_t>(building.walls.size()); ++wall) {
    for (const Telling& telling : kTellings) {
      std::vector<Concession> alike;
      for (const Concession& c : layout.conceded) {
        if (c.wall == wall && c.what == telling.what) alike.push_back(c);
      }
      if (!alike.empty()) found.push_back(told(building, alike));
    }
  }
  return found;
}

}  // namespace stringcourse
