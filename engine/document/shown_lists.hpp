#pragma once
// Field tables of counts and lists: what is bought, sawn and marked on the gauge rod.
#include "document/shown_layout.hpp"
#include "words/volume.hpp"

namespace stringcourse::document {

/// All of a list, or none of it where what is placed is left out.
template <class Entry>
std::span<const Entry> filled(const View& view, const std::vector<Entry>& list) {
  return view.placed == Placed::Write ? std::span<const Entry>(list) : std::span<const Entry>();
}

template <>
struct Shown<supply::UnitCount> {
  using Of = supply::UnitCount;
  static constexpr std::string_view name = "unit_count";
  static constexpr std::string_view description = "Units of one kind.";
  static constexpr auto fields = std::tuple{
      series("series", &Of::series),
      shown("kind", &Of::kind),
      shown("whole", &Of::whole),
      shown("cut_pieces", &Of::pieces),
  };
};

template <>
struct Shown<supply::Purchase> {
  using Of = supply::Purchase;
  static constexpr std::string_view name = "purchase";
  static constexpr std::string_view description = "Units of one kind to buy.";
  static constexpr auto fields = std::tuple{
      series("series", &Of::series), shown("kind", &Of::kind),
      shown("whole", &Of::whole),    shown("for_saw", &Of::for_saw),
      shown("spare", &Of::spare),    shown("total", [](const View&, const Of& of) { return of.to_buy(); }),
  };
};

template <>
struct Shown<supply::PartCount> {
  using Of = supply::PartCount;
  static constexpr std::string_view name = "corner_set_part";
  static constexpr std::string_view description = "A part of the corner sets.";
  static constexpr auto fields = std::tuple{
      series("series", &Of::series),
      shown("part", &Of::part),
      shown("work", &Of::work, "what is done to it before it is laid; no set is made for beams or half-high"),
      shown("count", &Of::count),
      shown("spare", &Of::spare),
      shown("total", [](const View&, const Of& of) { return of.to_buy(); }),
  };
};

template <>
struct Shown<supply::LintelCount> {
  using Of = supply::LintelCount;
  static constexpr std::string_view name = "lintel_count";
  static constexpr std::string_view description = "Lintels in one piece, of one size.";
  static constexpr auto fields = std::tuple{
      shown("length", &Of::length),
      shown("courses", &Of::courses, "deep"),
      shown("count", &Of::count),
  };
};

template <>
struct Shown<supply::BarCount> {
  using Of = supply::BarCount;
  static constexpr std::string_view name = "bar_count";
  static constexpr std::string_view description = "All upright bars.";
  static constexpr auto fields = std::tuple{
      shown("size", &Of::size),
      shown("count", &Of::bars),
      shown("total", &Of::total, "without laps, dowels and hooks"),
  };
};

template <>
struct Shown<supply::CleanoutCount> {
  using Of = supply::CleanoutCount;
  static constexpr std::string_view name = "cleanout_count";
  static constexpr std::string_view description =
      "One for every bar of each pour that asks for them, corner units included.";
  static constexpr auto fields = std::tuple{
      shown("count", [](const View&, const Of& of) { return of.all(); }),
      shown("in_cleanout_units", &Of::bought),
      shown("to_cut", &Of::cut, "into units of other kinds, or a second one into a cleanout unit"),
  };
};

template <>
struct Shown<Volume> {
  static constexpr std::string_view name = "volume";
  static constexpr std::string_view description = "How much.";
  static constexpr auto fields = std::tuple{
      shown(
          "text",
          [](const View& view, const Volume& of) {
            return words::volume_text(of.in_cubic_centimetres(), view.reader());
          },
          "in gallons or litres, to a tenth"),
      shown("cubic_centimetres", [](const View&, const Volume& of) { return of.in_cubic_centimetres(); }),
  };
};

template <>
struct Shown<supply::GroutColumn> {
  using Of = supply::GroutColumn;
  static constexpr std::string_view name = "grout_column";
  static constexpr std::string_view description = "What goes round one bar in one pour.";
  static constexpr auto fields = std::tuple{
      shown("side",
            [](const View& view, const Of& of) { return view.wall(view.answer.layout.bars[of.bar].wall).name; }),
      shown(
          "number",
          [](const View& view, const Of& of) { return dowel_number(view.answer, view.answer.layout.bars[of.bar]); },
          "of its dowel along the side; 0: the bar starts higher up, or no dowel stands there"),
      shown("at", [](const View& view, const Of& of) { return view.answer.layout.bars[of.bar].centre; }),
      shown("first_course", &Of::first_course),
      shown("last_course", &Of::last_course),
      shown("cells", &Of::cells, "courses in which it has a cell of its own, not a trough's"),
      shown("unlike", &Of::unlike, "of these, in a part whose cell is not known: a whole unit's is taken"),
      shown("volume", &Of::volume),
  };
};

template <>
struct Shown<supply::GroutPour> {
  using Of = supply::GroutPour;
  static constexpr std::string_view name = "grout_pour";
  static constexpr std::string_view description =
      "What is filled before more block is laid on top: as much as the block as listed holds, before what is spilt.";
  static constexpr auto fields = std::tuple{
      shown("first_course", &Of::first_course),
      shown("last_course", &Of::last_course),
      shown("height", &Of::height),
      shown("lift_tops", &Of::lift_tops, "courses at whose top a lift stops; the last is the pour's"),
      shown("columns", [](const View& view, const Of& of) { return filled(view, of.columns); }),
      shown("cells", &Of::cells),
      shown("beams", &Of::beams),
      shown("lintels", &Of::lintels),
      shown("all", [](const View&, const Of& of) { return of.all(); }),
  };
};

template <>
struct Shown<Breakage> {
  static constexpr std::string_view name = "breakage";
  static constexpr std::string_view description = "Units ordered for breakage.";
  static constexpr auto fields = std::tuple{
      shown("percent", &Breakage::percent, "hundredths of what is laid and sawn, each kind rounded up"),
      shown("stated", &Breakage::stated, "by the job; else assumed"),
  };
};

template <>
struct Shown<Tallies> {
  static constexpr std::string_view name = "tallies";
  static constexpr std::string_view description = "What the layout takes.";
  static constexpr auto fields = std::tuple{
      shown(
          "pieces", [](const View&, const Tallies& of) { return of.units.pieces; }, "all pieces laid"),
      shown("breakage", [](const View& view, const Tallies&) { return view.building().breakage; }),
      shown("units", [](const View&, const Tallies& of) -> const auto& { return of.units.units; }),
      shown("to_buy", &Tallies::to_buy, "Laid whole, for the saw and spare for breakage; total is their sum."),
      shown("corner_set_parts", &Tallies::corner_set_parts),
      shown("one_piece_lintels", &Tallies::one_piece_lintels),
      shown("bars", &Tallies::bars),
      shown("cleanouts", &Tallies::cleanouts),
      shown("grout", &Tallies::grout, "pour by pour, from the bottom"),
  };
};

template <>
struct Shown<setout::SawGroup> {
  using Of = setout::SawGroup;
  static constexpr std::string_view name = "saw_group";
  static constexpr std::string_view description = "Pieces sawn alike.";
  static constexpr auto fields = std::tuple{
      series("series", &Of::series),
      shown("from", &Of::from),
      shown("from_length", &Of::from_length),
      shown("length", &Of::length),
      shown("offcut", &Of::offcut),
      shown("pieces", [](const View&, const Of& of) { return of.places.size(); }),
      shown("paired", &Of::paired, "pieces of this group whose unit yields another listed piece"),
  };
};

template <>
struct Shown<setout::SawPair> {
  using Of = setout::SawPair;
  static constexpr std::string_view name = "saw_pair";
  static constexpr std::string_view description = "Two groups whose pieces come out of one unit.";
  static constexpr auto fields = std::tuple{
      shown("first", &Of::first, "index into groups"),
      shown("second", &Of::second, "index into groups"),
      shown("units", &Of::units),
  };
};

template <>
struct Shown<setout::SawList> {
  using Of = setout::SawList;
  static constexpr std::string_view name = "saw_list";
  static constexpr std::string_view description = "What the saw cuts.";
  static constexpr auto fields = std::tuple{
      shown("kerf", [](const View& view, const Of&) { return setout::saw_kerf(view.tape()); }),
      shown("groups", &Of::groups),
      shown("pairs", &Of::pairs),
  };
};

template <>
struct Shown<setout::RodMark> {
  using Of = setout::RodMark;
  static constexpr std::string_view name = "rod_mark";
  static constexpr std::string_view description = "A mark of the gauge rod.";
  static constexpr auto fields = std::tuple{
      shown("at", &Of::at),
      shown("event", &Of::event),
      shown(
          "course", [](const View&, const Of& of) { return of.course > 0 ? std::optional(of.course) : std::nullopt; },
          kCourseNumber),
      opening("opening", &Of::opening),
  };
};

}  // namespace stringcourse::document
