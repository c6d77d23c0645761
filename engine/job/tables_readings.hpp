#pragma once
// Field tables of the readings: the log and how well things are measured.
#include <array>
#include <string_view>
#include <tuple>

#include "job/field_table.hpp"
#include "job/readings.hpp"
#include "job/setting_out.hpp"
#include "job/tables_units.hpp"

namespace stringcourse {

template <>
struct Table<SettingOut> {
  static constexpr std::string_view name = "setting_out";
  static constexpr std::string_view description =
      "What the setting-out card needs: boards, footing, the lot's room, the line.";
  static constexpr auto fields = std::tuple{
      field("boards_off", &SettingOut::boards_off, Need::Optional,
            "How far beyond the outer faces the batter boards stand, a length; absent: 4 ft or 1200 mm."),
      field("first_kerf", &SettingOut::first_kerf, Need::Optional,
            "From a board's outer end to the outer face line, a length; absent: 2 ft or 600 mm."),
      field("footing_outside", &SettingOut::footing_outside, Need::Optional,
            "How far the footing reaches beyond the outer face, a length.", kZeroOrMore),
      field("footing_inside", &SettingOut::footing_inside, Need::Optional,
            "How far the footing reaches beyond the inner face, a length.", kZeroOrMore),
      field("room", &SettingOut::room, Need::Optional,
            "Longest leg of the square check that the lot has room for, a length; absent: the sides."),
      field("datum_over", &SettingOut::datum_over, Need::Optional,
            "Height of the benchmark over the datum (the top of course 1), a length, minus below it; absent: 0.",
            kAnySign),
      field("backsight", &SettingOut::backsight, Need::Optional,
            "What the levelling rod reads on the benchmark, a length; absent: no rod readings on the card.",
            kZeroOrMore),
      field("boards_over", &SettingOut::boards_over, Need::Optional,
            "Height of the boards' tops over the footing or slab, a length; absent: not listed.", kZeroOrMore),
      field("line_weight", &SettingOut::line_weight, Need::Optional,
            "Weight of the mason's line: lb/ft, g/m or N/m, such as 0.001 lb/ft.", kNameText),
      field("line_pull", &SettingOut::line_pull, Need::Optional,
            "How hard the line is pulled: lb, N or kg, such as 20 lb.", kNameText),
      field("line_strength", &SettingOut::line_strength, Need::Optional, "The pull that breaks the line: lb, N or kg.",
            kNameText),
      field("line_sag", &SettingOut::line_sag, Need::Optional,
            "Greatest sag of the line between its supports, a length; absent: 1/32 in or 1 mm."),
  };
};

inline constexpr std::string_view kChosenAfter =
    "The id of the last reading that it was chosen on; absent: what is read later is not held against it.";

template <>
struct Table<Chosen<BedRemedy>> {
  static constexpr std::string_view name = "bed_remedy";
  static constexpr std::string_view description = "What is done because the first bed does not fit.";
  static constexpr auto fields = std::tuple{
      field("do", &Chosen<BedRemedy>::remedy, Need::Required, "The remedy."),
      field("after", &Chosen<BedRemedy>::after, Need::Optional, kChosenAfter, kNameText),
  };
};

template <>
struct Table<Chosen<ShapeRemedy>> {
  static constexpr std::string_view name = "shape_remedy";
  static constexpr std::string_view description = "What is done because corners stand off their places.";
  static constexpr auto fields = std::tuple{
      field("do", &Chosen<ShapeRemedy>::remedy, Need::Required, "The remedy."),
      field("after", &Chosen<ShapeRemedy>::after, Need::Optional, kChosenAfter, kNameText),
  };
};

template <>
struct Table<Ground> {
  static constexpr std::string_view name = "ground";
  static constexpr std::string_view description = "How well things are measured, and what the first course may do.";
  static constexpr auto fields = std::tuple{
      field("tape", &Ground::tape, Need::Optional, "The table of permitted errors that the tape keeps; absent: steel."),
      field("tape_reading", &Ground::tape_reading, Need::Optional,
            "How far a taping may be read wrong, either way, a length; absent: 1/16 in or 1 mm."),
      field("rod_reading", &Ground::rod_reading, Need::Optional,
            "How far a rod or water level may be read wrong, either way, a length; absent: 1/16 in or 1 mm."),
      field("hold", &Ground::hold, Need::Optional, "The corner whose peg stays where it is; absent: the first.",
            kNameText),
      field("first_course_grouted", &Ground::first_course_grouted, Need::Optional,
            "True when the whole first course is grouted and stands on concrete: its bed may then be thicker."),
      field("bed_remedy", &Ground::bed_remedy, Need::Optional,
            "What is done because the first bed does not fit; grout-first-course lets its bed be thicker."),
      field("shape_remedy", &Ground::shape_remedy, Need::Optional,
            "What is done because corners stand off their places."),
  };
};

template <>
struct Table<TapeReading> {
  static constexpr std::string_view name = "tape_reading";
  static constexpr std::string_view description = "A taped distance between the outer corner points of two corners.";
  static constexpr auto fields = std::tuple{
      field("from", &TapeReading::from, Need::Required, "One corner.", kNameText),
      field("to", &TapeReading::to, Need::Required, "The other corner.", kNameText),
      field("length", &TapeReading::length, Need::Required, "What the tape read, a length."),
      field("of", &TapeReading::of, Need::Optional,
            "The lines before the pour, or what was poured, beside which readings of lines no longer count; absent: "
            "both."),
  };
};

template <>
struct Table<RodReading> {
  static constexpr std::string_view name = "rod_reading";
  static constexpr std::string_view description = "A reading of a levelling rod or a water level.";
  static constexpr auto fields = std::tuple{
      field("setup", &RodReading::setup, Need::Required, "A name for where the instrument stood.", kNameText),
      field("station", &RodReading::station, Need::Required,
            "The point: a corner's name, or a name of its own; \"datum\" is the benchmark, of height zero.", kNameText),
      field("rod", &RodReading::rod, Need::Required,
            "What the rod read, a length; minus where it was held upside down.", kAnySign),
      field("on", &RodReading::on, Need::Optional, "The wall that the point lies on.", kNameText),
      field("from", &RodReading::from, Need::Optional, "The corner measured from; absent: the wall's start.",
            kNameText),
      field("at", &RodReading::at, Need::Optional, "Distance from that corner along the wall, a length.", kZeroOrMore),
      field("surface", &RodReading::surface, Need::Optional,
            "What the rod stood on; absent: bearing, the top of the footing or slab."),
      field(
          "sight", &RodReading::sight, Need::Optional,
          "How far the rod stood from the instrument, a length; after a two-peg test the reading is corrected by it."),
  };
};

template <>
struct Table<TwoPegReading> {
  static constexpr std::string_view name = "two_peg_reading";
  static constexpr std::string_view description =
      "A two-peg test: pegs A and B read from midway, then from close to A.";
  static constexpr auto fields = std::tuple{
      field("midway_a", &TwoPegReading::midway_a, Need::Required, "Rod on A, from midway, a length.", kAnySign),
      field("midway_b", &TwoPegReading::midway_b, Need::Required, "Rod on B, from midway, a length.", kAnySign),
      field("close_a", &TwoPegReading::close_a, Need::Required, "Rod on A, from close to it, a length.", kAnySign),
      field("close_b", &TwoPegReading::close_b, Need::Required, "Rod on B, from close to A, a length.", kAnySign),
      field("sight_a", &TwoPegReading::sight_a, Need::Required, "From close to A: distance to A, a length.",
            kZeroOrMore),
      field("sight_b", &TwoPegReading::sight_b, Need::Required, "From close to A: distance to B, a length."),
  };
};

template <>
struct Table<DowelReading> {
  static constexpr std::string_view name = "dowel_reading";
  static constexpr std::string_view description = "Where an upright dowel was found, to its centre.";
  static constexpr auto fields = std::tuple{
      field("on", &DowelReading::on, Need::Required, "The wall that it belongs to.", kNameText),
      field("from", &DowelReading::from, Need::Optional, "The corner measured from; absent: the wall's start.",
            kNameText),
      field("at", &DowelReading::at, Need::Required, "Distance from that corner's outer face, a length.", kZeroOrMore),
      field("off_face", &DowelReading::off_face, Need::Required,
            "Distance in from the wall's outer face as planned, a length, minus outside it.", kAnySign),
  };
};

template <>
struct Table<EdgeReading> {
  static constexpr std::string_view name = "edge_reading";
  static constexpr std::string_view description =
      "How far the edge of what was poured reaches beyond the outer face line.";
  static constexpr auto fields = std::tuple{
      field("on", &EdgeReading::on, Need::Required, "The wall whose outer face line is meant.", kNameText),
      field("from", &EdgeReading::from, Need::Optional, "The corner measured from; absent: the wall's start.",
            kNameText),
      field("at", &EdgeReading::at, Need::Required, "Distance from that corner along the line, a length.", kZeroOrMore),
      field("beyond", &EdgeReading::beyond, Need::Required, "How far beyond the line, a length, minus short of it.",
            kAnySign),
  };
};

template <>
struct Table<Reading> {
  static constexpr std::string_view name = "reading";
  static constexpr std::string_view description =
      "One entry of the log: exactly one of tape, rod, two_peg, dowel, edge, strike.";
  static constexpr std::array<std::string_view, 6> exactly_one{"tape", "rod", "two_peg", "dowel", "edge", "strike"};
  static constexpr auto fields = std::tuple{
      field("id", &Reading::id, Need::Required, "A name that no other entry has.", kNameText),
      field("when", &Reading::when, Need::Optional, "When, as text."),
      field("by", &Reading::by, Need::Optional, "Who, as initials."),
      field("tape", &Reading::tape, Need::Optional, "A taped distance."),
      field("rod", &Reading::rod, Need::Optional, "A reading of a rod or water level."),
      field("two_peg", &Reading::two_peg, Need::Optional, "A two-peg test of the instrument."),
      field("dowel", &Reading::dowel, Need::Optional, "A dowel as found."),
      field("edge", &Reading::edge, Need::Optional, "An edge of what was poured."),
      field("strike", &Reading::strike, Need::Optional,
            "The id of an entry that no longer counts. If that is a strike, what it struck counts again.", kNameText),
      field("note", &Reading::note, Need::Optional, "A note.", {.text = TextRule::Lines, .longest_text = 4'000}),
  };
};

}  // namespace stringcourse
