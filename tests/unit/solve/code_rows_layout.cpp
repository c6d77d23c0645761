// What a layout concedes where not every rule can be kept, and lintels as they are laid.
#include "code_rows.hpp"
#include "unit/walls/made_jobs.hpp"

namespace stringcourse::tests {

std::vector<CodeRow> layout_rows() {
  return {
      {"bolt-no-place", "/top/bolts",
       [] {
         Job job = shed();
         job.steel.bond_beams.clear();
         job.top.emplace().bolts = Bolts{"1/2 in", in(72), in(12), {}, {}, {}};
         return told_of(job);
       }},
      {"bare-stretch", "/outline/sides/0", [] { return told_of_case("bare-stretch", 0); }},
      {"bars-beyond-spacing", "", [] { return told_of_case("bars-beyond-spacing"); }},
      {"conceded-bar", "/outline/sides/0", [] { return told_of_case("conceded-bar"); }},
      {"conceded-bar-cells", "/outline/sides/0", [] { return told_of_case("conceded-bar-cells", 0); }},
      {"conceded-bar-spacing", "/outline/sides/1", [] { return told_of_case("conceded-bar-spacing"); }},
      {"conceded-bearing", "/outline/sides/3", [] { return told_of_case("conceded-bearing"); }},
      {"conceded-corner", "/outline/sides/0", [] { return told_of_case("conceded-corner"); }},
      {"conceded-face", "/outline/sides/1", [] { return told_of_case("conceded-face", 0); }},
      {"conceded-joints", "/outline/sides/0", [] { return told_of_case("conceded-joints"); }},
      {"conceded-lap", "/outline/sides/1", [] { return told_of_case("conceded-lap"); }},
      {"conceded-stack", "/outline/sides/0", [] { return told_of_case("conceded-stack"); }},
      {"cut-under-bearing", "", [] { return told_of_case("cut-under-bearing"); }},
      {"dowel-little-room", "/outline/sides/0", [] { return told_of_case("dowel-little-room", 20'000); }},
      {"lintel-bearing-joint", "/openings", [] { return told_of_case("lintel-bearing-joint"); }},
      {"lintel-bearing-plain", "/openings/0", [] { return told_of_case("lintel-bearing-plain"); }},
      {"lintel-bearing-short", "/openings/0", [] { return told_of_case("lintel-bearing-short"); }},
      {"lintel-floor", "/openings/0", [] { return told_of_case("lintel-floor"); }},
      {"not-proven", "", [] { return told_of_case("not-proven", 20'000); }},
      {"nothing-spans", "/openings/0", [] { return told_of_case("nothing-spans"); }},
      {"price-of-nothing", "/order/prices/0/article",
       [] {
         Job job = shed();
         job.order.emplace().prices = {{"moonlight", "2.45"}};
         job.order->currency = "USD";
         return told_of(job);
       }},
      {"brought-not-ordered", "/order/brought/0/article",
       [] {
         Job job = shed();
         job.order.emplace().brought = {{"moonlight", 3}};
         return told_of(job);
       }},
      {"runs-out", "/order/brought",
       [] {
         Job job = shed();
         job.order.emplace().brought = {{"unit/" + job.units.series + "/full", 3}};
         return told_of(job);
       }},
      {"weight-of-nothing", "/order/weights/0/article",
       [] {
         Job job = shed();
         job.order.emplace().weights = {{"moonlight", "3 lb"}};
         return told_of(job);
       }},
      {"piece-relaxed", "", [] { return told_of_case("piece-relaxed"); }},
      {"short-laps", "", [] { return told_of_case("short-laps"); }},
      {"lintel-soffit", "/openings/0",
       [] {
         Job job = shed();
         job.openings = {plain_hole("P", "AB", at("A", in(64)), in(40), in(56))};
         job.units.stocked = {UnitKind::Full, UnitKind::Half, UnitKind::Corner, UnitKind::BondBeam};
         return told_of(job);
       }},
  };
}

}  // namespace stringcourse::tests
