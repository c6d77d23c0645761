#include "solve/printed_set.hpp"

#include <algorithm>
#include <utility>

#include "ink/pdf.hpp"
#include "solve/concession_findings.hpp"

namespace stringcourse {

namespace {

/// What is given up names on paper the offer that would keep the rule.
std::vector<Finding> printed_findings(const Answer& answer) {
  std::vector<Finding> findings = answer.findings;
  for (std::size_t f = 0; f < findings.size(); ++f) {
    if (!conceded_in(findings[f])) continue;
    const auto mends = [&](const Offer& offer) { return std::ranges::contains(offer.mends, f); };
    const auto offer = std::ranges::find_if(answer.offers, mends);
    if (offer != answer.offers.end()) findings[f].text += " Offer: " + offer->text + ".";
  }
  return findings;
}

}  // namespace

sheet::SheetWords sheet_words(const Answer& answer) {
  sheet::SheetWords words;
  words.language = &sheet::words_of(answer.building);
  words.name = answer.job.name;
  words.notes = answer.job.notes;
  words.issued = answer.job.issued;
  words.drawn_by = answer.job.drawn_by;
  words.findings = printed_findings(answer);
  if (!answer.job.readings.empty()) words.found = &answer.found, words.found_dowels = &answer.found_dowels, words.dowel_search = &answer.dowel_search;
  if (answer.slab.fit) words.fit = &*answer.slab.fit, words.face_lines = &answer.slab.face_lines;
  if (!answer.slab.lacks.empty()) words.slab_lacks = &answer.slab.lacks;
  words.dowels = &answer.dowels;
  if (answer.dowels_now) words.dowels_now = &*answer.dowels_now;
  const PourOf pour = pour_of(answer);
  if (&pour.building != &answer.building) words.poured_building = &pour.building, words.poured_layout = &pour.layout;
  words.dowel_lap = answer.job.steel.dowel_lap;
  if (answer.job.setting_out) words.setting_out = &*answer.job.setting_out, words.boards = &answer.boards, words.rod_readings = &answer.rod_readings;
  if (answer.as_built) {
    for (const CourseChange& change : answer.as_built->changes) words.changes.emplace_back(change_text(answer.building, change), change.units);
    words.changed_pieces = &answer.as_built->pieces;
  }
  if (answer.laid) words.laid = &*answer.laid, words.log = &answer.job.laid;
  return words;
}

std::string_view set_file_name(sheet::Paper paper) {
  return paper == sheet::Paper::Letter ? "set-letter.pdf" : "set-a4.pdf";
}

void write_set(const Answer& answer, sheet::Paper paper, ink::Sink sink,
               const std::function<void(std::size_t, std::size_t)>& page_done, const sheet::FontFiles& fonts) {
  const sheet::SheetWords words = sheet_words(answer);
  const std::size_t all = page_done ? sheet::sheet_names(answer.building, answer.layout, words, paper).size() : 0;
  std::size_t done = 0;
  ink::PdfWriter writer(std::move(sink), {.title = answer.job.name, .fonts = fonts});
  sheet::for_each_sheet(answer.building, answer.layout, words, paper, [&](const sheet::Sheet& sheet) {
    writer.add(sheet);
    if (page_done) page_done(++done, all);
  });
  writer.finish();
}

}  // namespace stringcourse
