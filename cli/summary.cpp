#include "cli/summary.hpp"

#include <algorithm>
#include <ranges>

#include "cli/text_block.hpp"
#include "job/words.hpp"
#include "measure/notation.hpp"
#include "sheet/words.hpp"
#include "supply/counts.hpp"
#include "supply/lintels.hpp"

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

  void title(std::string_view words) { text += "\n" + heading(words, emphasis) + "\n"; }
  void line(std::string_view words) { text += wrapped("  ", words); }
  void item(std::string_view words) { text += wrapped("  - ", words); }
  void table(const Table& rows) { text += rows.text(); }
  std::string length(Length value) const { return tape_text(value, answer.building.tape); }
};

bool has_one_series(const Building& building) { return building.series.size() == 1; }

void add_sides(Page& page) {
  const Building& building = page.answer.building;
  page.title("Sides");
  if (has_one_series(building)) page.line(printable(building.series.front().title));
  Table table({Left, Right, Right, Left});
  table.add({"", "nominal", "actual", ""});
  for (const Wall& wall : building.walls | std::views::take(kShownSides)) {
    std::string note = has_one_series(building) ? "" : printable(building.series_of(wall).title);
    if (wall.interior) note += std::string(note.empty() ? "" : ", ") + "inside: clear length";
    table.add({printable(wall.name), page.length(wall.nominal), page.length(wall.actual), note});
  }
  page.table(table);
  const std::size_t all = building.walls.size();
  if (all > kShownSides) page.line("and " + number_text(all - kShownSides) + " more: the answer lists them all");
}

void add_courses(Page& page) {
  const std::vector<Course>& courses = page.answer.building.courses;
  if (courses.empty()) return;
  const auto half_high = std::ranges::count_if(courses, &Course::half_high);
  const Length height = courses.back().top - courses.front().top + courses.front().unit_height;
  std::string text = number_text(courses.size()) + ", " + page.length(height) + " high without the first bed joint";
  if (half_high > 0) text += "; half-high: " + number_text(half_high);
  std::string beams;
  for (const Course& course : courses) {
    if (course.bond_beam) beams += (beams.empty() ? "; bond beam: course " : ", ") + number_text(course.number);
  }
  page.title("Courses");
  page.line(text + beams);
}

std::string series_mark(const Building& building, int series) {
  return has_one_series(building) ? "" : " (" + printable(building.series[static_cast<std::size_t>(series)].id) + ")";
}

std::string_view kind_words(Kind kind) { return sheet::kEnglish.kinds[static_cast<std::size_t>(kind)]; }

// Where each hole is: from the end of its side that the marks start from.
void add_openings(Page& page) {
  const std::vector<ResolvedOpening>& openings = page.answer.building.openings;
  if (openings.empty()) return;
  page.title("Openings");
  Table table({Left, Left, Right, Right, Right});
  table.add({"", "in", "near jamb", "wide", "high"});
  for (const ResolvedOpening& opening : openings | std::views::take(kShownSides)) {
    const Wall& wall = page.answer.building.walls[static_cast<std::size_t>(opening.wall)];
    table.add({printable(opening.name), printable(wall.name), page.length(opening.from.distance_from_start()) + " from " + printable(wall.start_name),
               page.length(opening.width()), page.length(opening.height())});
  }
  page.table(table);
  if (openings.size() > kShownSides) page.line("and " + number_text(openings.size() - kShownSides) + " more: the answer lists them all");
}

std::string_view work_text(supply::PartWork work) {
  switch (work) {
    case supply::PartWork::AsBought: return "";
    case supply::PartWork::WebsCutDown: return ", webs cut down for the beam";
    case supply::PartWork::SawnHalfHigh: return ", sawn to half height";
  }
  return "";
}

std::string lintel_text(const Page& page, const supply::LintelCount& lintel) {
  const std::string depth = lintel.courses == 1 ? "1 course deep" : number_text(lintel.courses) + " courses deep";
  return "lintel " + page.length(lintel.length) + ", " + depth;
}

