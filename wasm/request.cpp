#include "wasm/request.hpp"

#include <utility>

#include "document/choices.hpp"
#include "job/read.hpp"
#include "job/words.hpp"
#include "wasm/base64.hpp"
#include "wasm/fields.hpp"
#include "words/language.hpp"

namespace stringcourse::border {
namespace {

constexpr std::int64_t kMostIndex = 1'000'000;
constexpr std::int64_t kMostBudget = 1'000'000'000;

Length length_in(Fields& fields, std::string_view name) {
  const std::int64_t longest = kLongest.in_nanometres();
  return Length::nanometres(fields.whole(name, -longest, longest));
}

std::size_t index_in(Fields& fields, std::string_view name) {
  return static_cast<std::size_t>(fields.whole(name, 0, kMostIndex));
}

Edit resize_of(Fields& fields) {
  const std::string edge = fields.text("edge", kLongestName);
  if (edge != "from" && edge != "to") fields.trouble("edge", "\"from\" or \"to\" is wanted.");
  return ResizeOpening{index_in(fields, "opening"), edge == "from" ? Jamb::From : Jamb::To, length_in(fields, "to_nm")};
}

Edit offer_of(Fields& fields) {
  const auto what = enum_from_name<OfferWhat>(fields.text("what", kLongestName));
  if (!what) fields.trouble("what", "no offer is of this kind.");
  const std::string place = fields.text("place", kLongestName);
  TakeOffer offer{what.value_or(OfferWhat::MoveOpening), place, length_in(fields, "by_nm")};
  if (fields.has("shift_nm")) offer.shift = length_in(fields, "shift_nm");
  return offer;
}

Edit put_in_of(Fields& fields) {
  const auto what = enum_from_name<NewPart>(fields.text("what", kLongestName));
  if (!what) fields.trouble("what", "no part that can be put in has this name.");
  return PutIn{what.value_or(NewPart::Door), fields.text("place", kLongestName)};
}

Edit step_of(Fields& fields) {
  const std::size_t side = index_in(fields, "side");
  const Length along = length_in(fields, "along_nm"), across = length_in(fields, "across_nm");
  return StepCorner{side, along, across};
}

Edit beams_of(Fields& fields) {
  const bool over_openings = fields.truth("over_openings"), on_top = fields.truth("on_top");
  return PutBeams{over_openings, on_top};
}

Edit edit_of(Fields& fields) {
  const std::string what = fields.text("do", kLongestName);
  if (what == "move-opening") return MoveOpening{index_in(fields, "opening"), length_in(fields, "to_nm")};
  if (what == "resize-opening") return resize_of(fields);
  if (what == "move-side") return MoveSide{index_in(fields, "side"), length_in(fields, "by_nm")};
  if (what == "accept") return offer_of(fields);
  if (what == "put-in") return put_in_of(fields);
  if (what == "step-corner") return step_of(fields);
  if (what == "fill-corner") return FillCorner{index_in(fields, "side")};
  if (what == "put-beams") return beams_of(fields);
  fields.trouble("do", "there is no such edit.");
  return MoveOpening{};
}

std::vector<Edit> edits_of(Fields& request, Troubles& troubles) {
  std::vector<Edit> edits;
  for (const JsonTree::Node node : request.list("edits", kMostEdits)) {
    Fields fields(request.tree(), node, "/edits/" + number_text(edits.size()), troubles);
    edits.push_back(edit_of(fields));
    fields.finish();
  }
  return edits;
}

std::vector<std::string> drawings_of(Fields& request, Troubles& troubles) {
  std::vector<std::string> names;
  for (const JsonTree::Node node : request.list("drawings", kMostDrawings)) {
    const JsonTree& tree = request.tree();
    const bool is_name = tree.kind(node) == JsonKind::Text && tree.text(node).size() <= kLongestName;
    if (!is_name) troubles.add("/drawings/" + number_text(names.size()), "the name of a drawing is wanted.");
    names.emplace_back(is_name ? tree.text(node) : "");
  }
  return names;
}

Measures measures_of(Fields& request, Troubles& troubles) {
  Fields fields(request.tree(), request.take("begin"), "/begin", troubles);
  Measures measures;
  if (fields.has("name")) measures.name = fields.text("name", kLargestDocument);
  measures.length = fields.text("length", kLongestName);
  measures.width = fields.text("width", kLongestName);
  measures.height = fields.text("height", kLongestName);
  if (fields.has("series")) measures.series = fields.text("series", kLongestName);
  fields.finish();
  return measures;
}

laying::Trial trial_of(const Fields& course, JsonTree::Node node, Troubles& troubles) {
  Fields fields(course.tree(), node, "/course/trial", troubles);
  const laying::Trial trial{length_in(fields, "at_nm"), length_in(fields, "past_nm")};
  fields.finish();
  return trial;
}

CourseAsked course_of(Fields& request, Troubles& troubles) {
  Fields fields(request.tree(), request.take("course"), "/course", troubles);
  CourseAsked course;
  course.side = fields.text("side", kLongestName);
  course.course = static_cast<int>(fields.whole("course", 1, kMostIndex));
  if (fields.has("trial")) course.trial = trial_of(fields, fields.take("trial"), troubles);
  course.odds = fields.truth("odds");
  fields.finish();
  return course;
}

std::optional<paper::Paper> paper_of(Fields& request, std::string_view field) {
  if (!request.has(field)) return std::nullopt;
  const std::string name = request.text(field, kLongestName);
  if (name != "letter" && name != "a4") request.trouble(field, "\"letter\" or \"a4\" is wanted.");
  return name == "letter" ? paper::Paper::Letter : paper::Paper::A4;
}

/// Hold points count from 1, so that a list of names by places would be one off.
std::optional<HoldPoint> hold_point_named(std::string_view name) {
  for (int point = static_cast<int>(HoldPoint::Order); point <= static_cast<int>(HoldPoint::Top); ++point) {
    if (hold_point_name(static_cast<HoldPoint>(point)) == name) return static_cast<HoldPoint>(point);
  }
  return std::nullopt;
}

std::optional<HoldPoint> hold_point_of(Fields& request) {
  if (!request.has("of")) return std::nullopt;
  const auto point = hold_point_named(request.text("of", kLongestName));
  if (!point) request.trouble("of", "the code of a hold point is wanted.");
  return point;
}

/// {"regular": base64, "bold": base64}
void read_fonts(Fields& request, Troubles& troubles, Request& into) {
  if (!request.has("fonts")) return;
  Fields fields(request.tree(), request.take("fonts"), "/fonts", troubles);
  for (const auto& [name, face] : {std::pair("regular", &into.regular), std::pair("bold", &into.bold)}) {
    auto bytes = from_base64(fields.text(name, kLargestDocument));
    if (!bytes) fields.trouble(name, "bytes as base64 are wanted.");
    else *face = *std::move(bytes);
  }
  fields.finish();
}

LengthsAsked lengths_of(Fields& request, Troubles& troubles) {
  Fields fields(request.tree(), request.take("lengths"), "/lengths", troubles);
  LengthsAsked asked;
  const auto tape = enum_from_name<Tape>(fields.text("tape", kLongestName));
  if (!tape) fields.trouble("tape", "\"inches\" or \"millimetres\" is wanted.");
  asked.tape = tape.value_or(Tape::Inches);
  if (fields.has("read")) asked.read = fields.text("read", kLongestName);
  const std::int64_t most = kLongest.whole_multiples(tape_step(asked.tape));
  for (const JsonTree::Node node : fields.list("write", kMostWritten)) {
    const std::int64_t steps = fields.tree().at(node).whole;
    if (fields.tree().kind(node) != JsonKind::Whole || steps < -most || steps > most)
      fields.trouble("write", "whole steps of the tape are wanted, each within its limits.");
    else asked.write.push_back(steps);
  }
  fields.finish();
  return asked;
}

void read_source(Fields& fields, Troubles& troubles, Request& into) {
  if (fields.has("job") + fields.has("begin") + fields.has("lengths") != 1)
    return troubles.add("", "one of job and begin is wanted, or lengths.");
  if (fields.has("lengths")) {
    into.lengths = lengths_of(fields, troubles);
  } else if (fields.has("begin")) {
    into.from = measures_of(fields, troubles);
  } else {
    into.from = fields.text("job", kLargestDocument);
  }
}

/// Something that no brief answer has.
bool asks_further(const Request& request) {
  return request.merge || request.course || request.solids || request.piece || request.set || request.sheets ||
         request.offers || request.lengths || request.budget.value_or(0) > 0;
}

}  // namespace

std::expected<Request, std::string> read_request(std::string_view text) {
  const auto tree = parse_json(text);
  if (!tree) return std::unexpected(words::told(tree.error().reason, {Tape::Inches}));
  Troubles troubles;
  Fields fields(*tree, 0, "", troubles);
  if (fields.whole("border", 0, kMostIndex) != kBorderVersion)
    fields.trouble("border", "only version 1 is spoken here.");
  Request request;
  read_source(fields, troubles, request);
  request.edits = edits_of(fields, troubles);
  if (fields.has("merge")) request.merge = fields.text("merge", kLargestDocument);
  request.drawings = drawings_of(fields, troubles);
  request.solids = fields.truth("solids");
  if (fields.has("piece")) request.piece = fields.text("piece", kLongestName);
  if (fields.has("course")) request.course = course_of(fields, troubles);
  request.set = paper_of(fields, "set");
  request.of = hold_point_of(fields);
  request.sheets = paper_of(fields, "sheets");
  request.templates = fields.truth("templates");
  request.standards = fields.truth("standards");
  read_fonts(fields, troubles, request);
  request.offers = fields.truth("offers");
  if (fields.has("budget")) request.budget = fields.whole("budget", 0, kMostBudget);
  request.moving = fields.truth("moving");
  request.brief = fields.truth("brief");
  if (request.brief && asks_further(request)) fields.trouble("brief", "a brief answer has no more than drawings.");
  fields.finish();
  if (!troubles.first().empty()) return std::unexpected(troubles.first());
  return request;
}

}  // namespace stringcourse::border
