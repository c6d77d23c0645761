// Bars and grout spaces. Figures, each once:
//
//   #3 to #11 diameters   ASTM A615, table of bars, two reprints that agree (edition not stated)          seen
//   N and H bars          nominal diameter is the bar's number in millimetres                  common practice
//   grout space, coarse   UFGS 04200 table III (edition not stated): 5, 8, 12 and 24 ft pours             seen
//   grout space, fine     TMS 602, grout space table (its number changes with the edition)                memory
//   bar to unit           rule "bar-clearance"
//   mass of #3 to #11     ASTM A615, table of bars, two reprints that agree (edition not stated)          seen
//   mass of N and H bars  7850 kg/m3 x nominal area, to a gram                                            derived
//   gamma, TMS 402        1.0 to #5: MSJC-08 sec. 3.3.3 as worked in a textbook, seen; 1.3 #6 and #7, 1.5 from #8 on:
//                         from a published table of laps, which they give to its printed digits             reproduced
//   gamma, Florida        1.0 to #5, 1.04 #6 and #7, 1.2 from #8 on: Florida Building Code 2017, 2107.6  seen
#include <algorithm>
#include <array>

#include "catalogue/rules.hpp"
#include "catalogue/series.hpp"
#include "catalogue/steel.hpp"

namespace stringcourse {
namespace {

struct InchBar {
  const char* name;
  std::int64_t thousandths;  // of an inch
  std::int64_t grams;        // for each metre
};
constexpr std::array kInchBars{InchBar{"#3", 375, 560},   InchBar{"#4", 500, 994},    InchBar{"#5", 625, 1552},
                               InchBar{"#6", 750, 2235},  InchBar{"#7", 875, 3042},   InchBar{"#8", 1000, 3973},
                               InchBar{"#9", 1128, 5060}, InchBar{"#10", 1270, 6404}, InchBar{"#11", 1410, 7907}};

struct MetricBar {
  const char* name;
  std::int64_t millimetres;
  std::int64_t grams;  // for each metre
};
constexpr std::array kMetricBars{MetricBar{"N12", 12, 888}, MetricBar{"N16", 16, 1578}, MetricBar{"N20", 20, 2466},
                                 MetricBar{"H10", 10, 617}, MetricBar{"H12", 12, 888},  MetricBar{"H16", 16, 1578},
                                 MetricBar{"H20", 20, 2466}};

constexpr Length kThousandth = Length::nanometres(25'400);

std::vector<Bar> all_bars() {
  std::vector<Bar> bars;
  for (const InchBar& bar : kInchBars) {
    bars.push_back({bar.name, bar.thousandths * kThousandth, {"ASTM A615, table of bars", Knowledge::Seen}});
  }
  for (const MetricBar& bar : kMetricBars) {
    bars.push_back({bar.name,
                    Length::millimetres(bar.millimetres),
                    {"nominal diameter of metric deformed bars", Knowledge::CommonPractice}});
  }
  return bars;
}

GroutSpace coarse(std::int64_t pour_feet, std::int64_t across_halves, std::int64_t along_halves) {
  return {Grout::Coarse,
          Length::feet(pour_feet),
          Length::sixteenths(8 * across_halves),
          Length::sixteenths(8 * along_halves),
          {"UFGS 04200 table III: clear cell, net of mortar fins and bars", Knowledge::Seen}};
}

GroutSpace fine(std::int64_t pour_inches, std::int64_t across_halves, std::int64_t along_halves) {
  return {Grout::Fine,
          Length::inches(pour_inches),
          Length::sixteenths(8 * across_halves),
          Length::sixteenths(8 * along_halves),
          {"TMS 602, grout space table, fine grout; unverified: check your code", Knowledge::Memory}};
}

/// Sizes in halves of an inch, across the wall x along it.
std::vector<GroutSpace> all_grout_spaces() {
  return {fine(12, 3, 4),  fine(64, 4, 6),  fine(152, 5, 6),  fine(288, 6, 6),
          coarse(5, 5, 6), coarse(8, 6, 6), coarse(12, 6, 6), coarse(24, 6, 8)};
}

}  // namespace

std::span<const Bar> catalogue_bars() {
  static const std::vector<Bar> kAll = all_bars();
  return kAll;
}

const Bar* find_bar(std::string_view name) {
  const auto found = std::ranges::find(catalogue_bars(), name, &Bar::name);
  return found == catalogue_bars().end() ? nullptr : &*found;
}

std::span<const GroutSpace> grout_spaces() {
  static const std::vector<GroutSpace> kAll = all_grout_spaces();
  return kAll;
}

std::int64_t grams_per_metre(const Bar& bar) {
  for (const InchBar& one : kInchBars) {
    if (one.name == bar.name) return one.grams;
  }
  for (const MetricBar& one : kMetricBars) {
    if (one.name == bar.name) return one.grams;
  }
  return 0;
}

LapCoefficient lap_coefficient(const Bar& bar) {
  const auto off = [&](const InchBar& one) { return magnitude(one.thousandths * kThousandth - bar.diameter); };
  const std::int64_t nearest = std::ranges::min(kInchBars, {}, off).thousandths;
  if (nearest <= 625) return {1'300, 1'300};
  if (nearest <= 875) return {1'690, 1'352};
  return {1'950, 1'560};
}

Length bar_clearance(Grout grout) { return limit_of("bar-clearance", Tape::Inches, grout == Grout::Fine ? 0 : 1); }

}  // namespace stringcourse
