#include "solve/begun.hpp"

#include <string_view>
#include <vector>

#include "catalogue/series.hpp"
#include "job/refusal_codes.hpp"
#include "job/words.hpp"
#include "measure/notation.hpp"

namespace stringcourse {
namespace {

constexpr std::string_view kActual = " actual";

StatedLength read_measure(std::string_view text, Tape tape, std::string place, Refusals& refusals) {
  const Basis basis = text.ends_with(kActual) ? Basis::Actual : Basis::Nominal;
  if (basis == Basis::Actual) text.remove_suffix(kActual.size());
  const auto length = read_length(text, tape);
  if (length) return {*length, basis};
  refusals.add({std::string(code::kNotALength), std::move(place), length.error().reason, length.error().remedy});
  return {};
}

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
  const StatedLength length = read_measure(measures.length, job.tape, "/begin/length", refusals);
  const StatedLength width = read_measure(measures.width, job.tape, "/begin/width", refusals);
  job.heights.height = read_measure(measures.height, job.tape, "/begin/height", refusals);
  if (!refusals.empty()) return std::unexpected(std::move(refusals));
  job.outline.sides = {{"", "A", "B", length, Turn::Right, std::nullopt},
                       {"", "B", "C", width, Turn::Right, std::nullopt},
                       {"", "C", "D", length, Turn::Right, std::nullopt},
                       {"", "D", "A", width, Turn::Right, std::nullopt}};
  return job;
}

}  // namespace stringcourse
