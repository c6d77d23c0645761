#include "ground/findings.hpp"

#include "job/words.hpp"

namespace stringcourse::ground {
namespace {

std::string entry_place(std::size_t entry) { return "/readings/" + number_text(entry); }

/// Findings of one job, one after the other.
class Findings {
 public:
  explicit Findings(const Building& building) : building_(building) {}

  void add(Code code, std::string place, Fact says, std::string_view rule = {}) {
    all_.push_back({code, std::move(place), std::move(says), std::string(rule), HoldPoint::FirstCourse});
  }
  [[nodiscard]] const std::string& corner(int number) const {
    return building_.corners[static_cast<std::size_t>(number)].name;
  }
  [[nodiscard]] Fact line(int from, int to) const { return fact("line-between", {corner(from), corner(to)}); }
  [[nodiscard]] Fact line(const std::array<int, 2>& ends) const { return line(ends[0], ends[1]); }
  [[nodiscard]] Fact line(const TapedLine& taped) const { return line(taped.from, taped.to); }
  [[nodiscard]] const Building& building() const { return building_; }
  std::vector<Finding> take() { return std::move(all_); }

 private:
  const Building& building_;
  std::vector<Finding> all_;
};

constexpr LengthForm kBoth = LengthForm::Both;

void add_lines(Findings& into, const TapeAsFound& tape) {
  for (const TapedLine& line : tape.lines) {
    const std::string place = entry_place(line.entry);
    const Fact name = into.line(line);
    const FactValue read(line.read, kBoth);
    if (line.slip) {
      into.add("reading-slip", place,
               fact("reading-slip", {name, read, FactValue(line.expected, kBoth), slip_said(line.slip->slip),
                                     FactValue(line.slip->length, kBoth)}));
    } else if (!line.agrees) {
      const bool shorter = *line.again < Length();
      into.add("second-taping", place,
               fact(shorter ? "second-taping-shorter" : "second-taping-longer", {name, read, magnitude(*line.again)}),
               "tapings-fit");
    } else if (line.wrong) {
      into.add("taping-blunder", place, fact("taping-blunder", {name, read}), "tapings-fit");
    }
  }
}

void add_disagreement(Findings& into, const TapeAsFound& tape) {
  if (tape.suspicion != Suspicion::NotLocatable || tape.tape_again.empty()) return;
  std::vector<Fact> again;
  for (const std::size_t line : tape.tape_again) again.push_back(into.line(tape.lines[line]));
  into.add("tapings-disagree", entry_place(tape.lines[tape.tape_again[0]].entry),
           fact("tapings-disagree", {listed(FactValue::Kind::And, again)}), "tapings-fit");
}

void add_lacking(Findings& into, const TapeAsFound& tape) {
  if (tape.missing.empty() || tape.suspicion == Suspicion::NotLocatable || tape.state == TapeAsFound::State::NoReadings)
    return;
  const bool checks = tape.state == TapeAsFound::State::Adjusted && tape.missing.size() == 1 && tape.freedom <= 0;
  const Code code = checks ? Code("tapings-unchecked") : Code("shape-not-held");
  into.add(code, "/readings", fact(code, {lines_missing(into.building(), tape)}));
}

void add_impossible(Findings& into, const TapeAsFound& tape) {
  if (tape.state == TapeAsFound::State::TooLarge) {
    into.add("net-too-large", "/readings", fact("net-too-large", {kMostTapedCorners}));
  }
  if (tape.state != TapeAsFound::State::Impossible) return;
  if (tape.impossible.size() != 3) return into.add("no-shape", "/readings", fact("no-shape"));
  const TapedLine &longest = tape.lines[tape.impossible[0]], &one = tape.lines[tape.impossible[1]],
                  &other = tape.lines[tape.impossible[2]];
  into.add("impossible-triangle", entry_place(longest.entry),
           fact("impossible-triangle",
                {into.line(longest), FactValue(longest.read, kBoth), into.line(one), into.line(other)}));
}

void add_shape(Findings& into, const TapeAsFound& tape) {
  for (const Diagonals& pair : tape.diagonals) {
    if (pair.verdict == Verdict::Fits) continue;
    into.add("diagonals-differ", "/readings",
             fact(pair.verdict == Verdict::CannotTell ? "diagonals-may-differ" : "diagonals-differ",
                  {into.line(pair.one), pair.difference, into.line(pair.other), pair.allowed, pair.doubt}),
             "diagonals-alike");
  }
  for (const PegMove& move : tape.moves) {
    if (move.corner == tape.held || move.verdict == Verdict::Fits || move.verdict == Verdict::NotRead) continue;
    into.add("corner-off-place", "/readings",
             fact(move.verdict == Verdict::CannotTell ? "corner-may-be-off-place" : "corner-off-place",
                  {into.corner(move.corner), move.off, move.allowed, move.doubt}),
             "place-in-plan");
  }
}

void add_far(Findings& into, const Station& station) {
  const FactValue name = FactValue::typed(station.name);
  into.add("rod-far", entry_place(station.entry),
           station.slip
               ? fact("rod-far-slip", {name, slip_said(station.slip->slip), FactValue(station.slip->length, kBoth)})
               : fact("rod-far", {name}),
           "rod-far");
}

void add_stations(Findings& into, const LevelsAsFound& levels) {
  for (const std::string& name : levels.loose) {
    into.add("level-loose", "/readings", fact("level-loose", {FactValue::typed(name), FactValue::typed(levels.datum)}));
  }
  for (const LoopVerdict& loop : levels.loops) {
    if (loop.closes) continue;
    into.add("level-loop", entry_place(loop.entries[0]),
             fact("level-loop", {loop.entries.size(), loop.misclosure, loop.allowed}), "level-loop");
  }
  for (const Station& station : levels.stations) {
    if (station.two_places) {
      into.add("station-two-places", entry_place(station.entry),
               fact("station-two-places", {FactValue::typed(station.name)}));
    }
    if (station.far) add_far(into, station);
  }
}

void add_instrument(Findings& into, const LevelsAsFound& levels) {
  if (!levels.instrument || levels.instrument->level) return;
  const Instrument& one = *levels.instrument;
  const Fact mend = one.corrected > 0 ? fact("instrument-corrected", {one.corrected}) : fact("instrument-alike");
  into.add("instrument-not-level", entry_place(one.entry),
           fact(one.over < Length() ? "instrument-looks-down" : "instrument-looks-up",
                {magnitude(one.over), one.sight, one.doubt, mend}),
           "two-peg-test");
}

void add_doors(Findings& into, const LevelsAsFound& levels) {
  for (const DoorFloor& door : levels.doors) {
    if (door.verdict == Verdict::Fits || door.verdict == Verdict::NotRead) continue;
    const ResolvedOpening& opening = into.building().openings[static_cast<std::size_t>(door.opening)];
    const bool one = door.tall_least == door.tall_most;
    const FactValue tall = one ? FactValue(door.tall_least) : fact("from-to", {door.tall_least, door.tall_most});
    into.add("door-floor", opening.place,
             fact(door.verdict == Verdict::CannotTell ? "door-floor-unsure" : "door-floor",
                  {opening.name, tall, opening.height()}),
             "door-floor");
  }
}

void add_bed(Findings& into, const BedAsFound& bed) {
  const Length least = bed.range.least, most = bed.range.most, thin = bed.level.thinnest, thick = bed.level.thickest;
  const Fact too = bed.lacks.empty() ? Fact() : fact("read-rod-too", {listed(FactValue::Kind::And, bed.lacks)});
  switch (bed.verdict) {
    case Verdict::Fits: return;
    case Verdict::NotRead: return into.add("bed-not-read", "/readings", fact("bed-not-read", {too}));
    case Verdict::CannotTell:
      return into.add("bed-cannot-tell", "/readings", fact("bed-cannot-tell", {thin, thick, least, most}), "first-bed");
    case Verdict::DoesNotFit:
      return into.add("bed-out-of-range", "/readings", fact("bed-out-of-range", {least, most, thin, thick, too}),
                      "first-bed");
  }
}

}  // namespace

FactValue lines_missing(const Building& building, const TapeAsFound& tape) {
  const Findings names(building);
  std::vector<Fact> lines;
  for (const auto& ends : tape.missing) lines.push_back(names.line(ends));
  return listed(FactValue::Kind::And, lines);
}

std::vector<Finding> tape_findings(const Building& building, const TapeAsFound& tape) {
  Findings findings(building);
  add_lines(findings, tape);
  add_disagreement(findings, tape);
  add_lacking(findings, tape);
  add_impossible(findings, tape);
  add_shape(findings, tape);
  return findings.take();
}

std::vector<Finding> level_findings(const Building& building, const LevelsAsFound& levels) {
  Findings findings(building);
  if (levels.too_many_setups) {
    findings.add("too-many-setups", "/readings", fact("too-many-setups", {kMostSetups}));
    return findings.take();
  }
  add_stations(findings, levels);
  add_instrument(findings, levels);
  add_doors(findings, levels);
  if (levels.bed) add_bed(findings, *levels.bed);
  return findings.take();
}

}  // namespace stringcourse::ground
