// The unit series against published counts and the modular identities of the trade.
#include <gtest/gtest.h>

#include <algorithm>

#include "catalogue/series.hpp"

namespace stringcourse {
namespace {

const Series& series_of(std::string_view id) {
  const Series* found = find_series(id);
  EXPECT_NE(found, nullptr) << id;
  return *found;
}

Length inches_and_sixteenths(std::int64_t inches, std::int64_t sixteenths) {
  return Length::inches(inches) + Length::sixteenths(sixteenths);
}

TEST(Catalogue, twelve_series_stand_in_their_fixed_order) {
  std::vector<std::string> ids;
  for (const Series& series : catalogue_series()) ids.push_back(series.id);
  EXPECT_EQ(ids, (std::vector<std::string>{"us-4", "us-6", "us-8", "us-10", "us-12", "au-90", "au-140", "au-190",
                                           "au-290", "uk-100", "uk-140", "uk-215"}));
  EXPECT_EQ(find_series("us-5"), nullptr);
}

TEST(Catalogue, two_halves_and_a_joint_make_a_full_unit_in_every_series) {
  for (const Series& series : catalogue_series()) EXPECT_EQ(series.full_pitch(), 2 * series.pitch()) << series.id;
}

// Units and Modules, NCMA TEK 2-1A: 7 5/8 x 7 5/8 x 15 5/8 in; width nominal less 3/8 in.
TEST(Catalogue, us_units_have_their_published_sizes) {
  EXPECT_EQ(series_of("us-8").full, inches_and_sixteenths(15, 10));
  EXPECT_EQ(series_of("us-8").height, inches_and_sixteenths(7, 10));
  const std::pair<const char*, int> kNominal[] = {{"us-4", 4}, {"us-6", 6}, {"us-8", 8}, {"us-10", 10}, {"us-12", 12}};
  for (const auto& [id, width] : kNominal) {
    EXPECT_EQ(series_of(id).thickness + inches_and_sixteenths(0, 6), Length::inches(width)) << id;
    EXPECT_EQ(series_of(id).joint, inches_and_sixteenths(0, 6)) << id;
  }
}

TEST(Catalogue, n_full_blocks_measure_sixteen_n_less_three_eighths) {
  const Series& block = series_of("us-8");
  for (int n = 1; n <= 60; ++n) {
    EXPECT_EQ(n * block.full + (n - 1) * block.joint, Length::inches(16 * n) - inches_and_sixteenths(0, 6));
  }
}

TEST(Catalogue, an_opening_of_n_half_modules_is_eight_n_and_three_eighths) {
  const Series& block = series_of("us-8");
  for (int n = 1; n <= 20; ++n) {
    // n half units taken out leave their n joints and one more.
    EXPECT_EQ(n * block.half + (n + 1) * block.joint, Length::inches(8 * n) + inches_and_sixteenths(0, 6));
  }
}

TEST(Catalogue, the_top_of_course_k_is_eight_k_inches_above_the_first_bed) {
  const Series& block = series_of("us-8");
  for (int k = 1; k <= 15; ++k) EXPECT_EQ(k * (block.joint + block.height), Length::inches(8 * k));
  EXPECT_EQ(block.joint + block.half_high, Length::inches(4));
}

TEST(Catalogue, a_us_face_lays_1125_blocks_on_a_thousand_square_feet) {
  // 112.5 blocks x (16 x 8 in) = 100 ft2 = 14,400 in2; times 10 to stay whole.
  const Series& block = series_of("us-8");
  const std::int64_t along = block.full_pitch().in_nanometres() / Length::inches(1).in_nanometres();
  const std::int64_t up = (block.height + block.joint).in_nanometres() / Length::inches(1).in_nanometres();
  EXPECT_EQ(1125 * along * up, 10 * 100 * 144);
}

TEST(Catalogue, metric_faces_lay_their_published_counts_on_a_square_metre) {
  // 12.5 x 400 x 200 mm = 1,000,000 mm2 exactly. 1,000,000 / (450 x 225) = 9.8765...: 9.877 to three places.
  const auto module_area = [](const Series& series) {
    return (series.full_pitch().in_nanometres() / 1'000'000) *
           ((series.height + series.joint).in_nanometres() / 1'000'000);
  };
  EXPECT_EQ(125 * module_area(series_of("au-190")), 10 * 1'000'000);
  const std::int64_t area = module_area(series_of("uk-100"));
  EXPECT_EQ((1'000'000'000 + area / 2) / area, 9877);
}

TEST(Catalogue, limits_follow_the_bond_model) {
  EXPECT_EQ(series_of("us-8").least_lap(), Length::sixty_fourths(250));  // 3 29/32 in = 250/64
  EXPECT_EQ(series_of("au-190").least_lap(), Length::nanometres(97'500'000));
  EXPECT_EQ(series_of("uk-140").least_lap(), Length::millimetres(110));
  EXPECT_EQ(series_of("us-8").least_piece, inches_and_sixteenths(3, 10));
  EXPECT_EQ(series_of("au-190").least_piece, Length::millimetres(90));
  EXPECT_EQ(series_of("uk-140").least_piece, Length::millimetres(102));
  EXPECT_EQ(series_of("us-8").short_lap_below(), inches_and_sixteenths(7, 8));
  for (const Series& series : catalogue_series()) {
    const bool inches = series.tape == Tape::Inches;
    EXPECT_EQ(series.joint_tolerance, inches ? inches_and_sixteenths(0, 2) : Length::millimetres(3)) << series.id;
    EXPECT_EQ(series.cut_step, inches ? Length::sixteenths(1) : Length::millimetres(1)) << series.id;
    EXPECT_EQ(series.relaxed_piece, inches ? Length::inches(2) : Length::millimetres(50)) << series.id;
    EXPECT_EQ(series.short_lap_margin, inches ? inches_and_sixteenths(0, 8) : Length::millimetres(12)) << series.id;
  }
}

TEST(Catalogue, face_shells_are_the_least_of_c90_06) {
  EXPECT_EQ(series_of("us-4").face_shell, inches_and_sixteenths(0, 12));
  EXPECT_EQ(series_of("us-6").face_shell, Length::inches(1));
  for (const char* id : {"us-8", "us-10", "us-12"})
    EXPECT_EQ(series_of(id).face_shell, inches_and_sixteenths(1, 4)) << id;
}

TEST(Cells, the_eight_inch_unit_has_the_cells_of_one_inch_webs) {
  const Series& block = series_of("us-8");
  const std::vector<CellSpan> full{{Length::inches(1), inches_and_sixteenths(7, 5)},
                                   {inches_and_sixteenths(8, 5), inches_and_sixteenths(14, 10)}};
  EXPECT_EQ(block.full_cells, full);
  EXPECT_EQ(block.half_cells, (std::vector<CellSpan>{{Length::inches(1), inches_and_sixteenths(6, 10)}}));
}

TEST(Cells, the_ten_inch_unit_has_webs_of_one_and_an_eighth) {
  const Series& block = series_of("us-10");
  const Length web = inches_and_sixteenths(1, 2);
  ASSERT_EQ(block.full_cells.size(), 2u);
  EXPECT_EQ(block.full_cells[0].from, web);
  EXPECT_EQ(block.full_cells[1].from - block.full_cells[0].to, web);
  EXPECT_EQ(block.full - block.full_cells[1].to, web);
}

void expect_inside_and_symmetric(const std::vector<CellSpan>& cells, Length unit, const std::string& id) {
  Length front;
  for (std::size_t i = 0; i < cells.size(); ++i) {
    EXPECT_GT(cells[i].from, front) << id;  // a web stands before it
    EXPECT_GT(cells[i].to, cells[i].from) << id;
    front = cells[i].to;
    EXPECT_EQ(unit - cells[i].to, cells[cells.size() - 1 - i].from) << id;
  }
  EXPECT_GT(unit, front) << id;
}

TEST(Cells, every_unit_that_grouts_has_cells_inside_it_and_alike_from_both_ends) {
  for (const Series& series : catalogue_series()) {
    EXPECT_EQ(series.grouts, !series.full_cells.empty() && !series.half_cells.empty()) << series.id;
    expect_inside_and_symmetric(series.full_cells, series.full, series.id);
    expect_inside_and_symmetric(series.half_cells, series.half, series.id);
  }
  for (const char* id : {"us-4", "au-90", "uk-100"}) EXPECT_FALSE(series_of(id).grouts) << id;
}

TEST(Cells, two_eight_inch_units_half_a_unit_apart_share_one_to_six_and_five_eighths) {
  // A unit from 0, and one of the course above from -8 in: its second cell lies over the first cell of the unit below.
  const Series& block = series_of("us-8");
  const CellSpan below = block.full_cells[0];
  const Length shift = -block.pitch();
  const CellSpan above{block.full_cells[1].from + shift, block.full_cells[1].to + shift};
  const CellSpan shared{std::max(below.from, above.from), std::min(below.to, above.to)};
  EXPECT_EQ(shared, (CellSpan{Length::inches(1), inches_and_sixteenths(6, 10)}));
  EXPECT_EQ((shared.from + shared.to).half_down(), inches_and_sixteenths(3, 13));  // the natural line of a bar
}

TEST(Cells, natural_bar_lines_stand_at_the_quarter_points_of_the_nominal_length) {
  for (const Series& series : catalogue_series()) {
    if (!series.grouts) continue;
    const Length shared_from = std::max(series.full_cells[0].from, series.full_cells[1].from - series.pitch());
    const Length shared_to = std::min(series.full_cells[0].to, series.full_cells[1].to - series.pitch());
    EXPECT_EQ(2 * (shared_from + shared_to), series.full_pitch() - 2 * series.joint) << series.id;  // 4 c = U + j - 2 j
  }
}

TEST(Cells, metric_cells_are_marked_as_assumed_and_published_ones_are_not) {
  for (const Series& series : catalogue_series()) {
    EXPECT_EQ(series.cells_assumed, series.grouts && series.tape == Tape::Millimetres) << series.id;
    const bool says_so = series.source.text.find("cells assumed, measure your block") != std::string::npos;
    EXPECT_EQ(says_so, series.cells_assumed) << series.id;
  }
}

TEST(CornerSets, stand_where_the_thickness_is_not_half_a_unit_and_make_a_short_leg_of_one_half) {
  for (const Series& series : catalogue_series()) {
    EXPECT_EQ(series.corner_set.has_value(), series.thickness != series.half) << series.id;
    if (!series.corner_set) continue;
    EXPECT_EQ(series.corner_set->long_leg, series.full) << series.id;
    EXPECT_EQ(series.corner_set->short_leg, series.half) << series.id;
    EXPECT_FALSE(series.corner_set->parts.empty()) << series.id;
  }
}

TEST(CornerSets, fillers_and_their_joint_close_the_corner_exactly) {
  // "<n> in filler": n nominal is n - 3/8 actual; "<n> mm filler" is actual. unit + joint + filler = the missing
  // length.
  const auto filler_of = [](const Series& series) {
    const std::string& part = series.corner_set->parts.back();
    const std::size_t space = part.find(' ');
    const std::int64_t size = std::stoll(part.substr(0, space));
    return part.substr(space + 1, 2) == "in" ? Length::inches(size) - series.joint : Length::millimetres(size);
  };
  int checked = 0;
  for (const Series& series : catalogue_series()) {
    if (!series.corner_set || series.corner_set->parts.size() < 2) continue;
    const Length small = std::min(series.thickness, series.half), large = std::max(series.thickness, series.half);
    EXPECT_EQ(small + series.joint + filler_of(series), large) << series.id;
    ++checked;
  }
  EXPECT_EQ(checked, 6);  // us-4 us-10 us-12 au-90 au-290 uk-100
}

TEST(Kinds, every_series_is_made_in_fulls_halves_and_corners_and_a_corner_set_where_it_has_one) {
  for (const Series& series : catalogue_series()) {
    const auto makes = [&](UnitKind kind) { return std::ranges::count(series.made, kind) == 1; };
    EXPECT_TRUE(makes(UnitKind::Full) && makes(UnitKind::Half) && makes(UnitKind::Corner)) << series.id;
    EXPECT_EQ(makes(UnitKind::CornerSet), series.corner_set.has_value()) << series.id;
    for (const UnitKind kind :
         {UnitKind::BondBeam, UnitKind::Lintel, UnitKind::Sash, UnitKind::Cleanout, UnitKind::OpenEnd}) {
      EXPECT_EQ(makes(kind), series.grouts) << series.id << " " << kind_name(kind);
    }
  }
}

TEST(Kinds, names_and_kinds_are_one_to_one) {
  std::set<std::string_view> names;
  for (int i = 0; i < kKindCount; ++i) names.insert(kind_name(static_cast<UnitKind>(i)));
  EXPECT_EQ(names.size(), static_cast<std::size_t>(kKindCount));
  EXPECT_EQ(kind_name(UnitKind::Full), "full");
  EXPECT_EQ(kind_name(UnitKind::BondBeamHalf), "bond-beam-half");
  EXPECT_EQ(kind_name(UnitKind::HalfHighHalf), "half-high-half");
  EXPECT_EQ(kind_name(UnitKind::Solid), "solid");
}

}  // namespace
}  // namespace stringcourse
