// Metric block. Figures of all seven series, each once:
//
//   390 x 190 mm face, 12.5 to the m2     Australian block makers' trade data            common practice
//   440 x 215 mm work size, joint 10 mm   UK block makers' trade data                    common practice
//   thicknesses 90 140 190 290, 100 140 215 mm                                           common practice
//   joint 10 mm, saw to 1 mm, relaxed piece 50 mm                                        common practice
//   joint range, short lap                rules "joint-range" and "short-lap"            common practice
//   least piece 90 mm: a quarter of 400 less 10; 102 mm: of 450 less 10 (102.5)          derived, whole millimetres
//   half-high 90 mm, 102.5 mm: half a course less the joint                              derived
//   webs and face shells 30 mm, two cells alike (one in a half)                          assumed: measure your block
//   corner sets, kinds made                                                              common practice
#include "catalogue/data.hpp"
#include "catalogue/rules.hpp"

namespace stringcourse::data {
namespace {

constexpr Length kJoint = Length::millimetres(10);
constexpr Length kCutStep = Length::millimetres(1);
constexpr Length kRelaxedPiece = Length::millimetres(50);
constexpr Length kAssumedWeb = Length::millimetres(30);
constexpr Length kAssumedShell = Length::millimetres(30);

/// A face: what the units of one module share.
struct FaceSize {
  Length full, half, height, half_high, least_piece;
  const char* source;
};
constexpr FaceSize k390{Length::millimetres(390), Length::millimetres(190),
                        Length::millimetres(190), Length::millimetres(90),
                        Length::millimetres(90),  "face 390 x 190 mm: Australian block makers' trade data"};
constexpr FaceSize k440{Length::millimetres(440), Length::millimetres(215),
                        Length::millimetres(215), Length::nanometres(102'500'000),
                        Length::millimetres(102), "work size 440 x 215 mm: UK block makers' trade data"};

Series modular(std::string id, std::string title, const FaceSize& face, std::int64_t thickness) {
  Series series;
  series.id = std::move(id);
  series.title = std::move(title);
  series.tape = Tape::Millimetres;
  series.full = face.full;
  series.half = face.half;
  series.thickness = Length::millimetres(thickness);
  series.height = face.height;
  series.half_high = face.half_high;
  series.joint = kJoint;
  series.joint_tolerance = limit_of("joint-range", Tape::Millimetres);
  series.least_piece = face.least_piece;
  series.short_lap_margin = limit_of("short-lap", Tape::Millimetres);
  series.cut_step = kCutStep;
  series.relaxed_piece = kRelaxedPiece;
  series.face_shell = kAssumedShell;
  series.source = {std::string(face.source) + "; shells assumed, measure your block", Knowledge::CommonPractice};
  return series;
}

/// No known cell takes grout.
Series without_grout(Series series) {
  series.grouts = false;
  return series;
}

/// Two cells in a full unit and one in a half, between equal assumed webs.
Series with_assumed_cells(Series series) {
  const Length cell = (series.full - 3 * kAssumedWeb).half_down();
  series.full_cells = {{kAssumedWeb, kAssumedWeb + cell},
                       {series.full - kAssumedWeb - cell, series.full - kAssumedWeb}};
  series.half_cells = {{kAssumedWeb, series.half - kAssumedWeb}};
  series.cells_assumed = true;
  series.source.text += "; cells assumed, measure your block";
  return series;
}

Series with_corner_set(Series series, std::vector<std::string> parts) {
  series.corner_set = CornerSet{series.full, series.half, std::move(parts)};
  return series;
}

/// The kinds of a series, with the corner set where there is one.
Series made_in(Series series, std::vector<UnitKind> kinds) {
  series.made = {UnitKind::Full, UnitKind::Half, UnitKind::Corner};
  if (series.corner_set) series.made.push_back(UnitKind::CornerSet);
  series.made.insert(series.made.end(), kinds.begin(), kinds.end());
  return series;
}

std::vector<UnitKind> grouted_kinds() {
  return {UnitKind::OpenEnd,      UnitKind::BondBeam, UnitKind::BondBeamHalf, UnitKind::Lintel,
          UnitKind::LintelHalf,   UnitKind::Sash,     UnitKind::SashHalf,     UnitKind::Cleanout,
          UnitKind::CleanoutHalf, UnitKind::HalfHigh, UnitKind::HalfHighHalf};
}

/// UK coursing units are of brick height and keep no half course: no half-high kind is claimed.
std::vector<UnitKind> uk_grouted_kinds() {
  return {UnitKind::OpenEnd, UnitKind::BondBeam, UnitKind::BondBeamHalf, UnitKind::Lintel,      UnitKind::LintelHalf,
          UnitKind::Sash,    UnitKind::SashHalf, UnitKind::Cleanout,     UnitKind::CleanoutHalf};
}

Series au_90() {
  Series series = without_grout(modular("au-90", "90 mm block, 90 x 190 x 390 mm", k390, 90));
  series = with_corner_set(series, {"90 mm plain-end unit", "90 mm filler"});  // 90 + 10 + 90 = 190
  return made_in(series, {UnitKind::HalfHigh, UnitKind::HalfHighHalf, UnitKind::Solid});
}

Series au_140() {
  Series series = with_assumed_cells(modular("au-140", "140 mm block, 140 x 190 x 390 mm", k390, 140));
  return made_in(with_corner_set(series, {"140 mm L-corner unit"}), grouted_kinds());
}

Series au_190() {
  return made_in(with_assumed_cells(modular("au-190", "190 mm block, 190 x 190 x 390 mm", k390, 190)), grouted_kinds());
}

Series au_290() {
  Series series = with_assumed_cells(modular("au-290", "290 mm block, 290 x 190 x 390 mm", k390, 290));
  return made_in(with_corner_set(series, {"190 mm unit", "90 mm filler"}), grouted_kinds());  // 190 + 10 + 90 = 290
}

Series uk_100() {
  Series series = without_grout(modular("uk-100", "100 mm block, 100 x 215 x 440 mm", k440, 100));
  series = with_corner_set(series, {"100 mm plain-end unit", "105 mm filler"});  // 100 + 10 + 105 = 215
  return made_in(series, {UnitKind::Solid});
}

Series uk_140() {
  Series series = with_assumed_cells(modular("uk-140", "140 mm hollow block, 140 x 215 x 440 mm", k440, 140));
  return made_in(with_corner_set(series, {"140 mm L-corner unit"}), uk_grouted_kinds());
}

Series uk_215() {
  return made_in(with_assumed_cells(modular("uk-215", "215 mm hollow block, 215 x 215 x 440 mm", k440, 215)),
                 uk_grouted_kinds());
}

}  // namespace

std::vector<Series> metric_series() { return {au_90(), au_140(), au_190(), au_290(), uk_100(), uk_140(), uk_215()}; }

}  // namespace stringcourse::data
