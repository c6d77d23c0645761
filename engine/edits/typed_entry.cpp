#include "edits/typed_entry.hpp"

#include <algorithm>
#include <optional>
#include <vector>

#include "edits/typed_length.hpp"
#include "edits/typed_opening.hpp"
#include "job/words.hpp"

namespace stringcourse {
namespace {

// A side of 120 in is a shed's; one of 120 ft is a building's as well. A rod's reading is never in feet alone.
constexpr TypedMeasure kSide{Length::inches(120), Length::millimetres(999)}, kSmall{};

std::string_view form_of(EntryWhat what) {
  switch (what) {
    case EntryWhat::Tape: return "write-typed-tape";
    case EntryWhat::Rod: return "write-typed-rod";
    case EntryWhat::Dowel: return "write-typed-dowel";
    case EntryWhat::Edge: return "write-typed-edge";
    case EntryWhat::Mark: return "write-typed-mark";
    case EntryWhat::Course: return "write-typed-course";
    case EntryWhat::Gauge: return "write-typed-gauge";
    case EntryWhat::Jamb: return "write-typed-jamb";
    case EntryWhat::Strike: break;
  }
  return "write-typed-strike";
}

std::vector<std::string> ids_of(const Job& job) {
  std::vector<std::string> ids;
  for (const Reading& reading : job.readings) ids.push_back(reading.id);
  for (const LaidEntry& entry : job.laid) ids.push_back(entry.id);
  return ids;
}

std::string free_id(const Job& job) {
  const std::vector<std::string> ids = ids_of(job);
  for (std::size_t number = ids.size() + 1;; ++number) {
    std::string id = number_text(static_cast<long long>(number));
    if (!std::ranges::contains(ids, id)) return id;
  }
}

/// What was typed, part by part, and what is wrong with it so far.
class Parts {
 public:
  Parts(const Job& job, const TypedEntry& typed, const std::string& place) : job_(job), typed_(typed), place_(place) {
    refusals.tape = job.tape;
    parts_.emplace_back();
    for (const char byte : typed.text) {
      if (byte == ':') parts_.emplace_back();
      else parts_.back() += byte;
    }
  }
  [[nodiscard]] std::size_t count() const { return parts_.size(); }
  [[nodiscard]] const std::string& text(std::size_t at) const { return parts_[at]; }

  /// False, and refused, where there are not so many parts.
  bool are(std::size_t least, std::size_t most) {
    const bool right = parts_.size() >= least && parts_.size() <= most &&
                       std::ranges::none_of(parts_, [](const std::string& part) { return part.empty(); });
    if (!right)
      refusals.add({"not-a-length", place_, fact("typed-entry-form", {FactValue::typed(typed_.text)}), remedy()});
    return right;
  }
  Length length(std::size_t at, const TypedMeasure& measure = kSmall) {
    return read_typed_length(parts_[at], job_.tape, measure, place_, refusals).length;
  }
  std::string wall(std::size_t at) { return one_of(at, wall_names(job_), "unknown-wall", "typed-no-wall"); }
  [[nodiscard]] bool is_wall(std::size_t at) const { return std::ranges::contains(wall_names(job_), parts_[at]); }
  std::string corner(std::size_t at) {
    std::vector<std::string> names;
    for (const Side& side : job_.outline.sides) {
      for (const std::string& name : {side.from, side.to})
        if (!std::ranges::contains(names, name)) names.push_back(name);
    }
    return one_of(at, names, "unknown-corner", "typed-no-corner");
  }
  const Opening* opening(std::size_t at) {
    std::vector<std::string> names;
    for (const Opening& opening : job_.openings) names.push_back(opening.name);
    const std::string name = one_of(at, names, "unknown-name", "typed-no-opening");
    const auto found = std::ranges::find(job_.openings, name, &Opening::name);
    return found == job_.openings.end() ? nullptr : &*found;
  }
  std::string id(std::size_t at) {
    if (!std::ranges::contains(ids_of(job_), parts_[at]))
      refusals.add({"unknown-name", place_, fact("typed-no-entry", {FactValue::typed(parts_[at])}), Fact()});
    return parts_[at];
  }
  int course(std::size_t at) {
    int number = 0;
    for (const char digit : parts_[at]) {
      if (digit < '0' || digit > '9' || number > 10'000) {
        refusals.add({"course-range", place_, fact("typed-no-course", {FactValue::typed(parts_[at])}), remedy()});
        return 1;
      }
      number = number * 10 + (digit - '0');
    }
    return number;
  }
  /// "3/16 past", "1/8 low", "on": over zero with the first word, under it with the second.
  Length off(std::size_t at, std::string_view over, std::string_view under) {
    std::string text = parts_[at];
    if (text == "on" || text == "0") return {};
    const std::size_t space = text.rfind(' ');
    const std::string word = space == std::string::npos ? std::string() : text.substr(space + 1);
    if (word != over && word != under) {
      refusals.add({"not-a-length", place_, fact("typed-entry-form", {FactValue::typed(typed_.text)}), remedy()});
      return {};
    }
    const Length size = read_typed_length(text.substr(0, space), job_.tape, kSmall, place_, refusals).length;
    return word == over ? size : -size;
  }
  void refuse_form() {
    refusals.add({"not-a-length", place_, fact("typed-entry-form", {FactValue::typed(typed_.text)}), remedy()});
  }

