#include "ground/as_found.hpp"

#include <algorithm>

#include "job/strikes.hpp"
#include "job/words.hpp"
#include "measure/notation.hpp"
#include "measure/quoted.hpp"

namespace stringcourse::ground {
namespace {

std::string entry_place(std::size_t entry) { return "/readings/" + number_text(entry); }

Finding finding(std::string code, std::string place, std::string text, std::string rule) {
  return {std::move(code), std::move(place), std::move(text), std::move(rule), HoldPoint::FirstCourse};
}

const std::string& corner_name(const Building& building, int corner) {
  return building.corners[static_cast<std::size_t>(corner)].name;
}

std::string pair_text(const Building& building, int from, int to) { return corner_name(building, from) + " to " + corner_name(building, to); }

bool has_corner(const Building& building, const std::string& name) {
  return std::ranges::any_of(building.corners, [&](const Corner& corner) { return corner.name == name; });
}

/// Why an entry names what the building does not have; "" where it has all.
std::string unknown_in(const Reading& entry, const Building& building) {
  if (entry.tape) {
    for (const std::string& name : {entry.tape->from, entry.tape->to}) {
      if (!has_corner(building, name)) return "there is no corner " + quoted(name);
    }
    if (entry.tape->from == entry.tape->to) return "both ends are the corner " + quoted(entry.tape->from);
  }
  const auto on_wall = [&](const std::string& on, const std::optional<std::string>& from, Length at) {
    return wall_place(building, on, from, at) ? std::string() : "there is no wall " + quoted(on) + (from ? " with an end at " + quoted(*from) : "");
  };
  if (entry.rod && entry.rod->on) return on_wall(*entry.rod->on, entry.rod->from, entry.rod->at.value_or(Length()));
  if (entry.dowel) return on_wall(entry.dowel->on, entry.dowel->from, entry.dowel->at);
  if (entry.edge) return on_wall(entry.edge->on, entry.edge->from, entry.edge->at);
  return {};
}

bool strikes_something(const Job& job, std::size_t entry) {
  for (std::size_t k = 0; k < entry; ++k) {
    if (job.readings[k].id == *job.readings[entry].strike) return true;
  }
  return false;
}

void find_unusable(const Job& job, const Building& building, std::vector<Finding>& findings) {
  for (std::size_t k = 0; k < job.readings.size(); ++k) {
    const Reading& entry = job.readings[k];
    const std::string unknown = unknown_in(entry, building);
    if (!unknown.empty()) {
      findings.push_back(finding("reading-not-placed", entry_place(k), "Reading " + quoted(entry.id) + " does not count: " + unknown + ".", ""));
    } else if (entry.strike && !strikes_something(job, k)) {
      findings.push_back(finding("strike-of-nothing", entry_place(k), "Entry " + quoted(entry.id) + " strikes " + quoted(*entry.strike) + ", and no earlier entry has that name.", ""));
    }
  }
  if (job.ground && job.ground->hold && !has_corner(building, *job.ground->hold)) {
    findings.push_back(finding("hold-unknown", "/ground/hold", "There is no corner " + quoted(*job.ground->hold) + " whose peg could stay: the first that was taped stays.", ""));
  }
}

void find_in_tape(const Job& job, const Building& building, const TapeAsFound& tape, std::vector<Finding>& findings) {
  const std::string rule = "least squares of all tapings; a reading off by more than 3.29 times its doubt is taken for a blunder (1 in 1000 right ones is)";
  for (const TapedLine& line : tape.lines) {
    const std::string name = pair_text(building, line.from, line.to) + " read " + both_forms(line.read, job.tape);
    if (line.slip) {
      findings.push_back(finding("reading-slip", entry_place(line.entry), name + ", where " + both_forms(line.expected, job.tape) + " is planned: " + slip_text(line.slip->slip) + "? Then it is " + both_forms(line.slip->length, job.tape) + ". It does not count until it is struck and entered anew.", ""));
    } else if (!line.agrees) {
      findings.push_back(finding("second-taping", entry_place(line.entry), name + ", " + tape_text(magnitude(*line.again), job.tape) + (*line.again < Length() ? " shorter" : " longer") + " than at first: one of the two is wrong.", rule));
    } else if (line.wrong) {
      findings.push_back(finding("taping-blunder", entry_place(line.entry), name + " does not fit the others: it is left out. Tape it again.", rule));
    }
  }
  if (tape.suspicion == Suspicion::NotLocatable && !tape.tape_again.empty()) {
    const TapedLine& first = tape.lines[tape.tape_again[0]];
    findings.push_back(finding("tapings-disagree", entry_place(first.entry), "The tapings do not fit together, and six of them cannot tell which is wrong. Tape " + pair_text(building, first.from, first.to) + " again first; at most five second tapings find it.", rule));
  }
  if (tape.state == TapeAsFound::State::NotDeterminate) {
    std::string pairs;
    for (const auto& [from, to] : tape.missing) pairs += (pairs.empty() ? "" : ", ") + pair_text(building, from, to);
    findings.push_back(finding("shape-not-held", "/readings", "The tapings do not hold the shape yet. Tape " + pairs + " too.", ""));
  }
  if (tape.state == TapeAsFound::State::Impossible && tape.impossible.size() == 3) {
    const TapedLine &longest = tape.lines[tape.impossible[0]], &one = tape.lines[tape.impossible[1]], &other = tape.lines[tape.impossible[2]];
    findings.push_back(finding("impossible-triangle", entry_place(longest.entry), pair_text(building, longest.from, longest.to) + " read " + both_forms(longest.read, job.tape) + ", more than " + pair_text(building, one.from, one.to) + " and " + pair_text(building, other.from, other.to) + " together: no triangle has such sides. One of the three is read or written wrong.", ""));
  } else if (tape.state == TapeAsFound::State::Impossible) {
    findings.push_back(finding("no-shape", "/readings", "No shape near the plan has these tapings. Look for a reading that belongs to another line.", ""));
  }
}

void find_in_levels(const Job& job, const Building& building, const LevelsAsFound& levels, std::vector<Finding>& findings) {
  for (const std::string& name : levels.loose) {
    findings.push_back(finding("level-loose", "/readings", "No chain of readings ties " + quoted(name) + " to " + quoted(levels.datum) + ": read one of its set-ups' points from a set-up that saw the datum.", ""));
  }
  for (const LoopVerdict& loop : levels.loops) {
    if (loop.closes) continue;
    findings.push_back(finding("level-loop", entry_place(loop.entries[0]), "A loop of " + number_text(loop.entries.size()) + " rod readings comes back " + tape_text(loop.misclosure, job.tape) + " off; up to " + tape_text(loop.allowed, job.tape) + " is within their doubt. Read it again.", "3.29 times the doubt of the readings in the loop"));
  }
  for (const Station& station : levels.stations) {
    if (station.two_places) findings.push_back(finding("station-two-places", entry_place(station.entry), "The point " + quoted(station.name) + " was read at two places: the last one counts. Name each point differently.", ""));
    if (!station.far) continue;
    const std::string off = "The footing or slab at " + quoted(station.name) + " comes out far from all others and is left out. ";
    findings.push_back(finding("rod-far", entry_place(station.entry), station.slip ? off + "Read wrong: " + slip_text(station.slip->slip) + "? Then the rod read " + both_forms(station.slip->length, job.tape) + ". Strike it and enter it anew."
                                                                                    : off + "Was the rod upside down, or the reading of another point? Strike it and read it again.",
                               "a height more than 2 ft or 600 mm from the middle of all (this program's limit)"));
  }
  if (levels.instrument && !levels.instrument->level) {
    const Instrument& one = *levels.instrument;
    const Length size = magnitude(one.over);
    findings.push_back(finding("instrument-not-level", entry_place(one.entry), "The instrument looks " + std::string(one.over < Length() ? "down " : "up ") + tape_text(size, job.tape) + " over " + tape_text(one.sight, job.tape) + " (give or take " + tape_text(one.doubt, job.tape) + "). " +
                               (one.corrected > 0 ? number_text(one.corrected) + " rod readings with a sight are corrected by it." : std::string("Keep sights alike, or enter each sight so that the reading is corrected.")),
                               "two-peg test; the doubt of its four readings, k = 2"));
  }
  for (const DoorFloor& door : levels.doors) {
    if (door.verdict == Verdict::Fits) continue;
    const ResolvedOpening& opening = building.openings[static_cast<std::size_t>(door.opening)];
    const std::string tall = door.tall_least == door.tall_most ? tape_text(door.tall_least, job.tape) : tape_text(door.tall_least, job.tape) + " to " + tape_text(door.tall_most, job.tape);
    findings.push_back(finding("door-floor", opening.place, opening.name + " will be " + tall + " high over the floor as read, " + tape_text(opening.height(), job.tape) + " as planned." + (door.verdict == Verdict::CannotTell ? " The rod can't tell whether that is within its limit." : " Set the frame or its threshold by it."),
                               "floor readings between the jambs; 1/8 in or 3 mm (ours)"));
  }
  if (!levels.bed) return;
  const BedAsFound& bed = *levels.bed;
  if (bed.verdict == Verdict::Fits) return;
  const std::string range = tape_text(bed.range.least, job.tape) + " to " + tape_text(bed.range.most, job.tape);
  const std::string spread = "beds from " + tape_text(bed.level.thinnest, job.tape) + " to " + tape_text(bed.level.thickest, job.tape);
  const std::string text = bed.verdict == Verdict::CannotTell
                               ? "At the best level the first course has " + spread + "; " + range + " is allowed. The readings are not sure enough to tell."
                               : "No level of the first course keeps its bed within " + range + ": the best has " + spread + ".";
  findings.push_back(finding(bed.verdict == Verdict::CannotTell ? "bed-cannot-tell" : "bed-out-of-range", "/readings", text, "first bed 1/4 to 3/4 in, or 1 1/4 in grouted on concrete (TMS 602 art. 3.3, as others quote it)"));
}

}  // namespace

std::optional<WallPlace> wall_place(const Building& building, const std::string& on, const std::optional<std::string>& from, Length at) {
  for (std::size_t k = 0; k < building.walls.size(); ++k) {
    const Wall& wall = building.walls[k];
    if (wall.name != on) continue;
    if (!from || *from == wall.start_name) return WallPlace{static_cast<int>(k), at};
    if (*from == wall.end_name) return WallPlace{static_cast<int>(k), wall.actual - at};
  }
  return std::nullopt;
}

std::vector<bool> entries_that_count(const Job& job, const Building& building) {
  std::vector<bool> counts = entries_standing(job.readings);
  for (std::size_t k = 0; k < counts.size(); ++k) {
    const Reading& entry = job.readings[k];
    if (entry.strike || !unknown_in(entry, building).empty()) counts[k] = false;
  }
  return counts;
}

AsFound as_found(const Job& job, const Building& building, const Layout& layout) {
  AsFound found;
  if (job.readings.empty()) return found;
  const std::vector<bool> counts = entries_that_count(job, building);
  find_unusable(job, building, found.findings);
  found.tape = tape_as_found(job, building, counts);
  find_in_tape(job, building, found.tape, found.findings);
  found.levels = levels_as_found(job, building, layout, counts);
  if (found.levels) find_in_levels(job, building, *found.levels, found.findings);
  return found;
}

std::string move_text(const Building& building, const PegMove& move) {
  // Along the wall that leaves the corner, and along the one that arrives there.
  const Corner& corner = building.corners[static_cast<std::size_t>(move.corner)];
  std::string text;
  const auto add = [&](int number, const std::string& towards, int sign) {
    if (number < 0) return;
    const Heading heading = building.walls[static_cast<std::size_t>(number)].heading;
    const bool east_west = heading == Heading::East || heading == Heading::West;
    const Length along = (east_west ? move.east : move.north) * ((heading == Heading::East || heading == Heading::North) == (sign > 0) ? 1 : -1);
    const Length size = magnitude(along);
    const std::string amount = tape_text(size, building.tape);
    if (rounded_to(size, tape_step(building.tape)) == Length()) return;
    text += (text.empty() ? "" : ", ") + amount + (along < Length() ? " away from " : " toward ") + towards;
  };
  const auto& walls = building.walls;
  if (corner.leaving >= 0) add(corner.leaving, walls[static_cast<std::size_t>(corner.leaving)].end_name, 1);
  if (corner.arriving >= 0) add(corner.arriving, walls[static_cast<std::size_t>(corner.arriving)].start_name, -1);
  return text.empty() ? "stays" : text;
}

std::string verdict_text(Verdict verdict) {
  switch (verdict) {
    case Verdict::Fits: return "fits";
    case Verdict::DoesNotFit: return "does not fit";
    case Verdict::CannotTell: return "can't tell";
  }
  return {};
}

std::string slip_text(Slip slip) {
  switch (slip) {
    case Slip::FeetForInches: return "feet written as inches";
    case Slip::InchesForFeet: return "inches written as feet";
    case Slip::InchesForMillimetres: return "inches written as mm";
    case Slip::MillimetresForInches: return "mm written as inches";
    case Slip::FeetForMillimetres: return "feet written as mm";
    case Slip::MillimetresForFeet: return "mm written as feet";
    case Slip::FootLost: return "a foot lost or counted twice";
    case Slip::InchBurnt: return "the tape held at its 1 in mark";
  }
  return {};
}

}  // namespace stringcourse::ground
