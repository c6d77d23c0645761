// Over 400 lines: one generator, a draw for every field of the job.
#include "unit/job/random_job.hpp"

#include <array>
#include <functional>
#include <set>

// Fields that are not named have their defaults: that is what is wanted here.
#pragma clang diagnostic ignored "-Wmissing-designated-field-initializers"

namespace stringcourse::test {
namespace {

constexpr std::array<const char*, 16> kBits = {"A",      "wall 7",     "\"",     "\\", "/", "~",    "<b>&amp;</b>",
                                               "\u202E", "\U0001F9F1", "\u00E9", " ",  "'", "${x}", "\u2028",
                                               "actual", "7 5/8\""};

class JobMaker {
 public:
  explicit JobMaker(std::uint64_t seed) : dice_(seed) {}

  Job job() {
    Job job;
    job.name = label();
    job.notes = lines();
    job.drawn_by = label();
    job.issued = label();
    job.tape = pick<Tape>(2);
    job.units = units();
    job.outline = outline();
    job.interior_walls = some<InteriorWall>([&] { return interior_wall(); });
    job.heights = heights();
    job.openings = some<Opening>([&] { return opening(); });
    job.control_joints = control_joints();
    job.steel = steel();
    job.top = perhaps<Top>([&] { return top(); });
    job.order = perhaps<Ordering>([&] { return ordering(); });
    job.days = perhaps<Days>([&] { return days(); });
    job.setting_out = perhaps<SettingOut>([&] {
      const auto force = [&] {
        return perhaps<std::string>(
            [&] { return std::to_string(1 + dice_.below(90)) + (dice_.heads() ? " lb" : " N"); });
      };
      const auto kerf = perhaps_length();
      return SettingOut{perhaps_length(),
                        kerf,
                        kerf ? std::nullopt : perhaps<Length>([] { return Length::inches(3); }),
                        perhaps_length(),
                        perhaps_length(),
                        perhaps_length(),
                        perhaps_length(),
                        perhaps_length(),
                        perhaps<std::string>([&] { return "0.00" + std::to_string(1 + dice_.below(9)) + " lb/ft"; }),
                        force(),
                        force(),
                        perhaps_length()};
    });
    job.ground = perhaps<Ground>([&] { return ground(); });
    job.readings = some<Reading>([&] { return reading(); });
    job.laying = perhaps<Laying>([&] { return laying(); });
    job.laid = some<LaidEntry>([&] { return laid(); });
    return job;
  }

 private:
  template <class Enum>
  Enum pick(std::uint64_t count) {
    return static_cast<Enum>(dice_.below(count));
  }

  template <class Value>
  std::optional<Value> perhaps(std::function<Value()> make) {
    return dice_.heads() ? std::optional<Value>(make()) : std::nullopt;
  }

  template <class Entry>
  std::vector<Entry> some(std::function<Entry()> make) {
    std::vector<Entry> entries;
    for (auto left = dice_.below(4); left > 0; --left) entries.push_back(make());
    return entries;
  }

  std::string label() {
    std::string text;
    for (auto left = dice_.below(6); left > 0; --left) text += kBits[dice_.below(kBits.size())];
    return text;
  }
  std::string lines() { return dice_.heads() ? label() : label() + "\n\t" + label() + "\r\n"; }
  std::string name() { return "n" + std::to_string(++names_) + label(); }  // never twice in one job