void add_units(Page& page) {
  const Building& building = page.answer.building;
  page.title("Units");
  Table table({Left, Right, Right, Left});
  table.add({"", "laid whole", "to buy", ""});
  for (const supply::Purchase& unit : page.answer.tallies.to_buy) {
    table.add({std::string(kind_words(unit.kind)) + series_mark(building, unit.series), number_text(unit.whole),
               number_text(unit.to_buy()), unit.for_saw > 0 ? number_text(unit.for_saw) + " of them for the saw" : ""});
  }
  for (const supply::PartCount& part : page.answer.tallies.corner_set_parts) {
    table.add({printable(part.part), number_text(part.count), number_text(part.to_buy()), std::string("of the corner sets") + std::string(work_text(part.work))});
  }
  for (const supply::LintelCount& lintel : page.answer.tallies.one_piece_lintels) {
    table.add({lintel_text(page, lintel), "", number_text(lintel.count), "in one piece"});
  }
  page.table(table);
  page.line("to buy: laid, for the saw, and " + number_text(building.breakage.percent) +
            " % for breakage, each kind rounded up" +
            (building.breakage.stated ? "" : " (assumed; \"breakage\" in the job's units says otherwise)"));
}

std::string_view soffit_words(supply::Soffit soffit) {
  switch (soffit) {
    case supply::Soffit::OnePiece: return "one piece";
    case supply::Soffit::Floor: return "lintel units";
    case supply::Soffit::Form: return "bond-beam units, open underneath: form the soffit";
    case supply::Soffit::Nothing: break;
  }
  return "nothing in the yard spans it";
}

std::string end_text(const Page& page, const supply::LintelEnd& end, const std::string& toward) {
  return page.length(end.bearing) + " toward " + printable(toward);
}

void add_lintels(Page& page) {
  const Building& building = page.answer.building;
  const auto& lintels = page.answer.lintels;
  if (lintels.empty()) return;
  page.title("Lintels");
  for (const supply::LintelAsLaid& lintel : lintels | std::views::take(kShownSides)) {
    const ResolvedOpening& opening = building.openings[static_cast<std::size_t>(lintel.opening)];
    const Wall& wall = building.walls[static_cast<std::size_t>(opening.wall)];
    std::string text = printable(opening.name) + ": " + std::string(soffit_words(lintel.soffit)) + "; bears " +
                       end_text(page, lintel.start, wall.start_name) + ", " +
                       end_text(page, lintel.end, wall.end_name) + " (asked " +
                       page.length(opening.lintel->least_bearing) + ")";
    if (!lintel.bars.empty())
      text += "; bars pass it at " + number_text(lintel.bars.size()) + (lintel.bars.size() == 1 ? " place" : " places");
    page.line(text);
  }
}

void add_cuts(Page& page) {
  const Cost& cost = page.answer.layout.cost;
  page.title("Saw cuts and joint laps");
  page.line("saw cuts " + number_text(cost.cuts) + ", of these shorter than a half " + number_text(cost.short_pieces) +
            "; short joint laps " + number_text(cost.short_laps));
  Table table({Right, Right, Left});
  for (const supply::CutCount& cut : page.answer.tallies.units.cuts) {
    table.add({number_text(cut.pieces), page.length(cut.length),
               "from " + std::string(kind_words(cut.from)) + series_mark(page.answer.building, cut.series)});
  }
  page.table(table);
}

void add_bars(Page& page) {
  const supply::BarCount& bars = page.answer.tallies.bars;
  if (bars.bars == 0) return;
  page.title("Upright bars");
  page.line(number_text(bars.bars) + " of " + printable(bars.size) + ", together " + page.length(bars.total) +
            " without bar laps and dowels" +
            (page.answer.layout.cost.extra_bars == 0 ? "" : "; " + number_text(page.answer.layout.cost.extra_bars) + " more than the spacing needs"));
}

// The first term, in the order of what is best, in which the proven bound is lower than what was found.
std::string gap_text(const Cost& found, const Cost& bound) {
  const auto term = [](std::string_view name, std::int64_t least, std::int64_t got) {
    return std::string(name) + " " + number_text(got) + ", not fewer than " + number_text(least);
  };
  if (found.short_laps != bound.short_laps) return term("short joint laps", bound.short_laps, found.short_laps);
  if (found.cuts != bound.cuts) return term("saw cuts", bound.cuts, found.cuts);
  if (found.short_pieces != bound.short_pieces) return term("short pieces", bound.short_pieces, found.short_pieces);
  if (found.extra_bars != bound.extra_bars) return term("extra bars", bound.extra_bars, found.extra_bars);
  return "only the fine terms (shifted joints, joint widths, units) are open";
}

