// US modular block, 16 x 8 in face nominal. Figures of all five series, each once:
//
//   face 15 5/8 x 7 5/8 in        NCMA TEK 2-1A (1995); TEK 14-1B fig. 1                     seen
//   widths 4 6 8 10 12 nominal    NCMA TEK 2-1A (1995)                                       seen
//   actual = nominal - 3/8 in     NCMA TEK 2-1A (1995)                                       seen
//   joint 3/8 in                  TMS 602 (edition not stated)                               second-hand
//   face shells, webs             ASTM C90-06 least sizes, drawn in NCMA TEK 14-1B fig. 1    seen
//   cells                         from length and webs: equal webs, cells alike              derived
//   special unit at a corner      US Navy builder manual ch. 8, where thickness is not half a unit: seen
//   parts of the corner sets      common practice
//   joint range, short lap        rules "joint-range" and "short-lap"                        common practice
//   least piece 4 in nominal, saw to 1/16, relaxed piece 2 in, half-high 4 in nominal, kinds made: common practice
#include "catalogue/data.hpp"
#include "catalogue/rules.hpp"

namespace stringcourse::data {
namespace {

constexpr Length kFull = Length::sixteenths(250);       // 15 5/8 in
constexpr Length kHalf = Length::sixteenths(122);       // 7 5/8 in
constexpr Length kHalfHigh = Length::sixteenths(58);    // 3 5/8 in
constexpr Length kJoint = Length::sixteenths(6);        // 3/8 in
constexpr Length kLeastPiece = Length::sixteenths(58);  // 4 in as laid
constexpr Length kCutStep = Length::sixteenths(1);
constexpr Length kRelaxedPiece = Length::inches(2);

constexpr Length kShell4 = Length::sixteenths(12);  // 3/4 in
constexpr Length kShell6 = Length::sixteenths(16);  // 1 in
constexpr Length kShell8 = Length::sixteenths(20);  // 1 1/4 in, and wider
constexpr Length kWeb6 = Length::sixteenths(16);    // 1 in, 6 and 8 in units
constexpr Length kWeb10 = Length::sixteenths(18);   // 1 1/8 in, and wider

/// Two cells between three equal webs.
std::vector<CellSpan> two_cells(Length web) {
  const Length cell = (kFull - 3 * web).half_down();
  return {{web, web + cell}, {kFull - web - cell, kFull - web}};
}

/// One cell between two webs.
std::vector<CellSpan> one_cell(Length web) { return {{web, kHalf - web}}; }

std::vector<UnitKind> grouted_kinds() {
  return {UnitKind::Full,         UnitKind::Half,     UnitKind::Corner,       UnitKind::OpenEnd,
          UnitKind::OpenBoth,     UnitKind::BondBeam, UnitKind::BondBeamHalf, UnitKind::Lintel,
          UnitKind::LintelHalf,   UnitKind::Sash,     UnitKind::SashHalf,     UnitKind::Cleanout,
          UnitKind::CleanoutHalf, UnitKind::HalfHigh, UnitKind::HalfHighHalf, UnitKind::Solid};
}

std::vector<UnitKind> grouted_kinds_with_corner_set() {
  std::vector<UnitKind> kinds = grouted_kinds();
  kinds.insert(kinds.begin() + 3, UnitKind::CornerSet);
  return kinds;
}

Source hollow_source() {
  return {
      "sizes: NCMA TEK 2-1A (1995); least face shells and webs: ASTM C90-06 as drawn in NCMA TEK 14-1B fig. 1; "
      "cells from equal webs; joint: TMS 602; limits and kinds: common practice",
      Knowledge::Seen};
}

/// What all five share; the rest is left for each to fill.
Series modular(std::string id, std::string title, Length thickness, Length face_shell) {
  Series series;
  series.id = std::move(id);
  series.title = std::move(title);
  series.tape = Tape::Inches;
  series.full = kFull;
  series.half = kHalf;
  series.thickness = thickness;
  series.height = kHalf;
  series.half_high = kHalfHigh;
  series.joint = kJoint;
  series.joint_tolerance = limit_of("joint-range", Tape::Inches);
  series.least_piece = kLeastPiece;
  series.short_lap_margin = limit_of("short-lap", Tape::Inches);
  series.cut_step = kCutStep;
  series.relaxed_piece = kRelaxedPiece;
  series.face_shell = face_shell;
  series.source = hollow_source();
  return series;
}

CornerSet corner_set(std::vector<std::string> parts) { return {kFull, kHalf, std::move(parts)}; }

Series us_4() {
  Series series = modular("us-4", "4 in block, 3 5/8 x 7 5/8 x 15 5/8 in", Length::sixteenths(58), kShell4);
  series.grouts = false;
  series.corner_set = corner_set({"4 in plain-end unit", "4 in filler"});  // 3 5/8 + 3/8 + 3 5/8 = 7 5/8
  series.made = {UnitKind::Full,     UnitKind::Half,         UnitKind::Corner, UnitKind::CornerSet,
                 UnitKind::HalfHigh, UnitKind::HalfHighHalf, UnitKind::Solid};
  return series;
}

Series us_6() {
  Series series = modular("us-6", "6 in block, 5 5/8 x 7 5/8 x 15 5/8 in", Length::sixteenths(90), kShell6);
  series.full_cells = two_cells(kWeb6);
  series.half_cells = one_cell(kWeb6);
  series.corner_set = corner_set({"6 in L-corner unit"});
  series.made = grouted_kinds_with_corner_set();
  return series;
}

Series us_8() {
  Series series = modular("us-8", "8 in block, 7 5/8 x 7 5/8 x 15 5/8 in", Length::sixteenths(122), kShell8);
  series.full_cells = two_cells(kWeb6);
  series.half_cells = one_cell(kWeb6);
  series.made = grouted_kinds();  // its thickness is half a unit: a plain corner unit does
  return series;
}

Series us_10() {
  Series series = modular("us-10", "10 in block, 9 5/8 x 7 5/8 x 15 5/8 in", Length::sixteenths(154), kShell8);
  series.full_cells = two_cells(kWeb10);
  series.half_cells = one_cell(kWeb10);
  series.corner_set = corner_set({"8 in unit", "2 in filler"});  // 7 5/8 + 3/8 + 1 5/8 = 9 5/8
  series.made = grouted_kinds_with_corner_set();
  return series;
}

Series us_12() {
  Series series = modular("us-12", "12 in block, 11 5/8 x 7 5/8 x 15 5/8 in", Length::sixteenths(186), kShell8);
  series.full_cells = two_cells(kWeb10);
  series.half_cells = one_cell(kWeb10);
  series.corner_set = corner_set({"8 in unit", "4 in filler"});  // 7 5/8 + 3/8 + 3 5/8 = 11 5/8
  series.made = grouted_kinds_with_corner_set();
  return series;
}

}  // namespace

std::vector<Series> us_series() { return {us_4(), us_6(), us_8(), us_10(), us_12()}; }

}  // namespace stringcourse::data
