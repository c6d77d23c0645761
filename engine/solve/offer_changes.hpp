#pragma once
// Small changes that may save something: which are worth a try, the job with one of them made, and its words.
#include <optional>
#include <string>
#include <vector>

#include "edits/edit.hpp"
#include "solve/solve.hpp"

namespace stringcourse {

/// A change that has not been tried: of which opening of the building, or which side of the job.
struct Wanted {
  OfferWhat what = OfferWhat::MoveOpening;
  std::size_t index = 0;
  Length by;          // as in Offer::change
  Length shift = {};  // as in Offer::shift
};

/// Moves of an opening along its wall, at most one unit each way: by whole half units, and to the lines on which half
/// units end.
[[nodiscard]] std::vector<Wanted> moves_of(const Building& building, std::size_t opening);

/// Other sizes of an opening that the job states as a bare hole: each jamb alone to the lines on which half units end,
/// at most one unit each way; where neither jamb is on one, both to the lines beside them; its head to the course lines
/// below and above, where it is on none.
[[nodiscard]] std::vector<Wanted> sizes_of(const Job& job, const Building& building, std::size_t opening);

/// Other lengths of a side, at most one unit longer or shorter: by whole half units, and to whole half units in all.
[[nodiscard]] std::vector<Wanted> lengths_of(const Building& building, std::size_t side);

/// The wall that the change is made on, in the building.
[[nodiscard]] std::size_t wall_changed(const Building& building, const Wanted& wanted);

/// The job with the change made; nothing where the job does not let it be made.
[[nodiscard]] std::optional<Job> changed_job(const Job& job, const Building& building, const Wanted& wanted);

/// Place, name and words of the change, before what it saves: "AB and CD 4 in shorter", "W1 4 in wider at the B end".
[[nodiscard]] Offer unpriced_offer(const Job& job, const Building& building, const Wanted& wanted);

}  // namespace stringcourse
