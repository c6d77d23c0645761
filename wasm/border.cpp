#include "wasm/border.hpp"

#include <algorithm>
#include <utility>

#include "document/answer_json.hpp"
#include "document/page_parts.hpp"
#include "document/refusals_json.hpp"
#include "ink/svg.hpp"
#include "job/read.hpp"
#include "job/write.hpp"
#include "laying/merge_jobs.hpp"
#include "sheet/drawing.hpp"
#include "solve/printed_set.hpp"
#include "walls/resolve.hpp"
#include "wasm/block.hpp"
#include "wasm/drawing_head.hpp"
#include "wasm/request.hpp"

namespace stringcourse::border {
namespace {

constexpr std::size_t kPanelsKept = 2000;  // then the memory of panels starts anew

/// A document written into a text.
template <typename Fill>
std::string json_text(Fill&& fill) {
  std::string text;
  JsonOut out([&](std::string_view bytes) {
    text += bytes;
    return true;
  });
  fill(out);
  out.end_line();
  return out.finish() ? text : std::string();
}

/// Everything said about one request, until it becomes a block.
struct Reply {
  std::string_view state;
  std::string message;
  std::vector<Section> sections;  // without reply.json
  std::vector<sheet::Drawing> drawings;
  const Answer* answer = nullptr;
};

void write_sections(JsonOut& out, const Reply& reply) {
  out.list("sections", [&] {
    out.text("reply.json");
    for (const Section& section : reply.sections) out.text(section.name);
  });
}

void write_answer_parts(JsonOut& out, const Reply& reply, const Request& request) {
  out.list("drawings", [&] {
    for (const sheet::Drawing& drawing : reply.drawings) write_drawing_head(out, reply.answer->building, drawing);
  });
  out.name("hold_points");
  write_hold_points(out, *reply.answer);
  if (!request.piece) return;
  const std::string card = json_text([&](JsonOut& inner) { write_piece_card(inner, *reply.answer, *request.piece); });
  if (card.size() > 1) out.name("piece"), out.raw(std::string_view(card).substr(0, card.size() - 1));
}

std::string finished(Reply reply, const Request& request) {
  std::string head = json_text([&](JsonOut& out) {
    out.object([&] {
      out.field("border", kBorderVersion);
      out.field("state", reply.state);
      if (!reply.message.empty()) out.field("message", reply.message);
      write_sections(out, reply);
      if (reply.answer != nullptr) write_answer_parts(out, reply, request);
    });
  });
  reply.sections.insert(reply.sections.begin(), {"reply.json", std::move(head)});
  return block_of(reply.sections);
}

std::string bad_request(std::string message) {
  return finished({.state = "bad-request", .message = std::move(message), .sections = {}, .drawings = {}}, {});
}

/// With the document of a changed job, if there is one, so that the page can go on from it.
std::string refused(const Refusals& refusals, const std::string& document) {
  Reply reply{.state = "refused", .message = {}, .sections = {}, .drawings = {}};
  reply.sections.push_back({"refusals.json", refusals_json(refusals)});
  if (!document.empty()) reply.sections.push_back({"job.json", document});
  return finished(std::move(reply), {});
}

/// The job that is asked about, and its document if the border made or changed it.
struct Source {
  Job job;
  std::string document;
};
/// Why there is none, as a whole reply.
using Sourced = std::expected<Source, std::string>;

/// A job that was made or changed here keeps the rules of one that is read.
Sourced read_back(const Job& job) {
  std::string document = write_job(job);
  auto again = read_job(document);
  if (!again) return std::unexpected(refused(again.error(), document));
  return Source{*std::move(again), std::move(document)};
}

Sourced start_of(const Request& request) {
  if (const Measures* measures = std::get_if<Measures>(&request.from)) {
    const auto job = begun_job(*measures);
    if (!job) return std::unexpected(refused(job.error(), ""));
    return read_back(*job);
  }
  auto job = read_job(std::get<std::string>(request.from));
  if (!job) return std::unexpected(refused(job.error(), ""));
  return Source{*std::move(job), ""};
}

/// The job with all edits made, one after the other.
Sourced with_edits(Source source, const std::vector<Edit>& edits) {
  if (edits.empty()) return source;
  Job job = std::move(source.job);
  for (const Edit& edit : edits) {
    const auto building = resolve(job);
    if (!building) return std::unexpected(refused(building.error(), write_job(job)));
    auto changed = edited(job, *building, edit);
    if (!changed) return std::unexpected(bad_request(changed.error()));
    job = *std::move(changed);
  }
  return read_back(job);
}

/// The job with the logs of another copy of it.
Sourced with_logs(Source source, const std::optional<std::string>& other) {
  if (!other) return source;
  const auto job = read_job(*other);
  if (!job) return std::unexpected(refused(job.error(), ""));
  auto merged = laying::merged_jobs(source.job, *job);
  if (merged) return read_back(merged->job);
  std::string places;
  for (const std::string& place : merged.error()) places += (places.empty() ? "" : ", ") + place;
  return std::unexpected(bad_request("These are not two logs of one job: they differ in " + places + "."));
}

std::string svg_of(const paper::Sheet& sheet, const Request& request) {
  return request.moving ? ink::moving_svg_text(sheet) : ink::svg_text(sheet, ink::Classes::Write);
}

void add_drawings(Reply& reply, const Answer& answer, const Request& request) {
  for (const std::string& name : request.drawings) {
    auto drawing = sheet::make_named_drawing(answer, name);
    if (!drawing) continue;
    reply.sections.push_back({name + ".svg", svg_of(drawing->sheet, request)});
    reply.drawings.push_back(*std::move(drawing));
  }
}

/// Those of the request, else those that this program carries.
paper::FontFiles fonts_of(const Request& request) {
  if (request.regular.empty()) return paper::embedded_fonts();
  return {request.regular, request.bold};
}

std::string set_bytes(const Answer& answer, paper::Paper paper, const paper::FontFiles& fonts) {
  std::string bytes;
  write_set(answer, paper, [&](std::string_view more) { bytes += more; }, {}, fonts);
  return bytes;
}

std::string solved(const Answer& answer, const Request& request, std::string document) {
  Reply reply{.state = "solved", .message = {}, .sections = {}, .drawings = {}, .answer = &answer};
  // While a reading is tried only its course is asked about.
  if (!request.course || !request.course->trial) reply.sections.push_back({"answer.json", answer_text(answer, request.moving ? Placed::Omit : Placed::Write)});
  if (!document.empty()) reply.sections.push_back({"job.json", std::move(document)});
  add_drawings(reply, answer, request);
  if (request.course) {
    std::string course = json_text([&](JsonOut& out) { write_course(out, answer, *request.course); });
    if (course.size() > 1) reply.sections.push_back({"course.json", std::move(course)});
  }
  if (request.solids) {
    reply.sections.push_back({"solids.json", json_text([&](JsonOut& out) { write_solids(out, answer); })});
  }
  if (request.set && answer.layout.stopped.empty()) {
    reply.sections.push_back({std::string(set_file_name(*request.set)), set_bytes(answer, *request.set, fonts_of(request))});
  }
  return finished(std::move(reply), request);
}

}  // namespace

/// Without a search. What a hand moves keeps the corners of what was before, if that lays: a fourth of the work.
std::expected<Answer, Refusals> Border::quick_answer_of(const Job& job, Wishes wishes, const Job* before) {
  if (quick_ == nullptr || quick_->size() > kPanelsKept) quick_ = std::make_unique<bond::PanelMemo>(wishes.search_budget);
  if (before != nullptr && (!before_ || before_->job != *before)) {
    before_.reset();
    if (auto answer = solve(*before, wishes, *quick_)) before_ = *std::move(answer);
  }
  if (before != nullptr && before_) wishes.like = &before_->layout;
  return solve(job, wishes, *quick_);
}

std::expected<Answer, Refusals> Border::answer_of(const Job& job, const Wishes& wishes) {
  if (wishes.offers) return solve(job, wishes);
  if (last_ && last_->budget == wishes.search_budget && last_->answer.job == job) return last_->answer;
  Wishes knowing = wishes;  // what is entered at the wall is answered at once
  if (last_ && last_->budget == wishes.search_budget) knowing.known = &last_->answer;
  auto answer = solve(job, knowing);  // with panels of its own: what a search leaves behind depends on what it was for
  last_.reset();
  if (answer) last_ = Last{wishes.search_budget, *answer};
  return answer;
}

std::string Border::answer(std::string_view text) {
  const auto request = read_request(text);
  if (!request) return bad_request(request.error());
  if (request->set && !fonts_of(*request).whole()) return bad_request("/fonts: the whole font files are wanted with a set.");
  auto source = start_of(*request);
  std::optional<Job> before;
  if (source && request->moving && !request->edits.empty()) before = source->job;
  if (source) source = with_edits(*std::move(source), request->edits);
  if (source) source = with_logs(*std::move(source), request->merge);
  if (!source) return std::move(source.error());
  Wishes wishes;
  wishes.offers = request->offers;
  wishes.search_budget = request->budget.value_or(wishes.search_budget);
  const bool quick = wishes.search_budget < bond::kLeastSearch && !wishes.offers;
  wishes.save_dowels = wishes.at_wall = !quick;
  const auto answer = quick ? quick_answer_of(source->job, wishes, before ? &*before : nullptr) : answer_of(source->job, wishes);
  if (!answer) return refused(answer.error(), source->document);
  return solved(*answer, *request, std::move(source->document));
}

}  // namespace stringcourse::border
