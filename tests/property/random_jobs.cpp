// Over 400 lines: one generator, whose dice fall in one order.
#include "random_jobs.hpp"

#include <algorithm>
#include <optional>
#include <string>
#include <utility>

#include "dice.hpp"

namespace stringcourse::property {
namespace {

struct Leg {
  std::int64_t halves;  // nominal length in half units
  Turn turn = Turn::Right;
};

std::string corner_name(std::size_t index) { return std::string(1, static_cast<char>('A' + index)); }

class JobMaker {
 public:
  JobMaker(std::uint64_t seed, Size size) : dice_(seed), size_(size) {}

  Job make() {
    job_.name = "random job";
    choose_series();
    choose_units();
    choose_outline();
    choose_heights();
    choose_interior_walls();
    choose_openings();
    choose_control_joints();
    choose_steel();
    choose_laps();
    return std::move(job_);
  }

 private:
  [[nodiscard]] std::int64_t large(std::int64_t small, std::int64_t large) const {
    return size_ == Size::Small ? small : large;
  }

  // --- lengths ---
  /// Whole half units, now and then off the grid by a little.
  StatedLength halves(std::int64_t count) {
    Length length = pitch_ * count;
    if (off_grid_ && dice_.one_in(3)) length += step_ * dice_.between(-40, 40);
    return {length, Basis::Nominal};
  }

  // --- units ---
  void choose_series() {
    const auto catalogue = catalogue_series();
    Series base = catalogue[static_cast<std::size_t>(dice_.below(static_cast<std::int64_t>(catalogue.size())))];
    const std::vector<std::string> common{"us-8", "us-8", "au-190", "uk-215"};  // half a unit thick: most plans lay
    if (dice_.one_in(2)) base = *find_series(dice_.pick(common));
    job_.tape = dice_.one_in(8) ? (base.tape == Tape::Inches ? Tape::Millimetres : Tape::Inches) : base.tape;
    job_.units.series = base.id;
    if (dice_.one_in(8)) own_like(base);
    full_ = base.full;
    half_ = base.half;
    pitch_ = base.pitch();
    course_ = base.height + base.joint;
    thickness_ = base.thickness;
    grouts_ = base.grouts;
    made_ = base.made;
    tape_of_series_ = base.tape;
    step_ = job_.tape == Tape::Inches ? Length::sixteenths(1) : Length::millimetres(1);
    off_grid_ = dice_.one_in(8);
  }

  /// A series of the user's own: the sizes of a known one, thicker or with another joint.
  void own_like(Series& base) {
    OwnSeries own;
    own.id = "mine";
    own.title = "Yard block";
    const Length grain = base.tape == Tape::Inches ? Length::sixteenths(2) : Length::millimetres(1);
    base.thickness += grain * dice_.between(-3, 3);
    if (dice_.one_in(2)) {
      base.joint += grain * dice_.between(-1, 1);
      base.full = base.half * 2 + base.joint;
    }
    own.full = base.full;
    own.half = base.half;
    own.thickness = base.thickness;
    own.height = base.height;
    own.joint = base.joint;
    own.full_cells = base.full_cells;
    own.half_cells = base.half_cells;
    const Length lip = base.half - base.thickness;
    if (dice_.one_in(2) && (lip <= Length() || lip > base.joint)) own.corner_leg = base.half;
    job_.units.own_series = {own};
    job_.units.series = own.id;
    base.made = {UnitKind::Full, UnitKind::Half, UnitKind::Corner};
    base.grouts = !base.full_cells.empty();
  }

  void choose_units() {
    Units& units = job_.units;
    if (dice_.one_in(4)) {
      std::vector<UnitKind> stocked;
      for (const UnitKind kind : made_) {
        if (kind == UnitKind::Full || !dice_.one_in(5)) stocked.push_back(kind);
      }
      units.stocked = std::move(stocked);
    }
    if (dice_.one_in(6)) units.bond = BondWish::Quarter;
    if (dice_.one_in(8)) units.joint_least = pitch_ - half_ - step_ * dice_.between(0, 3);
    if (dice_.one_in(8)) units.joint_most = pitch_ - half_ + step_ * dice_.between(0, 4);
    if (dice_.one_in(12)) units.least_piece = step_ * dice_.between(30, 80);
    if (dice_.one_in(10)) {
      std::vector<Length> cuts;
      for (std::int64_t i = dice_.below(4); i > 0; --i) {
        const Length cut = step_ * (full_.whole_multiples(step_) * dice_.between(3, 9) / 10);
        if (std::ranges::find(cuts, cut) == cuts.end()) cuts.push_back(cut);
      }
      units.cuts = std::move(cuts);
    }
  }

