#include "wasm/border.hpp"

#include <utility>

#include "document/answer_json.hpp"
#include "document/page_parts.hpp"
#include "job/read.hpp"
#include "laying/merge_jobs.hpp"
#include "sheet/drawing.hpp"
#include "solve/printed_set.hpp"
#include "wasm/brief.hpp"
#include "wasm/reply.hpp"
#include "wasm/source.hpp"

namespace stringcourse::border {
namespace {

/// [{"name", "title", "hold_point"}] of a set that is not made.
void write_sheet_names(JsonOut& out, const Answer& answer, const Request& request) {
  const sheet::Wanted wanted{.templates = request.templates, .standards = request.standards};
  out.list("sheets", [&] {
    for (const sheet::SheetName& sheet : sheet::sheet_names(answer, *request.sheets, wanted)) {
      out.object([&] {
        out.field("name", sheet.name);
        out.field("title", sheet.title);
        out.field("hold_point", hold_point_name(sheet.hold_point));
        if (sheet.also) out.field("also", hold_point_name(*sheet.also));
      });
    }
  });
}

/// What reply.json says behind the drawings.
void write_answer_parts(JsonOut& out, const Answer& answer, const Request& request) {
  out.name("hold_points");
  write_hold_points(out, answer);
  if (request.sheets && answer.layout.stopped.empty()) write_sheet_names(out, answer, request);
  if (!request.piece) return;
  const std::string card = json_text([&](JsonOut& inner) { write_piece_card(inner, answer, *request.piece); });
  if (card.size() > 1) out.name("piece"), out.raw(std::string_view(card).substr(0, card.size() - 1));
}

/// The job with the logs of another copy of it.
Sourced with_logs(Source source, const std::optional<std::string>& other) {
  if (!other) return source;
  const auto job = read_job(*other);
  if (!job) return std::unexpected(refused(job.error(), ""));
  auto merged = laying::merged_jobs(source.job, *job);
  if (merged) {
    Sourced whole = read_back(merged->job);
    if (whole) whole->before = std::move(source.before);
    return whole;
  }
  std::string places;
  for (const std::string& place : merged.error()) places += (places.empty() ? "" : ", ") + place;
  return std::unexpected(bad_request("These are not two logs of one job: they differ in " + places + "."));
}

/// Those of the request, else those that this program carries.
paper::FontFiles fonts_of(const Request& request) {
  if (request.regular.empty()) return paper::embedded_fonts();
  return {request.regular, request.bold};
}

std::string set_bytes(const Answer& answer, const Request& request) {
  std::string bytes;
  const auto sink = [&](std::string_view more) { bytes += more; };
  write_set(answer, *request.set, sink, {}, fonts_of(request),
            {.only = request.of, .templates = request.templates, .standards = request.standards});
  return bytes;
}

std::string solved(const Answer& answer, const Request& request, std::string document) {
  Reply reply{.building = &answer.building, .more = [&](JsonOut& out) { write_answer_parts(out, answer, request); }};
  // While a reading is tried only its course is asked about.
  if (!request.course || !request.course->trial)
    reply.sections.push_back({"answer.json", answer_text(answer, request.moving ? Placed::Omit : Placed::Write)});
  if (!document.empty()) reply.sections.push_back({"job.json", std::move(document)});
  for (const std::string& name : request.drawings) {
    if (auto drawing = sheet::make_named_drawing(answer, name)) add_drawing(reply, request, *std::move(drawing));
  }
  if (request.course) {
    std::string course = json_text([&](JsonOut& out) { write_course(out, answer, *request.course); });
    if (course.size() > 1) reply.sections.push_back({"course.json", std::move(course)});
  }
  if (request.solids) {
    reply.sections.push_back({"solids.json", json_text([&](JsonOut& out) { write_solids(out, answer); })});
  }
  if (request.set && answer.layout.stopped.empty()) {
    reply.sections.push_back({std::string(set_file_name(*request.set)), set_bytes(answer, request)});
  }
  return finished(std::move(reply));
}

}  // namespace

/// Without a search.
std::expected<Answer, Refusals> Border::quick_answer_of(const Source& source, Wishes wishes) {
  wishes.like = quick_.like(source.before);
  return solve(source.job, wishes, quick_.memo());
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
  if (request->set && !fonts_of(*request).whole())
    return bad_request("/fonts: the whole font files are wanted with a set.");
  if (request->lengths) return told(*request->lengths);
  if (request->brief) return brief_reply(*request, quick_);
  auto source = source_of(*request);
  if (source) source = with_logs(*std::move(source), request->merge);
  if (!source) return std::move(source.error());
  Wishes wishes;
  wishes.offers = request->offers;
  wishes.search_budget = request->budget.value_or(wishes.search_budget);
  const bool quick = wishes.search_budget < bond::kLeastSearch && !wishes.offers;
  wishes.save_dowels = wishes.at_rest = !quick;
  const auto answer = quick ? quick_answer_of(*source, wishes) : answer_of(source->job, wishes);
  if (!answer) return refused(answer.error(), source->document);
  return solved(*answer, *request, std::move(source->document));
}

}  // namespace stringcourse::border
