// Openings, control joints and steel that cannot be where they are asked for, or that are told of.
#include "code_rows.hpp"
#include "unit/walls/made_jobs.hpp"

namespace stringcourse::tests {
namespace {

Told shed_with(void (*change)(Job&)) {
  Job job = shed();
  change(job);
  return told_of(job);
}
/// 40 x 56 in, its near jamb 64 in from A.
Opening hole() { return plain_hole("P", "AB", at("A", in(64)), in(40), in(56)); }
Told hole_with(void (*change)(Job&, Opening&)) {
  Job job = shed();
  job.openings = {hole()};
  change(job, job.openings[0]);
  return told_of(job);
}
Told bars_with(void (*change)(Job&, Bars&)) {
  Job job = shed();
  job.steel.bars.emplace().size = "#5";
  change(job, *job.steel.bars);
  return told_of(job);
}
/// Bars in block of one's own, 4 in thick, whose shells leave 1 3/8 in: a 1/2 in bar has 7/16 in of grout either way.
Told thin_bars(const char* size = "#4") {
  Job job = shed();
  OwnSeries own;
  own.id = "mine", own.full = in16(15, 10), own.half = own.height = in16(7, 10);
  own.thickness = in(4), own.joint = in16(0, 6), own.face_shell = in16(1, 5);
  own.full_cells = find_series("us-6")->full_cells, own.half_cells = find_series("us-6")->half_cells;
  job.units.own_series = {own}, job.units.series = "mine";
  Bars& bars = job.steel.bars.emplace();
  bars.size = size, bars.corners = true, bars.grout = Grout::Coarse;
  return told_of(job);
}
DimensionedBar bar_at(Length place) { return {"AB", {"A", actual(place), std::nullopt}}; }
Told joint_at(Length place, Length hole_from) {
  Job job = shed();
  job.control_joints.placed = {{"AB", at("A", place)}};
  job.openings = {plain_hole("P", "AB", at("A", hole_from), in(40), in(56))};
  return told_of(job);
}
void keep_dowel(Job& job, Length place) {
  Reading reading;
  reading.id = "d";
  reading.dowel = DowelReading{"AB", {}, place, in16(3, 13)};
  job.readings = {reading}, job.steel.kept_dowels = {"d"};
}

}  // namespace

std::vector<CodeRow> wall_rows() {
  return {
      {"opening-level", "/openings/0/sill_course",
       [] { return hole_with([](Job&, Opening& opening) { opening.sill_course = 12; }); }},
      {"opening-size", "/openings/0",
       [] { return hole_with([](Job&, Opening& opening) { opening.masonry->width = actual({}); }); }},
      {"opening-leaves-wall", "/openings/0/place",
       [] { return hole_with([](Job&, Opening& opening) { opening.place.at = nominal(in(280)); }); }},
      {"pier-short", "/openings/0/place",
       [] { return hole_with([](Job&, Opening& opening) { opening.place.at = nominal(in(10)); }); }},
      {"openings-overlap", "/openings/1/place",
       [] {
         return hole_with([](Job& job, Opening&) {
           job.openings.push_back(plain_hole("Q", "AB", at("A", in(96)), in(40), in(56)));
         });
       }},
      {"opening-on-junction", "/openings/0/place",
       [] {
         return hole_with([](Job& job, Opening&) { job.interior_walls = {inner_wall("I", "AB", at("A", in(96)))}; });
       }},
      {"sill-off-course", "/openings/0/sill",
       [] { return hole_with([](Job&, Opening& opening) { opening.sill = nominal(in(20)); }); }},
      {"head-off-course", "/openings/0",
       [] { return hole_with([](Job&, Opening& opening) { opening.masonry->height = nominal(in(60)); }); }},
      {"side-room", "/openings/0/overhead/side_room",
       [] {
         return hole_with([](Job&, Opening& opening) {
           opening.masonry.reset();
           opening.overhead = OverheadSize{in(96), in(56), {}, {}, in(120), {}};
         });
       }},
      {"head-room", "/openings/0/overhead/head_room",
       [] {
         return hole_with([](Job&, Opening& opening) {
           opening.masonry.reset();
           opening.overhead = OverheadSize{in(96), in(56), {}, {}, {}, in(96)};
         });
       }},
      {"no-lintel", "/openings/0",
       [] { return hole_with([](Job&, Opening& opening) { opening.masonry->height = nominal(in(96)); }); }},
      {"lintel-bearing", "/openings/0/lintel/bearing",
       [] {
         return hole_with([](Job&, Opening& opening) { opening.lintel = Lintel{LintelMake::OnePiece, 1, in(3), {}}; });
       }},
      {"lintel-deep", "/openings/0/lintel",
       [] {
         return hole_with([](Job&, Opening& opening) { opening.lintel = Lintel{LintelMake::BuiltUp, 9, {}, {}}; });
       }},
      {"lintel-piece-of-units", "/openings/0/lintel",
       [] { return hole_with([](Job&, Opening& opening) { opening.lintel.emplace().weight = "640 lb"; }); }},
      {"lintel-half-high", "/openings/0/lintel",
       [] { return hole_with([](Job& job, Opening&) { job.heights.half_high_courses = {8}; }); }},
      {"lintel-overhangs", "/openings/0/lintel",
       [] {
         return hole_with([](Job&, Opening& opening) {
           opening.place = at("A", in(16)), opening.lintel = Lintel{LintelMake::OnePiece, 1, in(24), {}};
         });
       }},
      {"lintel-collides", "/openings/1/place",
       [] {
         return hole_with([](Job& job, Opening& opening) {
           opening.lintel = Lintel{LintelMake::OnePiece, 1, in(24), {}};
           job.openings.push_back(plain_hole("Q", "AB", at("A", in(112)), in(40), in(72)));
         });
       }},

      {"control-joint-off-grid", "/control_joints/placed/0/place/at", [] { return joint_at(in(99), in(160)); }},
      {"control-joint-blocked", "/control_joints/placed/0/place/at", [] { return joint_at(in(176), in(160)); }},
      {"control-joint-near-lintel", "/control_joints/placed/0/place/at", [] { return joint_at(in(96), in(104)); }},
      {"control-joint-rule", "/control_joints/rule",
       [] { return shed_with([](Job& job) { job.control_joints.rule = JointRule::Us; }); }},
      {"control-joint-no-place", "/outline/sides/0",
       [] {
         Job job = job_with(outline_of({{240}}, false));
         job.control_joints.rule = JointRule::Us;
         job.openings = {plain_hole("P", "AB", at("A", in(32)), in(176), in(56))};
         return told_of(job);
       }},

      {"bond-beam-not-stocked", "/steel/bond_beams",
       [] {
         return shed_with([](Job& job) {
           job.steel.bond_beams = {12}, job.units.stocked = {UnitKind::Full, UnitKind::Half, UnitKind::Corner};
         });
       }},
      {"bond-beam-half-high", "/steel/bond_beams",
       [] { return shed_with([](Job& job) { job.steel.bond_beams = {5}, job.heights.half_high_courses = {5}; }); }},
      {"bar-too-thick", "/steel/bars/size", [] { return thin_bars("#6"); }},
      {"lap-below-equation", "/steel/lap",
       [] {
         return bars_with([](Job& job, Bars& bars) {
           bars.size = "#6", bars.corners = true, job.steel.lap = Lap{LapRule::FortyEightBars, {}, {}, {}};
         });
       }},
      {"bar-longer-than-stock", "/steel/bar_stock",
       [] {
         return bars_with([](Job& job, Bars& bars) {
           bars.corners = true, job.steel.lap = Lap{LapRule::FortyBars, {}, {}, {}}, job.steel.bar_stock = in(24);
         });
       }},
      {"lap-no-room", "/steel/lap",
       [] {
         return shed_with([](Job& job) {
           job.steel.bond_beams = {12}, job.steel.beam_bars = BeamBars{"#4", 1, {}};
           job.steel.lap = Lap{LapRule::AsDrawn, {}, {}, in(276)};
         });
       }},
      {"wire-none", "/steel/wire_every", [] { return shed_with([](Job& job) { job.steel.wire_every = 40; }); }},
      {"bar-other-system", "/steel/bars/size", [] { return bars_with([](Job&, Bars& bars) { bars.size = "N16"; }); }},
      {"trusses-beyond-wall", "/top/trusses/0/place",
       [] {
         return shed_with([](Job& job) {
           job.top.emplace().bolts = Bolts{"1/2 in", in(72), in(12), {}, {}, {}};
           job.top->trusses = {{"AB", at("A", in(400)), in(24), in(2)}};
         });
       }},
      {"wire-every", "/steel/wire_every", [] { return shed_with([](Job& job) { job.steel.wire_every = 0; }); }},
      {"pour-order", "/steel/pour_tops/1", [] { return shed_with([](Job& job) { job.steel.pour_tops = {8, 4}; }); }},
      {"cleanout-pour", "/steel/pour_tops",
       [] { return bars_with([](Job& job, Bars&) { job.steel.pour_tops = {9}; }); }},
      {"pour-too-tall", "/steel/pour_tops",
       [] { return bars_with([](Job& job, Bars&) { job.heights.courses = 40; }); }},
      {"bolt-ends", "/top/bolts/end_least",
       [] {
         return shed_with([](Job& job) { job.top.emplace().bolts = Bolts{"1/2 in", in(72), in(12), in(13), {}, {}}; });
       }},
      {"bar-size", "/steel/bars/size", [] { return bars_with([](Job&, Bars& bars) { bars.size = "#12"; }); }},
      {"bar-spacing", "/steel/bars/spacing", [] { return bars_with([](Job&, Bars& bars) { bars.spacing = in(7); }); }},
      {"spacing-off-cells", "/steel/bars/spacing",
       [] { return bars_with([](Job&, Bars& bars) { bars.spacing = in(30); }); }},
      {"bars-no-cell", "/steel/bars", [] { return bars_with([](Job& job, Bars&) { job.units.series = "us-4"; }); }},
      {"bar-clearance-across", "/outline/sides/0", [] { return thin_bars(); }},
      {"corner-bar-clearance", "/outline/sides/0", [] { return thin_bars(); }},
      {"bar-no-room", "/openings/0",
       [] {
         return bars_with([](Job& job, Bars& bars) {
           bars.jambs = true;
           job.openings = {hole(), plain_hole("Q", "AB", at("A", in(108)), in(40), in(56))};
         });
       }},
      {"bar-off-masonry", "/steel/bars/dimensioned/0/place/at",
       [] { return bars_with([](Job&, Bars& bars) { bars.dimensioned = {bar_at(in(292))}; }); }},
      {"bar-under-lintel", "/openings/0",
       [] {
         return bars_with([](Job& job, Bars& bars) {
           bars.jambs = true, job.openings = {hole()};
           job.openings[0].lintel = Lintel{LintelMake::OnePiece, 1, {}, {}};
         });
       }},
      {"bar-beside-corner-bar", "/steel/bars/dimensioned/0/place/at",
       [] { return bars_with([](Job&, Bars& bars) { bars.corners = true, bars.dimensioned = {bar_at(in(4))}; }); }},
      {"bar-in-corner", "/steel/bars/dimensioned/0/place/at",
       [] { return bars_with([](Job&, Bars& bars) { bars.dimensioned = {bar_at(in(2))}; }); }},
      {"dimensioned-bar-serves", "/steel/bars/dimensioned/0",
       [] {
         return bars_with([](Job& job, Bars& bars) {
           bars.jambs = true, job.openings = {hole()}, bars.dimensioned = {bar_at(in16(59, 5))};
         });
       }},
      {"bars-too-near", "/steel/bars/dimensioned/1",
       [] { return bars_with([](Job&, Bars& bars) { bars.dimensioned = {bar_at(in(83)), bar_at(in(84))}; }); }},
      {"dimensioned-bar-moved", "/steel/bars/dimensioned/0",
       [] {
         return bars_with(
             [](Job& job, Bars& bars) { bars.dimensioned = {bar_at(in16(83, 13))}, keep_dowel(job, in16(83, 9)); });
       }},
      {"kept-dowel-not-placed", "/steel/kept_dowels/0",
       [] { return bars_with([](Job& job, Bars& bars) { bars.corners = true, keep_dowel(job, in16(4, 5)); }); }},
  };
}

}  // namespace stringcourse::tests