  // --- outline ---
  std::int64_t long_side() { return dice_.between(large(7, 16), large(20, 60)); }
  std::int64_t short_side() { return dice_.between(large(6, 10), large(14, 30)); }

  std::vector<Leg> rectangle() {
    const std::int64_t a = long_side(), b = short_side();
    return {{a}, {b}, {a}, {b}};
  }
  /// An L, or with a short step a jog.
  std::vector<Leg> l_plan() {
    const std::int64_t a = long_side(), b = short_side(), c = dice_.between(2, a - 2);
    const std::int64_t d = dice_.one_in(3) ? dice_.between(1, 2) : dice_.between(2, b - 2);
    return {{a}, {b}, {c}, {d, Turn::Left}, {a - c}, {b - d}};
  }
  std::vector<Leg> u_plan() {
    const std::int64_t b = short_side(), d = dice_.between(2, b - 3);
    const std::int64_t left = dice_.between(4, 8), notch = dice_.between(3, 8), right = dice_.between(4, 8);
    return {{left + notch + right}, {b}, {left}, {d, Turn::Left}, {notch, Turn::Left}, {d}, {right}, {b}};
  }

  void choose_outline() {
    std::vector<Leg> legs;
    // A corner that turns in keeps no grid unless the wall is half a unit thick.
    const bool square = thickness_ == half_ || dice_.one_in(4);
    const std::int64_t shape = dice_.below(10);
    job_.outline.closed = shape < 7;
    if (!job_.outline.closed) legs = open_plan();
    else if (shape < 3 || !square) legs = rectangle();
    else if (shape < 6) legs = l_plan();
    else legs = u_plan();
    if (job_.outline.closed)
      std::rotate(legs.begin(), legs.begin() + dice_.below(static_cast<std::int64_t>(legs.size())), legs.end());
    if (!job_.outline.closed && dice_.one_in(2)) job_.outline.building_on = dice_.one_in(2) ? Hand::Left : Hand::Right;
    lay_sides(legs);
  }

  /// From one to four sides; never two left turns running, so that it does not meet itself.
  std::vector<Leg> open_plan() {
    std::vector<Leg> legs;
    const std::int64_t count = dice_.between(1, 4);
    for (std::int64_t i = 0; i < count; ++i) {
      const bool left_before = !legs.empty() && legs.back().turn == Turn::Left;
      const std::int64_t length = i == 3 ? dice_.between(4, 5) : dice_.between(6, large(16, 50));
      legs.push_back({length, !left_before && dice_.one_in(3) ? Turn::Left : Turn::Right});
    }
    return legs;
  }

  void lay_sides(const std::vector<Leg>& legs) {
    const Length off = off_grid_ && job_.outline.closed && dice_.one_in(2) ? step_ * dice_.between(-30, 30) : Length{};
    for (std::size_t i = 0; i < legs.size(); ++i) {
      const bool last = i + 1 == legs.size();
      Side side;
      side.from = corner_name(i);
      side.to = last && job_.outline.closed ? corner_name(0) : corner_name(i + 1);
      side.length = {pitch_ * legs[i].halves, Basis::Nominal};
      // Off the grid: both long sides of a rectangle alike; an open outline side by side.
      if (off_grid_ && legs.size() == 4 && job_.outline.closed && i % 2 == 0) side.length.length += off;
      if (off_grid_ && !job_.outline.closed) side.length = halves(legs[i].halves);
      if (!last || job_.outline.closed) side.turn = legs[i].turn;
      halves_.push_back(legs[i].halves);
      walls_.push_back(side.from + side.to);
      taken_.push_back({});
      ends_.push_back({side.from, side.to});
      job_.outline.sides.push_back(side);
    }
  }

  // --- heights ---
  void choose_heights() {
    courses_ = static_cast<int>(dice_.between(large(3, 8), large(8, 16)));
    const bool half_high = std::ranges::find(made_, UnitKind::HalfHigh) != made_.end();
    if (half_high && dice_.one_in(10)) {
      job_.heights.height = StatedLength{course_ * courses_ + course_.half_down(), Basis::Nominal};
      job_.heights.half_high = static_cast<HalfHighPlace>(dice_.below(3));
      return;
    }
    job_.heights.courses = courses_;
    if (half_high && dice_.one_in(12)) job_.heights.half_high_courses = {static_cast<int>(dice_.between(1, courses_))};
  }

