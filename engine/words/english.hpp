#pragma once
// English, a group of sentences for each folder that has something to tell. Internal to words/.
#include <span>

#include "words/language.hpp"

namespace stringcourse::words {

[[nodiscard]] const SheetWords& american_sheets();         // american_sheets.cpp
[[nodiscard]] std::span<const Sentence> english_common();  // english_common.cpp: lists, single words
[[nodiscard]] std::span<const Sentence> english_job();     // english_job.cpp: reading lengths and the job file
[[nodiscard]] std::span<const Sentence> english_walls();
[[nodiscard]] std::span<const Sentence> english_walls_units();
[[nodiscard]] std::span<const Sentence> english_walls_openings();
[[nodiscard]] std::span<const Sentence> english_walls_steel();
[[nodiscard]] std::span<const Sentence> english_edits();
[[nodiscard]] std::span<const Sentence> english_bond();
[[nodiscard]] std::span<const Sentence> english_ground();
[[nodiscard]] std::span<const Sentence> english_laying();
[[nodiscard]] std::span<const Sentence> english_solve();
[[nodiscard]] std::span<const Sentence> english_changes();  // english_changes.cpp: offers, what was found otherwise
[[nodiscard]] std::span<const Sentence> english_rules();
[[nodiscard]] std::span<const Sentence> english_order();  // english_order.cpp: what is bought, what is done when
[[nodiscard]] std::span<const Sentence> english_page();
[[nodiscard]] std::span<const Sentence> english_command();

}  // namespace stringcourse::words
