#pragma once
// The one function: a job becomes an answer. Pure; the same job gives the same answer on every machine.
#include <cstdint>
#include <expected>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "bond/layout.hpp"
#include "ground/as_found.hpp"
#include "job/job.hpp"
#include "laying/as_laid.hpp"
#include "job/trouble.hpp"
#include "setout/boards.hpp"
#include "setout/rod_heights.hpp"
#include "steel/dowel_search.hpp"
#include "solve/as_built.hpp"
#include "solve/edit.hpp"
#include "solve/poured.hpp"
#include "steel/dowels.hpp"
#include "steel/slab.hpp"
#include "walls/building.hpp"

namespace stringcourse {

namespace bond {
class PanelMemo;
}

/// What a small change would save: see OfferWhat.
struct Offer {
  OfferWhat what = OfferWhat::MoveOpening;
  std::string place;      // JSON pointer of the opening or side
  std::string name;       // the user's name of it
  std::string text;       // "D1 4 in toward B: no cuts, 3 short laps fewer"
  Length change;
  Length shift = {};      // ChangeWidth: of the near jamb, towards the wall's end
  std::int64_t conceded = 0;  // weight of the rules that need not be given up
  std::int64_t cuts = 0, short_laps = 0, bars = 0;  // saved; negative: more of them
  std::vector<std::size_t> mends = {};  // into Answer::findings: what it removes or, where no offer does, lessens
};

/// Places (near jamb, along its wall) at which an opening lays without a cut, within one unit each way.
struct FreePlaces {
  std::int32_t opening = 0;
  std::vector<Length> from;
};

struct Answer {
  Job job;
  Building building;               // as planned; or, where jambs or corners were found otherwise, as built
  Layout layout;
  std::optional<AsBuilt> as_built;  // what was found and what changes for it; its building and layout are moved to the two above
  ground::AsFound found;           // what the job's readings say
  std::vector<setout::SideBoards> boards;
  std::vector<setout::RodReadingWanted> rod_readings;
  bool poured = false;             // the logs say that the concrete is there: what belongs to the pour stays as poured
  std::optional<AsPoured> kept_from;  // as poured, where dowels are kept that were found elsewhere
  std::vector<steel::Dowel> dowels;   // to be set; or, once poured, as they were poured
  std::optional<steel::DowelsNow> dowels_now;  // once poured: where their bars come down now
  std::vector<steel::FoundDowel> found_dowels;
  steel::DowelSearch dowel_search;  // layouts that save dowels; only where wished for
  steel::SlabRoom slab;
  std::optional<laying::AsLaid> laid;  // marks at the wall and what the laid log says; none while something is dragged
  std::vector<Finding> findings;   // sorted by hold point, then place
  std::vector<Offer> offers;       // sorted by what they save
  bool offers_complete = true;     // every small change was tried; of a large building only the likeliest are
  std::vector<FreePlaces> free_places;
};

/// The answer's layout, and the one printed before something was found otherwise. Lives as long as the answer.
[[nodiscard]] inline laying::Layouts layouts_of(const Answer& answer) { return {answer.layout, answer.as_built ? &answer.as_built->printed : nullptr}; }

/// What the sheets of the pour are drawn of: as planned before anything was found or kept. Lives as long as the answer.
struct PourOf {
  const Building& building;
  const Layout& layout;
};
[[nodiscard]] inline PourOf pour_of(const Answer& answer) {
  if (answer.kept_from) return {answer.kept_from->building, answer.kept_from->layout};
  if (answer.as_built) return {answer.as_built->planned, answer.as_built->printed};
  return {answer.building, answer.layout};
}

struct Wishes {
  bool offers = false;
  bool save_dowels = true;       // look for layouts in which more of the dowels found stand
  bool at_wall = true;           // read the laid log
  std::int64_t search_budget = 400'000;        // expansions for each panel before a proven gap is accepted
  const Layout* like = nullptr;  // corners and junctions as in this layout, where that lays: see bond::lay_out_like
  const Answer* known = nullptr;  // of this search_budget: a job that differs in its logs alone has its layout
  std::function<void(const Layout& layout)> laid = {};  // called once the layout stands, before offers; may be empty
  std::function<bool(double share)> progress = {};  // called now and then; false cancels the offers; may be empty
};

/// Solves a job that was read without refusals. A job whose building cannot be resolved is refused, all refusals at once.
/// A job with a run that no layout fills still has an answer: see Layout::stopped.
[[nodiscard]] std::expected<Answer, Refusals> solve(const Job& job, const Wishes& wishes);

/// The same with what earlier solves left in `memo`, which was made with this wish's search_budget: it changes the time,
/// never the answer. A memo in which offers were looked for also holds what their smaller searches found: not for reuse.
[[nodiscard]] std::expected<Answer, Refusals> solve(const Job& job, const Wishes& wishes, bond::PanelMemo& memo);

}  // namespace stringcourse
