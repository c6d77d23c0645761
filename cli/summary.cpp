#include "cli/summary.hpp"

#include <algorithm>
#include <ranges>

#include "cli/named.hpp"
#include "cli/text_block.hpp"
#include "job/words.hpp"
#include "measure/notation.hpp"
#include "supply/counts.hpp"
#include "supply/lintels.hpp"
#include "words/language.hpp"
#include "words/sheet_words.hpp"

namespace stringcourse::cli {

namespace {

constexpr std::size_t kShownOffers = 5;
constexpr std::size_t kShownFindings = 20;  // of one hold point
constexpr std::size_t kShownSides = 40;
constexpr HoldPoint kHoldPoints[] = {HoldPoint::Order,   HoldPoint::Pour,  HoldPoint::FirstCourse,
                                     HoldPoint::Lintels, HoldPoint::Grout, HoldPoint::Top};

using enum Table::Align;

struct Page {
  const Answer& answer;
  Emphasis emphasis;
  std::string text;

  void title(const Fact& fact) { text += "\n" + heading(told(fact), emphasis) + "\n"; }
  void line(const Fact& fact) { text += wrapped("  ", told(fact)); }
  void item(const Fact& fact) { text += wrapped("  - ", told(fact)); }
  void more(std::size_t count, void (Page::*how)(const Fact&)) { (this->*how)(fact("summary-more", {count})); }
  /// A name of the job is made fit for a terminal; what is told here has no other text of its own.
  std::string told(const Fact& fact) const { return printable(words::told(fact, {answer.building.tape})); }
  void table(const Table& rows) { text += rows.text(); }
  std::string length(Length value) const { return tape_text(value, answer.building.tape); }
};

bool has_one_series(const Building& building) { return building.series.size() == 1; }

void add_sides(Page& page) {
  const Building& building = page.answer.building;
  page.title(fact("summary-sides"));
  if (has_one_series(building)) page.line(fact("summary-text", {building.series.front().title}));
  Table table({Left, Right, Right, Left});
  table.add({"", page.told(fact("summary-nominal")), page.told(fact("summary-actual")), ""});
  for (const Wall& wall : building.walls | std::views::take(kShownSides)) {
    std::string note = has_one_series(building) ? "" : printable(building.series_of(wall).title);
    if (wall.interior) note += (note.empty() ? "" : ", ") + page.told(fact("summary-inside"));
    table.add({printable(wall.name), page.length(wall.nominal), page.length(wall.actual), note});
  }
  page.table(table);
  const std::size_t all = building.walls.size();
  if (all > kShownSides) page.more(all - kShownSides, &Page::line);
}

void add_courses(Page& page) {
  const std::vector<Course>& courses = page.answer.building.courses;
  if (courses.empty()) return;
  const auto half_high = std::ranges::count_if(courses, &Course::half_high);
  const Length height = courses.back().top - courses.front().top + courses.front().unit_height;
  std::vector<FactValue> told{fact("summary-height", {courses.size(), height})}, beams;
  if (half_high > 0) told.emplace_back(fact("summary-half-high", {half_high}));
  for (const Course& course : courses) {
    if (course.bond_beam) beams.emplace_back(course.number);
  }
  if (!beams.empty()) told.emplace_back(fact("summary-beams", {FactValue(FactValue::Kind::Commas, beams)}));
  page.title(fact("summary-courses"));
  page.line(fact("summary-text", {FactValue(FactValue::Kind::Semicolons, told)}));
}

std::string series_mark(const Building& building, int series) {
  return has_one_series(building) ? "" : " (" + printable(building.series[static_cast<std::size_t>(series)].id) + ")";
}

std::string_view kind_words(UnitKind kind) { return words::kEnglish.kinds[static_cast<std::size_t>(kind)]; }

// Where each hole is: from the end of its side that the marks start from.
void add_openings(Page& page) {
  const std::vector<ResolvedOpening>& openings = page.answer.building.openings;
  if (openings.empty()) return;
  page.title(fact("summary-openings"));
  Table table({Left, Left, Right, Right, Right});
  table.add({"", page.told(fact("summary-in")), page.told(fact("summary-near-jamb")), page.told(fact("summary-wide")),
             page.told(fact("summary-high"))});
  for (const ResolvedOpening& opening : openings | std::views::take(kShownSides)) {
    const Wall& wall = page.answer.building.walls[static_cast<std::size_t>(opening.wall)];
    table.add({printable(opening.name), printable(wall.name),
               page.told(fact("summary-from", {opening.from.distance_from_start(), wall.start_name})),
               page.length(opening.width()), page.length(opening.height())});
  }
  page.table(table);
  if (openings.size() > kShownSides) page.more(openings.size() - kShownSides, &Page::line);
}

std::string_view part_of_sets(supply::PartWork work) {
  switch (work) {
    case supply::PartWork::AsBought: break;
    case supply::PartWork::WebsCutDown: return "summary-part-webs";
    case supply::PartWork::SawnHalfHigh: return "summary-part-half-high";
  }
  return "summary-part";
}

void add_units(Page& page) {
  const Building& building = page.answer.building;
  page.title(fact("summary-units"));
  Table table({Left, Right, Right, Left});
  table.add({"", page.told(fact("summary-laid-whole")), page.told(fact("summary-to-buy")), ""});
  for (const supply::Purchase& unit : page.answer.tallies.to_buy) {
    table.add({std::string(kind_words(unit.kind)) + series_mark(building, unit.series), number_text(unit.whole),
               number_text(unit.to_buy()), unit.for_saw > 0 ? page.told(fact("summary-for-saw", {unit.for_saw})) : ""});
  }
  for (const supply::PartCount& part : page.answer.tallies.corner_set_parts) {
    table.add({page.told(part.part), number_text(part.count), number_text(part.to_buy()),
               page.told(fact(part_of_sets(part.work)))});
  }
  for (const supply::LintelCount& lintel : page.answer.tallies.one_piece_lintels) {
    table.add({page.told(fact("summary-lintel", {lintel.length, lintel.courses})), "", number_text(lintel.count),
               page.told(fact("summary-one-piece"))});
  }
  page.table(table);
  page.line(
      fact(building.breakage.stated ? "summary-breakage" : "summary-breakage-assumed", {building.breakage.percent}));
}

std::string_view soffit_words(supply::Soffit soffit) {
  switch (soffit) {
    case supply::Soffit::OnePiece: return "summary-soffit-piece";
    case supply::Soffit::Floor: return "summary-soffit-floor";
    case supply::Soffit::Form: return "summary-soffit-form";
    case supply::Soffit::Nothing: break;
  }
  return "summary-soffit-nothing";
}

void add_lintels(Page& page) {
  const Building& building = page.answer.building;
  const auto& lintels = page.answer.lintels;
  if (lintels.empty()) return;
  page.title(fact("summary-lintels"));
  for (const supply::LintelAsLaid& lintel : lintels | std::views::take(kShownSides)) {
    const ResolvedOpening& opening = building.openings[static_cast<std::size_t>(lintel.opening)];
    const Wall& wall = building.walls[static_cast<std::size_t>(opening.wall)];
    const Fact bears =
        fact("summary-bears", {opening.name, fact(soffit_words(lintel.soffit)), lintel.start.bearing, wall.start_name,
                               lintel.end.bearing, wall.end_name, opening.lintel->least_bearing});
    page.line(lintel.bars.empty() ? bears : fact("summary-bears-passed", {bears, lintel.bars.size()}));
  }
}

void add_cuts(Page& page) {
  const Cost& cost = page.answer.layout.cost;
  page.title(fact("summary-cuts"));
  page.line(fact("summary-cut-counts", {cost.cuts, cost.short_pieces, cost.short_laps}));
  Table table({Right, Right, Left});
  for (const supply::CutCount& cut : page.answer.tallies.units.cuts) {
    table.add(
        {number_text(cut.pieces), page.length(cut.length),
         page.told(fact("summary-cut-from", {kind_words(cut.from)})) + series_mark(page.answer.building, cut.series)});
  }
  page.table(table);
}

void add_bars(Page& page) {
  const supply::BarCount& bars = page.answer.tallies.bars;
  if (bars.bars == 0) return;
  page.title(fact("summary-bars"));
  const auto extra = page.answer.layout.cost.extra_bars;
  page.line(extra == 0 ? fact("summary-bar-counts", {bars.bars, bars.size, bars.total})
                       : fact("summary-bar-counts-extra", {bars.bars, bars.size, bars.total, extra}));
}

// The first term, in the order of what is best, in which the proven bound is lower than what was found.
Fact gap(const Cost& found, const Cost& bound) {
  if (found.short_laps != bound.short_laps) return fact("summary-gap-laps", {found.short_laps, bound.short_laps});
  if (found.cuts != bound.cuts) return fact("summary-gap-cuts", {found.cuts, bound.cuts});
  if (found.short_pieces != bound.short_pieces)
    return fact("summary-gap-pieces", {found.short_pieces, bound.short_pieces});
  if (found.extra_bars != bound.extra_bars) return fact("summary-gap-bars", {found.extra_bars, bound.extra_bars});
  return fact("summary-gap-fine");
}

void add_proof(Page& page) {
  const Layout& layout = page.answer.layout;
  page.title(fact("summary-best"));
  if (!layout.conceded.empty()) { page.line(fact("summary-conceded", {layout.conceded.size()})); }
  if (layout.proven && !layout.conceded.empty()) {
    page.line(fact("summary-conceded-least"));
  } else if (layout.proven) {
    const bool cuts_first = page.answer.building.bond == BondWish::Quarter;
    page.line(fact(cuts_first ? "summary-proven-cuts" : "summary-proven-laps"));
  } else {
    page.line(fact("summary-not-known", {gap(layout.cost, layout.least_possible)}));
  }
  if (layout.relaxed_piece) page.line(fact("summary-relaxed-piece"));
}

// "before the pour": what the finding is to be settled before.
std::string_view before_text(HoldPoint point) {
  switch (point) {
    case HoldPoint::Order: return "summary-before-order";
    case HoldPoint::Pour: return "summary-before-pour";
    case HoldPoint::FirstCourse: return "summary-before-first-course";
    case HoldPoint::Lintels: return "summary-before-lintels";
    case HoldPoint::Grout: return "summary-before-grout";
    case HoldPoint::Top: break;
  }
  return "summary-before-top";
}

void add_finding(Page& page, std::size_t index) {
  const Finding& finding = page.answer.findings[index];
  const Fact named = named_place(page.answer.job, finding.place);
  if (finding.place.empty()) page.item(finding.says);
  else if (named.empty()) page.item(fact("summary-finding", {finding.says, finding.place}));
  else page.item(fact("summary-finding-of", {finding.says, named, finding.place}));
  if (!finding.rule.empty())
    page.text +=
        wrapped("    ", page.told(fact("summary-rule", {words::cited(finding.rule, {page.answer.building.tape})})));
  for (const Offer& offer : page.answer.offers) {
    if (std::ranges::contains(offer.mends, index))
      page.text += wrapped("    ", page.told(fact("summary-offer", {offer.text})));
  }
}

void add_findings_before(Page& page, HoldPoint point) {
  std::size_t seen = 0;
  for (std::size_t index = 0; index < page.answer.findings.size(); ++index) {
    if (page.answer.findings[index].hold_point != point) continue;
    if (seen == 0) page.line(fact(before_text(point)));
    if (++seen <= kShownFindings) add_finding(page, index);
  }
  if (seen > kShownFindings) page.more(seen - kShownFindings, &Page::item);
}

void add_findings(Page& page) {
  page.title(page.answer.findings.empty() ? fact("summary-findings-none")
                                          : fact("summary-findings", {page.answer.findings.size()}));
  for (const HoldPoint point : kHoldPoints) add_findings_before(page, point);
}

void add_offers(Page& page) {
  const std::vector<Offer>& offers = page.answer.offers;
  if (offers.empty() && page.answer.offers_complete) return;
  page.title(fact("summary-offers"));
  if (!page.answer.offers_complete) page.line(fact("summary-offers-likeliest"));
  const std::size_t shown = std::min(offers.size(), kShownOffers);
  for (std::size_t index = 0; index < shown; ++index) page.item(fact("summary-text", {offers[index].text}));
  if (offers.size() > shown) page.more(offers.size() - shown, &Page::item);
}

}  // namespace

std::string summary_text(const Answer& answer, Emphasis emphasis) {
  Page page{answer, emphasis, {}};
  page.text =
      heading(page.told(answer.job.name.empty() ? fact("summary-no-name") : fact("summary-text", {answer.job.name})),
              emphasis) +
      "\n";
  add_sides(page);
  add_courses(page);
  add_openings(page);
  if (answer.layout.stopped.empty()) {
    add_units(page);
    add_lintels(page);
    add_cuts(page);
    add_bars(page);
    add_proof(page);
  }
  add_findings(page);
  add_offers(page);
  return page.text;
}

std::string stops_text(const Answer& answer) {
  std::string text;
  for (const Stopped& stop : answer.layout.stopped) {
    const Wall& wall = answer.building.walls[static_cast<std::size_t>(stop.wall)];
    const words::Reader reader{answer.building.tape};
    text +=
        printable(words::told(
            fact("summary-stopped", {wall.name, stop.start, stop.end, stop.first_course, stop.last_course}), reader)) +
        "\n" + wrapped("  ", printable(words::told(stop.rule, reader))) +
        wrapped("  ", printable(words::told(stop.remedy, reader)));
  }
  return text;
}

}  // namespace stringcourse::cli
