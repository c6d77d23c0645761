#pragma once
// The printed set of a job: summary, plans of the first two courses, elevations, schedules. Made from building and
// layout alone; no file, no clock. For Letter or A4, landscape.
#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "bond/layout.hpp"
#include "ground/as_found.hpp"
#include "ground/slab_fit.hpp"
#include "laying/as_laid.hpp"
#include "setout/boards.hpp"
#include "setout/rod_heights.hpp"
#include "sheet/on_paper.hpp"
#include "sheet/words.hpp"
#include "steel/dowel_search.hpp"
#include "steel/dowels.hpp"
#include "steel/poured.hpp"
#include "steel/slab.hpp"
#include "walls/building.hpp"

namespace stringcourse::sheet {

/// What the sheets say in the job's own words, and in which language they say the rest.
struct SheetWords {
  std::string name, notes, issued, drawn_by;
  std::vector<Finding> findings;     // all findings of the answer; empty: those of the building
  const Words* language = &kEnglish;
  const SettingOut* setting_out = nullptr;                       // none: no setting-out card
  const std::vector<setout::SideBoards>* boards = nullptr;
  const std::vector<setout::RodReadingWanted>* rod_readings = nullptr;
  const std::vector<steel::Dowel>* dowels = nullptr;             // none: no list of them
  std::optional<Length> dowel_lap;                               // how far they stand up, if the job says it
  const std::vector<steel::FoundDowel>* found_dowels = nullptr;  // none: nothing was read
  const steel::DowelSearch* dowel_search = nullptr;               // layouts that save dowels
  const std::vector<steel::FaceLine>* face_lines = nullptr;
  const ground::SlabFit* fit = nullptr;                          // none: no edge was read, or not all that it needs
  const std::vector<std::string>* slab_lacks = nullptr;          // what the fit still needs; none: nothing
  const laying::AsLaid* laid = nullptr;    // none: no marks for the wall
  const std::vector<LaidEntry>* log = nullptr;
  std::vector<std::pair<std::string, std::vector<std::string>>>
      changes;                                                 // since it was printed: a line each, and its units
  const std::vector<std::uint32_t>* changed_pieces = nullptr;  // into the layout's pieces, rising
  const ground::AsFound* found = nullptr;  // what readings say; none: no sheets of it
  const Building* poured_building =
      nullptr;  // what the sheets of the pour are drawn of, where the rest is otherwise by now
  const Layout* poured_layout = nullptr;
  const steel::DowelsNow* dowels_now = nullptr;  // once the concrete is poured; none: dowels are still to be set
};

/// Name and title of one sheet: "01-summary", "Summary". Names are unique, rising and made of a-z, A-Z, 0-9 and "-".
struct SheetName {
  std::string name, title;
  friend bool operator==(const SheetName&, const SheetName&) = default;
};

/// The set in order: summary (and findings, standards), first-course plan whole and by side, second course likewise,
/// an elevation of each side and interior wall, opening schedule, saw list, gauge rod with corner leads. Long walls
/// and tables go over several sheets.
[[nodiscard]] std::vector<SheetName> sheet_names(const Building& building, const Layout& layout,
                                                 const SheetWords& words, Paper paper);
[[nodiscard]] std::vector<Sheet> make_sheets(const Building& building, const Layout& layout, const SheetWords& words,
                                             Paper paper);
/// The same sheets one at a time, in order: only one is in memory.
void for_each_sheet(const Building& building, const Layout& layout, const SheetWords& words, Paper paper,
                    const std::function<void(const Sheet&)>& take);

/// Drawings without a frame, each as large as what it shows, at 1:50 or a smaller round scale: "plan-course-1",
/// "plan-course-2", then "elevation-1", "elevation-2" ... in the order of the walls. For pages and pictures.
[[nodiscard]] std::vector<SheetName> drawing_names(const Building& building, const SheetWords& words);
/// One of them by its place in drawing_names().
[[nodiscard]] Sheet make_drawing(const Building& building, const Layout& layout, const SheetWords& words,
                                 std::size_t index);

}  // namespace stringcourse::sheet
