#pragma once
// One kind of sheet: all that the set, its order, the drawings of the page and the command line know of it. A kind is
// one file that ends with its descriptor; registry.hpp lists them. It is either a drawing or a list.
#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "job/trouble.hpp"
#include "paper/table.hpp"
#include "sheet/context.hpp"
#include "sheet/drawing.hpp"

namespace stringcourse::sheet {

/// One of the drawings that share a sheet: a stretch of a wall, in a course or (0) in all.
struct Band {
  int wall = -1, course = 0;
  Part part = {};
};

/// One sheet before it is drawn: light enough to list a school's hundreds.
struct PlannedSheet {
  std::string title = {};
  std::optional<Scale> scale = {};
  int wall = -1, course = 0;                  // in its name, where they are said
  Part part = {};                             // of the wall
  std::vector<Band> bands = {};               // drawings one under another
  std::vector<std::size_t> shown = {};        // which of the corners or dowels
  std::size_t first_line = 0, last_line = 0;  // of a list; the last is not on it
};

/// So many sheets of one title, each saying which of them it is where there are more.
[[nodiscard]] std::vector<PlannedSheet> numbered_sheets(const Context& context, std::string_view title,
                                                        std::optional<Scale> scale, std::size_t count = 1);

/// What is said of each wall of a course (0: of all courses): its sheets' title, and its parts; no parts, no sheets.
struct WallSheets {
  std::string (*title)(const Context&, int wall, int course) = nullptr;
  WallParts (*parts)(const Context&, int wall, int course) = nullptr;
};
/// A sheet for each part of each wall, one wall after another.
[[nodiscard]] std::vector<PlannedSheet> sheets_of_walls(const Context& context, const WallSheets& of, int course = 0);

/// The rule of the catalogue whose words are the caution; where it has none of that name, our own.
struct Caution {
  std::string_view rule = {};
  std::string_view words::SheetWords::* instead = &words::SheetWords::caution_general;
};

/// A drawing without a frame that is asked for by its name: "elevation-2", or "pegs" where there is one of its kind.
struct DrawingKind {
  std::string_view name = {};  // "elevation-": a number from 1 on follows the dash
  bool (*has)(const Context&, int number) = nullptr;
  std::string (*title)(const Building&, const words::SheetWords&, int number) = nullptr;
  Drawing (*draw)(const Context&, SheetName, int number) = nullptr;
  Drawing (*draw_inside)(const Context&, SheetName, int number) = nullptr;  // "elevation-2-inside"; null: never
  int (*in_every_set)(const Building&) = nullptr;  // so many, from 1 on, are drawn whatever is asked; none: null
};

struct SheetKind {
  std::string_view name = {};  // of its files, before what tells them apart: "elevation", "saw-list"
  /// Sheets for the pour are drawn of what was poured, whatever is laid otherwise since.
  HoldPoint hold_point = HoldPoint::Order;
  std::string_view words::SheetWords::* purpose = nullptr;  // what it is for, in a line
  bool Wanted::* on_request = nullptr;                      // only where this is wanted; null: always
  Caution caution = {};
  bool (*applies)(const Context&) = nullptr;  // null: always

  // Drawings.
  std::vector<PlannedSheet> (*sheets)(const Context&) = nullptr;
  Group (*draw)(const Context&, const PlannedSheet&) = nullptr;

  // Lists. One without lines has no sheet; one that may stand under others has none where it fits under the last line
  // of one of these, or of the list under which that stands: the sheet is for the hold points of all, two at most.
  Table (*table)(const Context&) = nullptr;
  Table (*small_table)(const Context&) = nullptr;        // the same in small letters, where that saves a sheet
  std::string_view words::SheetWords::* note = nullptr;  // at the sheet's foot,
  std::string (*made_note)(const Context&) = nullptr;    // or one that tells of the building as it is now
  std::array<const SheetKind*, 3> under = {};            // best first

  const DrawingKind* drawing = nullptr;
};

}  // namespace stringcourse::sheet