  // --- what stands where along a wall, in half units from its first corner ---
  struct Taken {
    std::int64_t from, to;
  };

  /// A stretch `width` wide with `clear` half units to its neighbours and the wall's ends; from the wall's first
  /// corner. Now and then anything goes, so that refusals come up too.
  std::optional<std::int64_t> free_stretch(std::size_t wall, std::int64_t width, std::int64_t clear) {
    const std::int64_t room = halves_[wall] - width;
    if (room < 2 * clear) return std::nullopt;
    for (int tries = 0; tries < 6; ++tries) {
      const std::int64_t from = dice_.between(clear, room - clear);
      const bool free = std::ranges::none_of(
          taken_[wall], [&](const Taken& t) { return from < t.to + clear && t.from - clear < from + width; });
      if (!free && !dice_.one_in(40)) continue;
      taken_[wall].push_back({from, from + width});
      return from;
    }
    return std::nullopt;
  }

  /// Says a place from one end of the wall or the other, to the near face or edge.
  Place place_of(std::size_t wall, std::int64_t from, std::int64_t width) {
    Place place;
    const bool from_start = dice_.one_in(2);
    place.from = from_start ? ends_[wall].first : ends_[wall].second;
    place.at = halves(from_start ? from : halves_[wall] - from - width);
    return place;
  }

  std::size_t some_wall() { return static_cast<std::size_t>(dice_.below(static_cast<std::int64_t>(walls_.size()))); }

  // --- interior walls ---
  void choose_interior_walls() {
    if (!dice_.one_in(3)) return;
    for (std::int64_t i = dice_.between(1, 2); i > 0; --i) {
      const std::size_t off = some_wall();
      const auto from = free_stretch(off, 1, 2);
      if (!from) continue;
      InteriorWall wall;
      wall.name = "P" + std::to_string(i);
      wall.off = walls_[off];
      wall.place = place_of(off, *from, 1);
      if (dice_.one_in(3)) wall.place.to = dice_.one_in(2) ? Face::Far : Face::Near;
      if (!job_.outline.closed || dice_.one_in(3)) wall.length = halves(dice_.between(2, 5));
      const auto kind = [&] { return static_cast<JunctionKind>(dice_.below(3)); };
      if (dice_.one_in(2)) wall.start_junction = kind();
      if (dice_.one_in(2)) wall.end_junction = kind();
      if (job_.units.own_series.empty() && dice_.one_in(4)) wall.series = thinner();
      job_.interior_walls.push_back(std::move(wall));
    }
  }

  /// A thinner series that goes with the job's.
  std::string thinner() {
    const std::string& id = job_.units.series;
    if (id.starts_with("us")) return "us-4";
    return id.starts_with("au") ? "au-90" : "uk-100";
  }

  // --- openings ---
  void choose_openings() {
    const std::int64_t count = dice_.below(large(4, 9));
    for (std::int64_t i = 0; i < count; ++i) choose_opening(i + 1);
  }

  void choose_opening(std::int64_t number) {
    Opening opening;
    opening.name = "O" + std::to_string(number);
    std::int64_t width = 2;
    if (!job_.interior_walls.empty() && dice_.one_in(8)) {
      opening.on = job_.interior_walls.front().name;
      opening.place.from = dice_.one_in(2) ? "start" : "end";
      opening.place.at = halves(dice_.between(1, 4));
    } else {
      const std::size_t wall = some_wall();
      width = dice_.between(2, std::clamp<std::int64_t>(halves_[wall] - 6, 2, 6));
      const auto from = free_stretch(wall, width, dice_.one_in(4) ? 1 : 2);
      if (!from) return;
      opening.on = walls_[wall];
      opening.place = place_of(wall, *from, width);
    }
    if (dice_.one_in(6)) opening.place.to = Face::Near;
    if (dice_.one_in(12)) opening.place.at.basis = Basis::Actual;
    if (dice_.one_in(3)) opening.lintel = lintel();
    const int deep = opening.lintel ? opening.lintel->courses.value_or(1) : 1;
    choose_size(opening, width, dice_.between(1, std::max(courses_ - 1 - deep, 1)), deep);
    job_.openings.push_back(std::move(opening));
  }

