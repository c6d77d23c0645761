#include "sheet/context.hpp"

#include <algorithm>
#include <set>

#include "bond/layout_parts.hpp"
#include "measure/digits.hpp"
#include "setout/cleanouts.hpp"
#include "setout/saw_list.hpp"

namespace stringcourse::sheet {
namespace {

constexpr std::string_view kCutMark = "CU";

/// Two letters: one alone is a corner's name.
Exception exception_of_kind(UnitKind kind) {
  switch (kind) {
    case UnitKind::Full:
    case UnitKind::Corner: return {};
    case UnitKind::Half: return {"HA", Fill::Tint};
    case UnitKind::CornerSet: return {"CS", Fill::None};
    case UnitKind::OpenEnd: return {"OE", Fill::None};
    case UnitKind::OpenBoth: return {"OB", Fill::None};
    case UnitKind::BondBeam: return {"BB", Fill::None};
    case UnitKind::BondBeamHalf: return {"BB", Fill::Tint};
    case UnitKind::Lintel:
    case UnitKind::LintelHalf: return {"LI", Fill::Hatch135};
    case UnitKind::Sash: return {"SA", Fill::None};
    case UnitKind::SashHalf: return {"SA", Fill::Tint};
    case UnitKind::Cleanout: return {"CO", Fill::None};
    case UnitKind::CleanoutHalf: return {"CO", Fill::Tint};
    case UnitKind::HalfHigh: return {"HH", Fill::None};
    case UnitKind::HalfHighHalf: return {"HH", Fill::Tint};
    case UnitKind::Solid: return {"SO", Fill::Grey};
  }
  return {};
}

}  // namespace

Exception exception_of(const Piece& piece) {
  if (bond::is_saw_cut(piece)) return {std::string(kCutMark), Fill::Hatch45};
  return exception_of_kind(piece.kind);
}

Context context_of(const Answer& answer, Paper paper, const words::Language& language, const Wanted& wanted) {
  const Building& building = answer.building;
  std::vector<LongName> names = long_names(building, {answer.job.name, answer.job.issued, answer.job.drawn_by});
  std::shared_ptr<const Building> renamed = with_short_names(building, names);
  Context context{renamed ? *renamed : building,
                  answer.layout,
                  answer,
                  words::words_of(building, language),
                  page_of(paper),
                  {},
                  std::move(names),
                  &building,
                  renamed,
                  language,
                  wanted};
  for (const setout::SawGroup& group : answer.saw_list.groups) {
    context.cuts.push_back({group.series, group.from, group.length});
  }
  return context;
}

std::string cut_mark(std::size_t index) {
  return std::string(kCutMark) + number_text(static_cast<long long>(index) + 1);
}

std::string cut_mark(const Context& context, int series, const Piece& piece) {
  const auto at = std::find_if(context.cuts.begin(), context.cuts.end(), [&](const CutMark& mark) {
    return mark.series == series && mark.from == piece.kind && mark.length == piece.length;
  });
  return at == context.cuts.end() ? std::string(kCutMark)
                                  : cut_mark(static_cast<std::size_t>(at - context.cuts.begin()));
}

std::string saw_text(const Context& context, Length length) {
  return context.tape() == Tape::Inches ? total_inches(length) : millimetres_text(length);
}

std::vector<std::string> legend_of(const Context& context, Shown shown) {
  const words::SheetWords& words = context.words;
  const std::string_view entries[] = {words.legend_half,     words.legend_bond_beam,  words.legend_lintel,
                                      words.legend_sash,     words.legend_open_end,   words.legend_open_both,
                                      words.legend_cleanout, words.legend_corner_set, words.legend_half_high,
                                      words.legend_solid};
  std::set<std::string, std::less<>> used;
  std::vector<bool> cuts(context.cuts.size());
  for (const Run& run : context.layout.runs) {
    if ((shown.wall >= 0 && run.wall != shown.wall) || (shown.course > 0 && run.course != shown.course)) continue;
    for (const Piece& piece : bond::pieces_of(context.layout, run)) {
      if (!shown.holds(piece)) continue;
      // On an elevation the beam's line tells its units: they are not lettered there.
      const bool under_line = shown.wall >= 0 && shown.course <= 0 &&
                              context.building.courses[static_cast<std::size_t>(run.course - 1)].bond_beam;
      if (const std::string mark = exception_of(piece).mark; !mark.empty() && !(under_line && mark == "BB"))
        used.insert(mark);
      if (!bond::is_saw_cut(piece)) continue;
      const std::string mark = cut_mark(context, context.wall(run.wall).series, piece);
      for (std::size_t index = 0; index < cuts.size(); ++index) {
        if (mark == cut_mark(index)) cuts[index] = true;
      }
    }
  }
  std::vector<std::string> legend;
  for (const std::string_view entry : entries) {
    if (used.contains(entry.substr(0, 2))) legend.emplace_back(entry);
  }
  const auto is_shown = [&](const setout::WallCleanout& one) {
    return (shown.wall < 0 || one.wall == shown.wall) && one.course == shown.course &&
           (!shown.part || shown.part->holds(one.along));
  };
  if (std::ranges::any_of(context.answer.cleanouts, is_shown)) legend.emplace_back(words.pour.cleanout_wedge);
  if (used.contains(kCutMark)) legend.emplace_back(words.legend_cut);
  for (std::size_t index = 0; index < cuts.size(); ++index) {
    if (cuts[index]) legend.push_back(cut_mark(index) + " = " + saw_text(context, context.cuts[index].length));
  }
  return legend;
}

std::string joined(const std::vector<std::string>& entries, std::string_view between) {
  std::string text;
  for (const std::string& entry : entries) {
    if (!text.empty()) text += between;
    text += entry;
  }
  return text;
}

std::vector<Part> parts_of(Length from, Length to, Length room, Length grid) {
  const Length whole = to - from;
  if (whole <= room) return {{from, to, 1, 1}};
  // Borders stand on the grid, so each part but the last is a whole number of steps; the last takes what is left.
  const std::int64_t steps = -(-whole).whole_multiples(grid),
                     fit = std::max<std::int64_t>(1, room.whole_multiples(grid));
  const std::int64_t count = (steps + fit - 1) / fit;
  std::vector<Part> parts;
  for (std::int64_t index = 1; index <= count; ++index) {
    const Length border = index == 1 ? from : parts.back().to;
    const Length next = index == count ? to : from + grid * (steps * index / count);
    parts.push_back({border, next, static_cast<int>(index), static_cast<int>(count)});
  }
  return parts;
}

std::string height_text(const Context& context, Length height) { return tape_text(height, context.tape()); }

std::string part_title(const words::SheetWords& words, const std::string& title, int index, int of) {
  return of == 1 ? title : words::fill_in(words.part_of, {title, number_text(index), number_text(of)});
}

std::string ranges_text(const std::vector<int>& numbers) {
  std::string text;
  for (std::size_t first = 0; first < numbers.size();) {
    std::size_t last = first;
    while (last + 1 < numbers.size() && numbers[last + 1] == numbers[last] + 1) ++last;
    if (last == first + 1) last = first;  // two in a row read better apart
    if (!text.empty()) text += ", ";
    text += number_text(numbers[first]);
    if (last > first) text += "-" + number_text(numbers[last]);
    first = last + 1;
  }
  return text;
}

}  // namespace stringcourse::sheet