  Refusals refusals;

 private:
  [[nodiscard]] Fact remedy() const {
    return typed_.what == EntryWhat::Strike ? fact(form_of(typed_.what), {FactValue::typed("1")})
                                            : fact(form_of(typed_.what));
  }
  std::string one_of(std::size_t at, const std::vector<std::string>& names, Code code, std::string_view says) {
    if (std::ranges::contains(names, parts_[at])) return parts_[at];
    const std::vector<std::string_view> known(names.begin(), names.end());
    const std::string_view nearest = nearest_name(parts_[at], known);
    refusals.add({code, place_, fact(says, {FactValue::typed(parts_[at]), listed(FactValue::Kind::Or, known)}),
                  nearest.empty() ? Fact() : fact("meant-series", {nearest})});
    return {};
  }

  const Job& job_;
  const TypedEntry& typed_;
  const std::string& place_;
  std::vector<std::string> parts_;
};

void read_rod(Parts& parts, Reading& reading) {
  if (!parts.are(3, 4)) return;
  RodReading rod;
  rod.setup = parts.text(0), rod.station = parts.text(1), rod.rod = parts.length(parts.count() - 1);
  if (parts.count() == 4) {
    rod.on = parts.wall(1);
    rod.at = parts.length(2);
    rod.station = parts.text(1) + " " + parts.text(2);
  }
  reading.rod = std::move(rod);
}

/// The entries that the readings' log takes.
void read_reading(Parts& parts, EntryWhat what, Reading& reading) {
  if (what == EntryWhat::Rod) return read_rod(parts, reading);
  if (!parts.are(3, 3)) return;
  if (what == EntryWhat::Tape) reading.tape = TapeReading{parts.corner(0), parts.corner(1), parts.length(2, kSide)};
  else if (what == EntryWhat::Dowel)
    reading.dowel = DowelReading{parts.wall(0), std::nullopt, parts.length(1), parts.length(2)};
  else reading.edge = EdgeReading{parts.wall(0), std::nullopt, parts.length(1), parts.length(2)};
}

void read_jamb(Parts& parts, LaidEntry& entry) {
  if (!parts.are(3, 3)) return;
  const Opening* opening = parts.opening(0);
  const bool near = parts.text(1) == "near", far = parts.text(1) == "far";
  if (!near && !far) return parts.refuse_form();
  const Length at = parts.length(2);
  if (opening != nullptr)
    entry.found = FoundPlace{opening->on, near ? FoundWhat::NearJamb : FoundWhat::FarJamb, opening->name, at};
}

/// The entries that the laid log takes.
void read_laid(Parts& parts, EntryWhat what, LaidEntry& entry) {
  if (what == EntryWhat::Jamb) return read_jamb(parts, entry);
  if (what == EntryWhat::Course) {
    if (parts.are(2, 2)) entry.laid = CourseLaid{parts.wall(0), parts.course(1)};
  } else if (what == EntryWhat::Gauge) {
    if (parts.are(3, 3)) entry.gauge = GaugeReading{parts.wall(0), parts.course(1), parts.off(2, "high", "low")};
  } else if (parts.are(4, 4)) {
    entry.mark = MarkReading{parts.wall(0), parts.course(1), parts.length(2), parts.off(3, "past", "short"), {}};
  }
}

bool is_of_readings(const Job& job, const TypedEntry& typed) {
  if (typed.what == EntryWhat::Strike) return std::ranges::contains(job.readings, typed.text, &Reading::id);
  return typed.what <= EntryWhat::Edge;
}

}  // namespace

std::expected<Job, Refusals> with_typed_entry(const Job& job, const TypedEntry& typed, const std::string& place) {
  Parts parts(job, typed, place);
  Job with = job;
  const std::string id = free_id(job);
  if (is_of_readings(job, typed)) {
    Reading reading;
    reading.id = id, reading.when = typed.when, reading.by = typed.by, reading.note = typed.note;
    if (typed.what == EntryWhat::Strike) reading.strike = typed.text;
    else read_reading(parts, typed.what, reading);
    with.readings.push_back(std::move(reading));
  } else {
    LaidEntry entry;
    entry.id = id, entry.when = typed.when, entry.by = typed.by, entry.note = typed.note;
    if (typed.what == EntryWhat::Strike) entry.strike = parts.id(0);
    else read_laid(parts, typed.what, entry);
    with.laid.push_back(std::move(entry));
  }
  if (!parts.refusals.empty()) return std::unexpected(std::move(parts.refusals));
  return with;
}

}  // namespace stringcourse
