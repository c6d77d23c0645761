#pragma once
// Field tables of the hold points: what is asked at each, and what the answer says to it.
#include "document/choices.hpp"
#include "document/shown.hpp"
#include "words/sheet_words.hpp"

namespace stringcourse::document {

template <>
struct Shown<Question> {
  static constexpr std::string_view name = "question";
  static constexpr std::string_view description = "A question that is asked the day before, and its answer.";
  static constexpr auto fields = std::tuple{
      shown("code", [](const View&, const Question& of) { return of.asks; }),
      shown("text", [](const View&, const Question& of) { return fact(of.asks); }),
      shown("answer", &Question::answered),
      shown("says", &Question::says, "the number that says so, or what is still to be read"),
      shown("place", &Question::place, "JSON pointer to what answers it in the job, or \"\""),
      shown("drawing", &Question::drawing, "the drawing that shows it, or \"\""),
      shown("chosen", &Question::chosen, "the remedy that was chosen for it, or \"\""),
  };
};

template <>
struct Shown<Lack> {
  static constexpr std::string_view name = "lack";
  static constexpr std::string_view description = "What the job does not say yet and a hold point asks.";
  static constexpr auto fields = std::tuple{
      shown("text", &Lack::says),
      shown("place", &Lack::place, "JSON pointer into the job, or \"\""),
  };
};

template <>
struct Shown<NextReading::Spot> {
  using Of = NextReading::Spot;
  static constexpr std::string_view name = "spot";
  static constexpr std::string_view description = "A place on the outer face of a side.";
  static constexpr auto fields = std::tuple{
      shown("side", &Of::wall, "its number in the answer's sides, from 0"),
      nanometres("at", &Of::along, "from the side's start"),
  };
};

template <>
struct Shown<NextReading> {
  using Of = NextReading;
  static constexpr std::string_view name = "next_reading";
  static constexpr std::string_view description = "A reading that is still to be taken.";
  static constexpr auto fields = std::tuple{
      shown("what", &Of::what),
      shown("text", &Of::says),
      shown("again", &Of::again, "it was read, and did not fit the others"),
      shown("from", &Of::from, "tape: one corner"),
      shown("to", &Of::to, "tape: the other"),
      shown("station", &Of::station, "rod: the point"),
      shown("on", &Of::on, "edge, dowel, rod beside the corners: the side"),
      rounded("at", &Of::at, "there: from the side's start"),
      rounded("expected", &Of::expected, "tape: as planned; dowel: in from the outer face"),
      shown("spots", &Of::spots, "where it stands on the plan: a place, or the ends of a line"),
  };
};

template <>
struct Shown<PointAsAsked> {
  static constexpr std::string_view name = "point";
  static constexpr std::string_view description = "One of the six hold points.";
  static constexpr auto fields = std::tuple{
      shown("code", &PointAsAsked::hold_point),
      shown("title",
            [](const View& view, const PointAsAsked& of) {
              return words::words_of(view.building(), view.language)
                  .hold_points[static_cast<std::size_t>(of.hold_point) - 1];
            }),
      shown("questions", &PointAsAsked::questions),
      shown("lacks", &PointAsAsked::lacks),
      shown("to_read", &PointAsAsked::to_read, "what is still to be read here, the next one first"),
      shown("done", &PointAsAsked::done, "every question is answered yes, or a remedy is chosen for it"),
      shown("stands", &PointAsAsked::stands, "the job stands here: the first that is not done"),
  };
};

}  // namespace stringcourse::document
