#pragma once
// Field tables of what rod readings come to: stations, the first bed, doorways.
#include "document/shown_layout.hpp"
#include "measure/notation.hpp"
#include "words/volume.hpp"

namespace stringcourse::document {

inline constexpr std::string_view kExpanded = "expanded, k = 2";

template <>
struct Shown<ground::Station> {
  using Of = ground::Station;
  static constexpr std::string_view name = "station";
  static constexpr std::string_view description = "A point that the rod stood on.";
  static constexpr auto fields = std::tuple{
      shown("name", &Of::name),
      shown("side", [](const View& view, const Of& of) { return wall_or_none(view, of.place ? of.place->wall : -1); }),
      shown(
          "at", [](const View&, const Of& of) { return of.place ? std::optional(of.place->along) : std::nullopt; },
          "from the side's start"),
      shown("surface", &Of::surface),
      rounded("height", &Of::height, "over the datum"),
      rounded("doubt", &Of::doubt, kExpanded),
  };
};

template <>
struct Shown<ground::UnitBed> {
  using Of = ground::UnitBed;
  static constexpr std::string_view name = "unit_bed";
  static constexpr std::string_view description = "The bed under one unit of course 1.";
  static constexpr auto fields = std::tuple{
      side("side", &Of::wall),
      shown("number", &Of::number),
      rounded("thinnest", &Of::thinnest),
      rounded("thickest", &Of::thickest),
  };
};

template <>
struct Shown<ground::BedChoice> {
  using Of = ground::BedChoice;
  static constexpr std::string_view name = "bed_choice";
  static constexpr std::string_view description = "What can be done where the bed does not fit.";
  static constexpr auto fields = std::tuple{
      shown("what", &Of::what),
      shown("text", [](const View&, const Of& of) { return ground::choice_said(of); }),
      shown(
          "gives_up", [](const View&, const Of& of) { return ground::gives_up_said(of); },
          "what it gives up, or asks for beside the work; or \"\""),
      shown("recommended", &Of::recommended, "the first of those that keep the range"),
      shown("keeps", &Of::keeps, "every bed then lies in its range"),
      shown("cuts", &Of::cuts, "units that are sawn for it"),
      shown("work", &Of::work, "units of course 1 that are handled otherwise than laid in a full bed"),
      rounded("top", &Of::top),
      rounded("margin", &Of::margin),
      shown(
          "mortar",
          [](const View& view, const Of& of) {
            return words::bagged_text(of.mortar_cubic_centimetres, words::Bagged::Mortar, view.reader());
          },
          "in the job's own volumes"),
      shown("concrete",
            [](const View& view, const Of& of) {
              return of.concrete_cubic_centimetres > 0
                         ? std::optional(words::bagged_text(of.concrete_cubic_centimetres, words::Bagged::Concrete,
                                                            view.reader()))
                         : std::nullopt;
            }),
      shown(
          "money", [](const View& view, const Of& of) { return bed_money_said(view.answer, of.what); },
          "what the order costs with it beside laying level: mortar and units; or \"\": no price says it"),
      shown("mortar_cubic_centimetres", &Of::mortar_cubic_centimetres, "of full beds under the units read"),
      shown("concrete_cubic_centimetres", &Of::concrete_cubic_centimetres, "of a strip or curb"),
  };
};

template <>
struct Shown<ground::BedAsFound> {
  using Of = ground::BedAsFound;
  static constexpr std::string_view name = "bed_as_found";
  static constexpr std::string_view description = "The bed joint of the first course, by the bearing as read.";
  static constexpr auto fields = std::tuple{
      shown("verdict", &Of::verdict,
            "not-read as long as the bearing under some unit of course 1 is not read, unless what was read is out of "
            "range already"),
      shown("least", [](const View&, const Of& of) { return Rounded{of.range.least}; }),
      shown("most", [](const View&, const Of& of) { return Rounded{of.range.most}; }),
      shown(
          "top", [](const View&, const Of& of) { return Rounded{of.level.top}; }, "of the bed joint, over the datum"),
      shown(
          "margin", [](const View&, const Of& of) { return Rounded{of.level.margin}; },
          "below zero: outside by so much"),
      shown("thinnest", [](const View&, const Of& of) { return Rounded{of.level.thinnest}; }),
      shown("thickest", [](const View&, const Of& of) { return Rounded{of.level.thickest}; }),
      rounded("doubt", &Of::doubt, "of one reading against another, expanded, k = 2"),
      shown("units_without", &Of::units_without, "units of course 1 whose bearing was not read"),
      shown("lacks", &Of::lacks, "where the rod is still to be read"),
      shown("units", &Of::units),
      shown("choices", &Of::choices,
            "ranked: what keeps the range first, then the fewest units handled otherwise, then the least mortar and "
            "concrete"),
  };
};

template <>
struct Shown<ground::Instrument> {
  using Of = ground::Instrument;
  static constexpr std::string_view name = "instrument";
  static constexpr std::string_view description = "What a two-peg test tells of the level.";
  static constexpr auto fields = std::tuple{
      rounded("over", &Of::over, "how far it looks up over the sight, below zero: down"),
      shown("sight", &Of::sight),
      rounded("doubt", &Of::doubt, kExpanded),
      shown("level", &Of::level, "the test cannot tell it from level"),
      shown("corrected", &Of::corrected, "rod readings corrected by it"),
  };
};

template <>
struct Shown<ground::DoorFloor> {
  using Of = ground::DoorFloor;
  static constexpr std::string_view name = "door_floor";
  static constexpr std::string_view description = "A doorway whose floor was read.";
  static constexpr auto fields = std::tuple{
      shown("opening",
            [](const View& view, const Of& of) -> const std::string& { return view.opening(of.opening).name; }),
      rounded("tall_least", &Of::tall_least, "floor as read to soffit"),
      rounded("tall_most", &Of::tall_most),
      shown("planned", [](const View& view, const Of& of) { return view.opening(of.opening).height(); }),
      rounded("doubt", &Of::doubt),
      shown("verdict", &Of::verdict),
  };
};

template <>
struct Shown<ground::TopPoint> {
  using Of = ground::TopPoint;
  static constexpr std::string_view name = "top_point";
  static constexpr std::string_view description = "One point of the wall's top as read.";
  static const ground::Station& station_of(const View& view, const Of& of) {
    return view.answer.found.levels->stations[static_cast<std::size_t>(of.station)];
  }
  static constexpr auto fields = std::tuple{
      shown("station", [](const View& view, const Of& of) -> const std::string& { return station_of(view, of).name; }),
      shown("side",
            [](const View& view, const Of& of) -> const std::string& {
              return view.wall(station_of(view, of).place->wall).name;
            }),
      shown("at", [](const View& view, const Of& of) { return Rounded{station_of(view, of).place->along}; }),
      rounded("off", &Of::off, "over its design height; minus: under it"),
      shown("work", &Of::work),
      rounded("by", &Of::by, "to be packed, bedded or planed off"),
      shown("verdict", &Of::verdict, "fits: its height is right by rule \"bed-level\""),
  };
};

template <>
struct Shown<ground::TopAsFound> {
  using Of = ground::TopAsFound;
  static constexpr std::string_view name = "top_as_found";
  static constexpr std::string_view description =
      "The top of the walls as read, against a level line that what comes on it bears on.";
  static constexpr auto fields = std::tuple{
      rounded("bearing", &Of::bearing, "of that line over the design height of the top"),
      rounded("lowest", &Of::lowest),
      rounded("highest", &Of::highest),
      rounded("doubt", &Of::doubt),
      shown("points", &Of::points, "by side, then along it"),
  };
};

template <>
struct Shown<ground::LoopVerdict> {
  using Of = ground::LoopVerdict;
  static constexpr std::string_view name = "loop";
  static constexpr std::string_view description = "A round of rod readings that comes back to where it began.";
  static constexpr auto fields = std::tuple{
      rounded("misclosure", &Of::misclosure),
      rounded("allowed", &Of::allowed),
      shown("closes", &Of::closes),
  };
};

struct Setup {
  const std::string& name;
  Length height;
};
template <>
struct Shown<Setup> {
  static constexpr std::string_view name = "setup";
  static constexpr std::string_view description = "Where the instrument stood.";
  static constexpr auto fields = std::tuple{
      shown("name", [](const View&, const Setup& of) -> const std::string& { return of.name; }),
      rounded("height", &Setup::height, "of the instrument over the datum"),
  };
};

template <>
struct Shown<ground::LevelsAsFound> {
  using Of = ground::LevelsAsFound;
  static constexpr std::string_view name = "levels_as_found";
  static constexpr std::string_view description = "What rod readings come to.";
  static constexpr auto fields = std::tuple{
      shown("datum", &Of::datum, "the station of height zero"),
      shown("stations", &Of::stations),
      shown("loose", &Of::loose, "stations that no chain of readings ties to the datum"),
      shown("loops", &Of::loops),
      shown("setups",
            [](const View&, const Of& of) {
              std::vector<Setup> setups;
              for (std::size_t k = 0; k < of.setups.size(); ++k) setups.push_back({of.setups[k], of.instruments[k]});
              return setups;
            }),
      shown("instrument", &Of::instrument, "absent without a two-peg test"),
      shown("doors", &Of::doors, "doorways whose floor was read"),
      shown("bed", &Of::bed),
      shown("top", &Of::top, "absent as long as no top of a wall is read"),
  };
};

}  // namespace stringcourse::document
