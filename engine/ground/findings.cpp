#include "ground/findings.hpp"

#include "job/words.hpp"
#include "measure/notation.hpp"
#include "measure/quoted.hpp"

namespace stringcourse::ground {
namespace {

constexpr std::string_view kSquaresRule =
    "least squares of all tapings; a reading off by more than 3.29 times the doubt of one reading is taken for a blunder (1 in 1000 "
    "right ones is)";
constexpr std::string_view kBedRule = "TMS 602 art. 3.3 (edition not stated), as others quote it";

std::string entry_place(std::size_t entry) { return "/readings/" + number_text(entry); }

/// Findings of one job, one after the other.
class Findings {
 public:
  Findings(const Job& job, const Building& building) : job_(job), building_(building) {}

  void add(std::string code, std::string place, std::string text, std::string_view rule = {}) {
    all_.push_back({std::move(code), std::move(place), std::move(text), std::string(rule), HoldPoint::FirstCourse});
  }
  [[nodiscard]] std::string text(Length length) const { return tape_text(length, job_.tape); }
  [[nodiscard]] std::string both(Length length) const { return both_forms(length, job_.tape); }
  [[nodiscard]] const std::string& corner(int number) const {
    return building_.corners[static_cast<std::size_t>(number)].name;
  }
  [[nodiscard]] std::string pair(int from, int to) const { return corner(from) + " to " + corner(to); }
  [[nodiscard]] std::string pair(const std::array<int, 2>& ends) const { return pair(ends[0], ends[1]); }
  [[nodiscard]] std::string pair(const TapedLine& line) const { return pair(line.from, line.to); }
  [[nodiscard]] const Building& building() const { return building_; }
  std::vector<Finding> take() { return std::move(all_); }

