#include "walls/own_series.hpp"

#include <algorithm>
#include <array>

#include "catalogue/rules.hpp"

namespace stringcourse::walls {
namespace {

struct Size {
  std::string_view field;
  Length OwnSeries::* size;
};
constexpr std::array<Size, 4> kSizes{{{"full", &OwnSeries::full},
                                      {"half", &OwnSeries::half},
                                      {"thickness", &OwnSeries::thickness},
                                      {"height", &OwnSeries::height}}};

bool has_sizes(Draft& draft, const OwnSeries& own, const std::string& place) {
  bool sound = true;
  for (const Size& size : kSizes) {
    if (own.*size.size > Length()) continue;
    sound = false;
    refuse(draft, "series-size", place + "/" + std::string(size.field),
           fact("series-size", {size.field, own.id, as_asked(own.*size.size)}), fact("measure-one-unit"));
  }
  if (own.joint < Length() || own.half >= own.full) {
    sound = false;
    refuse(draft, "series-size", place,
           fact("series-half-or-joint", {own.id, as_asked(own.half), as_asked(own.full), as_asked(own.joint)}),
           fact("measure-whole-and-half"));
  }
  return sound;
}

Length by_tape(const Draft& draft, Length inches, Length millimetres) {
  return draft.job.tape == Tape::Inches ? inches : millimetres;
}

/// Least face shell of C90-06 by nominal thickness: 3/4, 1, 1 1/4 in for 4, 6, 8 in and more.
Length assumed_shell(Length thickness) {
  if (thickness < Length::inches(5)) return Length::sixteenths(12);
  return thickness < Length::inches(7) ? Length::inches(1) : Length::sixteenths(20);
}

Length quarter_piece(const Series& series) {
  const Length quarter = Length::nanometres(series.full_pitch().in_nanometres() / 4) - series.joint;
  return series.cut_step * quarter.whole_multiples(series.cut_step);
}

void copy_sizes(Series& series, const OwnSeries& own) {
  series.id = own.id;
  series.title = own.title.empty() ? own.id : own.title;
  series.full = own.full;
  series.half = own.half;
  series.thickness = own.thickness;
  series.height = own.height;
  series.joint = own.joint;
  series.full_cells = own.full_cells;
  series.half_cells = own.half_cells;
}

void complete_sizes(const Draft& draft, Series& series, const OwnSeries& own) {
  const Length tolerance = std::min(limit_of("joint-range", draft.job.tape), own.joint);
  series.half_high = own.half_high.value_or((own.height - own.joint).half_down());
  series.joint_tolerance = own.joint_tolerance.value_or(tolerance);
  series.cut_step = own.cut_step.value_or(tape_step(draft.job.tape));
  if (series.cut_step <= Length()) series.cut_step = tape_step(draft.job.tape);
  series.least_piece = own.least_piece.value_or(quarter_piece(series));
  series.short_lap_margin = own.short_lap_margin.value_or(limit_of("short-lap", draft.job.tape));
  series.relaxed_piece = std::min(by_tape(draft, Length::inches(2), Length::millimetres(50)), series.least_piece);
  series.face_shell = own.face_shell.value_or(assumed_shell(own.thickness));
}

}  // namespace

std::optional<Series> series_from_own(Draft& draft, const OwnSeries& own, const std::string& place) {
  if (!has_sizes(draft, own, place)) return std::nullopt;
  Series series;
  series.tape = draft.job.tape;
  copy_sizes(series, own);
  complete_sizes(draft, series, own);
  series.grouts = !own.full_cells.empty();
  series.made = own.made.empty() ? std::vector{UnitKind::Full, UnitKind::Half, UnitKind::Corner} : own.made;
  if (own.corner_leg) series.corner_set = CornerSet{own.full, *own.corner_leg, {}};
  if (own.corner_leg && own.made.empty()) series.made.push_back(UnitKind::CornerSet);
  series.source = {"measured on one unit by the user", Knowledge::Measured};
  return series;
}

}  // namespace stringcourse::walls
