// What is asked at the hold points, and what the answer says to it.
#include "answer/points.hpp"

#include <algorithm>
#include <initializer_list>
#include <set>
#include <utility>

#include "answer/answer.hpp"
#include "ground/findings.hpp"

namespace stringcourse {
namespace {

using ground::Verdict;

constexpr std::string_view kPlan = "plan-course-1", kElevation = "elevation-1", kPegs = "pegs", kBed = "bed-1";

Answered answered_by(Verdict verdict) {
  switch (verdict) {
    case Verdict::Fits: return Answered::Yes;
    case Verdict::DoesNotFit: return Answered::No;
    case Verdict::CannotTell: return Answered::CannotTell;
    case Verdict::NotRead: break;
  }
  return Answered::NotRead;
}

/// The first finding with one of these codes: a question that it answers is answered no.
const Finding* first_of(const Answer& answer, std::initializer_list<Code> codes) {
  const auto found = std::ranges::find_if(
      answer.findings, [&](const Finding& finding) { return std::ranges::contains(codes, finding.code); });
  return found == answer.findings.end() ? nullptr : &*found;
}

Question no(std::string_view asks, const Finding& finding, std::string_view drawing) {
  return {asks, Answered::No, finding.says, finding.place, std::string(drawing)};
}
Question said(std::string_view asks, Answered answered, Fact says, std::string place, std::string_view drawing = {}) {
  return {asks, answered, std::move(says), std::move(place), std::string(drawing)};
}

// Order

Question whole_units(const Answer& answer) {
  constexpr std::string_view kAsks = "ask-whole-units";
  const Layout& layout = answer.layout;
  if (!layout.stopped.empty())
    return said(kAsks, Answered::No, fact("says-not-laid", {layout.stopped.size()}), "/outline", kPlan);
  if (!layout.conceded.empty())
    return said(kAsks, Answered::No, fact("says-conceded", {layout.cost.cuts, layout.conceded.size()}), "/outline",
                kPlan);
  if (layout.cost.cuts > 0) return said(kAsks, Answered::No, fact("says-cuts", {layout.cost.cuts}), "/outline", kPlan);
  return said(kAsks, Answered::Yes, fact("says-no-cuts", {layout.pieces.size()}), "/outline", kPlan);
}

Question course_lines(const Answer& answer) {
  constexpr std::string_view kAsks = "ask-course-lines";
  if (const Finding* off = first_of(answer, {"head-off-course", "sill-off-course", "height-off-course"}))
    return no(kAsks, *off, kElevation);
  const std::size_t openings = answer.building.openings.size();
  return said(kAsks, Answered::Yes, openings == 0 ? fact("says-no-openings") : fact("says-on-lines", {openings}),
              "/openings", kElevation);
}

Question yard(const Answer& answer) {
  constexpr std::string_view kAsks = "ask-yard";
  if (const Finding* lacking =
          first_of(answer, {"full-not-stocked", "kind-not-made", "kind-replaced-by-cut", "half-high-not-stocked",
                            "corner-set-not-stocked", "bond-beam-not-stocked"}))
    return no(kAsks, *lacking, kPlan);
  if (!answer.job.units.stocked) return said(kAsks, Answered::NotRead, fact("lack-stocked"), "/units/stocked");
  return said(kAsks, Answered::Yes, fact("says-stocked", {answer.tallies.to_buy.size()}), "/units/stocked");
}

// Pour

Question dowel_places(const Answer& answer) {
  constexpr std::string_view kAsks = "ask-dowel-places";
  if (const Finding* off = first_of(
          answer, {"conceded-bar", "conceded-bar-cells", "conceded-bar-spacing", "bars-too-near", "bar-without-dowel"}))
    return no(kAsks, *off, kPlan);
  if (!answer.job.steel.bars) return said(kAsks, Answered::NotRead, fact("lack-bars"), "/steel/bars");
  return said(kAsks, Answered::Yes, fact("says-dowels-listed", {answer.dowels.size()}), "/steel/bars", kPlan);
}

/// Drawings of what was read stand only where something was.
std::string_view pegs_of(const Answer& answer) { return answer.found.tape.lines.empty() ? kPlan : kPegs; }
/// A bed is drawn once the concrete is read under every unit.
std::string_view bed_of(const Answer& answer) {
  const auto& levels = answer.found.levels;
  return levels && levels->bed && levels->bed->units_without == 0 ? kBed : kPlan;
}

/// The lines that count so far, and the farthest of them off the plan.
Fact lines_so_far(const Answer& answer) {
  std::size_t count = 0;
  Length most;
  for (const ground::TapedLine& line : answer.found.tape.lines) {
    if (line.slip || line.wrong) continue;
    ++count, most = std::max(most, magnitude(line.read - line.expected));
  }
  const FactValue missing = ground::lines_missing(answer.building, answer.found.tape);
  return count == 0 ? fact("lack-lines-too", {missing}) : fact("says-lines-so-far", {count, most, missing});
}

/// The remedy that was chosen, as long as nothing read since says otherwise.
Fact standing(const std::optional<ground::ChosenNow>& chosen) {
  return chosen && chosen->against.empty() ? chosen->says : Fact();
}
Question with_chosen(Question question, const std::optional<ground::ChosenNow>& chosen) {
  if (question.answered == Answered::No || question.answered == Answered::CannotTell)
    question.chosen = standing(chosen);
  return question;
}

/// What tapings say of the shape, with the corner that is farthest off. `none_read`: what is said before any.
Question shape(const Answer& answer, std::string_view asks, std::string_view none_read) {
  const ground::TapeAsFound& tape = answer.found.tape;
  const Answered answered = answered_by(tape.verdict);
  const auto say = [&](Fact says) { return said(asks, answered, std::move(says), "/readings", pegs_of(answer)); };
  if (tape.lines.empty()) return say(fact(none_read));
  if (const Finding* wrong = first_of(answer, {"impossible-triangle", "no-shape", "net-too-large"}))
    return say(wrong->says);
  if (!tape.tape_again.empty()) return say(fact("lack-tape-again"));
  if (answered == Answered::NotRead && !tape.missing.empty()) return say(lines_so_far(answer));
  const auto farthest = std::ranges::max_element(tape.moves, {}, &ground::PegMove::off);
  if (farthest == tape.moves.end()) return say(fact(none_read));
  return say(fact("says-corner-off", {answer.building.corners[static_cast<std::size_t>(farthest->corner)].name,
                                      farthest->off, farthest->allowed}));
}

Question lines_square(const Answer& answer) {
  return with_chosen(shape(answer, "ask-lines-square", "lack-lines-read"), answer.found.shape_chosen);
}

// First course

Question poured_square(const Answer& answer) {
  constexpr std::string_view kAsks = "ask-poured-square";
  if (answer.found.tape.of_lines)
    return said(kAsks, Answered::NotRead, fact("lack-poured-taped"), "/readings", pegs_of(answer));
  Question square = shape(answer, kAsks, "lack-poured-read");
  if (square.answered == Answered::No) return with_chosen(std::move(square), answer.found.shape_chosen);
  if (const Finding* small = first_of(answer, {"slab-too-small"})) return no(kAsks, *small, pegs_of(answer));
  return with_chosen(std::move(square), answer.found.shape_chosen);
}

/// How many points of the bearing are read, how far they lie apart, and where to read too.
Fact levels_so_far(const ground::LevelsAsFound& levels) {
  const ground::BedAsFound& bed = *levels.bed;
  const FactValue lacks = listed(FactValue::Kind::And, bed.lacks);
  const auto read = std::ranges::count_if(
      levels.stations, [](const ground::Station& one) { return one.surface == Surface::Bearing && !one.far; });
  if (read < 2) return fact("lack-bed", {bed.units_without, lacks});
  const Length apart = bed.level.thickest - bed.level.thinnest;
  return fact("says-levels-so-far", {apart, bed.range.most - bed.range.least, bed.units_without, lacks});
}

Question poured_level(const Answer& answer) {
  constexpr std::string_view kAsks = "ask-poured-level";
  const auto& levels = answer.found.levels;
  if (!levels) return said(kAsks, Answered::NotRead, fact("lack-rod"), "/readings", bed_of(answer));
  if (!levels->bed) return said(kAsks, Answered::NotRead, fact("lack-rod-on-slab"), "/readings", bed_of(answer));
  const ground::BedAsFound& bed = *levels->bed;
  const Answered level = answered_by(bed.verdict);
  if (level == Answered::NotRead) return said(kAsks, level, levels_so_far(*levels), "/readings", bed_of(answer));
  return with_chosen(
      said(kAsks, level, fact("says-beds", {bed.level.thinnest, bed.level.thickest, bed.range.least, bed.range.most}),
           "/readings", kBed),
      answer.found.bed_chosen);
}

Question walls_sit(const Answer& answer) {
  constexpr std::string_view kAsks = "ask-walls-sit";
  if (const Finding* small = first_of(answer, {"slab-too-small"})) return no(kAsks, *small, pegs_of(answer));
  const auto& fit = answer.slab.fit;
  if (fit) return said(kAsks, Answered::Yes, fact("says-slab-room", {fit->room}), "/readings", pegs_of(answer));
  if (answer.slab.lacks.empty()) return said(kAsks, Answered::NotRead, fact("lack-slab"), "/readings", pegs_of(answer));
  return said(kAsks, Answered::NotRead, fact("lack-slab-too", {listed(FactValue::Kind::And, answer.slab.lacks)}),
              "/readings", pegs_of(answer));
}

Question dowels_in_cells(const Answer& answer) {
  constexpr std::string_view kAsks = "ask-dowels-in-cells";
  if (answer.dowels.empty()) return said(kAsks, Answered::Yes, fact("says-no-dowels"), "/steel/bars", kPlan);
  std::set<std::pair<std::int32_t, std::int32_t>> read;
  std::size_t out = 0, unsure = 0;
  for (const steel::FoundDowel& dowel : answer.found_dowels) {
    read.insert({dowel.wall, dowel.number});
    out += dowel.action != steel::Action::Stands && dowel.action != steel::Action::CannotTell;
    unsure += dowel.action == steel::Action::CannotTell;
  }
  if (read.empty()) return said(kAsks, Answered::NotRead, fact("lack-dowels"), "/readings", kPlan);
  if (out > 0) return said(kAsks, Answered::No, fact("says-dowels-out", {out, read.size()}), "/readings", kPlan);
  if (unsure > 0) return said(kAsks, Answered::CannotTell, fact("says-dowels-unsure", {unsure}), "/readings", kPlan);
  if (read.size() < answer.dowels.size())
    return said(kAsks, Answered::NotRead, fact("says-dowels-left", {read.size(), answer.dowels.size()}), "/readings",
                kPlan);
  return said(kAsks, Answered::Yes, fact("says-dowels-stand", {read.size()}), "/readings", kPlan);
}

// Lintels

Question jambs_agree(const Answer& answer) {
  constexpr std::string_view kAsks = "ask-jambs-agree";
  if (answer.building.openings.empty())
    return said(kAsks, Answered::Yes, fact("says-no-openings"), "/openings", kElevation);
  if (const Finding* off =
          first_of(answer, {"conceded-bearing", "lintel-bearing-short", "lintel-bearing-joint", "lintel-bearing-plain",
                            "head-off-course", "half-high-not-under-head", "nothing-spans"}))
    return no(kAsks, *off, kElevation);
  const std::vector<Lack> lacks = lacks_of(answer, HoldPoint::Lintels);
  if (!lacks.empty()) return said(kAsks, Answered::NotRead, lacks.front().says, lacks.front().place, kElevation);
  return said(kAsks, Answered::Yes, fact("says-lintels-bear", {answer.lintels.size()}), "/openings", kElevation);
}

Question lintel_held(const Answer& answer) {
  constexpr std::string_view kAsks = "ask-lintel-held";
  const auto of_units = std::ranges::count_if(
      answer.lintels, [](const supply::LintelAsLaid& lintel) { return lintel.soffit != supply::Soffit::OnePiece; });
  if (of_units == 0) return said(kAsks, Answered::Yes, fact("says-no-shores"), "/openings", kElevation);
  return said(kAsks, Answered::NotRead, fact("says-shores", {of_units}), "/openings", kElevation);
}

// Grout

Question steel_cells(const Answer& answer) {
  constexpr std::string_view kAsks = "ask-steel-cells";
  if (const Finding* off = first_of(answer, {"conceded-bar", "conceded-bar-cells", "bars-too-near"}))
    return no(kAsks, *off, kElevation);
  if (!answer.job.steel.bars) return said(kAsks, Answered::NotRead, fact("lack-bars"), "/steel/bars", kElevation);
  return said(kAsks, Answered::Yes, fact("says-bars-in-cells", {answer.tallies.bars.bars}), "/steel/bars", kElevation);
}

Question pour_heights(const Answer& answer) {
  constexpr std::string_view kAsks = "ask-pour-heights";
  if (const Finding* tall = first_of(answer, {"pour-too-tall"})) return no(kAsks, *tall, kElevation);
  const std::vector<int>& tops = answer.building.pour_tops;
  if (answer.job.steel.pour_tops.empty())
    return said(kAsks, Answered::NotRead, fact("lack-pours"), "/steel/pour_tops", kElevation);
  return said(kAsks, Answered::Yes, fact("says-pours", {listed(FactValue::Kind::And, tops)}), "/steel/pour_tops",
              kElevation);
}

/// Boxes of the inspection list, of one kind or of all.
struct Ticked {
  std::size_t seen = 0, all = 0;
};
Ticked ticked_of(const Answer& answer, std::optional<LookedAtWhat> what) {
  Ticked ticked;
  for (const PourToInspect& pour : answer.inspection) {
    for (const LineToTick& line : pour.lines) {
      if (what && line.what != *what) continue;
      ++ticked.all;
      ticked.seen += line.ticked_by >= 0 ? 1 : 0;
    }
  }
  return ticked;
}

Question cleanouts_open(const Answer& answer) {
  constexpr std::string_view kAsks = "ask-cleanouts-open";
  if (answer.job.steel.pour_tops.empty())
    return said(kAsks, Answered::NotRead, fact("lack-pours"), "/steel/pour_tops", kElevation);
  if (answer.cleanouts.empty())
    return said(kAsks, Answered::Yes, fact("says-no-cleanouts"), "/steel/pour_tops", kElevation);
  const Ticked ticked = ticked_of(answer, LookedAtWhat::Cleanout);
  if (ticked.all > 0 && ticked.seen == ticked.all)
    return said(kAsks, Answered::Yes, fact("says-cleanouts-seen", {ticked.all}), "/laid", kElevation);
  return said(kAsks, Answered::NotRead, fact("says-cleanouts", {answer.cleanouts.size()}), "", kElevation);
}

/// Everything that grout hides was looked at: all boxes of the inspection list.
Question all_looked_at(const Answer& answer) {
  constexpr std::string_view kAsks = "ask-looked-at";
  const Ticked ticked = ticked_of(answer, std::nullopt);
  if (ticked.all == 0) return said(kAsks, Answered::Yes, fact("says-nothing-hidden"), "/steel", kElevation);
  const Answered answered = ticked.seen == ticked.all ? Answered::Yes : Answered::NotRead;
  return said(kAsks, answered, fact("says-looked-at", {ticked.seen, ticked.all}), "/laid", kElevation);
}

// Top

Question bolts_grouted(const Answer& answer) {
  constexpr std::string_view kAsks = "ask-bolts-grouted";
  if (const Finding* none = first_of(answer, {"bolt-no-place"})) return no(kAsks, *none, kElevation);
  std::size_t bolts = 0;
  for (const setout::PlatePiece& piece : answer.plates) bolts += piece.bolts.size();
  if (bolts > 0) return said(kAsks, Answered::Yes, fact("says-bolts-placed", {bolts}), "/top/bolts", kElevation);
  const int top = static_cast<int>(answer.building.courses.size());
  const bool beam = std::ranges::contains(answer.job.steel.bond_beams, top);
  return said(kAsks, Answered::NotRead, fact(beam ? "says-bolts" : "lack-top-beam"),
              beam ? "/top/bolts" : "/steel/bond_beams", kElevation);
}

/// The checks of the top course: one that does not fit is no, one that cannot tell leaves it open.
Question wall_came_to(const Answer& answer) {
  constexpr std::string_view kAsks = "ask-wall-came-to";
  const int top = static_cast<int>(answer.building.courses.size());
  std::size_t fits = 0, out = 0, unsure = 0;
  if (answer.laid) {
    for (const laying::CheckAsLaid& check : answer.laid->checks) {
      if (check.course != top) continue;
      fits += check.verdict == Verdict::Fits, out += check.verdict == Verdict::DoesNotFit,
          unsure += check.verdict == Verdict::CannotTell;
    }
  }
  if (answer.found.levels && answer.found.levels->top) {
    for (const ground::TopPoint& point : answer.found.levels->top->points) {
      fits += point.verdict == ground::Verdict::Fits, out += point.verdict == ground::Verdict::DoesNotFit,
          unsure += point.verdict == ground::Verdict::CannotTell;
    }
  }
  const std::size_t all = fits + out + unsure;
  if (all == 0) return said(kAsks, Answered::NotRead, fact("lack-as-laid"), "/laid", kElevation);
  if (out > 0) return said(kAsks, Answered::No, fact("says-checks-out", {out, all}), "/laid", kElevation);
  if (unsure > 0)
    return said(kAsks, Answered::CannotTell, fact("says-checks-unsure", {unsure, all}), "/laid", kElevation);
  return said(kAsks, Answered::Yes, fact("says-checks-fit", {all}), "/laid", kElevation);
}

std::vector<Question> questions_of(const Answer& answer, HoldPoint point) {
  switch (point) {
    case HoldPoint::Order: return {whole_units(answer), course_lines(answer), yard(answer)};
    case HoldPoint::Pour: return {dowel_places(answer), lines_square(answer)};
    case HoldPoint::FirstCourse:
      return {poured_square(answer), poured_level(answer), walls_sit(answer), dowels_in_cells(answer)};
    case HoldPoint::Lintels: return {jambs_agree(answer), lintel_held(answer)};
    case HoldPoint::Grout:
      return {steel_cells(answer), pour_heights(answer), cleanouts_open(answer), all_looked_at(answer)};
    case HoldPoint::Top: return {bolts_grouted(answer), wall_came_to(answer)};
  }
  return {};
}

}  // namespace

std::vector<PointAsAsked> points_as_asked(const Answer& answer) {
  std::vector<PointAsAsked> points;
  for (const HoldPoint point : {HoldPoint::Order, HoldPoint::Pour, HoldPoint::FirstCourse, HoldPoint::Lintels,
                                HoldPoint::Grout, HoldPoint::Top}) {
    PointAsAsked asked{point, questions_of(answer, point), lacks_of(answer, point), readings_to_take(answer, point)};
    // What a question says is not said again.
    std::erase_if(asked.lacks, [&](const Lack& lack) {
      return std::ranges::any_of(asked.questions, [&](const Question& one) { return one.says == lack.says; });
    });
    asked.done = std::ranges::all_of(
        asked.questions, [](const Question& one) { return one.answered == Answered::Yes || !one.chosen.empty(); });
    points.push_back(std::move(asked));
  }
  const auto first = std::ranges::find(points, false, &PointAsAsked::done);
  (first == points.end() ? points.back() : *first).stands = true;
  return points;
}

}  // namespace stringcourse