void add_proof(Page& page) {
  const Layout& layout = page.answer.layout;
  page.title("Is it the best?");
  if (!layout.conceded.empty()) {
    page.line("no layout keeps every rule: " + number_text(layout.conceded.size()) + (layout.conceded.size() == 1 ? " place gives" : " places give") + " one up; see the findings");
  }
  if (layout.proven && !layout.conceded.empty()) {
    page.line("fewer or milder rules cannot be given up: searched to the end");
  } else if (layout.proven) {
    const bool cuts_first = page.answer.building.bond == BondWish::Quarter;
    page.line(cuts_first ? "no layout that keeps the rules has fewer saw cuts, or as few and fewer short joint laps: searched to the end"
                         : "no layout that keeps the rules has fewer short joint laps, or as few and fewer saw cuts: searched to the end");
  } else {
    page.line("not known: the search stopped at this program's limit; " + gap_text(layout.cost, layout.least_possible));
  }
  if (layout.relaxed_piece) page.line("pieces below the job's least piece had to be allowed: see the findings");
}

// "before the pour": what the finding is to be settled before.
std::string_view before_text(HoldPoint point) {
  switch (point) {
    case HoldPoint::Order: return "before the order:";
    case HoldPoint::Pour: return "before the pour:";
    case HoldPoint::FirstCourse: return "before the first course:";
    case HoldPoint::Lintels: return "before the lintels close:";
    case HoldPoint::Grout: return "before the grout lift:";
    case HoldPoint::Top: break;
  }
  return "before the bolts and the plate:";
}

void add_finding(Page& page, std::size_t index) {
  const Finding& finding = page.answer.findings[index];
  page.item(printable(finding.text) + (finding.place.empty() ? "" : " [" + printable(finding.place) + "]"));
  if (!finding.rule.empty()) page.text += wrapped("    ", "Rule: " + printable(finding.rule));
  for (const Offer& offer : page.answer.offers) {
    if (std::ranges::contains(offer.mends, index)) page.text += wrapped("    ", "Offer: " + printable(offer.text));
  }
}

void add_findings_before(Page& page, HoldPoint point) {
  std::size_t seen = 0;
  for (std::size_t index = 0; index < page.answer.findings.size(); ++index) {
    if (page.answer.findings[index].hold_point != point) continue;
    if (seen == 0) page.line(before_text(point));
    if (++seen <= kShownFindings) add_finding(page, index);
  }
  if (seen > kShownFindings) page.item("and " + number_text(seen - kShownFindings) + " more: the answer lists them all");
}

void add_findings(Page& page) {
  page.title(page.answer.findings.empty() ? "Findings: none" : "Findings: " + number_text(page.answer.findings.size()));
  for (const HoldPoint point : kHoldPoints) add_findings_before(page, point);
}

void add_offers(Page& page) {
  const std::vector<Offer>& offers = page.answer.offers;
  if (offers.empty() && page.answer.offers_complete) return;
  page.title("What a change would save");
  if (!page.answer.offers_complete) page.line("Only the likeliest changes were tried: the building is large.");
  const std::size_t shown = std::min(offers.size(), kShownOffers);
  for (std::size_t index = 0; index < shown; ++index) page.item(printable(offers[index].text));
  if (offers.size() > shown) page.item("and " + number_text(offers.size() - shown) + " more: the answer lists them all");
}

}  // namespace

std::string summary_text(const Answer& answer, Emphasis emphasis) {
  const std::string name = answer.job.name.empty() ? "A job without a name" : printable(answer.job.name);
  Page page{answer, emphasis, heading(name, emphasis) + "\n"};
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
    const Tape tape = answer.building.tape;
    text += "stopped: " + printable(wall.name) + ", from " + tape_text(stop.start, tape) + " to " +
            tape_text(stop.end, tape) + ", courses " + number_text(stop.first_course) + " to " +
            number_text(stop.last_course) + "\n" + wrapped("  ", printable(stop.rule)) + wrapped("  ", printable(stop.remedy));
  }
  return text;
}

}  // namespace stringcourse::cli
