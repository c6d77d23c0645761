#pragma once
// Names as long as a user likes. One that is too long for its place on a drawing stands there as a number in brackets,
// which the sheet of names tells: no name is ever cut.
#include <memory>
#include <string>
#include <vector>

#include "paper/pad.hpp"
#include "sheet/on_paper.hpp"
#include "walls/building.hpp"
#include "words/sheet_words.hpp"

namespace stringcourse::sheet {

struct LongName {
  std::string key;  // "(3)"
  std::string name;
};
struct TitleNames {
  std::string job, issued, drawn_by;
};
/// Each name that a drawing might have no room for, once: of the job, its corners, walls, openings, in this order.
[[nodiscard]] std::vector<LongName> long_names(const Building& building, const TitleNames& title);
/// The building with keys for those names that no sentence has room for; null where there are none.
[[nodiscard]] std::shared_ptr<const Building> with_short_names(const Building& building,
                                                               const std::vector<LongName>& names);
/// The key of a name that has one, else the name.
[[nodiscard]] std::string short_name(const std::vector<LongName>& names, const std::string& name);
/// The name as large as it fits its room, on one line or broken between words; else its key.
[[nodiscard]] Setting fitting_name(const std::vector<LongName>& names, const std::string& name, TextRoom room,
                                   Lettering lettering, std::span<const Micrometres> heights);

}  // namespace stringcourse::sheet