 private:
  const Job& job_;
  const Building& building_;
  std::vector<Finding> all_;
};

void add_lines(Findings& into, const TapeAsFound& tape) {
  for (const TapedLine& line : tape.lines) {
    const std::string name = into.pair(line) + " read " + into.both(line.read), place = entry_place(line.entry);
    if (line.slip) {
      into.add("reading-slip", place,
               name + ", where " + into.both(line.expected) + " is planned: " + slip_text(line.slip->slip) + "? Then it is " +
                   into.both(line.slip->length) + ". It does not count until it is struck and entered anew.");
    } else if (!line.agrees) {
      into.add("second-taping", place,
               name + ", " + into.text(magnitude(*line.again)) + (*line.again < Length() ? " shorter" : " longer") +
                   " than at first: one of the two is wrong.",
               kSquaresRule);
    } else if (line.wrong) {
      into.add("taping-blunder", place, name + " does not fit the others: it is left out. Tape it again.", kSquaresRule);
    }
  }
}

void add_disagreement(Findings& into, const TapeAsFound& tape) {
  if (tape.suspicion != Suspicion::NotLocatable || tape.tape_again.empty()) return;
  std::vector<std::string> again;
  for (const std::size_t line : tape.tape_again) again.push_back(into.pair(tape.lines[line]));
  into.add("tapings-disagree", entry_place(tape.lines[tape.tape_again[0]].entry),
           "The tapings do not fit together, and which is wrong cannot be told from them. Tape again, in this order, until one "
           "differs from its first: " + listed(again) + ". No peg is moved before.",
           kSquaresRule);
}

void add_lacking(Findings& into, const TapeAsFound& tape) {
  if (tape.missing.empty() || tape.suspicion == Suspicion::NotLocatable || tape.state == TapeAsFound::State::NoReadings) return;
  std::vector<std::string> lines;
  for (const auto& ends : tape.missing) lines.push_back(into.pair(ends));
  const bool checks = tape.state == TapeAsFound::State::Adjusted && lines.size() == 1 && tape.freedom <= 0;
  into.add(checks ? "tapings-unchecked" : "shape-not-held", "/readings",
           "Sides and diagonals are not read yet: " + std::string(checks ? "nothing checks the tapings. " : "they do not hold the shape. ") +
               "Tape " + listed(lines) + (checks ? "." : " too."));
}

void add_impossible(Findings& into, const TapeAsFound& tape) {
  if (tape.state == TapeAsFound::State::TooLarge) {
    into.add("net-too-large", "/readings",
             "More than " + number_text(kMostTapedCorners) + " corners are taped together: this program's limit. None of them is worked out.");
  }
  if (tape.state != TapeAsFound::State::Impossible) return;
  if (tape.impossible.size() != 3) {
    return into.add("no-shape", "/readings", "No shape near the plan has these tapings. Look for a reading that belongs to another line.");
  }
  const TapedLine &longest = tape.lines[tape.impossible[0]], &one = tape.lines[tape.impossible[1]], &other = tape.lines[tape.impossible[2]];
  into.add("impossible-triangle", entry_place(longest.entry),
           into.pair(longest) + " read " + into.both(longest.read) + ", more than " + into.pair(one) + " and " + into.pair(other) +
               " together: no triangle has such sides. One of the three is read or written wrong.");
}

/// "can't tell" or "does not fit", in a sentence's middle.
std::string verdict_words(Verdict verdict) { return verdict == Verdict::CannotTell ? "The tape can't tell whether that is within it." : ""; }

void add_shape(Findings& into, const TapeAsFound& tape) {
  for (const Diagonals& pair : tape.diagonals) {
    if (pair.verdict == Verdict::Fits) continue;
    const std::string differ = into.pair(pair.one) + " is " + into.text(pair.difference) + " longer than " + into.pair(pair.other) +
                               ": in a rectangle the diagonals are alike. " + into.text(pair.allowed) + " is allowed, the tape's doubt is " +
                               into.text(pair.doubt) + ". ";
    into.add("diagonals-differ", "/readings", differ + verdict_words(pair.verdict) + (pair.verdict == Verdict::CannotTell ? " " : "") +
                 "Where each corner is to go stands with the pegs.",
             "diagonals of a rectangle within 1/2 in or 12 mm of each other (common practice: a 12-16-20 ft triangle within 1/2 in)");
  }
  for (const PegMove& move : tape.moves) {
    if (move.corner == tape.held || move.verdict == Verdict::Fits || move.verdict == Verdict::NotRead) continue;
    const std::string off = into.corner(move.corner) + " stands " + into.text(move.off) + " off its place; " + into.text(move.allowed) +
                            " is allowed, the tape's doubt is " + into.text(move.doubt) + ".";
    into.add("corner-off-place", "/readings", off + (move.verdict == Verdict::CannotTell ? " " : "") + verdict_words(move.verdict),
             "place in plan within 1/2 in in 20 ft, 3/4 in at most (TMS 602, as others quote it)");
  }
}

void add_stations(Findings& into, const LevelsAsFound& levels) {
  for (const std::string& name : levels.loose) {
    into.add("level-loose", "/readings",
             "No chain of readings ties " + quoted(name) + " to " + quoted(levels.datum) +
                 ": read one of its set-ups' points from a set-up that saw that one.");
  }
  for (const LoopVerdict& loop : levels.loops) {
    if (loop.closes) continue;
    into.add("level-loop", entry_place(loop.entries[0]),
             "A loop of " + number_text(loop.entries.size()) + " rod readings comes back " + into.text(loop.misclosure) + " off; up to " +
                 into.text(loop.allowed) + " is within their doubt. Read it again before a block is laid.",
             "3.29 times the doubt of the readings in the loop");
  }
  for (const Station& station : levels.stations) {
    if (station.two_places) {
      into.add("station-two-places", entry_place(station.entry),
               "The point " + quoted(station.name) + " was read at two places: the last one counts. Name each point differently.");
    }
    if (!station.far) continue;
    const std::string off = "The footing or slab at " + quoted(station.name) + " comes out far from all others and is left out. ";
    const std::string meant = station.slip ? "Read wrong: " + slip_text(station.slip->slip) + "? Then the rod read " +
                                                 into.both(station.slip->length) + ". Strike it and enter it anew."
                                           : std::string("Was the rod upside down, or the reading of another point? Strike it and read it again.");
    into.add("rod-far", entry_place(station.entry), off + meant, "a height more than 2 ft or 600 mm from the middle of all (this program's limit)");
  }
}

void add_instrument(Findings& into, const LevelsAsFound& levels) {
  if (!levels.instrument || levels.instrument->level) return;
  const Instrument& one = *levels.instrument;
  const std::string looks = "The instrument looks " + std::string(one.over < Length() ? "down " : "up ") + into.text(magnitude(one.over)) +
                            " over " + into.text(one.sight) + " (give or take " + into.text(one.doubt) + "). ";
  into.add("instrument-not-level", entry_place(one.entry),
           looks + (one.corrected > 0 ? number_text(one.corrected) + " rod readings with a sight are corrected by it."
                                      : std::string("Keep sights alike, or enter each sight so that the reading is corrected.")),
           "two-peg test; the doubt of its four readings, k = 2");
}

void add_doors(Findings& into, const LevelsAsFound& levels) {
  for (const DoorFloor& door : levels.doors) {
    if (door.verdict == Verdict::Fits || door.verdict == Verdict::NotRead) continue;
    const ResolvedOpening& opening = into.building().openings[static_cast<std::size_t>(door.opening)];
    const bool one = door.tall_least == door.tall_most;
    const std::string tall = one ? into.text(door.tall_least) : into.text(door.tall_least) + " to " + into.text(door.tall_most);
    const bool unsure = door.verdict == Verdict::CannotTell;
    into.add("door-floor", opening.place,
             opening.name + " will be " + tall + " high over the floor as read, " + into.text(opening.height()) + " as planned." +
                 (unsure ? " The rod can't tell whether that is within its limit." : " Set the frame or its threshold by it."),
             "floor readings between the jambs; 1/8 in or 3 mm (this program's limit)");
  }
}

void add_bed(Findings& into, const BedAsFound& bed) {
  const std::string range = into.text(bed.range.least) + " to " + into.text(bed.range.most);
  const std::string spread = "beds from " + into.text(bed.level.thinnest) + " to " + into.text(bed.level.thickest);
  const std::string read_too = bed.lacks.empty() ? "" : " Read the rod at " + listed(bed.lacks) + " too.";
  switch (bed.verdict) {
    case Verdict::Fits: return;
    case Verdict::NotRead:
      return into.add("bed-not-read", "/readings", "The first bed is not read yet under every block: nothing is said of it." + read_too);
    case Verdict::CannotTell:
      return into.add("bed-cannot-tell", "/readings",
                      "At the best level the first course has " + spread + "; " + range + " is allowed. The readings are not sure enough to tell.",
                      kBedRule);
    case Verdict::DoesNotFit:
      return into.add("bed-out-of-range", "/readings",
                      "No level of the first course keeps its bed within " + range + ": the best has " + spread + "." + read_too, kBedRule);
  }
}

}  // namespace

std::string listed(const std::vector<std::string>& names) {
  std::string text;
  for (std::size_t k = 0; k < names.size(); ++k) {
    text += (k == 0 ? "" : k + 1 == names.size() ? " and " : ", ") + names[k];
  }
  return text;
}

std::vector<Finding> tape_findings(const Job& job, const Building& building, const TapeAsFound& tape) {
  Findings findings(job, building);
  add_lines(findings, tape);
  add_disagreement(findings, tape);
  add_lacking(findings, tape);
  add_impossible(findings, tape);
  add_shape(findings, tape);
  return findings.take();
}

std::vector<Finding> level_findings(const Job& job, const Building& building, const LevelsAsFound& levels) {
  Findings findings(job, building);
  if (levels.too_many_setups) {
    findings.add("too-many-setups", "/readings",
                 "The rod was read from more than " + number_text(kMostSetups) + " set-ups: this program's limit. None of the heights is worked out.");
    return findings.take();
  }
  add_stations(findings, levels);
  add_instrument(findings, levels);
  add_doors(findings, levels);
  if (levels.bed) add_bed(findings, *levels.bed);
  return findings.take();
}

}  // namespace stringcourse::ground
