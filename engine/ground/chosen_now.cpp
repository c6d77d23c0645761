#include "ground/chosen_now.hpp"

#include <algorithm>

#include "ground/shape_choices.hpp"

namespace stringcourse::ground {
namespace {

/// The job as it was read when something was chosen; none where that reading is not known.
std::optional<Job> job_then(const Job& job, const std::optional<std::string>& after) {
  if (!after) return std::nullopt;
  const auto last = std::ranges::find(job.readings, *after, &Reading::id);
  if (last == job.readings.end()) return std::nullopt;
  Job then = job;
  then.readings.resize(static_cast<std::size_t>(last - job.readings.begin()) + 1);
  return then;
}

template <class Choice, class Remedy>
const Choice* choice_of(const std::vector<Choice>& choices, Remedy remedy) {
  const auto found = std::ranges::find(choices, remedy, &Choice::what);
  return found == choices.end() ? nullptr : &*found;
}

const BedAsFound* bed_of(const std::optional<LevelsAsFound>& levels) {
  return levels && levels->bed ? &*levels->bed : nullptr;
}

/// How a remedy of the bed is told where no reading says how much of it.
Fact bed_named(BedRemedy remedy) {
  switch (remedy) {
    case BedRemedy::Level: return fact("choice-level");
    case BedRemedy::GroutFirstCourse: return fact("choice-grout", {first_bed_range(FirstCourse::Grouted).most});
    case BedRemedy::TiltCourse: return fact("chosen-tilt");
    case BedRemedy::Grind: return fact("chosen-grind");
    case BedRemedy::RipUnits: return fact("chosen-rip");
    case BedRemedy::LevellingStrip: return fact("chosen-strip");
    case BedRemedy::HalfHigh: return fact("chosen-half-high");
    case BedRemedy::Step: return fact("chosen-step");
    case BedRemedy::Curb: return fact("chosen-curb");
  }
  return {};
}

Fact bed_then(const Job& job, const Building& building, const Layout& layout) {
  const auto& chosen = *job.ground->bed_remedy;
  const std::optional<Job> then = job_then(job, chosen.after);
  if (!then || chosen.remedy == BedRemedy::GroutFirstCourse) return bed_named(chosen.remedy);
  const auto levels = levels_as_found(*then, building, layout, entries_that_count(*then, building));
  const BedAsFound* const bed = bed_of(levels);
  const BedChoice* const choice = bed == nullptr ? nullptr : choice_of(bed->choices, chosen.remedy);
  return choice == nullptr ? bed_named(chosen.remedy) : choice_said(*choice);
}

ChosenNow bed_now(const AsFound& found, const Job& job, const Building& building, const Layout& layout) {
  const auto& chosen = *job.ground->bed_remedy;
  const Fact then = bed_then(job, building, layout);
  const BedAsFound* const bed = bed_of(found.levels);
  if (bed == nullptr || bed->choices.empty()) return {then, fact("chosen-not-read")};
  const auto otherwise = [&](Fact why) { return ChosenNow{then, std::move(why)}; };
  if (chosen.remedy == BedRemedy::GroutFirstCourse)
    return bed->level.margin < Length() ? otherwise(fact("chosen-not-enough")) : ChosenNow{then, {}};
  const BedChoice* const choice = choice_of(bed->choices, chosen.remedy);
  if (choice == nullptr) return otherwise(fact(bed->level.margin < Length() ? "chosen-no-help" : "chosen-no-need"));
  const Fact now = choice_said(*choice);
  if (!choice->keeps && chosen.remedy != BedRemedy::Level) return {now, fact("chosen-not-enough")};
  const bool known = job_then(job, chosen.after).has_value();
  return known && now != then ? ChosenNow{now, fact("chosen-was", {then})} : ChosenNow{now, {}};
}

Fact shape_named(ShapeRemedy remedy) {
  return fact(remedy == ShapeRemedy::MovePegs ? "chosen-move-pegs" : "chosen-square-lines");
}

ChosenNow shape_now(const AsFound& found, const Job& job, const Building& building) {
  const auto& chosen = *job.ground->shape_remedy;
  const ShapeChoice* const now = choice_of(found.tape.choices, chosen.remedy);
  const std::optional<Job> job_before = job_then(job, chosen.after);
  Fact then = shape_named(chosen.remedy);
  if (job_before) {
    const std::vector<bool> counts = entries_that_count(*job_before, building);
    const TapeAsFound tape = tape_as_found(*job_before, building, counts);
    const std::vector<ShapeChoice> choices = shape_choices(building, tape, !tape.of_lines);
    if (const ShapeChoice* const choice = choice_of(choices, chosen.remedy)) then = choice->says;
  }
  if (chosen.remedy == ShapeRemedy::MovePegs && !found.tape.of_lines && !found.tape.lines.empty()) {
    const bool off = found.tape.verdict == Verdict::DoesNotFit;
    return {then, off ? fact("chosen-poured-off") : Fact()};
  }
  if (now == nullptr) {
    const bool fits = found.tape.verdict == Verdict::Fits;
    return {then, fact(fits ? "chosen-fits-now" : "chosen-not-read")};
  }
  return job_before && now->says != then ? ChosenNow{now->says, fact("chosen-was", {then})} : ChosenNow{now->says, {}};
}

/// Said at the point where it was chosen, and at those before and after that build on it.
void find_against(AsFound& found, const ChosenNow& chosen, std::string place, std::initializer_list<HoldPoint> points) {
  if (chosen.against.empty()) return;
  for (const HoldPoint point : points)
    found.findings.push_back(
        {"chosen-otherwise", place, fact("chosen-otherwise", {chosen.says, chosen.against}), "", point});
}

}  // namespace

void hold_chosen(AsFound& found, const Job& job, const Building& building, const Layout& layout) {
  if (!job.ground) return;
  if (job.ground->shape_remedy) {
    found.shape_chosen = shape_now(found, job, building);
    find_against(found, *found.shape_chosen, "/ground/shape_remedy", {HoldPoint::Pour, HoldPoint::FirstCourse});
  }
  if (!job.ground->bed_remedy) return;
  found.bed_chosen = bed_now(found, job, building, layout);
  find_against(found, *found.bed_chosen, "/ground/bed_remedy", {HoldPoint::Pour, HoldPoint::FirstCourse});
}

}  // namespace stringcourse::ground
