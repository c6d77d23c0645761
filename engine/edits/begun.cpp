#include "edits/begun.hpp"

#include <algorithm>
#include <string_view>
#include <vector>

#include "catalogue/series.hpp"
#include "edits/typed_length.hpp"
#include "edits/typed_opening.hpp"
#include "job/words.hpp"

namespace stringcourse {
namespace {

// A side of 120 in is a shed's; one of 120 ft is a building's as well. A wall of 20 in is a kerb's, one of 20 ft a
// hall's.
constexpr TypedMeasure kSide{Length::inches(120), Length::millimetres(999)},
    kHeight{Length::inches(20), Length::millimetres(599)};

Refusal unknown_series(const std::string& id) {
  std::vector<std::string_view> known;
  for (const Series& series : catalogue_series()) known.push_back(series.id);
  const std::string_view nearest = nearest_name(id, known);
  return {"unknown-series", "/begin/series",
          fact("no-such-series", {FactValue::typed(id), listed(FactValue::Kind::Or, known)}),
          nearest.empty() ? Fact() : fact("meant-series", {nearest})};
}

}  // namespace

std::expected<Job, Refusals> begun_job(const Measures& measures) {
  Refusals refusals;
  const Series* series = find_series(measures.series);
  if (series == nullptr) refusals.add(unknown_series(measures.series));
  Job job;
  job.name = measures.name;
  job.tape = refusals.tape = series == nullptr ? Tape::Inches : series->tape;
  job.units.series = measures.series;
  const StatedLength length = read_typed_length(measures.length, job.tape, kSide, "/begin/length", refusals);
  const StatedLength width = read_typed_length(measures.width, job.tape, kSide, "/begin/width", refusals);
  job.heights.height = read_typed_length(measures.height, job.tape, kHeight, "/begin/height", refusals);
  job.outline.sides = {{"", "A", "B", length, Turn::Right, std::nullopt},
                       {"", "B", "C", width, Turn::Right, std::nullopt},
                       {"", "C", "D", length, Turn::Right, std::nullopt},
                       {"", "D", "A", width, Turn::Right, std::nullopt}};
  int number = 0;
  for (const TypedOpening& opening : measures.openings) {
    auto with = with_typed_opening(job, opening, "/begin/opening/" + number_text(number++));
    if (with) job = *std::move(with);
    else std::ranges::for_each(with.error().shown, [&](const Refusal& refusal) { refusals.add(refusal); });
  }
  if (!refusals.empty()) return std::unexpected(std::move(refusals));
  return job;
}

}  // namespace stringcourse
