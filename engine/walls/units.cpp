// Units: the job's series, what the yard stocks, joints and the saw's list.
#include <algorithm>
#include <array>

#include "measure/sorting.hpp"
#include "walls/draft.hpp"
#include "walls/own_series.hpp"

namespace stringcourse::walls {
namespace {

std::string known_series(const Draft& draft) {
  std::string known;
  for (const OwnSeries& own : draft.job.units.own_series) known += own.id + ", ";
  for (const Series& series : catalogue_series()) known += series.id + ", ";
  if (known.size() >= 2) known.resize(known.size() - 2);
  return known;
}

std::optional<Series> series_named(Draft& draft, const std::string& id, const std::string& place) {
  const auto& own = draft.job.units.own_series;
  for (std::size_t i = 0; i < own.size(); ++i) {
    if (own[i].id == id) return series_from_own(draft, own[i], pointer("/units/own_series", i));
  }
  if (const Series* found = find_series(id)) return *found;
  refuse(draft, "unknown-series", place, joined({"No unit series is called ", quoted(id), "."}),
         joined({"Name one of ", known_series(draft), "."}));
  return std::nullopt;
}

struct Shared {
  std::string_view what;
  Length Series::* size;
};
constexpr std::array<Shared, 4> kShared{{{"unit height", &Series::height}, {"joint", &Series::joint},
                                         {"whole length", &Series::full}, {"half length", &Series::half}}};

/// True if `other` may stand in one building with `own`: equal in all but thickness. Else refusals.
bool goes_with(Draft& draft, const Series& own, const Series& other, const std::string& place) {
  bool together = true;
  for (const Shared& shared : kShared) {
    if (own.*shared.size == other.*shared.size) continue;
    together = false;
    refuse(draft, "series-mixed", place,
           joined({"The ", shared.what, " of ", other.id, " is ", say_asked(draft, other.*shared.size), ", of ", own.id, " ",
                   say_asked(draft, own.*shared.size), "."}),
           joined({"All walls of a building share course height, joint and unit length: choose a series that goes with ",
                   own.id, "; only the thickness may differ."}));
  }
  return together;
}

void add_kinds(std::vector<Kind>& kinds, const std::vector<Kind>& more) {
  for (const Kind kind : more) {
    if (std::ranges::find(kinds, kind) == kinds.end()) kinds.push_back(kind);
  }
  sort_stably(kinds);
}

/// Kinds that the series of this job are made in.
std::vector<Kind> made_kinds(const Building& building) {
  std::vector<Kind> made;
  for (const Series& series : building.series) add_kinds(made, series.made);
  return made;
}

void resolve_stock(Draft& draft) {
  Building& building = draft.building;
  const std::vector<Kind> made = made_kinds(building);
  building.stocked = made;
  if (!draft.job.units.stocked) return;
  building.stocked.clear();
  for (std::size_t i = 0; i < draft.job.units.stocked->size(); ++i) {
    const Kind kind = (*draft.job.units.stocked)[i];
    if (std::ranges::find(made, kind) != made.end()) {
      add_kinds(building.stocked, {kind});
    } else {
      find(draft, "kind-not-made", pointer("/units/stocked", i),
           joined({building.series.front().id, " is not made as ", kind_name(kind), ": left out of the stock."}));
    }
  }
  if (is_stocked(building, Kind::Full)) return;
  refuse(draft, "full-not-stocked", "/units/stocked", "The yard stocks no whole unit (\"full\").",
         "Add \"full\" to the kinds in stock: no wall is laid without it.");
}

void resolve_corner_sets(Draft& draft) {
  Building& building = draft.building;
  building.corner_sets_stocked = is_stocked(building, Kind::CornerSet);
  if (building.corner_sets_stocked) return;
  for (const Series& series : building.series) {
    if (!series.corner_set) continue;
    find(draft, "corner-set-not-stocked", "/units/stocked",
         joined({"The yard stocks no corner set of ", series.id, ": plain units make the corners, which shifts the bond by ",
                 say(draft, building.series.front().half), " less ", say(draft, series.thickness),
                 " at each of them and costs cuts or short laps."}));
  }
}

void resolve_joints(Draft& draft) {
  Building& building = draft.building;
  const Units& units = draft.job.units;
  const Series& own = building.series.front();
  building.joint = own.joint;
  building.joint_least = units.joint_least.value_or(own.joint - own.joint_tolerance);
  building.joint_most = units.joint_most.value_or(own.joint + own.joint_tolerance);
  if (building.joint_least < Length() || building.joint_least > own.joint) {
    refuse(draft, "joint-range", "/units/joint_least",
           joined({"The least joint ", say_asked(draft, building.joint_least), " is not from 0 to the joint ",
                   say_asked(draft, own.joint), "."}),
           joined({"State at most ", say_asked(draft, own.joint), "."}));
  }
  if (building.joint_most < own.joint) {
    refuse(draft, "joint-range", "/units/joint_most",
           joined({"The greatest joint ", say_asked(draft, building.joint_most), " is less than the joint ",
                   say_asked(draft, own.joint), "."}),
           joined({"State at least ", say_asked(draft, own.joint), "."}));
  }
}

/// `length` cut down to the saw's step.
Length sawn(Length length, Length step) {
  return step > Length() ? step * length.whole_multiples(step) : length;
}

/// A quarter and three quarters of a unit as laid, less the joint.
std::vector<Length> default_cuts(const Series& series, Length least_piece) {
  std::vector<Length> cuts;
  for (const int quarters : {3, 1}) {
    const Length laid = Length::nanometres((series.full_pitch() * quarters).in_nanometres() / 4);
    const Length cut = sawn(laid - series.joint, series.cut_step);
    if (cut >= least_piece && cut > Length()) cuts.push_back(cut);
  }
  return cuts;
}

std::vector<Length> stated_cuts(Draft& draft, const std::vector<Length>& asked) {
  const Building& building = draft.building;
  const Length full = building.series.front().full;
  std::vector<Length> cuts;
  for (std::size_t i = 0; i < asked.size(); ++i) {
    if (asked[i] >= building.least_piece && asked[i] < full) {
      cuts.push_back(asked[i]);
      continue;
    }
    refuse(draft, "cut-length", pointer("/units/cuts", i),
           joined({"A cut of ", say_asked(draft, asked[i]), " is not from the least piece ", say_asked(draft, building.least_piece),
                   " to under the whole unit ", say(draft, full), "."}),
           "Change or leave out this length.");
  }
  return cuts;
}

void resolve_cuts(Draft& draft) {
  Building& building = draft.building;
  const Units& units = draft.job.units;
  const Series& own = building.series.front();
  building.least_piece = units.least_piece.value_or(own.least_piece);
  if (building.least_piece <= Length() || building.least_piece > own.half) {
    refuse(draft, "least-piece", "/units/least_piece",
           joined({"The least piece ", say_asked(draft, building.least_piece), " is not between 0 and the half unit ",
                   say(draft, own.half), "."}),
           joined({"State at most ", say(draft, own.half), "."}));
  }
  building.cuts = units.cuts ? stated_cuts(draft, *units.cuts) : default_cuts(own, building.least_piece);
  if (!is_stocked(building, Kind::Half)) {
    building.cuts.push_back(own.half);
    find(draft, "kind-replaced-by-cut", "/units/stocked",
         joined({"The yard stocks no half units: each half (", say(draft, own.half),
                 ") is sawn from a whole one, and shows its sawn end to a joint only."}));
  }
  sort_stably(building.cuts, std::greater{});
  building.cuts.erase(std::unique(building.cuts.begin(), building.cuts.end()), building.cuts.end());
}

/// Adds the series of all walls, so that the stock is known before the first wall stands.
void add_wall_series(Draft& draft) {
  const auto& sides = draft.job.outline.sides;
  for (std::size_t i = 0; i < sides.size(); ++i) {
    if (sides[i].series) (void)series_index(draft, sides[i].series, pointer("/outline/sides", i, "series"));
  }
  const auto& inner = draft.job.interior_walls;
  for (std::size_t i = 0; i < inner.size(); ++i) {
    if (inner[i].series) (void)series_index(draft, inner[i].series, pointer("/interior_walls", i, "series"));
  }
}

}  // namespace

std::optional<int> series_index(Draft& draft, const std::optional<std::string>& id, const std::string& place) {
  if (!id) return 0;
  std::vector<Series>& in_use = draft.building.series;
  for (std::size_t i = 0; i < in_use.size(); ++i) {
    if (in_use[i].id == *id) return static_cast<int>(i);
  }
  std::optional<Series> series = series_named(draft, *id, place);
  if (!series || !goes_with(draft, in_use.front(), *series, place)) return std::nullopt;
  in_use.push_back(std::move(*series));
  return static_cast<int>(in_use.size()) - 1;
}

int series_in_use(const Draft& draft, const std::optional<std::string>& id) {
  const std::vector<Series>& in_use = draft.building.series;
  for (std::size_t i = 0; id && i < in_use.size(); ++i) {
    if (in_use[i].id == *id) return static_cast<int>(i);
  }
  return 0;
}

void resolve_units(Draft& draft) {
  std::optional<Series> own = series_named(draft, draft.job.units.series, "/units/series");
  if (!own) return;
  draft.building.series.push_back(std::move(*own));
  draft.series_stand = true;
  draft.building.bond = draft.job.units.bond.value_or(BondWish::Half);
  if (draft.job.units.breakage) draft.building.breakage = {*draft.job.units.breakage, true};
  add_wall_series(draft);
  resolve_stock(draft);
  resolve_corner_sets(draft);
  resolve_joints(draft);
  resolve_cuts(draft);
}

}  // namespace stringcourse::walls
