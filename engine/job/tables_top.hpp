#pragma once
// Field tables of what goes on top of the walls: plate, anchor bolts, trusses.
#include <string_view>
#include <tuple>

#include "job/field_table.hpp"
#include "job/tables_units.hpp"
#include "job/top.hpp"

namespace stringcourse {

template <>
struct Table<Bolts> {
  static constexpr std::string_view name = "bolts";
  static constexpr std::string_view description =
      "Anchor bolts of the plate, as asked for by the drawings; lengths are actual, to the bolts' centres.";
  static constexpr auto fields = std::tuple{
      field("size", &Bolts::size, Need::Optional, "Size and depth of the bolts, in your own words."),
      field("spacing", &Bolts::spacing, Need::Required, "Greatest spacing, a length."),
      field("end_most", &Bolts::end_most, Need::Required,
            "Farthest that the first and last bolt of a piece of plate stand from its ends, a length."),
      field("end_least", &Bolts::end_least, Need::Optional,
            "Nearest that a bolt stands to an end of its piece of plate, a length; absent: 0.", kZeroOrMore),
      field("clear_of_bars", &Bolts::clear_of_bars, Need::Optional,
            "Nearest that a bolt stands to an upright bar, along the wall, a length; absent: 0.", kZeroOrMore),
      field("grout_round", &Bolts::grout_round, Need::Optional,
            "Least from a bolt's centre to the block beside it, along the wall, a length; absent: 1 1/2 in or 38 mm.",
            kZeroOrMore),
  };
};

template <>
struct Table<Trusses> {
  static constexpr std::string_view name = "trusses";
  static constexpr std::string_view description = "Trusses or rafters evenly along one wall, to its far end.";
  static constexpr auto fields = std::tuple{
      field("on", &Trusses::on, Need::Required, "The wall that they stand on.", kNameText),
      field("place", &Trusses::place, Need::Required,
            "Where on that wall, to the first one's centre, actual; the others follow away from that corner."),
      field("spacing", &Trusses::spacing, Need::Required, "Their spacing, a length.",
            {.lengths = LengthRange::AboveZero}),
      field("clear", &Trusses::clear, Need::Required,
            "Nearest that a bolt's centre stands to a truss's centre, a length.", kZeroOrMore),
  };
};

template <>
struct Table<Top> {
  static constexpr std::string_view name = "top";
  static constexpr std::string_view description = "What goes on top of the walls, as asked for by the drawings.";
  static constexpr auto fields = std::tuple{
      field("plate", &Top::plate, Need::Optional, "The plate, in your own words."),
      field("plate_on", &Top::plate_on, Need::Optional, "Walls that carry a plate; none: every side of the outline.",
            {.text = TextRule::Name, .most_entries = 12'000, .order = ListOrder::Distinct}),
      field("plate_piece", &Top::plate_piece, Need::Optional,
            "Length of the plate's pieces, a length: laid from each plate's start, the last is what is left; absent: "
            "in one piece."),
      field("bolts", &Top::bolts, Need::Optional, "Anchor bolts; absent: not planned."),
      field("trusses", &Top::trusses, Need::Optional, "Trusses or rafters that bolts keep clear of.",
            {.most_entries = 1'000}),
  };
};

}  // namespace stringcourse
