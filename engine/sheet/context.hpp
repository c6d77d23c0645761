#pragma once
// What every drawer needs to know, and the few questions they share. Internal to sheet/.
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "bond/layout.hpp"
#include "sheet/frame.hpp"
#include "sheet/names.hpp"
#include "sheet/sheets.hpp"
#include "walls/building.hpp"
#include "words/language.hpp"

namespace stringcourse::sheet {

/// The saw's groups by their marks: the first is C1.
struct CutMark {
  int series = 0;
  UnitKind from = UnitKind::Full;
  Length length;
};

struct Context {
  const Building& building;
  const Layout& layout;
  const Answer& answer;
  const words::SheetWords& words;
  Page page;
  std::vector<CutMark> cuts = {};  // in the order of the saw list
  std::vector<LongName> names = {};
  const Building* as_named = nullptr;  // the building with all its names, for labels that are not printed
  std::shared_ptr<const Building> renamed = nullptr;  // keeps `building` where names in it are too long for a sentence
  const words::Language& language = words::english();
  Wanted wanted = {};
  Tape tape() const { return building.tape; }
  words::Reader reader() const { return {tape(), language}; }
  bool has_readings() const { return !answer.job.readings.empty(); }
  const SettingOut* setting_out() const { return answer.job.setting_out ? &*answer.job.setting_out : nullptr; }
  const Wall& wall(int index) const { return building.walls[static_cast<std::size_t>(index)]; }
  std::string told(const Fact& fact) const { return words::told(fact, reader()); }
  std::vector<std::string> told(const std::vector<Fact>& facts) const {
    std::vector<std::string> texts;
    for (const Fact& fact : facts) texts.push_back(told(fact));
    return texts;
  }
};

/// A name on a drawing: as large as it fits, or its key in the sheet of names.
[[nodiscard]] inline Setting fitting_name(const Context& context, const std::string& name, TextRoom room,
                                          Lettering lettering, std::span<const Micrometres> heights) {
  return fitting_name(context.names, name, room, lettering, heights);
}

/// HA half, CU saw cut ...: only exceptions carry a mark and a fill; ordinary units none. Two letters: one is a
/// corner's name.
struct Exception {
  std::string mark;
  Fill fill = Fill::None;
};
[[nodiscard]] Exception exception_of(const Piece& piece);
[[nodiscard]] Context context_of(const Answer& answer, Paper paper, const words::Language& language = words::english(),
                                 const Wanted& wanted = {});

/// A stretch of a wall that one sheet shows.
struct Part {
  Length from, to;
  int index = 1, of = 1;
  bool first() const { return index == 1; }
  bool last() const { return index == of; }
  /// Marks on a match line belong to the part before it.
  bool holds(Length place) const { return (first() || place > from) && (last() || place <= to); }
};
/// What a sheet shows of the layout: one wall or all (-1), one course or all (0), all of it or a part.
struct Shown {
  int wall = -1;
  int course = 0;
  std::optional<Part> part = {};
  bool holds(const Piece& piece) const {
    return !part ||
           (piece.start.nearest_nanometre() < part->to && piece.start.nearest_nanometre() + piece.length > part->from);
  }
};
/// "HA half", "OE open end" ... of the marks that stand on what is shown, in a fixed order; then each cut's mark with
/// its length.
[[nodiscard]] std::vector<std::string> legend_of(const Context& context, Shown shown);
/// "CU1" of 0: the mark of the saw list's groups in their order.
[[nodiscard]] std::string cut_mark(std::size_t index);
/// "CU2": the mark of a cut's group in the saw list.
[[nodiscard]] std::string cut_mark(const Context& context, int series, const Piece& piece);
/// Total inches or millimetres: one short form, for the saw.
[[nodiscard]] std::string saw_text(const Context& context, Length length);
/// Entries as one text.
[[nodiscard]] std::string joined(const std::vector<std::string>& entries, std::string_view between);

/// The fewest equal parts, each at most `room` long, their borders on multiples of `grid`.
[[nodiscard]] std::vector<Part> parts_of(Length from, Length to, Length room, Length grid);

/// A wall over as many sheets as it takes.
struct WallParts {
  Scale scale;
  std::vector<Part> parts;
};

/// From a wall's own line to paper, seen from outside: its start at the right.
struct WallView {
  Scale scale;
  Micrometres right = 0;  // paper x of `from`
  Length from;
  bool from_inside = false;  // then it runs from left to right, and `right` is where it begins at the left
  Micrometres at(Length along) const {
    const Micrometres off = scale.paper(along) - scale.paper(from);
    return from_inside ? right + off : right - off;
  }
};

[[nodiscard]] inline const std::string& corner_name(const Context& context, int corner) {
  return context.building.corners[static_cast<std::size_t>(corner)].name;
}
/// Short text of a height from the datum.
[[nodiscard]] std::string height_text(const Context& context, Length height);
/// Title with " (2 of 3)" where there is more than one part.
[[nodiscard]] std::string part_title(const words::SheetWords& words, const std::string& title, int index, int of);
/// "1, 3, 5-8": whole numbers, rising, runs of three or more joined.
[[nodiscard]] std::string ranges_text(const std::vector<int>& numbers);

}  // namespace stringcourse::sheet
