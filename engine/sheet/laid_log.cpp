// The laid log, struck entries too; how far the work is.
#include <algorithm>

#include "job/strikes.hpp"
#include "measure/digits.hpp"
#include "sheet/mark_words.hpp"
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

using laying::AsLaid;
using laying::CourseAsLaid;
using laying::RunAsLaid;
using laying::WallMark;

class Log {
 public:
  Log(Table& table, const Context& context)
      : table_(table),
        context_(context),
        laid_(*context.answer.laid),
        words_(context.words),
        standing_(entries_standing(context.answer.job.laid)) {}

  void add(std::size_t index) {
    const LaidEntry& entry = context_.answer.job.laid[index];
    if (entry.mark) add_mark(index, entry);
    else if (entry.units) add_units(index, entry);
    else if (entry.laid)
      row(index, words::fill_in(words_.laid_course, {course(entry.laid->on, entry.laid->course)}), "", "");
    else if (entry.gauge) add_gauge(index, entry);
    else if (entry.set) add_set(index, entry);
    else if (entry.gap) add_gap(index, entry);
    else if (entry.check) add_check(index, entry);
    else if (entry.found)
      row(index, words::fill_in(words_.laid_found, {found_name(*entry.found)}), both_forms(entry.found->at, tape()),
          "");
    else if (entry.remark)
      row(index, words::fill_in(words_.laid_remark, {course(entry.remark->on, entry.remark->course)}), "", "");
    else if (entry.grouted) add_grouted(index, *entry.grouted);
    else if (entry.looked_at) add_looked_at(index, *entry.looked_at);
    else if (entry.strike) row(index, words::fill_in(words_.laid_strike, {*entry.strike}), "", "");
  }

 private:
  Tape tape() const { return context_.tape(); }
  static std::string course(const std::string& on, int number) { return on + "-" + number_text(number); }
  std::string found_name(const FoundPlace& found) const {
    if (found.what == FoundWhat::WallEnd) return words::fill_in(words_.laid_far_end, {found.on});
    return words::fill_in(found.what == FoundWhat::NearJamb ? words_.mark_near_jamb : words_.mark_far_jamb,
                          {found.opening.value_or("")});
  }

  void row(std::size_t index, const std::string& what, const std::string& read, std::string says) {
    const LaidEntry& entry = context_.answer.job.laid[index];
    const bool struck = !standing_[index];
    if (struck) says = std::string(words_.laid_struck);
    if (!entry.note.empty()) says += (says.empty() ? "" : "; ") + entry.note;
    if (!entry.photos.empty())
      says += (says.empty() ? "" : "; ") + words::fill_in(words_.laid_photos, {joined(entry.photos, ", ")});
    table_.add_row({entry.when + (entry.by.empty() || entry.when.empty() ? "" : ", ") + entry.by, what, read, says});
  }

  void add_grouted(std::size_t index, const Grouted& done) {
    row(index,
        words::fill_in(done.work == GroutWork::Filled ? words_.steel.grouted : words_.steel.again,
                       {course(done.on, done.course), both_forms(done.at, tape())}),
        "", "");
  }

  void add_looked_at(std::size_t index, const LookedAt& seen) {
    row(index,
        words::fill_in(words_.steel.looked_at,
                       {course(seen.on, seen.course), both_forms(seen.at, tape()),
                        std::string(words_.steel.looked_at_what[static_cast<std::size_t>(seen.what)])}),
        "", "");
  }

  void add_mark(std::size_t index, const LaidEntry& entry) {
    const MarkReading& reading = *entry.mark;
    const Length past = reading.past ? *reading.past : *reading.read - reading.at;
    std::string says(words_.laid_unused);
    for (const CourseAsLaid& one : laid_.begun) {
      for (const WallMark& mark : one.marks) {
        if (!std::ranges::contains(mark.entries, index)) continue;
        const RunAsLaid& run = one.runs[static_cast<std::size_t>(mark.run)];
        says = mark.state == WallMark::State::Doubtful ? found_text(context_, mark)
               : run.laid == mark.units                ? context_.told(laying::next_said(run))
                                                       : "";
      }
    }
    row(index, words::fill_in(words_.laid_mark, {course(reading.on, reading.course), both_forms(reading.at, tape())}),
        past_text(context_, past), says);
  }

