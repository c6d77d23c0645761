#include "cli/summary.hpp"

#include <algorithm>

#include "job/words.hpp"
#include "measure/notation.hpp"
#include "supply/counts.hpp"

namespace stringcourse::cli {

namespace {

constexpr std::size_t kShownOffers = 5;
constexpr HoldPoint kHoldPoints[] = {HoldPoint::Order,   HoldPoint::Pour,  HoldPoint::FirstCourse,
                                     HoldPoint::Lintels, HoldPoint::Grout, HoldPoint::Top};

struct Page {
  const Answer& answer;
  Emphasis emphasis;
  std::string text;

  void title(std::string_view words) { text += "\n" + heading(words, emphasis) + "\n"; }
  void line(std::string words) { text += "  " + std::move(words) + "\n"; }
  std::string length(Length value) const { return tape_text(value, answer.building.tape); }
};

// Width as printed: code points.
std::string padded(std::string text, std::size_t width) {
  const std::size_t shown = count_characters(text);
  return shown < width ? text.append(width - shown, ' ') : text;
}

void add_sides(Page& page) {
  const Building& building = page.answer.building;
  std::size_t names = 4;
  for (const Wall& wall : building.walls) names = std::max(names, count_characters(printable(wall.name)));
  page.title("Sides (nominal, actual outer face)");
  for (const Wall& wall : building.walls) {
    page.line(padded(printable(wall.name), names + 2) + padded(page.length(wall.nominal), 14) +
              padded(page.length(wall.actual), 16) + printable(building.series_of(wall).title) +
              (wall.interior ? ", inside, clear length" : ""));
  }
}

void add_courses(Page& page) {
  const std::vector<Course>& courses = page.answer.building.courses;
  if (courses.empty()) return;
  const auto half_high = std::ranges::count_if(courses, &Course::half_high);
  std::string text = number_text(courses.size()) + ", from the top of the first to the top of the last " +
                     page.length(courses.back().top - courses.front().top);
  if (half_high > 0) text += "; half-high: " + number_text(half_high);
  std::string beams;
  for (const Course& course : courses) {
    if (course.bond_beam) beams += (beams.empty() ? "; bond beam: course " : ", ") + number_text(course.number);
  }
  page.title("Courses");
  page.line(text + beams);
}

std::string series_mark(const Building& building, int series) {
  return building.series.size() == 1 ? "" : " (" + printable(building.series[static_cast<std::size_t>(series)].id) + ")";
}

void add_units(Page& page) {
  const Building& building = page.answer.building;
  page.title("Units (laid whole, to buy, without an allowance for breakage)");
  for (const supply::Purchase& unit : supply::units_to_buy(building, page.answer.layout)) {
    std::string text = padded(std::string(kind_name(unit.kind)) + series_mark(building, unit.series), 18) +
                       padded(number_text(unit.whole), 8) + padded(number_text(unit.to_buy()), 8);
    if (unit.for_saw > 0) text += number_text(unit.for_saw) + " of them for the saw";
    while (text.ends_with(' ')) text.pop_back();
    page.line(text);
  }
  for (const supply::PartCount& part : supply::corner_set_parts(building, page.answer.layout)) {
    page.line(padded(printable(part.part), 26) + number_text(part.count));
  }
  for (const supply::LintelCount& lintel : supply::one_piece_lintels(building, page.answer.layout)) {
    page.line("lintel " + page.length(lintel.length) + ", courses deep " + number_text(lintel.courses) + ": " +
              number_text(lintel.count));
  }
}

void add_cuts(Page& page) {
  const Cost& cost = page.answer.layout.cost;
  page.title("Saw cuts, laps, joints");
  page.line("saw cuts " + number_text(cost.cuts) + ", shorter than a half " + number_text(cost.short_pieces) +
            ", short laps " + number_text(cost.short_laps));
  for (const supply::CutCount& cut : supply::count_units(page.answer.building, page.answer.layout).cuts) {
    page.line(padded(page.length(cut.length), 12) + number_text(cut.pieces) + " from " + std::string(kind_name(cut.from)) +
              series_mark(page.answer.building, cut.series));
  }
}

void add_bars(Page& page) {
  const supply::BarCount bars = supply::count_bars(page.answer.building, page.answer.layout);
  if (bars.bars == 0) return;
  page.title("Upright bars");
  page.line(number_text(bars.bars) + " of " + printable(bars.size) + ", together " + page.length(bars.total) +
            " without laps and dowels; " + number_text(page.answer.layout.cost.extra_bars) + " more than the spacing needs");
}

// The first term, in the order of what is best, in which the proven bound is lower than what was found.
std::string gap_text(const Cost& found, const Cost& bound) {
  const auto term = [](std::string_view name, std::int64_t least, std::int64_t got) {
    return std::string(name) + " " + number_text(got) + ", not fewer than " + number_text(least);
  };
  if (found.short_laps != bound.short_laps) return term("short laps", bound.short_laps, found.short_laps);
  if (found.cuts != bound.cuts) return term("saw cuts", bound.cuts, found.cuts);
  if (found.short_pieces != bound.short_pieces) return term("short pieces", bound.short_pieces, found.short_pieces);
  if (found.extra_bars != bound.extra_bars) return term("extra bars", bound.extra_bars, found.extra_bars);
  return "only the fine terms (shifted joints, joint widths, units) are open";
}

void add_proof(Page& page) {
  const Layout& layout = page.answer.layout;
  page.title("Proof");
  if (layout.proven) {
    const bool cuts_first = page.answer.building.bond == BondWish::Quarter;
    page.line(cuts_first ? "no lawful layout has fewer saw cuts, or as few and fewer short laps: searched to the end"
                         : "no lawful layout has fewer short laps, or as few and fewer saw cuts: searched to the end");
  } else {
    page.line("the search ended at its budget: " + gap_text(layout.cost, layout.least_possible));
  }
  if (layout.relaxed_piece) page.line("pieces below the job's least piece had to be allowed: see the findings");
}

void add_findings(Page& page) {
  const std::vector<Finding>& findings = page.answer.findings;
  page.title("Findings: " + number_text(findings.size()));
  for (const HoldPoint point : kHoldPoints) {
    if (std::ranges::find(findings, point, &Finding::hold_point) == findings.end()) continue;
    page.line("before " + std::string(hold_point_name(point)) + ":");
    for (const Finding& finding : findings) {
      if (finding.hold_point != point) continue;
      page.line("- " + (finding.place.empty() ? "" : printable(finding.place) + ": ") + printable(finding.text));
      if (!finding.rule.empty()) page.line("  " + printable(finding.rule));
    }
  }
}

void add_offers(Page& page) {
  const std::vector<Offer>& offers = page.answer.offers;
  if (offers.empty()) return;
  page.title("What a change would save");
  const std::size_t shown = std::min(offers.size(), kShownOffers);
  for (std::size_t index = 0; index < shown; ++index) page.line("- " + printable(offers[index].text));
  if (offers.size() > shown) page.line(number_text(offers.size() - shown) + " more in answer.json");
}

}  // namespace

std::string summary_text(const Answer& answer, Emphasis emphasis) {
  const std::string name = answer.job.name.empty() ? "A job without a name" : printable(answer.job.name);
  Page page{answer, emphasis, heading(name, emphasis) + "\n"};
  add_sides(page);
  add_courses(page);
  if (answer.layout.stopped.empty()) {
    add_units(page);
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
            number_text(stop.last_course) + "\n  " + printable(stop.rule) + "\n  " + printable(stop.remedy) + "\n";
  }
  return text;
}

}  // namespace stringcourse::cli
