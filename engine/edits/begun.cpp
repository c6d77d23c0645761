#include "edits/begun.hpp"

#include <optional>
#include <string_view>
#include <vector>

#include "catalogue/series.hpp"
#include "job/refusal_codes.hpp"
#include "job/words.hpp"
#include "measure/notation.hpp"

namespace stringcourse {
namespace {

constexpr std::string_view kActual = " actual";

/// A measure of the building: where it is refused, and up to which length a number alone may have been meant in the tape's
/// larger unit (feet, metres). Beyond, it can only be what the tape says.
struct Measure {
  std::string_view place;
  Length inches, millimetres;
};
// A side of 120 in is a shed's; one of 120 ft is a building's as well. A wall of 20 in is a kerb's, one of 20 ft a hall's.
constexpr Measure kSide{"", Length::inches(120), Length::millimetres(999)};
constexpr Measure kHeight{"/begin/height", Length::inches(20), Length::millimetres(599)};

bool is_number_alone(std::string_view text) {
  return text.find_first_not_of("0123456789. ") == std::string_view::npos;
}

/// "24: feet or inches?" of a number alone that may be either.
std::optional<Refusal> unit_unsaid(std::string_view text, Length length, Tape tape, const Measure& measure) {
  if (!is_number_alone(text) || length > (tape == Tape::Inches ? measure.inches : measure.millimetres)) return std::nullopt;
  const std::string number(text.substr(0, text.find_last_not_of(' ') + 1));
  if (tape == Tape::Inches) {
    return Refusal{"unit-unsaid", std::string(measure.place), number + ": feet or inches?",
                   "Write " + number + "' or " + number + "\"."};
  }
  const std::string other = length < Length::millimetres(100) ? "m" : "cm";
  return Refusal{"unit-unsaid", std::string(measure.place),
                 number + ": " + (other == "m" ? "metres" : "centimetres") + " or millimetres?",
                 "Write " + number + " " + other + " or " + number + " mm."};
}

StatedLength read_measure(std::string_view text, Tape tape, const Measure& measure, Refusals& refusals) {
  const Basis basis = text.ends_with(kActual) ? Basis::Actual : Basis::Nominal;
  if (basis == Basis::Actual) text.remove_suffix(kActual.size());
  const auto length = read_length(text, tape);
  if (!length) {
    refusals.add({std::string(code::kNotALength), std::string(measure.place), length.error().reason, length.error().remedy});
    return {};
  }
  if (auto unsaid = unit_unsaid(text, *length, tape, measure)) refusals.add(*std::move(unsaid));
  return {*length, basis};
}

Measure side_at(std::string_view place) { return {place, kSide.inches, kSide.millimetres}; }

Refusal unknown_series(const std::string& id) {
  std::vector<std::string_view> known;
  for (const Series& series : catalogue_series()) known.push_back(series.id);
  const std::string_view nearest = nearest_name(id, known);
  return {"unknown-series", "/begin/series", "There is no series " + quoted(id) + ": " + one_of_words(known) + ".",
          nearest.empty() ? "" : "Did you mean '" + std::string(nearest) + "'?"};
}

}  // namespace

std::expected<Job, Refusals> begun_job(const Measures& measures) {
  Refusals refusals;
  const Series* series = find_series(measures.series);
  if (series == nullptr) refusals.add(unknown_series(measures.series));
  Job job;
  job.name = measures.name;
  job.tape = series == nullptr ? Tape::Inches : series->tape;
  job.units.series = measures.series;
  const StatedLength length = read_measure(measures.length, job.tape, side_at("/begin/length"), refusals);
  const StatedLength width = read_measure(measures.width, job.tape, side_at("/begin/width"), refusals);
  job.heights.height = read_measure(measures.height, job.tape, kHeight, refusals);
  if (!refusals.empty()) return std::unexpected(std::move(refusals));
  job.outline.sides = {{"", "A", "B", length, Turn::Right, std::nullopt},
                       {"", "B", "C", width, Turn::Right, std::nullopt},
                       {"", "C", "D", length, Turn::Right, std::nullopt},
                       {"", "D", "A", width, Turn::Right, std::nullopt}};
  return job;
}

}  // namespace stringcourse
