#pragma once
// What is brought to the site: what runs out before it is laid, what comes with which truck, where pallets stand.
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "job/trouble.hpp"
#include "measure/date.hpp"
#include "measure/fact.hpp"
#include "measure/mass.hpp"
#include "walls/building.hpp"

namespace stringcourse {

struct Answer;

/// A working day of the programme, from 1, and its date where the job states the first.
struct PlannedDay {
  std::int64_t number = 1;
  std::optional<Date> date;
};

/// An article of which less was brought than goes into the building and breaks. Forecast along the order of laying:
/// courses said to be laid first, then as the programme has it; what breaks and what goes to the saw is spread evenly
/// over what is laid.
struct RunsOut {
  std::int64_t article = 0;  // into Order::articles
  std::int64_t brought = 0, lacks = 0;
  std::int32_t wall = -1, course = 0;  // where the first one lacks; -1: not laid by courses
  PlannedDay day = {};                 // on which it lacks; or on which the work of its hold point begins
};

struct Load {
  struct Part {
    std::int64_t article = 0, count = 0;  // as sold
  };
  std::vector<Part> parts;
  Mass weight;
};

/// What has to be there before the work of one hold point begins.
struct Drop {
  HoldPoint point = HoldPoint::Order;
  PlannedDay day = {};                       // on which that begins
  std::vector<std::int64_t> articles = {};   // into Order::articles
  std::vector<std::int64_t> unweighed = {};  // of these, tools left out: nobody states what they weigh
  std::vector<std::int64_t> too_heavy = {};  // of these: one of them, or its pallet, is more than the truck carries
  Mass weight = {};                          // of the others, the most that is ordered
  std::int64_t least_loads = 0;              // fewer do not carry that; 0: the truck is not stated
  std::vector<Load> loads = {};              // things as the list has them, each on the first with room; pallets whole
};

/// A pallet and its place.
struct PlacedPallet {
  std::int64_t article = 0, units = 0;        // into Order::articles
  std::int32_t from_wall = -1, to_wall = -1;  // it serves the blocks from here ...
  Length from, to;                            // ... along that wall, to here; -1: all of it is spare
  std::int32_t beside = 0;                    // the wall that it stands outside of ...
  Length along, out;                          // ... its middle: along that wall, and off its outer face
  PlanPoint middle;
  std::int64_t carried = 0;  // all its blocks, from its middle to theirs: millimetres
};

struct PalletPlan {
  Length zone;  // kept clear of every wall
  std::vector<PlacedPallet> pallets;
  std::vector<PlanPoint> places;  // that were looked at, more than are used
  std::int64_t carried = 0;       // by all, millimetres: no other placing of these pallets on these places has less
  std::vector<std::int64_t> pallet_prices, place_prices;  // that prove it
};

struct OnSite {
  std::vector<RunsOut> short_of;
  std::vector<Drop> drops;            // by hold point
  std::optional<PalletPlan> pallets;  // where units are ordered by pallets
};

/// Reads order and programme.
[[nodiscard]] OnSite site_of(const Answer& answer);

/// "Half block: 12 short. They run out on course 9 of AB, day 6, 2027-05-10".
[[nodiscard]] Fact runs_out_said(const Answer& answer, const RunsOut& out);
/// "day 6, 2027-05-10"
[[nodiscard]] Fact day_said(const PlannedDay& day);
/// What a load carries: "Whole block: 270; Half block: 12".
[[nodiscard]] Fact load_said(const Answer& answer, const Load& load);
/// "2737 m"; with an inch tape "8980 ft". Rounded up.
[[nodiscard]] Fact carried_said(const PalletPlan& plan, Tape tape);

}  // namespace stringcourse
