#include "sheet/leads.hpp"

#include <algorithm>

#include "bond/layout_parts.hpp"
#include "measure/digits.hpp"
#include "setout/laying_order.hpp"
#include "words/sheet_words.hpp"

namespace stringcourse::sheet {
namespace {

constexpr Micrometres kBehindCaption = 1'500;       // over each lead
constexpr Micrometres kUnder = 3'500 + kSmallText;  // its sides' names, and air
constexpr Lettering kNumber{kSmallText, Weight::Regular, Anchor::Middle, Ink::Black, 0},
    kWords{kSmallText, Weight::Bold, Anchor::Start, Ink::Black, 0};

/// A unit of a lead by its distance from the corner, along either wall.
struct LeadUnit {
  int course = 1, number = 0;
  Length from, to;
  Fill fill = Fill::White;
};

/// Both sides of a lead; `met`: the end of the other wall's unit where this wall butts, number 0.
struct DrawnLead {
  std::vector<LeadUnit> arriving, leaving;
};

/// A unit that reaches past a re-entrant corner is drawn from the corner on.
LeadUnit unit_of(const Run& run, const Piece& piece, Length from, Length to) {
  const Fill fill = exception_of(piece).fill;
  return {run.course, piece.number, std::max(from, Length()), to, fill == Fill::None ? Fill::White : fill};
}

void add_met_end(std::vector<LeadUnit>& units, const Run& run, Length reach) {
  if (reach > Length()) units.push_back({run.course, 0, Length(), reach, Fill::White});
}

DrawnLead drawn_of(const Context& context, const setout::Lead& lead) {
  const Corner& corner = context.building.corners[static_cast<std::size_t>(lead.corner)];
  const Length end = context.wall(corner.arriving).actual;
  DrawnLead drawn;
  for (const setout::LeadCourse& course : lead.courses) {
    const auto arriving = bond::runs_in(context.layout, corner.arriving, course.course),
               leaving = bond::runs_in(context.layout, corner.leaving, course.course);
    if (arriving.empty() || leaving.empty()) continue;
    const auto pieces = bond::pieces_of(context.layout, arriving.back());
    const auto count = std::min<std::size_t>(pieces.size(), static_cast<std::size_t>(course.arriving_units));
    for (const Piece& piece : pieces.last(count))
      drawn.arriving.push_back(unit_of(arriving.back(), piece, end - bond::far_end(piece).nearest_nanometre(),
                                       end - piece.start.nearest_nanometre()));
    const auto others = bond::pieces_of(context.layout, leaving.front());
    const auto first = std::min<std::size_t>(others.size(), static_cast<std::size_t>(course.leaving_units));
    for (const Piece& piece : others.first(first))
      drawn.leaving.push_back(
          unit_of(leaving.front(), piece, piece.start.nearest_nanometre(), bond::far_end(piece).nearest_nanometre()));
    if (arriving.back().at_end == RunEnd::ButtCorner)
      add_met_end(drawn.arriving, arriving.back(), end - arriving.back().end);
    if (leaving.front().at_start == RunEnd::ButtCorner)
      add_met_end(drawn.leaving, leaving.front(), leaving.front().start);
  }
  return drawn;
}

Length reach_of(const std::vector<LeadUnit>& units) {
  Length reach;
  for (const LeadUnit& unit : units) reach = std::max(reach, unit.to);
  return reach;
}

std::string caption_of(const Context& context, const setout::Lead& lead) {
  std::string text;
  for (const setout::LeadCourse& course : lead.courses) {
    text += (text.empty() ? "" : ", ") + number_text(course.arriving_units) + "+" + number_text(course.leaving_units);
  }
  const Corner& corner = context.building.corners[static_cast<std::size_t>(lead.corner)];
  return words::fill_in(context.words.leads_note, {corner.name, text});
}

Micrometres caption_height(const Context& context, const setout::Lead& lead, Micrometres width) {
  return paragraph_height(caption_of(context, lead), width, kWords) + kBehindCaption;
}

/// The largest scale at which all leads have room, each in its share of it.
Scale scale_of(const Context& context, const std::vector<setout::Lead>& leads, const Area& room) {
  Length wide;
  Micrometres caption = 0;
  for (const setout::Lead& lead : leads) {
    const DrawnLead drawn = drawn_of(context, lead);
    caption = std::max(caption, caption_height(context, lead, room.width()));
    wide = std::max(wide, reach_of(drawn.arriving) + reach_of(drawn.leaving));
  }
  const auto courses = std::min<std::size_t>(setout::kLeadCourses, context.building.courses.size());
  const std::vector<Course>& all = context.building.courses;
  const Length high = courses == 0 ? Length() : all[courses - 1].top - all.front().underside();
  return fitting_scale(wide, high, room.width() - 4'000,
                       room.height() / static_cast<Micrometres>(kLeadsOnSheet) - caption - kUnder, {40});
}

void draw_lead(Pad& pad, const Context& context, const setout::Lead& lead, Scale scale, const Area& room) {
  const Corner& corner = context.building.corners[static_cast<std::size_t>(lead.corner)];
  const std::string caption = caption_of(context, lead);
  const Micrometres top = write_paragraph(pad, {room.left, room.top}, room.width(), caption, kWords) - kBehindCaption;
  const DrawnLead drawn = drawn_of(context, lead);
  // Seen from outside the wall that arrives is on the right of its corner, the one that leaves on the left.
  const Micrometres x = room.left + 2'000 + scale.paper(reach_of(drawn.leaving));
  const std::vector<Course>& courses = context.building.courses;
  const Length low = courses.front().underside();
  const Length high = courses[lead.courses.empty() ? 0 : static_cast<std::size_t>(lead.courses.back().course - 1)].top;
  const Micrometres ground = top - scale.paper(high - low);
  const auto draw = [&](const std::vector<LeadUnit>& units, int way) {
    for (const LeadUnit& unit : units) {
      const Course& course = courses[static_cast<std::size_t>(unit.course - 1)];
      const Micrometres a = x + way * scale.paper(unit.from), b = x + way * scale.paper(unit.to);
      const Area box{std::min(a, b), ground + scale.paper(course.underside() - low), std::max(a, b),
                     ground + scale.paper(course.top - low)};
      pad.box(box, {Pen::Thin}, unit.fill);
      const std::string number = unit.number == 0 ? std::string() : number_text(unit.number);
      if (fits(number, box.width() - 800, kNumber) && box.height() > kSmallText + 500)
        pad.write({box.centre().x, box.centre().y - kSmallText / 2}, number, kNumber);
    }
  };
  draw(drawn.arriving, 1);
  draw(drawn.leaving, -1);
  pad.line({x, ground - 1'500}, {x, top + 500}, {Pen::Medium, Dash::Solid, Ink::Blue});
  pad.line({x - scale.paper(reach_of(drawn.leaving)), ground}, {x + scale.paper(reach_of(drawn.arriving)), ground},
           {Pen::Medium});
  const std::string left = short_name(context.names, context.wall(corner.leaving).name),
                    right = short_name(context.names, context.wall(corner.arriving).name);
  pad.write({x - 1'500, ground - 1'000 - kSmallText}, left, {kSmallText, Weight::Regular, Anchor::End});
  pad.write({x + 1'500, ground - 1'000 - kSmallText}, right, {kSmallText});
}

}  // namespace

Group draw_leads(const Context& context, std::span<const std::size_t> shown, const Area& room) {
  const std::vector<setout::Lead> leads = setout::leads(context.building, context.layout);
  Pad pad(Role::Figure, std::string(context.words.title_lead_table));
  if (shown.empty()) return std::move(pad).take();
  const Scale scale = scale_of(context, leads, room);
  const Micrometres high = room.height() / static_cast<Micrometres>(kLeadsOnSheet);
  Micrometres top = room.top;
  for (const std::size_t index : shown) {
    draw_lead(pad, context, leads[index], scale, {room.left, top - high, room.right, top});
    top -= high;
  }
  return std::move(pad).take();
}

}  // namespace stringcourse::sheet
