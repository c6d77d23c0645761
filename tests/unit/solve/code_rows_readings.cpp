// What pegs, rod, slab and dowels as read come to. The kiln house is 28 x 20 ft, its corners A, B, C and D.
#include <iterator>

#include "code_rows.hpp"
#include "ground/levels.hpp"
#include "unit/ground/tapings.hpp"
#include "unit/walls/made_jobs.hpp"
#include "walls/resolve.hpp"

namespace stringcourse::tests {
namespace {

using ground_test::Off;
using ground_test::rod;
using ground_test::taped;

/// The kiln house with these readings.
Told read(std::vector<Reading> readings) {
  Job job = example("kiln-house");
  job.readings = std::move(readings);
  return told_of(job);
}
/// Every line taped once: AB, AC, AD, BC, BD, CD.
std::vector<Reading> every_line(const std::vector<Off>& off = std::vector<Off>(4)) {
  return ground_test::tapings(*resolve(example("kiln-house")), off);
}
Told lines_with(void (*change)(std::vector<Reading>&)) {
  std::vector<Reading> lines = every_line();
  change(lines);
  return read(std::move(lines));
}
/// The datum read at 48 in, each corner by so many sixteenths lower.
std::vector<Reading> corners_at(std::initializer_list<int> falls) {
  std::vector<Reading> readings{rod("d", "datum", in(48))};
  for (const int fall : falls) {
    const std::string corner(1, static_cast<char>('A' + readings.size() - 1));
    readings.push_back(rod(corner, corner, in(48) + Length::sixteenths(fall)));
  }
  return readings;
}
Told corners_with(void (*change)(std::vector<Reading>&)) {
  std::vector<Reading> readings = corners_at({64, 64, 64, 64});
  change(readings);
  return read(std::move(readings));
}
Reading strike(const std::string& id, const std::string& of) {
  Reading reading;
  reading.id = id, reading.strike = of;
  return reading;
}
Reading edge(const std::string& on, std::int64_t feet, Length beyond) {
  Reading reading;
  reading.id = on + std::to_string(feet);
  reading.edge = EdgeReading{on, {}, Length::feet(feet), beyond};
  return reading;
}
Told edges(Length beyond) {
  return read({edge("AB", 2, beyond), edge("AB", 26, beyond), edge("BC", 4, beyond), edge("BC", 16, beyond),
               edge("CD", 2, beyond), edge("CD", 26, beyond), edge("DA", 4, beyond), edge("DA", 16, beyond)});
}
/// The kiln house's third dowel read so far off its place along the wall and across it.
Told dowel_off(Length along, Length across) {
  Job job = example("kiln-house");
  const auto planned = solve(job, {});
  const steel::Dowel& dowel = planned->dowels[2];
  Reading reading;
  reading.id = "d";
  reading.dowel = DowelReading{planned->building.walls[static_cast<std::size_t>(dowel.wall)].name,
                               {},
                               dowel.along + along,
                               dowel.off_face + across};
  job.readings = {reading};
  return told_of(job);
}

/// A long building with so many teeth of 8 ft, 8 ft apart: four corners each.
Outline comb(int teeth) {
  Outline outline;
  const auto add = [&](std::int64_t inches, Turn turn) {
    Side side;
    side.from = "P" + std::to_string(outline.sides.size());
    side.to = "P" + std::to_string(outline.sides.size() + 1);
    side.length = nominal(in(inches)), side.turn = turn;
    outline.sides.push_back(side);
  };
  add(192 * teeth - 96, Turn::Right);
  add(192, Turn::Right), add(96, Turn::Right);
  for (int tooth = 1; tooth < teeth; ++tooth)
    add(96, Turn::Left), add(96, Turn::Left), add(96, Turn::Right), add(96, Turn::Right);
  add(192, Turn::Right);
  outline.sides.back().to = "P0";
  return outline;
}

}  // namespace

std::vector<CodeRow> reading_rows() {
  return {
      {"reading-not-placed", "/readings/0", [] { return read({taped("x", "A", "Q", in(100))}); }},
      {"strike-of-nothing", "/readings/0", [] { return read({strike("s", "none")}); }},
      {"hold-unknown", "/ground/hold",
       [] {
         Job job = example("kiln-house");
         job.readings = every_line();
         job.ground.emplace().hold = "Q";
         return told_of(job);
       }},
      {"chosen-otherwise", "/ground/bed_remedy",
       [] {
         // Chosen on readings that were out of level; what was struck and read since is level.
         Job job = example("kiln-house");
         job.readings = corners_at({64, 64, 64, 64});
         job.ground.emplace().bed_remedy = Chosen<BedRemedy>{BedRemedy::Grind, {}};
         return told_of(job);
       }},
      {"reading-slip", "/readings/0",
       [] {
         return lines_with([](std::vector<Reading>& lines) {
           lines[0].tape->length = Length::nanometres(lines[0].tape->length.in_nanometres() / 12);
         });
       }},
      {"second-taping", "/readings/6",
       [] {
         return lines_with([](std::vector<Reading>& lines) {
           lines.push_back(taped("again", "A", "B", lines[0].tape->length + in(1)));
         });
       }},
      {"taping-blunder", "/readings/0",
       [] {
         // An L has lines enough to tell which one is wrong.
         Job job = example("glaze-store");
         const Building building = *resolve(job);
         job.readings = ground_test::tapings(building, std::vector<Off>(building.corners.size()));
         job.readings[0].tape->length += in(2);
         return told_of(job);
       }},
      {"tapings-disagree", "/readings/1",
       [] { return lines_with([](std::vector<Reading>& lines) { lines[1].tape->length += in(2); }); }},
      {"impossible-triangle", "/readings/0",
       [] {
         return read({taped("l", "A", "B", Length::feet(40)), taped("m", "B", "C", Length::feet(20)),
                      taped("n", "A", "C", Length::feet(10))});
       }},
      {"tapings-unchecked", "/readings",
       [] { return lines_with([](std::vector<Reading>& lines) { lines.erase(lines.begin() + 4); }); }},
      {"shape-not-held", "/readings", [] { return lines_with([](std::vector<Reading>& lines) { lines.resize(3); }); }},
      {"diagonals-differ", "/readings", [] { return read(every_line({{0, 0}, {0, 0}, {0.03, 0}, {0.03, 0}})); }},
      {"corner-off-place", "/readings", [] { return read(every_line({{0, 0}, {0, 0}, {0, -0.03}, {0, -0.03}})); }},

      {"too-many-setups", "/readings",
       [] {
         return corners_with([](std::vector<Reading>& readings) {
           for (int k = 0; k <= ground::kMostSetups; ++k)
             readings.push_back(rod("a" + std::to_string(k), "A", in(50), std::to_string(k)));
         });
       }},
      {"level-loop", "/readings/6",
       [] {
         // A second set-up reads the datum alike and corner A half an inch otherwise.
         return corners_with([](std::vector<Reading>& all) {
           all.push_back(rod("d2", "datum", in(48), "2"));
           all.push_back(rod("A2", "A", all[1].rod->rod + Length::sixteenths(8), "2"));
         });
       }},
      {"station-two-places", "/readings/5",
       [] {
         return corners_with([](std::vector<Reading>& all) {
           for (const int feet : {4, 9}) {
             all.push_back(rod("x" + std::to_string(feet), "stake", in(52)));
             all.back().rod->on = "AB", all.back().rod->at = Length::feet(feet);
           }
         });
       }},
      {"level-loose", "/readings",
       [] { return corners_with([](std::vector<Reading>& all) { all.push_back(rod("p", "peg", in(40), "3")); }); }},
      {"rod-far", "/readings/4",
       [] { return corners_with([](std::vector<Reading>& all) { all[4].rod->rod = in(92); }); }},
      {"instrument-not-level", "/readings/5",
       [] {
         return corners_with([](std::vector<Reading>& all) {
           all.emplace_back().id = "t";
           all.back().two_peg = TwoPegReading{in(50), in(54), in(48), in(53), Length::feet(4), Length::feet(100)};
         });
       }},
      {"door-floor", "/openings/0",
       [] {
         return corners_with([](std::vector<Reading>& all) {
           all.push_back(rod("f", "f", in(40)));
           all.back().rod->on = "AB", all.back().rod->at = Length::feet(10), all.back().rod->surface = Surface::Floor;
         });
       }},
      {"bed-not-read", "/readings", [] { return read(corners_at({64})); }},
      {"bed-cannot-tell", "/readings", [] { return read(corners_at({60, 68, 66, 61})); }},
      {"bed-out-of-range", "/readings", [] { return read(corners_at({60, 76, 60, 76})); }},

      {"slab-not-read", "/readings", [] { return read({edge("AB", 2, in(4))}); }},
      {"slab-too-small", "/readings", [] { return edges(-in(2)); }},
      {"dowel-cannot-tell", "/readings/0", [] { return dowel_off(in(2), {}); }},
      {"dowel-bend", "/readings/0", [] { return dowel_off({}, in(3)); }},
      {"dowel-cut-and-replace", "/readings/0", [] { return dowel_off({}, in(9)); }},
      {"dowel-lap-apart", "/readings/0", [] { return told_of_case("dowel-lap-apart"); }},
      {"dowels-saved-by-layout", "/steel/kept_dowels", [] { return told_of_case("dowels-saved-by-layout"); }},
      {"no-shape", "/readings", [] { return told_of_case("no-shape"); }},
      {"net-too-large", "/readings",
       [] {
         // A comb of more corners than are looked at together, and every line along its sides.
         Job job = job_with(comb(16));
         for (const Side& side : job.outline.sides)
           job.readings.push_back(taped(side.from, side.from, side.to, side.length.length));
         return told_of(job);
       }},
  };
}

}  // namespace stringcourse::tests
