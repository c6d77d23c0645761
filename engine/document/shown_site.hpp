#pragma once
// Field tables of what is brought to the site.
#include <optional>

#include "document/shown_lists.hpp"

namespace stringcourse::document {

/// The id of an article of that index.
[[nodiscard]] inline const std::string& article_id(const View& view, std::int64_t index) {
  return view.answer.order.articles[static_cast<std::size_t>(index)].id;
}
[[nodiscard]] inline std::vector<std::string> article_ids(const View& view, const std::vector<std::int64_t>& indices) {
  std::vector<std::string> ids;
  for (const std::int64_t index : indices) ids.push_back(article_id(view, index));
  return ids;
}
/// The name of a side; none below zero.
[[nodiscard]] inline std::optional<std::string> perhaps_side(const View& view, std::int32_t wall) {
  return wall < 0 ? std::nullopt : std::optional(view.wall(wall).name);
}
[[nodiscard]] constexpr std::int64_t grams(Mass mass) { return (mass.units + 99'999) / 100'000; }

template <>
struct Shown<PlannedDay> {
  static constexpr std::string_view name = "planned_day";
  static constexpr std::string_view description = "A working day of the programme.";
  static constexpr auto fields = std::tuple{
      shown("number", &PlannedDay::number),
      shown(
          "date",
          [](const View&, const PlannedDay& of) { return of.date ? std::optional(date_text(*of.date)) : std::nullopt; },
          "absent where the job does not state its first day"),
  };
};

template <>
struct Shown<RunsOut> {
  static constexpr std::string_view name = "runs_out";
  static constexpr std::string_view description = "An article of which less was brought than is laid and breaks.";
  static constexpr auto fields = std::tuple{
      shown("article", [](const View& view, const RunsOut& of) { return article_id(view, of.article); }),
      shown("brought", &RunsOut::brought),
      shown("lacks", &RunsOut::lacks),
      shown(
          "side", [](const View& view, const RunsOut& of) { return perhaps_side(view, of.wall); },
          "on which the first one lacks; absent: not laid by courses"),
      shown("course", &RunsOut::course, "of that side; 0: not laid by courses"),
      shown("day", &RunsOut::day, "on which it lacks, or on which the work that it is for begins"),
      shown("says", [](const View& view, const RunsOut& of) { return runs_out_said(view.answer, of); }),
  };
};

template <>
struct Shown<Load::Part> {
  static constexpr std::string_view name = "load_part";
  static constexpr std::string_view description = "So many of an article on one load.";
  static constexpr auto fields = std::tuple{
      shown("article", [](const View& view, const Load::Part& of) { return article_id(view, of.article); }),
      shown("count", &Load::Part::count, "as sold"),
  };
};

template <>
struct Shown<Load> {
  static constexpr std::string_view name = "load";
  static constexpr std::string_view description = "What one truck brings at a time.";
  static constexpr auto fields = std::tuple{
      shown("parts", &Load::parts),
      shown(
          "grams", [](const View&, const Load& of) { return grams(of.weight); }, "rounded up"),
      shown("weight", [](const View& view, const Load& of) { return mass_text(of.weight, view.tape()); }),
      shown("says", [](const View& view, const Load& of) { return load_said(view.answer, of); }),
  };
};

template <>
struct Shown<Drop> {
  static constexpr std::string_view name = "drop";
  static constexpr std::string_view description = "What has to be there before the work of a hold point begins.";
  static constexpr auto fields = std::tuple{
      shown("point", &Drop::point),
      shown("day", &Drop::day, "on which that work begins"),
      shown("articles", [](const View& view, const Drop& of) { return article_ids(view, of.articles); }),
      shown(
          "unweighed", [](const View& view, const Drop& of) { return article_ids(view, of.unweighed); },
          "of these, tools left out: nobody states their weight"),
      shown(
          "too_heavy", [](const View& view, const Drop& of) { return article_ids(view, of.too_heavy); },
          "of these: one, or its pallet, is more than the truck carries"),
      shown(
          "grams", [](const View&, const Drop& of) { return grams(of.weight); }, "of all that is weighed, rounded up"),
      shown("weight", [](const View& view, const Drop& of) { return mass_text(of.weight, view.tape()); }),
      shown("least_loads", &Drop::least_loads, "fewer do not carry it; 0: the job states no truck"),
      shown("loads", &Drop::loads),
  };
};

template <>
struct Shown<PlacedPallet> {
  static constexpr std::string_view name = "placed_pallet";
  static constexpr std::string_view description = "A pallet and its place.";
  static constexpr auto fields = std::tuple{
      shown("article", [](const View& view, const PlacedPallet& of) { return article_id(view, of.article); }),
      shown("units", &PlacedPallet::units, "on it"),
      shown(
          "from_side", [](const View& view, const PlacedPallet& of) { return perhaps_side(view, of.from_wall); },
          "it serves the blocks from here; absent: all of it is spare"),
      shown("from", &PlacedPallet::from, "along that side"),
      shown("to_side", [](const View& view, const PlacedPallet& of) { return perhaps_side(view, of.to_wall); }),
      shown("to", &PlacedPallet::to),
      side("beside", &PlacedPallet::beside, "the side that it stands outside of"),
      shown("along", &PlacedPallet::along, "its middle, along that side"),
      shown("out", &PlacedPallet::out, "its middle, off that side's outer face"),
      shown("middle", &PlacedPallet::middle),
      shown("carried", &PlacedPallet::carried, "millimetres, all its blocks together"),
  };
};

template <>
struct Shown<PalletPlan> {
  static constexpr std::string_view name = "pallet_plan";
  static constexpr std::string_view description =
      "Where pallets stand so that blocks are carried as little as may be, and prices that prove it: a pallet's and a "
      "place's are together nowhere more than is carried between them, and all of them are what is carried.";
  static constexpr auto fields = std::tuple{
      shown("zone", &PalletPlan::zone, "kept clear of every wall"),
      shown("pallets", &PalletPlan::pallets),
      shown("places", &PalletPlan::places, "that were looked at"),
      shown("carried", &PalletPlan::carried, "millimetres, by all blocks together"),
      shown("carried_says", [](const View& view, const PalletPlan& of) { return carried_said(of, view.tape()); }),
      shown("pallet_prices", &PalletPlan::pallet_prices),
      shown("place_prices", &PalletPlan::place_prices),
  };
};

template <>
struct Shown<OnSite> {
  static constexpr std::string_view name = "on_site";
  static constexpr std::string_view description =
      "What is brought to the site: what runs out, comes when, stands where.";
  static constexpr auto fields = std::tuple{
      shown("short_of", &OnSite::short_of),
      shown("drops", &OnSite::drops),
      shown("pallets", &OnSite::pallets, "absent where no kind of unit is ordered by pallets"),
  };
};

}  // namespace stringcourse::document
