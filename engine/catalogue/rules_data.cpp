// Named limits and cautions, each with its document, how it is known, and its limits. What they say: words/.
// Editions are named where the document's was seen; "edition not stated" where it was not.
// A caution stands beside the number that it belongs to; it never replaces the local code or a licensed engineer.
#include <algorithm>

#include "catalogue/rules.hpp"
#include "measure/fault.hpp"

namespace stringcourse {
namespace {

// A document has one name.
constexpr std::string_view kTms402 = "TMS 402", kTms602 = "TMS 602", kAci5301 = "ACI 530.1", kAci117 = "ACI 117",
                           kTek102b = "NCMA TEK 10-2B", kTek102d = "NCMA TEK 10-2D", kTek103 = "NCMA TEK 10-3",
                           kNhbc = "NHBC guide", kUfgs = "UFGS 04200", kMsjc = "MSJC-08", kCfr = "29 CFR 1926.706",
                           kIbc = "IBC", kIrc = "IRC", kTek34b = "NCMA TEK 3-4B", kOurs = "this program's limit",
                           kWarranty = "UK warranty practice (edition not stated)";

Source of(std::string_view document, std::string_view where, Knowledge knowledge) {
  return {std::string(document) + std::string(where), knowledge};
}
constexpr Length in(std::int64_t sixteenths) { return Length::sixteenths(sixteenths); }
constexpr Length ft(std::int64_t feet) { return Length::feet(feet); }
constexpr Length mm(std::int64_t millimetres) { return Length::millimetres(millimetres); }
constexpr Fahrenheit deg(std::int32_t degrees) { return {degrees}; }
constexpr MilesPerHour mph(std::int32_t miles) { return {miles}; }
constexpr Minutes minutes(std::int32_t count) { return {count}; }
constexpr Minutes hours(std::int32_t count) { return {count * 60}; }

/// A rule whose limits are no lengths.
Rule with_figures(std::string_view id, Source source, std::vector<RuleFigure> figures) {
  return {id, std::move(source), {}, {}, false, std::move(figures)};
}

/// Bond, joints and cuts.
std::vector<Rule> bond_rules() {
  return {
      {"running-bond", of(kTms402, ", definition of running bond (edition not stated)", Knowledge::SecondHand)},
      {"short-lap", of("common practice", "", Knowledge::CommonPractice), {in(8)}, {mm(12)}},
      {"least-piece", of("common practice", "", Knowledge::CommonPractice)},
      {"factory-end", of("common practice", "", Knowledge::CommonPractice)},
      {"joint-range",
       of("common practice; inside the site tolerance of head joints", "", Knowledge::CommonPractice),
       {in(2)},
       {mm(3)}},
      {"head-joint-tolerance", of(kAci5301, " art. 2.3.3.2, trade reprint of 1993", Knowledge::Seen), {in(4), in(6)}},
      {"bed-joint-tolerance", of(kAci5301, " art. 2.3.3.2, trade reprint of 1993", Knowledge::Seen), {in(2)}},
      {"first-bed", of(kTms602, " art. 3.3 (edition not stated)", Knowledge::SecondHand), {in(4), in(12), in(20)}},
      {"bed-level", of(kAci5301, " art. 2.3.3.2, trade reprint of 1993", Knowledge::Seen), {in(4), ft(10), in(8)}},
      {"footing-level", of(kAci117, " sec. 3, trade reprint of 1993", Knowledge::Seen), {in(8)}},
  };
}

/// Control joints.
std::vector<Rule> control_joint_rules() {
  return {
      {"control-joint-us", of(kTek102b, " table 1", Knowledge::SecondHand), {ft(25)}},
      {"control-joint-us-half-high", of(kTek102d, " (2019)", Knowledge::Seen), {in(64), ft(20)}},
      {"control-joint-us-steel", of(kTek102b, " table 1, note", Knowledge::Seen)},
      {"control-joint-us-corner", of(kTek102b, "", Knowledge::SecondHand)},
      {"control-joint-uk", of(kNhbc, " (edition not stated)", Knowledge::SecondHand), {mm(6000), mm(10)}},
      {"control-joint-horizontal-steel", of(kTek103, ", through a trade journal of 2003", Knowledge::SecondHand)},
      {"control-joint-bearing", of("common practice", "", Knowledge::CommonPractice)},
  };
}

/// Steel, grout and lintels.
std::vector<Rule> grout_rules() {
  return {
      {"cleanout-pour",
       of(kTms602, " art. 3.2 F (edition not stated)", Knowledge::SecondHand),
       {in(1024), in(48), in(512), ft(4), ft(5)}},
      {"grout-lift",
       of(kTms602, " art. 3.5 D (edition not stated)", Knowledge::SecondHand),
       {in(1024), in(2432), in(160), in(176)}},
      {"grout-again", of(kTms602, " art. 3.5 E (edition not stated)", Knowledge::SecondHand), {in(192)}, {}, false},
      with_figures("grout-again-when",
                   of("block makers' association, TEK 3-2A and its answer of November 2018", "", Knowledge::Seen),
                   {minutes(3), minutes(10)}),
      {"wire-lap", of(kTms602, ", unverified: check your code", Knowledge::Memory), {in(96)}, {mm(150)}, false},
      {"wire-stock",
       of("common practice; your yard may sell others", "", Knowledge::CommonPractice),
       {ft(10)},
       {mm(3000)},
       false},
      {"wire-leg",
       of("common practice; corners that you buy may have others", "", Knowledge::CommonPractice),
       {in(384)},
       {mm(600)},
       false},
      {"wire-stops", of("common practice", "", Knowledge::CommonPractice), {}, {}, false},
      {"grout-space",
       of(kUfgs, " table III for coarse grout; fine grout unverified: check your code", Knowledge::Seen)},
      {"grout-fins", of(kTms602, " art. 3.3 B (edition not stated)", Knowledge::SecondHand), {in(8)}},
      {"grout-pressure", of("140 lb/cu ft x 5.33 ft", "", Knowledge::Derived), {in(1024)}},
      {"bar-clearance", of(kTms402, " (edition not stated)", Knowledge::SecondHand), {in(4), in(8)}},
      {"bar-apart", of(kTms402, ", unverified: check your code", Knowledge::Memory), {in(16)}},
      {"bar-place", of(kTms602, " art. 3.4 (edition not stated)", Knowledge::SecondHand), {in(32)}},
      {"lintel-bearing", of(kMsjc, " sec. 2.3.3.3", Knowledge::Seen), {in(64)}},
      {"lintel-floor", of("common practice", "", Knowledge::CommonPractice)},
      {"lintel-soffit", of("common practice", "", Knowledge::CommonPractice)},
      {"lintel-spans", of("common practice", "", Knowledge::CommonPractice)},
      {"shores", of("common practice", "", Knowledge::CommonPractice)},
  };
}

/// Laps, and bars as pieces. What hangs on a bar's diameter or a stress stands in steel/laps.hpp.
std::vector<Rule> lap_rules() {
  return {
      {"lap-tms-402-to-2008",
       of(kMsjc, " sec. 3.3.3, as worked in a textbook; gamma over 1.0 from a published table of laps",
          Knowledge::Seen),
       {in(192)},
       {},
       false},
      {"lap-tms-402-from-2011",
       of(kTms402, " from 2011 on, unverified: check your code", Knowledge::Memory),
       {in(192)},
       {},
       false},
      {"lap-ibc",
       of(kIbc, " 2107, through a state's law text (780 CMR 2107.3)", Knowledge::Seen),
       {in(192)},
       {},
       false},
      {"lap-florida-2017",
       of("Florida Building Code 2017", " 2107.6, modifying TMS 402 sec. 6.1.5.1", Knowledge::Seen),
       {},
       {},
       false},
      {"lap-40-bars", of("UBC", ", for bars of grade 40 (edition not stated)", Knowledge::SecondHand), {}, {}, false},
      {"lap-48-bars",
       of(kUfgs, " and UBC, for bars of grade 60 (edition not stated)", Knowledge::SecondHand),
       {},
       {},
       false},
      {"lap-as-drawn", {}, {}, {}, false},
      {"bar-half-cell", of(kTms402, " ch. 6 (2013 or later)", Knowledge::Seen), {}, {}, false},
      {"bar-stock",
       of("common practice; your yard may sell others", "", Knowledge::CommonPractice),
       {ft(20)},
       {mm(6000)},
       false},
      {"bar-kerf",
       of("common practice; a shear takes nothing", "", Knowledge::CommonPractice),
       {in(2)},
       {mm(3)},
       false},
      {"bar-end-cover",
       of(kTms402, " sec. 6.1, unverified: check your code", Knowledge::Memory),
       {in(24)},
       {mm(40)},
       false},
  };
}

/// What readings of the ground are held against.
std::vector<Rule> ground_rules() {
  return {
      {"tapings-fit", of("common practice", "", Knowledge::CommonPractice), {}, {}, false},
      {"diagonals-alike",
       of("common practice: a 12-16-20 ft triangle within 1/2 in", "", Knowledge::CommonPractice),
       {in(8)},
       {mm(12)},
       false},
      {"place-in-plan",
       of(kTms602, " (edition not stated)", Knowledge::SecondHand),
       {in(8), ft(20), in(12)},
       {},
       false},
      {"level-loop", of("common practice", "", Knowledge::CommonPractice), {}, {}, false},
      {"grind-deepest", of(kOurs, "", Knowledge::CommonPractice), {in(4)}, {mm(6)}, false},
      {"rod-far", of(kOurs, "", Knowledge::CommonPractice), {ft(2)}, {mm(600)}, false},
      {"two-peg-test", of("common practice in surveying", "", Knowledge::CommonPractice), {}, {}, false},
      {"least-curb", of(kOurs, "", Knowledge::CommonPractice), {in(32)}, {mm(50)}, false},
      {"building-plausible", of(kOurs, "", Knowledge::CommonPractice), {ft(2), ft(2), ft(30), ft(300)}, {}, false},
      {"door-floor", of(kOurs, "", Knowledge::CommonPractice), {in(2)}, {mm(3)}, false},
  };
}

/// What the wall is held against while it is laid.
std::vector<Rule> laying_rules() {
  return {
      {"far-joints",
       of(kAci5301, " art. 2.3.3.2, trade reprint of 1993; in millimetres rounded", Knowledge::Seen),
       {in(4), in(6)},
       {mm(6), mm(10)},
       false},
      {"working-joints", of("common practice", "", Knowledge::CommonPractice), {in(4), in(8)}, {mm(7), mm(13)}, false},
      {"unit-size", of("ASTM C90", " (edition not stated)", Knowledge::SecondHand), {in(2)}, {}, false},
      {"head-joint-range", of(kTms602, " (edition not stated)", Knowledge::SecondHand), {in(2), in(12)}, {}, false},
      {"beds-to-height", of(kTms602, " (edition not stated)", Knowledge::SecondHand), {in(2)}, {mm(3)}, false},
      {"plumb-us", of(kTms602, " (edition not stated)", Knowledge::SecondHand), {in(4), ft(10), in(8)}, {}, false},
      {"line-us", of(kTms602, " (edition not stated)", Knowledge::SecondHand), {in(4), ft(10), in(8)}, {}, false},
      {"level-uk", of(kWarranty, "", Knowledge::SecondHand), {mm(10), mm(5000), mm(15)}, {}, false},
      {"plumb-uk", of(kWarranty, "", Knowledge::SecondHand), {mm(8), mm(5000), mm(12)}, {}, false},
      {"line-uk", of(kWarranty, "", Knowledge::SecondHand), {mm(8), mm(5000), mm(12)}, {}, false},
      {"bed-joint-uk", of(kWarranty, "", Knowledge::SecondHand), {mm(5)}, {}, false},
      {"found-far", of(kOurs, "", Knowledge::CommonPractice), {in(32), in(2)}, {}, false},
      {"dowel-little-room", of(kTms602, " art. 3.4 (edition not stated)", Knowledge::SecondHand), {in(8)}, {}, false},
      {"lap-apart", of(kTms402, " and TMS 602 (editions not stated)", Knowledge::SecondHand), {in(128)}, {}, false},
  };
}

/// What the job itself asks for, or how it is solved.
std::vector<Rule> job_rules() {
  return {
      {"bar-in-cell", {}, {}, {}, false}, {"bar-spacing", {}, {}, {}, false},  {"bearing-units", {}, {}, {}, false},
      {"corner-unit", {}, {}, {}, false}, {"piece-of-job", {}, {}, {}, false}, {"slab-room", {}, {}, {}, false},
      {"dowels-kept", {}, {}, {}, false}, {"dowels-stay", {}, {}, {}, false},  {"found-is-fixed", {}, {}, {}, false},
  };
}

/// What is bought.
std::vector<Rule> order_rules() {
  return {
      {"breakage", of("common practice; your yard may know better", "", Knowledge::CommonPractice)},
      {"mortar-joints", of("worked out from this layout", "", Knowledge::Derived), {}, {}, false},
      {"mortar-litres-a-block", of("Australian trade data", "", Knowledge::Seen), {}, {}, false},
      {"mortar-feet-a-hundred", of("NCMA TEK 4-2A", ", unverified: check your code", Knowledge::Memory), {}, {}, false},
      {"mortar-blocks-a-bag", of("common practice: what builders tell", "", Knowledge::CommonPractice), {}, {}, false},
      {"mortar-bags-a-hundred", of("suppliers' rules of thumb", "", Knowledge::Seen), {}, {}, false},
      {"mortar-blocks-a-cement-bag", of("suppliers' rules of thumb", "", Knowledge::Seen), {}, {}, false},
      {"mortar-premix-yield", of("trade page", "", Knowledge::SecondHand), {}, {}, false},
      {"mortar-rule-38", of("US Navy builder manual", "", Knowledge::Seen), {}, {}, false},
      {"mortar-proportions", of("textbook after ASTM C270", " (edition not stated)", Knowledge::Seen), {}, {}, false},
      {"mortar-water", of("common practice", ", unverified: check your code", Knowledge::Memory), {}, {}, false},
      {"grout-bag-small", of("trade pages", "", Knowledge::SecondHand), {}, {}, false},
      {"grout-bag-large", of("one maker's sheet", "", Knowledge::SecondHand), {}, {}, false},
      {"pace-beginners", of("common practice: what builders tell", "", Knowledge::CommonPractice), {}, {}, false},
      {"pace-mason",
       of("common practice; the US Navy builder manual has 56 in a man's day of 8 hours, a trade journal 90 to 163", "",
          Knowledge::CommonPractice),
       {},
       {},
       false},
      {"rise-a-day",
       of("BS 5628", " as a worked examination answer has it; no US limit was found", Knowledge::SecondHand),
       {mm(1500)},
       {},
       false},
      {"work-times", of(kOurs, ", a starting point: put in your own", Knowledge::CommonPractice), {}, {}, false},
      {"pace-unsure", of(kOurs, ", a starting point: time your own courses", Knowledge::CommonPractice), {}, {}, false},
      with_figures("mortar-life", of("a trade page after ASTM C270", "", Knowledge::SecondHand), {minutes(150)}),
      {"cure-before-pour", of("trade talk", "", Knowledge::CommonPractice), {ft(5)}, {mm(1500)}, false},
  };
}

/// What a code asks of the plate's bolts, beside what the drawings ask.
std::vector<Rule> top_rules() {
  return {
      {"sill-bolts", of(kIrc, " sec. R403.1.6 (edition not stated)", Knowledge::Seen), {ft(6), in(192)}, {}, false},
      {"roof-bolts",
       of(kIrc, " 2018, sec. R606.6.4.2.1 as read off a cut page", Knowledge::Seen),
       {ft(6), in(256), in(96)},
       {},
       false},
      {"bolt-grout",
       of("675 IAC 14-4.4-44", ", and half of a bolt up to 1 in thick", Knowledge::Seen),
       {in(32), in(24)},
       {mm(51), mm(38)},
       false},
      {"bolt-places", {}, {}, {}, false},
  };
}

/// Cold, heat and wind, in the order in which the card has them.
std::vector<Rule> weather_rules() {
  constexpr std::string_view kCold = " art. 1.8 (edition not stated), through trade articles";
  return {
      with_figures("cold-below-40", of(kTms602, kCold, Knowledge::SecondHand), {deg(40)}),
      with_figures("cold-40-to-32", of(kTms602, kCold, Knowledge::SecondHand),
                   {deg(40), deg(32), deg(40), deg(120), deg(100)}),
      with_figures("cold-32-to-25", of(kTms602, kCold, Knowledge::SecondHand), {deg(32), deg(25), deg(70), deg(120)}),
      with_figures("cold-25-to-20", of(kTms602, kCold, Knowledge::SecondHand), {deg(25), deg(20), deg(40), mph(15)}),
      with_figures("cold-20", of(kTms602, kCold, Knowledge::SecondHand), {deg(20), deg(32)}),
      with_figures("cold-ice", of("trade talk and magazine on cold weather", "", Knowledge::SecondHand), {deg(20)}),
      with_figures("cold-cover", of(kTms602, " art. 1.8, unverified: check your code", Knowledge::Memory),
                   {deg(40), deg(25), hours(24), deg(20), deg(32), hours(16)}),
      with_figures("hot-above", of("trade magazine, and a textbook of 2004", "", Knowledge::Seen),
                   {deg(100), deg(90), mph(8)}),
      with_figures("hot-mortar", of("trade magazine on masonry construction", "", Knowledge::Seen), {deg(120)}),
      {"hot-cure", of("trade magazine on masonry construction", "", Knowledge::Seen), {ft(2)}, {}, false},
      with_figures("wind-leave", of(kTek34b, "; gusts of 3 s, as measured", Knowledge::Seen), {mph(20), mph(35)}),
      {"wind-first-day", of(kTek34b, "", Knowledge::Seen), {}, {}, false},
  };
}

/// Where the work can hurt someone.
std::vector<Rule> cautions() {
  return {
      {"limited-access-zone", of(kCfr, "(a)", Knowledge::SecondHand), {ft(4)}},
      {"brace-over-8-ft", of(kCfr, "(b)", Knowledge::SecondHand), {ft(8)}},
      {"mortar-two-and-a-half-hours",
       of(kIbc, " sec. 2103 (edition not stated)", Knowledge::Seen),
       {},
       {},
       true,
       {minutes(150)}},
      {"saw-dust", of("common practice; local rules may ask for more", "", Knowledge::CommonPractice)},
      {"wet-cement", of("common practice", "", Knowledge::CommonPractice)},
      {"lifting", of("common practice", "", Knowledge::CommonPractice)},
      {"overhead-lines", of("common practice; ask the utility", "", Knowledge::CommonPractice)},
      {"engineer", of("common practice", "", Knowledge::CommonPractice)},
  };
}

std::vector<Rule> all_rules() {
  std::vector<Rule> all;
  for (const auto group : {bond_rules, control_joint_rules, grout_rules, lap_rules, ground_rules, laying_rules,
                           job_rules, order_rules, top_rules, weather_rules, cautions}) {
    for (Rule& rule : group()) all.push_back(std::move(rule));
  }
  return all;
}

}  // namespace

std::span<const Rule> catalogue_rules() {
  static const std::vector<Rule> kAll = all_rules();
  return kAll;
}

const Rule* find_rule(std::string_view id) {
  const auto found = std::ranges::find(catalogue_rules(), id, &Rule::id);
  return found == catalogue_rules().end() ? nullptr : &*found;
}

Length limit_of(std::string_view id, Tape tape, std::size_t which) {
  const Rule* rule = find_rule(id);
  ensure(rule != nullptr, "a rule is read that the table does not have");
  const std::vector<Length>& limits = rule->limits_for(tape);
  ensure(which < limits.size(), "a limit is read that the rule does not have");
  return limits[which];
}

namespace {

template <typename Sort>
Sort figure_of(std::string_view id, std::size_t which) {
  const Rule* rule = find_rule(id);
  ensure(rule != nullptr, "a rule is read that the table does not have");
  ensure(which < rule->figures.size(), "a limit is read that the rule does not have");
  const Sort* figure = std::get_if<Sort>(&rule->figures[which]);
  ensure(figure != nullptr, "a limit is read as what it is not");
  return *figure;
}

}  // namespace

Fahrenheit temperature_of(std::string_view id, std::size_t which) { return figure_of<Fahrenheit>(id, which); }
MilesPerHour wind_of(std::string_view id, std::size_t which) { return figure_of<MilesPerHour>(id, which); }
Minutes minutes_of(std::string_view id, std::size_t which) { return figure_of<Minutes>(id, which); }

Tolerance tolerance_of(std::string_view id, Tape tape) {
  return {limit_of(id, tape, 0), limit_of(id, tape, 1), limit_of(id, tape, 2)};
}

}  // namespace stringcourse