  Length any_length() {
    constexpr std::uint64_t kMost = 10'000'000'000'000;  // 10 km
    switch (dice_.below(4)) {
      case 0: return Length::sixty_fourths(static_cast<std::int64_t>(1 + dice_.below(64 * 1200)));
      case 1: return Length::millimetres(static_cast<std::int64_t>(1 + dice_.below(20'000)));
      case 2: return Length::nanometres(static_cast<std::int64_t>(1 + dice_.below(kMost)));
      default: return kLongest;
    }
  }
  Length length() { return any_length(); }
  Length zero_or_more() { return dice_.below(4) == 0 ? Length{} : any_length(); }
  StatedLength stated(Length length) { return {length, pick<Basis>(2)}; }
  std::optional<Length> perhaps_length() {
    return perhaps<Length>([&] { return length(); });
  }
  std::optional<Length> perhaps_zero() {
    return perhaps<Length>([&] { return zero_or_more(); });
  }
  std::optional<std::string> perhaps_name() {
    return perhaps<std::string>([&] { return name(); });
  }

  template <class Entry>
  std::vector<Entry> distinct(std::uint64_t range, std::uint64_t first) {
    std::set<std::uint64_t> values;
    for (auto left = dice_.below(6); left > 0; --left) values.insert(first + dice_.below(range));
    std::vector<Entry> entries;
    for (const std::uint64_t value : values) entries.push_back(static_cast<Entry>(value));
    return entries;
  }
  std::vector<int> courses() { return distinct<int>(200, 1); }
  int course() { return static_cast<int>(1 + dice_.below(200)); }

  /// A whole unit of two halves and a joint, with cells in it.
  OwnSeries own_series() {
    const Length joint = Length::sixty_fourths(static_cast<std::int64_t>(8 + dice_.below(30)));
    const Length half = Length::sixty_fourths(static_cast<std::int64_t>(300 + dice_.below(300)));
    const Length step = Length::sixty_fourths(1);
    OwnSeries own{.id = name(),
                  .title = label(),
                  .full = 2 * half + joint,
                  .half = half,
                  .thickness = 200 * step,
                  .height = 300 * step,
                  .joint = joint};
    own.half_high = perhaps<Length>([&] { return 140 * step; });
    own.joint_tolerance = perhaps<Length>([&] { return 7 * step; });
    own.least_piece = perhaps<Length>([&] { return 200 * step; });
    own.short_lap_margin = perhaps_zero();
    own.cut_step = perhaps_length();
    own.face_shell = perhaps<Length>([&] { return 99 * step; });
    if (dice_.heads()) own.full_cells = {{Length{}, 100 * step}, {120 * step, own.full}};
    if (dice_.heads()) own.half_cells = {{50 * step, half}};
    own.corner_leg = perhaps<Length>([&] { return half; });
    own.made = distinct<UnitKind>(kKindCount, 0);
    return own;
  }

  Units units() {
    Units units{.series = name(), .own_series = some<OwnSeries>([&] { return own_series(); })};
    units.stocked = perhaps<std::vector<UnitKind>>([&] { return distinct<UnitKind>(kKindCount, 0); });
    units.joint_least =
        perhaps<Length>([&] { return Length::sixteenths(static_cast<std::int64_t>(1 + dice_.below(6))); });
    units.joint_most =
        perhaps<Length>([&] { return Length::sixteenths(static_cast<std::int64_t>(6 + dice_.below(6))); });
    units.least_piece = perhaps_length();
    units.cuts = perhaps<std::vector<Length>>([&] {
      std::vector<Length> cuts;
      for (const int sixteenths : distinct<int>(250, 1)) cuts.push_back(Length::sixteenths(sixteenths));
      return cuts;
    });
    units.bond = perhaps<BondWish>([&] { return pick<BondWish>(2); });
    units.breakage = perhaps<int>([&] { return static_cast<int>(dice_.below(51)); });
    return units;
  }

  Side side() {
    Side side{.name = dice_.heads() ? name() : "", .from = name(), .to = name(), .length = stated(length())};
    side.turn = perhaps<Turn>([&] { return pick<Turn>(2); });
    side.series = perhaps_name();
    return side;
  }

  Outline outline() {
    return {dice_.heads(), perhaps<Hand>([&] { return pick<Hand>(2); }), some<Side>([&] { return side(); })};
  }

  Place place() {
    return {name(), stated(zero_or_more()), perhaps<Face>([&] { return pick<Face>(2); })};
  }

  InteriorWall interior_wall() {
    InteriorWall wall{.name = name(), .off = name(), .place = place()};
    wall.length = perhaps<StatedLength>([&] { return stated(length()); });
    wall.start_junction = perhaps<JunctionKind>([&] { return pick<JunctionKind>(3); });
    wall.end_junction = perhaps<JunctionKind>([&] { return pick<JunctionKind>(3); });
    wall.series = perhaps_name();
    return wall;
  }

  Heights heights() {
    Heights heights;
    if (dice_.heads()) heights.courses = course();
    else heights.height = stated(length());
    heights.half_high = perhaps<HalfHighPlace>([&] { return pick<HalfHighPlace>(3); });
    heights.half_high_courses = courses();
    return heights;
  }

  void size(Opening& opening) {
    switch (dice_.below(4)) {
      case 0: opening.masonry = MasonrySize{stated(length()), stated(length())}; break;
      case 1:
        opening.door = DoorSize{length(), length(), perhaps_zero(), perhaps_zero(), perhaps_zero(), perhaps_zero()};
        break;
      case 2:
        opening.overhead =
            OverheadSize{length(), length(), perhaps_zero(), perhaps_zero(), perhaps_zero(), perhaps_zero()};
        break;
      default: opening.window = WindowSize{length(), length(), perhaps_zero(), perhaps_zero(), perhaps_zero()};
    }
  }

  Opening opening() {
    Opening opening{.name = name(), .on = name(), .place = place()};
    size(opening);
    const auto signed_length = [&] { return stated(dice_.heads() ? length() : -length()); };
    opening.floor = perhaps<StatedLength>(signed_length);
    if (dice_.heads()) opening.sill = perhaps<StatedLength>(signed_length);
    else opening.sill_course = perhaps<int>([&] { return course(); });
    opening.lintel = perhaps<Lintel>([&] {
      return Lintel{pick<LintelMake>(2), perhaps<int>([&] { return course(); }), perhaps_length(), perhaps_length()};
    });
    opening.note = lines();
    return opening;
  }

  ControlJoints control_joints() {
    return {perhaps<JointRule>([&] { return pick<JointRule>(3); }),
            some<PlacedControlJoint>([&] { return PlacedControlJoint{name(), place()}; })};
  }

  Bars bars() {
    return {name(),
            perhaps<Grout>([&] { return pick<Grout>(2); }),
            dice_.heads(),
            dice_.heads(),
            dice_.heads(),
            perhaps_length(),
            some<DimensionedBar>([&] { return DimensionedBar{name(), place()}; })};
  }

  Steel steel() {
    return {perhaps<Bars>([&] { return bars(); }),
            courses(),
            perhaps<int>([&] { return course(); }),
            perhaps_length(),
            perhaps_length(),
            perhaps_length(),
            perhaps<WireCorners>([&] { return pick<WireCorners>(2); }),
            perhaps<WireTees>([&] { return pick<WireTees>(2); }),
            perhaps<int>([&] { return course(); }),
            perhaps<bool>([&] { return dice_.heads(); }),
            courses(),
            perhaps_length(),
            dice_.heads() ? std::vector<std::string>{"r1", "r2"} : std::vector<std::string>{},
            perhaps<Lap>([&] { return lap(); }),
            perhaps_length(),
            perhaps_length(),
            perhaps_length(),
            perhaps<BeamBars>(
                [&] { return BeamBars{name(), 2, perhaps<AtControlJoint>([&] { return pick<AtControlJoint>(2); })}; }),
            perhaps<LintelBars>([&] { return LintelBars{name(), 3}; })};
  }

  Lap lap() {
    return {pick<LapRule>(7), perhaps<std::string>([&] { return std::string("1500 psi"); }),
            perhaps<std::string>([&] { return std::string("413.7 MPa"); }), perhaps_length()};
  }

  Bolts bolts() { return {label(), length(), length(), perhaps_length(), perhaps_length(), perhaps_length()}; }

  Top top() {
    return {label(), dice_.heads() ? std::vector<std::string>{"AB", "CD"} : std::vector<std::string>{},
            perhaps_length(), perhaps<Bolts>([&] { return bolts(); }),
            some<Trusses>([&] { return Trusses{name(), place(), length(), length()}; })};
  }

  std::optional<int> perhaps_count(std::uint64_t least, std::uint64_t most) {
    return perhaps<int>([&] { return static_cast<int>(least + dice_.below(most - least + 1)); });
  }

  Ordering ordering() {
    Ordering order;
    for (const UnitKind kind : distinct<UnitKind>(kKindCount, 0))
      order.kinds.push_back({kind, perhaps_count(0, 50), perhaps_count(1, 1'000)});
    order.mortar = perhaps<MortarOf>([&] { return pick<MortarOf>(3); });
    order.type = perhaps<MortarType>([&] { return pick<MortarType>(4); });
    order.mortar_by = perhaps<MortarBy>([&] { return pick<MortarBy>(4); });
    order.mortar_waste = perhaps_count(0, 100), order.sand_waste = perhaps_count(0, 100);
    order.grout_as = perhaps<GroutAs>([&] { return pick<GroutAs>(2); });
    order.grout_loss = perhaps_count(0, 100), order.wire_waste = perhaps_count(0, 100);
    order.lumber_waste = perhaps_count(0, 100), order.bolts_spare = perhaps_count(0, 100);
    order.currency = perhaps<std::string>([] { return std::string("USD"); });
    order.decimals = perhaps_count(2, 4);
    order.prices = some<ArticlePrice>(
        [&] { return ArticlePrice{name(), std::to_string(dice_.below(900)) + (dice_.heads() ? ".05" : " USD")}; });
    order.tax = perhaps<std::string>([] { return std::string("8.25"); });
    order.brought = some<Brought>([&] { return Brought{name(), static_cast<int>(dice_.below(2'000))}; });
    if (dice_.heads()) order.weights = {{name(), "35 lb"}};
    order.truck = perhaps<std::string>([] { return std::string("3500 kg"); });
    order.delivery = perhaps<std::string>([] { return std::string("95"); });
    return order;
  }

  Days days() {
    Days days;
    days.crew = perhaps<Crew>([&] { return pick<Crew>(2); });
    days.pairs = perhaps_count(1, 50), days.units_per_hour = perhaps_count(1, 200);
    days.hours = perhaps_count(1, 16), days.most_courses = perhaps_count(1, 200);
    days.mortar_minutes = perhaps_count(10, 600);
    for (const WorkKind work : distinct<WorkKind>(11, 0))
      days.work.push_back({work, static_cast<int>(dice_.below(200))});
    days.start = perhaps<std::string>([] { return std::string("2027-05-03"); });
    days.log_until = perhaps<std::string>([] { return std::string("2027-05-20"); });
    days.weekdays = distinct<Weekday>(7, 0);
    if (days.start) days.finish_by = perhaps<std::string>([] { return std::string("2027-07-02"); });
    if (dice_.heads()) days.forecast = {{"2027-05-04", 20, 61, perhaps_count(0, 60), perhaps_count(0, 60)}};
    days.spread = perhaps_count(0, 33), days.pace_doubt = perhaps_count(0, 33);
    if (dice_.heads()) days.days_off = {"2027-05-31", "2027-07-05"};
    return days;
  }

  Ground ground() {
    return {perhaps<TapeMake>([&] { return pick<TapeMake>(2); }),
            perhaps_length(),
            perhaps_length(),
            perhaps<std::string>([&] { return name(); }),
            perhaps<bool>([&] { return dice_.heads(); }),
            perhaps<Chosen<BedRemedy>>([&] { return chosen<BedRemedy>(9); }),
            perhaps<Chosen<ShapeRemedy>>([&] { return chosen<ShapeRemedy>(2); })};
  }

  template <class Remedy>
  Chosen<Remedy> chosen(int count) {
    return {pick<Remedy>(count), perhaps<std::string>([&] { return name(); })};
  }

  Reading reading() {
    const auto any = [&] { return dice_.heads() ? length() : -length(); };
    const auto from = perhaps<std::string>([&] { return name(); });
    Reading reading{.id = name(), .when = label(), .by = label()};
    switch (dice_.below(6)) {
      case 0:
        reading.tape = TapeReading{name(), name(), length(), perhaps<Taped>([&] { return pick<Taped>(2); })};
        break;
      case 1:
        reading.rod = RodReading{name(),
                                 name(),
                                 any(),
                                 from,
                                 from,
                                 perhaps_length(),
                                 perhaps<Surface>([&] { return pick<Surface>(4); }),
                                 perhaps_length()};
        break;
      case 2: reading.dowel = DowelReading{name(), from, length(), any()}; break;
      case 3: reading.edge = EdgeReading{name(), from, length(), any()}; break;
      case 4: reading.two_peg = TwoPegReading{any(), any(), any(), any(), length(), length()}; break;
      default: reading.strike = name();
    }
    reading.note = lines();
    return reading;
  }

  Laying laying() {
    return {perhaps<WallRuleSet>([&] { return pick<WallRuleSet>(2); }),
            std::nullopt,
            perhaps_length(),
            perhaps<bool>([&] { return dice_.heads(); }),
            perhaps_length(),
            perhaps_length(),
            perhaps_length()};
  }

  LaidEntry laid() {
    const auto any = [&] { return dice_.heads() ? length() : -length(); };
    const int number = 1 + static_cast<int>(dice_.below(12));
    LaidEntry entry{.id = name(), .when = label(), .by = label()};
    switch (dice_.below(12)) {
      case 0: entry.mark = MarkReading{name(), number, length(), any(), std::nullopt}; break;
      case 1: entry.units = UnitSample{number, length(), {length()}}; break;
      case 2: entry.laid = CourseLaid{name(), number}; break;
      case 3: entry.gauge = GaugeReading{name(), number, any()}; break;
      case 4: entry.set = UnitSetting{name(), number, any(), any(), any(), any(), length(), perhaps_length()}; break;
      case 5: entry.gap = GapReading{name(), number, length(), length()}; break;
      case 6:
        entry.check = WallCheck{name(), number, pick<CheckKind>(6), perhaps_length(), any(), perhaps_length()};
        break;
      case 7: entry.found = FoundPlace{name(), FoundWhat::NearJamb, name(), length()}; break;
      case 8: entry.remark = Remark{name(), number}; break;
      case 9: entry.grouted = Grouted{name(), number, length(), pick<GroutWork>(2)}; break;
      case 10: entry.looked_at = LookedAt{pick<LookedAtWhat>(5), name(), number, length()}; break;
      default: entry.strike = name();
    }
    if (entry.remark || dice_.heads()) entry.photos = {name(), name()};
    entry.note = lines();
    return entry;
  }

  Dice dice_;
  int names_ = 0;
};

StatedLength feet(int count) { return {Length::feet(count)}; }

OwnSeries full_own_series() {
  const Length inch = Length::inches(1), sixteenth = Length::sixteenths(1);
  return {.id = "mine",
          .title = "Yard block",
          .full = 250 * sixteenth,
          .half = 122 * sixteenth,
          .thickness = 122 * sixteenth,
          .height = 122 * sixteenth,
          .half_high = 58 * sixteenth,
          .joint = 6 * sixteenth,
          .joint_tolerance = 2 * sixteenth,
          .least_piece = 4 * inch,
          .short_lap_margin = 8 * sixteenth,
          .cut_step = sixteenth,
          .face_shell = 20 * sixteenth,
          .full_cells = {{inch, 7 * inch}, {9 * inch, 14 * inch}},
          .half_cells = {{inch, 6 * inch}},
          .corner_leg = 122 * sixteenth,
          .made = {UnitKind::Full, UnitKind::Half, UnitKind::CornerSet}};
}

}  // namespace

Job random_job(std::uint64_t seed) { return JobMaker(seed).job(); }

Job full_job() {
  const Length inch = Length::inches(1);
  const Place place{"A", {Length::feet(4), Basis::Actual}, Face::Far};
  Job job;
  job.name = "Kiln house";
  job.notes = "First line\nsecond line";
  job.drawn_by = "Someone";
  job.issued = "November";
  job.tape = Tape::Millimetres;
  job.units = {.series = "mine",
               .own_series = {full_own_series()},
               .stocked = {{UnitKind::Full, UnitKind::Half, UnitKind::Solid}},
               .joint_least = Length::sixteenths(4),
               .joint_most = Length::sixteenths(8),
               .least_piece = 4 * inch,
               .cuts = {{4 * inch, 12 * inch}},
               .bond = BondWish::Quarter,
               .breakage = 8};
  job.outline = {false, Hand::Left, {{"front", "A", "B", feet(28), Turn::Left, "us-8"}}};
  job.interior_walls = {{"I1", "front", place, feet(9), JunctionKind::Lapped, JunctionKind::ControlJoint, "us-4"}};
  job.heights = {12, std::nullopt, HalfHighPlace::UnderHead, {3, 7}};
  job.openings = {
      {.name = "D1",
       .on = "front",
       .place = place,
       .masonry = MasonrySize{feet(9), feet(7)},
       .floor = feet(1),
       .sill = feet(-1),
       .lintel = Lintel{LintelMake::OnePiece, 2, 8 * inch, 48 * inch, LintelPiece::Precast, "L1", "640 lb"},
       .note = "See the door maker's sheet"},
      {.name = "D2", .on = "front", .place = place, .door = DoorSize{36 * inch, 80 * inch, inch, inch, inch, inch}},
      {.name = "G1",
       .on = "I1",
       .place = place,
       .overhead = OverheadSize{96 * inch, 84 * inch, inch, inch, inch, inch}},
      {.name = "W1",
       .on = "I1",
       .place = place,
       .window = WindowSize{36 * inch, 40 * inch, inch, inch, inch},
       .sill_course = 5}};
  job.control_joints = {JointRule::Uk, {{"front", place}}};
  job.steel = {Bars{"#5", Grout::Fine, true, true, true, 48 * inch, {{"front", place}}},
               {6, 12},
               2,
               120 * inch,
               6 * inch,
               24 * inch,
               WireCorners::Bent,
               WireTees::None,
               3,
               true,
               {6, 12},
               24 * inch,
               {"r1", "r2"},
               Lap{LapRule::AsDrawn, "1500 psi", "60 ksi", 24 * inch},
               240 * inch,
               Length::sixteenths(2),
               inch,
               BeamBars{"#4", 2, AtControlJoint::Pass},
               LintelBars{"#5", 1}};
  job.top = Top{"2x8",
                {"front", "I1"},
                192 * inch,
                Bolts{"1/2 in", 72 * inch, 12 * inch, 4 * inch, 2 * inch, 2 * inch},
                {{"front", place, 24 * inch, 3 * inch}}};
  job.order = Ordering{{{UnitKind::Full, 7, 90}},
                       MortarOf::CementLime,
                       MortarType::N,
                       MortarBy::Joints,
                       12,
                       15,
                       GroutAs::Truck,
                       8,
                       3,
                       9,
                       4,
                       "USD",
                       2,
                       {{"sand", "2.45"}},
                       "8.25",
                       "95",
                       {{"sand", 12}},
                       {{"wire", "9.5 lb"}},
                       "8000 lb"};
  job.days = Days{Crew::Mason,
                  2,
                  20,
                  7,
                  5,
                  120,
                  {{WorkKind::Lintels, 3}},
                  "2027-05-03",
                  "2027-05-20",
                  {Weekday::Monday},
                  {"2027-05-31"},
                  "2027-07-02",
                  {{"2027-05-04", 20, 61, 12, 25}},
                  20,
                  25};
  job.setting_out = {4 * inch,  24 * inch, 4 * inch,      4 * inch, feet(12).length, -inch,
                     48 * inch, 24 * inch, "0.001 lb/ft", "20 lb",  "160 lb",        inch};
  job.ground = {TapeMake::ClassTwo,
                inch,
                inch,
                "A",
                true,
                Chosen<BedRemedy>{BedRemedy::Grind, "2"},
                Chosen<ShapeRemedy>{ShapeRemedy::SquareLines, "1"}};
  job.readings = {{.id = "1",
                   .when = "noon",
                   .by = "K. O.",
                   .tape = TapeReading{"A", "B", feet(28).length, Taped::Poured},
                   .note = "cold"},
                  {.id = "2", .rod = RodReading{"1", "A", 50 * inch, "front", "A", inch, Surface::Floor, 20 * inch}},
                  {.id = "2a", .two_peg = TwoPegReading{inch, 2 * inch, inch, 2 * inch, inch, 50 * inch}},
                  {.id = "3", .dowel = DowelReading{"front", "A", 4 * inch, 4 * inch}},
                  {.id = "4", .edge = EdgeReading{"front", "A", 4 * inch, -inch}},
                  {.id = "5", .strike = "1"}};
  job.laying = {WallRuleSet::Uk,       Length::sixteenths(5), Length::sixteenths(9), true,
                Length::sixteenths(1), Length::sixteenths(1), Length::sixteenths(1)};
  job.laid = {{.id = "1",
               .when = "2026-05-09 14:20",
               .by = "K. O.",
               .mark = MarkReading{"front", 1, 47 * inch, -inch, std::nullopt},
               .photos = {"a.jpg"},
               .note = "windy"},
              {.id = "2", .mark = MarkReading{"front", 1, 47 * inch, std::nullopt, 48 * inch}},
              {.id = "3", .units = UnitSample{10, 156 * inch, {15 * inch}}},
              {.id = "4", .laid = CourseLaid{"front", 1}},
              {.id = "5", .gauge = GaugeReading{"front", 2, inch}},
              {.id = "6", .set = UnitSetting{"front", 1, inch, -inch, inch, inch, inch, inch}},
              {.id = "7", .gap = GapReading{"front", 1, 47 * inch, 16 * inch}},
              {.id = "8", .check = WallCheck{"front", 1, CheckKind::BedJoint, 96 * inch, inch, inch}},
              {.id = "9", .found = FoundPlace{"front", FoundWhat::FarJamb, "D1", 90 * inch}},
              {.id = "10", .strike = "2"},
              {.id = "11", .remark = Remark{"front", 3}, .photos = {"cell.jpg"}},
              {.id = "12", .grouted = Grouted{"front", 7, 4 * inch, GroutWork::Again}},
              {.id = "13", .looked_at = LookedAt{LookedAtWhat::Cleanout, "front", 1, 4 * inch}}};
  return job;
}

}  // namespace stringcourse::test
