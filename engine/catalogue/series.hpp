#pragma once
// Unit series: the published sizes of the blocks, their cells and corner sets. Data, never rules of walls.
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "measure/length.hpp"
#include "measure/notation.hpp"

namespace stringcourse {

/// What a piece of masonry is bought as. Order matters only for stable printing.
enum class UnitKind {
  Full,
  Half,
  Corner,
  CornerSet,
  OpenEnd,
  OpenBoth,
  BondBeam,
  BondBeamHalf,
  Lintel,
  LintelHalf,
  Sash,
  SashHalf,
  Cleanout,
  CleanoutHalf,
  HalfHigh,
  HalfHighHalf,
  Solid,
};
inline constexpr int kKindCount = 17;
/// Name in job files and answers: "full", "half", "corner", "corner-set", "open-end", "open-both", "bond-beam",
/// "bond-beam-half", "lintel", "lintel-half", "sash", "sash-half", "cleanout", "cleanout-half", "half-high",
/// "half-high-half", "solid".
[[nodiscard]] std::string_view kind_name(UnitKind kind);
/// A trough with a floor: it spans an opening without a form, and a bar or grout passes only where its floor is broken
/// out. Lintel units are made so. SOURCE common practice, rule "lintel-floor".
[[nodiscard]] constexpr bool is_closed_underneath(UnitKind kind) {
  return kind == UnitKind::Lintel || kind == UnitKind::LintelHalf;
}
/// A unit that takes bars along the wall, and so may span an opening once it is filled.
[[nodiscard]] constexpr bool takes_bars_along(UnitKind kind) {
  return is_closed_underneath(kind) || kind == UnitKind::BondBeam || kind == UnitKind::BondBeamHalf;
}

/// A clear interval between two webs, along the face, from the unit's left end.
struct CellSpan {
  Length from;
  Length to;
  friend bool operator==(const CellSpan&, const CellSpan&) = default;
};

/// How a figure is known (see the data file's header for each word).
enum class Knowledge { Seen, SecondHand, Reproduced, Derived, Computed, CommonPractice, Memory, Measured };
[[nodiscard]] std::string_view knowledge_name(Knowledge knowledge);

/// A source for a figure: document, edition, table; and how it is known.
struct Source {
  std::string text;
  Knowledge knowledge = Knowledge::CommonPractice;
  friend bool operator==(const Source&, const Source&) = default;
};

/// An L-unit or a unit with a filler that makes a corner whose short leg is one half unit.
struct CornerSet {
  Length long_leg;                 // along the side that runs through: one full unit
  Length short_leg;                // along the side that butts: b = half unit
  std::vector<std::string> parts;  // "L-corner unit"; or "8 in unit" + "4 in filler"; none: a corner unit
  friend bool operator==(const CornerSet&, const CornerSet&) = default;
};

/// One unit series. All sizes are actual sizes. full = unit length U, half = half-unit length h, joint j:
/// U + j = 2 (h + j) in every series of the catalogue; a user's own series may differ only where the job reader allows
/// it.
struct Series {
  std::string id;     // "us-8", "au-190", "uk-100"; a user's own: the id given in the job
  std::string title;  // "8 in block, 7 5/8 x 7 5/8 x 15 5/8 in"
  Tape tape = Tape::Inches;
  Length full;
  Length half;
  Length thickness;
  Length height;
  Length half_high;  // height of a half-high course's units
  Length joint;
  Length joint_tolerance;   // default joint range: joint +- this (1/8 in; 3 mm)
  Length least_piece;       // default: a quarter unit as laid (3 5/8 in; 90, 102 mm)
  Length short_lap_margin;  // 1/2 in; 12 mm
  Length cut_step;          // a make-up piece is cut to the nearest of these: 1/16 in; 1 mm
  Length relaxed_piece;     // 2 in; 50 mm: the least piece when rule 2 must be relaxed
  Length face_shell;
  bool grouts = true;          // false: no known cell takes grout; bars are refused
  bool cells_assumed = false;  // "assumed, measure your block"
  std::vector<CellSpan> full_cells;
  std::vector<CellSpan> half_cells;
  std::optional<CornerSet> corner_set;  // empty: plain units make the corner, b = thickness
  std::vector<UnitKind> made;           // kinds that exist in this series (what a yard may stock)
  Source source;
  friend bool operator==(const Series&, const Series&) = default;

  Length pitch() const { return half + joint; }  // half-unit pitch: 8 in, 200 mm, 225 mm
  Length full_pitch() const { return full + joint; }
  /// Least lawful lap: a quarter of the actual unit length (running bond, TMS 402). Rounded down to a nanometre.
  Length least_lap() const { return Length::nanometres(full.in_nanometres() / 4); }
  /// Head joints in neighbouring courses closer than this are a short lap.
  Length short_lap_below() const { return pitch() - short_lap_margin; }
};

/// The catalogue, in a fixed order: us-4 us-6 us-8 us-10 us-12, au-90 au-140 au-190 au-290, uk-100 uk-140 uk-215.
[[nodiscard]] std::span<const Series> catalogue_series();
[[nodiscard]] const Series* find_series(std::string_view id);

/// ASTM A615 bars and metric bars: "#3".."#11", "N12".."N20", "H10".. in the catalogue's data file.
struct Bar {
  std::string name;
  Length diameter;
  Source source;
};
[[nodiscard]] std::span<const Bar> catalogue_bars();
[[nodiscard]] const Bar* find_bar(std::string_view name);

enum class Grout { Fine, Coarse };

/// Least clear size of a cell for a grout pour of at most `pour`: across the wall x along it.
struct GroutSpace {
  Grout grout;
  Length pour_at_most;
  Length across;
  Length along;
  Source source;
};
[[nodiscard]] std::span<const GroutSpace> grout_spaces();
/// Clear space between bar and unit: rule "bar-clearance".
[[nodiscard]] Length bar_clearance(Grout grout);

}  // namespace stringcourse
