#include "proof/rows.hpp"

#include <algorithm>

#include "proof/conceded.hpp"
#include "proof/kinds.hpp"

namespace stringcourse::proof {
namespace {

/// A run with what is needed to judge it.
struct Case {
  const Building& building;
  const Layout& layout;
  const Series& series;
  const RunFacts& facts;
  std::string where;
  const Run& run() const { return *facts.run; }
};

bool has_make_up(const RunFacts& facts) {
  return std::ranges::any_of(facts.pieces, [](const Piece* piece) { return piece->make_up; });
}

/// m and S as stated, S inside the joint range; with a make-up piece the joints are j but for what rounding leaves.
Violations check_joints(const Case& c) {
  Violations found;
  const Length slack = c.facts.slack;
  const std::int64_t m = c.facts.joints;
  if (is_bare(c.series, c.facts)) {
    const Length bare = c.run().end - c.run().start;
    found.push_back(violation(kPieces, c.where, "a run of " + in_millimetres(bare) + " without a piece",
                              given_up(Concession::What::Bare, c.run(), c.run().start, c.run().end, bare)));
  }
  if (c.run().joints != m || c.run().slack != slack)
    found.push_back(violation(kJoints, c.where,
                              "joints or slack are not what the pieces leave: " + std::to_string(m) + " joints share " +
                                  in_millimetres(slack)));
  if (!is_bare(c.series, c.facts) && (slack < c.building.joint_least * m || c.building.joint_most * m < slack)) {
    Violation far = violation(kJoints, c.where,
                              std::to_string(m) + " joints share " + in_millimetres(slack) + ": outside the range");
    const Length each = Length::nanometres(slack.in_nanometres() / std::max<std::int64_t>(m, 1));
    if (in_site_tolerance(c.series, slack, m))
      far.may_be = given_up(Concession::What::Joints, c.run(), c.run().start, c.run().end, each);
    found.push_back(std::move(far));
  }
  const Length off = slack - c.series.joint * m;
  const Length size = off < Length() ? -off : off;
  if (has_make_up(c.facts) && c.series.cut_step < size * 2)
    found.push_back(violation(kJoints, c.where,
                              "beside a make-up piece the joints miss j by " + in_millimetres(size) + " together"));
  return found;
}

/// Whether `stated` is (whole m + k S) / m, with `whole` in nanometres.
bool stands_at(const ExactPosition& stated, Length whole, std::int64_t k, Length slack, std::int64_t m) {
  const std::int64_t divisor = std::max<std::int64_t>(m, 1);
  const int128 numerator =
      static_cast<int128>(whole.in_nanometres()) * divisor + static_cast<int128>(k) * slack.in_nanometres();
  return static_cast<int128>(stated.numerator) * divisor == numerator * stated.denominator;
}

/// Each piece starts after the pieces and the equal joints before it, exactly.
Violations check_places(const Case& c) {
  Length before = c.run().start;
  std::int64_t k = has_joint(c.run().at_start) ? 1 : 0;
  for (const Piece* piece : c.facts.pieces) {
    if (!stands_at(piece->start, before, k, c.facts.slack, c.facts.joints))
      return {violation(kJoints, c.where,
                        "piece " + std::to_string(piece->number) + " does not stand where equal joints put it")};
    before += piece->length;
    ++k;
  }
  return {};
}

bool in_list(const std::vector<Length>& list, Length length) { return std::ranges::find(list, length) != list.end(); }

/// A cut may be a listed length, the half unit that the yard lacks, or the run's make-up piece.
bool cut_is_lawful(const Case& c, const Piece& piece) {
  if (unit_length(c.series, piece.kind) <= piece.length) return false;
  if (piece.make_up) return piece.length.is_multiple_of(c.series.cut_step);
  const bool half_high = c.building.courses[static_cast<std::size_t>(c.run().course - 1)].half_high;
  const bool half_by_saw = piece.length == c.series.half &&
                           !is_stocked(c.building, c.series, half_high ? UnitKind::HalfHighHalf : UnitKind::Half);
  return in_list(c.building.cuts, piece.length) || half_by_saw;
}

bool length_is_lawful(const Case& c, const Piece& piece) {
  if (piece.cut != CutEnd::None) return cut_is_lawful(c, piece);
  return !piece.make_up && (piece.length == c.series.full || piece.length == c.series.half);
}

Violations check_lengths(const Case& c) {
  Violations found;
  const Length least = c.layout.relaxed_piece ? c.series.relaxed_piece : c.building.least_piece;
  for (const Piece* piece : c.facts.pieces) {
    if (!length_is_lawful(c, *piece))
      found.push_back(violation(kPieces, c.where, "no unit or saw cut is " + in_millimetres(piece->length) + " long"));
    if (piece->length < least)
      found.push_back(
          violation(kLeastPiece, c.where, in_millimetres(piece->length) + " is shorter than " + in_millimetres(least)));
  }
  if (std::ranges::count_if(c.facts.pieces, [](const Piece* piece) { return piece->make_up; }) > 1)
    found.push_back(violation(kPieces, c.where, "more than one make-up piece in a run"));
  return found;
}

/// The saw's end of a cut meets a joint, never the air, a control joint or a corner.
Violations check_faces(const Case& c) {
  Violations found;
  const std::size_t count = c.facts.pieces.size();
  for (std::size_t i = 0; i < count; ++i) {
    const CutEnd cut = c.facts.pieces[i]->cut;
    const bool shows = (cut == CutEnd::Start && i == 0 && shows_face(c.run().at_start)) ||
                       (cut == CutEnd::End && i + 1 == count && shows_face(c.run().at_end));
    if (!shows) continue;
    Violation cut_shows =
        violation(kFaces, c.where, "the cut end of piece " + std::to_string(c.facts.pieces[i]->number) + " shows");
    const bool either_would = count == 1 && shows_face(c.run().at_start) && shows_face(c.run().at_end);
    if (either_would) cut_shows.may_be = piece_given_up(Concession::What::CutFace, c.run(), *c.facts.pieces[i]);
    found.push_back(std::move(cut_shows));
  }
  return found;
}

/// A corner is one uncut unit; a half only where the run there is one half unit long.
bool makes_corner(const Case& c, const Piece& piece) {
  if (piece.cut != CutEnd::None) return false;
  return piece.length == c.series.full || (piece.length == c.series.half && c.facts.pieces.size() == 1);
}

Violations check_corner_units(const Case& c) {
  if (c.facts.pieces.empty()) return {};
  const bool start_fails = c.run().at_start == RunEnd::ThroughCorner && !makes_corner(c, *c.facts.pieces.front());
  const bool end_fails = c.run().at_end == RunEnd::ThroughCorner && !makes_corner(c, *c.facts.pieces.back());
  Violations found;
  const auto fail = [&](const Piece& piece) {
    found.push_back(violation(kCorners, c.where, "the piece at a corner that runs through is not an uncut unit",
                              piece_given_up(Concession::What::Corner, c.run(), piece)));
  };
  if (start_fails) fail(*c.facts.pieces.front());
  if (end_fails) fail(*c.facts.pieces.back());
  return found;
}

Violations check_run(const Case& c) {
  Violations found = check_joints(c);
  for (auto check : {check_places, check_lengths, check_faces, check_corner_units})
    found = joined(std::move(found), check(c));
  return found;
}

}  // namespace

Violations check_rows(const Building& building, const Layout& layout, const Facts& facts) {
  Violations found;
  for (const WallFacts& wall : facts.walls)
    for (const CourseFacts& course : wall.courses)
      for (const RunFacts& run : course.runs) {
        if (wall.stopped && run.pieces.empty()) continue;  // drawn open
        const Series& series = building.series_of(building.walls[static_cast<std::size_t>(run.run->wall)]);
        found = joined(std::move(found),
                       check_run({building, layout, series, run, place_of(building, run.run->wall, run.run->course)}));
      }
  return found;
}

Violations check_numbers(const Building& building, const Facts& facts) {
  Violations found;
  for (const WallFacts& wall : facts.walls)
    for (const CourseFacts& course : wall.courses) {
      std::int32_t next = 1;
      for (const RunFacts& run : course.runs)
        for (const Piece* piece : run.pieces)
          if (piece->number != next++) {
            found.push_back(
                violation(kPieces, place_of(building, run.run->wall, run.run->course),
                          "piece " + std::to_string(piece->number) + " must be number " + std::to_string(next - 1)));
            next = piece->number + 1;
          }
    }
  return found;
}

}  // namespace stringcourse::proof
