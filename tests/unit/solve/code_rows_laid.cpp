// What the laid log comes to. In the kiln house D1 stands in AB, and course 1 of AB begins with a joint: a mark at
// 55 5/8 in, the next one 48 in on.
#include "code_rows.hpp"
#include "unit/walls/made_jobs.hpp"

namespace stringcourse::tests {
namespace {

constexpr Length kFirst = Length::sixteenths(55 * 16 + 10);

template <class Member>
LaidEntry entry(const std::string& id, Member LaidEntry::* member, Member value) {
  LaidEntry one;
  one.id = id;
  one.*member = std::move(value);
  return one;
}
LaidEntry mark(const std::string& id, Length place, Length past) {
  return entry<std::optional<MarkReading>>(id, &LaidEntry::mark, MarkReading{"AB", 1, place, past, {}});
}
LaidEntry gap(const std::string& on, int course, Length place, Length measured) {
  return entry<std::optional<GapReading>>("g", &LaidEntry::gap, GapReading{on, course, place, measured});
}
LaidEntry laid(const std::string& on, int course) {
  return entry<std::optional<CourseLaid>>(on + std::to_string(course), &LaidEntry::laid, CourseLaid{on, course});
}
LaidEntry found(const std::string& id, FoundPlace place) {
  return entry<std::optional<FoundPlace>>(id, &LaidEntry::found, std::move(place));
}
Told logged(std::vector<LaidEntry> log) {
  Job job = example("kiln-house");
  job.laid = std::move(log);
  return told_of(job);
}
/// The near jamb of the door in BC found so far from its plan toward B, read twice.
Told jamb_found(Length off, std::vector<LaidEntry> log = {}) {
  const auto planned = solve(example("kiln-house"), {});
  const ResolvedOpening& door = planned->building.openings[1];
  const Length place = door.from.distance_from_start() - off;
  for (const char* id : {"f", "f2"}) log.push_back(found(id, {"BC", FoundWhat::NearJamb, door.name, place}));
  return logged(std::move(log));
}
/// A unit of course 1 of BC is down and read; then the far jamb of its door is found 1 1/8 in off its plan, twice.
Told with_far_jamb_found_far_off() {
  const LaidEntry read = entry<std::optional<MarkReading>>(
      "m", &LaidEntry::mark, MarkReading{"BC", 1, Length::sixteenths(191 * 16 + 10), -in16(0, 8), {}});
  const FoundPlace jamb{"BC", FoundWhat::FarJamb, "D2", in16(86, 8)};
  return logged({laid("CD", 2), read, found("f", jamb), found("f2", jamb)});
}

/// Course 1 of AB laid on that day, or nobody says when; the days as the job states them.
Told laid_on(const std::string& day, std::optional<std::string> start, std::optional<std::string> log_until = {}) {
  Job job = example("kiln-house");
  job.laid = {laid("AB", 1)};
  job.laid.front().when = day;
  job.days.emplace();
  job.days->start = std::move(start), job.days->log_until = std::move(log_until);
  return told_of(job);
}

}  // namespace

std::vector<CodeRow> laid_rows() {
  return {
      {"log-until-early", "/days/log_until", [] { return laid_on("2027-05-06 16:00", {}, "2027-05-05"); }},
      {"log-before-start", "/days/start", [] { return laid_on("2027-05-06 16:00", "2027-05-07"); }},
      {"log-undated", "/days/log_until", [] { return laid_on("", "2027-05-03"); }},
      {"laid-entry-unknown", "/laid/0", [] { return logged({laid("AB", 99)}); }},
      {"no-such-mark", "/laid/0", [] { return logged({mark("1", in(50), {})}); }},
      {"mark-reading-doubtful", "/laid/0", [] { return logged({mark("1", kFirst, in(3))}); }},
      {"mark-read-twice", "/laid/1",
       [] { return logged({mark("1", kFirst, in16(0, 1)), mark("2", kFirst, in16(0, 5))}); }},
      {"beds-cannot-meet", "/laid/0",
       [] {
         return logged({entry<std::optional<GaugeReading>>("1", &LaidEntry::gauge, GaugeReading{"AB", 10, in(2)})});
       }},
      {"out-of-tolerance", "/laid/0",
       [] {
         return logged({entry<std::optional<WallCheck>>(
             "1", &LaidEntry::check, WallCheck{"AB", 1, CheckKind::Plumb, Length::feet(5), in(1), in16(0, 1)})});
       }},
      {"gap-in-opening", "/laid/0", [] { return logged({gap("AB", 1, Length::feet(10), in16(16, 6))}); }},
      {"gap-cannot-close", "/laid/0", [] { return logged({gap("DA", 2, in16(71, 10), in(1))}); }},
      {"found-place-doubtful", "/laid/0", [] { return logged({found("f", {"BC", FoundWhat::WallEnd, {}, in(200)})}); }},
      {"opening-too-narrow", "/openings/1", [] { return jamb_found(-in(2)); }},
      {"dowel-without-bar", "/steel", [] { return jamb_found(in(6)); }},
      {"bar-without-dowel", "/steel", [] { return jamb_found(in(12)); }},
      {"joints-lose", "/laid/1", [] { return told_of_case("joints-lose", 0); }},
      {"course-cannot-close", "/laid/5", [] { return told_of_case("course-cannot-close", 0); }},
      {"closure-loses-lap", "/laid/0", [] { return told_of_case("closure-loses-lap", 0); }},
      {"laid-unit-comes-up", "/laid", [] { return with_far_jamb_found_far_off(); }},
      {"bars-do-not-fit", "/laid/0", [] { return told_of_case("bars-do-not-fit"); }},
      {"found-place", "/laid/1", [] { return told_of_case("found-place"); }},
      {"found-place-not-built", "/laid/1", [] { return told_of_case("found-place-not-built"); }},
      {"laid-courses-do-not-fit", "/laid/2", [] { return told_of_case("laid-courses-do-not-fit"); }},
  };
}

}  // namespace stringcourse::tests
