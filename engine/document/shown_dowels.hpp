#pragma once
// Field tables of dowels: to be set, as poured, as found.
#include "document/shown_layout.hpp"
#include "measure/notation.hpp"
#include "sheet/hook_words.hpp"

namespace stringcourse::document {

template <>
struct Shown<steel::FoundDowel> {
  using Of = steel::FoundDowel;
  static constexpr std::string_view name = "found_dowel";
  static constexpr std::string_view description = "A dowel as found, and what follows.";
  static constexpr auto fields = std::tuple{
      shown("reading", &Of::entry),
      side("side", &Of::wall),
      shown("number", &Of::number, "of the list of dowels that it is taken for; 0: none"),
      shown("at", &Of::along, "from the side's start"),
      shown("off_face", &Of::off_face),
      shown(
          "off_place",
          [](const View&, const Of& of) { return of.has_bar ? std::optional(Rounded{of.off_place}) : std::nullopt; },
          "toward the side's end above zero; absent: no bar comes down to this side"),
      rounded("room", &Of::room, "clear of webs and shells beyond the clearance; below zero: too near"),
      shown("action", &Of::action),
      shown("text", [](const View&, const Of& of) { return steel::action_said(of); }),
  };
};

template <>
struct Shown<steel::DowelLayout> {
  using Of = steel::DowelLayout;
  static constexpr std::string_view name = "dowel_layout";
  static constexpr std::string_view description = "A layout in which more of the dowels found stand.";
  static constexpr auto fields = std::tuple{
      shown("text", [](const View&, const Of& of) { return steel::dowel_layout_said(of); }),
      shown("stands", &Of::stands, "dowels that stand in it"),
      shown("cuts", &Of::cuts, "more than now"),
      shown("short_laps", &Of::short_laps),
      shown("bars", &Of::bars),
      shown("proven", &Of::proven),
      shown("kept", &Of::kept, "ids of readings"),
  };
};

/// A length rounded inwards, as printed; its nanometres are exact.
struct Usable {
  Length length;
};
template <>
struct Shown<Usable> {
  static constexpr std::string_view name = "usable_length";
  static constexpr std::string_view description = "A room as it may be used.";
  static constexpr auto fields = std::tuple{
      shown(
          "text",
          [](const View& view, const Usable& of) {
            return tape_text(steel::usable(of.length, view.tape()), view.tape());
          },
          "rounded inwards, in the job's tape"),
      shown(
          "nm", [](const View&, const Usable& of) { return of.length.in_nanometres(); }, "not rounded to the tape"),
  };
};

template <>
struct Shown<steel::DowelRoom> {
  using Of = steel::DowelRoom;
  static constexpr std::string_view name = "dowel_room";
  static constexpr std::string_view description =
      "How far the dowel may be out each way and keep the grout's clearance in the cells of courses 1 and 2; below "
      "zero: it lacks so much.";
  static constexpr auto fields = std::tuple{
      shown(
          "to_start", [](const View&, const Of& of) { return Usable{of.to_start}; }, "toward the side's start"),
      shown(
          "to_end", [](const View&, const Of& of) { return Usable{of.to_end}; }, "toward its end"),
      shown(
          "to_outer", [](const View&, const Of& of) { return Usable{of.to_outer}; }, "toward the outer face"),
      shown(
          "to_inner", [](const View&, const Of& of) { return Usable{of.to_inner}; }, "toward the inner face"),
  };
};

template <>
struct Shown<steel::InCell> {
  using Of = steel::InCell;
  static constexpr std::string_view name = "in_cell";
  static constexpr std::string_view description = "The cell that a dowel comes up in.";
  static constexpr auto fields = std::tuple{
      side("side", &Of::wall, "whose unit it is: at a corner or in a slot another side's"),
      shown("unit", &Of::unit, kUnitNumber),
      shown("cell", &Of::cell, "from the end nearer to that side's start"),
  };
};

template <>
struct Shown<steel::Dowel> {
  using Of = steel::Dowel;
  static constexpr std::string_view name = "dowel";
  static constexpr std::string_view description = "One dowel to be set, or as it was poured.";
  static constexpr auto fields = std::tuple{
      side("side", &Of::wall),
      shown("number", &Of::number),
      shown(
          "measured_from",
          [](const View& view, const Of& of) { return sheet::hook_text(view.building(), of.wall, words::kEnglish); },
          "what stands at zero of the side's numbers: a corner, or the face of the wall that an inner wall starts "
          "from"),
      shown("at", &Of::along, "centre, from there along the side's outer face"),
      shown("off_face", &Of::off_face, "centre, in from the outer face; of an inner wall from either"),
      shown("first_course", &Of::first, "absent: the course has no cell for it"),
      shown("second_course", &Of::second, "absent: the course has no cell for it"),
      shown("room", &Of::room),
  };
};

template <>
struct Shown<steel::DowelNow> {
  using Of = steel::DowelNow;
  static constexpr std::string_view name = "dowel_now";
  static constexpr std::string_view description = "A poured dowel against the layout as it is now.";
  static constexpr auto fields = std::tuple{
      shown("side",
            [](const View& view, const Of& of) -> const std::string& {
              return view.wall(view.answer.dowels[of.dowel].wall).name;
            }),
      shown("number", [](const View& view, const Of& of) { return view.answer.dowels[of.dowel].number; }),
      shown("found_at", &Of::found, "as last read, from the side's start; missing: not read"),
      shown("bar_at", &Of::bar, "of the nearest bar within 2 in; missing: no bar comes down to it"),
  };
};

struct BarAlone {
  const steel::Dowel& bar;
};
template <>
struct Shown<BarAlone> {
  static constexpr std::string_view name = "bar_without_dowel";
  static constexpr std::string_view description = "A bar that no poured dowel is for.";
  static constexpr auto fields = std::tuple{
      shown("side",
            [](const View& view, const BarAlone& of) -> const std::string& { return view.wall(of.bar.wall).name; }),
      shown("at", [](const View&, const BarAlone& of) { return of.bar.along; }),
  };
};

template <>
struct Shown<steel::DowelsNow> {
  using Of = steel::DowelsNow;
  static constexpr std::string_view name = "poured";
  static constexpr std::string_view description =
      "Dowels stay where they were poured, in the order of the list of dowels; where each was found and where its bar "
      "comes down in this layout.";
  static constexpr auto fields = std::tuple{
      shown("dowels", &Of::dowels),
      shown("bars_without_dowel",
            [](const View&, const Of& of) {
              std::vector<BarAlone> bars;
              for (const steel::Dowel& bar : of.without) bars.push_back({bar});
              return bars;
            }),
  };
};

}  // namespace stringcourse::document
