#pragma once
// Changes of a job that a hand makes on the drawing: an opening moved or resized, a side moved, an offer taken.
// The job keeps its form: which corner and which edge an opening is stated from, nominal or actual, leaf or masonry size.
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
/// What an offer changes. By how much, says a length: jambs and openings go towards the wall's end where it is positive,
/// heads up; openings get wider, sides longer.
enum class OfferWhat { MoveOpening, MoveNearJamb, MoveFarJamb, MoveHead, ChangeSide, ChangeWidth };
/// An offer's change: Offer::what, Offer::place, Offer::change and Offer::shift.
struct TakeOffer {
  OfferWhat what = OfferWhat::MoveOpening;
  std::string place;
  Length change;
  Length shift = {};  // ChangeWidth: how far the near jamb goes towards the wall's end
};
using Edit = std::variant<MoveOpening, ResizeOpening, MoveHead, MoveSide, TakeOffer>;

/// The job with one change made. `building` is that of `job`. A length that is neither whole sixty-fourths of an inch
/// nor whole tenths of a millimetre is rounded to the tape's step, 1/16 in or 1 mm. The error is a sentence: the opening
/// or side is not there, or nothing can be moved by it.
[[nodiscard]] std::expected<Job, std::string> edited(const Job& job, const Building& building, const Edit& edit);

/// In a closed outline: the first side that runs the other way than `side`, which follows when that one gets longer, if it
/// comes later in the list. Nothing where no such side is.
[[nodiscard]] std::optional<std::size_t> side_that_follows(const Outline& outline, std::size_t side);

/// The job with one side longer by `change`; in a closed outline side_that_follows() changes with it; nothing
/// where no such side is.
[[nodiscard]] std::optional<Job> with_longer_side(const Job& job, std::size_t side, Length change);

/// True if the opening is stated from the end of its wall.
[[nodiscard]] bool stated_from_end(const Building& building, const ResolvedOpening& opening, const Place& place);

}  // namespace stringcourse