  void choose_size(Opening& opening, std::int64_t width, std::int64_t high, std::int64_t deep) {
    const Length wide = pitch_ * width, tall = course_ * high;
    const std::int64_t sill = dice_.between(1, std::max<std::int64_t>(courses_ - high - deep, 1));
    switch (dice_.below(6)) {
      case 0:
        opening.door = DoorSize{wide - step_ * 6, tall - step_ * 2, step_ * 2, step_ * 2, std::nullopt, step_};
        break;
      case 1:
        opening.overhead = OverheadSize{wide - step_ * 2, tall - step_, step_, step_, step_ * 40, step_ * 80};
        break;
      case 2:
        opening.window = WindowSize{wide - step_ * 2, tall - step_ * 2, step_, step_, step_};
        opening.sill_course = static_cast<int>(sill);
        break;
      default:
        opening.masonry = MasonrySize{halves(width), {tall, Basis::Nominal}};
        if (dice_.one_in(2)) opening.sill_course = static_cast<int>(sill);
        else if (dice_.one_in(4)) opening.sill = StatedLength{course_ * (sill - 1), Basis::Nominal};
        else if (dice_.one_in(4))
          opening.floor = StatedLength{course_ * (sill - 1) - step_ * dice_.below(8), Basis::Nominal};
    }
  }

  Lintel lintel() {
    Lintel made;
    made.make = dice_.one_in(2) ? LintelMake::OnePiece : LintelMake::BuiltUp;
    if (dice_.one_in(2)) made.courses = static_cast<int>(dice_.between(1, 2));
    switch (dice_.below(6)) {
      case 0: made.bearing = full_; break;
      case 1:
        made.bearing = tape_of_series_ == Tape::Inches ? Length::inches(dice_.between(4, 12))
                                                       : Length::millimetres(dice_.between(10, 30) * 10);
        break;
      default: break;
    }
    return made;
  }

  // --- control joints, steel ---
  void choose_control_joints() {
    if (dice_.one_in(8)) job_.control_joints.rule = dice_.one_in(2) ? JointRule::Us : JointRule::Uk;
    if (!dice_.one_in(6)) return;
    const std::size_t wall = some_wall();
    const auto from = free_stretch(wall, 0, 2);
    if (!from) return;
    PlacedControlJoint joint;
    joint.on = walls_[wall];
    joint.place = place_of(wall, *from, 0);
    job_.control_joints.placed = {std::move(joint)};
  }

  void choose_steel() {
    Steel& steel = job_.steel;
    const bool beams = std::ranges::find(made_, UnitKind::BondBeam) != made_.end();
    if (beams && dice_.one_in(4)) steel.bond_beams = {courses_};
    if (beams && dice_.one_in(10)) steel.bond_beams.insert(steel.bond_beams.begin(), 1);
    if (dice_.one_in(8)) steel.wire_every = static_cast<int>(dice_.between(1, 3));
    if (dice_.one_in(10)) steel.beam_steel_in_joints = true;
    if (dice_.one_in(8)) steel.pour_tops = {std::max(courses_ / 2, 1), courses_};
    if (dice_.one_in(60) || (grouts_ && dice_.one_in(3))) choose_bars();
  }

  void choose_bars() {
    Bars bars;
    const std::vector<std::string> american{"#3", "#4", "#5"}, australian{"N12", "N16"}, british{"H10", "H12", "H16"};
    bars.size = tape_of_series_ == Tape::Inches       ? dice_.pick(american)
                : job_.units.series.starts_with("uk") ? dice_.pick(british)
                                                      : dice_.pick(australian);
    if (dice_.one_in(2)) bars.grout = dice_.one_in(2) ? Grout::Fine : Grout::Coarse;
    bars.corners = !dice_.one_in(3);
    bars.jambs = !dice_.one_in(3);
    bars.control_joints = dice_.one_in(2);
    if (!dice_.one_in(3))
      bars.spacing = pitch_ * dice_.between(2, 8) + (dice_.one_in(4) ? step_ * dice_.between(-20, 20) : Length{});
    if (dice_.one_in(4)) {
      const std::size_t wall = some_wall();
      DimensionedBar bar;
      bar.on = walls_[wall];
      bar.place.from = ends_[wall].first;
      bar.place.at = {pitch_ * dice_.between(1, std::max<std::int64_t>(halves_[wall] - 1, 1)) + pitch_.half_down(),
                      Basis::Nominal};
      bars.dimensioned = {std::move(bar)};
    }
    if (dice_.one_in(4)) bars.dimensioned.push_back(bar_anywhere());
    job_.steel.bars = std::move(bars);
    if (dice_.one_in(4)) keep_dowels();
  }

