#pragma once
// Changes of a job that a hand makes on the drawing: an opening moved or resized, a side moved, an offer taken.
// The job keeps its form: which corner and which edge an opening is stated from, nominal or actual, leaf or masonry
// size.
#include <expected>
#include <optional>
#include <string>
#include <variant>

#include "job/job.hpp"
#include "walls/building.hpp"

namespace stringcourse {

/// The near jamb comes to `to`, from the start of the wall.
struct MoveOpening {
  std::size_t opening = 0;  // into Job::openings and Building::openings
  Length to;
};
enum class Jamb { From, To };
/// One jamb comes to `to`, from the start of the wall; the other stays.
struct ResizeOpening {
  std::size_t opening = 0;
  Jamb jamb = Jamb::To;
  Length to;
};
/// A side of the outline moves square to itself, outward if positive; its neighbours' lengths follow.
struct MoveSide {
  std::size_t side = 0;
  Length by;
};
/// The head of a bare hole comes to `to`, from the datum.
struct MoveHead {
  std::size_t opening = 0;
  Length to;
};
/// What an offer changes. By how much, says a length: jambs and openings go towards the wall's end where it is
/// positive, heads up; openings get wider, sides longer.
enum class OfferWhat { MoveOpening, MoveNearJamb, MoveFarJamb, MoveHead, ChangeSide, ChangeWidth };
/// An offer's change: Offer::what, Offer::place, Offer::change and Offer::shift.
struct TakeOffer {
  OfferWhat what = OfferWhat::MoveOpening;
  std::string place;
  Length change;
  Length shift = {};  // ChangeWidth: how far the near jamb goes towards the wall's end
};
/// Door, Window, Overhead: bare holes of a common size. ManDoor: a leaf of 3-0 x 6-8 (900 x 2100 mm) in a frame;
/// SingleOverhead: a leaf of 9 x 7 ft (2700 x 2100 mm) between bucks. InnerWall: from the middle of a side to the wall
/// that it meets.
enum class NewPart { Door, Window, Overhead, ManDoor, SingleOverhead, InnerWall };
/// It is put into the side or wall at that place of the job, the last of the openings or of the inner walls.
struct PutIn {
  NewPart what = NewPart::Door;
  std::string place;
};
/// The convex corner at the end of a side of the outline is stepped in, so that three corners stand for it: `along` is
/// taken off that side, `across` off the next one. Both are nominal.
struct StepCorner {
  std::size_t side = 0;
  Length along, across;
};
/// The step that follows a side (StepCorner) is taken out: its two sides go, and the corner is as it was.
struct FillCorner {
  std::size_t side = 0;
};
/// Bond beams over all openings, on top, or both: the courses that their lintels and the plate stand for.
struct PutBeams {
  bool over_openings = false, on_top = false;
};
using Edit =
    std::variant<MoveOpening, ResizeOpening, MoveHead, MoveSide, TakeOffer, PutIn, StepCorner, FillCorner, PutBeams>;

/// The job with one change made. `building` is that of `job`. A length that is neither whole sixty-fourths of an inch
/// nor whole tenths of a millimetre is rounded to the tape's step, 1/16 in or 1 mm. The error says why not: the
/// opening or side is not there, or nothing can be moved by it.
[[nodiscard]] std::expected<Job, Fact> edited(const Job& job, const Building& building, const Edit& edit);

/// The job with something put in. A new opening stands on the grid of half units from the wall's start where there is
/// room for it: a whole unit of wall stays at either side of it. Where there is no room it stands six pitches from the
/// start all the same, and the building then says why it cannot.
[[nodiscard]] std::expected<Job, Fact> with_new_part(const Job& job, const Building& building, const PutIn& put);

/// Corners stepped in or filled again. The building then says what of it cannot be: an opening that is left without its
/// side, sides that cross.
[[nodiscard]] std::expected<Job, Fact> with_step(const Job& job, const StepCorner& step);
[[nodiscard]] std::expected<Job, Fact> without_step(const Job& job, const FillCorner& fill);

/// In a closed outline: the first side that runs the other way than `side`, which follows when that one gets longer, if
/// it comes later in the list. Nothing where no such side is.
[[nodiscard]] std::optional<std::size_t> side_that_follows(const Outline& outline, std::size_t side);

/// The job with one side longer by `change`; in a closed outline side_that_follows() changes with it; nothing
/// where no such side is.
[[nodiscard]] std::optional<Job> with_longer_side(const Job& job, std::size_t side, Length change);

/// True if the opening is stated from the end of its wall.
[[nodiscard]] bool stated_from_end(const Building& building, const ResolvedOpening& opening, const Place& place);

}  // namespace stringcourse
