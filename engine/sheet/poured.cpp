#include "sheet/poured.hpp"

#include "measure/digits.hpp"

namespace stringcourse::sheet {
namespace {

std::string place_text(const Context& context, Length along) {
  return both_forms(rounded_to(along, tape_step(context.tape())), context.tape());
}

/// "3/8\" toward A"; empty where the tape cannot show it.
std::string off_text(const Context& context, const Wall& wall, Length off) {
  if (rounded_to(magnitude(off), tape_step(context.tape())) == Length()) return {};
  const std::string& way = off < Length() ? wall.start_name : wall.end_name;
  return words::fill_in(context.words.poured_off, {tape_text(magnitude(off), context.tape()), way});
}

/// A row's name, and all that is said of it where the list's places stand.
std::vector<std::string> row_of(const std::string& name, std::string told) { return {"", name, std::move(told)}; }

/// One dowel of which something differs; no cells where nothing does.
std::vector<std::string> row_of(const Context& context, const steel::DowelNow& now) {
  const words::SheetWords& words = context.words;
  const steel::Dowel& poured = context.answer.dowels[now.dowel];
  const Wall& wall = context.wall(poured.wall);
  const std::string name = wall.name + " " + number_text(poured.number);
  const Length stands = now.found.value_or(poured.along);
  const bool moved = now.found && !off_text(context, wall, *now.found - poured.along).empty();
  const std::string found =
      moved ? words::fill_in(words.poured_found, {place_text(context, *now.found)}) : std::string();
  const std::string before = moved ? found + "; " : std::string();
  if (!now.bar) return row_of(name, before + std::string(words.poured_no_bar));
  const std::string off = off_text(context, wall, *now.bar - stands);
  if (off.empty()) return moved ? row_of(name, found) : std::vector<std::string>{};
  return row_of(name, before + words::fill_in(words.poured_bar, {place_text(context, *now.bar)}) + ", " + off);
}

}  // namespace

void add_poured_heading(Table& table, const Context& context) {
  if (context.answer.dowels_now) table.add_heading(std::string(context.words.poured_heading));
}

void add_poured_since(Table& table, const Context& context) {
  if (!context.answer.dowels_now) return;
  std::vector<std::vector<std::string>> rows;
  for (const steel::DowelNow& now : context.answer.dowels_now->dowels) {
    if (std::vector<std::string> row = row_of(context, now); !row.empty()) rows.push_back(std::move(row));
  }
  for (const steel::Dowel& bar : context.answer.dowels_now->without) {
    rows.push_back(row_of(context.wall(bar.wall).name,
                          place_text(context, bar.along) + ": " + std::string(context.words.poured_no_dowel)));
  }
  if (rows.empty()) return;
  table.add_heading(std::string(context.words.poured_since));
  for (std::vector<std::string>& row : rows) {
    row.resize(table.columns.size());
    table.add_row(row);
  }
}

}  // namespace stringcourse::sheet