  /// How bars are lapped and what lies in beams and lintels; last, so that all else of a seed stays as it was.
  void choose_laps() {
    Steel& steel = job_.steel;
    const bool inches = job_.tape == Tape::Inches;
    if (!dice_.one_in(4)) choose_lap();
    if (dice_.one_in(2))
      steel.bar_stock =
          inches ? Length::inches(dice_.between(30, 160)) : tape_step(job_.tape) * dice_.between(800, 4'000);
    if (dice_.one_in(3))
      steel.end_cover = inches ? Length::sixteenths(dice_.between(0, 64)) : Length::millimetres(dice_.between(0, 100));
    const std::vector<std::string> sizes = inches ? std::vector<std::string>{"#3", "#4", "#5", "#6", "#8"}
                                                  : std::vector<std::string>{"N12", "N16", "H10", "H20"};
    if (!dice_.one_in(3)) {
      steel.beam_bars = BeamBars{dice_.pick(sizes), static_cast<int>(dice_.between(1, 3)), std::nullopt};
      if (dice_.one_in(2))
        steel.beam_bars->at_control_joints = dice_.one_in(2) ? AtControlJoint::Stop : AtControlJoint::Pass;
    }
    if (!dice_.one_in(3)) steel.lintel_bars = LintelBars{dice_.pick(sizes), static_cast<int>(dice_.between(1, 3))};
    if (dice_.one_in(4))
      steel.dowel_lap = inches ? Length::inches(dice_.between(12, 40)) : Length::millimetres(dice_.between(300, 1'000));
    if (dice_.one_in(3))
      steel.bar_kerf = inches ? Length::sixteenths(dice_.between(0, 4)) : Length::millimetres(dice_.between(0, 6));
  }

  void choose_lap() {
    Lap lap;
    lap.rule = static_cast<LapRule>(dice_.between(0, 6));
    const std::vector<std::string> masonry{"1500 psi", "2000 psi", "2.5 ksi", "10.3 MPa", "15 N/mm2"};
    const std::vector<std::string> steel{"40 ksi", "60000 psi", "500 MPa", "24000 psi", "32 ksi"};
    if (!dice_.one_in(8)) lap.masonry = dice_.pick(masonry);
    if (!dice_.one_in(8)) lap.steel = dice_.pick(steel);
    if (!dice_.one_in(8)) lap.length = Length::sixteenths(dice_.between(100, 800));
    job_.steel.lap = lap;
  }

  /// A place that knows nothing of cells, now and then near a whole cell's middle.
  Length anywhere(std::size_t wall) {
    const std::int64_t halves = std::max<std::int64_t>(halves_[wall], 2);
    if (dice_.one_in(2))
      return pitch_ * dice_.between(0, halves - 1) + half_.half_down() + step_ * dice_.between(-24, 24);
    return step_ * dice_.between(1, (pitch_ * halves).whole_multiples(step_) - 1);
  }

  DimensionedBar bar_anywhere() {
    const std::size_t wall = some_wall();
    return {walls_[wall],
            {dice_.one_in(2) ? ends_[wall].first : ends_[wall].second, {anywhere(wall), Basis::Actual}, std::nullopt}};
  }

  /// Dowels as found, and kept: some near a dimensioned bar.
  void keep_dowels() {
    for (std::int64_t i = dice_.between(1, 3); i > 0; --i) {
      const std::size_t wall = some_wall();
      Reading reading;
      reading.id = "d" + std::to_string(i);
      reading.dowel = DowelReading{walls_[wall], ends_[wall].first, anywhere(wall), thickness_.half_down()};
      const auto& asked = job_.steel.bars->dimensioned;
      if (!asked.empty() && dice_.one_in(2)) {
        reading.dowel->on = asked.front().on;
        reading.dowel->from = asked.front().place.from;
        reading.dowel->at = std::max(asked.front().place.at.length + step_ * dice_.between(-40, 40), step_);
      }
      job_.readings.push_back(reading);
      job_.steel.kept_dowels.push_back(reading.id);
    }
  }

  Dice dice_;
  Size size_;
  Job job_;
  Length full_, half_, pitch_, course_, thickness_, step_;
  Tape tape_of_series_ = Tape::Inches;
  bool grouts_ = true, off_grid_ = false;
  std::vector<UnitKind> made_;
  int courses_ = 8;
  std::vector<std::int64_t> halves_;                       // by side: nominal length
  std::vector<std::vector<Taken>> taken_;                  // by side
  std::vector<std::string> walls_;                         // by side: name
  std::vector<std::pair<std::string, std::string>> ends_;  // by side: corner names
};

}  // namespace

Job random_job(std::uint64_t seed, Size size) { return JobMaker(seed, size).make(); }

}  // namespace stringcourse::property
