// Bars, grout spaces and clearances. Figures, each once:
//
//   #3 to #11 diameters   ASTM A615, table of bars, two reprints that agree (edition not stated)          seen
//   N and H bars          nominal diameter is the bar's number in millimetres                             common practice
//   grout space, coarse   UFGS 04200 table III (edition not stated): 5, 8, 12 and 24 ft pours             seen
//   grout space, fine     TMS 602, grout space table (its number changes with the edition)                memory
//   bar to unit 1/4, 1/2  TMS 402 (edition not stated), through a trade magazine                          second-hand
#include <algorithm>
#include <array>

#include "catalogue/series.hpp"

namespace stringcourse {
namespace {

struct InchBar {
  const char* name;
  std::int64_t thousandths;  // of an inch
};
constexpr std::array kInchBars{InchBar{"#3", 375},  InchBar{"#4", 500},  InchBar{"#5", 625},
                               InchBar{"#6", 750},  InchBar{"#7", 875},  InchBar{"#8", 1000},
                               InchBar{"#9", 1128}, InchBar{"#10", 1270}, InchBar{"#11", 1410}};

struct MetricBar {
  const char* name;
  std::int64_t millimetres;
};
constexpr std::array kMetricBars{MetricBar{"N12", 12}, MetricBar{"N16", 16}, MetricBar{"N20", 20}, MetricBar{"H10", 10},
                                 MetricBar{"H12", 12}, MetricBar{"H16", 16}, MetricBar{"H20", 20}};

constexpr Length kThousandth = Length::nanometres(25'400);

std::vector<Bar> all_bars() {
  std::vector<Bar> bars;
  for (const InchBar& bar : kInchBars) {
    bars.push_back({bar.name, bar.thousandths * kThousandth, {"ASTM A615, table of bars", Knowledge::Seen}});
  }
  for (const MetricBar& bar : kMetricBars) {
    bars.push_back({bar.name, Length::millimetres(bar.millimetres),
                    {"nominal diameter of metric deformed bars", Knowledge::CommonPractice}});
  }
  return bars;
}

GroutSpace coarse(std::int64_t pour_feet, std::int64_t across_halves, std::int64_t along_halves) {
  return {Grout::Coarse, Length::feet(pour_feet), Length::sixteenths(8 * across_halves), Length::sixteenths(8 * along_halves),
          {"UFGS 04200 table III: clear cell, net of mortar fins and bars", Knowledge::Seen}};
}

GroutSpace fine(std::int64_t pour_inches, std::int64_t across_halves, std::int64_t along_halves) {
  return {Grout::Fine, Length::inches(pour_inches), Length::sixteenths(8 * across_halves),
          Length::sixteenths(8 * along_halves),
          {"TMS 602, grout space table, fine grout; unverified: check your code", Knowledge::Memory}};
}

/// Sizes in halves of an inch, across the wall x along it.
std::vector<GroutSpace> all_grout_spaces() {
  return {fine(12, 3, 4),   fine(64, 4, 6),  fine(152, 5, 6),  fine(288, 6, 6),
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

Length bar_clearance(Grout grout) { return Length::sixteenths(grout == Grout::Fine ? 4 : 8); }

}  // namespace stringcourse
