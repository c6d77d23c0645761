#pragma once
// Field tables of what goes over openings and on top of the walls, and of what is looked at before a pour.
#include <vector>

#include "catalogue/rules.hpp"
#include "document/shown_lists.hpp"

namespace stringcourse::document {

template <>
struct Shown<supply::Seat> {
  using Of = supply::Seat;
  static constexpr std::string_view name = "seat";
  static constexpr std::string_view description = "What a lintel stands on at one end.";
  static constexpr auto fields = std::tuple{
      shown("course", &Of::course, kCourseNumber),
      shown("units", &Of::units, "their numbers along the side in that course; none: nothing lies there"),
  };
};

template <>
struct Shown<supply::Bridged> {
  using Of = supply::Bridged;
  static constexpr std::string_view name = "bridged";
  static constexpr std::string_view description = "What goes over one opening, and what holds it up meanwhile.";
  static constexpr auto fields = std::tuple{
      opening("opening", &Of::opening),
      shown("over_foot", &Of::over_foot,
            "from its floor or sill to its head: a shore less what lies under and over it"),
      shown("over_bearing", &Of::over_bearing, "from the footing or slab under the first bed to its head"),
      shown(
          "before_course",
          [](const View&, const Of& of) { return of.shored ? std::optional(of.first_course) : std::nullopt; },
          "shores stand before this course is laid; absent: nothing is shored"),
      shown("shores", &Of::shores,
            "one at each jamb, between them no farther apart than the job says; absent: the job does not say"),
      shown("start", [](const View&, const Of& of) { return of.lintel < 0 ? std::nullopt : std::optional(of.start); }),
      shown("end", [](const View&, const Of& of) { return of.lintel < 0 ? std::nullopt : std::optional(of.end); }),
      shown("beams_in", &Of::beams_in, "courses of its lintel that are bond beams"),
      shown("beams_cut", &Of::beams_cut, "bond beams that the opening interrupts"),
      shown(
          "beam_over",
          [](const View&, const Of& of) { return of.beam_over > 0 ? std::optional(of.beam_over) : std::nullopt; },
          "the lowest bond beam over opening and lintel"),
  };
};

template <>
struct Shown<supply::HeadChoice> {
  using Of = supply::HeadChoice;
  static constexpr std::string_view name = "head_choice";
  static constexpr std::string_view description = "What can be done with a head off a course line.";
  static constexpr auto fields = std::tuple{
      shown("way", &Of::way),
      shown("by", &Of::by, "packed, raised, lowered, sawn off"),
      shown("units", &Of::units, "blocks more, by their length"),
      shown("cuts", &Of::cuts, "saw cuts more"),
  };
};

template <>
struct Shown<supply::OffCourse> {
  using Of = supply::OffCourse;
  static constexpr std::string_view name = "off_course";
  static constexpr std::string_view description = "A head that does not come to a course line.";
  static constexpr auto fields = std::tuple{
      opening("opening", &Of::opening),
      shown("asked", &Of::asked, "its height"),
      shown("choices", &Of::choices, "the first is what is laid out"),
  };
};

template <>
struct Shown<BarToInspect> {
  using Of = BarToInspect;
  static constexpr std::string_view name = "bar_to_inspect";
  static constexpr std::string_view description = "A bar that is looked at before grout goes round it.";
  static constexpr auto fields = std::tuple{
      shown("side",
            [](const View& view, const Of& of) { return view.wall(view.answer.layout.bars[of.bar].wall).name; }),
      shown("number", &Of::number, "of its dowel along the side; 0: it has none here"),
      shown("at", [](const View& view, const Of& of) { return view.answer.layout.bars[of.bar].centre; }),
      shown(
          "cleanout", [](const View&, const Of& of) { return of.cleanout >= 0; },
          "it has one at the foot of this pour"),
      shown("through", &Of::through, "units with floors, lintels in one piece, that it passes in this pour"),
      shown("photo", &Of::photo, "name of a photo of it"),
      shown("short_name", &Of::short_name, "its dowel's number, or x1, x2 where it has none"),
  };
};

template <>
struct Shown<LineToTick> {
  using Of = LineToTick;
  static constexpr std::string_view name = "line_to_tick";
  static constexpr std::string_view description =
      "A box of the inspection list; its first four fields are what an entry \"looked_at\" of the laid log says.";
  static constexpr auto fields = std::tuple{
      shown("what", &Of::what),
      side("on", &Of::wall),
      shown("course", &Of::course, "of bars and cleanouts the pour's lowest"),
      shown("at", &Of::at, "a bar's centre; where a lintel's opening starts; of a beam 0"),
      shown("of", &Of::of, "bars, cleanouts, floors: index into bars; else -1 or the opening's"),
      shown(
          "ticked_by",
          [](const View&, const Of& of) { return of.ticked_by < 0 ? std::nullopt : std::optional(of.ticked_by); },
          "entry of the laid log, from 0; absent: not ticked"),
  };
};

template <>
struct Shown<GroutStep> {
  using Of = GroutStep;
  static constexpr std::string_view name = "grout_step";
  static constexpr std::string_view description = "One place that grout goes into, in one lift.";
  static std::optional<std::int32_t> entry(std::int32_t index) {
    return index < 0 ? std::nullopt : std::optional(index);
  }
  static constexpr auto fields = std::tuple{
      shown("into", &Of::into),
      side("side", &Of::wall),
      shown("name", &Of::name,
            "of a cell its dowel's number, or x1, x2 where it has none; of a beam its course; of a lintel its opening"),
      shown("course", &Of::course, "up to its top: of a cell the last of the lift, of a trough its own"),
      shown(
          "at", [](const View&, const Of& of) { return Rounded{of.at}; }, "a cell's bar, a trough's start"),
      shown("volume", &Of::volume, "of this lift"),
      shown("total", &Of::total, "of the lift up to here"),
      shown(
          "filled_by", [](const View&, const Of& of) { return entry(of.filled); },
          "entry of the laid log, from 0; absent: not filled"),
      shown(
          "again_by", [](const View&, const Of& of) { return entry(of.again); },
          "entry of the laid log that says it was consolidated again"),
  };
};

template <>
struct Shown<LiftCard> {
  using Of = LiftCard;
  static constexpr std::string_view name = "lift_card";
  static constexpr std::string_view description =
      "One lift of a pour in the order in which it is filled: the way round along the walls that is shortest to the "
      "last cell; then troughs.";
  static constexpr auto fields = std::tuple{
      shown("pour", &Of::pour, "from the bottom"),
      shown("lift", &Of::lift, "of its pour, from the bottom"),
      shown("first_course", &Of::first_course),
      shown("last_course", &Of::last_course),
      shown("height", &Of::height),
      shown("again", &Of::again, "it is consolidated a second time: rule \"grout-again\""),
      shown("again_from_minutes", [](const View&, const Of&) { return again_within().from; }),
      shown(
          "again_by_minutes", [](const View&, const Of&) { return again_within().by; },
          "after it was filled: rule \"grout-again-when\""),
      rounded("walk", &Of::walk, "from the start corner to the last cell, along the outer faces"),
      shown(
          "all",
          [](const View& view, const Of& of) {
            return words::volume_by_foot_text(of.steps.back().total.in_cubic_centimetres(), view.reader());
          },
          "goes in, before what is spilt"),
      shown("steps", [](const View& view, const Of& of) { return filled(view, of.steps); }),
  };
};

template <>
struct Shown<PourToInspect> {
  using Of = PourToInspect;
  static constexpr std::string_view name = "pour_to_inspect";
  static constexpr std::string_view description = "What is looked at before one pour.";
  static constexpr auto fields = std::tuple{
      shown("first_course", &Of::first_course),
      shown("last_course", &Of::last_course),
      shown("bars", &Of::bars, "by side, then along it"),
      shown("beams", &Of::beams, "courses"),
      shown(
          "lintels",
          [](const View& view, const Of& of) {
            std::vector<std::string> names;
            for (const std::int32_t index : of.lintels) names.push_back(view.opening(index).name);
            return names;
          },
          "openings whose lintels of units begin in this pour"),
      shown("lines", &Of::lines, "boxes to tick: bars with their cleanouts and floors; beams by side; lintels"),
  };
};

template <>
struct Shown<setout::Bolt> {
  using Of = setout::Bolt;
  static constexpr std::string_view name = "bolt";
  static constexpr std::string_view description = "An anchor bolt, to its middle, in a cell of the top course.";
  static constexpr auto fields = std::tuple{
      shown("at", &Of::at),
      shown("unit", &Of::unit, kUnitNumber),
      shown("cell", &Of::cell, "from the unit's end nearer to the side's start"),
  };
};

template <>
struct Shown<setout::NoBolt> {
  using Of = setout::NoBolt;
  static constexpr std::string_view name = "no_bolt";
  static constexpr std::string_view description = "A stretch in which a bolt is asked for and none can stand.";
  static constexpr auto fields = std::tuple{
      shown("after", &Of::after),
      shown("by", &Of::by),
      shown("next", &Of::next, "nearest place behind; absent: none in this piece"),
  };
};

template <>
struct Shown<setout::PlatePiece> {
  using Of = setout::PlatePiece;
  static constexpr std::string_view name = "plate_piece";
  static constexpr std::string_view description = "A piece of plate with its bolts.";
  static constexpr auto fields = std::tuple{
      side("side", &Of::wall),    shown("from", &Of::from),       shown("to", &Of::to),
      shown("bolts", &Of::bolts), shown("without", &Of::without),
  };
};

/// The zone that people keep out of beside a wall without its final support.
struct AccessZone {
  Length height, width;
};
template <>
struct Shown<AccessZone> {
  static constexpr std::string_view name = "access_zone";
  static constexpr std::string_view description =
      "The zone that people keep out of beside a wall without its final support; no height is permitted by it.";
  static constexpr auto fields = std::tuple{
      shown("height", &AccessZone::height, "of the walls over what they stand on"),
      shown("width", &AccessZone::width, "height and what rule \"limited-access-zone\" adds"),
  };
};
inline std::optional<AccessZone> access_zone(const Building& building) {
  if (building.courses.empty()) return std::nullopt;
  const Length height = building.courses.back().top - foot_of_course(building, 1);
  return AccessZone{height, height + limit_of("limited-access-zone", building.tape)};
}

/// A rule in the language of the view, with its source.
struct OnCard {
  const Rule& rule;
  /// Its limits of one sort, in the order of its sentence.
  template <typename Sort>
  [[nodiscard]] std::vector<std::int32_t> limits(std::int32_t Sort::* whole) const {
    std::vector<std::int32_t> found;
    for (const RuleFigure& figure : rule.figures) {
      if (const Sort* one = std::get_if<Sort>(&figure)) found.push_back(one->*whole);
    }
    return found;
  }
};

template <>
struct Shown<OnCard> {
  static constexpr std::string_view name = "rule_on_card";
  static constexpr std::string_view description = "What a rule says, and where that stands.";
  static constexpr auto fields = std::tuple{
      shown("id", [](const View&, const OnCard& of) { return of.rule.id; }),
      shown("says", [](const View& view, const OnCard& of) { return words::rule_text(of.rule, view.reader()); }),
      shown("source", [](const View&, const OnCard& of) -> const std::string& { return of.rule.source.text; }),
      shown(
          "unverified", [](const View&, const OnCard& of) { return of.rule.source.knowledge == Knowledge::Memory; },
          "not read in its document: check your code"),
      shown(
          "fahrenheit", [](const View&, const OnCard& of) { return of.limits(&Fahrenheit::degrees); },
          "its temperatures, in the order in which it says them"),
      shown(
          "miles_per_hour", [](const View&, const OnCard& of) { return of.limits(&MilesPerHour::miles); }, "its winds"),
      shown(
          "minutes", [](const View&, const OnCard& of) { return of.limits(&Minutes::count); }, "its times"),
  };
};

/// Those of bolts, weather and wind, in the order of the table; none where what is placed is left out.
inline std::vector<OnCard> rules_on_cards(const View& view) {
  std::vector<OnCard> cards;
  if (view.placed == Placed::Omit) return cards;
  for (const Rule& rule : catalogue_rules()) {
    const bool on_card = rule.id.starts_with("cold-") || rule.id.starts_with("hot-") || rule.id.starts_with("wind-") ||
                         rule.id == "sill-bolts" || rule.id == "roof-bolts" || rule.id == "limited-access-zone" ||
                         rule.id == "brace-over-8-ft";
    if (on_card) cards.push_back({rule});
  }
  return cards;
}

}  // namespace stringcourse::document
