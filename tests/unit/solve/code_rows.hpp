#pragma once
// For every code a small job that raises it, and where. One table for each kind of trouble.
#include <string>
#include <string_view>
#include <vector>

#include "job/job.hpp"
#include "solve/solve.hpp"

namespace stringcourse::tests {

/// "code place" of all that is refused or found.
using Told = std::vector<std::string>;

struct CodeRow {
  Code code;
  std::string_view place;
  Told (*told)();
};

[[nodiscard]] Told told_of(const Refusals& refusals);
[[nodiscard]] Told told_of(const Job& job, const Wishes& wishes = {});
/// Of a document; it is only read.
[[nodiscard]] Told told_of_text(std::string_view text);
/// Of a small job that stands in tests/cases/codes, solved with so much search.
[[nodiscard]] Told told_of_case(const std::string& name, std::int64_t search_budget = Wishes{}.search_budget);
[[nodiscard]] Job example(const std::string& name);

[[nodiscard]] std::vector<CodeRow> document_rows();  // what is no job: code_rows_document.cpp
[[nodiscard]] std::vector<CodeRow> plan_rows();      // units, outline, courses, interior walls: code_rows_plan.cpp
[[nodiscard]] std::vector<CodeRow> wall_rows();      // openings, joints, steel in the walls: code_rows_walls.cpp
[[nodiscard]] std::vector<CodeRow> layout_rows();    // what the layout concedes, lintels as laid: code_rows_layout.cpp
[[nodiscard]] std::vector<CodeRow> reading_rows();   // pegs, levels, slab, dowels read: code_rows_readings.cpp
[[nodiscard]] std::vector<CodeRow> laid_rows();      // the laid log: code_rows_laid.cpp

}  // namespace stringcourse::tests
