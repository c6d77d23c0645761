#pragma once
// What a job comes to: one plain value with every result. Each is made once, by the room that knows how; whoever shows
// an answer reads it here and works nothing out again.
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "answer/as_built.hpp"
#include "answer/bar_cutting.hpp"
#include "answer/bed_money.hpp"
#include "answer/inspection.hpp"
#include "answer/order.hpp"
#include "answer/points.hpp"
#include "answer/pour_card.hpp"
#include "answer/programme.hpp"
#include "answer/site.hpp"
#include "answer/weather.hpp"
#include "bond/layout.hpp"
#include "edits/edit.hpp"
#include "ground/as_found.hpp"
#include "job/job.hpp"
#include "job/trouble.hpp"
#include "laying/as_laid.hpp"
#include "setout/boards.hpp"
#include "setout/bolts.hpp"
#include "setout/cleanouts.hpp"
#include "setout/gauge_rod.hpp"
#include "setout/rod_heights.hpp"
#include "setout/saw_list.hpp"
#include "steel/bar_pieces.hpp"
#include "steel/dowel_search.hpp"
#include "steel/dowels.hpp"
#include "steel/poured.hpp"
#include "steel/slab.hpp"
#include "steel/ties.hpp"
#include "steel/wires.hpp"
#include "supply/counts.hpp"
#include "supply/grout.hpp"
#include "supply/heads.hpp"
#include "supply/lintels.hpp"
#include "supply/shores.hpp"
#include "walls/building.hpp"

namespace stringcourse {

/// What a small change would save: see OfferWhat.
struct Offer {
  OfferWhat what = OfferWhat::MoveOpening;
  std::string place;  // JSON pointer of the opening or side
  std::string name;   // the user's name of it
  Fact text;          // "D1 4 in toward B: no cuts, 3 short laps fewer"
  Length change;
  Length shift = {};                                // ChangeWidth: of the near jamb, towards the wall's end
  std::int64_t conceded = 0;                        // weight of the rules that need not be given up
  std::int64_t cuts = 0, short_laps = 0, bars = 0;  // saved; negative: more of them
  std::optional<Sum> money = {};        // that the order costs more with it; below zero: less; none: a price is missing
  std::vector<std::size_t> mends = {};  // into Answer::findings: what it removes or, where no offer does, lessens
};

/// Places (near jamb, along its wall) at which an opening lays without a cut, within one unit each way.
struct FreePlaces {
  std::int32_t opening = 0;
  std::vector<Length> from;
};

/// What the layout takes, counted.
struct Tallies {
  supply::Counts units;
  std::vector<supply::Purchase> to_buy;
  std::vector<supply::PartCount> corner_set_parts;
  std::vector<supply::LintelCount> one_piece_lintels;
  supply::BarCount bars;
  supply::CleanoutCount cleanouts;
  std::vector<supply::GroutPour> grout;  // from the bottom
};

struct Answer {
  Job job;
  Building building;  // as planned; or, where jambs or corners were found otherwise, as built
  Layout layout;
  Tallies tallies;
  setout::SawList saw_list;
  std::vector<setout::RodMark> gauge_rod;
  std::vector<supply::LintelAsLaid> lintels;
  std::vector<supply::Bridged> bridged;  // what goes over each opening, and what holds it up meanwhile
  std::vector<supply::OffCourse> heads;  // heads off a course line, and what can be done
  std::vector<setout::WallCleanout> cleanouts;
  std::vector<setout::PlatePiece> plates;  // with their bolts, by wall, then along it
  std::vector<PourToInspect> inspection;   // what is looked at before each pour, from the bottom
  std::vector<LiftCard> pour_cards;        // the order in which grout goes in, from the bottom
  std::optional<AsBuilt> as_built;         // what was found and what changes for it
  ground::AsFound found;                   // what the job's readings say
  std::vector<setout::SideBoards> boards;
  std::vector<setout::RodReadingWanted> rod_readings;
  bool poured = false;  // the logs say that the concrete is there: what belongs to the pour stays as poured
  std::optional<AsPoured> kept_from;           // as poured, where dowels are kept that were found elsewhere
  std::vector<steel::Dowel> dowels;            // to be set; or, once poured, as they were poured
  std::optional<steel::DowelsNow> dowels_now;  // once poured: where their bars come down now
  std::vector<steel::FoundDowel> found_dowels;
  steel::BarPieces bar_pieces;                 // bars as cut
  steel::Wires wires;                          // joint reinforcement as pieces
  steel::Ties ties;                            // of inner walls
  std::vector<BarsFromStock> bars_from_stock;  // none while something is dragged
  steel::DowelSearch dowel_search;             // layouts that save dowels; only where wished for
  steel::SlabRoom slab;
  std::optional<laying::AsLaid> laid;  // marks at the wall and what the laid log says; none while something is dragged
  std::vector<Finding> findings;       // sorted by hold point, then place
  std::vector<Offer> offers;           // sorted by what they save
  bool offers_complete = true;         // every small change was tried; of a large building only the likeliest are
  std::vector<FreePlaces> free_places;
  Order order;                       // what has to be on the site
  std::vector<BedMoney> bed_money;   // of the ways to bed course 1, where prices say it
  Programme programme;               // what is done when
  std::vector<WeatherDay> weather;   // what the forecast brings up, by date
  OnSite site;                       // what runs out, comes when, stands where; empty while something is dragged
  std::vector<PointAsAsked> points;  // the six hold points, in order

  // Made, copied and ended in one file: compiled once, not in each that holds one.
  Answer();
  Answer(const Answer&);
  Answer(Answer&&) noexcept;
  Answer& operator=(const Answer&);
  Answer& operator=(Answer&&) noexcept;
  ~Answer();
};

/// Counts the units, and what is drawn with them: tallies, saw list, lintels and cleanouts.
void tally(Answer& answer);
/// The same, and lists all else that building and layout take: gauge rod, what goes over openings, heads and plates.
void count_and_list(Answer& answer);

/// The first offer that mends a finding, by its place in Answer::findings; null where none does.
[[nodiscard]] const Offer* offer_that_mends(const Answer& answer, std::size_t finding);

/// The number of the dowel that a bar starts from, as it was set; 0: it starts higher up, or no dowel stands there.
[[nodiscard]] std::int32_t dowel_number(const Answer& answer, const PlacedBar& bar);

/// The answer's layout, and the one printed before something was found otherwise. Lives as long as the answer.
[[nodiscard]] inline laying::Layouts layouts_of(const Answer& answer) {
  return {answer.layout, answer.as_built ? &answer.as_built->printed : nullptr};
}

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

}  // namespace stringcourse
