// Named limits and cautions, each with its document and how it is known. A text is one sentence without its full stop.
// Editions are named where the document's was seen; "edition not stated" where it was not.
// A caution stands beside the number that it belongs to; it never replaces the local code or a licensed engineer.
#include <algorithm>

#include "catalogue/series.hpp"

namespace stringcourse {
namespace {

/// Bond, joints and cuts.
std::vector<Rule> bond_rules() {
  return {
      {"running-bond", "Units overlap the course below by at least a quarter of a unit's length",
       {"TMS 402, definition of running bond (edition not stated)", Knowledge::SecondHand}},
      {"short-lap", "Head joints of two courses stand half a unit apart; nearer by more than 1/2 in (12 mm) is a short lap",
       {"common practice", Knowledge::CommonPractice}},
      {"least-piece", "No piece is shorter than a quarter unit as laid: 3 5/8 in in 16 in block, 90 mm in 390 mm block, 102 mm in "
       "440 mm block", {"common practice", Knowledge::CommonPractice}},
      {"factory-end", "No saw-cut end shows at a jamb, a free end or a control joint", {"common practice", Knowledge::CommonPractice}},
      {"joint-range", "Head joints of a run are all alike and stay within 1/8 in (3 mm) of the design joint unless the job says "
       "otherwise", {"common practice; inside the site tolerance of head joints", Knowledge::CommonPractice}},
      {"head-joint-tolerance", "A head joint may be 1/4 in thinner or 3/8 in thicker than its design thickness",
       {"ACI 530.1 art. 2.3.3.2, trade reprint of 1993", Knowledge::Seen}},
      {"bed-joint-tolerance", "A bed joint may be 1/8 in thinner or thicker than its design thickness",
       {"ACI 530.1 art. 2.3.3.2, trade reprint of 1993", Knowledge::Seen}},
      {"first-bed", "The first bed joint is 1/4 to 3/4 in thick, up to 1 1/4 in where the first course is fully grouted on concrete",
       {"TMS 602 art. 3.3 (edition not stated)", Knowledge::SecondHand}},
      {"bed-level", "Bed joints, and the top of a bearing wall, are level within 1/4 in in 10 ft and 1/2 in in all",
       {"ACI 530.1 art. 2.3.3.2, trade reprint of 1993", Knowledge::Seen}},
      {"footing-level", "The top of a footing that carries masonry is within 1/2 in of its design height",
       {"ACI 117 sec. 3, trade reprint of 1993", Knowledge::Seen}},
  };
}

/// Control joints.
std::vector<Rule> control_joint_rules() {
  return {
      {"control-joint-us", "Control joints stand no further apart than the lesser of 1 1/2 times the wall's height and 25 ft",
       {"NCMA TEK 10-2B table 1", Knowledge::SecondHand}},
      {"control-joint-us-half-high", "In walls of 4 in high units control joints stand no further apart than the lesser of 1 1/2 times "
       "the wall's height and 20 ft", {"NCMA TEK 10-2D (2019)", Knowledge::Seen}},
      {"control-joint-us-steel", "That spacing goes with horizontal steel of at least 0.025 sq in for each foot of the wall's height",
       {"NCMA TEK 10-2B table 1, note", Knowledge::Seen}},
      {"control-joint-us-corner", "From a corner or a junction the first control joint stands within half that spacing",
       {"NCMA TEK 10-2B", Knowledge::SecondHand}},
      {"control-joint-uk", "Movement joints in concrete block stand no further apart than 6 m and are 10 mm wide",
       {"NHBC guide (edition not stated)", Knowledge::SecondHand}},
      {"control-joint-horizontal-steel", "Where horizontal steel of at least 0.002 of the net section runs through, no control joint is "
       "needed", {"NCMA TEK 10-3, through a trade journal of 2003", Knowledge::SecondHand}},
      {"control-joint-bearing", "A control joint stays a half unit clear of a lintel's bearing",
       {"common practice", Knowledge::CommonPractice}},
  };
}

/// Steel, grout and lintels.
std::vector<Rule> grout_rules() {
  return {
      {"cleanout-pour", "Grout pours higher than 5'-4\" need cleanouts of at least 3 in at their foot, at most 32 in apart where the "
       "wall is grouted solid; some codes ask for them above 4 or 5 ft",
       {"TMS 602 art. 3.2 F (edition not stated)", Knowledge::SecondHand}},
      {"grout-lift", "Grout goes in by lifts of at most 5'-4\", or 12'-8\" where the masonry has cured 4 h, the slump is kept at 10 to "
       "11 in and no bond beam stands between", {"TMS 602 art. 3.5 D (edition not stated)", Knowledge::SecondHand}},
      {"grout-space", "The clear opening that a cell shares with the cell below is at least the grout-space table's size for the pour's "
       "height", {"UFGS 04200 table III for coarse grout; fine grout unverified: check your code", Knowledge::Seen}},
      {"grout-fins", "Mortar that stands out 1/2 in or more into a cell is taken off before grouting",
       {"TMS 602 art. 3.3 B (edition not stated)", Knowledge::SecondHand}},
      {"grout-pressure", "Fresh grout pushes like a liquid: some 750 lb on each square foot at the foot of a 5'-4\" lift; close "
       "cleanouts and brace their covers", {"140 lb/cu ft x 5.33 ft", Knowledge::Derived}},
      {"bar-clearance", "Between a bar and the unit there is at least 1/4 in of fine grout or 1/2 in of coarse grout",
       {"TMS 402 (edition not stated)", Knowledge::SecondHand}},
      {"bar-apart", "Between bars side by side there is at least a bar's thickness of grout, and at least 1 in",
       {"TMS 402, unverified: check your code", Knowledge::Memory}},
      {"bar-place", "Along the wall a vertical bar stands within 2 in of its place",
       {"TMS 602 art. 3.4 (edition not stated)", Knowledge::SecondHand}},
      {"lintel-bearing", "A lintel bears at least 4 in at each end; your drawings may ask for more",
       {"MSJC-08 sec. 2.3.3.3", Knowledge::Seen}},
      {"lintel-floor",
       "Lintel units have a floor: where a bar passes it is broken out as wide as the cell below; bond-beam units are "
       "counted on as open underneath, and are holed too where they are not",
       {"common practice", Knowledge::CommonPractice}},
      {"lintel-soffit",
       "Bond-beam units over an opening are open underneath: a form closes their soffit before grout goes in, and is "
       "shored like the lintel",
       {"common practice", Knowledge::CommonPractice}},
      {"lintel-spans",
       "What spans an opening takes bars along it: lintel units, or bond-beam units where the yard stocks no lintel "
       "units; a plain unit carries nothing there",
       {"common practice", Knowledge::CommonPractice}},
      {"shores",
       "A lintel of block units stays on its shores until your engineer, or your drawings, let them go; no number of "
       "days is claimed here",
       {"common practice", Knowledge::CommonPractice}},
  };
}

/// Where the work can hurt someone.
std::vector<Rule> cautions() {
  return {
      {"limited-access-zone", "Before a wall is begun, keep people out of a zone as wide as the wall's height plus 4 ft along its whole "
       "unscaffolded side", {"29 CFR 1926.706(a)", Knowledge::SecondHand}},
      {"brace-over-8-ft", "A wall over 8 ft high is braced, unless otherwise adequately supported, until its permanent support is in place; "
       "a scaffold is no brace, and wind limits come from the brace's designer", {"29 CFR 1926.706(b)", Knowledge::SecondHand}},
      {"mortar-two-and-a-half-hours", "Mortar is thrown away 2 1/2 hours after it was first mixed",
       {"IBC sec. 2103 (edition not stated)", Knowledge::Seen}},
      {"saw-dust", "Dust from sawing block holds silica, which scars the lungs: cut wet or with extraction and wear a fitted respirator",
       {"common practice; local rules may ask for more", Knowledge::CommonPractice}},
      {"wet-cement", "Wet mortar and grout burn skin and eyes: wear gloves, boots and eye protection and wash splashes off at once",
       {"common practice", Knowledge::CommonPractice}},
      {"lifting", "Block is heavy: share the lift or use a machine, and use open-end units or shorter bars rather than lift block over "
       "tall bars", {"common practice", Knowledge::CommonPractice}},
      {"overhead-lines", "Before bars, poles or a pump boom are raised, look up for power lines and keep the utility's distance",
       {"common practice; ask the utility", Knowledge::CommonPractice}},
      {"engineer", "Sizes and spacings of bars, laps, lintels, footings and bracing come from your drawings, the local code or a licensed "
       "engineer; this sheet places and counts, and does not say that a wall is safe", {"common practice", Knowledge::CommonPractice}},
  };
}

/// What is bought.
std::vector<Rule> order_rules() {
  return {
      {"breakage",
       "Where the job says nothing, 5 % more units are ordered than are laid and sawn, each kind rounded up; 5 to 12 % "
       "are named in the trade",
       {"common practice; your yard may know better", Knowledge::CommonPractice}},
  };
}

std::vector<Rule> all_rules() {
  std::vector<Rule> all;
  for (const auto group : {bond_rules, control_joint_rules, grout_rules, order_rules, cautions}) {
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

}  // namespace stringcourse