  void add_units(std::size_t index, const LaidEntry& entry) {
    std::string read;
    if (entry.units->row)
      read =
          words::fill_in(words_.laid_row, {number_text(*entry.units->together), both_forms(*entry.units->row, tape())});
    if (!entry.units->singles.empty())
      read += (read.empty() ? "" : "; ") +
              words::fill_in(words_.laid_singles, {number_text(static_cast<long long>(entry.units->singles.size()))});
    std::string says;
    if (laid_.how.batch) {
      const Length mean = rounded_to(laid_.how.batch->mean,
                                     tape() == Tape::Inches ? Length::sixty_fourths(1) : Length::nanometres(100'000));
      says = words::fill_in(words_.laid_mean, {exact_text(mean, tape()), number_text(laid_.how.batch->units),
                                               verdict(laid_.how.batch->within)});
    }
    row(index, std::string(words_.laid_units), read, says);
  }

  std::string verdict(laying::Verdict verdict) const {
    return std::string(words_.laid_verdicts[verdict == laying::Verdict::Fits         ? 0
                                            : verdict == laying::Verdict::CannotTell ? 1
                                                                                     : 2]);
  }

  void add_gauge(std::size_t index, const LaidEntry& entry) {
    std::string says;
    for (const laying::GaugeAsLaid& gauge : laid_.gauges) {
      if (gauge.entry != index || gauge.to_course == 0) continue;
      std::vector<std::string> beds;
      for (std::size_t k = 0; gauge.beds && k < gauge.beds->beds.size(); ++k)
        beds.push_back(tape_text(gauge.beds->beds[k], tape()));
      says = gauge.beds ? words::fill_in(words_.laid_beds,
                                         {context_.told(gauge.to_what),
                                          number_text(gauge.courses.front()) + "-" + number_text(gauge.courses.back()),
                                          joined(beds, ", ")})
                        : words::fill_in(words_.laid_no_beds, {context_.told(gauge.to_what)});
    }
    const Length high = entry.gauge->high;
    row(index, words::fill_in(words_.laid_gauge, {course(entry.gauge->on, entry.gauge->course)}),
        words::fill_in(high < Length() ? words_.laid_low : words_.laid_high, {tape_text(magnitude(high), tape())}),
        says);
  }

  void add_set(std::size_t index, const LaidEntry& entry) {
    const auto set = std::ranges::find(laid_.sets, index, &laying::SetAsLaid::entry);
    std::vector<std::string> says;
    if (set != laid_.sets.end()) {
      if (set->advice.lift) says.emplace_back(words_.laid_lift);
      for (const laying::Tap& tap : set->advice.taps)
        says.push_back(words::fill_in(words_.laid_tap, {std::string(words_.laid_corners[static_cast<int>(tap.corner)]),
                                                        tape_text(tap.down, tape())}));
      if (says.empty()) says.emplace_back(words_.laid_right);
      if (set->from_line && *set->from_line != Length())
        says.push_back(words::fill_in(*set->from_line < Length() ? words_.laid_line_out : words_.laid_line_in,
                                      {tape_text(magnitude(*set->from_line), tape())}));
    }
    row(index, words::fill_in(words_.laid_set, {course(entry.set->on, entry.set->course)}),
        words::fill_in(words_.laid_bed, {tape_text(entry.set->bed, tape())}), joined(says, words_.laid_then));
  }

  void add_gap(std::size_t index, const LaidEntry& entry) {
    const auto gap = std::ranges::find(laid_.gaps, index, &laying::GapAsLaid::entry);
    std::string says(words_.laid_no_closure);
    if (gap != laid_.gaps.end() && gap->opening >= 0) says = words_.laid_gap_open;
    if (gap != laid_.gaps.end() && gap->closure) says = context_.told(laying::closure_said(*gap->closure));
    row(index,
        words::fill_in(words_.laid_gap, {course(entry.gap->on, entry.gap->course), both_forms(entry.gap->at, tape())}),
        both_forms(entry.gap->measured, tape()), says);
  }

  void add_check(std::size_t index, const LaidEntry& entry) {
    const auto check = std::ranges::find(laid_.checks, index, &laying::CheckAsLaid::entry);
    std::string says;
    if (check != laid_.checks.end()) {
      says = words::fill_in(words_.laid_limits,
                            {verdict(check->verdict), tape_text(check->allowed_least, tape()),
                             tape_text(check->allowed_most, tape()), tape_text(check->doubt, tape())}) +
             "; " + words::cited(check->rule, context_.reader());
    }
    row(index,
        words::fill_in(words_.laid_checks[static_cast<int>(entry.check->what)],
                       {course(entry.check->on, entry.check->course)}),
        tape_text(entry.check->off, tape()), says);
  }

  Table& table_;
  const Context& context_;
  const AsLaid& laid_;
  const words::SheetWords& words_;
  std::vector<bool> standing_;  // struck entries do not
};

Table laid_table(const Context& context) {
  const words::SheetWords& words = context.words;
  Table table = new_table(
      context.page.drawing.width(), words.title_laid,
      {{words.laid_when, 16}, {words.laid_what, 26}, {words.laid_reading, 18}, {words.laid_says, 40}}, kSmallText);
  if (!context.answer.laid || context.answer.job.laid.empty()) return table;
  const laying::Progress& progress = context.answer.laid->progress;
  const std::string pace =
      progress.per_day == 0
          ? ""
          : words::fill_in(words.laid_pace, {number_text(progress.days), number_text(progress.per_day),
                                             number_text(progress.days_left)});
  table.add_heading(
      words::fill_in(words.laid_progress, {number_text(progress.units_laid), number_text(progress.units_all), pace}));
  Log log(table, context);
  for (std::size_t index = 0; index < context.answer.job.laid.size(); ++index) log.add(index);
  return table;
}

}  // namespace

constinit const SheetKind kLaidLogSheet{
    .name = "laid-log",
    .hold_point = HoldPoint::FirstCourse,
    .purpose = &words::SheetWords::purpose_log,
    .caution = {"wet-cement"},
    .table = laid_table,
};

}  // namespace stringcourse::sheet
