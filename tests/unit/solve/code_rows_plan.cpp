// Units, outline, courses and interior walls that cannot be, or that are told of.
#include "code_rows.hpp"
#include "unit/walls/made_jobs.hpp"

namespace stringcourse::tests {
namespace {

Told shed_with(void (*change)(Job&)) {
  Job job = shed();
  change(job);
  return told_of(job);
}
Told outlined(std::initializer_list<Leg> legs) { return told_of(job_with(outline_of(legs))); }

OwnSeries own_of(const std::string& id) {
  OwnSeries own;
  own.id = id;
  own.full = in16(15, 10), own.half = own.thickness = own.height = in16(7, 10), own.joint = in16(0, 6);
  return own;
}

}  // namespace

std::vector<CodeRow> plan_rows() {
  return {
      {"unknown-series", "/units/series", [] { return shed_with([](Job& job) { job.units.series = "none"; }); }},
      {"series-size", "/units/own_series/0/height",
       [] {
         return shed_with([](Job& job) {
           job.units.own_series = {own_of("mine")}, job.units.series = "mine";
           job.units.own_series[0].height = {};
         });
       }},
      {"kind-not-made", "/units/stocked/1",
       [] {
         return shed_with([](Job& job) {
           job.units.own_series = {own_of("mine")}, job.units.series = "mine";
           job.units.stocked = {UnitKind::Full, UnitKind::Lintel, UnitKind::Half, UnitKind::Corner};
         });
       }},
      {"full-not-stocked", "/units/stocked",
       [] { return shed_with([](Job& job) { job.units.stocked = {UnitKind::Half}; }); }},
      {"kind-replaced-by-cut", "/units/stocked",
       [] { return shed_with([](Job& job) { job.units.stocked = {UnitKind::Full, UnitKind::Corner}; }); }},
      {"corner-set-not-stocked", "/units/stocked",
       [] {
         return shed_with([](Job& job) {
           job.units.series = "us-12";
           job.units.stocked = {UnitKind::Full, UnitKind::Half, UnitKind::Corner};
         });
       }},
      {"joint-range", "/units/joint_least", [] { return shed_with([](Job& job) { job.units.joint_least = in(1); }); }},
      {"least-piece", "/units/least_piece", [] { return shed_with([](Job& job) { job.units.least_piece = in(9); }); }},
      {"cut-length", "/units/cuts/0", [] { return shed_with([](Job& job) { job.units.cuts = {{in(16)}}; }); }},

      {"outline-short", "/outline/sides", [] { return outlined({{96}, {96}, {96}}); }},
      {"outline-turns", "/outline/sides", [] { return outlined({{96}, {96}, {96}, {96, Turn::Left}}); }},
      {"outline-open", "/outline/sides/3/length", [] { return outlined({{288}, {240}, {280}, {240}}); }},
      {"corner-set-does-not-close", "/outline/sides/0/series",
       [] { return told_of_case("corner-set-does-not-close"); }},
      {"outline-crosses", "/outline/sides/5",
       [] { return outlined({{400}, {200}, {100}, {300, Turn::Left}, {100, Turn::Left}, {300}, {200}, {200}}); }},
      {"outline-hand", "/outline/building_on",
       [] { return shed_with([](Job& job) { job.outline.building_on = Hand::Left; }); }},
      {"outline-chain", "/outline/sides/1/to",
       [] { return shed_with([](Job& job) { job.outline.sides[2].from = "X"; }); }},
      {"corner-twice", "/outline/sides/2/from",
       [] { return shed_with([](Job& job) { job.outline.sides[1].to = job.outline.sides[2].from = "B"; }); }},
      {"turn-missing", "/outline/sides/1/turn",
       [] { return shed_with([](Job& job) { job.outline.sides[1].turn.reset(); }); }},
      {"side-length", "/outline/sides/0/length",
       [] { return shed_with([](Job& job) { job.outline.sides[0].length = nominal(in16(0, 3)); }); }},
      {"corner-sets-in-beam", "/steel/bond_beams",
       [] { return shed_with([](Job& job) { job.units.series = "us-12", job.steel.bond_beams = {12}; }); }},
      {"corner-sets-half-high", "/heights",
       [] { return shed_with([](Job& job) { job.units.series = "us-12", job.heights.half_high_courses = {5}; }); }},
      {"building-implausible", "/heights", [] { return shed_with([](Job& job) { job.heights.courses = 60; }); }},

      {"jog-too-short", "/outline/sides/1/length",
       [] { return outlined({{144}, {4, Turn::Left}, {144}, {240}, {288}, {244}}); }},
      {"series-mixed", "/outline/sides/1/series",
       [] { return shed_with([](Job& job) { job.outline.sides[1].series = "au-190"; }); }},

      {"courses", "/heights/height",
       [] { return shed_with([](Job& job) { job.heights.courses.reset(), job.heights.height = nominal(in(2)); }); }},
      {"course-range", "/heights/half_high_courses/0",
       [] { return shed_with([](Job& job) { job.heights.half_high_courses = {13}; }); }},
      {"height-off-course", "/heights/height",
       [] { return shed_with([](Job& job) { job.heights.courses.reset(), job.heights.height = nominal(in(90)); }); }},
      {"half-high-not-stocked", "/heights/half_high_courses",
       [] {
         return shed_with([](Job& job) {
           job.heights.half_high_courses = {1}, job.units.stocked = {UnitKind::Full, UnitKind::Half, UnitKind::Corner};
         });
       }},
      {"no-head", "/heights/half_high",
       [] {
         return shed_with(
             [](Job& job) { job.heights = {std::nullopt, nominal(in(92)), HalfHighPlace::UnderHead, {}}; });
       }},
      {"half-high-not-under-head", "/heights/half_high",
       [] {
         return shed_with([](Job& job) {
           job.heights = {std::nullopt, nominal(in(92)), HalfHighPlace::UnderHead, {}};
           job.openings = {plain_hole("P", "AB", at("A", in(64)), in(40), in(56))};
         });
       }},

      {"unknown-wall", "/interior_walls/0/off",
       [] { return shed_with([](Job& job) { job.interior_walls = {inner_wall("P", "X", at("A", in(96)))}; }); }},
      {"unknown-corner", "/interior_walls/0/place/from",
       [] { return shed_with([](Job& job) { job.interior_walls = {inner_wall("P", "AB", at("C", in(96)))}; }); }},
      {"interior-wall-length", "/interior_walls/0/length",
       [] {
         return shed_with([](Job& job) {
           job.interior_walls = {inner_wall("P", "AB", at("A", in(96)))};
           job.interior_walls[0].length = nominal(in(226));
         });
       }},
      {"interior-wall-endless", "/interior_walls/0",
       [] {
         Job job = job_with(outline_of({{288}, {240}}, false));
         job.interior_walls = {inner_wall("P", "AB", at("A", in(96)))};
         return told_of(job);
       }},
      {"junction-loop", "/interior_walls/0/off",
       [] { return shed_with([](Job& job) { job.interior_walls = {inner_wall("P", "P", at("start", in(48)))}; }); }},
      {"junction-in-corner", "/interior_walls/0/start_junction",
       [] {
         // E is the re-entrant corner of an L, side EF goes on behind it.
         Job job = job_with(outline_of({{160}, {128}, {80}, {48, Turn::Left}, {80}, {80}}), 4);
         job.interior_walls = {inner_wall("P", "EF", at("E", in(-8), Face::Near))};
         job.interior_walls[0].length = nominal(in(24)), job.interior_walls[0].start_junction = JunctionKind::Lapped;
         return told_of(job);
       }},
      {"junctions-overlap", "/interior_walls/1/place",
       [] {
         return shed_with([](Job& job) {
           job.interior_walls = {inner_wall("P", "AB", at("A", in(96))), inner_wall("Q", "AB", at("A", in(100)))};
         });
       }},
      {"junction-off-wall", "/interior_walls/0/place",
       [] { return shed_with([](Job& job) { job.interior_walls = {inner_wall("P", "AB", at("A", in(1)))}; }); }},
      {"junction-partial", "/interior_walls/1/place",
       [] {
         return shed_with([](Job& job) {
           job.interior_walls = {inner_wall("P", "AB", at("A", in(96))), inner_wall("Q", "BC", at("B", in(68)))};
           job.interior_walls[0].length = nominal(in(64));
         });
       }},
  };
}

}  // namespace stringcourse::tests
